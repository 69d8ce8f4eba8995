/** The report and the sheet on paper: every figure of the plan is in them, under its heading, in both unit systems. */
import { generatorCautions } from "risingmain/generator";
import { citationsOf, type Plan, reportOf, type UnitSystem } from "risingmain/plan";
import { citeAsText } from "risingmain/sources";
import { format, type UnitSymbols } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { cabin, having, planOf, ranch } from "./jobs.ts";

/** A unit of each system, and how many decimals a reader wants in it. */
type Unit = readonly [us: keyof UnitSymbols, decimals: number, metric: keyof UnitSymbols, decimals: number];

const LENGTH: Unit = ["ft", 1, "m", 1];
const BORE: Unit = ["in", 3, "mm", 1];
const VOLUME: Unit = ["gal", 1, "L", 0];
const BLEACH: Unit = ["fl oz", 1, "mL", 0];
const FLOW: Unit = ["gpm", 1, "L/s", 2];
const SPEED: Unit = ["ft/s", 2, "m/s", 2];
const PRESSURE: Unit = ["psi", 1, "kPa", 0];
const WARMTH: Unit = ["°F", 0, "°C", 1];
const POWER: Unit = ["W", 0, "W", 0];
const ENERGY: Unit = ["kWh", 2, "kWh", 2];
const VOLTS: Unit = ["V", 1, "V", 1];
const AMPERES: Unit = ["A", 1, "A", 1];
const SHARE: Unit = ["%", 1, "%", 1];
const SECONDS: Unit = ["s", 0, "s", 0];
const MINUTES: Unit = ["min", 1, "min", 1];
const FORCE: Unit = ["lbf", 0, "N", 0];
const COUNT: Unit = ["1", 0, "1", 0];
const YIELD: Unit = ["gpm/ft", 2, "L/s/m", 3];

const shown = (value: number, [us, usDecimals, metric, metricDecimals]: Unit, system: UnitSystem): string =>
  system === "us"
    ? format(value as never, us, { decimals: usDecimals })
    : format(value as never, metric, { decimals: metricDecimals });

/** A row of a stage's figures: the label, the number and its unit, or the text. */
type Row = readonly [label: string, value: number, unit: Unit] | readonly [label: string, text: string];

