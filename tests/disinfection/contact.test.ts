/** Laws of contact, acid share, ageing, flushing and dechlorination. */
import fc from "fast-check";
import {
  agedStrength,
  contactReached,
  contactTime,
  dechlorination,
  flush,
  freeChlorine,
  giardiaContact,
  recirculation,
  virusContact,
} from "risingmain/disinfection";
import {
  celsius,
  days,
  gpm,
  inMgMinutesPerLitre,
  inPercent,
  mgPerLitre,
  minutes,
  percent,
  seconds,
  usGallons,
} from "risingmain/units";
import { expect, test } from "vitest";

const water = { pH: 7.5, temperature: celsius(10), residual: mgPerLitre(1), logInactivation: 3 };

test("contact time undoes contact", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.double({ min: 1, max: 1e4, noNaN: true }),
      (c, t) => {
        const residual = mgPerLitre(c);
        const contact = contactReached({ residual, time: minutes(t) });
        expect(contactTime({ contact, residual }) / minutes(t)).toBeCloseTo(1, 12);
      },
    ),
  );
});

test("colder, more alkaline, stronger chlorine or more decades never ask for less CT of Giardia", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 9.9, noNaN: true }),
      fc.double({ min: 0, max: 39, noNaN: true }),
      fc.double({ min: 0.1, max: 5, noNaN: true }),
      (pH, t, c) => {
        const at = (change: object) =>
          giardiaContact({ ...water, pH, temperature: celsius(t), residual: mgPerLitre(c), ...change }).contact;
        expect(at({ pH: pH + 0.1 })).toBeGreaterThan(at({}));
        expect(at({ temperature: celsius(t + 1) })).toBeLessThan(at({}));
        expect(at({ residual: mgPerLitre(c * 2) })).toBeGreaterThan(at({}));
        expect(at({ logInactivation: 1.5 }) * 2).toBeCloseTo(at({}), 9);
      },
    ),
  );
});

test("CT of viruses is that of the row, and halfway between rows their mean", () => {
  // US EPA 1999, table B-2: 12, 8, 6, 4, 3, 2 mg·min/L at 0.5, 5, 10, 15, 20, 25 °C; 90 and 60 the first two at pH 10.
  const at = (t: number, pH = 7) => inMgMinutesPerLitre(virusContact({ pH, temperature: celsius(t) }).contact);
  for (const [t, ct] of [
    [0, 12],
    [0.5, 12],
    [2.75, 10],
    [5, 8],
    [10, 6],
    [15, 4],
    [17.5, 3.5],
    [20, 3],
    [25, 2],
    [40, 2],
  ] as const)
    expect(at(t)).toBeCloseTo(ct, 9);
  expect(at(0, 10)).toBeCloseTo(90, 9);
  expect(at(2.75, 10)).toBeCloseTo(75, 9);
});

test("CT of viruses falls from row to row and between them, and pH 10 asks 7.5 times as much", () => {
  let last = Number.POSITIVE_INFINITY;
  for (let t = 0; t <= 40; t += 0.25) {
    const { contact, insideRange } = virusContact({ pH: 7, temperature: celsius(t) });
    expect(contact).toBeLessThanOrEqual(last);
    expect(insideRange).toBe(t >= 0.5 && t <= 25);
    last = contact;
  }
  const at = (pH: number) => virusContact({ pH, temperature: celsius(12.5) }).contact;
  expect(inMgMinutesPerLitre(virusContact({ pH: 9, temperature: celsius(12.5) }).contact)).toBeCloseTo(5, 9);
  expect(at(10) / at(9)).toBeCloseTo(7.5, 9);
  expect(at(9.01)).toBe(at(10));
});

test("acid share falls with pH through one half at pK, and the caution comes with less than half", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 14, noNaN: true }), fc.double({ min: 0, max: 40, noNaN: true }), (pH, t) => {
      const { hypochlorousShare, pK, cautions } = freeChlorine({ pH, temperature: celsius(t) });
      expect(hypochlorousShare > 0.5).toBe(pH < pK);
      expect(cautions.length).toBe(hypochlorousShare < 0.5 ? 1 : 0);
      expect(freeChlorine({ pH: pK, temperature: celsius(t) })).toMatchObject({ hypochlorousShare: 0.5, cautions: [] });
    }),
  );
});

