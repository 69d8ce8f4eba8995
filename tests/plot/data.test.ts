/**
 * The numbers in the charts against algebra, published laws, values computed elsewhere, and the results they were made of.
 */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { planSystem, readJob, sampleJob } from "risingmain/plan";
import {
  type ChartSpec,
  chartsOf,
  dayChart,
  frictionChart,
  frictionFactorChart,
  gradeLineChart,
  type JsonObject,
  type JsonValue,
  pumpChart,
  sensitivityChart,
  startsChart,
  voltageChart,
} from "risingmain/plot";
import { pumpCurve } from "risingmain/pump";
import { simulate } from "risingmain/system";
import { worstDemandOnCurve } from "risingmain/tank";
import {
  days,
  feet,
  type GaugePressure,
  gpm,
  type Length,
  minutes,
  psi,
  psia,
  ratio,
  usGallons,
  type VolumeFlow,
  volts,
} from "risingmain/units";
import { describe, expect, test } from "vitest";
import colebrook from "../fixtures/colebrook.json" with { type: "json" };
import { cables, dropAt, lines, pipes, plan, run, running, sourceVoltage, swings, tank, viscosity } from "./specs.ts";

type Row = Readonly<Record<string, number | string>>;

/** Every row of a chart's data, frames and layers in their order. */
function rowsOf(part: JsonValue): readonly Row[] {
  if (typeof part !== "object" || part === null) return [];
  if (Array.isArray(part)) return part.flatMap(rowsOf);
  const { values } = ((part as JsonObject)["data"] ?? {}) as { values?: readonly Row[] };
  return [...(values ?? []), ...Object.entries(part).flatMap(([key, inner]) => (key === "data" ? [] : rowsOf(inner)))];
}

const lineOf = (chart: ChartSpec, name: string): readonly Row[] => rowsOf(chart).filter(({ line }) => line === name);
const numbers = (rows: readonly Row[], field: string): readonly number[] => rows.map((row) => row[field] as number);

/** A foot, a US gallon a minute and a pound on the square inch, SI (exact by definition). */
const FOOT = 0.3048;
const GPM = 3.785411784e-3 / 60;
const PSI = 6894.757293168361;
/** Charts keep seven digits. */
const DRAWN = 1e-6;

const near = (got: number, want: number, relative = DRAWN): void => {
  expect(Math.abs(got - want)).toBeLessThanOrEqual(relative * Math.abs(want));
};

describe("pump and system curves", () => {
  test("the point is where the algebra of two parabolas puts it, and lies on both lines", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 300, noNaN: true }),
        fc.double({ min: 0.1, max: 0.8, noNaN: true }),
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        (shutoff, lift, steepness) => {
          const end = 1.5e-3;
          // H = a − b Q² with H = 0 at the end; S = l a + c Q², so Q² = a (1 − l)/(b + c).
          const b = shutoff / end ** 2;
          const c = steepness * b;
          const curve = pumpCurve({
            points: [0, 0.25, 0.5, 0.75, 1].map((t) => ({
              flow: (end * t) as VolumeFlow,
              head: (shutoff * (1 - t * t)) as Length,
            })),
          });
          const systemHead = (flow: VolumeFlow) => (lift * shutoff + c * flow ** 2) as Length;
          const chart = pumpChart({ curve, systems: [{ name: "s", systemHead }] }, { units: "metric" });
          const point = rowsOf(chart).at(-1) as Row;
          const flow = Math.sqrt((shutoff * (1 - lift)) / (b + c));
          near(point["flow"] as number, 1000 * flow);
          near(point["head"] as number, shutoff - b * flow ** 2);
          near(point["head"] as number, lift * shutoff + c * flow ** 2);
        },
      ),
    );
  });

  test("lines hold the caller's curves; the band runs between the points; the best flows are 70 to 120 % of the best", () => {
    const curve = pumpCurve({
      points: [
        { flow: gpm(0), head: feet(400) },
        { flow: gpm(6), head: feet(364), efficiency: ratio(0.5) },
        { flow: gpm(10), head: feet(300), efficiency: ratio(0.6) },
        { flow: gpm(14), head: feet(204), efficiency: ratio(0.5) },
      ],
    });
    // H = 400 − Q²; levels of 300 and 364 ft meet it at 10 and 6 gpm.
    const level = (head: number) => () => feet(head);
    const chart = pumpChart({
      curve,
      systems: [
        { name: "low", systemHead: level(300) },
        { name: "high", systemHead: level(364) },
      ],
    });
    const [best, ...rest] = rowsOf(chart);
    near(best?.["from"] as number, 7);
    near(best?.["to"] as number, 12);
    const pump = lineOf(chart, "pump");
    for (const { flow, head } of pump) near(head as number, 400 - (flow as number) ** 2);
    for (const head of numbers(lineOf(chart, "low"), "head")) expect(head).toBe(300);
    const band = rest.slice(
      0,
      rest.findIndex(({ flow }) => flow === 0),
    );
    near(Math.min(...numbers(band, "flow")), 6);
    near(Math.max(...numbers(band, "flow")), 10);
    expect(chart.title["subtitle"]).toBe("Low 10 gpm at 300 ft; high 6 gpm at 364 ft.");
  });

  test("a pump that cannot lift has no point, and the title says how much it lacks", () => {
    const curve = pumpCurve({
      points: [
        { flow: gpm(0), head: feet(200) },
        { flow: gpm(9), head: feet(50) },
      ],
    });
    const chart = pumpChart({ curve, systems: [{ name: "at cut-out", systemHead: () => feet(230) }] });
    expect(chart.title["subtitle"]).toBe("At cut-out nothing, 30 ft short.");
    expect(lineOf(chart, "at cut-out").length).toBeGreaterThan(1);
  });
});

