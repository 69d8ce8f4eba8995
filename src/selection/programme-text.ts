/**
 * A linear programme written out in the text format for linear programmes that most solvers read.
 *
 * @module
 */
import { requireList, requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { InputError } from "../units/index.ts";
import type { LinearProgramme } from "./part-way-programme.ts";

/** Terms a line: readers of the format may refuse lines beyond some 500 characters. */
const TERMS_A_LINE = 8;
/** A name the format takes, and does not take for a number: a letter, letters but e, digits. */
const NAME = /^[a-z]+[0-9]{1,9}$/;
const GREATEST = 1e30;

/**
 * Writes a linear programme out in the "LP" text format, which most solvers read.
 *
 * @remarks
 * Sections `Minimize`, `Subject To` and `End`; variables are 0 or more by the format's own rule. Numbers are written with
 * all their digits.
 *
 * @param programme - the programme, as {@link partWayProgramme} makes it: 1 to 100 000 variables, up to 1 000 000 rows
 * @returns the text
 * @throws {@link units.InputError} naming the first part that cannot be written
 *
 * @example
 * ```ts
 * import { programmeText } from "risingmain/selection";
 *
 * programmeText({
 *   variables: [{ name: "x1", cost: 190 }, { name: "x2", cost: 410 }],
 *   rows: [
 *     { name: "run1", variables: [0, 1], coefficients: [1, 1], relation: "=", bound: 1 },
 *     { name: "head1", variables: [0, 1], coefficients: [8.5, 0.5], relation: "<=", bound: 4 },
 *   ],
 * }).split("\n");
 * // => ["Minimize", " cost: 190 x1 + 410 x2", "Subject To", " run1: 1 x1 + 1 x2 = 1", " head1: 8.5 x1 + 0.5 x2 <= 4", "End", ""]
 * ```
 *
 * @source common practice
 */
export function programmeText(programme: LinearProgramme): string {
  requireObject("programme", programme);
  const { variables, rows } = programme;
  requireList("variables", variables, 1, 1e5);
  requireList("rows", rows, 0, 1e6);
  const names = Array.from(variables, (variable, v) => {
    requireObject(`variables[${v}]`, variable);
    requireName(`variables[${v}].name`, variable.name);
    requireWithin(`variables[${v}].cost`, variable.cost, -GREATEST, GREATEST, "");
    return variable.name;
  });
  const lines = [`Minimize\n cost: ${sum(names.map((name, v) => [name, variables[v]?.cost ?? 0]))}\nSubject To`];
  Array.from(rows).forEach((row, r) => {
    const path = `rows[${r}]`;
    requireObject(path, row);
    requireName(`${path}.name`, row.name);
    requireList(`${path}.variables`, row.variables, 1, names.length);
    requireList(`${path}.coefficients`, row.coefficients, row.variables.length, row.variables.length);
    requireOneOf(`${path}.relation`, row.relation, ["=", "<="]);
    requireWithin(`${path}.bound`, row.bound, -GREATEST, GREATEST, "");
    const terms = Array.from(row.variables, (variable, t): [string, number] => {
      const name = typeof variable === "number" ? names[variable] : undefined;
      if (name === undefined) throw new InputError(`${path}.variables[${t}]`, variable, "the place of a variable");
      const coefficient = row.coefficients[t];
      requireWithin(`${path}.coefficients[${t}]`, coefficient, -GREATEST, GREATEST, "");
      return [name, coefficient as number];
    });
    lines.push(` ${row.name}: ${sum(terms)} ${row.relation} ${row.bound}`);
  });
  return `${lines.join("\n")}\nEnd\n`;
}

function requireName(path: string, name: unknown): void {
  if (!(typeof name === "string" && NAME.test(name) && !name.startsWith("e") && name.length <= 20)) {
    throw new InputError(path, name, "letters and then digits, 20 at most, not beginning with e");
  }
}

function sum(terms: readonly (readonly [name: string, coefficient: number])[]): string {
  return terms
    .map(([name, coefficient], t) => {
      const sign = coefficient < 0 ? "- " : t === 0 ? "" : "+ ";
      const line = t > 0 && t % TERMS_A_LINE === 0 ? "\n  " : t === 0 ? "" : " ";
      return `${line}${sign}${Math.abs(coefficient)} ${name}`;
    })
    .join("");
}
