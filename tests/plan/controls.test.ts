/**
 * Switch, regulating valve and relief valve: what the stage says by the control module and by hydrostatics, and each
 * finding a hair to either side of its limit.
 */
import { pressureHeld } from "risingmain/control";
import type { ControlsStage, Job } from "risingmain/plan";
import { feet, gpm, psi } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { controlsFindings, controlsStage } from "../../src/plan/controls-stage.ts";
import { flowAt } from "../../src/plan/lift.ts";
import { having, planOf, ranch, workOf } from "./jobs.ts";
import { codesOf, holds } from "./limits.ts";

/** m/s², exact by definition (CGPM 1901). */
const STANDARD_GRAVITY = 9.80665;

/** The ranch's pump B in its well, its yard, and what is found with some of them changed. */
function controlled() {
  const { job, work } = workOf(ranch());
  const { lift, pump } = work;
  const curve = pump?.curve ?? expect.unreachable("no pump");
  const stage = controlsStage(lift, curve);
  const { layout } = planOf(ranch()).stages;
  const weight = lift.water.density * STANDARD_GRAVITY;
  const found = (
    controls: { readonly [K in keyof Job["controls"]]?: unknown },
    changes: Partial<ControlsStage> = {},
    of = layout,
  ) =>
    controlsFindings(
      { ...lift, job: having(job, { controls: having(job.controls, controls) }) },
      curve,
      { ...stage, ...changes },
      of,
    );
  return { job, lift, curve, stage, layout, weight, found };
}

describe("the stage", () => {
  test("says of each use what the control module says", () => {
    const { lift, curve, stage } = controlled();
    const uses = { "house and trough": 11, "both hydrants": 15, "ridge hydrant alone": 7, "trough alone": 4 };
    expect(stage.held).toEqual(
      Object.entries(uses).map(([use, flow]) => ({
        use,
        flow: expect.closeTo(gpm(flow), 9),
        held: pressureHeld({
          valve: { setPressure: psi(62), minimumFlow: gpm(1), maximumInlet: psi(300) },
          cutIn: psi(52),
          cutOut: psi(72),
          demand: gpm(flow),
          openFlowAt: (pressure) => flowAt(lift, curve, pressure),
        }),
      })),
    );
    expect(stage).toMatchObject({
      cutIn: psi(52),
      cutOut: psi(72),
      setPressure: psi(62),
      minimumFlow: gpm(1),
      reliefPressure: psi(95),
    });
  });

  test("without pump or valve says nothing of them", () => {
    const { lift, job } = controlled();
    expect(controlsStage(lift, null)).toMatchObject({ held: [], reliefPressure: psi(95), reliefCapacity: null });
    const { regulatingValve: _, reliefPressure: __, ...bare } = job.controls;
    const { curve } = controlled();
    expect(controlsStage({ ...lift, job: { ...job, controls: bare } }, curve)).toEqual({
      cutIn: psi(52),
      cutOut: psi(72),
      setPressure: null,
      minimumFlow: null,
      held: [],
      reliefPressure: null,
      reliefCapacity: null,
    });
  });

  test("a relief valve must pass what the pump gives at its pressure, the water at its highest", () => {
    const at = { "pump.setting": "200 ft" };
    const { reliefCapacity } = planOf(ranch(at)).stages.controls;
    // The same well with its water always at the highest, and the switch at the relief valve's pressure.
    const high = planOf(
      ranch({
        ...at,
        "well.staticLevel": "81 ft",
        "well.test": [{ flow: "20 gpm", pumpingLevel: "121 ft" }],
        "controls.cutOut": "95 psi",
        "controls.reliefPressure": undefined,
      }),
    );
    const flow = high.stages.pump.candidates.find(({ name }) => name === "B, 14 stages")?.atCutOut?.flow;
    expect(Math.abs((flow ?? 0) - (reliefCapacity ?? 0))).toBeLessThan(gpm(1e-6));
    // Where no highest level is given, the usual one is.
    const usual = planOf(ranch({ ...at, "well.highestStaticLevel": undefined })).stages.controls.reliefCapacity ?? 0;
    expect(usual).toBeLessThan((reliefCapacity ?? 0) - gpm(0.1));
  });
});

