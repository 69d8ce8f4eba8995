/** Values that no sane caller sends. */
import fc from "fast-check";

const ODD: readonly unknown[] = [
  undefined,
  null,
  "",
  "12",
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  -0,
  0,
  5e-324,
  -5e-324,
  1e308,
  -1e308,
  1e-300,
  1,
  -1,
  true,
  {},
  [],
  [1],
  () => Number.NaN,
  Symbol("odd"),
  10n,
];

/** One of them. */
export const odd: fc.Arbitrary<unknown> = fc.constantFrom(...ODD);

/** A good object with one to three of its leaves, at any depth, made odd. */
export function spoiled<T>(good: T): fc.Arbitrary<T> {
  const paths = leaves(good);
  return fc
    .array(fc.tuple(fc.nat(paths.length - 1), odd), { minLength: 1, maxLength: 3 })
    .map((changes) =>
      changes.reduce((value, [path, bad]) => replaced(value, paths[path] as readonly string[], bad), good as unknown),
    ) as fc.Arbitrary<T>;
}

function leaves(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== "object" || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => leaves(inner, [...path, key]))].filter(
    ({ length }) => length > 0,
  );
}

function replaced(value: unknown, path: readonly string[], bad: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return bad;
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map((inner, i) => (String(i) === key ? replaced(inner, rest, bad) : inner));
  return { ...value, [key]: replaced((value as Record<string, unknown>)[key], rest, bad) };
}

/** Whether every number in a result is finite. */
export function allFinite(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || value === null) return true;
  return Object.values(value).every(allFinite);
}
