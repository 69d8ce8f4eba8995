/** Properties that are not the usual ranch: each must give a plan or an InputError that names a field of the job. */
import { citationsOf, planSystem, readJob, reportOf, sampleJob } from "risingmain/plan";
import { bibliography } from "risingmain/sources";
import { feet } from "risingmain/units";
import { describe, expect, test } from "vitest";

// biome-ignore lint/suspicious/noExplicitAny: a JSON document, changed part by part
const sample = (change: (document: any) => void): any => {
  const document = structuredClone(sampleJob);
  change(document);
  return document;
};
// biome-ignore lint/suspicious/noExplicitAny: a JSON document, changed part by part
const planned = (change: (document: any) => void) => planSystem(readJob(sample(change)));
const codes = (plan: ReturnType<typeof planned>): readonly string[] => plan.findings.map(({ code }) => code);

describe("a well in rock, cased only near the top", () => {
  test.each(["20 ft", "41 ft", "60 ft"])(
    "casing to %s: the pump hangs in the open hole, covered and off the bottom",
    (casingDepth) => {
      const plan = planned((document) => {
        document.well.casingDepth = casingDepth;
      });
      const { setting, settingChecks, casingServes, lowestLevel } = plan.stages.pump;
      expect(casingServes).toBe(false);
      expect(setting).toBeGreaterThan(lowestLevel);
      expect(settingChecks.covered.met && settingChecks.offBottom.met).toBe(true);
      expect(plan.findings.find(({ code }) => code === "pump-below-casing")?.severity).toBe("look");
      expect(codes(plan)).not.toContain("intake-uncovered");
    },
  );
});

test("an intake above the water is a finding, not an error", () => {
  const plan = planned((document) => {
    document.pump.setting = "30 ft";
  });
  expect(codes(plan)).toContain("intake-uncovered");
  expect(plan.stages.day).toBeNull();
});

test("a flowing well does not run dry with water over the intake", () => {
  const plan = planned((document) => {
    document.well.staticLevel = "-50 ft";
    document.well.test = [{ flow: "12 gpm", pumpingLevel: "-20 ft" }];
  });
  expect(codes(plan)).not.toContain("runs-dry");
  const [level] = plan.commissioning;
  expect(level?.low.value).toBeLessThan(level?.high.value ?? 0);
});

test("without pumps the plan is the duty to buy one by, and says what it could not check", () => {
  const plan = planned((document) => {
    delete document.pump;
  });
  expect(plan.stages.pump.chosen).toBeNull();
  expect(plan.stages.power).toBeNull();
  const report = reportOf(plan);
  expect(report).toContain("Buy a pump for the duty below");
  expect(report).toContain("power, controls and relief are not checked");
});

test("an outlet at the wellhead needs no places and no runs", () => {
  const plan = planned((document) => {
    document.places = [];
    document.runs = [];
    document.outlets = [{ name: "tap", at: "wellhead", flow: "5 gpm", pressure: "20 psi" }];
  });
  expect(plan.stages.layout.runs).toEqual([]);
  expect(plan.stages.layout.uses).toHaveLength(1);
});

test("a three-phase motor on a single-phase source cannot run, and says so", () => {
  const plan = planned((document) => {
    document.pump.candidates[0].motor = { power: "1 hp", voltage: "230 V", phase: "three-phase" };
  });
  expect(codes(plan)).toEqual(expect.arrayContaining(["no-pump-suits", "wrong-phase"]));
});

test("cables are sized for the source the motor runs on", () => {
  const motor = { power: "1 hp", voltage: "230 V", phase: "three-phase" };
  const sources = [
    { name: "house", kind: "utility", voltage: "240 V", phase: "single-phase" },
    { name: "shop", kind: "utility", voltage: "240 V", phase: "three-phase" },
  ];
  const [first, second] = [sources, [...sources].reverse()].map((list) =>
    planned((document) => {
      document.pump.candidates[0].motor = motor;
      document.power.sources = list;
    }),
  );
  expect(first?.stages.power?.drop).toBe(second?.stages.power?.drop);
});

