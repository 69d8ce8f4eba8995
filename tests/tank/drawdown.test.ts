/** Laws of an air-charged tank's water. */
import fc from "fast-check";
import {
  airLoss,
  airOverWaterDrawdown,
  bankDrawdown,
  prechargeAtTemperature,
  recommendedPrecharge,
  storedWater,
  tankDrawdown,
} from "risingmain/tank";
import {
  type AbsolutePressure,
  type Density,
  type GaugePressure,
  inPsi,
  psi,
  psia,
  type Temperature,
  usGallons,
  type Volume,
} from "risingmain/units";
import { expect, test } from "vitest";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Tanks with the precharge anywhere about the cut-in. */
const tanks = fc
  .record({
    volume: between(0.002, 5),
    precharge: between(0, 6e5),
    atmosphere: between(5e4, 1.05e5),
    polytropicExponent: between(1, 1.4),
    cutIn: between(1e5, 6e5),
    band: between(2e4, 4e5),
  })
  .map(({ band, ...rest }) => ({
    ...rest,
    volume: rest.volume as Volume,
    precharge: rest.precharge as GaugePressure,
    atmosphere: rest.atmosphere as AbsolutePressure,
    cutIn: rest.cutIn as GaugePressure,
    cutOut: (rest.cutIn + band) as GaugePressure,
  }));
const close = (a: number, b: number, scale: number): void => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-12 * scale);
};

test("usable and remaining water are the stored water, and none is negative", () => {
  fc.assert(
    fc.property(tanks, (t) => {
      const d = tankDrawdown(t);
      close(d.usable + d.remaining, d.storedAtCutOut, t.volume);
      expect(Math.min(d.usable, d.remaining)).toBeGreaterThanOrEqual(0);
      expect(d.storedAtCutOut).toBeLessThan(t.volume);
    }),
  );
});

test("a precharge at the cut-in gives the most; higher empties the tank, lower leaves water in it", () => {
  fc.assert(
    fc.property(tanks, (t) => {
      const best = tankDrawdown({ ...t, precharge: t.cutIn }).usable;
      const d = tankDrawdown(t);
      expect(d.usable).toBeLessThanOrEqual(best * (1 + 1e-12));
      if (t.precharge > t.cutIn) expect(d.remaining).toBe(0);
      if (t.precharge < t.cutIn) expect(d.remaining).toBeGreaterThan(0);
      expect(d.precharge === "no water enters").toBe(t.precharge >= t.cutOut);
    }),
  );
});

test("a stiffer exponent, a heavier atmosphere or a smaller tank never gives more", () => {
  fc.assert(
    fc.property(tanks, between(0, 1), (t, part) => {
      const sound = { ...t, precharge: Math.min(t.precharge, t.cutIn) as GaugePressure };
      const stiff = { ...sound, polytropicExponent: t.polytropicExponent + part * (1.4 - t.polytropicExponent) };
      // A tank kept at the cut-in is the clean case: a low charge can gain by stiffness.
      const at = (x: typeof sound) => tankDrawdown({ ...x, precharge: x.cutIn }).usable;
      expect(at(stiff)).toBeLessThanOrEqual(at(sound) * (1 + 1e-12));
      const smaller = { ...sound, volume: (t.volume * (0.1 + 0.9 * part)) as Volume };
      expect(at(smaller)).toBeLessThanOrEqual(at(sound));
      const thin = { ...sound, atmosphere: (t.atmosphere * (0.7 + 0.3 * part)) as AbsolutePressure };
      expect(at(thin)).toBeGreaterThanOrEqual(at(sound) * (1 - 1e-12));
    }),
  );
});

test("stored water rises with pressure and its air obeys p Vⁿ = constant", () => {
  fc.assert(
    fc.property(tanks, between(1e3, 1e6), (t, rise) => {
      const p = (t.precharge + rise) as GaugePressure;
      const { stored, air, state } = storedWater({ ...t, pressure: p });
      expect(state).toBe("holding water");
      const before = (t.precharge + t.atmosphere) * t.volume ** t.polytropicExponent;
      expect(Math.abs(((p + t.atmosphere) * air ** t.polytropicExponent) / before - 1)).toBeLessThan(1e-12);
      expect(storedWater({ ...t, pressure: (p * 1.01) as GaugePressure }).stored).toBeGreaterThan(stored);
    }),
  );
});