test("the grade line holds the stations' figures", () => {
  const rows = rowsOf(gradeLineChart(lines)).filter(({ name }) => name !== undefined);
  const { stations } = lines;
  rows.slice(0, stations.length).forEach((row, i) => {
    const { distance = 0, elevation = 0, hydraulicGrade = 0 } = stations[i] ?? {};
    near(row["distance"] as number, distance / FOOT);
    near(row["pipe"] as number, elevation / FOOT);
    near(row["grade"] as number, hydraulicGrade / FOOT);
  });
  expect(rows.length).toBeGreaterThanOrEqual(stations.length);
});

describe("a day", () => {
  const chart = dayChart({ run }, { units: "metric" });
  const shape = rowsOf(chart).filter(({ depth }) => depth !== undefined);
  const kept = shape.slice(0, shape.length / 2);

  test("every moment drawn is one of the run's", () => {
    const moments = [...run.samples, ...run.events, run.end].map((moment) => ({
      time: moment.time / 3600,
      pressure: moment.pressure / 1000,
      depth: moment.depth as number,
    }));
    const same = (a: number, b: number): boolean => Math.abs(a - b) <= DRAWN * Math.abs(b);
    for (const row of kept) {
      const { time, pressure, depth } = row as Record<"time" | "pressure" | "depth", number>;
      const its = moments.filter((m) => same(time, m.time) && same(pressure, m.pressure) && same(depth, m.depth));
      expect([row, its.length > 0]).toEqual([row, true]);
    }
  });

  test("every moment left out lies within a fifth of a per cent of the line drawn", () => {
    const moments = [...run.samples, ...run.events, run.end].sort((a, b) => a.time - b.time);
    const spread = (field: "pressure" | "depth"): number => {
      const values = moments.map((moment) => moment[field] as number);
      return Math.max(...values) - Math.min(...values);
    };
    const times = numbers(kept, "time");
    expect(kept.length).toBeLessThan(moments.length / 2);
    for (const { time, pressure, depth } of moments) {
      const hour = time / 3600;
      const at = times.findIndex((later) => later >= hour * (1 - 1e-6));
      const [a, b] = [kept[Math.max(at - 1, 0)], kept[at]] as [Row, Row];
      const span = (b["time"] as number) - (a["time"] as number);
      // Steps have no line between their ends.
      if (!(span > 1e-5)) continue;
      const share = Math.min(1, (hour - (a["time"] as number)) / span);
      const along = (field: string): number =>
        (a[field] as number) + share * ((b[field] as number) - (a[field] as number));
      expect(Math.abs(along("pressure") * 1000 - pressure)).toBeLessThan(0.0045 * spread("pressure"));
      expect(Math.abs(along("depth") - depth)).toBeLessThan(0.0045 * spread("depth"));
    }
  });

  test("a bar for each run of the pump, as long together as the run says", () => {
    const bars = rowsOf(chart).filter(({ from }) => from !== undefined);
    expect(bars.length).toBe(run.starts);
    const total = bars.reduce((sum, { from, to }) => sum + (to as number) - (from as number), 0);
    near(total * 3600, run.runTime, 1e-4);
  });
});

