import type { AbsolutePressure, GaugePressure, Length, Temperature, TemperatureDifference } from "risingmain/units";
import { atmosphereAt, waterAt, waterDensity } from "risingmain/water";

declare const temperature: Temperature;
declare const difference: TemperatureDifference;
declare const elevation: Length;

waterAt({ temperature });
// @ts-expect-error a difference of temperatures is not a temperature
waterAt({ temperature: difference });
// @ts-expect-error a bare number is not a temperature
waterDensity(20);
const absolute: AbsolutePressure = atmosphereAt(elevation);
// @ts-expect-error air pressure is absolute, not gauge
const gauge: GaugePressure = atmosphereAt(elevation);
void [absolute, gauge];
