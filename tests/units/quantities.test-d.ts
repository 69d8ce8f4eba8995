/** What the types refuse: one wrong thing in an otherwise good call each, so that the error can have no other cause. */
import { headOfPressure } from "risingmain/head";
import { type DarcyWeisbachInput, darcyWeisbachLoss } from "risingmain/pipe";
import {
  type AbsolutePressure,
  absoluteOfGauge,
  celsius,
  celsiusDegrees,
  feet,
  format,
  type GaugePressure,
  gpm,
  inFeet,
  inWatts,
  kilogramsPerCubicMetre,
  kilowatts,
  type Length,
  metres,
  metresPerSecond,
  millimetres,
  psi,
  psia,
  psiDifference,
  ratio,
  squareMetresPerSecond,
  standardAtmospheres,
  type Temperature,
  type VolumeFlow,
  voltAmperes,
} from "risingmain/units";

const good: DarcyWeisbachInput = {
  flow: gpm(18),
  insideDiameter: millimetres(35),
  length: metres(300),
  roughness: millimetres(0.0015),
  viscosity: squareMetresPerSecond(1.3e-6),
};
darcyWeisbachLoss(good);

// @ts-expect-error a length is not a flow
darcyWeisbachLoss({ ...good, flow: feet(240) });
// @ts-expect-error a velocity is not a flow
darcyWeisbachLoss({ ...good, flow: metresPerSecond(1.5) });
// @ts-expect-error a bare number is no length
darcyWeisbachLoss({ ...good, length: 300 });

const air = standardAtmospheres(1);
absoluteOfGauge(psi(40), air);
// @ts-expect-error a gauge pressure is not an absolute one
absoluteOfGauge(psi(40), psi(14.7));
// @ts-expect-error an absolute pressure is not a gauge one
absoluteOfGauge(psia(54.7), air);
// @ts-expect-error a difference of pressures is not a gauge pressure
headOfPressure({ pressure: psiDifference(5), density: kilogramsPerCubicMetre(1000) });

const temperature: Temperature = celsius(10);
// @ts-expect-error a difference of temperatures is not a temperature
const warmer: Temperature = celsiusDegrees(10);
// @ts-expect-error apparent power is not power
inWatts(voltAmperes(100));
// @ts-expect-error a ratio is not a length
inFeet(ratio(0.5));
format(feet(3), "ft");
// @ts-expect-error a length is not shown in psi
format(feet(3), "psi");
// @ts-expect-error no such unit
format(kilowatts(3), "horse");

// A quantity is a number, and arithmetic leaves the brand behind: a sum must be named again on purpose.
const plain: number = feet(3);
// @ts-expect-error the sum of two lengths is a number until it is said to be a length
const sum: Length = feet(3) + feet(4);
const gauge: GaugePressure = psi(40);
const absolute: AbsolutePressure = psia(40);
const flow: VolumeFlow = gpm(3);
void [temperature, warmer, plain, sum, gauge, absolute, flow];
