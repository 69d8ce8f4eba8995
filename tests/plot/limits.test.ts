/** Both sides of every limit of the charts' inputs, by the name of the field. */
import {
  type ChartOptions,
  dayChart,
  frictionChart,
  frictionFactorChart,
  gradeLineChart,
  pumpChart,
  sensitivityChart,
  startsChart,
  voltageChart,
} from "risingmain/plot";
import { pumpCurve } from "risingmain/pump";
import { describe, expect, test } from "vitest";
import { changed, from, type Limit } from "../changed.ts";
import { refused } from "../refused.ts";

type Limited = readonly [
  name: string,
  draw: (input: never, options?: ChartOptions) => unknown,
  good: () => object,
  limits: readonly Limit[],
];

const name = (path: string): Limit => [path, ["a", "a".repeat(200)], ["", "a".repeat(201), 5, undefined]];
const times = <T>(count: number, make: (i: number) => T): readonly T[] =>
  Array.from({ length: count }, (_, i) => make(i));
const list = (path: string, least: number, most: number, make: (i: number) => unknown): Limit => [
  path,
  [times(least, make), times(most, make)],
  [least > 0 ? times(least - 1, make) : null, times(most + 1, make)],
];

const YEARS = 100 * 366 * 86_400;
const moment = (time: number) => ({ time, pressure: 3e5, depth: 30, water: 0, flow: 0, pumpRunning: false });
const event = (time: number) => ({ time, kind: "pump starts", pressure: 3e5, depth: 30 });
const station = (i: number) => ({ name: `s${i}`, distance: 10 * i, elevation: 0, hydraulicGrade: 20 });
const pipe = (i: number) => ({ name: `p${i}`, insideDiameter: 0.03, roughness: 0 });
const mark = (i: number) => ({ name: `m${i}`, reynolds: 1e5, relativeRoughness: 0 });
const tank = (i: number) => ({ name: `t${i}`, volume: 0.2, worst: { starts: 3e-3 } });
const bar = (i: number) => ({ input: `b${i}`, atLow: 1, atHigh: 3 });
const system = (i: number) => ({ name: `y${i}`, systemHead: () => 20 });
const circuit = (i: number) => ({
  name: `c${i}`,
  sourceVoltage: 230,
  drop: { state: "carried", sourceDrop: 1, segments: [{ voltage: 220 }] },
});
const curve = () =>
  pumpCurve({ points: [0, 1, 2].map((q) => ({ flow: (q * 1e-3) as never, head: (60 - 10 * q * q) as never })) });

