/**
 * Straight lines from point to point.
 *
 * @module
 */

/** y at x on the lines between points of rising x; before the first and beyond the last as there. */
export function polyline(points: readonly (readonly [x: number, y: number])[], x: number): number {
  const after = points.findIndex(([at]) => at > x);
  // 0 before the first; −1, which counts from the end, beyond the last.
  const [x1, y1] = points.at(after) as readonly [number, number];
  if (after <= 0) return y1;
  const [x0, y0] = points[after - 1] as readonly [number, number];
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
}
