/**
 * Whether a reading lies in its band, or is too uncertain to say.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";

/** A reading and the band it should lie in. */
export interface JudgeInput {
  /** What was read, in any unit. −1e100 to 1e100. */
  readonly reading: number;
  /** Low end of the band, in the same unit. −1e100 to 1e100. */
  readonly low: number;
  /** High end; at least the low one. Up to 1e100. */
  readonly high: number;
  /** Standard uncertainty of the reading. 0 to 1e100; 0 where left out. */
  readonly standardUncertainty?: number;
}

/** The verdict. */
export interface Judgement {
  /** "pass": inside, and by more than the doubt. "fail": outside by more than the doubt. "too close to call" between. */
  readonly verdict: "pass" | "fail" | "too close to call";
  /** Which side: "low" or "high" of the band; "inside" else. */
  readonly side: "low" | "inside" | "high";
  /** Distance to the nearest end of the band; positive inside, negative outside. */
  readonly margin: number;
  /** Half-width of the doubt that was allowed, two standard uncertainties. */
  readonly doubt: number;
}

const LARGEST = 1e100;
/** Coverage factor for about 95 % (`jcgm-100`, 6.3.3). */
const COVERAGE = 2;

/**
 * Whether a value lies clear of every edge that would turn the verdict: by two standard uncertainties or more.
 *
 * @internal
 */
export function clearOf(value: number, edges: readonly number[], standardUncertainty: number): boolean {
  return edges.every((edge) => Math.abs(value - edge) >= COVERAGE * standardUncertainty);
}

/**
 * Judges a reading against a band, with its uncertainty.
 *
 * @remarks
 * A guard band of two standard uncertainties on both sides of each end: inside it nothing is said but that the reading is too
 * close to call, and a better reading is wanted.
 *
 * @param input - reading, band and uncertainty; each field says its range
 * @returns the verdict, the side and the margin
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { judgeReading } from "risingmain/field";
 *
 * judgeReading({ reading: 16.7, low: 16, high: 17.5, standardUncertainty: 0.1 }).verdict; // => "pass"
 * judgeReading({ reading: 16.7, low: 16, high: 17.5, standardUncertainty: 0.6 }).verdict; // => "too close to call"
 * ```
 *
 * @source jcgm-106, guard bands
 */
export function judgeReading(input: JudgeInput): Judgement {
  requireObject("input", input);
  const { reading, low, high, standardUncertainty = 0 } = input;
  requireWithin("reading", reading, -LARGEST, LARGEST, "");
  requireWithin("low", low, -LARGEST, LARGEST, "");
  requireWithin("high", high, low, LARGEST, "(at least the low end)");
  requireWithin("standardUncertainty", standardUncertainty, 0, LARGEST, "");
  const margin = Math.min(reading - low, high - reading);
  const doubt = COVERAGE * standardUncertainty;
  const side = reading < low ? "low" : reading > high ? "high" : "inside";
  if (Math.abs(margin) < doubt) return { verdict: "too close to call", side, margin, doubt };
  return { verdict: margin >= 0 ? "pass" : "fail", side, margin, doubt };
}
