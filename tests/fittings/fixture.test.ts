/** Tees, tapers and sudden changes against a general-purpose fluids library, from a recorded fixture. */
import { readFileSync } from "node:fs";
import {
  fullyTurbulentFactor,
  gradualContraction,
  gradualExpansion,
  suddenExpansion,
  type TaperedChange,
  type TeeInput,
  teeCoefficients,
} from "risingmain/fittings";
import type { Length } from "risingmain/units";
import { expect, test } from "vitest";

interface Fixture {
  readonly tees: readonly (TeeInput & { readonly branch: number; readonly run: number })[];
  readonly tapers: readonly (TaperedChange & { readonly expansion: number; readonly contraction: number })[];
  readonly sudden: readonly {
    readonly smallDiameter: Length;
    readonly largeDiameter: Length;
    readonly expansion: number;
  }[];
  readonly turbulent: readonly { readonly insideDiameter: Length; readonly factor: number }[];
}

const fixture = JSON.parse(
  readFileSync(new URL("../fixtures/fittings-fluids.json", import.meta.url), "utf8"),
) as Fixture;

test.each(fixture.tees)("tee $flowPattern at $angle°, branch $branchDiameter m, $branchFlow m³/s", (row) => {
  const { branch, run } = teeCoefficients(row);
  expect(branch).toBeCloseTo(row.branch, 10);
  expect(run).toBeCloseTo(row.run, 10);
});

test.each(fixture.tapers)("taper of $angle rad from $smallDiameter m", (row) => {
  expect(gradualExpansion(row)).toBeCloseTo(row.expansion, 12);
  expect(gradualContraction(row)).toBeCloseTo(row.contraction, 12);
});

test.each(fixture.sudden)("sudden widening from $smallDiameter m", (row) => {
  expect(suddenExpansion(row)).toBeCloseTo(row.expansion, 12);
});

// The library fits the handbook's own rounded factors; the formula with 0.0018 in meets them to their last printed digit.
test.each(fixture.turbulent)(
  "fully turbulent factor of steel, bore $insideDiameter m",
  ({ insideDiameter, factor }) => {
    expect(Math.abs(fullyTurbulentFactor({ insideDiameter }) - factor)).toBeLessThan(0.001);
  },
);