test("starts against the tank's size agree with the worst use reckoned anew for each size", () => {
  const pumpFlowAt = (pressure: GaugePressure) => gpm(20 - pressure / PSI / 5);
  const worstOf = (gallons: number) => {
    const size = { volume: usGallons(gallons), precharge: psi(38), atmosphere: psia(14.7) };
    const worst = worstDemandOnCurve({ ...size, cutIn: psi(40), cutOut: psi(60), pumpFlowAt });
    if (worst.state !== "cycles") throw new Error(worst.state);
    return worst;
  };
  const chart = startsChart({ tanks: [{ name: "t", volume: usGallons(44), worst: worstOf(44) }] });
  const rows = lineOf(chart, "t");
  expect(rows.length).toBeGreaterThan(50);
  for (const { volume, starts } of rows.filter((_, i) => i % 10 === 0))
    near(starts as number, worstOf(volume as number).starts * 3600, 1e-6);
  // The tank itself: 15 Q/W starts an hour with Q per minute (washington-state-department-2009, section 11.1).
  const [point] = rowsOf(startsChart({ tanks: [tank] })).slice(-1);
  const usable = (15 * 10) / (point?.["starts"] as number);
  // Boyle's law between 40 and 60 psi from 38 psi at sea level.
  near(usable, 44 * (52.7 / 54.7 - 52.7 / 74.7), 1e-6);
});

/** What is left of Colebrook's equation (1939) at a point; 0 on it. */
const residual = (factor: number, reynolds: number, k: number): number =>
  1 / Math.sqrt(factor) + 2 * Math.log10(k / 3.7 + 2.51 / (reynolds * Math.sqrt(factor)));

describe("friction", () => {
  test("factors at the fixture's points (mpmath, 50 digits) are its values", () => {
    const inside = colebrook.rows
      .map((row) => row as [number, number, number])
      .filter(([reynolds, k]) => reynolds <= 1e8 && k <= 0.05);
    expect(inside.length).toBeGreaterThan(100);
    for (let i = 0; i < inside.length; i += 20) {
      const part = inside.slice(i, i + 20);
      const chart = frictionFactorChart({
        marks: part.map(([reynolds, relativeRoughness], n) => ({ name: `${n}`, reynolds, relativeRoughness })),
      });
      rowsOf(chart)
        .slice(-part.length)
        .forEach((row, n) => {
          near(row["factor"] as number, part[n]?.[2] as number, 5.1e-7);
        });
    }
  });

  test("the curves hold Colebrook's equation, the laminar line 64/Re, and both meet the bridge", () => {
    const chart = frictionFactorChart({ relativeRoughnesses: [0, 0.001] });
    for (const { reynolds, factor } of lineOf(chart, "laminar")) near((factor as number) * (reynolds as number), 64);
    for (const [name, k] of [
      ["smooth", 0],
      ["roughness 0.001", 0.001],
    ] as const) {
      const rows = lineOf(chart, name);
      const turbulent = rows.filter(({ reynolds }) => (reynolds as number) > 4000);
      expect(turbulent.length).toBeGreaterThan(100);
      for (const { reynolds, factor } of turbulent)
        expect(Math.abs(residual(factor as number, reynolds as number, k))).toBeLessThan(1e-5);
      const ends = rows.filter(({ reynolds }) => reynolds === 4000);
      expect(ends.length).toBe(2);
      expect(ends[0]?.["factor"]).toBe(ends[1]?.["factor"]);
    }
  });

  test("losses by size hold Darcy's and Colebrook's equations at every turbulent point", () => {
    const chart = frictionChart({ pipes, viscosity, lowestFlow: gpm(2), highestFlow: gpm(50) });
    for (const { name, insideDiameter, roughness } of pipes) {
      const rows = lineOf(chart, name).filter(({ flow }) => {
        const reynolds = (4 * (flow as number) * GPM) / (Math.PI * insideDiameter * viscosity);
        return reynolds > 4100;
      });
      for (const { flow, loss } of rows) {
        const velocity = (4 * (flow as number) * GPM) / (Math.PI * insideDiameter ** 2);
        // h = f (L/D) V²/2g with L = 100, so f from h.
        const factor = (((loss as number) / 100) * insideDiameter * 2 * 9.80665) / velocity ** 2;
        const reynolds = (velocity * insideDiameter) / viscosity;
        expect(Math.abs(residual(factor, reynolds, roughness / insideDiameter))).toBeLessThan(1e-5);
      }
    }
  });

  test("dots stand where the velocity is the one asked for", () => {
    const chart = frictionChart({
      pipes: pipes.slice(0, 1),
      viscosity,
      lowestFlow: gpm(1),
      highestFlow: gpm(20),
      velocity: (5 * FOOT) as never,
    });
    const { flow } = rowsOf(chart).at(-1) as Row;
    const bore = pipes[0]?.insideDiameter ?? 0;
    near(((flow as number) * GPM * 4) / (Math.PI * bore ** 2), 5 * FOOT);
  });
});

