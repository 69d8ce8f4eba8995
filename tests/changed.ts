/** For tables of limits: a row, and one field of an input exchanged. */

/** A field, values accepted at its limits, values refused just beyond. */
export type Limit = readonly [path: string, accepted: readonly unknown[], refused: readonly unknown[]];

/** Limits of a number: it and a little over or under. */
export const from = (path: string, low: number, high: number): Limit => [
  path,
  [low, high],
  [low - (Math.abs(low) || 1) * 1e-3, high + Math.abs(high) * 1e-3],
];

/** A copy with one field, named by its path, another. */
export function changed<T>(whole: T, path: string, value: unknown): T {
  const [key = "", ...rest] = path.split(/[.[\]]+/).filter((part) => part !== "");
  const copy = (Array.isArray(whole) ? [...whole] : { ...whole }) as Record<string, unknown>;
  copy[key] = rest.length === 0 ? value : changed(copy[key] ?? {}, rest.join("."), value);
  return copy as T;
}
