/**
 * A small generator of numbers that look random and are not: the same seed gives the same bits on every engine.
 *
 * xoshiro128** of Blackman and Vigna (`blackman-vigna-2021`), its four words filled from the seed by a multiplicative mixer.
 * Uniform numbers are whole-number arithmetic alone. Normal ones use the logarithm, which may differ in its last bit between
 * engines.
 *
 * @module
 */

/** A source of numbers; each call takes the next. */
export interface SeededRandom {
  /** The next number in [0, 1), of 53 bits. */
  uniform(): number;
  /** The next number of the standard normal distribution. */
  normal(): number;
}

/** 2^32. */
const WORD = 4294967296;

/**
 * A generator for a whole seed.
 *
 * @internal
 */
export function seededRandom(seed: number): SeededRandom {
  // A Weyl sequence with a mixer, so that seeds 1 and 2 start far apart; never all zero, its steps being distinct.
  let mixer = (seed % WORD) >>> 0;
  const word = (): number => {
    mixer = (mixer + 0x9e3779b9) >>> 0;
    let z = Math.imul(mixer ^ (mixer >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return (z ^ (z >>> 16)) >>> 0;
  };
  let a = word();
  let b = word();
  let c = word();
  let d = word();

  const next = (): number => {
    const scrambled = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotate(d, 11);
    return scrambled;
  };
  const uniform = (): number => ((next() >>> 5) * 67108864 + (next() >>> 6)) / 9007199254740992;

  // Marsaglia's polar method gives two at once; one is kept for the next call.
  let kept: number | undefined;
  const normal = (): number => {
    if (kept !== undefined) {
      const value = kept;
      kept = undefined;
      return value;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square > 0 && square < 1) {
        const factor = Math.sqrt((-2 * Math.log(square)) / square);
        kept = y * factor;
        return x * factor;
      }
    }
  };
  return { uniform, normal };
}

function rotate(value: number, bits: number): number {
  return (value << bits) | (value >>> (32 - bits));
}
