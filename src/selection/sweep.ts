/**
 * Sweeps: every combination of some choices, made one at a time, and cut into pieces that any worker can carry.
 *
 * @module
 */
import { requireList, requireObject, requireWhole } from "../numeric/index.ts";
import { InputError } from "../units/index.ts";

/** The choices of a sweep by name: pumps, sizes, settings, pressures. Plain data, so that it can be sent anywhere. */
export type SweepAxes = Readonly<Record<string, readonly unknown[]>>;

/** One combination: a choice from each axis, under the axis's name. */
export type Variant<Axes extends SweepAxes> = { readonly [Name in keyof Axes]: Axes[Name][number] };

/** A combination and its place among all of them. */
export interface NumberedVariant<Axes extends SweepAxes> {
  /** Place, from 0; the last axis moves fastest. */
  readonly index: number;
  /** The combination. */
  readonly variant: Variant<Axes>;
}

/** A piece of a sweep: the variants from `from` up to but not including `to`. */
export interface SweepPart {
  /** First place. */
  readonly from: number;
  /** Place after the last. */
  readonly to: number;
}

/** Most combinations: places stay exact whole numbers. */
const MOST_VARIANTS = 1e12;
/** Deepest nesting of a choice; what is nested deeper is most likely nested in itself. */
const DEEPEST = 30;

/**
 * The number of combinations of a sweep.
 *
 * @param axes - 1 to 50 lists of 1 to 1 000 000 choices, by name
 * @returns the product of their lengths, at most 1e12
 * @throws {@link units.InputError} where an axis is not a list of choices
 *
 * @example
 * ```ts
 * import { countVariants } from "risingmain/selection";
 *
 * countVariants({ pump: ["a", "b", "c"], setting: [40, 60] }); // => 6
 * ```
 *
 * @source derived: a product
 */
export function countVariants(axes: SweepAxes): number {
  requireObject("axes", axes);
  const lists = Object.entries(axes);
  if (!(lists.length >= 1 && lists.length <= 50))
    throw new InputError("axes", axes, "1 to 50 lists of choices by name");
  let count = 1;
  for (const [name, choices] of lists) {
    requireList(`axes.${name}`, choices, 1, 1_000_000);
    count *= choices.length;
  }
  if (!(count <= MOST_VARIANTS))
    throw new InputError("axes", axes, `at most ${MOST_VARIANTS} combinations, not ${count}`);
  return count;
}

/**
 * The combination at one place of a sweep.
 *
 * @param axes - lists of choices by name, as for {@link countVariants}
 * @param index - its place, from 0 to one less than their number
 * @returns one choice from each axis
 * @throws {@link units.InputError} where the place is none of the sweep, or a choice is not plain data
 *
 * @example
 * ```ts
 * import { variantAt } from "risingmain/selection";
 *
 * variantAt({ pump: ["a", "b", "c"], setting: [40, 60] }, 3); // => { pump: "b", setting: 60 }
 * ```
 *
 * @source derived: the place written in the mixed base of the lengths
 */
export function variantAt<const Axes extends SweepAxes>(axes: Axes, index: number): Variant<Axes> {
  requireWhole("index", index, 0, countVariants(axes) - 1);
  return picker(axes)(index);
}

/**
 * The combinations of a sweep, or of a part of it, one at a time: none is made before it is asked for.
 *
 * @param axes - lists of choices by name, as for {@link countVariants}
 * @param part - the places wanted; all if left out
 * @returns a generator of combinations with their places, in order
 * @throws {@link units.InputError} at once, where the axes or the part cannot be used; later, where a choice is not plain data
 *
 * @example
 * ```ts
 * import { sweep } from "risingmain/selection";
 *
 * const seen: string[] = [];
 * for (const { index, variant } of sweep({ pump: ["a", "b"], setting: [40, 60] })) {
 *   seen.push(`${index}: ${variant.pump} ${variant.setting}`);
 * }
 * seen; // => ["0: a 40", "1: a 60", "2: b 40", "3: b 60"]
 * ```
 *
 * @source derived: counting in the mixed base of the lengths
 */
