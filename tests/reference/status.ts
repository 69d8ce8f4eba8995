/**
 * What the register holds, in two sentences, as the README has it. That every value passes is for the tests to say.
 */
import type { CheckRecord } from "./register.ts";

/** Where the sentences stand in the README. */
export const STATUS = /(<!-- written by npm run verify -->\n)[^\n]*(\n<!-- \/ -->)/;

/** Counts of records and values. */
export function statusOf(records: readonly CheckRecord[]): string {
  const count = (keep: (record: CheckRecord) => boolean): string => thousands(records.filter(keep).length);
  const values = records.flatMap(({ expected }) => Object.values(expected).flatMap(({ value }) => value));
  return [
    `${thousands(values.length)} values of ${thousands(records.length)} records are compared, each with its own tolerance:`,
    `${count((r) => r.provenance === "read")} records read in their source, ${count((r) => r.provenance === "computed")} computed by a named library, ${count((r) => r.provenance === "memory")} from memory.`,
    `${count((r) => r.wrong !== undefined)} of them are wrong in their source and kept, with the reason.`,
  ].join(" ");
}

function thousands(number: number): string {
  return String(number).replace(/\B(?=(\d{3})+$)/g, ",");
}
