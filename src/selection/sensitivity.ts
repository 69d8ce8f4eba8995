/**
 * What matters most: how far results move with each input.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: lists of one length, walked together.
import { requireObject, requireWithin } from "../numeric/index.ts";
import { InputError } from "../units/index.ts";

/** Named numbers, SI. */
export type NamedNumbers = Readonly<Record<string, number>>;

/** A model and the point it is judged at. */
export interface SensitivityInput {
  /** Inputs by name, 1 to 1000 of them, none 0: a per cent of nothing is nothing. −1e15 to 1e15. */
  readonly inputs: NamedNumbers;
  /** The model: results by name for inputs by name. */
  readonly evaluate: (inputs: NamedNumbers) => NamedNumbers;
  /** Step either way, as a share of each input; 0.01 if left out. 1e-6 to 0.5. */
  readonly step?: number;
}

/** How one result answers to one input. */
export interface Sensitivity {
  /** Name of the input. */
  readonly input: string;
  /** Name of the result. */
  readonly output: string;
  /** The result at the point. */
  readonly base: number;
  /** Change of the result for one per cent more of the input, in the result's unit. */
  readonly changePerPercent: number;
  /** Per cent of the result for one per cent of the input; null where the result is 0. */
  readonly elasticity: number | null;
}

/**
 * How much each result moves per per cent of each input, at one point.
 *
 * @remarks
 * Central difference: (y(x + δ) − y(x − δ)) / (2 δ) · x / 100, δ = `step` · |x|. Exact for straight lines and parabolas.
 *
 * @param input - the inputs, the model and the step
 * @returns one entry for each input and result, inputs in order
 * @throws {@link units.InputError} where an input is 0 or the model gives anything but finite numbers
 *
 * @example Head lost goes with the fifth power of the bore
 * ```ts
 * import { sensitivity } from "risingmain/selection";
 *
 * const [bore] = sensitivity({ inputs: { bore: 0.03 }, evaluate: ({ bore = 1 }) => ({ loss: 1e-6 / bore ** 5 }) });
 * bore?.elasticity ?? 0; // ≈ -5.0
 * ```
 *
 * @source derived: central difference
 */
export function sensitivity(input: SensitivityInput): readonly Sensitivity[] {
  requireObject("input", input);
  const { evaluate, step = 0.01 } = input;
  requireWithin("step", step, 1e-6, 0.5, "");
  const inputs = readInputs(input.inputs);
  for (const [name, value] of Object.entries(inputs)) {
    if (value === 0) throw new InputError(`inputs.${name}`, value, "a number other than 0");
  }
  const model = reader(evaluate);
  const base = model(inputs);
  return Object.entries(inputs).flatMap(([name, value]) => {
    const by = step * Math.abs(value);
    const above = model({ ...inputs, [name]: value + by });
    const below = model({ ...inputs, [name]: value - by });
    return Object.entries(base).map(([output, at]) => {
      const slope = (resultOf(above, output) - resultOf(below, output)) / (2 * by);
      const changePerPercent = (slope * value) / 100;
      return {
        input: name,
        output,
        base: at,
        changePerPercent: finite(output, changePerPercent),
        elasticity: at === 0 ? null : finite(output, (100 * changePerPercent) / at),
      };
    });
  });
}

/** A model, and how far each input may lie from its best guess. */
export interface TornadoInput {
  /** Best guess of each input, 1 to 1000 of them. −1e15 to 1e15. */
  readonly inputs: NamedNumbers;
  /** Lowest and highest of the inputs that are to be swung; the others stay. */
  readonly ranges: Readonly<Record<string, readonly [number, number]>>;
  /** The model: results by name for inputs by name. */
  readonly evaluate: (inputs: NamedNumbers) => NamedNumbers;
  /** Name of the result that is watched. */
  readonly output: string;
}

/** One bar of a tornado chart. */
export interface TornadoBar {
  /** Name of the input. */
  readonly input: string;
  /** The result at the input's lowest. */
  readonly atLow: number;
  /** The result at the input's highest. */
  readonly atHigh: number;
  /** Distance between the two. */
  readonly swing: number;
}