test("a valve set at or above cut-out never holds: pressures are those of the switch", () => {
  const valve = (setPressure: string) =>
    planned((document) => {
      document.controls.regulatingValve = { setPressure, minimumFlow: "1 gpm" };
    });
  const [outlet] = valve("60 psi").stages.layout.uses[0]?.outlets ?? [];
  expect(outlet?.pressureHeld).toBe(outlet?.pressureAtCutIn);
  expect(codes(valve("60 psi"))).toContain("valve-set-above-cut-out");
  expect(codes(valve("60 psi"))).not.toContain("use-below-valve-minimum");
});

test("pipe too warm for its material is rated for nothing", () => {
  const plan = planned((document) => {
    document.site.waterTemperature = "131 °F";
    document.pipeChoice = { family: "PVC SCH 40" };
    document.runs[0].pipe = "1 in PVC SCH 40";
  });
  const cool = planned((document) => {
    document.runs[0].pipe = "1 in PVC SCH 40";
  });
  const rating = (p: typeof plan) => p.stages.layout.runs[0]?.pressureRating ?? 0;
  expect(rating(plan)).toBeLessThan(rating(cool) / 2);
});

// Source: the factors of PE3408 are printed to 100 °F and no higher (src/pipe/derating/pe3408.ts).
test("a pipe of a material with no factor at the water's temperature may see no pressure, and the plan stops", () => {
  const plan = planned((document) => {
    document.site.waterTemperature = "131 °F";
    document.runs[0].pipe = "1 in PE3408 SIDR 11.5";
  });
  const [run] = plan.stages.layout.runs;
  expect(run?.pressureRating).toBe(0);
  expect(plan.findings.filter(({ code }) => code === "pipe-rating-exceeded").map(({ severity }) => severity)).toContain(
    "stop",
  );
});

// By meaning: friction and the electrical code bear on every plan with a pump; most of the bibliography bears on none.
test("a plan cites what it rests on and nothing else of the bibliography", () => {
  const cited = citationsOf(planSystem(readJob(sampleJob))).map(({ id }) => id);
  expect(cited).toEqual(expect.arrayContaining(["colebrook-1939", "nfpa-70"]));
  expect(cited.length).toBeLessThan(bibliography().length / 2);
});

test("a precharge above cut-out stops the plan: no water enters the tank", () => {
  const plan = planned((document) => {
    document.tank.precharge = "55 psi";
  });
  expect(plan.findings.find(({ code }) => code === "precharge-high")?.severity).toBe("stop");
});

test("one, two and three cables left open keep the drop, each with its own metal", () => {
  for (const count of [1, 2, 3]) {
    const plan = planned((document) => {
      document.power.circuit = Array.from({ length: count }, (_, i) => ({
        name: `cable ${i}`,
        length: "250 ft",
        ...(i === 1 ? { material: "aluminium" } : {}),
      }));
    });
    expect(plan.stages.power?.dropShare).toBeLessThanOrEqual(0.05);
    expect(plan.stages.power?.cables[1]?.material).toBe(count > 1 ? "aluminium" : undefined);
    expect(codes(plan)).not.toContain("voltage-drop");
  }
});

test("the grounding conductor is never thicker than the cable it goes with", () => {
  const plan = planned(() => undefined);
  for (const { size, groundingSize } of plan.stages.power?.cables ?? []) {
    expect(Number.parseInt(groundingSize, 10)).toBeGreaterThanOrEqual(Number.parseInt(size, 10));
  }
});

test("a good system's own readings pass its sheet", () => {
  const { commissioning } = planned(() => undefined);
  for (const { expected, low, high } of commissioning) {
    expect(low.value).toBeLessThanOrEqual(expected.value);
    expect(high.value).toBeGreaterThanOrEqual(expected.value);
  }
  const amperes = commissioning.find(({ code }) => code === "running-current");
  expect(amperes?.low.value).toBe(0);
});

test("a tank far above the well asks for its head", () => {
  const plan = planned((document) => {
    document.tank.elevation = "60 ft";
  });
  expect(plan.stages.pump.duty.parts.elevation).toBe(feet(60));
});
