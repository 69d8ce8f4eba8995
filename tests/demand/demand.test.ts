/** Laws of demand by people, animals, fixtures and irrigation. */
import fc from "fast-check";
import {
  allowanceDemand,
  bedroomDemand,
  cattleDemand,
  dailyDemand,
  fireReserve,
  fixtureDemand,
  fixtureUnits,
  householdRange,
  irrigationDemand,
  type LivestockKind,
  livestockDemand,
  peakFlow,
  publishedDailyUses,
  publishedFlows,
  washingDemand,
  weightRuleDemand,
} from "risingmain/demand";
import { findSource } from "risingmain/sources";
import {
  acres,
  fahrenheit,
  gpm,
  hours,
  inches,
  inGpm,
  inUsGallons,
  inUsGallonsPerDay,
  percent,
  pounds,
  type Temperature,
  usGallons,
  usGallonsPerDay,
  type VolumeFlow,
} from "risingmain/units";
import { expect, test } from "vitest";
import { lineThrough } from "../../src/demand/line-through.ts";
import { refused } from "../refused.ts";

const kinds: readonly LivestockKind[] = ["milking cow", "beef cow", "horse", "goat", "broiler", "yearling, on pasture"];

test("livestock: hotter never drinks less, from the low end at 40 °F to the high end at 90 °F", () => {
  fc.assert(
    fc.property(fc.constantFrom(...kinds), fc.double({ min: -50, max: 150, noNaN: true }), (kind, t) => {
      const at = (f: number) => livestockDemand({ kind, head: 10, temperature: fahrenheit(f) });
      const { daily, low, high, insideRange } = at(t);
      expect(at(t + 1).daily).toBeGreaterThanOrEqual(daily);
      expect(daily).toBeGreaterThanOrEqual(low * (1 - 1e-12));
      expect(daily).toBeLessThanOrEqual(high * (1 + 1e-12));
      expect(insideRange).toBe(fahrenheit(t) >= fahrenheit(40) && fahrenheit(t) <= fahrenheit(90));
      expect(livestockDemand({ kind, head: 10 }).daily).toBe(high);
    }),
  );
});

test("livestock by hand: a milking cow drinks 35 US gal a day in the cool and 45 in the heat, a straight line between", () => {
  const at = (f: number) => livestockDemand({ kind: "milking cow", head: 2, temperature: fahrenheit(f) });
  const rows = [
    [30, 2 * 35, false],
    [40, 2 * 35, true],
    [52.5, 2 * (35 + 10 / 4), true],
    [65, 2 * 40, true],
    [90, 2 * 45, true],
    [95, 2 * 45, false],
  ] as const;
  for (const [f, gallons, inside] of rows) {
    expect(inUsGallonsPerDay(at(f).daily)).toBeCloseTo(gallons, 9);
    expect(at(f).insideRange).toBe(inside);
  }
  const kelvin = (t: number) =>
    refused(() => livestockDemand({ kind: "goat", head: 1, temperature: t as Temperature }));
  expect([200, 340].map(kelvin)).toEqual([undefined, undefined]);
  expect([199.9, 340.1].map(kelvin)).toEqual(["temperature", "temperature"]);
  const hottest = livestockDemand({ kind: "milking cow", head: 2 });
  expect(inUsGallonsPerDay(hottest.daily)).toBeCloseTo(2 * 45, 9);
  expect(hottest.insideRange).toBe(true);
});

test("twice the herd drinks twice the water, by any of the three rules", () => {
  const hot = { temperature: fahrenheit(80) };
  const ratio = (of: (head: number) => number) => of(20) / of(10);
  expect(ratio((head) => livestockDemand({ kind: "goat", head }).daily)).toBeCloseTo(2, 12);
  expect(ratio((head) => cattleDemand({ cattle: "bull, 1400 lb", head, ...hot }).daily)).toBeCloseTo(2, 12);
  expect(ratio((head) => weightRuleDemand({ animal: "horse", mass: pounds(900), head }))).toBeCloseTo(2, 12);
  // And so does one horse at work in the heat.
  expect(
    ratio((tenth) => weightRuleDemand({ animal: "horse", mass: pounds(900), workFactor: tenth / 10 })),
  ).toBeCloseTo(2, 12);
});

