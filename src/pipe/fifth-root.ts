/**
 * The fifth root, from + − × ÷ alone, so that every engine gives the same bits (`**` may not).
 *
 * @module
 */

/** Fifth root of a number from 1e-60 to 1e60. */
export function fifthRoot(x: number): number {
  let scale = 1;
  let m = x;
  while (m < 1) {
    m *= 32;
    scale /= 2;
  }
  while (m >= 32) {
    m /= 32;
    scale *= 2;
  }
  // Within 2 % on 1 to 32; each of Halley's steps cubes the error.
  let r = (0.25 * m + 0.8795) / (0.11 * m + 1);
  for (let i = 0; i < 3; i++) {
    const p = r * r * r * r * r;
    r -= (r * (p - m)) / (3 * p + 2 * m);
  }
  return r * scale;
}