test("voltages fall by Ohm's law from cable to cable", () => {
  const chart = voltageChart({ cables, circuits: [{ name: "running", sourceVoltage, drop: dropAt(10, 1) }] });
  const rows = lineOf(chart, "running");
  // Chapter 9, table 8 of the American code, 75 °C, ohms in 1000 ft of uncoated stranded copper: 10 AWG 1.24, 12 AWG 1.98.
  const first = 230 - (2 * 10 * 150 * 1.24) / 1000;
  expect(numbers(rows, "distance")).toEqual([0, 150, 450]);
  near(rows[1]?.["voltage"] as number, first, 1e-3);
  near(rows[2]?.["voltage"] as number, first - (2 * 10 * 300 * 1.98) / 1000, 1e-3);
});

test("a collapsed circuit is refused, not drawn", () => {
  const collapsed = { state: "collapsed", needed: volts(400), available: volts(230) } as const;
  expect(() => voltageChart({ cables, circuits: [{ name: "starting", sourceVoltage, drop: collapsed }] })).toThrow(
    /carried/,
  );
});

test("bars run from the best guess to each end", () => {
  const rows = rowsOf(sensitivityChart({ tornado: swings, result: "Head", quantity: "head" }, { units: "metric" }));
  expect(rows.slice(0, 6).map(({ input, from, to }) => [input, from, to])).toEqual([
    ["lift", 78, 73],
    ["lift", 78, 93],
    ["friction", 78, 76],
    ["friction", 78, 84],
    ["drawdown", 78, 78],
    ["drawdown", 78, 81],
  ]);
});

describe("a plan's charts", () => {
  const ranch = planSystem(readJob(JSON.parse(readFileSync("docs/jobs/ranch.json", "utf8"))));

  test.each([
    ["sample", plan],
    ["ranch", ranch],
  ])("%s: the pump's points are the plan's", (_, each) => {
    const { pump } = chartsOf(each, { units: "metric" });
    const points = rowsOf(pump as ChartSpec).slice(-2);
    const { atCutIn, atCutOut } = each.stages.pump.chosen ?? {};
    [atCutIn, atCutOut].forEach((point, i) => {
      // The running system carries its loss in 24 points; the plan reckons it anew.
      near(points[i]?.["flow"] as number, 1000 * (point?.flow ?? 0), 1e-3);
      near(points[i]?.["head"] as number, point?.head ?? 0, 1e-3);
    });
  });

  test("the running system gives the day its starts back", () => {
    for (const each of [plan, ranch]) {
      const { running: system, stages } = each;
      if (system === null || stages.day === null) throw new Error("no day");
      const again = simulate({ system, demand: stages.day.demand, duration: days(1), sampleEvery: minutes(30) });
      expect([again.starts, again.runTime, again.delivered]).toEqual([
        stages.day.starts,
        stages.day.runTime,
        stages.day.delivered,
      ]);
    }
  });

  test("the grade line ends at the outlet with the least to spare, at its pressure", () => {
    for (const { stages } of [plan, ranch]) {
      const { gradeLine, uses } = stages.layout;
      const outlets = uses.flatMap(({ name, outlets: list }) => list.map((outlet) => ({ use: name, ...outlet })));
      const least = outlets.reduce((a, b) => (b.pressureHeld - b.wanted < a.pressureHeld - a.wanted ? b : a));
      expect([gradeLine?.use, gradeLine?.outlet]).toEqual([least.use, least.name]);
      expect(gradeLine?.points.at(-1)?.pressure).toBe(least.pressureHeld);
      expect(gradeLine?.points[0]?.junction).toBe("wellhead");
    }
  });

  test("what a plan lacks is null: no pump, no runs, no day", () => {
    const { pump: _, runs: __, demand: ___, ...bare } = sampleJob as Record<string, unknown>;
    const job = {
      ...bare,
      places: [],
      runs: [],
      outlets: [{ name: "tap", at: "wellhead", flow: "5 gpm", pressure: "20 psi" }],
    };
    const charts = chartsOf(planSystem(readJob(job)));
    expect(
      Object.entries(charts)
        .filter(([, chart]) => chart !== null)
        .map(([name]) => name),
    ).toEqual(["friction"]);
  });

  test("a plan stored as JSON draws the same", () => {
    expect(chartsOf(JSON.parse(JSON.stringify(plan)))).toStrictEqual(chartsOf(plan));
    expect(running).not.toBeNull();
  });
});