test("beef cattle between printed temperatures lie between the printed figures; beyond them the end is kept and said", () => {
  const at = (t: number) => cattleDemand({ cattle: "growing, 600 lb", head: 1, temperature: fahrenheit(t) });
  expect(inUsGallonsPerDay(at(85).daily)).toBeCloseTo((8.9 + 12.7) / 2, 9);
  expect(at(100)).toEqual({ ...at(90), insideRange: false });
  expect(at(90).insideRange).toBe(true);
  expect(cattleDemand({ cattle: "wintering pregnant cow", head: 1, temperature: fahrenheit(80) }).insideRange).toBe(
    false,
  );
});

test("a day is the sum of its parts, and a peak delivers it", () => {
  const day = dailyDemand({
    people: 3,
    livestock: [
      { kind: "horse", head: 2 },
      { kind: "layer", head: 40 },
    ],
    other: [{ name: "garden", volume: usGallons(120) }],
  });
  expect(day.parts.map(({ name }) => name)).toEqual(["people", "horse", "layer", "garden"]);
  expect(day.volume).toBeCloseTo(
    day.parts.reduce((sum, { volume }) => sum + volume, 0),
    12,
  );
  expect(inUsGallons(day.volume)).toBeCloseTo(300 + 40 + 6 + 120, 6);
  expect(peakFlow({ volume: day.volume }) * hours(2)).toBeCloseTo(day.volume, 12);
  const people = (perPerson?: VolumeFlow) =>
    dailyDemand({ people: 1, ...(perPerson !== undefined && { perPerson }) }).parts;
  expect(people()[0]?.method).toBe("penn-state-water-planning");
  expect(people(usGallonsPerDay(50))[0]?.method).toBe("given");
  expect(inUsGallons(dailyDemand({ people: 3, perPerson: usGallonsPerDay(50) }).volume)).toBeCloseTo(150, 9);
  expect(dailyDemand({})).toEqual({ volume: 0, mean: 0, parts: [] });
});

test("household rules agree on the order of size", () => {
  expect(householdRange(4).high).toBe(2 * householdRange(4).low);
  expect(bedroomDemand(3)).toBeGreaterThan(householdRange(3).low);
});

test("between rows a straight line, beyond them the end value; a row is not missed by rounding", () => {
  const [xs, ys] = [
    [40, 50, 90],
    [1, 3, -1],
  ];
  const at = (x: number) => lineThrough(xs, ys, x);
  for (const [x, value] of [
    [0, 1],
    [40, 1],
    [45, 2],
    [50, 3],
    [60, 2],
    [90, -1],
    [5000, -1],
  ] as const) {
    expect(at(x).value).toBeCloseTo(value, 12);
  }
  // A thousand-millionth of the place is rounding.
  for (const end of [40, 90]) {
    for (const off of [-1, 1]) {
      expect(at(end * (1 + off * 0.9e-9)).inside).toBe(true);
      expect(at(end * (1 + off * 1.1e-9)).inside).toBe(end === 40 ? off > 0 : off < 0);
    }
  }
});

test("each fixture curve rises without a fall, from nothing", () => {
  const curves = [
    { curve: "ipc-2021", flush: "tank" },
    { curve: "ipc-2021", flush: "valve" },
    { curve: "nspc", flush: "tank" },
    { curve: "nspc", flush: "valve" },
    { curve: "hunter-1940", flush: "tank" },
  ] as const;
  fc.assert(
    fc.property(
      fc.constantFrom(...curves),
      fc.double({ min: 0, max: 6000, noNaN: true }),
      fc.double({ min: 0, max: 50, noNaN: true }),
      (method, units, more) => {
        const at = (fixtures: number) => fixtureDemand({ ...method, fixtureUnits: fixtures }).peak;
        expect(at(units + more)).toBeGreaterThanOrEqual(at(units));
      },
    ),
  );
  for (const method of curves) expect(fixtureDemand({ ...method, fixtureUnits: 0 }).peak).toBe(0);
});

