/** What frames a chart: axes that end with their data, keys with every series, texts that fit, figures in words. */
import fc from "fast-check";
import {
  type ChartSpec,
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
import { describe, expect, test } from "vitest";
import { logMarks } from "../../src/plot/axis-marks.ts";
import { byName, pointLayer, readOptions, singleChart, stackedChart } from "../../src/plot/look.ts";
import { DASHES, LINE_COLOURS } from "../../src/plot/palette.ts";
import { axisTitle, capital, drawn, inWords, shownIn } from "../../src/plot/shown.ts";

type Row = Readonly<Record<string, number | string>>;

/** Every object of a chart, itself first. */
function objectsOf(part: JsonValue): readonly JsonObject[] {
  if (typeof part !== "object" || part === null) return [];
  if (Array.isArray(part)) return part.flatMap(objectsOf);
  return [part as JsonObject, ...Object.values(part).flatMap(objectsOf)];
}
/** A part of a part, by their names. */
const within = (whole: JsonValue | undefined, ...names: readonly string[]): JsonValue | undefined =>
  names.reduce<JsonValue | undefined>((part, name) => (part as JsonObject | undefined)?.[name], whole);
const rowsOf = (chart: JsonValue): readonly Row[] =>
  objectsOf(chart).flatMap((part) => (part["data"] as { values?: readonly Row[] } | undefined)?.values ?? []);
/** The encodings of a field, wherever it is drawn. */
const axesOf = (chart: ChartSpec, field: string): readonly JsonObject[] =>
  objectsOf(chart).filter((part) => part["field"] === field && part["type"] === "quantitative");
/** The marks of a chart, a bare name as the object it stands for. */
const marksOf = (chart: ChartSpec): readonly JsonObject[] =>
  objectsOf(chart).flatMap(({ mark }) =>
    mark === undefined ? [] : [typeof mark === "string" ? { type: mark } : (mark as JsonObject)],
  );
const colourOf = (chart: ChartSpec) =>
  objectsOf(chart).flatMap((part) => ((part["strokeDash"] as JsonObject)?.["field"] === undefined ? [] : [part]));

const times = <T>(count: number, make: (i: number) => T): readonly T[] =>
  Array.from({ length: count }, (_, i) => make(i));
const pipe = (i: number) => ({ name: `size ${i}`, insideDiameter: 0.02 + 0.01 * i, roughness: 0 });
const friction = (count: number, more: object = {}, options: object = {}) =>
  frictionChart(
    { pipes: times(count, pipe), viscosity: 1.306e-6, lowestFlow: 1e-4, highestFlow: 1e-3, ...more } as never,
    { units: "metric", ...options },
  );
const station = (name: string, distance: number, elevation: number, grade: number) => ({
  name,
  distance,
  elevation,
  hydraulicGrade: grade,
});
const grade = (stations: readonly object[], options: object = {}) =>
  gradeLineChart({ stations } as never, { units: "metric", ...options });
const tank = (name: string, volume: number, perHour: number) => ({ name, volume, worst: { starts: perHour / 3600 } });
const starts = (tanks: readonly object[], more: object = {}) =>
  startsChart({ tanks, ...more } as never, { units: "metric" });
const circuit = (name: string, ...voltages: readonly number[]) => ({
  name,
  sourceVoltage: 230,
  drop: { state: "carried", sourceDrop: 2, segments: voltages.map((voltage) => ({ voltage })) },
});
const voltage = (circuits: readonly object[], more: object = {}) =>
  voltageChart(
    {
      cables: [
        { name: "a", length: 40 },
        { name: "b", length: 60 },
      ],
      circuits,
      ...more,
    } as never,
    { units: "metric" },
  );
/** 60 m, falling by its square to 20 m at 2 L/s; best at 1 L/s where it is asked for. */
const curve = (efficiency = false) =>
  pumpCurve({
    points: [0, 1, 2].map((q) => ({
      flow: (q * 1e-3) as never,
      head: (60 - 10 * q * q) as never,
      ...(efficiency && { efficiency: ([0, 0.6, 0][q] ?? 0) as never }),
    })),
  });
const pump = (systems: readonly (readonly [name: string, head: (q: number) => number])[], efficiency = false) =>
  pumpChart(
    { curve: curve(efficiency), systems: systems.map(([name, systemHead]) => ({ name, systemHead })) } as never,
    { units: "metric" },
  );

/** Everything with a mark: the encodings and rows it has, its own or those of what holds it. */
interface Unit {
  readonly mark: JsonObject;
  readonly encoding: Readonly<Record<string, JsonObject>>;
  readonly rows: readonly Row[];
}
function unitsOf(part: JsonObject, above: Omit<Unit, "mark"> = { encoding: {}, rows: [] }): readonly Unit[] {
  const own = part["data"] as { values?: readonly Row[] } | undefined;
  const here = {
    encoding: { ...above.encoding, ...(part["encoding"] as JsonObject) } as Unit["encoding"],
    rows: own === undefined ? above.rows : (own.values ?? []),
  };
  const inner = [
    ...((part["layer"] ?? []) as readonly JsonObject[]),
    ...((part["vconcat"] ?? []) as readonly JsonObject[]),
  ];
  for (const layer of inner) expect([typeof layer, "mark" in layer || "layer" in layer]).toEqual(["object", true]);
  const { mark } = part;
  const itself =
    mark === undefined ? [] : [{ mark: typeof mark === "string" ? { type: mark } : (mark as JsonObject), ...here }];
  return [...itself, ...inner.flatMap((layer) => unitsOf(layer, here))];
}

/** What places each kind of mark, by encodings or by itself. */
const PLACED: Readonly<Record<string, readonly (readonly string[])[]>> = {
  line: [["x", "y"]],
  point: [["x", "y"]],
  area: [["x", "y", "y2"]],
  rect: [["x", "x2"]],
  bar: [["x", "x2", "y"]],
  rule: [["x"], ["y"]],
  text: [
    ["text", "x", "y"],
    ["text", "y"],
  ],
};

/** One of each chart with all it can hold. */
const WHOLE: Readonly<Record<string, () => ChartSpec>> = {
  pump: () =>
    pump(
      [
        ["low", () => 30],
        ["high", () => 40],
        ["steep", (q) => 20 + 6e7 * q * q],
      ],
      true,
    ),
  friction: () => friction(2, { velocity: 1, marks: [{ pipe: "size 1", flow: 4e-4 }] }),
  factor: () => frictionFactorChart({ marks: [{ name: "m", reynolds: 1e5, relativeRoughness: 0.01 }] }),
  grade: () => grade([station("well", 0, 0, 50), station("hill", 100, 60, 45), station("tap", 300, 10, 40)]),
  starts: () => starts([tank("x", 0.1, 10), tank("y", 0.2, 4)], { mostStarts: 6 / 3600 }),
  voltage: () => voltage([circuit("running", 225, 220)], { leastVoltage: 210 }),
  swings: () =>
    sensitivityChart({
      tornado: { base: 5, bars: [{ input: "lift", atLow: 2, atHigh: 9 }] },
      result: "Head",
      quantity: "head",
    } as never),
  "bare pump": () => pump([["high", () => 75]]),
  "bare starts": () => starts([tank("x", 0.1, 10)]),
  "bare voltage": () => voltage([circuit("running", 225, 220)]),
  day: () =>
    dayChart({
      run: {
        samples: [0, 3600, 7200].map((time) => ({ time, pressure: 3e5 + time, depth: 30, pumpRunning: time === 3600 })),
        events: [],
        end: { time: 7200, pressure: 3e5, depth: 31, pumpRunning: false },
      },
      cutIn: 2.9e5,
    } as never),
};

describe.each(Object.entries(WHOLE))("%s", (name, draw) => {
  test("every mark is of a kind, placed by fields that each of its rows has", () => {
    for (const { mark, encoding, rows } of unitsOf(draw())) {
      const by = { ...mark, ...encoding };
      const ways = PLACED[String(mark["type"])] ?? [];
      expect([name, mark["type"], ways.some((way) => way.every((channel) => by[channel] !== undefined))]).toEqual([
        name,
        mark["type"],
        true,
      ]);
      expect(rows.length).toBeGreaterThan(0);
      for (const { field, type, title, value } of Object.values(encoding)) {
        // A channel is a field of the data, or one value for all.
        expect([mark["type"], field !== undefined || value !== undefined]).toEqual([mark["type"], true]);
        if (field === undefined) continue;
        expect(rows.every((row) => row[field as string] !== undefined)).toBe(true);
        if (type === "quantitative" && title !== null) expect(String(title)).toMatch(/, |number|factor|Hours|Starts/);
      }
    }
  });

  test("limits are dashed, dots tell their figures, words stand clear of their line", () => {
    for (const { mark } of unitsOf(draw())) {
      if (mark["type"] === "rule" && name !== "swings")
        expect((mark["strokeDash"] as readonly number[]).length).toBe(2);
      if (mark["strokeDash"] !== undefined) expect((mark["strokeDash"] as readonly number[]).length).toBeGreaterThan(1);
      if (name === "swings" && mark["type"] === "bar") expect(mark["tooltip"]).toBe(true);
      if (mark["type"] === "point") expect([mark["tooltip"], mark["filled"]]).toEqual([true, undefined]);
      if (mark["type"] === "text" && mark["dy"] !== undefined)
        expect(Math.sign(mark["dy"] as number)).toBe(mark["baseline"] === "top" ? 1 : -1);
    }
  });
});

describe("keys", () => {
  test.each<readonly [string, () => ChartSpec, readonly string[]]>([
    [
      "pump",
      () =>
        pump([
          ["low", () => 30],
          ["high", () => 40],
        ]),
      ["pump", "low", "high"],
    ],
    ["friction", () => friction(3), ["size 0", "size 1", "size 2"]],
    [
      "factor",
      () => frictionFactorChart({ relativeRoughnesses: [0, 0.01, 0.001, 0.01] }),
      ["laminar", "roughness 0.01", "roughness 0.001", "smooth"],
    ],
    ["grade line", () => grade([station("a", 0, 0, 30), station("b", 50, 5, 20)]), ["grade line", "pipe"]],
    ["starts", () => starts([tank("x", 0.1, 10), tank("y", 0.2, 8)]), ["x", "y"]],
    ["voltage", () => voltage([circuit("running", 225, 220), circuit("starting", 200, 180)]), ["running", "starting"]],
  ])("%s: every series by colour and dash, and a row of each", (_, draw, names) => {
    const chart = draw();
    const [key] = colourOf(chart);
    for (const channel of ["color", "strokeDash"] as const) {
      const { field, type, scale, legend } = within(key, channel) as {
        field: string;
        type: string;
        scale: { domain: string[]; range: unknown[] };
        legend: JsonObject;
      };
      expect([field, type, scale.domain, scale.range.length]).toEqual(["line", "nominal", names, names.length]);
      expect(legend["symbolType"]).toBe("stroke");
    }
    expect(new Set(rowsOf(chart).flatMap(({ line }) => (line === undefined ? [] : [line])))).toEqual(new Set(names));
  });

  test("one line is named by the title, colours and dashes go round, and columns are as many as have room", () => {
    const look = readOptions({ width: 560 });
    expect((byName(look, ["only"]).color as JsonObject)["legend"]).toBeNull();
    const many = byName(
      look,
      times(12, (i) => `n${i}`),
    );
    const range = ({ scale }: JsonObject) => (scale as { range: readonly unknown[] }).range;
    expect(range(many.color)).toEqual(times(12, (i) => LINE_COLOURS.light[i % 4]));
    expect(range(many.strokeDash)).toEqual(times(12, (i) => DASHES[i % 10]));
    // 13 px letters half as wide: 26 letters and 6 of sign and gap are 208 px.
    const columns = (width: number, names: readonly string[]) =>
      (byName(readOptions({ width }), names, "kind").color["legend"] as JsonObject)["columns"];
    const long = ["a".repeat(26), "b", "c"];
    expect([240, 415, 416, 624, 4000].map((width) => columns(width, long))).toEqual([1, 1, 2, 3, 3]);
    expect(columns(240, ["a".repeat(100), "b"])).toBe(1);
    expect(byName(look, ["a", "b"], "kind").color["field"]).toBe("kind");
  });

  test("the ends of swings are told apart by filling, beside each other where there is room", () => {
    const swing = (width: number) =>
      sensitivityChart(
        {
          tornado: { base: 5, bars: [{ input: "lift", atLow: 2, atHigh: 9 }] },
          result: "Head",
          quantity: "head",
        } as never,
        { width, units: "metric" },
      );
    const fill = (width: number) => objectsOf(swing(width)).find((part) => part["field"] === "end") as JsonObject;
    expect(fill(560)["scale"]).toEqual({
      domain: ["input at its lowest", "input at its highest"],
      range: ["#FFFFFF", LINE_COLOURS.light[0]],
    });
    expect([439, 440].map((width) => (fill(width)["legend"] as JsonObject)["columns"])).toEqual([1, 2]);
    expect((fill(560)["legend"] as JsonObject)["symbolStrokeColor"]).toBe(LINE_COLOURS.light[0]);
  });
});

describe("axes", () => {
  test("end with their data, but for those that begin at nothing", () => {
    const nice = (chart: ChartSpec, field: string) =>
      axesOf(chart, field).map(({ scale }) => (scale as JsonObject)?.["nice"]);
    const all = (chart: ChartSpec, field: string, want: boolean) => {
      const found = nice(chart, field);
      expect(found.length).toBeGreaterThan(0);
      expect([field, new Set(found)]).toEqual([field, new Set([want])]);
    };
    all(pump([["s", () => 30]]), "flow", false);
    for (const field of ["flow", "loss"]) all(friction(2), field, false);
    for (const field of ["reynolds", "factor"]) all(frictionFactorChart(), field, false);
    for (const field of ["distance", "elevation", "pipe"])
      all(grade([station("a", 0, 0, 30), station("b", 50, 5, 20)]), field, false);
    all(starts([tank("x", 0.1, 10)]), "volume", false);
    all(starts([tank("x", 0.1, 10)]), "starts", true);
    all(voltage([circuit("r", 225, 220)]), "distance", false);
    all(voltage([circuit("r", 225, 220)]), "voltage", true);
  });

  test("of levels and voltages do not begin at nothing, nor does that of swings", () => {
    const zero = (chart: ChartSpec, field: string) =>
      new Set(axesOf(chart, field).map(({ scale }) => (scale as JsonObject)["zero"]));
    expect(zero(grade([station("a", 0, 0, 30), station("b", 50, 5, 20)]), "elevation")).toEqual(new Set([false]));
    expect(zero(voltage([circuit("r", 225, 220)]), "voltage")).toEqual(new Set([false]));
    const swings = sensitivityChart({
      tornado: { base: 5, bars: [{ input: "x", atLow: 2, atHigh: 9 }] },
      result: "Head",
      quantity: "head",
    } as never);
    expect(zero(swings, "from")).toEqual(new Set([false]));
  });

  test("that are logarithmic have round marks, 1, 2 and 5 where there is room", () => {
    expect(logMarks([0.3, 40])).toEqual({ values: [0.5, 1, 2, 5, 10, 20], tickCount: 6 });
    expect(logMarks([40, 0.5, 3])).toMatchObject({ values: [0.5, 1, 2, 5, 10, 20] });
    // Five decades: the powers alone.
    expect(logMarks([0.3, 40_000])).toEqual({ values: [1, 10, 100, 1000, 10_000], tickCount: 5 });
    expect(logMarks([1, 10_000])).toMatchObject({ tickCount: 13 });
    expect(logMarks([0.001, 0.002])).toMatchObject({ values: [0.001, 0.002] });
    const chart = friction(2);
    for (const field of ["flow", "loss"]) {
      const [{ axis, scale } = {}] = axesOf(chart, field) as readonly { axis?: JsonObject; scale?: JsonObject }[];
      expect(scale?.["type"]).toBe("log");
      const values = axis?.["values"] as readonly number[];
      const [low, high] = [Math.min, Math.max].map((pick) =>
        pick(...rowsOf(chart).map((row) => row[field] as number)),
      ) as [number, number];
      expect(values.length).toBeGreaterThan(2);
      expect(Math.min(...values)).toBeGreaterThanOrEqual(low);
      expect(Math.max(...values)).toBeLessThanOrEqual(high);
    }
    const [reynolds] = axesOf(frictionFactorChart(), "reynolds");
    expect(within(reynolds, "axis", "values")).toEqual([1e3, 1e4, 1e5, 1e6, 1e7, 1e8]);
    for (const axis of [axesOf(chart, "flow")[0]?.["axis"], reynolds?.["axis"]])
      expect((axis as JsonObject)["grid"]).toBe(true);
  });

  test("of a profile leave a fifth of the height as ground, and an eighth over it", () => {
    const chart = grade([station("a", 0, 10, 110), station("b", 50, 20, 100)]);
    const [{ scale } = {}] = axesOf(chart, "elevation") as readonly { scale?: JsonObject }[];
    // From 10 to 110: 20 m of ground, 12 m of air.
    expect(scale?.["domain"]).toEqual([-10, 122]);
    expect(new Set(rowsOf(chart).flatMap(({ floor }) => (floor === undefined ? [] : [floor])))).toEqual(new Set([-10]));
  });

  test("of voltages hold a tenth under the source, or what lies lower", () => {
    const domain = (chart: ChartSpec) => ((axesOf(chart, "voltage")[0] as JsonObject)["scale"] as JsonObject)["domain"];
    expect(domain(voltage([circuit("r", 225, 220)]))).toEqual([207, 230]);
    expect(domain(voltage([circuit("r", 225, 220), circuit("s", 200, 180)]))).toEqual([180, 230]);
    expect(domain(voltage([circuit("r", 225, 220)], { leastVoltage: 190 }))).toEqual([190, 230]);
    expect(domain(voltage([circuit("r", 225, 220), { ...circuit("t", 225, 220), sourceVoltage: 240 }]))).toEqual(
      [207, 240].map((v, i) => (i === 0 ? 0.9 * 240 : v)),
    );
  });

  test("of starts end at half more than the busiest, the limit included", () => {
    const domain = (chart: ChartSpec) => ((axesOf(chart, "starts")[0] as JsonObject)["scale"] as JsonObject)["domain"];
    expect(domain(starts([tank("x", 0.1, 10), tank("y", 0.2, 12)]))).toEqual([0, 18]);
    expect(domain(starts([tank("x", 0.1, 10)], { mostStarts: 20 / 3600 }))).toEqual([0, 30]);
  });
});

describe("what is drawn", () => {
  test("the band of a pump runs along its curve from one point to the other", () => {
    const units = unitsOf(
      pump([
        ["high", () => 50],
        ["low", () => 30],
        ["deep", () => 75],
      ]),
    );
    const band = units.find(({ mark }) => mark["strokeWidth"] === 11);
    const flows = band?.rows.map(({ flow }) => flow as number) ?? [];
    // 50 m at 1 L/s, 30 at √3; one that cannot lift has no part in it.
    expect([flows[0], flows.at(-1)]).toEqual([1, drawn(Math.sqrt(3))]);
    expect(flows).toEqual([...flows].sort((a, b) => a - b));
    // Of steps of a thirtieth those from the 31st to the 51st, and the ends.
    expect(flows.length).toBe(21 + 2);
    for (const { flow, head } of band?.rows ?? [])
      expect(head as number).toBeCloseTo(60 - 10 * (flow as number) ** 2, 3);
    expect(units.filter(({ mark }) => mark["type"] === "point").flatMap(({ rows }) => rows).length).toBe(2);
  });

  test("friction is told in words: dots, diamonds and the water, in the units of the axes", () => {
    const told = (more: object, options: object = {}) =>
      friction(1, more, { width: 2000, ...options }).title["subtitle"];
    const marks = [{ pipe: "size 0", flow: 4e-4 }];
    expect(told({})).toBe("Water of 1.306 mm²/s.");
    expect(told({ velocity: 1.5 })).toBe("Dots: 1.5 m/s. Water of 1.306 mm²/s.");
    expect(told({ marks })).toBe("Diamonds: the flows of the job. Water of 1.306 mm²/s.");
    expect(told({ velocity: 1.5, marks })).toBe("Dots: 1.5 m/s. Diamonds: the flows of the job. Water of 1.306 mm²/s.");
    const title = (units: string) => axesOf(friction(1, {}, { units }), "loss")[0]?.["title"];
    expect([title("metric"), title("us")]).toEqual(["Head lost, metres in 100 metres", "Head lost, feet in 100 feet"]);
    const factors = within(axesOf(frictionFactorChart(), "factor")[0], "axis", "values") as readonly number[];
    expect(factors).toEqual([0.01, 0.02, 0.05, 0.1]);
  });

  test("friction: a line of each size over all flows, even in logarithms, dots and diamonds where they belong", () => {
    const chart = friction(2, { velocity: 1, marks: [{ pipe: "size 1", flow: 4e-4 }] });
    const rows = rowsOf(chart).filter(({ line }) => line === "size 0");
    const flows = rows.map(({ flow }) => flow as number);
    expect([flows[0], flows.at(-2)]).toEqual([0.1, 1]);
    const ratios = flows.slice(1, -1).map((flow, i) => flow / (flows[i] as number));
    for (const ratio of ratios) expect(ratio).toBeCloseTo(ratios[0] as number, 5);
    // 1 m/s in 20 mm is 0.314 L/s.
    expect(flows.at(-1)).toBeCloseTo(0.314159, 5);
    const points = marksOf(chart).filter(({ type }) => type === "point");
    expect(points.map(({ shape }) => shape)).toEqual([undefined, "diamond"]);
    expect(rowsOf(chart).at(-1)).toMatchObject({ line: "size 1", flow: 0.4 });
    // A velocity reached outside of the flows drawn has no dot: 5 m/s is 1.57 L/s in the narrower, 0.03 m/s 0.009.
    const dots = (velocity: number) => marksOf(friction(1, { velocity })).filter(({ type }) => type === "point").length;
    expect([0.03, 1, 5].map(dots)).toEqual([0, 1, 0]);
    // Just at the ends: 0.1 and 1 L/s.
    const at = (flow: number) => (4 * flow) / (Math.PI * 0.02 ** 2);
    expect([at(1e-4) * (1 + 1e-12), at(1e-3) * (1 - 1e-12)].map(dots)).toEqual([1, 1]);
  });

  test("factors: curves from 4000 on, bridges from 2000, the laminar line before, a mark where it lies", () => {
    const chart = frictionFactorChart({
      relativeRoughnesses: [0.01],
      marks: [{ name: "m", reynolds: 1e5, relativeRoughness: 0.01 }],
    });
    const at = (line: string) =>
      rowsOf(chart)
        .filter((row) => row["line"] === line)
        .map(({ reynolds }) => reynolds as number);
    expect([Math.min(...at("laminar")), Math.max(...at("laminar"))]).toEqual([600, 2000]);
    expect([Math.min(...at("roughness 0.01")), Math.max(...at("roughness 0.01"))]).toEqual([2000, 1e8]);
    // 24 steps a decade: 4.4 decades of curve are 106 steps, 0.3 of bridge 8, 0.52 of the laminar line 13.
    expect([at("roughness 0.01").length, at("laminar").length]).toEqual([107 + 9, 14]);
    expect(marksOf(chart).find(({ type }) => type === "point")?.["shape"]).toBe("diamond");
    const shaded = rowsOf(chart).find(({ from }) => from !== undefined);
    expect(shaded).toEqual({ from: 2000, to: 4000 });
    expect(rowsOf(chart).at(-1)).toMatchObject({ line: "m", reynolds: 1e5 });
    expect(chart.title["subtitle"]).toMatch(/^m: f = 0\.0385 at Re = 100000\. Shaded: no law is published\.$/);
    expect(frictionFactorChart({ relativeRoughnesses: [0] }).title["subtitle"]).toBe("Shaded: no law is published.");
  });

  test("a pump: its curve to the end, systems as far as a seventh over it, the band, the best flows to the end", () => {
    const chart = pump(
      [
        ["steep", (q) => 20 + 6e7 * q * q],
        ["level", () => 50],
      ],
      true,
    );
    const line = (name: string) => rowsOf(chart).filter((row) => row["line"] === name);
    expect(line("steep").every(({ head }) => (head as number) <= 1.15 * 60)).toBe(true);
    // 20 + 60 q² is 69 at 0.904 L/s: of steps of a thirtieth the 28th is the first past it; and its point.
    expect(line("steep").length).toBe(28 + 1);
    expect(line("level").length).toBe(61 + 1);
    // 60 − 10 q² = 20 + 60 q² at q = 0.756; 50 at 1.
    expect(chart.title["subtitle"]).toBe("Steep 0.756 L/s at 54.3 m; level 1 L/s at 50 m.");
    expect(rowsOf(chart)[0]).toEqual({ from: 0.7, to: 1.2 });
    expect(chart.description).toContain("Best run between 0.7 L/s and 1.2 L/s.");
    expect(marksOf(chart).map(({ type }) => type)).toEqual(["rect", "text", "line", "line", "point"]);
    // One point has no band, no efficiency no best flows, and a pump that cannot lift no point.
    expect(marksOf(pump([["level", () => 50]])).map(({ type }) => type)).toEqual(["line", "point"]);
    const short = pump([["high", () => 75]]);
    expect(marksOf(short).map(({ type }) => type)).toEqual(["line"]);
    expect(short.title["subtitle"]).toBe("High nothing, 15 m short.");
    expect(short.description).not.toMatch(/Best/);
    // It is drawn whole for all that: 1.15 times what is asked, not what is made.
    expect(rowsOf(short).filter(({ line: name }) => name === "high").length).toBe(61);
    expect(pump([["low", () => 5]]).title["subtitle"]).toBe("Low more than 2 L/s, past the end of its curve.");
  });

  test("best flows end with the curve", () => {
    const late = pumpCurve({
      points: [0, 1, 2].map((q) => ({
        flow: (q * 1e-3) as never,
        head: (60 - 10 * q * q) as never,
        efficiency: ([0, 0.4, 0.6][q] ?? 0) as never,
      })),
    });
    const chart = pumpChart({ curve: late, systems: [{ name: "s", systemHead: () => 30 }] } as never, {
      units: "metric",
    });
    expect(rowsOf(chart)[0]).toEqual({ from: 1.4, to: 2 });
  });

  test("starts: falling as one over the size, from a quarter of the smallest to four of the largest, or from where the paper ends", () => {
    const chart = starts([tank("x", 0.1, 10), tank("y", 0.2, 4)], { mostStarts: 6 / 3600 });
    const x = rowsOf(chart).filter(({ line }) => line === "x");
    const y = rowsOf(chart).filter(({ line }) => line === "y");
    // At most 15 an hour is drawn: x from 67 L on, y from 53.
    expect([x[0], y[0]]).toEqual([
      { line: "x", volume: expect.closeTo(66.66667, 4), starts: 15 },
      { line: "y", volume: expect.closeTo(53.33333, 4), starts: 15 },
    ]);
    expect([x[60]?.["volume"], y[60]?.["volume"], x.length]).toEqual([800, 800, 62]);
    for (const { volume, starts: often } of x) expect((volume as number) * (often as number)).toBeCloseTo(1000, 2);
    const quiet = rowsOf(starts([tank("x", 0.1, 10), tank("z", 0.4, 0.5)])).filter(({ line }) => line === "z");
    expect(quiet[0]).toEqual({ line: "z", volume: 25, starts: 8 });
    expect(chart.title["subtitle"]).toEqual([
      "X: 10 an hour with 100 L; 6 an hour need 167 L; y: 4 an hour with 200 L; 6 an hour",
      "need 133 L.",
    ]);
    expect(marksOf(chart).map(({ type }) => type)).toEqual(["rule", "text", "line", "point"]);
    expect(marksOf(starts([tank("x", 0.1, 10)])).map(({ type }) => type)).toEqual(["line", "point"]);
    expect(starts([tank("x", 0.1, 10)]).title["subtitle"]).toBe("X: 10 an hour with 100 L.");
  });

  test("voltages: the source's drop, each cable's end by its name, the least wanted", () => {
    const chart = voltage([circuit("running", 225, 220)], { leastVoltage: 210 });
    expect(rowsOf(chart)).toEqual([
      { voltage: 210 },
      { line: "running", place: "source", distance: 0, voltage: 228 },
      { line: "running", place: "a", distance: 40, voltage: 225 },
      { line: "running", place: "b", distance: 100, voltage: 220 },
    ]);
    // 10 of 230 V.
    expect(chart.title["subtitle"]).toBe("Running: 220 V at the motor, 4.35 % less than at the source.");
    expect(chart.description).toContain("over a, b.");
    expect(marksOf(chart).map(({ type }) => type)).toEqual(["rule", "text", "line", "point"]);
    expect(marksOf(chart)[1]?.["text"]).toBe("least wanted: 210 V");
    expect(marksOf(voltage([circuit("running", 225, 220)])).map(({ type }) => type)).toEqual(["line", "point"]);
  });

  test("cables lie one after the other", () => {
    const cables = [40, 60, 30].map((length, i) => ({ name: `c${i}`, length }));
    const chart = voltageChart({ cables, circuits: [circuit("r", 225, 220, 219)] } as never, { units: "metric" });
    expect(rowsOf(chart).map(({ distance }) => distance)).toEqual([0, 40, 100, 130]);
  });

  test("swings: from the best guess to each end, the height by their number unless asked for", () => {
    const bars = times(5, (i) => ({ input: `b${i}`, atLow: 7 + i, atHigh: 3 - i }));
    const made = (count: number, options: object = {}) =>
      sensitivityChart(
        { tornado: { base: 5, bars: bars.slice(0, count) }, result: "Head", quantity: "head" } as never,
        { units: "metric", ...options },
      );
    expect([1, 2, 5].map((count) => made(count)["height"])).toEqual([60, 68, 170]);
    expect(made(5, { height: 99 })["height"]).toBe(99);
    expect(made(5).title["subtitle"]).toBe("5 m at the best guess; b0 moves it most, 3 m to 7 m.");
    expect(made(2).description).toBe(
      "Head as one input at a time goes to its lowest and its highest, widest first: b0, b1. 5 m at the best guess; b0 moves it most, 3 m to 7 m.",
    );
    expect(rowsOf(made(1))).toEqual([
      { input: "b0", end: "input at its lowest", from: 5, to: 7 },
      { input: "b0", end: "input at its highest", from: 5, to: 3 },
      { from: 5 },
    ]);
    const names = objectsOf(made(3)).find((part) => part["field"] === "input") as JsonObject;
    expect([names["sort"], (names["axis"] as JsonObject)["labelLimit"]]).toEqual([
      ["b0", "b1", "b2"],
      Math.round(560 / 3),
    ]);
    expect(names["axis"]).toMatchObject({ domain: false, ticks: false });
  });

  test("a profile: pipe over the line is said, and pipe under it how far", () => {
    const stations = [station("well", 0, 0, 50), station("hill", 100, 60, 45), station("tap", 300, 10, 40)];
    const chart = grade(stations, { width: 1200 });
    expect(chart.title["subtitle"]).toBe(
      "Grade 50 m at well, 40 m at tap; pipe 30 m below it there. Pipe above the line at hill: air and dirt are drawn in there.",
    );
    expect(chart.description).toContain("a pipe of 300 m");
    const dry = grade([station("well", 0, 0, 50), station("tap", 300, 70, 40)]);
    expect(String(dry.title["subtitle"])).toContain("pipe 30 m above it there.");
    expect(grade([station("well", 100, 0, 50), station("tap", 300, 10, 40)]).description).toContain("a pipe of 200 m");
    // On the line itself it is not above.
    expect(String(grade([station("well", 0, 0, 50), station("tap", 300, 40, 40)]).title["subtitle"])).toBe(
      "Grade 50 m at well, 40 m at tap; pipe 0 m below it there.",
    );
    expect(
      marksOf(chart)
        .map(({ type }) => type)
        .slice(0, 3),
    ).toEqual(["area", "line", "point"]);
  });

  test("names of stations: all that have room, inwards at the edges, none over another", () => {
    const shownAt = (width: number, ...list: readonly (readonly [name: string, distance: number])[]) =>
      objectsOf(
        grade(
          list.map(([name, distance]) => station(name, distance, 0, 10)),
          { width },
        ),
      ).flatMap((part) => {
        const { mark, data } = part as { mark?: JsonObject; data?: { values: readonly Row[] } };
        return mark?.["type"] === "text" ? [[mark["align"], data?.values.map(({ name }) => name)]] : [];
      });
    // 700 px for 100 m: 7 px a letter and 7 between.
    expect(shownAt(700, ["first", 0], ["middle", 50], ["last", 100])).toEqual([
      ["left", ["first"]],
      ["center", ["middle"]],
      ["right", ["last"]],
    ]);
    // "first" ends at 35 px; a name of four letters half way over its 14 px needs 42 + 14 = 56 px: 8 m.
    expect(shownAt(700, ["first", 0], ["near", 7.9], ["last", 100])).toEqual([
      ["left", ["first"]],
      ["right", ["last"]],
    ]);
    expect(shownAt(700, ["first", 0], ["near", 8.1], ["last", 100])).toEqual([
      ["left", ["first"]],
      ["center", ["near"]],
      ["right", ["last"]],
    ]);
    // Half of "near" would stick out at 1.9 m, 13 px; it does not at 2.1. And so at the right.
    expect(shownAt(700, ["", 0], ["near", 1.9], ["", 100])).toEqual([["left", ["near"]]]);
    expect(shownAt(700, ["", 0], ["near", 2.1], ["", 100])).toEqual([["center", ["near"]]]);
    expect(shownAt(700, ["", 0], ["near", 98.1], ["", 100])).toEqual([["right", ["near"]]]);
    expect(shownAt(700, ["", 0], ["near", 97.9], ["", 100])).toEqual([["center", ["near"]]]);
    // "last" turned inwards begins at 672 px: a name that ends after 665 hides it.
    expect(shownAt(700, ["", 0], ["near", 92.9], ["last", 100])).toEqual([
      ["center", ["near"]],
      ["right", ["last"]],
    ]);
    expect(shownAt(700, ["", 0], ["near", 93.1], ["last", 100])).toEqual([["center", ["near"]]]);
    // A line of no length.
    expect(shownAt(700, ["a", 5], ["b", 5])).toEqual([["left", ["a"]]]);
    // Counted from where the line begins.
    expect(shownAt(700, ["first", 100], ["middle", 150], ["last", 200]).length).toBe(3);
  });
});

describe("a day", () => {
  const moment = (time: number, pressure: number, depth = 30, pumpRunning = false) => ({
    time,
    pressure,
    depth,
    pumpRunning,
    water: 0,
    flow: 0,
  });
  const event = (time: number, kind: string, pressure = 3e5) => ({ time, kind, pressure, depth: 30 });
  const day = (samples: readonly object[], events: readonly object[] = [], more: object = {}, options: object = {}) =>
    dayChart({ run: { samples, events, end: samples.at(-1) }, ...more } as never, { units: "metric", ...options });
  const lineOf = (chart: ChartSpec) => rowsOf(chart).filter(({ depth }) => depth !== undefined);
  const shape = (chart: ChartSpec) => lineOf(chart).slice(0, lineOf(chart).length / 2);
  const bars = (chart: ChartSpec) => rowsOf(chart).filter(({ from }) => from !== undefined);

  test("on a straight line only its ends are kept, and a bend just where it is", () => {
    const ramp = times(11, (i) => moment(360 * i, 2e5 + 1e4 * i));
    expect(shape(day(ramp)).map(({ time, pressure }) => [time, pressure])).toEqual([
      [0, 200],
      [1, 300],
    ]);
    const bent = times(11, (i) => moment(360 * i, 2e5 + 1e4 * Math.min(i, 4)));
    expect(shape(day(bent)).map(({ time }) => time)).toEqual([0, 0.4, 1]);
    const deeper = times(11, (i) => moment(360 * i, 2e5 + 1e4 * i, 30 + Math.max(0, i - 7)));
    expect(shape(day(deeper)).map(({ time }) => time)).toEqual([0, 0.7, 1]);
  });

  test("a wiggle under a five-hundredth of the range is left out, one over it kept", () => {
    // A range of 100 kPa: 0.2 kPa.
    const with1 = (off: number) =>
      shape(day([moment(0, 2e5), moment(900, 2e5 + 25e3 + off), moment(3600, 3e5)])).length;
    expect([-150, 150, 350, -350].map(with1)).toEqual([2, 2, 3, 3]);
  });

  test("a step keeps both its ends", () => {
    const chart = day(
      [moment(0, 3e5), moment(600, 3e5), moment(1200, 0), moment(1800, 0)],
      [event(600, "tank empty", 0)],
    );
    expect(shape(chart).map(({ time, pressure }) => [time, pressure])).toEqual([
      [0, 300],
      [drawn(1 / 6), 300],
      [drawn(1 / 6), 0],
      [0.5, 0],
    ]);
  });

  test("a step at the end, and three moments at one time, are drawn once", () => {
    const last = moment(600, 0);
    const ends = day([moment(0, 3e5), moment(600, 3e5), last]);
    expect(shape(ends).map(({ pressure }) => pressure)).toEqual([300, 300, 0]);
    const three = day(
      [moment(0, 3e5), moment(600, 3e5), moment(1200, 2e5)],
      [event(600, "tank empty", 0), event(600, "pump starts", 2e5)],
    );
    expect(shape(three).map(({ pressure }) => pressure)).toEqual([300, 300, 0, 200, 200]);
  });

  test("whatever the moments, each left out lies by the line drawn", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 50 })),
          { minLength: 2, maxLength: 40 },
        ),
        (list) => {
          let time = 0;
          const moments = list.map(([wait, kilopascals, depth]) => {
            time += wait;
            return moment(time, 1000 * kilopascals, depth);
          });
          const kept = shape(day(moments));
          const spread = (field: "pressure" | "depth") =>
            Math.max(...moments.map((m) => m[field])) - Math.min(...moments.map((m) => m[field]));
          for (const { time: at, pressure, depth } of moments) {
            const i = Math.max(
              1,
              kept.findIndex(({ time: later }) => (later as number) >= (at / 3600) * (1 - 1e-6)),
            );
            const [a, b] = [kept[i - 1], kept[i]] as [Row, Row];
            const share = (at / 3600 - (a["time"] as number)) / ((b["time"] as number) - (a["time"] as number));
            const along = (field: string) =>
              (a[field] as number) + share * ((b[field] as number) - (a[field] as number));
            expect(Math.abs(1000 * along("pressure") - pressure)).toBeLessThanOrEqual(0.0041 * spread("pressure") + 1);
            expect(Math.abs(along("depth") - depth)).toBeLessThanOrEqual(0.0041 * spread("depth") + 1e-4);
          }
        },
      ),
    );
  });

  test("runs from each start to the next stop, however it comes, by events or by samples alone", () => {
    const quiet = [moment(0, 3e5), moment(36_000, 3e5)];
    const chart = day(quiet, [
      event(3600, "pump starts"),
      event(5400, "tank empty"),
      event(7200, "pump stops"),
      event(10_800, "pump starts"),
      event(14_400, "low level"),
      event(18_000, "pump starts"),
      event(21_600, "ran dry"),
    ]);
    expect(bars(chart)).toEqual([
      { from: 1, to: 2 },
      { from: 3, to: 4 },
      { from: 5, to: 6 },
    ]);
    expect(chart.title["subtitle"]).toBe("3 starts; pressure 300 to 300 kPa, water down to 30 m.");
    const sampled = day([
      moment(0, 3e5),
      moment(3600, 3e5, 30, true),
      moment(7200, 3e5, 30, true),
      moment(10_800, 3e5),
      moment(14_400, 3e5, 30, true),
    ]);
    expect(bars(sampled)).toEqual([
      { from: 1, to: 3 },
      { from: 4, to: 4 },
    ]);
    const running = {
      samples: [moment(0, 3e5), moment(3600, 3e5, 30, true)],
      events: [],
      end: moment(18_000, 3e5, 30, true),
    };
    expect(bars(dayChart({ run: running } as never))).toEqual([{ from: 1, to: 5 }]);
    expect(within((day(quiet)["vconcat"] as readonly JsonObject[])[1], "title", "text")).toBe("Pump runs");
    // Heights of the frames: six and four and a half tenths of the plot's, and the bars between.
    const frames = (day(quiet)["vconcat"] as readonly JsonObject[]).map((frame) => frame["height"]);
    expect(frames).toEqual([156, 14, 117]);
    // Still running at its end.
    expect(bars(day(quiet, [event(3600, "pump starts")]))).toEqual(
      [{ from: 1, to: 10 }].map((bar) => ({ ...bar, to: 10 })),
    );
  });

  test("is told in words: starts, least and most pressure, deepest water, and the dashes of the switch", () => {
    const chart = day([moment(0, 2e5, 31), moment(3600, 4e5, 35.5)], [event(60, "pump starts")], { cutIn: 2.1e5 });
    expect(chart.title["subtitle"]).toBe("1 start; pressure 200 to 400 kPa, water down to 35.5 m. Dashes: the switch.");
    expect(rowsOf(chart).slice(0, 1)).toEqual([{ pressure: 210 }]);
    const both = day([moment(0, 2e5), moment(3600, 4e5)], [], { cutIn: 2.1e5, cutOut: 4.5e5 });
    expect(rowsOf(both).slice(0, 2)).toEqual([{ pressure: 210 }, { pressure: 450 }]);
    expect(String(day([moment(0, 2e5), moment(3600, 4e5)]).title["subtitle"])).not.toMatch(/Dashes/);
  });

  test("axes: a twelfth of room about pressure, marks and depth, down is down, hours from first to last", () => {
    const chart = day([moment(3600, 2e5, 30), moment(7200, 4e5, 40)], [], { cutOut: 4.5e5 });
    const domains = (field: string) => axesOf(chart, field).map(({ scale }) => (scale as JsonObject)["domain"]);
    // 8 % of 250 kPa and of 10 m.
    expect(domains("pressure")[0]).toEqual([180, 470]);
    expect(domains("depth")).toEqual([[29.2, 40.8]]);
    expect(axesOf(chart, "depth")[0]?.["scale"]).toMatchObject({ reverse: true, nice: false });
    expect(axesOf(chart, "pressure")[0]?.["scale"]).toMatchObject({ nice: false });
    for (const { scale } of axesOf(chart, "time")) expect(scale).toEqual({ domain: [1, 2], nice: false });
    // Nothing that changes still has a unit of room.
    const still = day([moment(0, 3e5, 30), moment(3600, 3e5, 30)]);
    expect(within(axesOf(still, "depth")[0], "scale", "domain")).toEqual([29, 31]);
    // Only the lowest frame has hours under it.
    const titles = axesOf(chart, "time").map(({ title, axis }) => [title, axis === null]);
    expect(titles.slice(0, 1)).toEqual([[null, true]]);
    expect(titles.at(-1)).toEqual(["Hours", false]);
  });

  test("marks of hours: as many as have room, round, in any length of run", () => {
    const marks = (hours: number, width = 560, first = 0) => {
      const chart = day([moment(3600 * first, 2e5), moment(3600 * (first + hours), 4e5)], [], {}, { width });
      return within(axesOf(chart, "time").at(-1), "axis", "values");
    };
    // 560 px hold nine: a day by threes.
    expect(marks(24)).toEqual([0, 3, 6, 9, 12, 15, 18, 21, 24]);
    expect(marks(24, 400)).toEqual([0, 4, 8, 12, 16, 20, 24]);
    expect(marks(24, 240)).toEqual([0, 6, 12, 18, 24]);
    expect(marks(9)).toEqual(times(10, (i) => i));
    expect(marks(9.5)).toEqual([0, 2, 4, 6, 8]);
    expect(marks(3, 560, 1.5)).toEqual([1.5, 2, 2.5, 3, 3.5, 4, 4.5]);
    expect(marks(0.1)).toEqual(times(7, (i) => i / 60));
    expect(marks(24 * 366 * 99)).toEqual([0, 24 * 366 * 99]);
  });
});

