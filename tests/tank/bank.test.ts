/** A bank at any pressure: Boyle's law written out tank by tank, its derivative by differences, and its inverse. */
import fc from "fast-check";
import type { AbsolutePressure, Density, GaugePressure, Length, Volume } from "risingmain/units";
import { expect, test } from "vitest";
import { requireAirCharge } from "../../src/tank/air-charge.ts";
import { bankCompliance, bankPressure, bankWater, compileBank, lowestOpening } from "../../src/tank/bank.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ATMOSPHERE = 1e5;
const DENSITY = 1000;
const GRAVITY = 9.80665;

const tanks = fc.array(
  fc.record({ volume: between(0.01, 2), precharge: between(1e4, 4e5), elevation: between(-20, 20) }),
  { minLength: 1, maxLength: 4 },
);
type Tanks = readonly { readonly volume: number; readonly precharge: number; readonly elevation: number }[];
const exponents = fc.constantFrom(1, 1.2, 1.4);

const compiled = (list: Tanks, polytropicExponent: number) =>
  compileBank({
    tanks: list.map((t) => ({
      volume: t.volume as Volume,
      precharge: t.precharge as GaugePressure,
      elevation: t.elevation as Length,
    })),
    atmosphere: ATMOSPHERE as AbsolutePressure,
    density: DENSITY as Density,
    polytropicExponent,
  });

/** Water in one tank, its air at the switch's pressure less the weight of the water between. */
function byHand({ volume, precharge, elevation }: Tanks[number], pressure: number, n: number): number {
  const inTank = pressure - DENSITY * GRAVITY * elevation;
  return inTank <= precharge ? 0 : volume * (1 - ((precharge + ATMOSPHERE) / (inTank + ATMOSPHERE)) ** (1 / n));
}

test("the water is that of each tank", () => {
  fc.assert(
    fc.property(tanks, exponents, between(0, 9e5), (list, n, pressure) => {
      const want = list.reduce((sum, t) => sum + byHand(t, pressure, n), 0);
      expect(bankWater(compiled(list, n), pressure)).toBeCloseTo(want, 12);
    }),
  );
});

test("its rise with pressure is its derivative, from the opening of each tank on", () => {
  fc.assert(
    fc.property(tanks, exponents, between(0, 9e5), (list, n, pressure) => {
      const bank = compiled(list, n);
      const step = 10;
      fc.pre(bank.opens.every((opens) => Math.abs(opens - pressure) > 2 * step));
      const slope = (bankWater(bank, pressure + step) - bankWater(bank, pressure - step)) / (2 * step);
      expect(Math.abs(bankCompliance(bank, pressure) - slope)).toBeLessThan(1e-6 * slope + 1e-14);
    }),
  );
  const bank = compiled([{ volume: 1, precharge: 2e5, elevation: 0 }], 1);
  // V/(p₀ + a) at the opening itself, nothing below it.
  expect(bankCompliance(bank, 2e5)).toBeCloseTo(1 / 3e5, 15);
  expect(bankCompliance(bank, 2e5 - 1)).toBe(0);
});

test("the pressure that holds some water holds it", () => {
  fc.assert(
    fc.property(tanks, exponents, between(0.001, 0.95), (list, n, share) => {
      const bank = compiled(list, n);
      const highest = 2e6;
      const water = share * bankWater(bank, highest);
      const pressure = bankPressure(bank, water, highest);
      expect(Math.abs(bankWater(bank, pressure) - water)).toBeLessThan(1e-9 * bankWater(bank, highest));
    }),
  );
});

test("no water stands at the first opening, more than there is room for at the highest pressure", () => {
  fc.assert(
    fc.property(tanks, exponents, (list, n) => {
      const bank = compiled(list, n);
      const first = Math.min(...list.map((t) => t.precharge + DENSITY * GRAVITY * t.elevation));
      expect(lowestOpening(bank)).toBeCloseTo(first, 6);
      for (const none of [0, -1]) expect(bankPressure(bank, none, 2e6)).toBe(lowestOpening(bank));
      const full = bankWater(bank, 2e6);
      expect(bankPressure(bank, full, 2e6)).toBeCloseTo(2e6, 0);
      // Between what they hold at the highest and all of their volume.
      expect(bankPressure(bank, full + 0.3 * (bank.volume.reduce((a, b) => a + b, 0) - full), 2e6)).toBe(2e6);
    }),
  );
});

test("at a highest pressure below the first opening there is no water", () => {
  const one = { volume: 1, precharge: 3e5, elevation: 0 };
  for (const list of [[one], [one, one]]) expect(bankPressure(compiled(list, 1), 0.2, 1e5)).toBe(3e5);
});

test("a bank or a charge within something larger is named by its place there", () => {
  expect(() => compileBank(undefined as never, "job.bank")).toThrow(/^job\.bank:/);
  expect(() => compileBank({ tanks: [] } as never, "job.bank")).toThrow(/^job\.bank\.density:/);
  expect(() => requireAirCharge(undefined as never, "tanks[0].")).toThrow(/^tanks\[0\]:/);
  expect(() => requireAirCharge({} as never, "tanks[0].")).toThrow(/^tanks\[0\]\.volume:/);
});
