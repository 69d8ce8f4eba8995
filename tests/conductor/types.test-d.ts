/** What the types of the conductor module refuse: one wrong field in otherwise good input. */
import { type ConductorSize, conductorAmpacity, conductorResistance, voltageDrop } from "risingmain/conductor";
import { amperes, feet, ohms, ohmsPerThousandFeet, ratio, volts } from "risingmain/units";

const good = {
  system: "single-phase",
  sourceVoltage: volts(230),
  current: amperes(10),
  powerFactor: ratio(0.85),
  segments: [{ length: feet(100), resistance: ohmsPerThousandFeet(1.98) }],
} as const;
voltageDrop(good);
// @ts-expect-error a current is not a voltage
voltageDrop({ ...good, sourceVoltage: amperes(230) });
// @ts-expect-error a bare number is not a power factor
voltageDrop({ ...good, powerFactor: 0.85 });
// @ts-expect-error a resistance is not a resistance per length
voltageDrop({ ...good, segments: [{ length: feet(100), resistance: ohms(1.98) }] });
// @ts-expect-error the drop is there only where the circuit is carried
voltageDrop(good).drop;
// @ts-expect-error a size names its system
const bare: ConductorSize = "12";
conductorResistance({ size: bare });
// @ts-expect-error brass is no conductor material
conductorResistance({ size: "12 AWG", material: "brass" });
// @ts-expect-error the rating is text with its unit
conductorAmpacity({ size: "12 AWG", insulation: 75 });
