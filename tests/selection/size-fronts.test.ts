/** The search for the cheapest sizes, in small whole numbers: every choice tried, ties met exactly, states counted. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cheapestSizes, type SizeOption, type SizeTree } from "../../src/selection/size-fronts.ts";

/** An option: what it costs, and what it loses in each scenario. */
const option = (cost: number, ...losses: number[]): SizeOption => ({ cost, losses });

/** A line of runs, one after the other, that asks nothing on the way and no head at its end. */
function line(available: readonly number[], ...runs: (readonly SizeOption[])[]): SizeTree {
  return {
    parent: [-1, ...runs.map((_, i) => i)],
    options: [[], ...runs],
    least: [...runs.map(() => available.map(() => -Infinity)), available.map(() => 0)],
    available,
  };
}

/** Trees of 1 to 5 runs, 1 to 3 options each, 1 to 3 scenarios; losses in one scenario tell nothing of the next. */
const trees: fc.Arbitrary<SizeTree> = fc
  .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 3 }))
  .chain(([count, uses]) => {
    const heads = (min: number, max: number) =>
      fc.array(fc.integer({ min, max }), { minLength: uses, maxLength: uses });
    const options = fc.array(fc.record({ cost: fc.integer({ min: 0, max: 9 }), losses: heads(0, 4) }), {
      minLength: 1,
      maxLength: 3,
    });
    return fc.record({
      parent: fc
        .tuple(...Array.from({ length: count }, (_, i) => fc.integer({ min: 0, max: i })))
        .map((list) => [-1, ...list]),
      options: fc.array(options, { minLength: count, maxLength: count }).map((list) => [[], ...list]),
      least: fc.array(heads(-3, 3), { minLength: count + 1, maxLength: count + 1 }),
      available: heads(3, 10),
    });
  });

/** Whether a choice brings every node its least head. */
function serves({ parent, options, least, available }: SizeTree, chosen: readonly number[]): boolean {
  const head: number[][] = [[...available]];
  for (let i = 1; i < parent.length; i++) {
    const losses = options[i]?.[chosen[i] as number]?.losses ?? [];
    head[i] = (head[parent[i] as number] as number[]).map((h, s) => h - (losses[s] as number));
  }
  return head.every((list, i) => list.every((h, s) => h >= (least[i]?.[s] as number)));
}

const costOf = ({ options }: SizeTree, chosen: readonly number[]): number =>
  options.reduce((sum, list, i) => sum + (list[chosen[i] as number]?.cost ?? 0), 0);

/** The least cost of all choices that serve; undefined where none does. */
function exhaustive(tree: SizeTree): number | undefined {
  const counts = tree.options.map(({ length }) => Math.max(1, length));
  const all = counts.reduce((product, count) => product * count, 1);
  let best: number | undefined;
  for (let code = 0; code < all; code++) {
    let rest = code;
    const chosen = counts.map((count) => {
      const k = rest % count;
      rest = (rest - k) / count;
      return k;
    });
    const cost = costOf(tree, chosen);
    if ((best === undefined || cost < best) && serves(tree, chosen)) best = cost;
  }
  return best;
}

test("the cost is that of the best of all choices, proven, and the choice named has it and serves", () => {
  fc.assert(
    fc.property(trees, (tree) => {
      const found = cheapestSizes(tree);
      expect(found?.cost).toBe(exhaustive(tree));
      if (found === undefined) return;
      expect(found.proven).toBe(true);
      expect(costOf(tree, found.chosen)).toBe(found.cost);
      expect(serves(tree, found.chosen)).toBe(true);
    }),
    { numRuns: 500 },
  );
});

test("in other units of head, whose sums are rounded, the same choices serve", () => {
  fc.assert(
    fc.property(trees, fc.constantFrom(1 / 3, 0.1, 1e3 / 7, 1e6 / 3), (tree, unit) => {
      const times = (heads: readonly number[]) => heads.map((head) => head * unit);
      const other = {
        ...tree,
        options: tree.options.map((list) => list.map(({ cost, losses }) => option(cost, ...times(losses)))),
        least: tree.least.map(times),
        available: times(tree.available),
      };
      expect(cheapestSizes(other)?.cost).toBe(cheapestSizes(tree)?.cost);
    }),
    { numRuns: 500 },
  );
});