describe("words and figures", () => {
  test("seven digits are drawn, three are written, whole numbers from a hundred on", () => {
    expect([drawn(Math.PI), drawn(1_234_567.8), drawn(-0)]).toEqual([3.141593, 1_234_568, 0]);
    expect(Object.is(drawn(-0), 0)).toBe(true);
    expect([0, 1.2345, 99.96, 100.4, -100.6, 1234.5].map((x) => inWords("head", x, "metric"))).toEqual([
      "0 m",
      "1.23 m",
      "100 m",
      "100 m",
      "-101 m",
      "1235 m",
    ]);
    expect(inWords("head", -99.4, "metric")).toBe("-99.4 m");
    expect([shownIn("flow", 1e-3, "metric"), shownIn("length", 0.3048, "us")]).toEqual([1, 1]);
    expect(axisTitle("Flow", "flow", "us")).toBe("Flow, gallons per minute");
    expect([capital("at cut-in"), capital("")]).toEqual(["At cut-in", ""]);
  });

  test("texts break between words where they pass the width, and a number stays with its unit", () => {
    const subtitle = (text: string, width = 240) =>
      (singleChart(readOptions({ width }), { title: "t", subtitle: text, description: "d" }, []).title as JsonObject)[
        "subtitle"
      ];
    // 240 px of 6.5 px a letter: 36.9.
    const word = "a".repeat(17);
    expect(subtitle(`${word} ${word}`)).toBe(`${word} ${word}`);
    expect(subtitle(`${word} ${word}aa`)).toEqual(
      `${word} ${word}aa`.length <= 36 ? `${word} ${word}aa` : [word, `${word}aa`],
    );
    expect(subtitle(`${word}a ${word}a`)).toEqual([`${word}a`, `${word}a`]);
    // 260 px hold forty letters, and titles of 16 px letters 32.
    expect(subtitle(`${"a".repeat(20)} ${"b".repeat(19)}`, 260)).toBe(`${"a".repeat(20)} ${"b".repeat(19)}`);
    expect(subtitle(`${"a".repeat(20)} ${"b".repeat(20)}`, 260)).toEqual(["a".repeat(20), "b".repeat(20)]);
    const title = (text: string) =>
      (
        singleChart(readOptions({ width: 256 }), { title: text, subtitle: "", description: "d" }, [])
          .title as JsonObject
      )["text"];
    expect(title(`${"a".repeat(16)} ${"b".repeat(15)}`)).toBe(`${"a".repeat(16)} ${"b".repeat(15)}`);
    expect(title(`${"a".repeat(16)} ${"b".repeat(16)}`)).toEqual(["a".repeat(16), "b".repeat(16)]);
    expect(subtitle(`${word} ${"b".repeat(14)} 12 gpm`)).toEqual([`${word} ${"b".repeat(14)}`, "12 gpm"]);
    expect([subtitle(""), subtitle("b".repeat(60))]).toEqual(["", "b".repeat(60)]);
  });

  test("frames: one is as wide as asked for, those of a stack leave room for their numbers", () => {
    const words = { title: "t", subtitle: "s", description: "d" };
    const one = singleChart(readOptions({ width: 500, height: 200, paper: "dark" }), words, [{ mark: "line" }]);
    expect(one).toMatchObject({
      width: 500,
      height: 200,
      background: "#1E1E1E",
      description: "d",
      layer: [{ mark: "line" }],
      title: { text: "t", subtitle: "s" },
    });
    expect(one["autosize"]).toEqual({ type: "fit-x", contains: "padding" });
    expect(String(one.$schema)).toMatch(/vega-lite\/v6\.json$/);
    // 48 px of axis, 8 of padding on both sides, 14 for half a number.
    const [frame, wide] = stackedChart(readOptions({ width: 500 }), words, [{ height: 9 }, { width: 3 }])[
      "vconcat"
    ] as readonly JsonObject[];
    expect([frame, wide]).toEqual([{ width: 422, height: 9 }, { width: 3 }]);
    expect(readOptions({})).toMatchObject({
      units: "us",
      width: 560,
      height: 260,
      paper: "#FFFFFF",
      ink: "#1A1A1A",
      colours: LINE_COLOURS.light,
    });
  });

  test.each(["light", "dark"] as const)(
    "on %s paper every text, axis and bare mark has the ink, letters of 13 px or more, and nothing is framed",
    (paper) => {
      const look = readOptions({ paper });
      const { config } = singleChart(look, { title: "t", subtitle: "s", description: "d" }, []);
      const inked = [
        ["title", "color"],
        ["title", "subtitleColor"],
        ["axis", "domainColor"],
        ["axis", "tickColor"],
        ["axis", "labelColor"],
        ["axis", "titleColor"],
        ["legend", "labelColor"],
        ["text", "color"],
        ["line", "color"],
        ["rule", "color"],
        ["point", "color"],
      ];
      for (const path of inked) expect([path, within(config, ...path)]).toEqual([path, look.ink]);
      const letters = [
        ["title", "fontSize"],
        ["title", "subtitleFontSize"],
        ["axis", "labelFontSize"],
        ["axis", "titleFontSize"],
        ["legend", "labelFontSize"],
        ["text", "fontSize"],
      ];
      for (const path of letters) expect([path, (within(config, ...path) as number) >= 13]).toEqual([path, true]);
      // Lines of a text lie further apart than its letters are high.
      const apart = (line: string, size: string): number =>
        (within(config, "title", line) as number) - (within(config, "title", size) as number);
      expect([apart("lineHeight", "fontSize") > 2, apart("subtitleLineHeight", "subtitleFontSize") > 2]).toEqual([
        true,
        true,
      ]);
      expect(within(config, "view", "stroke")).toBeNull();
      expect(within(config, "axis", "gridColor")).toBe(look.faint);
      // Horizontal lines alone behind the curves; numbers that would touch are left out, none moved.
      expect(within(config, "axisX", "grid")).toBe(false);
      expect(within(config, "axisY", "domain")).toBe(false);
      expect([within(config, "axis", "labelOverlap"), within(config, "axis", "labelFlush")]).toEqual([true, false]);
      // The vertical axis is read without turning the head, above it, from the left of its numbers.
      expect(within(config, "axisY", "titleAngle")).toBe(0);
      expect(within(config, "axisY", "titleX")).toBe(-(within(config, "axisY", "minExtent") as number));
      expect(within(config, "axisY", "titleY") as number).toBeLessThan(0);
      expect([within(config, "legend", "orient"), within(config, "legend", "title")]).toEqual(["bottom", null]);
      expect(within(config, "point", "filled")).toBe(true);
    },
  );

  test("a layer of points there are none of is none", () => {
    expect(pointLayer([], { x: {}, y: {} })).toEqual([]);
    const [layer] = pointLayer([{ a: 1 }], { x: { field: "a" }, y: { field: "b" } }, { size: 9 });
    expect(layer).toEqual({
      data: { values: [{ a: 1 }] },
      mark: { type: "point", tooltip: true, size: 9 },
      encoding: { x: { field: "a" }, y: { field: "b" } },
    });
  });
});
