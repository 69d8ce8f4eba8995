/** What a job may hold: each kind of field at the ends of its range and beyond, and the parts that must agree with each other. */
import { type JobError, planSystem, readJob, readJobText } from "risingmain/plan";
import { describe, expect, test } from "vitest";
import { type Changes, cabin, changed, ranch } from "./jobs.ts";

/** The paths refused, each with what was expected there. */
function refusals(call: () => unknown): ReadonlyMap<string, string> {
  try {
    call();
    return new Map();
  } catch (error) {
    const { name, issues, lines, parameter, value, expected } = error as JobError;
    expect(name).toBe("InputError");
    // The first issue is the error's own; each has its line.
    expect([parameter, value, expected]).toEqual([issues[0]?.path, issues[0]?.value, issues[0]?.expected]);
    expect(lines).toHaveLength(issues.length);
    for (const [i, { path }] of issues.entries()) expect(lines[i]?.startsWith(`${path}: expected `)).toBe(true);
    return new Map(issues.map(({ path, expected }) => [path, expected]));
  }
}

const inDocument = (path: string, value: unknown, more: Changes = {}): string | undefined =>
  refusals(() => readJob(ranch({ ...more, [path]: value }))).get(path);

/** A field, the ends of its range as a document writes them, and what is just beyond either end. */
const RANGES: readonly (readonly [path: string, least: string, most: string, below: string, above: string])[] = [
  ["site.elevation", "-500 m", "6000 m", "-500.01 m", "6000.01 m"],
  ["site.waterTemperature", "0 °C", "60 °C", "-0.01 °C", "60.01 °C"],
  ["controls.reliefPressure", "0 psi", "4000 kPa", "-0.01 kPa", "4000.01 kPa"],
  ["controls.regulatingValve.loss", "0 psi", "1000 kPa", "-0.01 kPa", "1000.01 kPa"],
  ["controls.reliefCapacity", "0.0001 L/s", "1 m³/s", "0.00009 L/s", "1.001 m³/s"],
  ["tank.volume", "1 L", "1000 m³", "0.99 L", "1001 m³"],
  ["tank.leastRunTime", "1 s", "86400 s", "0.99 s", "86401 s"],
  ["pump.candidates[0].motor.power", "10 W", "1000 kW", "9.99 W", "1000.01 kW"],
  ["pump.candidates[0].mass", "0.5 kg", "10000 kg", "0.49 kg", "10001 kg"],
  ["pump.candidates[0].motor.coolingVelocity", "0.000001 m/s", "5 m/s", "0 m/s", "5.01 m/s"],
  ["power.sources[1].voltage", "20 V", "1000 V", "19.9 V", "1001 V"],
  ["power.breaker", "1 A", "6000 A", "0.99 A", "6001 A"],
  ["power.mostVoltageDrop", "0.1 %", "20 %", "0.09 %", "20.1 %"],
  ["disinfection.target", "0.1 mg/L", "1000 mg/L", "0.09 mg/L", "1001 mg/L"],
  ["outlets[0].pressure", "0 psi", "4000 kPa", "-0.01 kPa", "4000.01 kPa"],
];

