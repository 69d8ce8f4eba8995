/**
 * The well: how far the water falls at the flow wanted, and what stands in the hole.
 *
 * @module
 */
import type { Length, Transmissivity, Volume, VolumeFlow } from "../units/index.ts";
import { casingVolume, type DrawdownLaw, drawdownAt, fitStepTest, singleTestLaw, waterColumn } from "../well/index.ts";
import type { Finding } from "./finding.ts";
import { finding } from "./findings.ts";
import type { Job, JobWell } from "./job.ts";
import type { WellStage } from "./stages.ts";

/** The well at a flow. */
export function wellStage({ well }: Job, flow: VolumeFlow): WellStage {
  const { law, basis } = drawdownLawOf(well);
  const drawdown = drawdownAt(law, flow);
  return {
    law,
    lawBasis: basis,
    specificCapacity: (flow / drawdown) as Transmissivity,
    staticLevel: well.staticLevel,
    drawdown,
    pumpingLevel: (well.staticLevel + drawdown) as Length,
    waterColumn: waterColumn({ wellDepth: well.depth, waterLevel: well.staticLevel }),
    standingWater: standingWater(well),
  };
}

/** Steps at two flows fit the step law; one flow, its drawdowns averaged, or steps that fit no law, give it in proportion. */
function drawdownLawOf(well: JobWell): { readonly law: DrawdownLaw; readonly basis: WellStage["lawBasis"] } {
  const steps = well.test.map(({ flow, pumpingLevel }) => ({
    flow,
    drawdown: (pumpingLevel - well.staticLevel) as Length,
  }));
  const largest = steps.reduce((most, step) => (step.flow > most.flow ? step : most));
  if (steps.every(({ flow }) => flow === largest.flow)) {
    const drawdown = steps.reduce((sum, step) => sum + step.drawdown, 0) / steps.length;
    return { law: singleTestLaw({ flow: largest.flow, drawdown: drawdown as Length }), basis: "single test" };
  }
  const fit = fitStepTest({ steps });
  if (fit.state === "law") return { law: fit.law, basis: "step test" };
  return { law: singleTestLaw(largest), basis: "largest step alone" };
}

/** The parts of the hole, casing first. */
export function boreSections(
  well: JobWell,
): readonly { readonly insideDiameter: Length; readonly top: Length; readonly bottom: Length }[] {
  const { casingInsideDiameter, casingDepth = well.depth, openHoleDiameter = casingInsideDiameter } = well;
  return [
    { insideDiameter: casingInsideDiameter, top: 0 as Length, bottom: casingDepth },
    { insideDiameter: openHoleDiameter, top: casingDepth, bottom: well.depth },
  ];
}

function standingWater(well: JobWell): Volume {
  const level = Math.max(well.staticLevel, 0);
  return boreSections(well).reduce((sum, { insideDiameter, top, bottom }) => {
    const length = Math.max(bottom - Math.max(top, level), 0) as Length;
    return sum + casingVolume({ insideDiameter, length });
  }, 0) as Volume;
}

/** The flow against the test's, and the water against the hole. */
export function wellFindings({ well }: Job, stage: WellStage, flow: VolumeFlow): readonly Finding[] {
  const tested = Math.max(...well.test.map((step) => step.flow));
  return [
    ...finding({
      code: "flow-beyond-test",
      stage: "well",
      kind: "flow",
      value: flow,
      limit: tested,
      wrong: "above",
      severity: "look",
      message: "The pump takes more than the well was tested at: the drawdown is carried beyond what was measured.",
      remedy: "Test the well at the flow wanted, or keep the setting deep and a dry-run cut-off fitted.",
      basis: { kind: "given", locator: "pumping test" },
    }),
    ...finding({
      code: "pump-above-yield",
      stage: "well",
      kind: "flow",
      value: flow,
      limit: well.yield,
      wrong: "above",
      severity: "look",
      message:
        "While it fills the tank the pump takes more than the well gives: in a long draw the water goes on falling.",
      remedy: "Fit a dry-run cut-off, and a valve or a smaller pump if draws are long.",
      basis: { kind: "given", locator: "yield of the well" },
    }),
    ...(stage.lawBasis === "largest step alone"
      ? finding({
          code: "step-test-fits-no-law",
          stage: "well",
          kind: "count",
          value: well.test.length,
          limit: 1,
          wrong: "above",
          severity: "look",
          message:
            "The steps of the test fit no law of drawdown: levels had not settled, or the well cleared itself. Only the largest step is used.",
          remedy: "Repeat the step test with steps of equal length.",
          basis: { kind: "derived", locator: "least squares through the steps" },
        })
      : []),
    ...finding({
      code: "water-falls-to-bottom",
      stage: "well",
      kind: "length",
      value: stage.pumpingLevel,
      limit: well.depth,
      wrong: "at or above",
      severity: "stop",
      message: "At the flow wanted the water falls to the bottom of the hole.",
      remedy: "Pump less at once and store the difference, or deepen the well.",
      basis: { kind: "derived", locator: "static level plus drawdown against the depth of the hole" },
    }),
  ];
}