const CHARTS: readonly Limited[] = [
  [
    "dayChart",
    dayChart,
    () => ({ run: { samples: [moment(0), moment(60)], events: [event(30)], end: moment(60) } }),
    [
      ["run", [], [undefined]],
      list("run.samples", 2, 20_000, moment),
      list("run.events", 0, 20_000, event),
      from("cutIn", 0, 1e8),
      from("cutOut", 0, 1e8),
      from("run.end.time", 0, YEARS),
      from("run.samples[1].pressure", -1e9, 1e9),
      from("run.events[0].depth", -1e6, 1e6),
      ["run.events[0].kind", ["pump stops", "low level", "tank empty", "ran dry"], ["rain"]],
      ["run.samples[0].pumpRunning", [true, undefined], [1]],
      ["run.end", [], [undefined]],
      ["run.samples[1]", [], [null]],
    ],
  ],
  [
    "frictionChart",
    frictionChart,
    () => ({
      pipes: [pipe(0)],
      viscosity: 1.3e-6,
      lowestFlow: 1e-4,
      highestFlow: 1e-3,
      marks: [{ pipe: "p0", flow: 5e-4 }],
    }),
    [
      ["viscosity", [1e-9, 1], [0.9e-9, 1.01]],
      ["lowestFlow", [1e-4], [0.9e-8, 101]],
      ["highestFlow", [1.01e-3], [1.009e-4, 101]],
      list("pipes", 1, 10, pipe),
      from("velocity", 0.01, 100),
      ["pipes[0].name", ["p0"], ["", "a".repeat(201), 5]],
      ["pipes[0].insideDiameter", [1e-3, 10], [0.9e-3, 10.1]],
      ["pipes[0].roughness", [0, 0.015], [-1e-9, 0.0151]],
      ["pipes[0]", [], [undefined]],
      list("marks", 0, 100, () => ({ pipe: "p0", flow: 5e-4 })),
      ["marks[0]", [], [undefined]],
      ["marks[0].pipe", ["p0"], ["p1"]],
      ["marks[0].flow", [1e-4, 1e-3], [0.99e-4, 1.01e-3]],
    ],
  ],
  [
    "frictionFactorChart",
    frictionFactorChart,
    () => ({ relativeRoughnesses: [0.001], marks: [mark(0)] }),
    [
      list("relativeRoughnesses", 1, 8, (i) => i * 1e-3),
      from("relativeRoughnesses[0]", 0, 0.05),
      list("marks", 0, 20, mark),
      name("marks[0].name"),
      from("marks[0].reynolds", 600, 1e8),
      from("marks[0].relativeRoughness", 0, 0.05),
      ["marks[0]", [], [undefined]],
    ],
  ],
  [
    "gradeLineChart",
    gradeLineChart,
    () => ({ stations: [station(0), station(1)] }),
    [
      list("stations", 2, 10_000, station),
      ["stations[0]", [], [undefined]],
      ["stations[0].name", ["", "a".repeat(200)], ["a".repeat(201), 5]],
      ["stations[1].distance", [0, 1e6], [-1, 1.001e6]],
      from("stations[0].elevation", -1e6, 1e6),
    ],
  ],
  [
    "pumpChart",
    pumpChart,
    () => ({ curve: curve(), systems: [system(0)] }),
    [list("systems", 1, 4, system), ["systems[0]", [], [undefined]], name("systems[0].name")],
  ],
  [
    "sensitivityChart",
    sensitivityChart,
    () => ({ tornado: { base: 2, bars: [bar(0)] }, result: "Head", quantity: "head" }),
    [
      ["tornado", [], [undefined]],
      from("tornado.base", -1e12, 1e12),
      list("tornado.bars", 1, 50, bar),
      name("result"),
      [
        "quantity",
        ["head", "length", "flow", "velocity", "pressure", "volume", "voltage", "time", "starts"],
        ["weight"],
      ],
      ["tornado.bars[0]", [], [undefined]],
      name("tornado.bars[0].input"),
      from("tornado.bars[0].atLow", -1e12, 1e12),
      from("tornado.bars[0].atHigh", -1e12, 1e12),
    ],
  ],
  [
    "startsChart",
    startsChart,
    () => ({ tanks: [tank(0)] }),
    [
      list("tanks", 1, 5, tank),
      ["mostStarts", [1e-9, 1], [0.9e-9, 1.01]],
      ["tanks[0]", [], [undefined]],
      name("tanks[0].name"),
      ["tanks[0].volume", [1e-6, 1e4], [0.9e-6, 1.01e4]],
      ["tanks[0].worst", [], [undefined]],
      ["tanks[0].worst.starts", [1e-12, 1e6], [0, 1.01e6]],
    ],
  ],
  [
    "voltageChart",
    voltageChart,
    () => ({ cables: [{ name: "a", length: 50 }], circuits: [circuit(0)] }),
    [
      from("leastVoltage", 0, 1000),
      ["cables", [], [[], times(101, () => ({ name: "a", length: 5 }))]],
      ["cables[0]", [], [undefined]],
      name("cables[0].name"),
      from("cables[0].length", 0, 1e5),
      list("circuits", 1, 4, circuit),
      ["circuits[0]", [], [undefined]],
      name("circuits[0].name"),
      ["circuits[0].sourceVoltage", [0.1, 1000], [0.09, 1001]],
      ["circuits[0].drop", [], [undefined]],
      ["circuits[0].drop.state", ["carried"], ["collapsed"]],
      from("circuits[0].drop.sourceDrop", 0, 1000),
      ["circuits[0].drop.segments", [], [[], times(2, () => ({ voltage: 220 }))]],
      ["circuits[0].drop.segments[0]", [], [undefined]],
      from("circuits[0].drop.segments[0].voltage", 0, 1000),
    ],
  ],
];

