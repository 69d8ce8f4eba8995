/** Wrong quantities are refused by the types. */
import { type BleachDoseInput, type FlushInput, giardiaContact, treatedVolume } from "risingmain/disinfection";
import { celsius, celsiusDegrees, feet, gpm, inches, mgPerLitre, percent, usGallons } from "risingmain/units";

const dose: BleachDoseInput = { volume: usGallons(100), target: mgPerLitre(100), strength: percent(6) };
const out: FlushInput = { volume: usGallons(100), flow: gpm(5), from: mgPerLitre(100), to: mgPerLitre(1) };

// @ts-expect-error a flow is not a volume
export const flowForVolume: BleachDoseInput = { ...dose, volume: gpm(5) };
// @ts-expect-error a ratio is not a concentration
export const shareForTarget: BleachDoseInput = { ...dose, target: percent(1) };
// @ts-expect-error a volume is not a flow
export const volumeForFlow: FlushInput = { ...out, flow: usGallons(5) };
export const difference = giardiaContact({
  pH: 7,
  // @ts-expect-error a difference of temperatures is not a temperature
  temperature: celsiusDegrees(10),
  residual: mgPerLitre(1),
  logInactivation: 3,
});
export const good = giardiaContact({ pH: 7, temperature: celsius(10), residual: mgPerLitre(1), logInactivation: 3 });
export const bare = treatedVolume({
  staticLevel: feet(20),
  // @ts-expect-error a bare number is not a length
  bore: [{ insideDiameter: 6, top: feet(0), bottom: feet(100) }],
  dropPipe: inches(1),
});
