/**
 * The verification register: published values beside what the library computes.
 *
 * `<module>.records.json` holds the records (what a source printed); `<module>.checks.ts` says how each is computed.
 * A record nobody computes, or a computation that matches no record, is a failure: nothing here can pass by silence.
 */
import { readFileSync } from "node:fs";
import { toSi } from "./unit-table.ts";

/** How a value came to be in a record. */
export type Provenance = "read" | "computed" | "memory";

/** A value as its source printed it. */
export interface PrintedValue {
  readonly value: number | string | readonly (number | string | null)[];
  readonly unit: string;
  readonly printedDigits?: number;
  /** Replaces the record's tolerance for this one value. */
  readonly tolerance?: Tolerance;
}

/** How far computed and printed may lie apart, and why. */
export interface Tolerance {
  /** Share of the printed value. */
  readonly relative?: number;
  /** In the printed value's own unit. */
  readonly absolute?: number;
  readonly why: string;
}

/** One published check. */
export interface CheckRecord {
  readonly id: string;
  readonly topic: string;
  readonly quantity: string;
  readonly inputs: Readonly<Record<string, PrintedValue>>;
  readonly expected: Readonly<Record<string, PrintedValue>>;
  readonly tolerance: Tolerance;
  /** Id in `sources.json` or in the package's bibliography. */
  readonly source: string;
  readonly locator: string;
  readonly provenance: Provenance;
  readonly notes?: string;
  /**
   * The record is wrong: the reason. It stays, its deviation is printed as the size of the source's own error, and the
   * check passes only while the library does NOT agree with it, so a mended record is noticed.
   */
  readonly wrong?: string;
}

/** The inputs of a record, in SI. */
export class Given {
  readonly record: CheckRecord;

  constructor(record: CheckRecord) {
    this.record = record;
  }

  /** An input in its SI unit, branded as the caller asks. */
  si<Q extends number = number>(name: string): Q {
    const printed = this.#printed(name);
    return toSi(Number(printed.value), printed.unit) as Q;
  }

  /** A list of inputs in SI. */
  list<Q extends number = number>(name: string): readonly Q[] {
    const printed = this.#printed(name);
    return (printed.value as readonly number[]).map((value) => toSi(Number(value), printed.unit) as Q);
  }

  /** An input as text. */
  text(name: string): string {
    return String(this.#printed(name).value);
  }

  /** Whether the record has the input. */
  has(name: string): boolean {
    return name in this.record.inputs;
  }

  #printed(name: string): PrintedValue {
    const printed = this.record.inputs[name];
    if (printed === undefined) throw new Error(`${this.record.id} has no input "${name}"`);
    return printed;
  }
}

/** What a computation returns, by the names of the record's expected values: numbers in SI, or text. */
export type Computed = Readonly<Record<string, number | string | readonly number[]>>;

/** The records an expression matches (on the id, whole), and how their values are computed with the library. */
export interface Computation {
  readonly ids: RegExp;
  readonly compute: (given: Given) => Computed;
}

/** One compared value. */
export interface Deviation {
  readonly record: CheckRecord;
  readonly name: string;
  /** Printed and computed, both in the record's own unit; text where the record has text. */
  readonly printed: number | string;
  readonly computed: number | string;
  readonly unit: string;
  /** |computed − printed| over the allowed difference; at most 1 passes. Infinity where text differs. */
  readonly shareOfTolerance: number;
  readonly passes: boolean;
}

/** The records of a module, as kept beside its checks. */
export function loadRecords(module: string): readonly CheckRecord[] {
  return JSON.parse(readFileSync(new URL(`./${module}.records.json`, import.meta.url), "utf8")) as CheckRecord[];
}

/** Computes every record once and compares. Throws where a record is computed by none or by two computations. */
export function compareAll(
  records: readonly CheckRecord[],
  computations: readonly Computation[],
): readonly Deviation[] {
  const deviations = records.flatMap((record) => compareRecord(record, computations));
  for (const ids of unusedComputations(records, computations)) throw new Error(`no record matches ${ids}`);
  return deviations;
}

/** Computes one record and compares. Throws where it is computed by none or by two computations. */
export function compareRecord(record: CheckRecord, computations: readonly Computation[]): readonly Deviation[] {
  const matching = computations.filter((computation) => matches(computation, record));
  const [only] = matching;
  if (only === undefined || matching.length > 1) {
    throw new Error(`record ${record.id} is computed by ${matching.length} computations, not one`);
  }
  return compare(record, only.compute(new Given(record)));
}

/** The computations that match no record. */
export function unusedComputations(
  records: readonly CheckRecord[],
  computations: readonly Computation[],
): readonly RegExp[] {
  return computations.filter((c) => !records.some((record) => matches(c, record))).map(({ ids }) => ids);
}

function matches({ ids }: Computation, { id }: CheckRecord): boolean {
  return new RegExp(`^(?:${ids.source})$`).test(id);
}

function compare(record: CheckRecord, computed: Computed): readonly Deviation[] {
  const names = Object.keys(record.expected);
  const rows = names.flatMap((name) => {
    const printed = record.expected[name] as PrintedValue;
    const got = computed[name];
    if (got === undefined) throw new Error(`${record.id}: nothing computed for "${name}"`);
    const printedValues = Array.isArray(printed.value) ? printed.value : [printed.value];
    const gotValues = Array.isArray(got) ? got : [got];
    if (printedValues.length !== gotValues.length) {
      throw new Error(
        `${record.id}: ${name} has ${printedValues.length} printed values and ${gotValues.length} computed`,
      );
    }
    return printedValues.map((value, i) =>
      compareOne(record, printedValues.length > 1 ? `${name}[${i}]` : name, printed, value, gotValues[i]),
    );
  });
  // A wrong record passes as a whole while at least one of its values is refuted.
  if (record.wrong === undefined) return rows;
  const refuted = rows.some((row) => row.shareOfTolerance > 1);
  return rows.map((row) => ({ ...row, passes: refuted }));
}

function compareOne(record: CheckRecord, name: string, printed: PrintedValue, value: unknown, got: unknown): Deviation {
  const { unit } = printed;
  if (typeof value === "string") {
    const same = value === got;
    return {
      record,
      name,
      printed: value,
      computed: String(got),
      unit,
      shareOfTolerance: same ? 0 : Infinity,
      passes: same,
    };
  }
  if (typeof got !== "number" || !Number.isFinite(got))
    throw new Error(`${record.id}: ${name} computed as ${String(got)}`);
  const tolerance = printed.tolerance ?? record.tolerance;
  // Compared in the printed unit. Affine units (°C, °F) included: the table inverts itself.
  const zero = toSi(0, unit);
  const scale = toSi(1, unit) - zero;
  const computed = (got - zero) / scale;
  const expected = Number(value);
  const difference = Math.abs(computed - expected);
  // An "exact" row allows the rounding of the comparison itself, 4 ulp.
  const allowed = Math.max(
    tolerance.absolute ?? 0,
    (tolerance.relative ?? 0) * Math.abs(expected),
    4 * Number.EPSILON * Math.abs(expected),
  );
  const shareOfTolerance = difference === 0 ? 0 : difference / allowed;
  return { record, name, printed: expected, computed, unit, shareOfTolerance, passes: shareOfTolerance <= 1 };
}
