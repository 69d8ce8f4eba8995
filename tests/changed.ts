/** For tables of limits: one field of an input exchanged. */

/** A copy with one field, named by its path, another. */
export function changed<T>(whole: T, path: string, value: unknown): T {
  const [key = "", ...rest] = path.split(/[.[\]]+/).filter((part) => part !== "");
  const copy = (Array.isArray(whole) ? [...whole] : { ...whole }) as Record<string, unknown>;
  copy[key] = rest.length === 0 ? value : changed(copy[key] ?? {}, rest.join("."), value);
  return copy as T;
}
