/** What each guard lets through and what it refuses, at its edges. */
import { describe, expect, test } from "vitest";
import {
  requireBoolean,
  requireList,
  requireObject,
  requireOneOf,
  requirePositive,
  requireWhole,
  requireWithin,
} from "../../src/numeric/index.ts";

const notNumbers = [Number.NaN, Infinity, -Infinity, "2", undefined, null, [2], { valueOf: () => 2 }];

/** What a refused value says, or nothing. */
function said(guard: (value: unknown) => void, value: unknown): string | undefined {
  try {
    guard(value);
    return undefined;
  } catch (error) {
    expect(error).toMatchObject({ name: "InputError", parameter: "field" });
    return (error as { expected: string }).expected;
  }
}

describe.each([
  ["within", (v: unknown) => requireWithin("field", v, 1, 3, "m"), [1, 2.5, 3], [0.999, 3.001], "1 to 3 m"],
  ["within, no unit", (v: unknown) => requireWithin("field", v, 1, 3, ""), [1, 2.5, 3], [0.999, 3.001], "1 to 3"],
  ["positive", (v: unknown) => requirePositive("field", v, 3, "m"), [5e-324, 3], [0, -0, -1, 3.001], "at most 3 m"],
  ["positive, no unit", (v: unknown) => requirePositive("field", v, 3, ""), [5e-324, 3], [0, 3.001], "at most 3"],
  ["whole", (v: unknown) => requireWhole("field", v, 1, 3), [1, 2, 3], [0, 4, 1.5], "a whole number from 1 to 3"],
] as const)("%s", (_, guard, good, bad, text) => {
  test("takes its range, ends included", () => {
    for (const value of good) expect(said(guard, value)).toBeUndefined();
  });
  test("refuses what lies outside, and what is no number, and says what it wants", () => {
    for (const value of [...bad, ...notNumbers]) expect(said(guard, value)).toMatch(new RegExp(`${text}$`));
  });
});

test("one of", () => {
  const guard = (value: unknown): void => requireOneOf("field", value, ["copper", "aluminum"]);
  expect(said(guard, "copper")).toBeUndefined();
  for (const value of ["tin", undefined, 1, ["copper"]]) expect(said(guard, value)).toBe('one of "copper", "aluminum"');
});

test("object", () => {
  const guard = (value: unknown): void => requireObject("field", value);
  for (const value of [{}, [], () => 1, Object.create(null)]) expect(said(guard, value)).toBeUndefined();
  for (const value of [undefined, null, 1, "text", true]) expect(said(guard, value)).toBe("an object");
});

test("list", () => {
  const guard = (value: unknown): void => requireList("field", value, 1, 3);
  for (const value of [[1], [1, 2, 3]]) expect(said(guard, value)).toBeUndefined();
  for (const value of [[], [1, 2, 3, 4], { length: 2 }, "ab"]) expect(said(guard, value)).toBe("a list of 1 to 3");
});

test("boolean", () => {
  const guard = (value: unknown): void => requireBoolean("field", value);
  for (const value of [true, false]) expect(said(guard, value)).toBeUndefined();
  for (const value of [0, "true", undefined, null]) expect(said(guard, value)).toBe("true or false");
});
