/**
 * Where an axis has its marks.
 *
 * @module
 */
import { drawn } from "./shown.ts";
import type { JsonObject } from "./spec.ts";

/** Below this many decades there is room for 2 and 5 between the powers of ten. */
const FEW = 4;

/** The round numbers from `low` to `high`: 1, 2 and 5 of each power of ten, or the powers alone where there are many. */
function decades(low: number, high: number): readonly number[] {
  const from = Math.floor(Math.log10(low));
  const to = Math.ceil(Math.log10(high));
  const steps = to - from <= FEW ? [1, 2, 5] : [1];
  return Array.from({ length: to - from + 1 }, (_, i) => steps.map((step) => drawn(step * 10 ** (from + i))))
    .flat()
    .filter((value) => value >= low && value <= high);
}

/** The part of an axis that says where its marks are: all of these, however many. */
export function marksAt(values: readonly number[]): JsonObject {
  return { values, tickCount: values.length };
}

/** The same for a logarithmic axis over these numbers. */
export function logMarks(numbers: readonly number[]): JsonObject {
  return marksAt(decades(Math.min(...numbers), Math.max(...numbers)));
}