test("after its half-life a bleach is half as strong; older, warmer and stronger fade more", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 15, noNaN: true }),
      fc.double({ min: -5, max: 50, noNaN: true }),
      fc.double({ min: 1, max: 2000, noNaN: true }),
      (s, t, age) => {
        const bleach = { strength: percent(s), temperature: celsius(t), age: days(age) };
        const { halfLife, remaining } = agedStrength(bleach);
        if (halfLife < 6e8) expect(agedStrength({ ...bleach, age: halfLife }).remaining).toBeCloseTo(0.5, 12);
        expect(agedStrength({ ...bleach, age: days(age + 1) }).remaining).toBeLessThan(remaining);
        expect(agedStrength({ ...bleach, temperature: celsius(t + 1) }).remaining).toBeLessThan(remaining);
        expect(agedStrength({ ...bleach, strength: percent(s * 1.1) }).remaining).toBeLessThan(remaining);
      },
    ),
  );
});

test("the half-life of a molar bleach at 300 K, by hand from the rate law", () => {
  // 70.906 g/L of chlorine is 1 mol/L; with as much salt and 0.1 mol/L of caustic the ionic strength is 2.1.
  // k_B/h = 2.083662e10 /(K·s), R = 8.314463 J/(mol·K).
  const k = 2.083662e10 * 300 * Math.exp(-56.5 / 8.314463 - 101_800 / (8.314463 * 300)) * 10 ** (0.146 * 2.1);
  const { halfLife } = agedStrength({ strength: percent(7.0906), age: seconds(0), temperature: celsius(26.85) });
  expect(halfLife * k).toBeCloseTo(1, 5);
});

test("a bleach just made is as strong as its label", () => {
  const fresh = agedStrength({ strength: percent(6), age: seconds(0), temperature: celsius(20) });
  expect(inPercent(fresh.strength)).toBeCloseTo(6, 12);
});

test("flushing: the stirred tank takes at least the plug, and thinning e-fold takes the same again", () => {
  const out = { volume: usGallons(200), flow: gpm(8), from: mgPerLitre(100) };
  const once = flush({ ...out, to: mgPerLitre(100 / Math.E ** 2) });
  const twice = flush({ ...out, to: mgPerLitre(100 / Math.E ** 4) });
  expect(twice.mostTime / once.mostTime).toBeCloseTo(2, 12);
  expect(flush({ ...out, to: mgPerLitre(99) }).mostTime).toBe(once.leastTime);
  expect(flush({ ...out, to: mgPerLitre(1), wellYield: gpm(5) }).overYield).toBe(true);
  expect(flush({ ...out, to: mgPerLitre(1), wellYield: gpm(9) }).overYield).toBe(false);
});

test("recirculation: time is turnovers times volume over flow", () => {
  const loop = recirculation({ volume: usGallons(100), flow: gpm(10), turnovers: 2 });
  expect(loop.time).toBeCloseTo(minutes(20), 9);
  expect(loop.notYetPassed).toBeCloseTo(0.1353, 4);
});

test("each substance takes its chlorine mole for mole, but thiosulphate, which has a published figure", () => {
  // Molar masses over 70.906.
  for (const [dechlorinator, massRatio, method] of [
    ["ascorbic acid", 176.12 / 70.906, "derived"],
    ["sodium ascorbate", 198.11 / 70.906, "derived"],
    ["sodium thiosulphate pentahydrate", 2.2, "white-chlorination"],
    ["sodium bisulphite", 104.06 / 70.906, "derived"],
    ["sodium sulphite", 126.04 / 70.906, "derived"],
  ] as const) {
    const got = dechlorination({ volume: usGallons(100), residual: mgPerLitre(50), dechlorinator });
    expect(got.massRatio).toBeCloseTo(massRatio, 3);
    expect(got.method).toBe(method);
  }
});

test("dechlorination grows with volume, residual and excess alike", () => {
  const flushed = { volume: usGallons(100), residual: mgPerLitre(50), dechlorinator: "sodium sulphite" } as const;
  const { mass } = dechlorination(flushed);
  expect(dechlorination({ ...flushed, volume: usGallons(200) }).mass / mass).toBeCloseTo(2, 12);
  expect(dechlorination({ ...flushed, residual: mgPerLitre(100) }).mass / mass).toBeCloseTo(2, 12);
  expect(dechlorination({ ...flushed, excess: percent(10) }).mass / mass).toBeCloseTo(1.1, 12);
});
