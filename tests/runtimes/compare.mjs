// @ts-check
/** Two engines' results side by side: which numbers differ, by how many units in the last place, and what is allowed. */

const view = new DataView(new ArrayBuffer(8));

/** @param {number} value its place among all doubles, in order */
function place(value) {
  view.setFloat64(0, value);
  const bits = view.getBigInt64(0);
  return bits < 0n ? -(bits & 0x7fffffffffffffffn) : bits;
}

/** @param {number} a @param {number} b */
export function ulps(a, b) {
  const apart = place(a) - place(b);
  return Number(apart < 0n ? -apart : apart);
}

/**
 * @typedef {{ key: string, ulp: number, from: unknown, to: unknown }} Difference ulp is Infinity where the two are not both numbers
 * @param {Record<string, unknown>} reference
 * @param {Record<string, unknown>} values
 * @returns {Difference[]}
 */
export function differences(reference, values) {
  return [...new Set([...Object.keys(reference), ...Object.keys(values)])].flatMap((key) => {
    const [from, to] = [reference[key], values[key]];
    if (from === to) return [];
    const numbers = typeof from === "number" && typeof to === "number";
    return [{ key, ulp: numbers ? ulps(from, to) : Number.POSITIVE_INFINITY, from, to }];
  });
}

/**
 * How far a value that rests on the engine's own logarithms, powers and so on may move, in units in the last place.
 * The engines' functions differ by 1 or 2; what follows multiplies that: a density near 1000 in a difference, a fitted line.
 */
export const MOST_ULPS = 40;

/** Where more is allowed, why, and how much: of the value itself, or at all. */
export const ALLOWED = [
  {
    what: "`network`, the flows of a loop of Hazen–Williams pipes",
    keys: /^network: net-hanoi-heads: Q_\d+$/,
    why: "a small flow is what the large ones leave: 1e-15 m³/s, about the last place of the 5.5 m³/s that the network carries",
    within: (/** @type {number} */ a, /** @type {number} */ b) => Math.abs(a - b) <= 1e-15,
  },
  {
    what: "`system`, a day simulated",
    keys: /^system: a day .*\.balanceError$/,
    why: "the balance it proves itself by is what rounding leaves, below 1e-12 m³: noise by its nature",
    within: (/** @type {number} */ a, /** @type {number} */ b) => Math.abs(a) < 1e-12 && Math.abs(b) < 1e-12,
  },
  {
    what: "`system`, a day simulated",
    keys: /^system: a day /,
    why: "some hundred fillings follow one another and the last bit of one moves all after it: 1e-11 of the value",
    within: (/** @type {number} */ a, /** @type {number} */ b) => Math.abs(a - b) <= 1e-11 * Math.abs(a),
  },
];

/** @param {Difference} difference */
export function isAllowed({ key, ulp, from, to }) {
  if (ulp <= MOST_ULPS) return true;
  const rule = ALLOWED.find(({ keys }) => keys.test(key));
  return rule !== undefined && typeof from === "number" && typeof to === "number" && rule.within(from, to);
}
