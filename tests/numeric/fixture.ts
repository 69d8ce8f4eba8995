/** What SciPy and mpmath made of the same tasks; see `tests/fixtures/numeric.py`. */
import { readFileSync } from "node:fs";

interface Fixture {
  readonly steps: readonly {
    readonly from: readonly number[];
    readonly step: number;
    readonly next: readonly number[];
    readonly error: readonly number[];
    readonly within: readonly { readonly share: number; readonly state: readonly number[] }[];
  }[];
  readonly roots: readonly {
    readonly name: string;
    readonly low: number;
    readonly high: number;
    readonly x: number;
    readonly calls: number;
  }[];
  readonly fit: {
    readonly rows: readonly (readonly number[])[];
    readonly y: readonly number[];
    readonly coefficients: readonly number[];
    readonly residuals: readonly number[];
    readonly deviation: number;
    readonly standardErrors: readonly number[];
  };
  readonly cubic: {
    readonly x: readonly number[];
    readonly y: readonly number[];
    readonly slope: readonly number[];
    readonly read: readonly { readonly x: number; readonly value: number; readonly slope: number }[];
  };
}

export const fixture = JSON.parse(
  readFileSync(new URL("../fixtures/numeric.json", import.meta.url), "utf8"),
) as Fixture;

/** Greatest difference between two lists, each as a share of the greater value of the second. */
export function apart(got: readonly number[] | Float64Array, want: readonly number[]): number {
  const size = Math.max(...want.map(Math.abs));
  return Math.max(...want.map((value, i) => Math.abs((got[i] ?? Number.NaN) - value))) / size;
}
