/**
 * The well: how far the water falls at the flow wanted, and what stands in the hole.
 *
 * @module
 */
import type { Length, Transmissivity, Volume, VolumeFlow } from "../units/index.ts";
import { casingVolume, type DrawdownLaw, drawdownAt, singleTestLaw, waterColumn } from "../well/index.ts";
import type { Finding } from "./finding.ts";
import { finding } from "./findings.ts";
import type { Job, JobWell } from "./job.ts";
import type { WellStage } from "./stages.ts";

/** The well at a flow. */
export function wellStage({ well }: Job, flow: VolumeFlow): WellStage {
  const law = drawdownLawOf(well);
  const drawdown = drawdownAt(law, flow);
  return {
    law,
    specificCapacity: (flow / drawdown) as Transmissivity,
    staticLevel: well.staticLevel,
    drawdown,
    pumpingLevel: (well.staticLevel + drawdown) as Length,
    waterColumn: waterColumn({ wellDepth: well.depth, waterLevel: well.staticLevel }),
    standingWater: standingWater(well),
  };
}

/** Drawdown against flow from the pumping test. */
function drawdownLawOf(well: JobWell): DrawdownLaw {
  const [first] = well.test;
  if (first === undefined) throw new Error("a job without a test passed its schema");
  return singleTestLaw({ flow: first.flow, drawdown: (first.pumpingLevel - well.staticLevel) as Length });
}

/** The parts of the hole, casing first. */
export function boreSections(
  well: JobWell,
): readonly { readonly insideDiameter: Length; readonly top: Length; readonly bottom: Length }[] {
  const { casingInsideDiameter, casingDepth = well.depth, openHoleDiameter = casingInsideDiameter } = well;
  const casing = { insideDiameter: casingInsideDiameter, top: 0 as Length, bottom: casingDepth };
  return casingDepth < well.depth
    ? [casing, { insideDiameter: openHoleDiameter, top: casingDepth, bottom: well.depth }]
    : [casing];
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
      message: "The flow wanted is more than the well was tested at: the drawdown is carried beyond what was measured.",
      remedy: "Test the well at the flow wanted, or keep the setting deep and a dry-run cut-off fitted.",
      basis: { kind: "given", locator: "pumping test" },
    }),
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
