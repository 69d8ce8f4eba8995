/**
 * Natural logarithms from + − × ÷ and whole-number operations alone, so that every engine gives the same bits.
 *
 * `Math.log` may differ in the last place between engines; a reference implementation of Colebrook's equation should
 * not. Both functions take 1e-18 < g < 0.25, where g is the argument of that equation's logarithm.
 *
 * @module
 */

/** 2³³: puts g, below 0.25, among the whole numbers that 32 bits hold. */
const SCALE = 8589934592;
/** Smaller than this, too few bits would be left: scale up by 2²⁰ first, and count 20 more. */
const TOO_SMALL = 256;
const MORE = 1048576;

/** ln of the middles of the 8 steps from 1 to 2: ln(1 + (2j + 1)/16), j = 0 to 7; derived. */
const LN_MIDDLES: readonly number[] = [
  0.06062462181643484, 0.17185025692665923, 0.27193371548364176, 0.3629054936893685, 0.44628710262841953,
  0.5232481437645479, 0.5947071077466928, 0.661398482245365,
];

/**
 * −ln g − F, good to 1e-16 even where the two nearly cancel.
 *
 * With x = g·2³³ near c, the middle of its step: −ln g = e ln 2 − ln(step) − ln(x/c), and ln(x/c) = 2 atanh z,
 * z = (x − c)/(x + c), at most 1/33.
 */
export function minusLogLess(g: number, F: number): number {
  let x = g * SCALE;
  let e = 2;
  while (x < TOO_SMALL) {
    x *= MORE;
    e += 20;
  }
  const whole = x | 0;
  const zeros = Math.clz32(whole);
  // The leading 4 bits and half a step: a whole number, so exact.
  const c = (whole & (-268435456 >> zeros)) + (134217728 >> zeros);
  const z = (x - c) / (x + c);
  const w = z * z;
  e += zeros;
  const step = ((whole << zeros) >>> 28) - 8;
  // 1/3, 1/5, 1/7, 1/9, each to the digits that reach the sum: w is below 1e-3.
  const atanh = z * (1 + w * (0.333333333333 + w * (0.2 + w * (0.1428571 + w * 0.1111))));
  // ln 2 in two parts, the first of 32 bits: a whole number times it is exact, and F cancels to the last bit.
  return e * 0.6931471803691238 - F - (LN_MIDDLES[step] as number) + (e * 1.908214929e-10 - 2 * atanh);
}

/** −ln g within 0.006: the whole number's place gives the power of two, a parabola the rest. */
export function roughMinusLog(g: number): number {
  let x = g * SCALE;
  let offset = 1.3861;
  while (x < TOO_SMALL) {
    x *= MORE;
    offset += 13.862944;
  }
  const whole = x | 0;
  const zeros = Math.clz32(whole);
  // log2(1 + t) ≈ t + 0.345 t (1 − t), t in 15 bits, the sum in units of 2⁻²⁰.
  const t = ((whole << zeros) << 1) >>> 17;
  const log2 = (t << 5) + ((((t * (32768 - t)) >>> 8) * 353) >>> 12) - (zeros << 20);
  return offset - log2 * 6.6103666e-7;
}
