/** Where the numbers of the factor lie: as much room as they need, and every number where it belongs. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { eliminationOf } from "../../src/network/elimination-order.ts";
import { panelPlaces } from "../../src/network/panel-places.ts";

const graphs = fc
  .integer({ min: 2, max: 30 })
  .chain((n) =>
    fc.tuple(
      fc.constant(n),
      fc.array(fc.tuple(fc.nat(n - 1), fc.integer({ min: 1, max: n - 1 })), { minLength: 1, maxLength: 3 * n }),
    ),
  );

test("panels follow each other without a gap; each edge lies in the column of its earlier end, at the row of its later", () => {
  fc.assert(
    fc.property(graphs, ([n, pairs]) => {
      const ends = Int32Array.from(pairs.flatMap(([a, step]) => [a, (a + step) % n]));
      const elimination = eliminationOf(n, ends);
      const { order, first, rowStart } = elimination;
      const { panelAt, rows, places, edgeAt } = panelPlaces(ends, elimination);
      const count = first.length - 1;
      expect(panelAt.length).toBe(count + 1);
      // What stands at each place of the list, as column and row.
      const standing: string[] = [];
      let handedOn = 0;
      for (let s = 0; s < count; s++) {
        expect(panelAt[s]).toBe(standing.length);
        const columns = Array.from(
          { length: (first[s + 1] as number) - (first[s] as number) },
          (_, j) => (first[s] as number) + j,
        );
        const beside = Array.from(rows.slice(rowStart[s], rowStart[s + 1]));
        expect(beside).toEqual([...beside].sort((a, b) => a - b));
        for (const j of columns) for (const i of [...columns, ...beside]) standing.push(`${j} ${i}`);
        // For each later panel that has rows of this one: a place for all rows from the first of them.
        const panelOf = (j: number) => first.findIndex((start) => start > j) - 1;
        handedOn += beside.reduce(
          (sum, j, i) => sum + (i === 0 || panelOf(j) !== panelOf(beside[i - 1] as number) ? beside.length - i : 0),
          0,
        );
      }
      expect(panelAt[count]).toBe(standing.length);
      expect(places.length).toBe(handedOn);
      expect(edgeAt.length).toBe(pairs.length);
      edgeAt.forEach((place, e) => {
        const [a, b] = [order.indexOf(ends[2 * e] as number), order.indexOf(ends[2 * e + 1] as number)];
        expect(standing[place]).toBe(`${Math.min(a, b)} ${Math.max(a, b)}`);
      });
    }),
  );
});
