/**
 * Every size of pipe the library knows, by standard or material.
 *
 * @module
 */
import { requireObject } from "../numeric/index.ts";
import { InputError } from "../units/index.ts";
import { type PipeSize, pipesOf } from "./pipe-size.ts";
import type { PipeMaterial, PipeTable } from "./pipe-table.ts";
import { asmeB3610 } from "./standards/asme-b36-10.ts";
import { astmB88 } from "./standards/astm-b88.ts";
import { astmD1785 } from "./standards/astm-d1785.ts";
import { astmD2239 } from "./standards/astm-d2239.ts";
import { astmD2241 } from "./standards/astm-d2241.ts";
import { astmD2737 } from "./standards/astm-d2737.ts";
import { astmD3035 } from "./standards/astm-d3035.ts";
import { astmF876 } from "./standards/astm-f876.ts";
import { iso1452 } from "./standards/iso-1452.ts";
import { iso4427 } from "./standards/iso-4427.ts";

/**
 * The tables of pipe, in the order they are listed.
 *
 * @internal
 */
export const TABLES: readonly PipeTable[] = [
  astmD1785,
  astmD2241,
  astmD2239,
  astmD2737,
  astmD3035,
  astmF876,
  astmB88,
  asmeB3610,
  iso4427,
  iso1452,
];

/** Which pipe to list. */
export interface PipeFilter {
  /** Designation of the standard: "ASTM D2241". Any when left out. */
  readonly standard?: string;
  /** Material. Any when left out. */
  readonly material?: PipeMaterial;
}

/**
 * Every size of pipe the library knows, or those of one standard or material.
 *
 * @remarks
 * Where only one standard is wanted in an app, `pipesOf(astmD2241)` carries one table instead of all ten.
 *
 * @param filter - the standard ("ASTM D2241") or the material ("PE"); both may be left out
 * @returns the sizes, one for each standard, series, nominal size and grade
 * @throws {@link units.InputError} where the filter names a standard or material that no table has
 *
 * @example
 * ```ts
 * import { listPipes } from "risingmain/pipe";
 *
 * [...new Set(listPipes({ material: "PE" }).map((pipe) => pipe.standard))]; // => ["ASTM D2239", "ASTM D2737", "ASTM D3035", "ISO 4427"]
 * listPipes({ standard: "ASTM D2241" }).length; // => 52
 * ```
 *
 * @source derived: the tables, each with its own source
 */
export function listPipes(filter: PipeFilter = {}): readonly PipeSize[] {
  requireObject("filter", filter);
  const { standard, material } = filter;
  const tables = TABLES.filter(
    (table) =>
      (standard === undefined || table.standard === standard) &&
      (material === undefined || table.material === material),
  );
  if (tables.length === 0) {
    const known = TABLES.map((table) => `${table.standard} (${table.material})`).join(", ");
    throw new InputError("filter", standard ?? material, `a standard or material among ${known}`);
  }
  return tables.flatMap(pipesOf);
}