test("a bank of one is a tank; of two alike, two tanks; a higher one gives no more than one kept level", () => {
  fc.assert(
    fc.property(tanks, between(0.1, 30), (t, z) => {
      const { cutIn, cutOut, atmosphere, polytropicExponent } = t;
      const precharge = Math.min(t.precharge, cutIn) as GaugePressure;
      const one = { volume: t.volume, precharge };
      const bank = (list: readonly object[]) =>
        bankDrawdown({
          tanks: list as never,
          cutIn,
          cutOut,
          atmosphere,
          polytropicExponent,
          density: 1000 as Density,
        });
      const single = tankDrawdown({ ...t, precharge }).usable;
      close(bank([one]).usable, single, t.volume);
      close(bank([one, one]).usable, 2 * single, t.volume);
      const uphill = bank([{ ...one, elevation: z }]);
      expect(uphill.tanks[0]?.opensAt).toBeGreaterThan(precharge);
    }),
  );
});

test("an air charge read back from a sound tank is its precharge", () => {
  fc.assert(
    fc.property(tanks, (t) => {
      fc.pre(t.precharge < t.cutIn);
      const drawn = tankDrawdown(t).usable;
      const loss = airLoss({ ...t, before: t.cutOut, after: t.cutIn, drawn });
      expect(loss.state).toBe("sound");
      expect(Math.abs(loss.equivalentPrecharge - t.precharge)).toBeLessThan(1e-6 * (t.precharge + t.atmosphere));
      expect(Math.abs(loss.airLeft - 1)).toBeLessThan(1e-6);
    }),
  );
});

test("less water for the same pressure drop is air lost, and then waterlogged", () => {
  const tank = { volume: usGallons(85), precharge: psi(38), atmosphere: psia(14.7), before: psi(60), after: psi(45) };
  const sound = airLoss({ ...tank, drawn: usGallons(10) }).soundDrawdown;
  const state = (share: number) => airLoss({ ...tank, drawn: (sound * share) as Volume }).state;
  expect([1, 0.8, 0.25, 2].map(state)).toEqual(["sound", "air lost", "waterlogged", "readings disagree"]);
});

test("a conventional tank with its air at the cut-in and no seal gives what a captive-air tank gives", () => {
  fc.assert(
    fc.property(tanks, (t) => {
      const precharge = t.cutIn;
      const plain = airOverWaterDrawdown({ ...t, precharge, seal: 0 as Volume });
      close(plain.usable, tankDrawdown({ ...t, precharge }).usable, t.volume);
      const sealed = airOverWaterDrawdown({ ...t, precharge, seal: (0.05 * t.volume) as Volume });
      expect(sealed.state).toBe("air escapes");
    }),
  );
});

test("a charge carried to another temperature and back is itself", () => {
  fc.assert(
    fc.property(tanks, between(250, 330), between(250, 330), (t, a, b) => {
      const there = prechargeAtTemperature({ ...t, setAt: a as Temperature, temperature: b as Temperature });
      fc.pre(there + t.atmosphere > 1000);
      const back = prechargeAtTemperature({
        precharge: there,
        atmosphere: t.atmosphere,
        setAt: b as Temperature,
        temperature: a as Temperature,
      });
      expect(Math.abs(back - t.precharge)).toBeLessThan(1e-8 * (t.precharge + t.atmosphere));
    }),
  );
});

test("each state of the precharge on both sides of its limit", () => {
  const state = (precharge: number) =>
    tankDrawdown({
      volume: usGallons(85),
      precharge: psi(precharge),
      cutIn: psi(40),
      cutOut: psi(60),
      atmosphere: psia(14.7),
    }).precharge;
  expect([35.9, 36.1, 40, 40.1, 59.9, 60].map(state)).toEqual([
    "too low",
    "right",
    "right",
    "too high",
    "too high",
    "no water enters",
  ]);
  expect(inPsi(recommendedPrecharge(psi(1)))).toBe(0);
});

test("the membrane's limit ends the filling first", () => {
  const tank = { volume: usGallons(85), precharge: psi(38), cutIn: psi(40), cutOut: psi(60), atmosphere: psia(14.7) };
  const free = tankDrawdown(tank);
  const limited = tankDrawdown({ ...tank, largestShare: 0.2 });
  expect([free.limitedByMembrane, limited.limitedByMembrane]).toEqual([false, true]);
  close(limited.storedAtCutOut, 0.2 * tank.volume, tank.volume);
});
