/** Laws of freezing, against high-precision fixtures and independent integration. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import {
  berggrenCoefficient,
  berggrenFrostDepth,
  burialDepth,
  buriedPipe,
  drainBack,
  stefanFrostDepth,
  surfaceFreezingIndex,
  timeToFreeze,
} from "risingmain/freeze";
import {
  celsius,
  days,
  fahrenheit,
  fahrenheitDegreeDays,
  feet,
  inches,
  inHours,
  kilogramsPerCubicMetre,
  metresPerSecond,
  millimetres,
  percent,
  ratio,
  wattsPerMetreKelvin,
} from "risingmain/units";
import { expect, test } from "vitest";
import { refused } from "../refused.ts";

interface Fixture {
  readonly neumann: readonly { readonly alpha: number; readonly mu: number; readonly lambda: string }[];
}
const fixture = JSON.parse(readFileSync(new URL("../fixtures/erf.json", import.meta.url), "utf8")) as Fixture;

test.each(fixture.neumann)("Berggren's coefficient at α $alpha, μ $mu", ({ alpha, mu, lambda }) => {
  const got = berggrenCoefficient({ thermalRatio: ratio(alpha), fusionParameter: ratio(mu) });
  expect(Math.abs(got / Number(lambda) - 1)).toBeLessThan(1e-10);
});

const alphas = fc.double({ min: 0, max: 20, noNaN: true });
const mus = fc.double({ min: 1e-4, max: 10, noNaN: true });

test("λ lies between 0 and 1 and falls with warmer ground and with more stored heat", () => {
  fc.assert(
    fc.property(alphas, mus, (alpha, mu) => {
      const at = (a: number, m: number) => berggrenCoefficient({ thermalRatio: ratio(a), fusionParameter: ratio(m) });
      const lambda = at(alpha, mu);
      expect(lambda).toBeGreaterThan(0);
      expect(lambda).toBeLessThanOrEqual(1);
      expect(at(alpha + 0.1, mu)).toBeLessThan(lambda);
      expect(at(alpha, mu * 1.1)).toBeLessThan(lambda);
    }),
  );
});

test("Stefan's limit: with little heat stored and the ground at freezing λ is 1 − μ/6, by the series of Neumann's equation", () => {
  for (const mu of [1e-4, 1e-3, 1e-2, 5e-2]) {
    const lambda = berggrenCoefficient({ thermalRatio: ratio(0), fusionParameter: ratio(mu) });
    // The next term of the series is of the order of μ².
    expect(Math.abs(lambda - (1 - mu / 6))).toBeLessThan(0.1 * mu * mu + 1e-12);
  }
});

test("Neumann's limit: λ is how far the front goes in a ground followed by cells and steps of time", () => {
  for (const [alpha, mu] of [
    [0, 0.3],
    [0.5, 0.3],
    [1, 0.2],
  ] as const) {
    // Enthalpy in cells of unit diffusivity: above 0 thawed by its warmth α, down to −1/μ freezing, below that frozen and colder.
    const [cells, cell] = [200, 0.02];
    const step = 0.4 * cell * cell;
    const latent = 1 / mu;
    const heat = new Float64Array(cells).fill(alpha);
    const warmth = (h: number): number => (h > 0 ? h : h < -latent ? h + latent : 0);
    let time = 0;
    let front = 0;
    while (front < 0.6) {
      const t = heat.map(warmth);
      for (let i = 0; i < cells; i++) {
        const above = i === 0 ? 2 * (-1 - (t[0] as number)) : (t[i - 1] as number) - (t[i] as number);
        const below = i === cells - 1 ? 0 : (t[i + 1] as number) - (t[i] as number);
        heat[i] = (heat[i] as number) + (step / cell ** 2) * (above + below);
      }
      time += step;
      front = heat.reduce((sum, h) => sum + cell * Math.min(Math.max(-h / latent, 0), 1), 0);
    }
    // Stefan: the front at √(2 μ t).
    const lambda = berggrenCoefficient({ thermalRatio: ratio(alpha), fusionParameter: ratio(mu) });
    expect(Math.abs(front / Math.sqrt(2 * mu * time) / lambda - 1)).toBeLessThan(0.002);
  }
});

const soil = {
  conductivity: wattsPerMetreKelvin(1.4),
  dryDensity: kilogramsPerCubicMetre(1600),
  moisture: percent(15),
  surfaceIndex: fahrenheitDegreeDays(1000),
};

test("Berggren's depth is under Stefan's and comes up to it where the ground is at freezing and nothing is stored", () => {
  const frost = berggrenFrostDepth({ ...soil, season: days(120), meanAnnual: fahrenheit(45) });
  if (frost.state !== "seasonal frost") throw new Error("frozen");
  expect(frost.depth).toBeLessThan(frost.stefanDepth);
  expect(frost.stefanDepth).toBe(stefanFrostDepth(soil).depth);
  const mild = berggrenFrostDepth({
    ...soil,
    surfaceIndex: fahrenheitDegreeDays(10),
    moisture: percent(200),
    season: days(366),
    meanAnnual: celsius(1e-6),
  });
  expect(mild.state === "seasonal frost" && mild.lambda).toBeGreaterThan(0.9999);
});

test("four times the index or the conductivity is twice as deep; four times the water half", () => {
  const { depth } = stefanFrostDepth(soil);
  expect(stefanFrostDepth({ ...soil, surfaceIndex: fahrenheitDegreeDays(4000) }).depth / depth).toBeCloseTo(2, 12);
  expect(stefanFrostDepth({ ...soil, conductivity: wattsPerMetreKelvin(5.6) }).depth / depth).toBeCloseTo(2, 12);
  expect(stefanFrostDepth({ ...soil, moisture: percent(60) }).depth / depth).toBeCloseTo(0.5, 12);
});

test("ground with a mean at freezing or below is said to be frozen all year", () => {
  const at = (t: number) => berggrenFrostDepth({ ...soil, season: days(200), meanAnnual: celsius(t) }).state;
  expect([at(-1), at(0), at(1)]).toEqual(["ground frozen all year", "ground frozen all year", "seasonal frost"]);
});

const pipe = {
  insideDiameter: inches(1.049),
  insulationInside: inches(1.315),
  insulationOutside: inches(3.315),
  conductivity: wattsPerMetreKelvin(0.039),
  water: celsius(8),
  air: celsius(-10),
};

function freezing(change: object): { readonly toFreezing: number; readonly toSolid: number } {
  const result = timeToFreeze({ ...pipe, ...change });
  if (result.state !== "freezes") throw new Error("it does not freeze");
  return result;
}

test("the cooling time is that of a small step at a time", () => {
  const { toFreezing } = freezing({});
  const resistance = Math.log(3.315 / 1.315) / (2 * Math.PI * 0.039);
  const heat = 999.55208 * 4186.8 * (Math.PI / 4) * inches(1.049) ** 2;
  const step = toFreezing / 100_000;
  let water = 8;
  for (let i = 0; i < 100_000; i++) water -= (step * (water + 10)) / (resistance * heat);
  expect(water).toBeCloseTo(0, 3);
});

test("more insulation, warmer water and milder air put freezing off; wind brings it on, down to the published form", () => {
  const { toFreezing, toSolid } = freezing({});
  expect(freezing({ insulationOutside: inches(4) }).toFreezing).toBeGreaterThan(toFreezing);
  expect(freezing({ water: celsius(9) }).toFreezing).toBeGreaterThan(toFreezing);
  expect(freezing({ air: celsius(-9) }).toFreezing).toBeGreaterThan(toFreezing);
  let last = Number.POSITIVE_INFINITY;
  for (const wind of [0, 2, 5, 10, 50]) {
    const windy = freezing({ wind: metresPerSecond(wind) }).toFreezing;
    expect(windy).toBeLessThanOrEqual(last);
    expect(windy).toBeGreaterThan(toFreezing);
    last = windy;
  }
  expect(toSolid).toBeGreaterThan(8 * toFreezing);
});

test("air above a millikelvin below freezing never freezes a pipe, and the cautions come with one that does", () => {
  const states = [273.15, 273.15 - 1e-3, 273.15 - 2e-3].map(
    (air) => timeToFreeze({ ...pipe, air: air as never }).state,
  );
  expect(states).toEqual(["never", "never", "freezes"]);
  const result = timeToFreeze(pipe);
  expect(result.state === "freezes" && result.cautions.map(({ text }) => text).join(" ")).toMatch(/flame.*mains/s);
});

test("a bare pipe in a wind freezes in hours, not in no time", () => {
  const bare = { insulationOutside: inches(1.315), wind: metresPerSecond(5) };
  expect(inHours(freezing(bare).toFreezing as never)).toBeGreaterThan(0.05);
  expect(inHours(freezing(bare).toFreezing as never)).toBeLessThan(2);
});

test("ice melts on the edge of the thawed cylinder, by the field of a buried source", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 5, noNaN: true }),
      fc.double({ min: 1, max: 20, noNaN: true }),
      fc.double({ min: -20, max: -1, noNaN: true }),
      (depth, warm, cold) => {
        const H = depth;
        const d = 0.02;
        const line = buriedPipe({
          axisDepth: H as never,
          outsideDiameter: d as never,
          pipe: celsius(warm),
          ground: celsius(cold),
          conductivity: wattsPerMetreKelvin(2),
        });
        if (line.thawed === undefined) throw new Error("nothing thawed");
        const c = Math.sqrt(H * H - (d / 2) ** 2);
        const top = line.thawed.axisDepth - line.thawed.radius;
        const share = Math.log((top + c) / (c - top)) / line.shape;
        expect(cold + (warm - cold) * share).toBeCloseTo(0, 2);
      },
    ),
  );
});

test("ground thaws only round a pipe above freezing, under a surface more than a millikelvin below it", () => {
  const line = { axisDepth: feet(4), outsideDiameter: inches(2), conductivity: wattsPerMetreKelvin(2) };
  const thaws = ([warm, surface]: readonly [number, number]) =>
    buriedPipe({ ...line, pipe: warm as never, ground: surface as never }).thawed !== undefined;
  const cases = [
    [274, 272],
    [273.15, 272],
    [274, 273.15],
    [274, 273.15 - 1e-3],
  ] as const;
  expect(cases.map(thaws)).toEqual([true, false, false, false]);
});

test("what may be left out is looked at where it is given, and a buried pipe is under the ground", () => {
  const windy = (wind: number) => refused(() => timeToFreeze({ ...pipe, wind: metresPerSecond(wind) }));
  expect([0, 100, -1, 101].map(windy)).toEqual([undefined, undefined, "wind", "wind"]);
  const riser = { riserDiameter: millimetres(25), riserLength: feet(6), hoseLength: feet(6) };
  const hosed = (mm: number) => refused(() => drainBack({ ...riser, hoseDiameter: millimetres(mm) }));
  expect([1000, 0, 1001].map(hosed)).toEqual([undefined, "hoseDiameter", "hoseDiameter"]);
  const line = { outsideDiameter: 0.2, pipe: 280, ground: 270, conductivity: 2 };
  const buried = (axisDepth: number) => refused(() => buriedPipe({ ...line, axisDepth } as never));
  expect([0.1001, 0.1].map(buried)).toEqual([undefined, "axisDepth"]);
});

test("a pipe as cold as the ground loses nothing and thaws nothing", () => {
  const line = buriedPipe({
    axisDepth: feet(4),
    outsideDiameter: inches(2),
    pipe: celsius(-3),
    ground: celsius(-3),
    conductivity: wattsPerMetreKelvin(2),
  });
  expect(line.heatLossPerMetre).toBe(0);
  expect(line.thawed).toBeUndefined();
});

test("burial and drain-back defer to the local code and warn of the weep hole", () => {
  expect(
    burialDepth({ frostDepth: feet(4) })
      .cautions.map(({ text }) => text)
      .join(" "),
  ).toMatch(/local code.*trench/s);
  const drained = drainBack({ riserDiameter: millimetres(25), riserLength: feet(6), draws: 3 });
  expect(drained.drained).toBeCloseTo((Math.PI / 4) * 0.025 ** 2 * 6 * 0.3048, 15);
  expect(drained.cautions[0]?.text).toMatch(/backflow/);
  expect(drained.gravel / drained.drained).toBeCloseTo(3 / 0.35, 12);
  const hosed = drainBack({
    riserDiameter: millimetres(25),
    riserLength: feet(6),
    hoseDiameter: millimetres(25),
    hoseLength: feet(6),
  });
  expect(hosed.drained / drained.drained).toBeCloseTo(2, 12);
});

test("snow keeps the whole of the air's cold on its surface, trees a third of it", () => {
  const at = (surface: "snow" | "tree covered") =>
    surfaceFreezingIndex({ airIndex: fahrenheitDegreeDays(1000), surface }).surfaceIndex;
  expect(at("tree covered") / at("snow")).toBeCloseTo(0.3, 12);
});

test("the factor of summer is there where it is printed", () => {
  const at = (surface: "snow" | "turf") => surfaceFreezingIndex({ airIndex: fahrenheitDegreeDays(1000), surface });
  expect(at("turf").thawing).toBe(0.8);
  expect("thawing" in at("snow")).toBe(false);
});

test("freezing through is that of a ring of ice grown a thousandth at a time", () => {
  const { toFreezing, toSolid } = freezing({});
  const insulation = Math.log(3.315 / 1.315) / (2 * Math.PI * 0.039);
  const radius = inches(1.049) / 2;
  const latent = 999.55208 * 334_944;
  let time = 0;
  for (let i = 0; i < 1000; i++) {
    const r = (radius * (i + 0.5)) / 1000;
    const ring = 2 * Math.PI * r * (radius / 1000);
    // Ice from the wall to r, of 2.2 W/(m·K), stands between the water and the insulation.
    time += (latent * ring * (insulation + Math.log(radius / r) / (2 * Math.PI * 2.2))) / 10;
  }
  expect((toSolid - toFreezing) / time).toBeCloseTo(1, 4);
});

test("the wind's coefficient at Re = 28 200, by hand from its correlation (Churchill and Bernstein 1977)", () => {
  // √28200 = 167.93, ∛0.714 = 0.8938, (0.4/0.714)^⅔ = 0.6796, 1.6796^¼ = 1.1384, 0.1^⅝ = 0.2371, 1.2371^⅘ = 1.1856.
  const nusselt = 0.3 + ((0.62 * 167.93 * 0.8938) / 1.1384) * 1.1856;
  const d = inches(1.315);
  const wind = metresPerSecond((28_200 * 1.35e-5) / d);
  const { toFreezing } = freezing({ insulationOutside: d, wind });
  const heat = 999.55208 * 4186.8 * (Math.PI / 4) * inches(1.049) ** 2;
  const coefficient = (heat * Math.log(18 / 10)) / (toFreezing * Math.PI * d);
  expect((coefficient * d) / 0.0241 / nusselt).toBeCloseTo(1, 3);
});

test("the wind's coefficient lies within the 20 % its source claims of an older correlation (Hilpert 1933, recalled)", () => {
  for (const wind of [2, 5, 10]) {
    const d = inches(1.315);
    const { toFreezing } = freezing({ insulationOutside: d, wind: metresPerSecond(wind) });
    const heat = 999.55208 * 4186.8 * (Math.PI / 4) * inches(1.049) ** 2;
    const coefficient = (heat * Math.log(18 / 10)) / (toFreezing * Math.PI * d);
    const reynolds = (wind * d) / 1.35e-5;
    const hilpert = ((0.193 * reynolds ** 0.618 * Math.cbrt(0.714)) / d) * 0.0241;
    expect(Math.abs(coefficient / hilpert - 1)).toBeLessThan(0.2);
  }
});
