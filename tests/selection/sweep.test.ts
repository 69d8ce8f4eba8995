/** A sweep is every combination once, in order, however it is cut. */
import fc from "fast-check";
import { countVariants, type SweepPart, sweep, sweepParts, variantAt } from "risingmain/selection";
import { expect, test } from "vitest";

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
