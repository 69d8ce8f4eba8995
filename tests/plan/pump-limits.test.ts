/** The findings of the pump a hair to either side of their limits, and what is said where no pump of the list suits. */
import { readJob } from "risingmain/plan";
import { feet, feetPerSecond, gpm, inches, psi } from "risingmain/units";
import { pumpSetting } from "risingmain/well";
import { describe, expect, test } from "vitest";
import { pumpFindings } from "../../src/plan/pump-findings.ts";
import { having, ranch, workOf } from "./jobs.ts";
import { codesOf, HAIR, holds } from "./limits.ts";

describe("a hair to either side of a limit of the pump:", () => {
  test("its setting", () => {
    const { job, work } = workOf(ranch());
    const input = {
      lengthBelowIntake: feet(2),
      wellDepth: feet(312),
      casingDepth: feet(260),
      screenTop: feet(250),
      pumpingLevel: feet(120),
    };
    const found =
      (changes: Partial<typeof input>, casingServes = true) =>
      (setting: number) =>
        pumpFindings(job, {
          ...work,
          stage: having(work.stage, {
            setting,
            casingServes,
            settingChecks: pumpSetting({ ...input, ...changes, pumpSetting: setting as never }),
          }),
        });
    const wide = { screenTop: feet(312), casingDepth: feet(312) };
    const base = { wrong: "above", severity: "fix", basis: "common practice" } as const;
    // Two feet of motor hang below the intake; ten feet are kept off the bottom.
    holds({ ...base, code: "pump-below-casing", found: found({ screenTop: feet(312) }), limit: feet(260 - 2) });
    holds({ ...base, code: "pump-beside-screen", found: found({}), limit: feet(250 - 2) });
    holds({ ...base, code: "pump-near-bottom", found: found(wide), limit: feet(312 - 10 - 2) });
    const { screenTop: _, ...noScreen } = input;
    const screenless = pumpSetting({ ...noScreen, pumpSetting: feet(255) });
    expect(
      codesOf(pumpFindings(job, { ...work, stage: having(work.stage, { settingChecks: screenless }) })),
    ).not.toContain("pump-beside-screen");
    // Where no depth in the casing does, the open hole is the right place, and only worth a look.
    const [open] = found({}, false)(feet(280));
    const [cased] = found({}, true)(feet(280));
    expect([open?.code, open?.severity]).toEqual(["pump-below-casing", "look"]);
    expect([cased?.code, cased?.severity]).toEqual(["pump-below-casing", "fix"]);
    expect(open?.message).not.toBe(cased?.message);
    expect(open?.remedy).not.toBe(cased?.remedy);
    expect(cased?.remedy).toMatch(/into the casing/);
    // A hole cased to the bottom cannot be left for the casing.
    const [whole] = pumpFindings(readJob(ranch({ "well.casingDepth": "312 ft" })), {
      ...work,
      stage: having(work.stage, {
        setting: feet(320),
        settingChecks: { ...work.stage.settingChecks, insideCasing: { met: false, margin: feet(-8) } },
      }),
    });
    expect(whole?.remedy).toBe("Raise the pump.");
    // Ten feet of water are kept over the intake; with none left it draws air.
    const water = (depth: number) => found({})(feet(depth)).filter(({ code }) => /intake/.test(code));
    const covered = (depth: number) =>
      water(depth).map(({ code, severity, value, limit, basis }) => [
        code,
        severity,
        Math.round(value.value / feet(1)),
        Math.round(limit.value / feet(1)),
        basis.kind,
      ]);
    expect(covered(130.001)).toEqual([]);
    expect(covered(129)).toEqual([["little-water-over-intake", "fix", 9, 10, "common practice"]]);
    expect(covered(120)).toEqual([["intake-uncovered", "stop", 0, 10, "common practice"]]);
    expect(water(120.001)[0]?.code).toBe("little-water-over-intake");
    expect(water(120)[0]?.message).toMatch(/draws air/);
    expect(water(121)[0]?.message).toMatch(/little water/);
  });

  test("pressure, cooling, clearance, motor", () => {
    const { job, work } = workOf(ranch());
    const chosen = work.stage.chosen ?? expect.unreachable("no pump");
    const { pump, lift } = work;
    if (pump === null) return expect.unreachable("no pump");
    const found = (changes: Parameters<typeof having<typeof chosen>>[1], of = job) =>
      pumpFindings(of, { ...work, stage: { ...work.stage, chosen: having(chosen, changes) } });
    const base = { subject: "B, 14 stages" } as const;
    holds({
      ...base,
      code: "cannot-reach-cut-out",
      found: (shutoffPressure) => found({ shutoffPressure }),
      limit: psi(72),
      wrong: "below",
      severity: "stop",
      basis: "derived",
    });
    const cooling = (sleeve: "not needed" | "needed: too slow") => (velocity: number) =>
      found({
        cooling: { ...chosen.cooling, sleeve, velocity: velocity as never, leastVelocity: feetPerSecond(0.25) },
      });
    holds({
      ...base,
      code: "motor-cooling",
      found: cooling("needed: too slow"),
      limit: feetPerSecond(0.25),
      wrong: "below",
      severity: "fix",
      basis: "common practice",
    });
    expect(codesOf(cooling("not needed")(0))).not.toContain("motor-cooling");
    // Half an inch on the diameter, of a pump of 3.88 in.
    holds({
      ...base,
      code: "tight-in-casing",
      found: (gap) => found({}, having(job, { well: having(job.well, { casingInsideDiameter: inches(3.88) + gap }) })),
      limit: inches(0.5),
      wrong: "below",
      severity: "look",
      basis: "common practice",
    });
    const motor = (power: number, serviceFactor: number | undefined) =>
      pumpFindings(job, {
        stage: work.stage,
        lift,
        pump: {
          ...pump,
          candidate: having(pump.candidate, { motor: having(pump.candidate.motor, { power, serviceFactor }) }),
        },
      }).filter(({ code }) => code === "motor-overloaded");
    const [asked] = motor(1, 1);
    const most = asked?.value.value ?? expect.unreachable("a motor of a watt is not overloaded");
    expect(asked).toMatchObject({
      severity: "fix",
      subject: "B, 14 stages",
      basis: { kind: "given" },
      limit: { value: 1 },
    });
    expect(motor((most / 1.25) * (1 + HAIR), 1.25)).toEqual([]);
    expect(motor((most / 1.25) * (1 - HAIR), 1.25)).toHaveLength(1);
    expect(motor(most * (1 + HAIR), undefined)).toEqual([]);
    expect(motor(most * (1 - HAIR), undefined)).toHaveLength(1);
  });

  test("its best flow", () => {
    // Parabola of efficiency with its top at 10 gpm, so that shares of the best flow are flows over ten.
    const flows = [0, 2, 4, 6, 8, 10, 12, 14, 16, 18];
    const curve = flows.map((q) => ({
      flow: `${q} gpm`,
      head: `${400 - q ** 2} ft`,
      efficiency: `${0.6 * (20 * q - q ** 2)} %`,
    }));
    const document = ranch({
      "pump.candidates": [
        {
          name: "parabola",
          curve,
          diameter: "3.88 in",
          motor: { power: "3 hp", voltage: "230 V", phase: "single-phase" },
        },
      ],
      "controls.regulatingValve": undefined,
      uses: undefined,
      outlets: [{ name: "house", at: "house", flow: "7 gpm", pressure: "40 psi" }],
    });
    const { job, work } = workOf(document);
    const chosen = work.stage.chosen ?? expect.unreachable("no pump");
    const share = (code: string, atCutIn: number | null, atCutOut: number | null, of = job) => {
      const point = (flow: number | null) => (flow === null ? null : ({ flow: gpm(flow) } as never));
      const stage = { ...work.stage, chosen: { ...chosen, atCutIn: point(atCutIn), atCutOut: point(atCutOut) } };
      return pumpFindings(of, { ...work, stage }).filter((each) => each.code === code);
    };
    const [left] = share("far-left-of-best", 11, 6.5);
    expect(left).toMatchObject({
      severity: "look",
      subject: "parabola",
      basis: { kind: "published", source: "ansi-hi-9.6.3" },
    });
    expect(left?.value.value).toBeCloseTo(0.65, 2);
    expect(left?.limit.value).toBe(0.7);
    expect(share("far-left-of-best", 11, 7.5)).toEqual([]);
    const [right] = share("upthrust", 12.5, 8);
    expect(right).toMatchObject({
      severity: "fix",
      subject: "parabola",
      basis: { kind: "published", source: "ansi-hi-9.6.3" },
    });
    expect(right?.value.value).toBeCloseTo(1.25, 2);
    expect(right?.limit.value).toBe(1.2);
    expect(share("upthrust", 11.5, 8)).toEqual([]);
    // Without cut-out the least is at cut-in; without either there is no flow at all.
    expect(share("far-left-of-best", 6.5, null)).toHaveLength(1);
    expect(share("far-left-of-best", 7.5, null)).toHaveLength(0);
    expect(share("upthrust", null, null)).toEqual([]);
    expect(share("far-left-of-best", null, null)[0]?.value.value).toBe(0);
    // Behind a valve the pump gives what is used, the least use the least, and no more than its curve has.
    const valve = { setPressure: psi(62), minimumFlow: gpm(1) };
    const uses = (flow: number) =>
      having(job, {
        controls: having(job.controls, { regulatingValve: valve }),
        outlets: [
          { name: "big", at: "house", flow: gpm(9), pressure: psi(20) },
          { name: "small", at: "house", flow: gpm(flow), pressure: psi(20) },
        ],
      });
    expect(share("far-left-of-best", 11, 8, uses(6.5))[0]?.value.value).toBeCloseTo(0.65, 2);
    expect(share("far-left-of-best", 11, 6, uses(7.5))).toEqual([]);
    expect(
      share("far-left-of-best", 11, 6, having(uses(60), { uses: [{ name: "flood", outlets: ["small"] }] })),
    ).toEqual([]);
  });

  test("none of the list suits", () => {
    const { job, work } = workOf(ranch());
    const { candidates, chosen, dutyFlow } = work.stage;
    const faulty = candidates.filter(({ suits }) => !suits);
    const [nearest] = faulty;
    const said = (changes: object) =>
      pumpFindings(job, { ...work, stage: having(work.stage, changes) }).filter(({ code }) => code === "no-pump-suits");
    expect(said({})).toEqual([]);
    const [none] = said({ candidates: faulty, chosen: null });
    expect(none).toMatchObject({
      severity: "stop",
      stage: "pump",
      subject: nearest?.name,
      value: nearest?.faults[0]?.value,
      limit: nearest?.faults[0]?.limit,
      basis: { kind: "derived" },
    });
    expect(none?.message).toMatch(/^None of the pumps listed does the job\. The nearest /);
    for (const { reason } of nearest?.faults ?? []) expect(none?.message).toContain(reason);
    if (nearest === undefined || chosen === null) return expect.unreachable("no pump");
    const [alone] = said({ candidates: faulty, chosen: { ...chosen, name: nearest.name } });
    expect(alone?.message).toMatch(/^The pump does not do the job: it /);
    // Suitable by another name is not suitable.
    expect(said({ chosen: { ...chosen, name: "another" } })).toHaveLength(1);
    // A list of none: nothing is nearest, and what is asked is the duty.
    const [empty] = said({ candidates: [], chosen: null });
    expect(empty).toMatchObject({
      subject: "the pumps listed",
      value: { kind: "flow", value: 0 },
      limit: { value: dutyFlow },
    });
    const without = having(job, { pump: {} });
    expect(
      codesOf(
        pumpFindings(without, { ...work, pump: null, stage: having(work.stage, { candidates: [], chosen: null }) }),
      ),
    ).toEqual([]);
  });
});
