/** The charts of a plan are those of its parts: each is what its own function draws of the plan's figures. */
import { wallRoughness } from "risingmain/pipe";
import type { Plan } from "risingmain/plan";
import {
  chartsOf,
  dayChart,
  frictionChart,
  gradeLineChart,
  type JsonObject,
  pumpChart,
  startsChart,
  voltageChart,
} from "risingmain/plot";
import { type RunningSystem, simulate } from "risingmain/system";
import { days, minutes } from "risingmain/units";
import { expect, test } from "vitest";
import { headTakenBy } from "../../src/system/head-taken.ts";
import { changed } from "../changed.ts";
import { refused } from "../refused.ts";
import { plan } from "./specs.ts";

const running = plan.running as RunningSystem;
/** Without a day, which takes the longest to draw. */
const quick = changed(plan, "stages.day", null);

test("pump, grade line, starts and voltage, in the units asked for", () => {
  const options = { units: "metric", width: 700 } as const;
  const { layout, tank, power, day } = plan.stages;
  if (layout.gradeLine === null || tank.worst === null || power === null || day === null)
    throw new Error("a part is missing");
  const charts = chartsOf(quick, options);
  if (running.control.kind !== "switch") throw new Error("no switch");
  const { cutIn, cutOut } = running.control;
  const systems = [
    { name: "at cut-in", systemHead: headTakenBy(running, cutIn) },
    { name: "at cut-out", systemHead: headTakenBy(running, cutOut) },
  ];
  expect(charts.pump).toEqual(pumpChart({ curve: running.pump, systems }, options));
  expect(charts.gradeLine).toEqual(gradeLineChart({ stations: layout.gradeLine.points }, options));
  const named = { name: "this pump and switch", volume: tank.volume, worst: tank.worst };
  const limit = tank.mostStarts === null ? {} : { mostStarts: tank.mostStarts };
  expect(charts.starts).toEqual(startsChart({ tanks: [named], ...limit }, options));
  // The first source's voltage less the drop of one cable after the other.
  const { cables, sources } = power;
  const source = sources[0]?.voltage as number;
  const segments = cables.map((_, i) => ({
    voltage: source - cables.slice(0, i + 1).reduce((sum, { drop }) => sum + drop, 0),
  }));
  const last = chartsOf(quick, options).voltage;
  const drawn = voltageChart(
    {
      cables: cables.map(({ name, size, length }) => ({ name: `${name}, ${size}`, length })),
      circuits: [{ name: "running", sourceVoltage: source, drop: { state: "carried", sourceDrop: 0, segments } }],
    } as never,
    options,
  );
  expect(last).toEqual(drawn);
  expect(charts.day).toBeNull();
});

test("the day is the running system's, sampled by half minutes", () => {
  const { day } = plan.stages;
  if (day === null || running.control.kind !== "switch") throw new Error("no day");
  const run = simulate({
    system: running,
    demand: day.demand,
    duration: days(1),
    sampleEvery: minutes(0.5),
    keepEvents: 4000,
  });
  const { cutIn, cutOut } = running.control;
  expect(chartsOf(plan).day).toEqual(dayChart({ run, cutIn, cutOut }));
});

test("a drive's pressures are those that start and stop it", () => {
  const control = {
    kind: "variable speed",
    startPressure: 2e5,
    setPressure: 2.4e5,
    stopPressure: 2.8e5,
    minimumFlow: 5e-5,
  };
  const driven = changed(running, "control", control) as RunningSystem;
  const systems = [
    { name: "at cut-in", systemHead: headTakenBy(driven, 2e5 as never) },
    { name: "at cut-out", systemHead: headTakenBy(driven, 2.8e5 as never) },
  ];
  expect(chartsOf(changed(quick, "running", driven)).pump).toEqual(pumpChart({ curve: driven.pump, systems }));
});

