/** A sweep is every combination once, in order, however it is cut. */
import fc from "fast-check";
import { countVariants, type SweepPart, sweep, sweepParts, variantAt } from "risingmain/selection";
import { describe, expect, test } from "vitest";
import { refused } from "../refused.ts";

const axes = fc.dictionary(
  fc.constantFrom("pump", "size", "setting", "pressure"),
  fc.uniqueArray(fc.nat(99), { minLength: 1, maxLength: 4 }),
  { minKeys: 1 },
);

test("every combination once", () => {
  fc.assert(
    fc.property(axes, (lists) => {
      const seen = [...sweep(lists)].map(({ variant }) => JSON.stringify(variant));
      expect(new Set(seen).size).toBe(countVariants(lists));
      expect(seen.length).toBe(Object.values(lists).reduce((product, list) => product * list.length, 1));
    }),
  );
});

test("parts put together are the whole, and travel as JSON", () => {
  fc.assert(
    fc.property(axes, fc.integer({ min: 1, max: 50 }), (lists, size) => {
      const sent = JSON.parse(JSON.stringify({ lists, parts: [...sweepParts(lists, size)] })) as {
        lists: typeof lists;
        parts: SweepPart[];
      };
      const put = sent.parts.flatMap((part) => [...sweep(sent.lists, part)]);
      expect(put).toEqual([...sweep(lists)]);
    }),
  );
});

test("the variant at a place is the one the sweep makes there", () => {
  fc.assert(
    fc.property(axes, (lists) => {
      for (const { index, variant } of sweep(lists)) expect(variantAt(lists, index)).toEqual(variant);
    }),
  );
});

test("none is made before it is asked for: a sweep of a billion starts at once", () => {
  const long = Array.from({ length: 1000 }, (_, i) => i);
  const all = sweep({ a: long, b: long, c: long });
  expect(all.next().value).toEqual({ index: 0, variant: { a: 0, b: 0, c: 0 } });
  expect(variantAt({ a: long, b: long, c: long }, 123_456_789)).toEqual({ a: 123, b: 456, c: 789 });
});

test("a choice that is not plain data is refused where it is reached, and not before", () => {
  const curve = { points: [1, 2] };
  const lists = { pump: [curve, { points: [1, Number.NaN] }], setting: [40, 60] };
  const all = sweep(lists);
  expect(all.next().value).toEqual({ index: 0, variant: { pump: curve, setting: 40 } });
  expect(all.next().value).toEqual({ index: 1, variant: { pump: curve, setting: 60 } });
  expect(() => all.next()).toThrow("axes.pump[1].points.1");
  expect(() => variantAt(lists, 3)).toThrow("axes.pump[1].points.1");
});

test("an axis may have any name", () => {
  const lists = JSON.parse('{ "__proto__": [1, 2], "constructor": [3] }') as Record<string, number[]>;
  expect([...sweep(lists)].map(({ variant }) => JSON.stringify(variant))).toEqual([
    '{"__proto__":1,"constructor":3}',
    '{"__proto__":2,"constructor":3}',
  ]);
});

describe("what is refused, by name", () => {
  const named = (count: number) => Object.fromEntries(Array.from({ length: count }, (_, i) => [`a${i}`, [1]]));
  const long = (count: number) => new Array<number>(count).fill(1);
  // 1e6 × 1e6 combinations, and twice as many.
  const most = { a: long(1e6), b: long(1e6) };
  const two = { a: [1, 2] };
  test.each<[name: string, call: (value: never) => unknown, accepted: readonly unknown[], refused: readonly unknown[]]>(
    [
      [
        "axes",
        (lists) => countVariants(lists),
        [named(1), named(50), most],
        [{}, named(51), undefined, { ...most, c: [1, 2] }],
      ],
      ["axes.a", (a) => countVariants({ a }), [[1], most.a], [[], long(1e6 + 1), "abc"]],
      ["index", (index) => variantAt(two, index), [0, 1], [-1, 2, 0.5]],
      ["part.from", (from) => sweep(two, { from, to: 2 }), [0, 2], [-1, 3]],
      ["part.to", (to) => sweep(two, { from: 1, to }), [1, 2], [0, 3]],
      ["size", (size) => sweepParts(two, size), [1, 1e9], [0, 1e9 + 1, 1.5]],
      [
        "axes.a[0]",
        (choice) => variantAt({ a: [choice] }, 0),
        ["x", true, null, 1, {}, []],
        [undefined, Number.NaN, Infinity, 1n, () => 1],
      ],
      [`axes.a[0]${".in".repeat(31)}`, (depth) => variantAt({ a: [nested(depth)] }, 0), [30], [31]],
    ],
  )("%s", (name, call, accepted, wrong) => {
    for (const value of accepted) expect(refused(() => call(value as never))).toBeUndefined();
    for (const value of wrong) expect(refused(() => call(value as never))).toBe(name);
  });

  function nested(depth: number): unknown {
    return depth === 0 ? 1 : { in: nested(depth - 1) };
  }
});

test("parts of a size that divides the sweep: none is left over", () => {
  expect([...sweepParts({ a: [1, 2, 3, 4] }, 2)]).toEqual([
    { from: 0, to: 2 },
    { from: 2, to: 4 },
  ]);
});

test("a sweep ends with its part, and a part of nothing is empty", () => {
  expect([...sweep({ a: [1, 2, 3] }, { from: 1, to: 2 })]).toEqual([{ index: 1, variant: { a: 2 } }]);
  expect([...sweep({ a: [1, 2, 3] }, { from: 3, to: 3 })]).toEqual([]);
});

test("a choice that is an object is looked at once, a number each time", () => {
  let looked = 0;
  const choice = {
    get head() {
      looked++;
      return 40;
    },
  };
  expect([...sweep({ pump: [choice], setting: [1, 2, 3] })].length).toBe(3);
  expect(looked).toBe(1);
});
