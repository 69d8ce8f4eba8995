/** The error function against mpmath. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { erf, erfc, scaledErfc } from "../../src/numeric/index.ts";

interface Row {
  readonly x: number;
  readonly erf: string;
  readonly erfc: string;
  readonly scaled: string;
}

const { rows } = JSON.parse(readFileSync(new URL("../fixtures/erf.json", import.meta.url), "utf8")) as { rows: Row[] };

test.each(rows)("error function at $x to the digits of a double", ({ x, erf: e, erfc: c, scaled }) => {
  expect(Math.abs(erf(x) / Number(e) - 1)).toBeLessThan(1e-14);
  expect(Math.abs(erfc(x) / Number(c) - 1)).toBeLessThan(1e-12);
  expect(Math.abs(scaledErfc(x) / Number(scaled) - 1)).toBeLessThan(1e-12);
});

test("the scaled complement goes on where e^(x²) overflows and erfc vanishes: 1/(√π x) (1 − 1/(2x²) + 3/(4x⁴))", () => {
  for (const x of [30, 1e3, 1e8]) {
    const far = (1 - 1 / (2 * x * x) + 3 / (4 * x ** 4)) / (Math.sqrt(Math.PI) * x);
    // The next term is 15/(8x⁶).
    expect(Math.abs(scaledErfc(x) / far - 1)).toBeLessThan(15 / (8 * x ** 6) + 1e-15);
  }
});
