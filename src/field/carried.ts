/**
 * How every field test carries its doubt: the first-order law always, trials beside it where the caller gives a seed.
 *
 * @module
 */
import { type MonteCarlo, monteCarlo } from "./monte-carlo.ts";
import { propagateUncertainty, type UncertainInput, type UncertaintyPart } from "./uncertainty.ts";

/** Trials beside the law: what every field test takes. */
export interface TrialOptions {
  /** Whole number that the trials follow from. 0 to 2³² − 1; no trials where left out. */
  readonly seed?: number;
  /** Number of trials. 100 to 1 000 000; 100 000 where left out. */
  readonly trials?: number;
}

/** A result's doubt: what every field test gives, in the unit of its result. */
export interface Carried<Q extends number> {
  /** Standard uncertainty by the first-order law. */
  readonly standardUncertainty: Q;
  /** What each reading adds to it. */
  readonly parts: readonly UncertaintyPart[];
  /** The same by trials; null where no seed was given. */
  readonly trial: MonteCarlo | null;
}

/**
 * A reading with the ends of what the model takes.
 *
 * @internal
 */
export interface BoundedReading extends UncertainInput {
  readonly low: number;
  readonly high: number;
}

/**
 * Carries the doubt of readings through a field test's own formula. Slopes and trials reach a little beyond the readings: there
 * each is held inside the ends of what the formula takes.
 *
 * @internal
 */
export function carried<Q extends number>(
  readings: readonly BoundedReading[],
  formula: (values: readonly number[]) => number,
  { seed, trials }: TrialOptions,
): Carried<Q> {
  const inputs = readings.map(({ name, value, standardUncertainty }) => ({ name, value, standardUncertainty }));
  const model = (values: readonly number[]): number =>
    formula(readings.map(({ low, high }, i) => Math.min(Math.max(values[i] as number, low), high)));
  const { standardUncertainty, parts } = propagateUncertainty({ inputs, model });
  return {
    standardUncertainty: standardUncertainty as Q,
    parts,
    trial: seed === undefined ? null : monteCarlo({ inputs, model, seed, ...(trials === undefined ? {} : { trials }) }),
  };
}
