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
