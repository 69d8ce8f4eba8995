/**
 * Each finding asked for directly, its number a hair to either side of the limit: there on the wrong side, gone on the
 * right one, with the number, the limit and the ground for it as they are. The limits are those of the job or the trade.
 */
import { readJob } from "risingmain/plan";
import { feet, feetPerSecond, gpm, horsepower, perDay, psi } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { dayFindings } from "../../src/plan/day-stage.ts";
import { demandFindings } from "../../src/plan/demand-stage.ts";
import { dropPipeFindings } from "../../src/plan/drop-pipe-stage.ts";
import { finding } from "../../src/plan/findings.ts";
import { layoutFindings } from "../../src/plan/layout-stage.ts";
import { tankFindings } from "../../src/plan/tank-stage.ts";
import { wellFindings } from "../../src/plan/well-stage.ts";
import { having, planOf, ranch } from "./jobs.ts";
import { codesOf, holds } from "./limits.ts";

test("a value on its limit is wrong only where the limit says at", () => {
  const at = (wrong: "above" | "below" | "at or above" | "at or below", value: number) =>
    finding({
      code: "any",
      stage: "well",
      kind: "length",
      value,
      limit: 2,
      wrong,
      severity: "look",
      message: "",
      remedy: "",
      basis: { kind: "derived" },
    }).length;
  const across = (wrong: Parameters<typeof at>[0]) => [1, 2, 3].map((value) => at(wrong, value));
  expect(across("above")).toEqual([0, 0, 1]);
  expect(across("below")).toEqual([1, 0, 0]);
  expect(across("at or above")).toEqual([0, 1, 1]);
  expect(across("at or below")).toEqual([1, 1, 0]);
});