/** The figures of the ranch, by the heading they stand under. */
const FIGURES: Readonly<Record<string, (stages: Plan["stages"]) => readonly Row[]>> = {
  Demand: ({ demand }) => [
    ["Water in a day", demand.daily?.volume ?? 0, VOLUME],
    ...(demand.daily?.parts ?? []).map(({ name, volume }): Row => [`of it: ${name}`, volume, VOLUME]),
    ["The well gives in a day", demand.yieldPerDay, VOLUME],
    ['Most at once ("both hydrants")', demand.designFlow, FLOW],
  ],
  Well: ({ site, well }) => [
    ["Air pressure at the site, absolute", site.atmosphere, PRESSURE],
    ["Water temperature", site.water.temperature, WARMTH],
    ["Depth to water at rest", well.staticLevel, LENGTH],
    ["Drawdown at the duty flow", well.drawdown, LENGTH],
    ["Depth to water at the duty flow", well.pumpingLevel, LENGTH],
    ["Specific capacity", well.specificCapacity, YIELD],
    ["Water standing in the hole", well.standingWater, VOLUME],
  ],
  Pump: ({ pump }) => [
    ["Duty flow", pump.dutyFlow, FLOW],
    ["Total dynamic head at it", pump.duty.totalDynamicHead, LENGTH],
    ["of it: water at rest to ground", pump.duty.parts.staticLevel, LENGTH],
    ["of it: drawdown", pump.duty.parts.drawdown, LENGTH],
    ["of it: ground to tank", pump.duty.parts.elevation, LENGTH],
    ["of it: pressure at the tank", pump.duty.parts.dischargePressure, LENGTH],
    ["of it: pipe, fittings and valves", pump.duty.parts.losses, LENGTH],
    ["Depth of the intake (sized by the plan)", pump.setting, LENGTH],
    ["Shallowest good intake", pump.settingChecks.shallowest, LENGTH],
    ["Deepest good intake", pump.settingChecks.deepest, LENGTH],
    ["Lowest water, at the most flow", pump.lowestLevel, LENGTH],
    ["Water over the intake then", pump.settingChecks.submergence, LENGTH],
    ["Pump", "B, 14 stages"],
    ["Flow at cut-in", pump.chosen?.atCutIn?.flow ?? 0, FLOW],
    ["Flow at cut-out, valve open", pump.chosen?.atCutOut?.flow ?? 0, FLOW],
    ["Pressure at the tank against a closed valve, water at its highest", pump.chosen?.shutoffPressure ?? 0, PRESSURE],
    ["Velocity past the motor at the least long flow", pump.chosen?.cooling.velocity ?? 0, SPEED],
    ["Flow sleeve: widest inside diameter", pump.chosen?.cooling.greatestSleeve ?? 0, BORE],
  ],
  "Drop pipe": ({ dropPipe }) => [
    ["Pipe", "1-1/2 in PVC 1120 SCH 80 (as given)"],
    ["Inside diameter", dropPipe.pipe.insideDiameter, BORE],
    ["Length", dropPipe.length, LENGTH],
    ["Velocity at the duty flow", dropPipe.velocity, SPEED],
    ["Head lost at the duty flow", dropPipe.headLoss, LENGTH],
    ["Highest pressure, at its lower end", dropPipe.highestPressure, PRESSURE],
    ["Rated for, at the water's temperature", dropPipe.pressureRating ?? 0, PRESSURE],
    ["Pull on the hoist, pipe full", dropPipe.hangingLoad ?? 0, FORCE],
    ["Check valve, the pump's own", dropPipe.fixings.checkValves[0] ?? 0, LENGTH],
    ["Check valve above it", dropPipe.fixings.checkValves[1] ?? 0, LENGTH],
    ["Guides on the pipe", dropPipe.fixings.guides, COUNT],
    ["Ties of the cable", dropPipe.fixings.ties, COUNT],
  ],
  Controls: ({ controls, layout }) => [
    ["Cut-in", controls.cutIn, PRESSURE],
    ["Cut-out", controls.cutOut, PRESSURE],
    ["Regulating valve holds", controls.setPressure ?? 0, PRESSURE],
    ...controls.held.map(
      ({ use, held }): Row => [`held during "${use}"`, held.state === "holds" ? held.pressure : Number.NaN, PRESSURE],
    ),
    ["Relief valve opens at", controls.reliefPressure ?? 0, PRESSURE],
    ["Flow it must pass there", controls.reliefCapacity ?? 0, FLOW],
    ["Least pressure at the tank that serves every use", layout.tankPressureNeeded, PRESSURE],
  ],
  Tank: ({ tank }) => [
    ["Volume (as given)", tank.volume, VOLUME],
    ["Precharge", tank.precharge, PRESSURE],
    ["Water from cut-out to cut-in", tank.drawdown.usable, VOLUME],
    ["Time to fill from cut-in to cut-out", tank.fillTime ?? 0, SECONDS],
    ["Most starts, at the worst use", `${((tank.worst?.starts ?? 0) * 3600).toFixed(1)} starts an hour`],
    ["that worst use", tank.worst?.demand ?? 0, FLOW],
  ],
  "A day of use": ({ day }) => [
    ["How the water is drawn", "the day's water in 24 equal draws, the uses in turn"],
    ["Starts of the pump", `${day?.starts} starts a day`],
    ["Time it runs", day?.runTime ?? 0, MINUTES],
    ["Its shortest run", day?.shortestRun ?? 0, SECONDS],
    ["Water delivered", day?.delivered ?? 0, VOLUME],
    ["Energy from the supply", day?.energy ?? 0, ENERGY],
  ],
  Power: ({ power }) => [
    ["Full-load current", power?.fullLoadCurrent ?? 0, AMPERES],
    ["Current as it starts", power?.lockedRotorCurrent ?? 0, AMPERES],
    ["Conductors must carry", power?.conductorAmpacity ?? 0, AMPERES],
    ["Breaker, at most (motor circuit, with overload protection)", power?.highestBreaker ?? 0, AMPERES],
    ["Equipment grounding conductor, at least", power?.groundingSize ?? ""],
    ["Power drawn at the full-load current", power?.inputPower ?? 0, POWER],
    ["Voltage lost while running", power?.drop ?? 0, VOLTS],
    ["as a share of the source", power?.dropShare ?? 0, SHARE],
    ...(power?.sources ?? []).map(
      ({ name, runningVoltage }): Row => [`At the motor while running, on the ${name}`, runningVoltage, VOLTS],
    ),
  ],
  Disinfection: ({ disinfection: { treated, dose, flushTime } }) => [
    ["Water to treat", treated.total, VOLUME],
    ["of it: in the hole", treated.well, VOLUME],
    ["of it: in the pipes", treated.pipes + treated.dropPipe, VOLUME],
    ["of it: in the tank", treated.tank, VOLUME],
    ["Bleach", dose.bleach, BLEACH],
    ["Stand before flushing", "12 to 24 hours, or what the health department says (common practice)"],
    ["Time to pump that water out once, at the duty flow", flushTime, MINUTES],
  ],
};