describe("a hair to either side of the limit of", () => {
  test("switch and valve", () => {
    const { found } = controlled();
    const set = (setPressure: number) => found({ regulatingValve: { setPressure, minimumFlow: gpm(1) } });
    const fix = { severity: "fix", basis: "derived", found: set } as const;
    holds({ ...fix, code: "valve-set-below-cut-in", limit: psi(52), wrong: "below" });
    holds({ ...fix, code: "valve-set-above-cut-out", limit: psi(72), wrong: "above" });
    expect([52, 72].map((set_) => codesOf(set(psi(set_))).filter((code) => code.startsWith("valve-set")))).toEqual([
      ["valve-set-below-cut-in"],
      ["valve-set-above-cut-out"],
    ]);
    const look = { severity: "look", basis: "common practice" } as const;
    // 19.5 psi: half a pound less than the usual 20 is not worth a word.
    holds({
      ...look,
      code: "switch-differential-narrow",
      found: (differential) => found({ cutOut: psi(52) + differential }),
      limit: 134448,
      wrong: "below",
    });
    const dry = (dryRunCutOff: boolean | undefined) =>
      found({ dryRunCutOff }).filter(({ code }) => code === "no-dry-run-cut-off");
    expect(dry(true)).toEqual([]);
    expect(dry(false)).toMatchObject([
      { severity: "look", value: { value: 0 }, limit: { value: 1 }, basis: { kind: "common practice" } },
    ]);
    expect(dry(undefined)).toHaveLength(1);
  });

  test("the valve's inlet: shutoff head less the lift from the highest water", () => {
    const { found, weight } = controlled();
    // 412 ft of the pump from 81 ft down to a tank 2 ft up.
    const shutoff = weight * feet(412 - 81 - 2);
    const said = (maximumInletPressure: number) =>
      found({ regulatingValve: { setPressure: psi(62), minimumFlow: gpm(1), maximumInletPressure } }).filter(
        ({ code }) => code === "valve-inlet-pressure",
      );
    expect(said(shutoff * (1 + 1e-6))).toEqual([]);
    const [one] = said(shutoff * (1 - 1e-6));
    expect(one).toMatchObject({ severity: "stop", basis: { kind: "given" } });
    expect(one?.value.value).toBeCloseTo(shutoff, 0);
  });

  test("the weakest part, its rating carried to the level of the tank", () => {
    const { found, layout, weight, job } = controlled();
    const rated = (house: number | null, barn: number | null) => ({
      ...layout,
      runs: layout.runs.map((run) =>
        having(run, { pressureRating: run.to === "house" ? house : run.to === "barn" ? barn : psi(1000) }),
      ),
    });
    const relief = { wrong: "above", severity: "stop", basis: "common practice", subject: "relief valve" } as const;
    // The lowest end of the run to the house is the tank's own; the barn lies 8 ft under the tank.
    const above = (of: ReturnType<typeof rated>) => (reliefPressure: number) => found({ reliefPressure }, {}, of);
    holds({ ...relief, code: "relief-above-rating", found: above(rated(psi(100), null)), limit: psi(100) });
    holds({
      ...relief,
      code: "relief-above-rating",
      found: above(rated(psi(100), psi(100))),
      limit: psi(100) - weight * feet(8),
    });
    holds({ ...relief, code: "relief-above-rating", found: above(rated(null, null)), limit: psi(125) });
    const said = (of: ReturnType<typeof rated>) =>
      above(of)(psi(130)).find(({ code }) => code === "relief-above-rating");
    expect(said(rated(psi(100), null))?.message).toMatch(/the run wellhead – house\.$/);
    expect(said(rated(null, null))?.message).toMatch(/the tank\.$/);
    // A part that may see less than its water weighs may see none.
    expect(said(rated(null, psi(1)))?.limit.value).toBe(0);

    const shutoff = weight * feet(412 - 81 - 2);
    const none = (house: number) =>
      found({ reliefPressure: undefined }, {}, rated(house, null)).filter(({ code }) => code === "no-relief-valve");
    expect(none(shutoff * (1 + 1e-6)).map(({ subject }) => subject)).toEqual(["tank"]);
    const unrated = having(job, { tank: { elevation: feet(2) } });
    const { lift, curve, stage } = controlled();
    const untanked = (house: number | null) =>
      controlsFindings(
        { ...lift, job: having(unrated, { controls: having(job.controls, { reliefPressure: undefined }) }) },
        curve,
        stage,
        {
          ...layout,
          runs: layout.runs.map((run) => having(run, { pressureRating: run.to === "house" ? house : null })),
        },
      ).filter(({ code }) => code === "no-relief-valve");
    expect(untanked(null)).toEqual([]);
    expect(untanked(shutoff * (1 + 1e-6))).toEqual([]);
    const [one] = untanked(shutoff * (1 - 1e-6));
    expect(one).toMatchObject({
      severity: "stop",
      subject: "run wellhead – house",
      basis: { kind: "common practice" },
    });
    expect(one?.value.value).toBeCloseTo(shutoff, 0);
  });

  test("the relief valve's setting and capacity", () => {
    const { found, stage } = controlled();
    const base = { subject: "relief valve", basis: "common practice", wrong: "below" } as const;
    holds({
      ...base,
      code: "relief-below-cut-out",
      found: (reliefPressure) => found({ reliefPressure }),
      limit: psi(72),
      severity: "fix",
    });
    const needed = stage.reliefCapacity ?? expect.unreachable("no capacity");
    holds({
      ...base,
      code: "relief-capacity",
      found: (reliefCapacity) => found({ reliefPressure: psi(95), reliefCapacity }),
      limit: needed,
      severity: "stop",
    });
    // A capacity not said is not judged.
    expect(codesOf(found({ reliefPressure: psi(95) })).filter((code) => code.startsWith("relief"))).toEqual([]);
  });

  test("a use against what pump and valve give", () => {
    const { found } = controlled();
    const use = "both hydrants";
    const held = (state: object, changes: Partial<ControlsStage> = {}) =>
      found({}, { held: [{ use, flow: gpm(15), held: state as never }], ...changes }).filter(({ code }) =>
        code.startsWith("use-"),
      );
    const falls = { state: "falls below cut-in", short: gpm(2) };
    expect(held(falls)).toMatchObject([
      {
        code: "use-outruns-pump",
        severity: "fix",
        subject: use,
        value: { kind: "flow", value: gpm(15) },
        basis: { kind: "derived" },
      },
    ]);
    expect(held(falls)[0]?.limit.value).toBeCloseTo(gpm(13), 12);
    const holding = { state: "holds", pressure: psi(62), mode: "regulating" };
    expect(held(holding)).toEqual([]);
    holds({
      code: "use-below-valve-minimum",
      found: (flow) => found({}, { held: [{ use, flow: flow as never, held: holding as never }] }),
      limit: gpm(1),
      wrong: "below",
      severity: "look",
      basis: "given",
      subject: use,
    });
    // A valve set outside the switch's range has its own finding.
    for (const setPressure of [null, psi(52), psi(72)]) expect(held(falls, { setPressure })).toEqual([]);
    expect(held(falls, { minimumFlow: null })).toEqual([]);
    for (const setPressure of [psi(53), psi(71)]) expect(held(falls, { setPressure })).toHaveLength(1);
  });

  test("a plan without a pump: the switch alone is judged", () => {
    const { layout, job, lift, stage } = controlled();
    const controls = having(job.controls, { reliefPressure: psi(1000) });
    expect(codesOf(controlsFindings({ ...lift, job: { ...job, controls } }, null, stage, layout))).toEqual([]);
  });
});
