/** Published ranges and accepted ones: true at the limit and false beyond it; accepted at the limit and refused beyond it. */
import {
  agedStrength,
  flush,
  freeChlorine,
  giardiaContact,
  stockSolution,
  treatedVolume,
  virusContact,
} from "risingmain/disinfection";
import { celsius, fahrenheit, mgPerLitre } from "risingmain/units";
import { expect, test } from "vitest";
import { refused } from "../refused.ts";

type Call = (input: never) => { readonly insideRange: boolean };
type Row = [field: string, call: Call, good: object, inside: readonly unknown[], outside: readonly unknown[]];

const cysts = { pH: 7.5, temperature: celsius(10), residual: mgPerLitre(1), logInactivation: 3 };
const viruses = { pH: 7.5, temperature: celsius(10) };
const bleach = { strength: 0.06, age: 86_400, temperature: celsius(25) };

// 32.9 and 77 °F are 0.5 and 25 °C, but for rounding.
const tabled = [celsius(0.5), celsius(25), fahrenheit(32.9), fahrenheit(77)];
const notTabled = [celsius(0.499), celsius(25.001)];

test.each<Row>([
  ["pH", giardiaContact, cysts, [6, 9], [5.99, 9.01]],
  ["temperature", giardiaContact, cysts, tabled, notTabled],
  ["residual", giardiaContact, cysts, [mgPerLitre(3)], [mgPerLitre(3.01)]],
  ["logInactivation", giardiaContact, cysts, [0, 3], [3.01]],
  ["pH", virusContact, viruses, [6, 9, 10], [9.01, 9.99]],
  ["temperature", virusContact, viruses, tabled, notTabled],
  ["temperature", freeChlorine, viruses, [celsius(0), celsius(35)], [celsius(35.01)]],
  ["temperature", agedStrength, bleach, [celsius(20), celsius(60)], [celsius(19.99), celsius(-10)]],
  ["strength", agedStrength, bleach, [0.001, 0.12], [0.1201]],
])("the published range of %s in %s", (field, call, good, inside, outside) => {
  const isInside = (value: unknown) => call({ ...good, [field]: value } as never).insideRange;
  expect(inside.map(isInside)).toEqual(inside.map(() => true));
  expect(outside.map(isInside)).toEqual(outside.map(() => false));
});

test("what may be left out is looked at where it is given", () => {
  const water = { volume: 1, flow: 1e-3, from: 0.1, to: 1e-3 };
  const yielding = (wellYield: number) => refused(() => flush({ ...water, wellYield } as never));
  expect([0, 1000, -1, 1001].map(yielding)).toEqual([undefined, undefined, "wellYield", "wellYield"]);
  const bore = [{ insideDiameter: 0.15, top: 0, bottom: 50 }];
  const piped = (dropPipe: number) => refused(() => treatedVolume({ staticLevel: 10, bore, dropPipe } as never));
  expect([30, 0, 31].map(piped)).toEqual([undefined, "dropPipe", "dropPipe"]);
});

test("the flow is over the yield only above it, and never over one not given", () => {
  const water = { volume: 1, flow: 1e-3, from: 0.1, to: 1e-3 };
  const over = (change: object) => flush({ ...water, ...change } as never).overYield;
  expect([{ wellYield: 1e-3 }, { wellYield: 0.999e-3 }, {}].map(over)).toEqual([false, true, false]);
});

test("a solution that the bleach fills is made; a smaller one is too small", () => {
  // 0.0625 kg of chlorine at 62.5 kg/m³ is 1 L of bleach.
  const input = { volume: 1, target: 0.0625, strength: 0.0625 };
  expect(stockSolution({ ...input, stockVolume: 1e-3 } as never)).toMatchObject({ state: "made", water: 0 });
  expect(stockSolution({ ...input, stockVolume: 0.99e-3 } as never)).toEqual({ state: "too small", bleach: 1e-3 });
});
