/**
 * The pressure class a piece of pipe needs, from the classes at hand.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { GaugePressure, PressureDifference } from "../units/index.ts";
import { requirePressure } from "./ranges.ts";

/** What the pipe must hold, and what can be had. */
export interface PressureClassInput {
  /** The highest steady gauge pressure in the piece of pipe, flowing or at rest. ±1e9 Pa. */
  readonly highestPressure: GaugePressure;
  /** Surge to be held on top of it, where the classes leave no allowance for one. 0 to 1e9 Pa; 0 where left out. */
  readonly surge?: PressureDifference;
  /** Rated pressures at hand, at the water's temperature, in any order; 1 to 100 of 0 to 1e9 Pa. */
  readonly classes: readonly GaugePressure[];
}

/** The class, or how far the strongest one falls short. */
export type PressureClass =
  | {
      /** A class at hand is strong enough. */
      readonly state: "enough";
      /** The lowest class that is, Pa. */
      readonly pressureClass: GaugePressure;
      /** What it holds beyond the need, Pa. */
      readonly margin: PressureDifference;
      /** What to show beside it. */
      readonly cautions: readonly Caution[];
    }
  | {
      /** None is: lower the pressure with a regulating valve, or find stronger pipe. */
      readonly state: "none strong enough";
      /** What the strongest class lacks, Pa. */
      readonly short: PressureDifference;
      /** What to show beside it. */
      readonly cautions: readonly Caution[];
    };

/** What to show beside a pressure class. */
const CLASS_CAUTIONS: readonly Caution[] = [
  {
    code: "pipe-class",
    text: "Pipe that fails under pressure does harm. Derate its class for warm water; joints and fittings can hold less than the pipe. Local code and the pipe's own marking have the last word.",
    basis: "common practice",
  },
];

/**
 * The lowest of the pressure classes at hand that holds the highest pressure of a piece of pipe.
 *
 * @remarks
 * class ≥ p + surge. Classes are ratings at a temperature, 23 °C (73 °F) as printed for plastic pipe; derate them first
 * for warmer water. Whether a class has its own surge allowance is for its standard to say (`surge` has the check).
 * Caution: pipe that fails under pressure does harm. Local code and the pipe's own marking have the last word.
 *
 * @param input - the highest pressure, the surge and the classes, Pa
 * @returns the class and its margin, or what the strongest lacks; the cautions to show with it
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { pressureClassNeeded } from "risingmain/head";
 * import { inPsi, psi, psiDifference } from "risingmain/units";
 *
 * const need = pressureClassNeeded({
 *   highestPressure: psi(118), surge: psiDifference(30), classes: [psi(125), psi(160), psi(200)],
 * });
 * need.state === "enough" ? inPsi(need.pressureClass) : Number.NaN; // ≈ 160.0
 * ```
 *
 * @source derived: comparison
 */
export function pressureClassNeeded(input: PressureClassInput): PressureClass {
  requireObject("input", input);
  const { highestPressure, surge = 0, classes } = input;
  requirePressure("highestPressure", highestPressure);
  requireWithin("surge", surge, 0, 1e9, "Pa");
  requireList("classes", classes, 1, 100);
  const rated = Array.from(classes, (pressure, i) => {
    requireWithin(`classes[${i}]`, pressure, 0, 1e9, "Pa");
    return pressure;
  }).sort((a, b) => a - b);

  const need = highestPressure + surge;
  const pressureClass = rated.find((pressure) => pressure >= need);
  return pressureClass === undefined
    ? {
        state: "none strong enough",
        short: (need - (rated.at(-1) as number)) as PressureDifference,
        cautions: CLASS_CAUTIONS,
      }
    : {
        state: "enough",
        pressureClass,
        margin: (pressureClass - need) as PressureDifference,
        cautions: CLASS_CAUTIONS,
      };
}
