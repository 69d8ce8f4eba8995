/** Laws of the chlorine doses. */
import fc from "fast-check";
import {
  bleachConcentration,
  bleachDose,
  hypochloriteConcentration,
  hypochloriteDose,
  kitchenMeasure,
  stockSolution,
  treatedVolume,
} from "risingmain/disinfection";
import {
  type Concentration,
  feet,
  grams,
  inches,
  inMgPerLitre,
  inUsFluidOunces,
  inUsGallons,
  litres,
  mgPerLitre,
  ounces,
  percent,
  ratio,
  usGallons,
} from "risingmain/units";
import { expect, test } from "vitest";

const volumes = fc.double({ min: 1, max: 50_000, noNaN: true }).map(litres);
const targets = fc.double({ min: 1, max: 500, noNaN: true }).map(mgPerLitre);
const strengths = fc.double({ min: 1, max: 15, noNaN: true }).map(percent);

test("the dose gives back the concentration it was for", () => {
  fc.assert(
    fc.property(volumes, targets, strengths, (volume, target, strength) => {
      const { bleach } = bleachDose({ volume, target, strength });
      expect(bleachConcentration({ volume, bleach, strength }) / target).toBeCloseTo(1, 12);
      const { granules } = hypochloriteDose({ volume, target, availableChlorine: ratio(0.65) });
      const got = hypochloriteConcentration({ volume, granules, availableChlorine: ratio(0.65) });
      expect(got / target).toBeCloseTo(1, 12);
    }),
  );
});

test("chlorine is chlorine: bleach and granules of one dose carry the same mass", () => {
  fc.assert(
    fc.property(volumes, targets, strengths, (volume, target, strength) => {
      const liquid = bleachDose({ volume, target, strength }).chlorine;
      expect(hypochloriteDose({ volume, target, availableChlorine: ratio(0.7) }).chlorine).toBe(liquid);
    }),
  );
});

test("a label by weight means more chlorine in a litre, by the density", () => {
  const dose = { volume: usGallons(100), target: mgPerLitre(100), strength: percent(8.25) };
  const byVolume = bleachDose(dose).bleach;
  expect(byVolume / bleachDose({ ...dose, strengthBasis: "weight" }).bleach).toBeCloseTo(1.1, 12);
  expect(byVolume / bleachDose({ ...dose, strengthBasis: "weight", relativeDensity: ratio(1.08) }).bleach).toBeCloseTo(
    1.08,
    12,
  );
});

test("the amount of a 5.25 percent table overdoses by 57 percent with 8.25 percent bleach", () => {
  const { bleach } = bleachDose({ volume: usGallons(1000), target: mgPerLitre(100), strength: percent(5.25) });
  const got = bleachConcentration({ volume: usGallons(1000), bleach, strength: percent(8.25) });
  expect(inMgPerLitre(got)).toBeCloseTo(157.1, 1);
});

test("a measure is never less than the amount and never over half an ounce more, and its counts add up", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1000, noNaN: true }).map(litres), (volume) => {
      const { gallons, cups, fluidOunces, volume: measured } = kitchenMeasure(volume);
      expect(measured).toBeGreaterThanOrEqual(volume * (1 - 2e-9));
      expect(inUsFluidOunces(measured) - inUsFluidOunces(volume)).toBeLessThanOrEqual(0.5);
      expect(gallons * 128 + cups * 8 + fluidOunces).toBeCloseTo(inUsFluidOunces(measured), 6);
      expect(cups).toBeLessThan(16);
      expect(fluidOunces).toBeLessThan(8);
    }),
  );
});

test("whole measures are said as they are", () => {
  expect(kitchenMeasure(usGallons(3)).text).toBe("3 gal");
  expect(kitchenMeasure(usGallons(1 / 16)).text).toBe("1 cup");
  expect(kitchenMeasure(litres(0)).text).toBe("0 fl oz");
  expect(kitchenMeasure(usGallons(1 + 3 / 16 + 2 / 128)).text).toBe("1 gal 3 cups 2 fl oz");
});

test("a stock solution holds the whole dose, in bleach and water that fill it", () => {
  fc.assert(
    fc.property(volumes, targets, strengths, (volume, target, strength) => {
      const { bleach } = bleachDose({ volume, target, strength });
      const stock = stockSolution({ volume, target, strength });
      if (stock.state === "too small") expect(bleach).toBeGreaterThan(usGallons(10));
      else {
        expect(stock.bleach).toBe(bleach);
        expect(inUsGallons(litres((stock.bleach + stock.water) * 1000))).toBeCloseTo(10, 9);
        expect((stock.strength * usGallons(10)) / (volume * target)).toBeCloseTo(1, 9);
      }
    }),
  );
});

test("the well's water is that of its column; cutting a bore in two changes nothing", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 300, noNaN: true }),
      fc.double({ min: 10, max: 300, noNaN: true }),
      fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      (staticLevel, depth, share) => {
        const bore = { insideDiameter: inches(6), top: feet(0), bottom: feet(depth) };
        const cut = feet(depth * share);
        const whole = treatedVolume({ staticLevel: feet(staticLevel), bore: [bore] });
        const halves = treatedVolume({
          staticLevel: feet(staticLevel),
          bore: [
            { ...bore, bottom: cut },
            { ...bore, top: cut },
          ],
        });
        expect(halves.total).toBeCloseTo(whole.total, 12);
        expect(whole.waterColumn).toBeCloseTo(Math.max(feet(depth) - feet(staticLevel), 0), 9);
      },
    ),
  );
});

test("a dry well holds nothing, and pipe and tank are added to it", () => {
  const dry = treatedVolume({
    staticLevel: feet(200),
    bore: [{ insideDiameter: inches(6), top: feet(0), bottom: feet(150) }],
    dropPipe: inches(1),
    pipes: [{ insideDiameter: inches(2), length: feet(100) }],
    tank: usGallons(20),
  });
  expect(dry.well).toBe(0);
  expect(inUsGallons(dry.dropPipe)).toBeCloseTo(0.0408 * 200, 1);
  expect(inUsGallons(dry.pipes)).toBeCloseTo(16.3, 1);
  expect(dry.total).toBeCloseTo(dry.dropPipe + dry.pipes + dry.tank, 15);
});

test("granules are rounded up, and said in both measures", () => {
  const { grams: whole, granules } = hypochloriteDose({
    volume: litres(1000),
    target: mgPerLitre(65),
    availableChlorine: percent(65),
  });
  expect(granules).toBeCloseTo(grams(100), 12);
  expect(whole).toBe(100);
  // Whole amounts stay whole, whatever the last bit of their doubles; 100 g is 3.53 oz, said as 4.
  const of = (mass: number) =>
    hypochloriteDose({ volume: litres(1000), target: (0.65 * mass) as Concentration, availableChlorine: percent(65) });
  for (let n = 1; n <= 100; n++) {
    expect(of(grams(n)).grams).toBe(n);
    expect(of(ounces(n / 2)).ounces).toBe(n / 2);
  }
  expect(of(grams(100)).text).toBe("100 g (4 oz)");
  expect(of(grams(100.1)).grams).toBe(101);
});
