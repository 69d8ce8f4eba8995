/**
 * Current a conductor may carry without overheating its insulation, by the tables and corrections of the code.
 *
 * @module
 */
import { requireList, requireObject, requireOneOf, requireWhole, requireWithin } from "../numeric/index.ts";
import { type Current, InputError, type Ratio, type Temperature } from "../units/index.ts";
import { CONDUCTOR_MATERIALS, type ConductorMaterial } from "./material.ts";
import { necAmbientCorrection, necBundlingAdjustment } from "./nec-310-15-correction.ts";
import { type AmpacityByRating, type AmpacityRow, necTable310_16 } from "./nec-310-16.ts";
import { type ConductorSize, readSize } from "./size.ts";

/** Temperature that the insulation, or a terminal, is listed for. */
export type TemperatureRating = "60 °C" | "75 °C" | "90 °C";

/** The names, in the order of the tables' columns. */
export const TEMPERATURE_RATINGS: readonly TemperatureRating[] = ["60 °C", "75 °C", "90 °C"];

/** 0 °C in kelvins. */
const ICE_POINT = 273.15;
/** Ambient of the tables, K. */
const TABLE_AMBIENT = 303.15;

/** A conductor and where it lies. */
export interface ConductorAmpacityInput {
  /** Trade size, AWG or kcmil. */
  readonly size: ConductorSize;
  /** Metal; copper where left out. */
  readonly material?: ConductorMaterial;
  /** Rating of the insulation. */
  readonly insulation: TemperatureRating;
  /**
   * Lowest rating of the terminals at its ends; the rating of the insulation where left out. Terminals for up to 100 A count
   * as 60 °C unless they are marked 75 °C.
   */
  readonly terminals?: TemperatureRating;
  /** Ambient temperature; 30 °C where left out. 200 to 400 K. */
  readonly ambient?: Temperature;
  /** Current-carrying conductors bundled together, the grounding conductor not counted; 3 where left out. 1 to 1000. */
  readonly bundled?: number;
  /** Table to look the size up in; the code's 310.16 where left out. `necTable310_17` is free air. 1 to 200 rows. */
  readonly table?: readonly AmpacityRow[];
}

/** An ampacity and how it came about. */
export interface ConductorAmpacity {
  /** Current the conductor may carry, A; 0 where the ambient is hotter than the insulation permits. */
  readonly ampacity: Current;
  /** Table value at 30 °C and up to three conductors, A. */
  readonly tabulated: Current;
  /** Factor for ambient temperature. */
  readonly ambientFactor: Ratio;
  /** Factor for conductors bundled together. */
  readonly bundlingFactor: Ratio;
  /** Table value in the column of the terminals' rating, A: no correction raises the ampacity above it. */
  readonly terminalLimit: Current;
  /** What set the ampacity. */
  readonly governedBy: "conductor" | "terminals" | "ambient too hot";
  /** Where the rules and figures are from. */
  readonly method: "nfpa-70" | "table given";
}

/**
 * Ampacity of a conductor after correction for ambient, bundling and terminals.
 *
 * @remarks
 * I = I(insulation column) · ambient factor · bundling factor, and not above I(terminal column). Defaults are the code's own
 * conditions: 30 °C, three conductors, raceway, cable or earth. The code publishes nothing for a flat cable hanging in a
 * well; the 75 °C column is used there as an upper limit, common practice, and the drop nearly always governs.
 * The code limits breakers on 14, 12 and 10 AWG further ({@link smallConductorLimit}), motor circuits apart.
 *
 * @param input - the conductor and its surroundings; each field says the values it takes
 * @returns the ampacity with its factors
 * @throws InputError naming the first field that is not known, not in its range, or a size that the table does not list
 *
 * @example Four 12 AWG conductors of 90 °C insulation together
 * ```ts
 * import { conductorAmpacity } from "risingmain/conductor";
 *
 * const bundle = conductorAmpacity({ size: "12 AWG", insulation: "90 °C", bundled: 4 });
 * bundle.ampacity; // ≈ 24.0
 * conductorAmpacity({ size: "12 AWG", insulation: "90 °C", terminals: "60 °C" }).ampacity; // => 20
 * ```
 *
 * @source nfpa-70, Tables 310.16, 310.15(B)(2)(a), 310.15(B)(3)(a); 110.14(C) for terminals
 */
export function conductorAmpacity(input: ConductorAmpacityInput): ConductorAmpacity {
  requireObject("input", input);
  const { size, material = "copper", insulation, terminals = insulation, bundled = 3 } = input;
  const { ambient = TABLE_AMBIENT as Temperature, table = necTable310_16 } = input;
  readSize("size", size);
  requireOneOf("material", material, CONDUCTOR_MATERIALS);
  requireOneOf("insulation", insulation, TEMPERATURE_RATINGS);
  requireOneOf("terminals", terminals, TEMPERATURE_RATINGS);
  requireWithin("ambient", ambient, 200, 400, "K");
  requireWhole("bundled", bundled, 1, 1000);
  const figures = tableFigures(table, size, material);

  const column = TEMPERATURE_RATINGS.indexOf(insulation);
  const tabulated = figures[column] ?? null;
  if (tabulated === null) {
    throw new InputError("size", size, `a size that the table lists in ${material} with ${insulation} insulation`);
  }
  const terminalLimit = figures[TEMPERATURE_RATINGS.indexOf(terminals)] ?? tabulated;
  const ambientFactor = factorForAmbient(ambient, column);
  const bundlingFactor = factorForBundle(bundled);
  const corrected = tabulated * ambientFactor * bundlingFactor;
  return {
    ampacity: Math.min(corrected, terminalLimit) as Current,
    tabulated: tabulated as Current,
    ambientFactor: ambientFactor as Ratio,
    bundlingFactor: bundlingFactor as Ratio,
    terminalLimit: terminalLimit as Current,
    governedBy: ambientFactor === 0 ? "ambient too hot" : corrected <= terminalLimit ? "conductor" : "terminals",
    method: table === necTable310_16 ? "nfpa-70" : "table given",
  };
}

function tableFigures(
  table: readonly AmpacityRow[],
  size: ConductorSize,
  material: ConductorMaterial,
): AmpacityByRating {
  requireList("table", table, 1, 200);
  const rows = Array.from(table, (row, i) => {
    requireObject(`table[${i}]`, row);
    return row;
  });
  const at = rows.findIndex((row) => row.size === size);
  const figures = rows[at]?.[material];
  if (figures === undefined)
    throw new InputError("size", size, `a size in the table: ${rows.map((r) => r.size).join(", ")}`);
  requireList(`table[${at}].${material}`, figures, 3, 3);
  for (const [i, amperes] of Array.from(figures).entries()) {
    if (amperes !== null) requireWithin(`table[${at}].${material}[${i}]`, amperes, 0, 1e5, "A");
  }
  return figures;
}

function factorForAmbient(ambient: number, column: number): number {
  // A band ends at a whole degree and the next begins a degree above: a temperature between counts as the hotter band.
  const band = necAmbientCorrection.find(({ upTo }) => ambient - ICE_POINT <= upTo + 1e-9);
  return band?.factors[column] ?? 0;
}

function factorForBundle(bundled: number): number {
  const band = necBundlingAdjustment.find(({ upTo }) => upTo === null || bundled <= upTo);
  // The last band has no end, so one is always found.
  return (band as { readonly factor: number }).factor;
}
