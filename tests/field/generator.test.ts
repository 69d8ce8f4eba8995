/** The generator against the published algorithm in whole numbers without end, and what trials make of its numbers. */
import { monteCarlo } from "risingmain/field";
import { expect, test } from "vitest";
import { seededRandom } from "../../src/field/seeded-random.ts";
import { refused } from "../refused.ts";

const WORD = 1n << 32n;
const rotl = (x: bigint, k: bigint): bigint => ((x << k) | (x >> (32n - k))) % WORD;

/** xoshiro128** (Blackman and Vigna 2021, section 10), its words by a Weyl sequence through the finaliser of MurmurHash3. */
function words(seed: number): () => bigint {
  let weyl = BigInt(seed);
  const mixed = (): bigint => {
    weyl = (weyl + 0x9e3779b9n) % WORD;
    let z = weyl;
    z = ((z ^ (z >> 16n)) * 0x85ebca6bn) % WORD;
    z = ((z ^ (z >> 13n)) * 0xc2b2ae35n) % WORD;
    return z ^ (z >> 16n);
  };
  const s = [mixed(), mixed(), mixed(), mixed()] as [bigint, bigint, bigint, bigint];
  return () => {
    const result = (rotl((s[1] * 5n) % WORD, 7n) * 9n) % WORD;
    const t = (s[1] << 9n) % WORD;
    s[2] ^= s[0];
    s[3] ^= s[1];
    s[1] ^= s[2];
    s[0] ^= s[3];
    s[2] ^= t;
    s[3] = rotl(s[3], 11n);
    return result;
  };
}

/** 27 and 26 bits of two words: 53 bits of a number under 1. */
function uniforms(seed: number): () => number {
  const next = words(seed);
  return () => Number(((next() >> 5n) << 26n) + (next() >> 6n)) / 2 ** 53;
}

test("uniform numbers are those of the published algorithm, to the bit", () => {
  for (const seed of [0, 1, 2, 123_456_789, 4_294_967_295]) {
    const [own, published] = [seededRandom(seed), uniforms(seed)];
    for (let i = 0; i < 200; i++) expect(own.uniform()).toBe(published());
  }
});

/** Marsaglia's polar method (1964) on the same numbers, both of a pair. */
function normals(seed: number): () => number {
  const uniform = uniforms(seed);
  const kept: number[] = [];
  return () => {
    while (kept.length === 0) {
      const [x, y] = [2 * uniform() - 1, 2 * uniform() - 1];
      const s = x * x + y * y;
      if (s < 1) kept.push(x * Math.sqrt((-2 * Math.log(s)) / s), y * Math.sqrt((-2 * Math.log(s)) / s));
    }
    return kept.shift() as number;
  };
}

test("normal numbers are pairs by the polar method", () => {
  const [own, byHand] = [seededRandom(7), normals(7)];
  for (let i = 0; i < 200; i++) expect(own.normal()).toBeCloseTo(byHand(), 12);
});

test("trials by hand: mean, standard deviation, sampling error and the points of 2.5 and 97.5 %", () => {
  const n = 101;
  const inputs = [
    { name: "a", value: 40, standardUncertainty: 2 },
    { name: "b", value: 7, standardUncertainty: 0.5 },
    { name: "c", value: 3, standardUncertainty: 0.1 },
  ];
  const model = ([a = 0, b = 0, c = 0]: readonly number[]) => a * b + c;
  const trial = monteCarlo({ inputs, model, seed: 11, trials: n, spreads: ["normal", "rectangular", "triangular"] });
  const random = seededRandom(11);
  const results = Array.from({ length: n }, () => {
    const a = 40 + 2 * random.normal();
    // A flat spread reaches √3, a triangular one √6 of its standard deviations.
    const b = 7 + 0.5 * Math.sqrt(3) * (2 * random.uniform() - 1);
    const c = 3 + 0.1 * Math.sqrt(6) * (random.uniform() - random.uniform());
    return model([a, b, c]);
  }).sort((p, q) => p - q);
  const mean = results.reduce((sum, r) => sum + r, 0) / n;
  const deviation = Math.sqrt(results.reduce((sum, r) => sum + (r - mean) ** 2, 0) / (n - 1));
  expect(trial.mean).toBeCloseTo(mean, 10);
  expect(trial.standardUncertainty).toBeCloseTo(deviation, 10);
  expect(trial.samplingError).toBeCloseTo(deviation / Math.sqrt(2 * n), 12);
  // Of 101 in order, the places 0.025 × 100 = 2.5 and 97.5 lie half way between two.
  const half = (i: number): number => ((results[i] as number) + (results[i + 1] as number)) / 2;
  expect(trial.interval95[0]).toBeCloseTo(half(2), 10);
  expect(trial.interval95[1]).toBeCloseTo(half(97), 10);
  expect(trial.trials).toBe(n);
});

test("normal where no spread is named, and a spread that is none is refused", () => {
  const given = { inputs: [{ name: "x", value: 1, standardUncertainty: 1 }], model: ([x = 0]: readonly number[]) => x };
  const run = (spreads?: readonly string[]) =>
    monteCarlo({ ...given, seed: 3, trials: 100, ...(spreads && { spreads }) } as never);
  expect(run()).toEqual(run(["normal"]));
  expect(run()).not.toEqual(run(["rectangular"]));
  expect(refused(() => run(["even"]))).toBe("spreads[0]");
  expect(
    monteCarlo({ ...given, inputs: [{ ...given.inputs[0], standardUncertainty: 0 }] as never, seed: 1, trials: 100 }),
  ).toMatchObject({ mean: 1, standardUncertainty: 0, interval95: [1, 1] });
});
