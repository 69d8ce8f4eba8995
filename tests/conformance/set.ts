/**
 * The conformance set: every published row of the register and the workloads, through the public modules alone. The same
 * file runs in every engine and module system, and says what it computed.
 */
import type { CheckRecord, Computation } from "../reference/register.ts";
import { compareAll } from "../reference/register.ts";
import { digestOfText, workloads } from "./workloads.ts";

/** One module of the register. */
export interface Checks {
  readonly module: string;
  readonly records: readonly CheckRecord[];
  readonly computations: readonly Computation[];
}

/** What one engine computed. */
export interface Results {
  /** By "module: row or workload: name": numbers, and text (long text as a digest). −0 is text. */
  readonly values: Readonly<Record<string, number | string | boolean | null>>;
  /** Published rows that miss their tolerance here. */
  readonly misses: readonly string[];
  /** The engine's own elementary functions on a grid: how its Math differs from another's. */
  readonly functions: Readonly<Record<string, readonly number[]>>;
}

/** Keys of the workloads whose bits must be the same everywhere. */
export const exactPrefixes: readonly string[] = workloads.flatMap(({ exact, module, name }) =>
  exact ? [`${module}: ${name}`] : [],
);

export function run(checks: readonly Checks[]): Results {
  const values: Record<string, number | string | boolean | null> = {};
  const misses: string[] = [];
  const put = (key: string, value: unknown): void => {
    if (typeof value === "number") values[key] = Object.is(value, -0) ? "-0" : value;
    else if (typeof value === "string") values[key] = value.length > 60 ? digestOfText(value) : value;
    else if (value === null || typeof value === "boolean") values[key] = value;
    else if (typeof value === "object") for (const [name, part] of Object.entries(value)) put(`${key}.${name}`, part);
  };
  for (const { module, records, computations } of checks) {
    for (const { record, name, computed, passes } of compareAll(records, computations)) {
      put(`${module}: ${record.id}: ${name}`, computed);
      if (!passes) misses.push(`${module}: ${record.id}: ${name}`);
    }
  }
  for (const { module, name, run: compute } of workloads) put(`${module}: ${name}`, compute());
  return { values, misses, functions: elementary() };
}

/** The functions ECMAScript leaves to the engine, those the library uses, each at 500 places. */
function elementary(): Results["functions"] {
  const places = Array.from({ length: 500 }, (_, i) => (i + 1) / 7 + i * i * 1.1e-4);
  return {
    exp: places.map((x) => Math.exp(x / 8 - 3)),
    log: places.map((x) => Math.log(x)),
    log10: places.map((x) => Math.log10(x)),
    log2: places.map((x) => Math.log2(x)),
    log1p: places.map((x) => Math.log1p(x / 50)),
    pow: places.map((x) => x ** 1.852),
    "pow, squares": places.map((x) => x ** 2),
    "pow, cubes": places.map((x) => x ** 3),
    sqrt: places.map((x) => Math.sqrt(x)),
    cbrt: places.map((x) => Math.cbrt(x)),
    hypot: places.map((x) => Math.hypot(x, 1.7)),
    sin: places.map((x) => Math.sin(x)),
    cos: places.map((x) => Math.cos(x)),
    atan2: places.map((x) => Math.atan2(x, 3)),
    sinh: places.map((x) => Math.sinh(x / 9)),
    tanh: places.map((x) => Math.tanh(x / 30)),
    acosh: places.map((x) => Math.acosh(1 + x)),
  };
}
