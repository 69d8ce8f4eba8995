/** The modules of the register: one for each `<module>.checks.ts` beside this file. */
import { readdirSync } from "node:fs";
import { type Computation, compareAll, type Deviation, loadRecords } from "./register.ts";

export const modules: readonly string[] = readdirSync(new URL("./", import.meta.url))
  .filter((file) => file.endsWith(".checks.ts"))
  .map((file) => file.slice(0, -".checks.ts".length))
  .sort();

/** How the records of a module are computed. */
export async function computationsOf(module: string): Promise<readonly Computation[]> {
  return ((await import(`./${module}.checks.ts`)) as { computations: readonly Computation[] }).computations;
}

/** Every record of every module, computed and compared. */
export async function compareAllModules(): Promise<ReadonlyMap<string, readonly Deviation[]>> {
  const compared = new Map<string, readonly Deviation[]>();
  for (const module of modules) {
    compared.set(module, compareAll(loadRecords(module), await computationsOf(module)));
  }
  return compared;
}