/** The text under each heading of a report. */
function parts(markdown: string): ReadonlyMap<string, string> {
  return new Map(
    markdown.split(/^##? /m).map((part) => {
      const [title = "", ...rest] = part.split("\n");
      return [title, rest.join("\n").trim()];
    }),
  );
}

/** The rows of a part's table below its heads. */
function rowsOf(part: string | undefined): readonly (readonly string[])[] {
  return (part ?? "")
    .split("\n")
    .filter((line) => line.startsWith("|"))
    .map((line) => line.slice(2, -2).split(" | "))
    .slice(2);
}

const SYSTEMS = ["us", "metric"] as const;

describe.each(SYSTEMS)("the ranch's report, units %s", (units) => {
  const paper = () => {
    const plan = planOf(ranch());
    const show = (value: number, unit: Unit): string => shown(value, unit, units);
    return { plan, show, report: parts(reportOf(plan, { units })) };
  };

  test("holds every figure of every stage, and no others", () => {
    const { plan, show, report } = paper();
    for (const [title, figures] of Object.entries(FIGURES)) {
      const rows = figures(plan.stages).map(([label, value, unit]) => [
        label,
        unit === undefined ? value : show(value as number, unit),
      ]);
      expect(rowsOf(report.get(title)), title).toEqual(rows);
    }
  });

  test("holds runs, outlets, pumps, cables and the generator's margins in tables of their own", () => {
    const { plan, show, report } = paper();
    const { layout, pump, power } = plan.stages;
    expect(rowsOf(report.get("Yard lines"))).toEqual(
      layout.runs.map((run) => [
        run.name,
        show(run.length, LENGTH),
        run.pipe.name,
        show(run.flow, FLOW),
        show(run.velocity, SPEED),
        show(run.headLoss, LENGTH),
      ]),
    );
    expect(rowsOf(report.get("Pressure at the outlets"))).toEqual(
      layout.uses.flatMap(({ name, outlets }) =>
        outlets.map((outlet) => [
          name,
          outlet.name,
          show(outlet.flow, FLOW),
          show(outlet.pressureHeld, PRESSURE),
          show(outlet.pressureAtCutIn, PRESSURE),
          show(outlet.wanted, PRESSURE),
        ]),
      ),
    );
    expect(rowsOf(report.get("Pumps tried"))).toEqual(
      pump.candidates.map(({ name, atCutIn, atCutOut, suits, faults }) => [
        name,
        show(atCutIn?.flow ?? 0, FLOW),
        show(atCutOut?.flow ?? 0, FLOW),
        suits ? "yes" : `no: ${faults.map(({ reason }) => reason).join("; ")}`,
      ]),
    );
    expect(rowsOf(report.get("Cables"))).toEqual(
      power?.cables.map(({ name, length, size, material, groundingSize, drop }) => [
        name,
        show(length, LENGTH),
        `${size} ${material}`,
        groundingSize,
        show(drop, VOLTS),
      ]),
    );
    const checked = power?.sources[0]?.generator;
    if (checked == null || !("margins" in checked)) return expect.unreachable("no margins");
    const unitOf = (check: string): Unit =>
      check === "receptacle"
        ? AMPERES
        : /apparent/.test(check)
          ? ["VA", 0, "VA", 0]
          : /power/.test(check)
            ? POWER
            : SHARE;
    expect(rowsOf(report.get("Generator"))).toEqual(
      checked.margins.map(({ check, value, limit, margin }) => [
        "generator",
        check,
        ...[value, limit, margin].map((each) => show(each, unitOf(check))),
      ]),
    );
  });

  test("answers first: what to buy and set", () => {
    const { plan, show, report } = paper();
    const { pump, dropPipe, tank, controls, power, disinfection } = plan.stages;
    const answer = report.get("Three Larks Ranch: water system plan") ?? "";
    for (const [value, unit] of [
      [pump.dutyFlow, FLOW],
      [pump.duty.totalDynamicHead, LENGTH],
      [pump.setting, LENGTH],
      [dropPipe.length, LENGTH],
      [controls.cutIn, PRESSURE],
      [controls.cutOut, PRESSURE],
      [controls.setPressure ?? 0, PRESSURE],
      [tank.volume, VOLUME],
      [tank.precharge, PRESSURE],
      [tank.drawdown.usable, VOLUME],
      [power?.highestBreaker ?? 0, AMPERES],
      [disinfection.dose.bleach, BLEACH],
    ] as const)
      expect(answer).toContain(show(value, unit));
    for (const { name, size, material, length } of power?.cables ?? [])
      expect(answer).toContain(`${size} ${material}, ${show(length, LENGTH)} (${name})`);
    expect(answer.split("\n").filter((line) => line.startsWith("- "))).toHaveLength(6);
    expect(answer).toMatch(/^- Pump: B, 14 stages \(wanted: .* of head\), intake at .*\.$/m);
    expect(answer).toContain(`of ${dropPipe.pipe.name}.`);
  });

  test("is headings, lists and tables with their heads, and nothing else", () => {
    const { plan } = paper();
    const text = reportOf(plan, { units });
    expect(text.match(/^# /gm)).toHaveLength(1);
    for (const block of text.trim().split("\n\n"))
      expect(block).toMatch(/^(# |## |\*\*It will run|- |\| |Take these readings|Limits marked)/);
    const heads = new Set([...text.matchAll(/^(\|.*\|)\n\| ---/gm)].map(([, head]) => head));
    expect([...heads]).toEqual([
      "| run | length | pipe | most flow | velocity | head lost |",
      "| use | outlet | flow | while the pump runs | at cut-in | wanted |",
      "| figure | value |",
      "| pump | at cut-in | at cut-out | does the job |",
      "| cable | length | size | grounding, at least | voltage lost |",
      "| source | check | asked | limit | left |",
      "| reading | how | expected | passes | read |",
    ]);
    expect(text).not.toMatch(/undefined/);
  });

  test("holds the sheet, the cautions and the sources", () => {
    const { plan, report } = paper();
    const sheet = rowsOf(report.get("Commissioning sheet"));
    const units_: Partial<Record<string, Unit>> = {
      length: LENGTH,
      pressure: PRESSURE,
      pressureDifference: PRESSURE,
      flow: FLOW,
      shortTime: SECONDS,
      volume: VOLUME,
      current: AMPERES,
      voltage: VOLTS,
    };
    expect(sheet.map((row) => row.map((cell) => cell.trim()))).toEqual(
      plan.commissioning.map(({ reading, how, expected, low, high }) => {
        const unit = units_[expected.kind] as Unit;
        const [a, b, c] = [expected, low, high].map(({ value }) => shown(value, unit, units));
        return [reading, how, a, `${b} to ${c}`, ""];
      }),
    );
    const lines = (title: string) =>
      (report.get(title) ?? "").split("\n").flatMap((line) => line.match(/^- (.*)/)?.[1] ?? []);
    expect(lines("Cautions")).toEqual(plan.cautions.map(({ text }) => text.replaceAll("<", "&lt;")));
    expect(lines("Sources")).toEqual(citationsOf(plan).map((source) => `${source.id}: ${citeAsText(source)}`));
    expect(report.get("Sources")).toMatch(/^Limits marked common practice have no printed source\./);
    expect(report.get("Commissioning sheet")).toMatch(/^Take these readings in order/);
  });
});

describe("a report says no more than its plan", () => {
  test("units are US where nothing is said, and one of the two", () => {
    const plan = planOf(cabin());
    expect(reportOf(plan)).toBe(reportOf(plan, { units: "us" }));
    expect(reportOf(plan)).not.toBe(reportOf(plan, { units: "metric" }));
    expect(() => reportOf(plan, { units: "nautical" as never })).toThrow(/^options\.units/);
    expect(() => reportOf(plan, null as never)).toThrow(/^options/);
  });

  test("what a job has not, its report has not", () => {
    const titles = (document: unknown) => [...parts(reportOf(planOf(document))).keys()];
    const bare = planOf(
      ranch({
        pump: undefined,
        demand: undefined,
        "controls.reliefPressure": undefined,
        "controls.regulatingValve": undefined,
        places: [],
        runs: [],
        uses: undefined,
        outlets: [{ name: "tap", at: "wellhead", flow: "5 gpm", pressure: "20 psi" }],
      }),
    );
    const report = parts(reportOf(bare));
    expect([...report.keys()].slice(2)).toEqual([
      "Pressure at the outlets",
      "Demand",
      "Well",
      "Pump",
      "Drop pipe",
      "Controls",
      "Tank",
      "Disinfection",
      "Commissioning sheet",
      "Cautions",
      "Sources",
    ]);
    const labels = (title: string) => rowsOf(report.get(title)).map(([label]) => label);
    expect(labels("Demand")).toEqual(["The well gives in a day", 'Most at once ("tap")']);
    expect(labels("Pump").at(-1)).toBe("Water over the intake then");
    expect(labels("Drop pipe")).not.toContain("Pull on the hoist, pipe full");
    expect(labels("Controls")).toEqual(["Cut-in", "Cut-out", "Least pressure at the tank that serves every use"]);
    expect(labels("Tank")).toEqual(["Volume (as given)", "Precharge", "Water from cut-out to cut-in"]);
    const [, answer] = [...report.values()];
    expect(answer).toMatch(/\*\*Buy a pump for the duty below\.\*\* Without a pump, power, controls and relief/);
    expect(answer).toMatch(/^- Pump: one that gives 5\.0 gpm at .* of head, intake at/m);
    expect(answer).toMatch(/^- Switch: 52\.0 psi to 72\.0 psi\.$/m);
    expect(answer).not.toMatch(/Cables|breaker/);
    expect(answer?.match(/^- /gm)).toHaveLength(5);
    // The ranch has them all.
    expect(titles(ranch())).toEqual([
      "",
      "Three Larks Ranch: water system plan",
      "To change",
      "To look at",
      "In order",
      "Yard lines",
      "Pressure at the outlets",
      ...Object.keys(FIGURES),
      "Pumps tried",
      "Cables",
      "Generator",
      "Commissioning sheet",
      "Cautions",
      "Sources",
    ]);
  });

  test("what a stage cannot say is left out of its figures", () => {
    const plan = planOf(ranch());
    const { stages } = plan;
    const { chosen } = stages.pump;
    if (chosen === null || stages.day === null || stages.power === null) return expect.unreachable("no pump");
    const labelsOf = (changes: Partial<Plan["stages"]>) => {
      const report = parts(reportOf({ ...plan, stages: { ...stages, ...changes } }));
      return Object.keys(FIGURES).flatMap((title) => rowsOf(report.get(title)).map(([label = ""]) => label));
    };
    const all = labelsOf({});
    const pump = (changes: object) => ({ pump: { ...stages.pump, chosen: { ...chosen, ...changes } } });
    const gone: readonly (readonly [string, Partial<Plan["stages"]>])[] = [
      ["Flow at cut-in", pump({ atCutIn: null })],
      ["Flow at cut-out, valve open", pump({ atCutOut: null })],
      ["Flow sleeve: widest inside diameter", pump({ cooling: { ...chosen.cooling, sleeve: "not needed" } })],
      ["Rated for, at the water's temperature", { dropPipe: having(stages.dropPipe, { pressureRating: null }) }],
      ["Pull on the hoist, pipe full", { dropPipe: having(stages.dropPipe, { hangingLoad: null }) }],
      ["Relief valve opens at", { controls: having(stages.controls, { reliefPressure: null }) }],
      ["Flow it must pass there", { controls: having(stages.controls, { reliefCapacity: null }) }],
      ["Time to fill from cut-in to cut-out", { tank: having(stages.tank, { fillTime: null }) }],
      ["Its shortest run", { day: having(stages.day, { shortestRun: null }) }],
      ["Energy from the supply", { day: having(stages.day, { energy: null }) }],
    ];
    for (const [label, changes] of gone) expect(labelsOf(changes)).toEqual(all.filter((each) => each !== label));
    // Without a valve the flow at cut-out is what it is.
    expect(labelsOf({ controls: having(stages.controls, { setPressure: null }) })).toContain("Flow at cut-out");
    // A use that holds no pressure says what happens in words.
    const held = [{ use: "flood", flow: 1, held: { state: "falls below cut-in", short: 1 } }];
    const report = parts(reportOf({ ...plan, stages: { ...stages, controls: having(stages.controls, { held }) } }));
    expect(rowsOf(report.get("Controls"))).toContainEqual(['during "flood"', "falls below cut-in"]);
  });

  test("the verdict counts what must and what should change", () => {
    const plan = planOf(cabin());
    const [found] = planOf(ranch()).findings;
    if (found === undefined) return expect.unreachable("no finding");
    const verdict = (...severities: ("stop" | "fix" | "look")[]) => {
      const findings = severities.map((severity) => ({ ...found, severity }));
      return reportOf({ ...plan, findings }).split("\n")[2];
    };
    expect(verdict()).toBe("**It will run as planned.**");
    expect(verdict("look")).toBe("**It will run as planned.**");
    expect(verdict("fix")).toBe("**It will run; 1 thing should change.**");
    expect(verdict("fix", "fix")).toBe("**It will run; 2 things should change.**");
    expect(verdict("fix", "stop")).toBe("**Do not build it like this: 1 thing must change first.**");
  });

  test("a finding says its subject, number, limit, ground and remedy", () => {
    const plan = planOf(cabin());
    const base = {
      code: "any",
      stage: "well",
      severity: "fix",
      subject: "",
      message: "Something.",
      value: { kind: "length", value: 3.048 },
      limit: { kind: "length", value: 6.096 },
      basis: { kind: "common practice" },
      remedy: "Do it.",
    } as const;
    const said = (changes: object) => {
      const text = reportOf({ ...plan, findings: [{ ...base, ...changes }] as never });
      return text.match(/^- (.*Something.*)$/m)?.[1];
    };
    expect(said({})).toBe("Something. Found 10.0 ft, limit 20.0 ft (common practice). Do it.");
    expect(said({ subject: "house", remedy: "" })).toBe(
      "**House.** Something. Found 10.0 ft, limit 20.0 ft (common practice).",
    );
    expect(said({ severity: "good" })).toBe("Something. 10.0 ft against a limit of 20.0 ft (common practice). Do it.");
    expect(said({ basis: { kind: "published", source: "nfpa-70", locator: "430.52" } })).toContain(
      "(nfpa-70, 430.52).",
    );
    expect(said({ basis: { kind: "derived", locator: "sums" } })).toContain("(derived, sums).");
    for (const [severity, title] of [
      ["stop", "Must not be built like this"],
      ["fix", "To change"],
      ["look", "To look at"],
      ["good", "In order"],
    ])
      expect(parts(reportOf({ ...plan, findings: [{ ...base, severity }] as never })).get(title as string)).toContain(
        "Something.",
      );
  });

  test("a pump that gives nothing, a table without rows and names that would break it", () => {
    const plan = planOf(cabin());
    const [candidate] = plan.stages.pump.candidates;
    const dead = { ...candidate, name: "a|b\nc", atCutIn: null, atCutOut: null, suits: false, faults: [] };
    const pump = { ...plan.stages.pump, candidates: [dead] } as never;
    const report = parts(reportOf({ ...plan, stages: { ...plan.stages, pump } }));
    expect(rowsOf(report.get("Pumps tried"))).toEqual([["a b c", "none", "none", "no: "]]);
    // A utility has no margins, nor has a generator that does not fit.
    expect(report.has("Generator")).toBe(false);
    const misfit = planOf(ranch({ "power.sources[0].voltage": "120 V" }));
    expect(parts(reportOf(misfit)).has("Generator")).toBe(false);
    expect(reportOf({ ...plan, name: "A <b>\n# C" }).split("\n")[0]).toBe("# A &lt;b> # C: water system plan");
  });
});

test("a plan warns of generators where it has one, and of no hazard twice", () => {
  const codes = (document: unknown) => planOf(document).cautions.map(({ code }) => code);
  const [with_, without] = [codes(ranch()), codes(cabin())];
  const generators = generatorCautions.map(({ id }) => `generator-${id}`);
  expect(with_).toEqual(expect.arrayContaining(generators));
  expect(without.filter((code) => generators.includes(code))).toEqual([]);
  expect(without.slice(0, 5)).toEqual(["local-code", "drinking-water", "mains", "pressure", "lifting"]);
  for (const list of [with_, without]) expect(new Set(list).size).toBe(list.length);
  for (const { basis, text } of planOf(ranch()).cautions)
    expect([basis, text].every((part) => part.length > 0)).toBe(true);
});
