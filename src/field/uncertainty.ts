/**
 * The law of propagation of uncertainty: how the doubt about each reading adds up in a result.
 *
 * @module
 */
import { requireList, requireObject, requireWhole, requireWithin } from "../numeric/index.ts";
import { InputError } from "../units/index.ts";

/** The largest reading accepted: squares of it still fit a double with room. */
const LARGEST = 1e100;
/** Step of the numerical slope over the standard uncertainty, and the least step over the reading: the cube root of a double's
 * grain, where the error of the slope is least. */
const STEP = 1e-3;
const LEAST_STEP = 6e-6;
/** Coverage factor for about 95 % (`jcgm-100`, 6.3.3). */
const COVERAGE = 2;

/** A reading with its doubt. */
export interface UncertainInput {
  /** What it is. */
  readonly name: string;
  /** Best estimate, in any unit. −1e100 to 1e100. */
  readonly value: number;
  /** Standard uncertainty, in the same unit. 0 to 1e100. */
  readonly standardUncertainty: number;
}

/** How two readings hang together. */
export interface Correlation {
  /** Place of the one in the list of inputs, from 0. */
  readonly first: number;
  /** Place of the other. */
  readonly second: number;
  /** Correlation coefficient. −1 to 1. */
  readonly coefficient: number;
}

/** Readings and what is made of them. */
export interface PropagationInput {
  /** The readings; 1 to 100. */
  readonly inputs: readonly UncertainInput[];
  /** The result as a function of the values, in the order of `inputs`. It must be finite and smooth near them. */
  readonly model: (values: readonly number[]) => number;
  /** Correlated pairs, each once; up to 4950. Independent where left out. */
  readonly correlations?: readonly Correlation[];
}

/** What one reading adds. */
export interface UncertaintyPart {
  /** Name of the reading. */
  readonly name: string;
  /** Slope of the result with it. */
  readonly sensitivity: number;
  /** |slope| × standard uncertainty: what the result's would be were this the only doubt. */
  readonly contribution: number;
  /** Its share of the sum of squares. 0 to 1. */
  readonly share: number;
}

/** A result with its doubt. */
export interface Propagated {
  /** The result at the best estimates. */
  readonly value: number;
  /** Combined standard uncertainty. */
  readonly standardUncertainty: number;
  /** Expanded uncertainty, coverage factor 2, about 95 %. */
  readonly expandedUncertainty: number;
  /** What each reading adds, in the order of the inputs. */
  readonly parts: readonly UncertaintyPart[];
  /** Source of the law. */
  readonly method: "jcgm-100";
}

/**
 * The uncertainty of a result from those of its readings, to first order.
 *
 * @remarks
 * u²(y) = Σᵢ (cᵢ uᵢ)² + 2 Σᵢ<ⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ,  cᵢ = ∂f/∂xᵢ
 *
 * with the slopes taken by central differences of a thousandth of uᵢ. First order: where the model bends within ±u of a reading
 * use `monteCarlo`, which also says when this is good enough. Angles in radians, and any units so long as they go together.
 *
 * @param input - readings, model and correlations; each field says its range
 * @returns value, standard and expanded uncertainty, and the part of each reading
 * @throws {@link units.InputError} naming the first field outside its range, or the model where it gives no finite number
 *
 * @example A flow from a volume and a time
 * ```ts
 * import { propagateUncertainty } from "risingmain/field";
 *
 * const flow = propagateUncertainty({
 *   inputs: [
 *     { name: "gallons", value: 5, standardUncertainty: 0.1 }, { name: "seconds", value: 18, standardUncertainty: 0.5 },
 *   ],
 *   model: ([gallons = 0, seconds = 1]) => (60 * gallons) / seconds,
 * });
 * flow.value; // ≈ 16.667
 * flow.standardUncertainty; // ≈ 0.570
 * ```
 *
 * @source jcgm-100, 5.1.2 and 5.2.2
 */
export function propagateUncertainty(input: PropagationInput): Propagated {
  requireReadings(input);
  const { inputs, model, correlations = [] } = input;
  const n = inputs.length;
  requireList("correlations", correlations, 0, 4950);
  const values = inputs.map(({ value }) => value);
  const value = evaluate(model, values);

  const terms = inputs.map(({ value: x, standardUncertainty: u }, i) => {
    if (u === 0) return { sensitivity: 0, signed: 0 };
    const step = Math.max(STEP * u, LEAST_STEP * Math.abs(x));
    const at = (reading: number): number =>
      evaluate(
        model,
        values.map((v, j) => (j === i ? reading : v)),
      );
    const high = x + step;
    const low = x - step;
    // The step that was really taken, after rounding.
    const sensitivity = (at(high) - at(low)) / (high - low);
    return { sensitivity, signed: sensitivity * u };
  });
  const squares = terms.reduce((sum, { signed }) => sum + signed * signed, 0);
  let variance = squares;
  correlations.forEach((pair, i) => {
    requireObject(`correlations[${i}]`, pair);
    requireWhole(`correlations[${i}].first`, pair.first, 0, n - 1);
    requireWhole(`correlations[${i}].second`, pair.second, 0, n - 1);
    if (pair.first === pair.second) throw new InputError(`correlations[${i}].second`, pair.second, "another reading");
    requireWithin(`correlations[${i}].coefficient`, pair.coefficient, -1, 1, "");
    const a = terms[pair.first]?.signed ?? 0;
    const b = terms[pair.second]?.signed ?? 0;
    variance += 2 * a * b * pair.coefficient;
  });
  // Coefficients that no readings can have together may leave less than nothing.
  const standardUncertainty = Math.sqrt(Math.max(variance, 0));
  if (!Number.isFinite(standardUncertainty)) {
    throw new InputError("model", standardUncertainty, "slopes whose squares fit a double");
  }
  return {
    value,
    standardUncertainty,
    expandedUncertainty: COVERAGE * standardUncertainty,
    parts: inputs.map(({ name }, i) => {
      const { sensitivity, signed } = terms[i] as (typeof terms)[number];
      return {
        name: String(name),
        sensitivity,
        contribution: Math.abs(signed),
        share: squares > 0 ? (signed * signed) / squares : 0,
      };
    }),
    method: "jcgm-100",
  };
}

/**
 * Refuses readings and models that cannot be used.
 *
 * @internal
 */
export function requireReadings(input: {
  readonly inputs: readonly UncertainInput[];
  readonly model: (values: readonly number[]) => number;
}): void {
  requireObject("input", input);
  requireList("inputs", input.inputs, 1, 100);
  input.inputs.forEach((reading, i) => {
    requireObject(`inputs[${i}]`, reading);
    if (typeof reading.name !== "string") throw new InputError(`inputs[${i}].name`, reading.name, "a text");
    requireWithin(`inputs[${i}].value`, reading.value, -LARGEST, LARGEST, "");
    requireWithin(`inputs[${i}].standardUncertainty`, reading.standardUncertainty, 0, LARGEST, "");
  });
  if (typeof input.model !== "function") throw new InputError("model", input.model, "a function of the readings");
}

/**
 * The model's answer, where it is a number that can be reckoned with.
 *
 * @internal
 */
export function evaluate(model: (values: readonly number[]) => number, values: readonly number[]): number {
  const result: unknown = model(values);
  if (!(typeof result === "number" && Math.abs(result) <= LARGEST)) {
    throw new InputError("model", result, `a function that gives a number from −${LARGEST} to ${LARGEST}`);
  }
  return result;
}