describe("a hair to either side of the limit of", () => {
  test("demand", () => {
    const job = readJob(ranch());
    const { demand } = planOf(ranch()).stages;
    const daily = demand.daily ?? expect.unreachable("no daily water");
    holds({
      code: "well-gives-less-than-the-day",
      found: (volume) => demandFindings(job, having(demand, { daily: having(daily, { volume }) })),
      limit: demand.yieldPerDay,
      wrong: "above",
      severity: "stop",
      basis: "given",
    });
    holds({
      code: "use-above-yield",
      found: (designFlow) => demandFindings(job, having(demand, { designFlow })),
      limit: gpm(22),
      wrong: "above",
      severity: "fix",
      basis: "given",
      subject: "both hydrants",
    });
    expect(demandFindings(job, { ...demand, daily: null })).toEqual([]);
  });

  test("the well", () => {
    const test = [
      { flow: "20 gpm", pumpingLevel: "134 ft" },
      { flow: "10 gpm", pumpingLevel: "110 ft" },
    ];
    const job = readJob(ranch({ "well.test": test }));
    const { well } = planOf(ranch()).stages;
    for (const [code, limit] of [
      ["flow-beyond-test", gpm(20)],
      ["pump-above-yield", gpm(22)],
    ] as const)
      holds({
        code,
        found: (flow) => wellFindings(job, well, flow as never),
        limit,
        wrong: "above",
        severity: "look",
        basis: "given",
      });
    holds({
      code: "water-falls-to-bottom",
      found: (pumpingLevel) => wellFindings(job, having(well, { pumpingLevel }), gpm(1)),
      limit: feet(312),
      wrong: "above",
      severity: "stop",
      basis: "derived",
    });
    const misfit = wellFindings(job, having(well, { lawBasis: "largest step alone" }), gpm(1));
    expect(misfit.map(({ code, severity, value, limit }) => [code, severity, value.value, limit.value])).toEqual([
      ["step-test-fits-no-law", "look", 2, 1],
    ]);
    expect(misfit[0]?.basis.kind).toBe("derived");
    expect(wellFindings(job, having(well, { lawBasis: "step test" }), gpm(1))).toEqual([]);
  });

  test("the yard lines", () => {
    const job = readJob(ranch());
    const { layout } = planOf(ranch()).stages;
    const [use] = layout.uses;
    const [run] = layout.runs;
    if (use === undefined || run === undefined) return expect.unreachable("no use, no run");
    const [first, ...others] = use.outlets;
    if (first === undefined) return expect.unreachable("no outlet");
    const outlet = (changes: Parameters<typeof having<typeof first>>[1]) =>
      layoutFindings(job, { ...layout, runs: [], uses: [{ ...use, outlets: [having(first, changes), ...others] }] });
    const base = { wrong: "below", basis: "given", subject: 'house, in "house and trough"', limit: psi(40) } as const;
    holds({
      ...base,
      code: "outlet-short-of-pressure",
      found: (pressureHeld) => outlet({ pressureHeld, pressureAtCutIn: pressureHeld }),
      severity: "fix",
    });
    holds({
      ...base,
      code: "outlet-short-at-cut-in",
      found: (pressureAtCutIn) => outlet({ pressureAtCutIn }),
      severity: "look",
    });
    // Short while the pump runs: that it is short at cut-in as well goes without saying. With no pressure at all it stops.
    const short = (pressureHeld: number) => outlet({ pressureHeld, pressureAtCutIn: pressureHeld });
    expect([1, 0, -1].map((pressure) => short(pressure).map(({ code, severity }) => [code, severity]))).toEqual([
      [["outlet-short-of-pressure", "fix"]],
      [["outlet-short-of-pressure", "stop"]],
      [["outlet-short-of-pressure", "stop"]],
    ]);

    const runWith = (job: Parameters<typeof layoutFindings>[0], changes: Parameters<typeof having<typeof run>>[1]) =>
      layoutFindings(job, { ...layout, runs: [having(run, changes)], uses: [] });
    const open = readJob(ranch({ pipeChoice: undefined }));
    for (const [of, basis] of [
      [job, "given"],
      [open, "common practice"],
    ] as const)
      holds({
        code: "velocity-high",
        found: (velocity) => runWith(of, { velocity }),
        limit: feetPerSecond(5),
        wrong: "above",
        severity: "look",
        basis,
        subject: "run wellhead – house",
      });
    holds({
      code: "pipe-rating-exceeded",
      found: (highestPressure) => runWith(job, { highestPressure, pressureRating: psi(100) }),
      limit: psi(100),
      wrong: "above",
      severity: "stop",
      basis: "published",
      source: run.pipe.source,
      subject: "run wellhead – house",
    });
    expect(runWith(job, { highestPressure: psi(1000), pressureRating: null })).toEqual([]);
  });

  test("the drop pipe", () => {
    const job = readJob(ranch());
    const { dropPipe } = planOf(ranch()).stages;
    const subject = dropPipe.pipe.name;
    holds({
      code: "drop-pipe-rating-exceeded",
      found: (highestPressure) =>
        dropPipeFindings(job, having(dropPipe, { highestPressure, pressureRating: psi(300) })),
      limit: psi(300),
      wrong: "above",
      severity: "stop",
      basis: "published",
      source: dropPipe.pipe.source,
      subject,
    });
    expect(dropPipeFindings(job, having(dropPipe, { highestPressure: 1e9, pressureRating: null }))).toEqual([]);
    const open = readJob(ranch({ pipeChoice: undefined }));
    for (const [of, basis] of [
      [job, "given"],
      [open, "common practice"],
    ] as const)
      holds({
        code: "drop-pipe-velocity-high",
        found: (velocity) => dropPipeFindings(of, having(dropPipe, { velocity })),
        limit: feetPerSecond(5),
        wrong: "above",
        severity: "look",
        basis,
        subject,
      });
    // Two stand above the pump's own by practice; a job that does not say how many is not asked.
    const valves = (checkValves: number | undefined) =>
      dropPipeFindings(
        readJob(ranch({ "dropPipe.checkValves": checkValves })),
        having(dropPipe, { fixings: having(dropPipe.fixings, { checkValves: [feet(150), feet(100), feet(1)] }) }),
      ).map(({ code, severity, value, limit, basis }) => [code, severity, value.value, limit.value, basis.kind]);
    expect([2, undefined].map(valves)).toEqual([[], []]);
    expect(valves(1)).toEqual([["few-check-valves", "look", 1, 2, "common practice"]]);
  });

  test("the tank", () => {
    const job = readJob(ranch());
    const { tank } = planOf(ranch()).stages;
    const motor = horsepower(2);
    const worst = tank.worst ?? expect.unreachable("no worst use");
    const base = { severity: "fix" } as const;
    const demanding = readJob(ranch({ "tank.leastRunTime": "90 s" }));
    for (const [of, limit, basis] of [
      [job, 60, "common practice"],
      [demanding, 90, "given"],
    ] as const)
      holds({
        ...base,
        code: "run-too-short",
        found: (fillTime) => tankFindings(of, having(tank, { fillTime }), motor),
        limit,
        wrong: "below",
        basis,
      });
    // 7.5 starts an hour for a motor above three quarters of a horsepower, 15 below (`motorStartLimit`).
    for (const [power, starts] of [
      [2, 7.5],
      [0.5, 15],
    ] as const)
      holds({
        ...base,
        code: "starts-too-often",
        found: (each) => tankFindings(job, having(tank, { worst: having(worst, { starts: each }) }), horsepower(power)),
        limit: starts / 3600,
        wrong: "above",
        basis: "published",
        source: "water-systems-council-performance-standard-for",
      });
    holds({
      code: "tank-rating-exceeded",
      found: (cutOut) => tankFindings(having(job, { controls: having(job.controls, { cutOut }) }), tank, motor),
      limit: psi(125),
      wrong: "above",
      severity: "stop",
      basis: "given",
    });
    const unrated = readJob(ranch({ "tank.maximumPressure": undefined, "controls.cutOut": "500 psi" }));
    expect(codesOf(tankFindings(unrated, having(tank, { worst: null }), motor))).toEqual([]);
    const often = having(tank, { worst: having(worst, { starts: 1 }), fillTime: 100 });
    expect([motor, null].map((power) => codesOf(tankFindings(job, often, power)))).toEqual([["starts-too-often"], []]);
    // No time to fill where there is none to say.
    expect(codesOf(tankFindings(job, having(tank, { fillTime: null }), motor))).toContain("run-too-short");
  });

  test("the precharge", () => {
    // Cut-in 52 psi, cut-out 72; practice has the precharge 2 psi below cut-in, and nothing is said to 4 below nor at it.
    const said = (precharge: number) => {
      const { findings } = planOf(ranch({ "tank.precharge": `${precharge} psi` }));
      return findings
        .filter(({ code }) => code.startsWith("precharge"))
        .map(({ code, severity, value, limit, basis }) => [
          code,
          severity,
          Math.round(value.value / psi(1)),
          Math.round(limit.value / psi(1)),
          basis.kind,
          basis.source !== undefined,
        ]);
    };
    const rest = ["published", true];
    expect([49, 51].map(said)).toEqual([[], []]);
    expect(said(47)).toEqual([["precharge-low", "look", 47, 50, ...rest]]);
    expect(said(60)).toEqual([["precharge-high", "fix", 60, 50, ...rest]]);
    expect(said(72)).toEqual([["precharge-high", "stop", 72, 50, ...rest]]);
  });

  test("the day", () => {
    const job = readJob(ranch());
    const { day } = planOf(ranch()).stages;
    if (day === null) return expect.unreachable("no day");
    const basis = {
      lift: { job, setting: feet(150) },
      motor: { power: horsepower(2) },
      lowestLevel: feet(140),
    } as never as Parameters<typeof dayFindings>[0];
    const rated = {
      ...basis,
      lift: { job: readJob(ranch({ "tank.mostStartsPerDay": 40 })), setting: feet(150) },
    } as never;
    // Starts are whole: the hair is in the count.
    for (const [of, limit, ground, source] of [
      [basis, 300, "published", "water-systems-council-performance-standard-for"],
      [rated, 40, "given", undefined],
    ] as const) {
      const said = (starts: number) =>
        dayFindings(of, { ...day, starts }).filter(({ code }) => code === "starts-a-day");
      expect(said(limit)).toEqual([]);
      const [one] = said(limit + 1);
      expect(one).toMatchObject({ severity: "fix", basis: { kind: ground } });
      expect(one?.basis.source).toBe(source);
      expect(one?.value.value).toBeCloseTo(perDay(limit + 1), 12);
      expect(one?.limit.value).toBeCloseTo(perDay(limit), 12);
    }
    holds({
      code: "water-refused",
      found: (servedShare) => dayFindings(basis, having(day, { servedShare })),
      limit: 0.999,
      wrong: "below",
      severity: "fix",
      basis: "derived",
    });
    holds({
      code: "runs-dry",
      found: (lowestLevel) => dayFindings(having(basis, { lowestLevel }), { ...day, state: "ran dry" }),
      limit: feet(150),
      wrong: "above",
      severity: "stop",
      basis: "derived",
    });
    expect(codesOf(dayFindings(having(basis, { lowestLevel: feet(200) }), day))).toEqual([]);
    expect(dayFindings(basis, null)).toEqual([]);
  });
});
