/**
 * Resistance of a trade-size conductor at any temperature, from the code's or the standard's table.
 *
 * @module
 */
import { requireBoolean, requireObject, requireOneOf } from "../numeric/index.ts";
import { InputError, type Length, type ResistancePerLength, type Temperature } from "../units/index.ts";
import { conductorGeometry } from "./geometry.ts";
import { iec60228Class1, iec60228Class2, iec60228Class5 } from "./iec-60228.ts";
import { CONDUCTOR_MATERIALS, type ConductorMaterial } from "./material.ts";
import { necChapter9Table8 } from "./nec-chapter-9-table-8.ts";
import { resistanceAtTemperature } from "./resistance-at-temperature.ts";
import { type ConductorSize, readSize } from "./size.ts";
import { wireResistance } from "./wire-resistance.ts";

/** Solid, stranded, or of many fine strands (flexible, IEC class 5). */
export type Stranding = "solid" | "stranded" | "flexible";

const STRANDINGS: readonly Stranding[] = ["solid", "stranded", "flexible"];
/** Temperatures of the two tables, K: 75 °C in the code, 20 °C in the standard. */
const NEC_TEMPERATURE = 348.15;
const IEC_TEMPERATURE = 293.15;
/** Strands run in a helix, about 2 % longer than the conductor (`astm-b8`, usual increment). */
const LAY_FACTOR = 1.02;

/** A conductor by its trade size. */
export interface ConductorResistanceInput {
  /** Trade size. */
  readonly size: ConductorSize;
  /** Metal; copper where left out. */
  readonly material?: ConductorMaterial;
  /** Stranding; stranded where left out. `"flexible"` is for metric sizes. */
  readonly stranding?: Stranding;
  /** Whether copper strands are tinned; false where left out. */
  readonly coated?: boolean;
  /** Temperature of the metal; 75 °C where left out. 200 to 600 K. */
  readonly temperature?: Temperature;
}

/** A resistance per length, with where it comes from. */
export interface ConductorResistance {
  /** Direct-current resistance of one conductor, Ω/m. */
  readonly resistance: ResistancePerLength;
  /** Source of the figure: a table of the code or of the standard, or the law of resistivity where neither lists it. */
  readonly method: "nfpa-70" | "iec-60228" | "iec-60028";
  /** False where no table lists the conductor, or its temperature is outside 0 to 100 °C. */
  readonly insideRange: boolean;
}

/**
 * Direct-current resistance per length of a trade-size conductor at a temperature.
 *
 * @remarks
 * AWG and kcmil by the code's Chapter 9 Table 8 (75 °C), metric sizes by IEC 60228 (20 °C, the most a conductor of the size
 * may have), each carried to the temperature by {@link resistanceAtTemperature}. A size in neither (1000 kcmil, solid 4 AWG)
 * comes from area and resistivity, with 2 % added for stranding, and is marked as outside the range.
 * Real conductors lie within about 2 % of the code's table, and at or below the standard's.
 *
 * @param input - the conductor; each field says the values it takes
 * @returns the resistance of one conductor, not of the loop
 * @throws InputError naming the first field that is not known or not in its range
 *
 * @example 12 AWG stranded copper at 75 °C, and in the cold of the well
 * ```ts
 * import { conductorResistance } from "risingmain/conductor";
 * import { celsius, inOhmsPerThousandFeet } from "risingmain/units";
 *
 * inOhmsPerThousandFeet(conductorResistance({ size: "12 AWG" }).resistance); // ≈ 1.98
 * inOhmsPerThousandFeet(conductorResistance({ size: "12 AWG", temperature: celsius(10) }).resistance); // ≈ 1.564
 * conductorResistance({ size: "2.5 mm²" }).method; // => "iec-60228"
 * ```
 *
 * @source nfpa-70, Chapter 9 Table 8
 * @source iec-60228, classes 1, 2 and 5
 */
export function conductorResistance(input: ConductorResistanceInput): ConductorResistance {
  requireObject("input", input);
  const { size, material = "copper", stranding = "stranded", coated = false } = input;
  const { temperature = NEC_TEMPERATURE as Temperature } = input;
  const parts = readSize("size", size);
  requireOneOf("material", material, CONDUCTOR_MATERIALS);
  requireOneOf("stranding", stranding, STRANDINGS);
  requireBoolean("coated", coated);
  if (coated && material === "aluminium") throw new InputError("coated", coated, "false: aluminium is not tinned");
  if (stranding === "flexible" && parts.system !== "mm²") {
    throw new InputError("stranding", stranding, '"solid" or "stranded" for AWG and kcmil sizes');
  }
  const metal = coated ? "coatedCopper" : material;
  const listed =
    parts.system === "mm²"
      ? fromStandard(parts.squareMillimetres, metal, stranding)
      : fromCode(size, metal, stranding === "solid");
  const { resistance, from, method } = listed ?? fromLaw(size, material, stranding);
  return {
    resistance: resistanceAtTemperature({
      resistance: resistance as ResistancePerLength,
      from,
      to: temperature,
      material,
    }),
    method,
    insideRange: listed !== undefined && temperature >= 273.15 && temperature <= 373.15,
  };
}

type Metal = "copper" | "coatedCopper" | "aluminium";
interface Known {
  readonly resistance: number;
  readonly from: Temperature;
  readonly method: ConductorResistance["method"];
}

function fromCode(size: ConductorSize, metal: Metal, solid: boolean): Known | undefined {
  const row = necChapter9Table8.find((candidate) => candidate.size === size && (candidate.strands === 1) === solid);
  // Printed in ohms per 1000 ft, which is 304.8 m.
  return row && { resistance: row[metal] / 304.8, from: NEC_TEMPERATURE as Temperature, method: "nfpa-70" };
}

function fromStandard(area: number, metal: Metal, stranding: Stranding): Known | undefined {
  const table = { solid: iec60228Class1, stranded: iec60228Class2, flexible: iec60228Class5 }[stranding];
  const ohmsPerKilometre = table.find((row) => row.area === area)?.[metal];
  if (typeof ohmsPerKilometre !== "number") return undefined;
  return { resistance: ohmsPerKilometre / 1000, from: IEC_TEMPERATURE as Temperature, method: "iec-60228" };
}

function fromLaw(size: ConductorSize, material: ConductorMaterial, stranding: Stranding): Known {
  const solid = wireResistance({ material, area: conductorGeometry(size).area, length: 1 as Length });
  return {
    resistance: stranding === "solid" ? solid : solid * LAY_FACTOR,
    from: IEC_TEMPERATURE as Temperature,
    method: "iec-60028",
  };
}
