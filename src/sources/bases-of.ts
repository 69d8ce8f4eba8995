/**
 * What a public function or table rests on, as its docstring says.
 *
 * @module
 */
import { InputError } from "../units/input-error.ts";
import type { Basis } from "./basis.ts";
import { functionBases } from "./function-bases.ts";

/** A `@source` line: a source id, "derived" or "common practice", and the locator, if any. */
const PARTS = /^(derived|common practice|[^\s,:;]+)[\s,:;]*(.*)/;

/**
 * What a public function, constant or table of the library rests on: to cite beside a number that came from it.
 *
 * @param name - module and name, such as "pipe.frictionFactor"
 * @returns one basis or more; the published ones name a record for {@link findSource}
 * @throws {@link units.InputError} where the library exports nothing of the name
 * @source derived: the docstrings, collected
 *
 * @example
 * ```ts
 * import { basesOf, citeAsText, findSource } from "risingmain/sources";
 *
 * const [first] = basesOf("pipe.frictionFactor");
 * first?.source; // => "colebrook-1939"
 * citeAsText(findSource(first?.source ?? "")).slice(0, 23); // => "Colebrook, C. F. (1939)"
 * ```
 */
export function basesOf(name: string): readonly Basis[] {
  const lines = typeof name === "string" && Object.hasOwn(functionBases, name) ? functionBases[name] : undefined;
  if (lines === undefined)
    throw new InputError("name", name, 'module and name of an export, such as "pipe.frictionFactor"');
  return lines.map((line) => {
    const [, head, rest] = PARTS.exec(line) as unknown as [line: string, head: string, rest: string];
    const locator = rest && { locator: rest };
    return head === "derived" || head === "common practice"
      ? { kind: head, ...locator }
      : { kind: "published", source: head, ...locator };
  });
}