describe("states that cannot be part of the best are not kept: by hand, at each run and where it joins the rest", () => {
  // Cost and loss of three sizes.
  const lossy = ({ cost, losses }: SizeOption) => option(cost, ...losses.map((loss) => loss + 1));
  const dearer = ({ cost, losses }: SizeOption) => option(cost + 10, ...losses);
  const [a, b, c] = [option(0, 2), option(1, 1), option(3, 0)];
  test.each<[title: string, tree: SizeTree, states: number, cost: number]>([
    ["the cheapest serve: they alone", line([4], [a, b, c], [c, b, a]), 2 + 2, 0],
    ["none but the widest serve: they alone", line([0], [a, b, c], [c, b, a], [b, c, a]), 2 + 2 + 2, 9],
    // The far run may be a or b, for with c it costs more than a and b together; then only one a and one b do.
    ["a size that costs more than a layout known to serve", line([3], [a, b, c], [b, a, c]), 2 * 2 + 2, 1],
    [
      "the same where every size loses some",
      line([3], [lossy(a), lossy(b), lossy(c)], [lossy(c), lossy(a)], [lossy(b), lossy(c)]),
      2 * 3,
      9,
    ],
    [
      "a size that with the least of the rest costs more",
      line([3], [dearer(a), dearer(b), dearer(c)], [a, b, c]),
      2 * 2 + 2,
      11,
    ],
    ["of two alike, one", line([2], [a, a]), 2, 0],
    ["of two at one cost, the one that loses less", line([2], [a, option(0, 1)]), 2, 0],
    ["in two uses, of two alike, one", line([2, 2], [option(0, 2, 1), option(0, 2, 1)]), 2, 0],
    [
      "in two uses, at one cost, the one that loses less in both",
      line([2, 2], [option(0, 2, 1), option(0, 1, 1)]),
      2,
      0,
    ],
    [
      "in two uses, at one cost, the one that loses less in the second",
      line([2, 2], [option(0, 2, 1), option(0, 2, 0)]),
      2,
      0,
    ],
    [
      "in two uses, at one cost, the one that loses less in the second, listed first",
      line([2, 2], [option(0, 2, 0), option(0, 2, 1)]),
      2,
      0,
    ],
    [
      "in two uses, the one that serves both, though it loses more in all",
      line([3, 3], [option(0, 0, 4), option(5, 3, 3)]),
      2,
      5,
    ],
    [
      "in two uses, at one cost, each the one that loses less in one",
      line([2, 2], [option(0, 2, 1), option(0, 1, 2)]),
      4,
      0,
    ],
    // The near run must be the dear one, so that the far run could be any; the third size is no better than the second.
    [
      "one that costs and loses more than another",
      line([3], [option(0, 3), option(5, 0)], [option(0, 3), option(1, 1), option(2, 2)]),
      2 * 2 + 2,
      5,
    ],
    [
      "the same in two uses",
      line([3, 3], [option(0, 3, 3), option(5, 0, 0)], [option(0, 3, 3), option(1, 1, 1), option(2, 1, 2)]),
      2 * 2 + 2,
      5,
    ],
    // The known layout takes the greatest saving first, 9 in the far run; the saving of 1 in the near one would shut it out.
    [
      "the greatest saving is tried first",
      line([3], [option(1, 0), option(0, 3)], [option(10, 0), option(0, 3)]),
      4,
      1,
    ],
  ])("%s", (_, tree, states, cost) => {
    expect(cheapestSizes(tree)).toMatchObject({ states, cost, proven: true });
  });
});

describe("a run of thousands of sizes, each a little dearer than the next worse, beyond one of two", () => {
  /** The far run's sizes lose a metre less for each unit of cost; the near run loses `loss`, or nothing at a cost of `dear`. */
  const found = (dear: number, loss: number) =>
    cheapestSizes(
      line(
        [9000],
        [option(0, loss), option(dear, 0)],
        Array.from({ length: 9001 }, (_, cost) => option(cost, 9000 - cost)),
      ),
    );
  // What the dear near run costs, with the cheapest far, is known to serve: the far run keeps its sizes up to that cost.
  // The cheap near run asks for those that lose so much less: they cost what it loses and more.
  test("4000 states are all kept", () => {
    expect(found(3999, 1000)).toMatchObject({ cost: 1000, proven: true, states: 2 * (4000 + 3000) });
  });
  test("of more, 4000 evenly along the front: the best is a step away at most, and not proven", () => {
    const { cost, proven, states } = found(7999, 5000) as NonNullable<ReturnType<typeof found>>;
    expect(proven).toBe(false);
    // Two of 8000 to a step; those of the far run that cost 5000 and more serve with the cheap near one.
    expect(states).toBe(2 * (4000 + 1500));
    expect(cost).toBeGreaterThanOrEqual(5000);
    expect(cost).toBeLessThanOrEqual(5002);
  });
  test("the cheapest and the dearest among them", () => {
    expect(found(7999.5, 7999)).toMatchObject({ cost: 7999, proven: false });
    expect(found(7999.5, 9000)).toMatchObject({ cost: 7999.5, proven: false });
  });
});
