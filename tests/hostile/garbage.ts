/** What reaches a function when a caller forgets a field, a unit or a check; and how to see that a result is sound. */

/** Numbers, texts and things no function was meant for. */
export function garbage(): readonly unknown[] {
  const cyclic: Record<string, unknown> = {};
  cyclic["self"] = cyclic;
  return [
    undefined,
    null,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    0,
    -0,
    -1,
    1,
    1e-320,
    5e-324,
    1e-9,
    1e9,
    1e308,
    -1e308,
    2 ** 53,
    "",
    "12",
    "__proto__",
    "12 ft",
    "x".repeat(100_000),
    true,
    1n,
    Symbol("s"),
    [],
    [1, 2],
    [null],
    {},
    Object.create(null),
    JSON.parse('{"__proto__": {"flow": 1}, "constructor": 1}'),
    cyclic,
    nested(5_000),
    new Array(100_000).fill(1),
    new Date(0),
    () => Number.NaN,
    () => "flow",
    () => {
      throw new TypeError("a callback that throws");
    },
  ];
}

/** A list in a list in a list. */
export function nested(depth: number): unknown {
  let value: unknown = 1;
  for (let i = 0; i < depth; i++) value = [value];
  return value;
}

/** The path of the first number that is not finite; undefined where all are. */
export function notFinite(value: unknown, path = "result", seen = new Set<unknown>()): string | undefined {
  if (typeof value === "number") return Number.isFinite(value) ? undefined : path;
  if (typeof value !== "object" || value === null || seen.has(value)) return undefined;
  seen.add(value);
  for (const [key, item] of Object.entries(value)) {
    const found = notFinite(item, `${path}.${key}`, seen);
    if (found !== undefined) return found;
  }
  return undefined;
}
