/** Facts of the trade that the library must agree with. Common practice, no source; none of them is the demo's data. */
import { pressureHeld } from "risingmain/control";
import { bucketFlow } from "risingmain/field";
import { planSystem, readJob, sampleJob } from "risingmain/plan";
import {
  feet,
  type GaugePressure,
  gpm,
  inGpm,
  inPsi,
  psi,
  seconds,
  usGallons,
  type VolumeFlow,
} from "risingmain/units";
import { describe, expect, test } from "vitest";

// biome-ignore lint/suspicious/noExplicitAny: a JSON document, changed part by part
const sample = (): any => structuredClone(sampleJob);

test("five US gallons caught in about 18 s read 16 to 17.5 gpm", () => {
  const { flow, relativeUncertainty } = bucketFlow({ volume: usGallons(5), times: [seconds(18)] });
  expect(inGpm(flow)).toBeGreaterThan(16);
  expect(inGpm(flow)).toBeLessThan(17.5);
  expect(relativeUncertainty).toBeGreaterThan(0);
});

describe("a switch of 80/100 psi with the pressure regulated near 85 to 90 psi", () => {
  /** A pump that gives some 20 gpm at 80 psi and shuts off above the cut-out. */
  const openFlowAt = (pressure: GaugePressure): VolumeFlow =>
    gpm(Math.max(20 * Math.sqrt(Math.max((150 - inPsi(pressure)) / 70, 0)), 0));
  const valve = { setPressure: psi(90), minimumFlow: gpm(1), droop: psi(5) as never, droopFlow: gpm(15) };
  const control = { valve, cutIn: psi(80), cutOut: psi(100), openFlowAt };

  test("runs the pump without cycling while a hose is open", () => {
    for (const hose of [3, 5, 8, 12]) {
      const held = pressureHeld({ ...control, demand: gpm(hose) });
      if (held.state !== "holds") expect.unreachable(held.state);
      else {
        expect(inPsi(held.pressure)).toBeGreaterThanOrEqual(85);
        expect(inPsi(held.pressure)).toBeLessThanOrEqual(90);
      }
    }
  });

  test("opens at 100 psi once it closes", () => {
    const held = pressureHeld({ ...control, demand: gpm(0) });
    expect(held.state).toBe("switch opens");
  });
});

test("a 1.5 hp, 230 V pump starts and runs on an 8,000 W (10,000 W surge) generator through a 30 A, 250 V receptacle, with a stated margin", () => {
  const document = sample();
  document.pump.candidates[0].motor = { power: "1.5 hp", voltage: "230 V", phase: "single-phase" };
  document.power.sources = [
    {
      name: "generator",
      kind: "generator",
      voltage: "240 V",
      phase: "single-phase",
      runningPower: "8,000 W",
      surgePower: "10,000 W",
      receptacle: "L14-30",
    },
  ];
  const { findings, stages } = planSystem(readJob(document));
  const [generator] = stages.power?.sources ?? [];
  const checked = generator?.generator;
  if (checked == null || !("margins" in checked)) return expect.unreachable("no check of the generator");
  expect(checked.state).toBe("starts and runs");
  for (const { margin } of checked.margins) expect(margin).toBeGreaterThan(0);
  const said = findings.find(({ code }) => code === "generator-starts-and-runs");
  expect(said?.value.value).toBe(checked.tightest.value);
  expect(said?.limit.value).toBe(checked.tightest.limit);
  expect(checked.receptacle?.state).toBe("within limit");
});

test("a pump is kept inside the casing, to keep sediment out of it", () => {
  const document = sample();
  document.well.casingDepth = "100 ft";
  const codes = (setting: string) => {
    document.pump.setting = setting;
    return planSystem(readJob(document)).findings.map(({ code }) => code);
  };
  expect(codes("130 ft")).toContain("pump-below-casing");
  expect(codes("95 ft")).not.toContain("pump-below-casing");
  // Left to the plan, it hangs inside.
  delete document.pump.setting;
  const plan = planSystem(readJob(document));
  expect(plan.stages.pump.setting).toBeLessThan(feet(100));
  expect(plan.findings.map(({ code }) => code)).not.toContain("pump-below-casing");
});