/** The bars of a tornado chart, widest first. */
export interface Tornado {
  /** The result at the best guess. */
  readonly base: number;
  /** One bar for each range, widest first; ties in the order of the ranges. */
  readonly bars: readonly TornadoBar[];
}

/**
 * One-at-a-time swings of a result, widest first: the data of a tornado chart.
 *
 * @remarks
 * Each input goes to its lowest and its highest while the others stay at their best guess; what two of them do together
 * is not seen.
 *
 * @param input - best guesses, ranges, the model and the result watched
 * @returns the result at the best guess and one bar for each range
 * @throws {@link units.InputError} where a range is not one of an input, or the model gives anything but finite numbers
 *
 * @example
 * ```ts
 * import { tornado } from "risingmain/selection";
 *
 * const { bars } = tornado({
 *   inputs: { lift: 60, friction: 12 },
 *   ranges: { friction: [10, 18], lift: [55, 75] },
 *   evaluate: ({ lift = 0, friction = 0 }) => ({ head: lift + friction }),
 *   output: "head",
 * });
 * bars.map(({ input, swing }) => `${input} ${swing}`); // => ["lift 20", "friction 8"]
 * ```
 *
 * @source derived: one evaluation at each end of each range
 */
export function tornado(input: TornadoInput): Tornado {
  requireObject("input", input);
  const { ranges, evaluate, output } = input;
  const inputs = readInputs(input.inputs);
  requireObject("ranges", ranges);
  if (typeof output !== "string") throw new InputError("output", output, "the name of a result");
  const model = reader(evaluate);
  const base = resultOf(model(inputs), output);
  const bars = Object.entries(ranges).map(([name, range]) => {
    if (!Object.hasOwn(inputs, name)) throw new InputError("ranges", name, "names of inputs");
    if (!(Array.isArray(range) && range.length === 2))
      throw new InputError(`ranges.${name}`, range, "lowest and highest");
    const [low, high] = range;
    requireWithin(`ranges.${name}[0]`, low, -1e15, 1e15, "");
    requireWithin(`ranges.${name}[1]`, high, low, 1e15, "");
    const atLow = resultOf(model({ ...inputs, [name]: low }), output);
    const atHigh = resultOf(model({ ...inputs, [name]: high }), output);
    return { input: name, atLow, atHigh, swing: finite(output, Math.abs(atHigh - atLow)) };
  });
  return { base, bars: bars.sort((a, b) => b.swing - a.swing) };
}

function readInputs(inputs: NamedNumbers): NamedNumbers {
  requireObject("inputs", inputs);
  const entries = Object.entries(inputs);
  if (!(entries.length >= 1 && entries.length <= 1000))
    throw new InputError("inputs", inputs, "1 to 1000 named numbers");
  for (const [name, value] of entries) requireWithin(`inputs.${name}`, value, -1e15, 1e15, "");
  return { ...inputs };
}

/** The model, with its results checked. */
function reader(evaluate: (inputs: NamedNumbers) => NamedNumbers): (inputs: NamedNumbers) => NamedNumbers {
  if (typeof evaluate !== "function") throw new InputError("evaluate", evaluate, "a function from inputs to results");
  return (inputs) => {
    const results: unknown = evaluate(inputs);
    requireObject("evaluate(inputs)", results);
    for (const [name, value] of Object.entries(results as NamedNumbers)) finite(name, value);
    return results as NamedNumbers;
  };
}

function resultOf(results: NamedNumbers, output: string): number {
  if (!Object.hasOwn(results, output))
    throw new InputError("evaluate(inputs)", results, `a result named ${JSON.stringify(output)} each time`);
  return results[output]!;
}

function finite(name: string, value: unknown): number {
  if (!Number.isFinite(value)) throw new InputError(`evaluate(inputs).${name}`, value, "a finite number");
  return value as number;
}