describe.each(CHARTS)("%s", (_, draw, good, limits) => {
  test.each(limits)("%s", (path, accepted, beyond) => {
    const answer = (value: unknown) => refused(() => draw(changed(good(), path, value) as never));
    expect(accepted.map(answer)).toEqual(accepted.map(() => undefined));
    expect(beyond.map(answer)).toEqual(beyond.map(() => path));
  });

  test("options of its own, and no input but an object", () => {
    const answer = (options: unknown) => refused(() => draw(good() as never, options as never));
    for (const fine of [
      {},
      { units: "us" },
      { paper: "dark" },
      { width: 240 },
      { width: 4000 },
      { height: 60 },
      { height: 4000 },
    ]) {
      expect([fine, answer(fine)]).toEqual([fine, undefined]);
    }
    expect(
      [{ units: "si" }, { paper: "blue" }, { width: 239 }, { width: 4001 }, { height: 59 }, { height: 4001 }].map(
        answer,
      ),
    ).toEqual(["options.units", "options.paper", "options.width", "options.width", "options.height", "options.height"]);
    expect([answer(null), refused(() => draw(null as never))]).toEqual(["options", "input"]);
  });
});

test("things of one name", () => {
  expect(
    refused(() =>
      frictionChart({ pipes: [pipe(0), pipe(0)], viscosity: 1e-6, lowestFlow: 1e-4, highestFlow: 1e-3 } as never),
    ),
  ).toBe("pipes");
  expect(refused(() => startsChart({ tanks: [tank(1), tank(2), tank(1)] } as never))).toBe("tanks");
  expect(
    refused(() => voltageChart({ cables: [{ name: "a", length: 5 }], circuits: [circuit(0), circuit(0)] } as never)),
  ).toBe("circuits");
  expect(
    refused(() =>
      sensitivityChart({ tornado: { base: 1, bars: [bar(0), bar(0)] }, result: "r", quantity: "head" } as never),
    ),
  ).toBe("tornado.bars");
  expect(refused(() => pumpChart({ curve: curve(), systems: [{ ...system(0), name: "pump" }] } as never))).toBe(
    "systems",
  );
});

test("a grade of twice the furthest elevation, a point of a network by its junction, distances that never fall", () => {
  const draw = (...stations: readonly object[]) => refused(() => gradeLineChart({ stations } as never));
  const at = (hydraulicGrade: number) => draw(station(0), { ...station(1), hydraulicGrade });
  expect([-2e6, 2e6, -2.01e6, 2.01e6].map(at)).toEqual([
    undefined,
    undefined,
    "stations[1].grade",
    "stations[1].grade",
  ]);
  const point = { junction: "j", distance: 10, elevation: 0, head: 30 };
  expect(draw(station(0), point)).toBeUndefined();
  expect(draw(station(0), { ...point, junction: 3 })).toBe("stations[1].name");
  expect(draw(station(1), station(0))).toBe("stations[1].distance");
  expect(draw(station(1), station(1))).toBeUndefined();
});

test("a system whose head is no number of metres", () => {
  const draw = (head: number) =>
    refused(() => pumpChart({ curve: curve(), systems: [{ name: "s", systemHead: () => head }] } as never));
  expect([-1e5, 0, 50].map(draw)).toEqual([undefined, undefined, undefined]);
  expect(draw(-1.01e5)).toBe("systemHead");
});