describe("a quantity", () => {
  test.each(RANGES)("%s is taken to the ends of its range and no further", (path, least, most, below, above) => {
    for (const taken of [least, most]) expect([taken, inDocument(path, taken)]).toEqual([taken, undefined]);
    for (const refused of [below, above])
      expect(inDocument(path, refused), refused).toMatch(/ from .* to .*\(.* to .*\)$/);
  });

  test("typed as a number is held to the same range, in SI", () => {
    const job = readJob(ranch());
    const depth = (value: unknown) =>
      refusals(() => planSystem({ ...job, site: { ...job.site, elevation: value as never } })).get("site.elevation");
    expect([-500, 6000].map(depth)).toEqual([undefined, undefined]);
    for (const value of [-500.01, 6000.01, Number.NaN, Number.POSITIVE_INFINITY, "4,860 ft"])
      expect(depth(value)).toBe("elevation above sea level, a number from -500 to 6000 m");
    const drop = { ...job.power, mostVoltageDrop: 0.3 as never };
    // A ratio has no unit.
    expect(refusals(() => planSystem({ ...job, power: drop })).get("power.mostVoltageDrop")).toBe(
      "most voltage drop, a number from 0.001 to 0.2",
    );
  });

  test("typed in another unit may miss its limit by rounding, and is then the limit", () => {
    // 2000 m are 6561.679790026247 ft, of which the last digit is lost.
    const deep = (feet: string) => readJob(cabin({ "well.depth": feet })).well.depth;
    expect(deep("6561.6797900263 ft")).toBe(2000);
    expect(inDocument("well.depth", "6561.69 ft")).toMatch(/depth of the hole from/);
    expect(readJob(cabin({ "site.elevation": "-1640.4199475066 ft" })).site.elevation).toBe(-500);
  });

  test("says what it is, with a sample, where it is no text or no such quantity", () => {
    expect(inDocument("well.depth", 240)).toBe('depth of the hole, as text such as "240 ft"');
    expect(inDocument("controls.cutIn", "50")).toMatch(/^cut-in pressure: .*unit is missing/);
    expect(inDocument("tank.volume", "80 psi")).toMatch(/^volume of the tank: a volume such as .*"psi" is not one of/);
  });
});

describe("counts, names and lists", () => {
  test("a count is whole and in its range", () => {
    const path = "dropPipe.checkValves";
    expect([0, 10].map((count) => inDocument(path, count))).toEqual([undefined, undefined]);
    expect(inDocument(path, -1)).toBe("check valves above the pump's own, at least 0");
    expect(inDocument(path, 11)).toBe("check valves above the pump's own, at most 10");
    for (const value of [1.5, "1", null]) expect(inDocument(path, value)).toMatch(/a whole number$/);
  });

  test("a name is on one line, not empty, at most 80 letters; blanks around it are nothing", () => {
    expect(readJob(cabin({ name: "  Cold Creek " })).name).toBe("Cold Creek");
    expect(inDocument("name", "x".repeat(80))).toBeUndefined();
    expect(inDocument("name", "x".repeat(81))).toMatch(/at most 80 letters$/);
    expect(inDocument("name", "Cold\nCreek")).toMatch(/on one line$/);
    expect(inDocument("name", "Cold\u0007Creek")).toMatch(/on one line$/);
    expect(inDocument("name", 7)).toMatch(/as text$/);
    expect(inDocument("name", "")).toMatch(/not empty$/);
  });

  test("a list has its least and at most 500", () => {
    const places = (count: number) =>
      Array.from({ length: count }, (_, i) => ({ name: `place ${i}`, elevation: "0 ft" }));
    expect(
      inDocument("places", [], {
        runs: [],
        uses: undefined,
        outlets: [{ name: "tap", at: "wellhead", flow: "5 gpm", pressure: "20 psi" }],
      }),
    ).toBeUndefined();
    expect(inDocument("places", places(501))).toBe("places: at most 500");
    expect(inDocument("places", places(500))).toBeUndefined();
    expect(inDocument("power.sources", [])).toBe("sources of power: at least 1");
    expect(inDocument("well.test", "none")).toBe("pumping test, a list");
    const [a, b] = [
      { flow: "0 gpm", head: "300 ft" },
      { flow: "5 gpm", head: "200 ft" },
    ];
    expect(inDocument("pump.candidates[0].curve", [a, b])).toBe("points of the curve: at least 3");
  });

  test("a choice, a letter and a yes or no", () => {
    expect(inDocument("power.sources[0].receptacle", "X9")).toMatch(/one of .*"L14-30"/);
    const fittings = refusals(() => readJob(ranch({ "runs[0].fittings": [{ kind: "wormhole", count: 1 }] })));
    expect(fittings.get("runs[0].fittings[0].kind")).toMatch(/one of .*"elbow 90"/);
    for (const letter of ["A", "H", "J", "N", "P", "R", "V"])
      expect(inDocument("pump.candidates[0].motor.codeLetter", letter)).toBeUndefined();
    for (const letter of ["I", "O", "Q", "W", "a", "AB", ""])
      expect(inDocument("pump.candidates[0].motor.codeLetter", letter)).toMatch(/a code letter from A to V/);
    expect(inDocument("controls.dryRunCutOff", "yes")).toBe("true or false");
    expect(readJob(cabin({ reportUnits: "metric" })).reportUnits).toBe("metric");
  });
});