test("at ten units the curves differ by half, and say which they are", () => {
  const ipc = fixtureDemand({ fixtureUnits: 10 });
  const nspc = fixtureDemand({ fixtureUnits: 10, curve: "nspc" });
  expect(inGpm(ipc.peak)).toBeCloseTo(14.6, 9);
  expect(inGpm(nspc.peak)).toBeCloseTo(8, 9);
  expect([ipc.method, nspc.method]).toEqual(["ipc-2021", "nspc"]);
});

test("a curve says where it has no printed row", () => {
  const inside = (fixtureUnits: number, curve: "ipc-2021" | "nspc" | "hunter-1940") =>
    fixtureDemand({ fixtureUnits, curve }).insideRange;
  expect([inside(0.5, "ipc-2021"), inside(1, "ipc-2021"), inside(5001, "ipc-2021")]).toEqual([false, true, false]);
  expect([inside(14, "nspc"), inside(60, "nspc"), inside(120, "nspc")]).toEqual([true, false, true]);
  expect([inside(5, "hunter-1940"), inside(55, "hunter-1940")]).toEqual([false, true]);
});

test("the 1940 curve is for flush tanks: asked for valves it is refused", () => {
  expect(() => fixtureDemand({ fixtureUnits: 10, curve: "hunter-1940", flush: "valve" })).toThrow(/flush/);
});

test("one house by three methods: about 7, 10 and 17 gpm, as published side by side", () => {
  const allowance = allowanceDemand([
    { fixture: "tub or tub with shower", count: 1 },
    { fixture: "lavatory", count: 2 },
    { fixture: "toilet, flush tank", count: 1 },
    { fixture: "kitchen sink", count: 1 },
    { fixture: "dishwasher", count: 1 },
    { fixture: "clothes washer", count: 1 },
  ]);
  expect(inGpm(allowance.peak)).toBeCloseTo(7.25, 9);
  expect(inGpm(allowance.largestFixture)).toBeCloseTo(8, 9);
  // None of a kind is not the largest.
  expect(allowanceDemand([{ fixture: "tub or tub with shower", count: 0 }]).largestFixture).toBe(0);
  const units = fixtureUnits([
    { fixture: "bathroom group, flush tank", count: 2 },
    { fixture: "kitchen sink", count: 1 },
    { fixture: "dishwasher", count: 1 },
    { fixture: "washing machine, 8 lb", count: 1 },
    { fixture: "hose bibb", count: 1 },
  ]);
  expect(Math.round(inGpm(fixtureDemand({ fixtureUnits: units }).peak))).toBe(17);
});

test("irrigation: half the efficiency or half the hours is twice the flow", () => {
  const plot = { area: acres(0.2), depth: inches(0.3), efficiency: percent(80), time: hours(8) };
  const { flow, volume } = irrigationDemand(plot);
  expect(irrigationDemand({ ...plot, efficiency: percent(40) }).flow / flow).toBeCloseTo(2, 12);
  const short = irrigationDemand({ ...plot, time: hours(4) });
  expect(short.flow / flow).toBeCloseTo(2, 12);
  expect(short.volume).toBe(volume);
});

test("washing at the high end is never under the low", () => {
  const { volume, low } = washingDemand({ washing: "filter backwash", times: 3 });
  expect([inUsGallons(low), inUsGallons(volume)].map(Math.round)).toEqual([300, 600]);
});

test("a fire reserve is the flow the well does not give, and defers to the fire authority", () => {
  const need = fireReserve({ flow: gpm(20), time: hours(1), wellFlow: gpm(5) });
  expect(inUsGallons(need.volume)).toBeCloseTo(900, 9);
  expect(fireReserve({ flow: gpm(5), wellFlow: gpm(20) }).volume).toBe(0);
  expect(need.cautions[0]?.text).toMatch(/fire authority/);
});

test("every published figure names a source of the bibliography", () => {
  for (const { source, low, high } of [...publishedDailyUses, ...publishedFlows]) {
    expect(findSource(source).id).toBe(source);
    expect(high).toBeGreaterThanOrEqual(low);
  }
  for (const kind of kinds) expect(findSource(livestockDemand({ kind, head: 1 }).method)).toBeDefined();
});