test("friction: the sizes in use, narrowest first, once each, with their flows, a third and three times of them", () => {
  const { dropPipe, pump, layout, site } = plan.stages;
  const pipe = (name: string, insideDiameter: number) => ({ ...dropPipe.pipe, name, insideDiameter });
  const runs = (list: readonly object[], dutyFlow: number = pump.dutyFlow) =>
    changed(changed(quick, "stages.layout.runs", list), "stages.pump.dutyFlow", dutyFlow) as Plan;
  const [wide, narrow] = [pipe("wide", 0.06), pipe("narrow", 0.02)];
  const drawn = (each: Plan) => chartsOf(each, { units: "metric" }).friction;
  const expected = (pipes: readonly (typeof wide)[], marks: readonly (readonly [string, number])[]) => {
    const flows = marks.map(([, flow]) => flow);
    return frictionChart(
      {
        pipes: pipes.map(({ name, insideDiameter, material }) => ({
          name,
          insideDiameter,
          roughness: wallRoughness(material).roughness,
        })),
        viscosity: site.water.kinematicViscosity,
        lowestFlow: Math.min(...flows) / 3,
        highestFlow: Math.max(...flows) * 3,
        marks: marks.map(([pipe, flow]) => ({ pipe, flow })),
      } as never,
      { units: "metric" },
    );
  };
  const drop = dropPipe.pipe;
  const flow = pump.dutyFlow;
  const all = drawn(
    runs([
      { pipe: wide, flow: 4e-4 },
      { pipe: narrow, flow: 2e-4 },
      { pipe: wide, flow: 3e-4 },
    ]),
  );
  const order = [wide, narrow, drop].sort((a, b) => a.insideDiameter - b.insideDiameter);
  expect(all).toEqual(
    expected(order, [
      [drop.name, flow],
      ["wide", 4e-4],
      ["narrow", 2e-4],
      ["wide", 3e-4],
    ]),
  );
  // A tenth of a litre an hour is no flow: 3e-8 m³/s is just none.
  expect(drawn(runs([{ pipe: wide, flow: 3e-8 }]))).toEqual(expected([drop], [[drop.name, flow]]));
  expect(drawn(runs([{ pipe: wide, flow: 3.01e-8 }], 0))).toEqual(expected([wide], [["wide", 3.01e-8]]));
  expect(drawn(runs([{ pipe: wide, flow: 0 }], 0))).toBeNull();
  expect(layout.runs.length).toBeGreaterThan(0);
  // Ten sizes at most, the narrowest; a hundred marks at most, of the sizes drawn alone.
  const many = Array.from({ length: 12 }, (_, i) => ({ pipe: pipe(`p${i}`, 0.01 + 0.002 * i), flow: 1e-4 }));
  const ten = many.slice(0, 10).map((run) => run.pipe);
  expect(drawn(runs(many, 0))).toEqual(
    expected(
      ten,
      ten.map(({ name }) => [name, 1e-4]),
    ),
  );
  const busy = Array.from({ length: 120 }, (_, i) => ({ pipe: narrow, flow: 1e-4 + 1e-7 * i }));
  expect(drawn(runs(busy, 0))).toEqual(
    expected(
      [narrow],
      busy.slice(0, 100).map(({ flow: each }) => ["narrow", each]),
    ),
  );
});

test("what a plan has no numbers for is null", () => {
  const absent = (changes: Readonly<Record<string, unknown>>) => {
    const without = Object.entries(changes).reduce((each, [path, value]) => changed(each, path, value), quick);
    return Object.entries(chartsOf(without))
      .filter(([, chart]) => chart === null)
      .map(([name]) => name);
  };
  expect(absent({})).toEqual(["day"]);
  expect(absent({ running: null })).toEqual(["pump", "day"]);
  expect(absent({ "stages.layout.gradeLine": null })).toEqual(["gradeLine", "day"]);
  expect(absent({ "stages.tank.worst": null })).toEqual(["day", "starts"]);
  expect(absent({ "stages.power": null })).toEqual(["day", "voltage"]);
  expect(absent({ "stages.power.cables": [] })).toEqual(["day", "voltage"]);
  expect(absent({ "stages.power.sources[0].runningVoltage": 0 })).toEqual(["day", "voltage"]);
  // A day without a running system is not drawn either.
  expect(chartsOf(changed(plan, "running", null)).day).toBeNull();
  // A limit to the starts is marked where there is one.
  const marked = (mostStarts: unknown) =>
    JSON.stringify(chartsOf(changed(quick, "stages.tank.mostStarts", mostStarts)).starts);
  expect([marked(null).includes("most allowed"), marked(2e-3).includes("most allowed")]).toEqual([false, true]);
});

test("figures that cannot be drawn are refused by their place", () => {
  const named = (path: string, value: unknown) => refused(() => chartsOf(changed(quick, path, value)));
  const run = { pipe: plan.stages.dropPipe.pipe, flow: 1e-4 };
  expect(named("running.control", 5)).toBe("plan.running.control");
  expect(named("stages.site.water", undefined)).toBe("plan.stages.site.water");
  expect(named("stages.layout.runs", 5)).toBe("plan.stages.layout.runs");
  expect(
    named(
      "stages.layout.runs",
      Array.from({ length: 10_001 }, () => run),
    ),
  ).toBe("plan.stages.layout.runs");
  expect(named("stages.layout.runs", [run, { ...run, flow: -1 }])).toBe("plan.stages.layout.runs[1].flow");
  expect(named("stages.layout.runs", [{ ...run, flow: 101 }])).toBe("plan.stages.layout.runs[0].flow");
  expect(named("stages.pump.dutyFlow", -1)).toBe("plan.stages.pump.dutyFlow");
  expect(named("stages.power.cables", 5)).toBe("plan.stages.power.cables");
  expect(named("stages.power.sources", [])).toBe("plan.stages.power.sources");
  expect(named("stages.power.sources", [undefined])).toBe("plan.stages.power.sources[0]");
  expect(refused(() => chartsOf(plan, { width: 5 }))).toBe("options.width");
  expect(refused(() => chartsOf(undefined as never))).toBe("plan");
  const units = (chart: JsonObject | null) => JSON.stringify(chart).includes("gallons per minute");
  expect([units(chartsOf(quick).pump), units(chartsOf(quick, { units: "metric" }).pump)]).toEqual([true, false]);
});
