/** A finding asked for directly, its number a hair to either side of its limit. */
import type { Finding, Severity } from "risingmain/plan";
import { expect } from "vitest";

/** One limit: what is found for a number, the limit, its wrong side, and what is said beyond it. */
export interface Limit {
  readonly code: string;
  readonly found: (value: number) => readonly Finding[];
  readonly limit: number;
  readonly wrong: "above" | "below";
  readonly severity: Severity;
  readonly basis: "given" | "published" | "derived" | "common practice";
  readonly source?: string;
  readonly subject?: string;
}

/** A hair: more than rounding, less than any gauge. */
export const HAIR = 1e-6;

export function holds({ code, found, limit, wrong, severity, basis, source, subject = "" }: Limit): void {
  const hair = HAIR * Math.max(Math.abs(limit), HAIR);
  const [bad, good] = wrong === "above" ? [limit + hair, limit - hair] : [limit - hair, limit + hair];
  const said = (value: number): readonly Finding[] => found(value).filter((each) => each.code === code);
  expect(said(good), `${code}, on the right side`).toEqual([]);
  const there = said(bad);
  expect(there.length, `${code}, on the wrong side`).toBe(1);
  const [one] = there as [Finding];
  expect(Math.abs(one.value.value - bad), code).toBeLessThan(hair / 2);
  expect(Math.abs(one.limit.value - limit), code).toBeLessThan(hair / 2);
  expect(one.value.kind).toBe(one.limit.kind);
  expect([code, one.severity, one.basis.kind, one.basis.source, one.subject]).toEqual([
    code,
    severity,
    basis,
    source,
    subject,
  ]);
  // A limit of the trade needs no locator; every other says where it is.
  if (basis === "given" || basis === "derived") expect(one.basis.locator, code).toMatch(/\w/);
  expect(one.message).toMatch(/\.$/);
  expect(one.remedy).toMatch(/\.$/);
}

export const codesOf = (findings: readonly Finding[]): readonly string[] => findings.map(({ code }) => code);