describe("missing and unknown", () => {
  test("a field that is missing is said with what it should hold", () => {
    const said = (path: string) => refusals(() => readJob(ranch({ [path]: undefined }))).get(path);
    expect(said("well.depth")).toMatch(/^depth of the hole, as text with its unit such as "240 ft".*\(missing\)$/);
    expect(said("outlets")).toMatch(/^outlets \(missing\)$/);
    expect(said("power.sources[0].phase")).toMatch(/^phase \(missing\)$/);
    expect(said("site")).toMatch(/^the site.* \(missing\)$/);
    const [issue] = (() => {
      try {
        readJob(ranch({ "well.depth": undefined }));
        return [];
      } catch (error) {
        return (error as JobError).issues;
      }
    })();
    expect(issue?.value).toBe("nothing");
  });

  test("an unknown field is said with those that are known, a part of the wrong form by its name", () => {
    const said = (path: string, value: unknown) => refusals(() => readJob(ranch({ [path]: value }))).get(path);
    expect(said("tank.colour", "blue")).toBe(
      "a known field of the tank: volume, precharge, maximumPressure, elevation, leastRunTime, mostStartsPerDay",
    );
    expect(said("tank", 7)).toBe("the tank, an object");
    for (const document of [null, 7, "job"]) expect([...refusals(() => readJob(document)).keys()][0]).toBe("job");
    expect(refusals(() => readJob(undefined)).get("job")).toMatch(/\(missing\)$/);
  });

  test("text that is no text, or no JSON", () => {
    expect(() => readJobText(7 as never)).toThrow(/^text: expected the text of a job file/);
    expect(() => readJobText("{")).toThrow(/^text: expected JSON \(/);
    expect(readJobText(JSON.stringify(cabin())).name).toBe("Alder Spring cabin");
    // A mark at the beginning of a file is no part of it; within, it is.
    expect(readJobText(`\uFEFF${JSON.stringify(cabin())}`).name).toBe("Alder Spring cabin");
    expect(() => readJobText(`${JSON.stringify(cabin())}\uFEFF`)).toThrow(/^text/);
  });
});

/** A change that stands, and one that contradicts the rest of the job: where, and what is said. */
const CONTRADICTIONS: readonly (readonly [
  what: string,
  stands: Changes,
  wrong: Changes,
  path: string,
  said: RegExp,
])[] = [
  [
    "the casing ends in the hole",
    { "well.casingDepth": "312 ft" },
    { "well.casingDepth": "312.1 ft" },
    "well.casingDepth",
    /bottom of the hole at 312 ft \(95\.1 m\)/,
  ],
  [
    "the screen begins in the hole",
    { "well.screenTop": "312 ft" },
    { "well.screenTop": "312.1 ft" },
    "well.screenTop",
    /bottom of the hole/,
  ],
  ["water stands in the hole", {}, { "well.staticLevel": "312.1 ft" }, "well.staticLevel", /bottom of the hole/],
  [
    "the pump hangs in the hole",
    { "pump.setting": "312 ft" },
    { "pump.setting": "312.1 ft" },
    "pump.setting",
    /bottom of the hole/,
  ],
  [
    "the test ends in the hole",
    { "well.test[0].pumpingLevel": "312 ft" },
    { "well.test[0].pumpingLevel": "312.1 ft" },
    "well.test[0].pumpingLevel",
    /bottom of the hole/,
  ],
  [
    "pumping draws the water down",
    { "well.test[0].pumpingLevel": "94.1 ft" },
    { "well.test[0].pumpingLevel": "94 ft" },
    "well.test[0].pumpingLevel",
    /below the water at rest at 94 ft \(28\.65 m\)/,
  ],
  [
    "the highest water is the least deep",
    { "well.highestStaticLevel": "94 ft" },
    { "well.highestStaticLevel": "94.1 ft" },
    "well.highestStaticLevel",
    /no greater than the static level, 94 ft/,
  ],
  [
    "a curve goes to more flow",
    {},
    { "pump.candidates[1].curve[2].flow": "5 gpm" },
    "pump.candidates[1].curve[2].flow",
    /above that of the point before, 5 gpm/,
  ],
  [
    "at less head",
    {},
    { "pump.candidates[1].curve[2].head": "403 ft" },
    "pump.candidates[1].curve[2].head",
    /below that of the point before, 403 ft/,
  ],
  [
    "a pump that moves no water makes no power of it",
    { "pump.candidates[1].curve[0].efficiency": "0 %" },
    { "pump.candidates[1].curve[0].efficiency": "10 %" },
    "pump.candidates[1].curve[0].efficiency",
    /0 at no flow/,
  ],
  [
    "points of a curve lie apart",
    { "pump.candidates[1].curve[1].flow": "0.0001 gpm" },
    { "pump.candidates[1].curve[1].flow": "0.00001 gpm" },
    "pump.candidates[1].curve",
    /no two points at the same flow/,
  ],
  [
    "a pump goes down the casing",
    { "pump.candidates[2].diameter": "6.064 in" },
    { "pump.candidates[2].diameter": "6.065 in" },
    "pump.candidates[2].diameter",
    /inside diameter 6\.065 in/,
  ],
  [
    "a motor is in the code's table or says its current",
    { "pump.candidates[1].motor.voltage": "400 V", "pump.candidates[1].motor.fullLoadCurrent": "7 A" },
    { "pump.candidates[1].motor.voltage": "400 V" },
    "pump.candidates[1].motor.fullLoadCurrent",
    /current of the plate: the code's table has no such motor/,
  ],
  [
    "cut-out is above cut-in",
    { "controls.cutOut": "52.1 psi" },
    { "controls.cutOut": "52 psi" },
    "controls.cutOut",
    /above the cut-in, 52 psi/,
  ],
  [
    "a valve's loss has its flow",
    { "controls.regulatingValve.loss": undefined, "controls.regulatingValve.ratedFlow": undefined },
    { "controls.regulatingValve.loss": undefined },
    "controls.regulatingValve.ratedFlow",
    /both or neither/,
  ],
  [
    "and the flow its loss",
    {},
    { "controls.regulatingValve.ratedFlow": undefined },
    "controls.regulatingValve.ratedFlow",
    /both or neither/,
  ],
  [
    "a capacity has its pressure",
    { "controls.reliefCapacity": "20 gpm" },
    { "controls.reliefCapacity": "20 gpm", "controls.reliefPressure": undefined },
    "controls.reliefPressure",
    /opens at, with its capacity/,
  ],
  [
    "a run starts at a place",
    { "runs[0].from": "barn" },
    { "runs[0].from": "moon" },
    "runs[0].from",
    /a place of the job: "wellhead", "house", "barn", "fork", "north trough", "ridge"/,
  ],
  ["and ends at one", {}, { "runs[0].to": "moon" }, "runs[0].to", /a place of the job/],
  ["and at another", {}, { "runs[0].to": "wellhead" }, "runs[0].to", /another place than the run starts from/],
  [
    "an outlet stands at a place",
    { "outlets[0].at": "wellhead" },
    { "outlets[0].at": "moon" },
    "outlets[0].at",
    /a place of the job/,
  ],
  ["that water reaches", {}, { "runs[2].to": "house" }, "outlets[2].at", /runs of pipe join to the wellhead/],
  [
    "a use is of outlets",
    {},
    { "uses[1].outlets[1]": "pool" },
    "uses[1].outlets[1]",
    /an outlet of the job: "house", "barn hydrant"/,
  ],
  ["the drop pipe is a pipe", {}, { "dropPipe.pipe": "2 in bamboo" }, "dropPipe.pipe", /./],
  ["a run's too", { "runs[1].pipe": "1 in PE SIDR 15" }, { "runs[1].pipe": "2 in bamboo" }, "runs[1].pipe", /./],
  [
    "the family has pipes",
    { "pipeChoice.family": "PVC SCH 40" },
    { "pipeChoice.family": "bamboo" },
    "pipeChoice.family",
    /such as "PE SIDR 15"/,
  ],
  [
    "a conductor has a size",
    { "power.circuit[1].size": "10 AWG" },
    { "power.circuit[1].size": "77 AWG" },
    "power.circuit[1].size",
    /./,
  ],
  [
    "the grounding one too",
    { "power.groundingSize": "10 AWG" },
    { "power.groundingSize": "77 AWG" },
    "power.groundingSize",
    /./,
  ],
  [
    "a generator says its power",
    {},
    { "power.sources[0].runningPower": undefined },
    "power.sources[0].runningPower",
    /from its plate/,
  ],
  [
    "and surges above it",
    { "power.sources[0].surgePower": "9,000 W" },
    { "power.sources[0].surgePower": "8,999 W" },
    "power.sources[0].surgePower",
    /at least the running power, 9,000 W/,
  ],
  ["places have names of their own", {}, { "places[1].name": "house" }, "places[1].name", /not used before/],
  ["the wellhead is no place of the list", {}, { "places[0].name": "wellhead" }, "places[0].name", /not used before/],
  [
    "outlets too",
    { "outlets[0].name": "wellhead", uses: undefined },
    { "outlets[1].name": "house" },
    "outlets[1].name",
    /not used before/,
  ],
  ["uses too", {}, { "uses[1].name": "house and trough" }, "uses[1].name", /not used before/],
  ["pumps too", {}, { "pump.candidates[2].name": "A, 11 stages" }, "pump.candidates[2].name", /not used before/],
  ["sources too", {}, { "power.sources[1].name": "generator" }, "power.sources[1].name", /not used before/],
  ["cables too", {}, { "power.circuit[1].name": "supply to wellhead" }, "power.circuit[1].name", /not used before/],
  ["animals are of a kind", {}, { "demand.livestock[1].kind": "dragon" }, "demand.livestock[1].kind", /"horse"/],
];

describe("the parts of a job agree:", () => {
  test.each(CONTRADICTIONS)("%s", (_, stands, wrong, path, said) => {
    expect([...refusals(() => readJob(ranch(stands)))]).toEqual([]);
    expect(refusals(() => readJob(ranch(wrong))).get(path)).toMatch(said);
  });

  test("an outlet at no place is said once, and all that is wrong is said at once", () => {
    expect([...refusals(() => readJob(ranch({ "outlets[0].at": "moon" }))).keys()]).toEqual(["outlets[0].at"]);
    const wrong = {
      "well.casingDepth": "400 ft",
      "controls.cutOut": "40 psi",
      "runs[0].from": "moon",
      "power.groundingSize": "77 AWG",
    };
    expect([...refusals(() => readJob(ranch(wrong))).keys()]).toEqual(expect.arrayContaining(Object.keys(wrong)));
  });

  test("a utility needs no plate; a valve without a loss is a valve", () => {
    expect([...refusals(() => readJob(ranch({ "power.sources[1].surgePower": "100 W" })))]).toEqual([]);
    expect([...refusals(() => readJob(changed(cabin(), { pump: {}, "well.highestStaticLevel": undefined })))]).toEqual(
      [],
    );
  });

  test("water joins places however the runs were laid", () => {
    const chain = {
      places: ["a", "b", "c"].map((name) => ({ name, elevation: "0 ft" })),
      // Far end first, and some against the flow.
      runs: [
        { from: "c", to: "b", length: "10 ft" },
        { from: "a", to: "b", length: "10 ft" },
        { from: "a", to: "wellhead", length: "10 ft" },
      ],
      outlets: [{ name: "tap", at: "c", flow: "1 gpm", pressure: "10 psi" }],
    };
    expect([...refusals(() => readJob(cabin(chain)))]).toEqual([]);
    const broken = { ...chain, runs: chain.runs.slice(0, 2) };
    expect([...refusals(() => readJob(cabin(broken))).keys()]).toEqual(["outlets[0].at"]);
  });
});
