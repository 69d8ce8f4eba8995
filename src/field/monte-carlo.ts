/**
 * Uncertainty by trial: many made-up sets of readings, and the spread of the results.
 *
 * @module
 */
import { requireList, requireOneOf, requireWhole } from "../numeric/index.ts";
import { type SeededRandom, seededRandom } from "./seeded-random.ts";
import { evaluate, requireReadings, type UncertainInput } from "./uncertainty.ts";

/** How a reading is spread about its estimate. */
export type Spread = "normal" | "rectangular" | "triangular";

/** Readings, model and seed. */
export interface MonteCarloInput {
  /** The readings, independent of one another; 1 to 100. */
  readonly inputs: readonly UncertainInput[];
  /** How each is spread, in the same order; normal where left out. Each has the standard uncertainty given. */
  readonly spreads?: readonly Spread[];
  /** The result as a function of the values, in the order of `inputs`. It must be finite for any reading the spreads can make. */
  readonly model: (values: readonly number[]) => number;
  /** Whole number that the made-up readings follow from: the same seed, the same result. 0 to 2³² − 1. */
  readonly seed: number;
  /** Number of trials. 100 to 1 000 000; 100 000 where left out. */
  readonly trials?: number;
}

/** The spread of the results. */
export interface MonteCarlo {
  /** Mean of the results. */
  readonly mean: number;
  /** Their standard deviation: the standard uncertainty. */
  readonly standardUncertainty: number;
  /** Sampling error of that standard deviation itself, were the results normal: u / √(2 n). */
  readonly samplingError: number;
  /** Ends of the interval with 2.5 % of the results on either side. */
  readonly interval95: readonly [low: number, high: number];
  /** Number of trials. */
  readonly trials: number;
  /** Source of the method. */
  readonly method: "jcgm-101";
}

const USUAL_TRIALS = 100_000;
/** Half-widths of the flat and the triangular spread over their standard deviations: √3 and √6. */
const FLAT = 1.7320508075688772;
const TRIANGLE = 2.449489742783178;

/**
 * The uncertainty of a result by Monte Carlo trials with a caller's seed.
 *
 * @remarks
 * Draws each reading from its spread, evaluates the model, and takes mean, standard deviation and the 2.5 and 97.5 % points of
 * the results. Where it disagrees with `propagateUncertainty` by more than the sampling error the model is not straight
 * enough for the first-order law: believe this one. The numbers come from xoshiro128** started from the seed, so a result can
 * be had again.
 *
 * @param input - readings, spreads, model, seed and number of trials; each field says its range
 * @returns mean, standard uncertainty, interval and sampling error
 * @throws {@link units.InputError} naming the first field outside its range, or the model where it gives no finite number
 *
 * @example A flow from a volume and a time
 * ```ts
 * import { monteCarlo } from "risingmain/field";
 *
 * const flow = monteCarlo({
 *   inputs: [
 *     { name: "gallons", value: 5, standardUncertainty: 0.1 }, { name: "seconds", value: 18, standardUncertainty: 0.5 },
 *   ],
 *   model: ([gallons = 0, seconds = 1]) => (60 * gallons) / seconds, seed: 1, trials: 20_000,
 * });
 * flow.standardUncertainty; // ≈ 0.57
 * ```
 *
 * @source jcgm-101, clause 7
 * @source blackman-vigna-2021: the generator
 */
export function monteCarlo(input: MonteCarloInput): MonteCarlo {
  requireReadings(input);
  const { inputs, model, seed, trials = USUAL_TRIALS } = input;
  const spreads = input.spreads ?? inputs.map((): Spread => "normal");
  requireList("spreads", spreads, inputs.length, inputs.length);
  spreads.forEach((spread, i) => {
    requireOneOf(`spreads[${i}]`, spread, ["normal", "rectangular", "triangular"]);
  });
  requireWhole("seed", seed, 0, 4294967295);
  requireWhole("trials", trials, 100, 1_000_000);

  const random = seededRandom(seed);
  const results = new Float64Array(trials);
  // Running mean and sum of squares, after Welford: no cancellation where the spread is small beside the mean.
  let mean = 0;
  let squares = 0;
  for (let i = 0; i < trials; i++) {
    const values = inputs.map(
      ({ value, standardUncertainty }, j) => value + standardUncertainty * draw(random, spreads[j] as Spread),
    );
    const result = evaluate(model, values);
    results[i] = result;
    const step = result - mean;
    mean += step / (i + 1);
    squares += step * (result - mean);
  }
  results.sort();
  const standardUncertainty = Math.sqrt(squares / (trials - 1));
  return {
    mean,
    standardUncertainty,
    samplingError: standardUncertainty / Math.sqrt(2 * trials),
    interval95: [quantile(results, 0.025), quantile(results, 0.975)],
    trials,
    method: "jcgm-101",
  };
}

function draw(random: SeededRandom, spread: Spread): number {
  if (spread === "normal") return random.normal();
  if (spread === "rectangular") return FLAT * (2 * random.uniform() - 1);
  return TRIANGLE * (random.uniform() - random.uniform());
}

function quantile(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below] as number;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] as number;
  return low + (place - below) * (high - low);
}
