/** A programme written out: by hand, and what cannot be written. */
import { type LinearProgramme, programmeText } from "risingmain/selection";
import { describe, expect, test } from "vitest";
import { refused } from "../refused.ts";

const variables = (count: number, cost = 1) => Array.from({ length: count }, (_, k) => ({ name: `x${k + 1}`, cost }));
const row = (count: number) => ({
  name: "run1",
  variables: Array.from({ length: count }, (_, k) => k),
  coefficients: new Array<number>(count).fill(1),
  relation: "=" as const,
  bound: 1,
});

test("signs stand between terms; the first has one only where it is negative, and nothing is not negative", () => {
  const programme: LinearProgramme = {
    variables: [-2, 0, 3.5, -1e-9].map((cost, k) => ({ name: `x${k + 1}`, cost })),
    rows: [{ ...row(4), coefficients: [0, -1, 2, -3], bound: -7 }],
  };
  expect(programmeText(programme)).toBe(
    [
      "Minimize",
      " cost: - 2 x1 + 0 x2 + 3.5 x3 - 1e-9 x4",
      "Subject To",
      " run1: 0 x1 - 1 x2 + 2 x3 - 3 x4 = -7",
      "End",
      "",
    ].join("\n"),
  );
});

test("eight terms a line", () => {
  const lines = (count: number) =>
    programmeText({ variables: variables(count), rows: [] })
      .split("\n")
      .slice(1, -3);
  const terms = (from: number, to: number) =>
    Array.from({ length: to - from + 1 }, (_, k) => `1 x${from + k}`).join(" + ");
  expect(lines(8)).toEqual([` cost: ${terms(1, 8)}`]);
  expect(lines(17)).toEqual([` cost: ${terms(1, 8)}`, `  + ${terms(9, 16)}`, "  + 1 x17"]);
});

describe("what is refused, by the path of the field", () => {
  const of = (change: object): LinearProgramme => ({ variables: variables(2), rows: [row(2)], ...change });
  const variable = (change: object) => of({ variables: [{ ...variables(1)[0], ...change }, variables(2)[1]] });
  const only = (change: object) => of({ rows: [{ ...row(2), ...change }] });
  const names = [
    ["x1", "head12", `${"a".repeat(19)}1`],
    ["", "x", "1", "X1", "e1", "x1 ", "x-1", `${"a".repeat(20)}1`, 7, ["x1"]],
  ] as const;
  test.each<
    [path: string, at: (value: never) => LinearProgramme, accepted: readonly unknown[], refused: readonly unknown[]]
  >([
    ["variables", (list) => of({ variables: list, rows: [] }), [variables(1)], [[], undefined, variables(1e5 + 1)]],
    ["variables[0].name", (name) => variable({ name }), ["xe1"], ["x1e"]],
    ["variables[0].name", (name) => variable({ name }), ...names],
    ["variables[0].cost", (cost) => variable({ cost }), [1e30, -1e30], [1.1e30, Number.NaN]],
    ["variables[1]", (second) => of({ variables: [variables(1)[0], second] }), [{ name: "y1", cost: 0 }], [undefined]],
    ["rows", (rows) => of({ rows }), [[]], [undefined]],
    ["rows[0]", (first) => of({ rows: [first] }), [row(1)], [undefined]],
    ["rows[0].name", (name) => only({ name }), ...names],
    ["rows[0].variables", (list) => only({ variables: list }), [[0, 1]], [[], [0, 1, 1], undefined]],
    ["rows[0].variables[1]", (place) => only({ variables: [0, place] }), [1], [2, -1, 0.5, "1", undefined]],
    ["rows[0].coefficients", (coefficients) => only({ coefficients }), [[1, 1]], [[1], [1, 1, 1]]],
    ["rows[0].coefficients[1]", (second) => only({ coefficients: [1, second] }), [-1e30, 1e30], [1.1e30, undefined]],
    ["rows[0].relation", (relation) => only({ relation }), ["=", "<="], [">=", "<"]],
    ["rows[0].bound", (bound) => only({ bound }), [-1e30, 1e30], [1.1e30, Infinity]],
  ])("%s", (path, at, accepted, wrong) => {
    for (const value of accepted) expect(refused(() => programmeText(at(value as never)))).toBeUndefined();
    for (const value of wrong) expect(refused(() => programmeText(at(value as never)))).toBe(path);
  });
});
