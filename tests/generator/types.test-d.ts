/** What the types of the generator module refuse: one wrong field in otherwise good input. */
import { fuelUse, receptacleCheck, startingDip } from "risingmain/generator";
import { amperes, kilovoltAmperes, kilowatts, ratio, volts } from "risingmain/units";

const dip = {
  generatorPower: kilovoltAmperes(10),
  transientReactance: ratio(0.2),
  startingPower: kilovoltAmperes(12),
} as const;
startingDip(dip);
// @ts-expect-error watts are not volt-amperes
startingDip({ ...dip, startingPower: kilowatts(12) });
const outlet = { receptacle: "L14-30", voltage: volts(240), current: amperes(10) } as const;
receptacleCheck(outlet);
// @ts-expect-error an unknown receptacle
receptacleCheck({ ...outlet, receptacle: "L15-99" });
// @ts-expect-error an unknown fuel
fuelUse({ load: kilowatts(5), fuel: "wood" });
