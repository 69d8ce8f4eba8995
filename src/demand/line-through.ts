/**
 * A straight line between the rows of a table; beyond the ends, the end value.
 *
 * @module
 */

/** A kelvin that came from a round °F is a few ulp off it; a row is not missed for that. */
const SLACK = 1e-9;

/**
 * The value at `x` of the broken line through rising `xs`, and whether `x` lies inside them.
 *
 * @internal
 */
export function lineThrough(
  xs: readonly number[],
  ys: readonly number[],
  x: number,
): { readonly value: number; readonly inside: boolean } {
  let value = ys[0] as number;
  for (let i = 1; i < xs.length; i++) {
    const x0 = xs[i - 1] as number;
    const x1 = xs[i] as number;
    const y0 = ys[i - 1] as number;
    const y1 = ys[i] as number;
    if (x >= x1) value = y1;
    else if (x > x0) value = y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  const slack = SLACK * Math.abs(x);
  return { value, inside: x >= (xs[0] as number) - slack && x <= (xs[xs.length - 1] as number) + slack };
}