export function sweep<const Axes extends SweepAxes>(
  axes: Axes,
  part?: SweepPart,
): Generator<NumberedVariant<Axes>, void, undefined> {
  const count = countVariants(axes);
  const { from, to } = part ?? { from: 0, to: count };
  requireWhole("part.from", from, 0, count);
  requireWhole("part.to", to, from, count);
  return variants(axes, from, to);
}

/**
 * Cuts a sweep into parts of equal size: plain data for a worker thread, a queue or a cluster.
 *
 * @remarks
 * A worker needs the axes and its part, and gives back one result for each variant (or a sum over its part). Parts put
 * together in order are the whole sweep, so an aggregate taken in that order has the same bits however the parts were
 * spread.
 *
 * @param axes - lists of choices by name, as for {@link countVariants}
 * @param size - variants in a part, the last may have fewer; 1 to 1e9
 * @returns a generator of parts, in order
 * @throws {@link units.InputError} at once, where the axes or the size cannot be used
 *
 * @example
 * ```ts
 * import { sweepParts } from "risingmain/selection";
 *
 * [...sweepParts({ pump: ["a", "b", "c"], setting: [40, 60] }, 4)]; // => [{ from: 0, to: 4 }, { from: 4, to: 6 }]
 * ```
 *
 * @source derived: counting
 */
export function sweepParts(axes: SweepAxes, size: number): Generator<SweepPart, void, undefined> {
  const count = countVariants(axes);
  requireWhole("size", size, 1, 1e9);
  return parts(count, size);
}

function* parts(count: number, size: number): Generator<SweepPart, void, undefined> {
  for (let from = 0; from < count; from += size) yield { from, to: Math.min(count, from + size) };
}

function* variants<Axes extends SweepAxes>(
  axes: Axes,
  from: number,
  to: number,
): Generator<NumberedVariant<Axes>, void, undefined> {
  const pick = picker(axes);
  for (let index = from; index < to; index++) yield { index, variant: pick(index) };
}

/**
 * Makes combinations by their places. A choice that is an object is looked at once, when it is first picked: looking at
 * a pump's curve each time cost more than solving for its operating point.
 */
function picker<Axes extends SweepAxes>(axes: Axes): (index: number) => Variant<Axes> {
  const lists = Object.entries(axes).reverse();
  const empty: Record<string, unknown> = Object.fromEntries(Object.keys(axes).map((name) => [name, null]));
  const seen = new Set<unknown>();
  return (index) => {
    const variant = { ...empty };
    let rest = index;
    for (const [name, choices] of lists) {
      const place = rest % choices.length;
      const choice = choices[place];
      if (!seen.has(choice)) {
        plain(`axes.${name}[${place}]`, choice);
        if (typeof choice === "object") seen.add(choice);
      }
      variant[name] = choice;
      rest = Math.floor(rest / choices.length);
    }
    return variant as Variant<Axes>;
  };
}

/** Refuses what JSON would not carry to a worker: functions, undefined, NaN and the infinities, however deep. */
function plain(parameter: string, choice: unknown, depth = 0): unknown {
  if (depth > DEEPEST) throw new InputError(parameter, choice, `plain data at most ${DEEPEST} deep`);
  if (typeof choice === "object" && choice !== null) {
    for (const key of Object.keys(choice))
      plain(`${parameter}.${key}`, (choice as Record<string, unknown>)[key], depth + 1);
    return choice;
  }
  const carried =
    typeof choice === "number"
      ? Number.isFinite(choice)
      : choice === null || ["string", "boolean"].includes(typeof choice);
  if (!carried) throw new InputError(parameter, choice, "plain data, as JSON carries it");
  return choice;
}
