/**
 * Switch, regulating valve and relief valve with the pump chosen.
 *
 * @module
 */
import { checkReliefValve, pressureHeld, type RatedPart, type RegulatingValve } from "../control/index.ts";
import { pressureOfHead } from "../head/index.ts";
import type { PumpCurve } from "../pump/index.ts";
import type { GaugePressure, Length } from "../units/index.ts";
import { type Finding, PRACTICE } from "./finding.ts";
import { finding } from "./findings.ts";
import type { Job } from "./job.ts";
import { elevations, lowerEnd, tankElevation } from "./layout-solve.ts";
import { flowAt, type Lift, pressureAtShutoff } from "./lift.ts";
import type { ControlsStage, LayoutStage } from "./stages.ts";
import { usesOf } from "./uses.ts";

/** Usual difference of cut-out and cut-in: 20 psi, common practice; half a psi less is not worth a word; 19.5 psi in Pa. */
const USUAL_DIFFERENTIAL = 134448;

/** The job's valve in the words of the control module; its open loss is already in the lift. */
export function valveOf({ controls }: Job): RegulatingValve | null {
  const { regulatingValve: valve } = controls;
  if (valve === undefined) return null;
  return {
    setPressure: valve.setPressure,
    minimumFlow: valve.minimumFlow,
    ...(valve.maximumInletPressure === undefined ? {} : { maximumInlet: valve.maximumInletPressure }),
  };
}

/** The lift with the water at its highest, when the pump presses hardest. */
function highest(lift: Lift): Lift {
  return { ...lift, staticLevel: lift.job.well.highestStaticLevel ?? lift.job.well.staticLevel };
}

/** What the controls do in each use. */
export function controlsStage(lift: Lift, curve: PumpCurve | null): ControlsStage {
  const { job } = lift;
  const { cutIn, cutOut, reliefPressure = null } = job.controls;
  const valve = valveOf(job);
  return {
    cutIn,
    cutOut,
    setPressure: valve?.setPressure ?? null,
    minimumFlow: valve?.minimumFlow ?? null,
    held:
      valve === null || curve === null
        ? []
        : usesOf(job).map(({ name, flow }) => ({
            use: name,
            flow,
            held: pressureHeld({
              valve,
              cutIn,
              cutOut,
              demand: flow,
              openFlowAt: (pressure) => flowAt(lift, curve, pressure),
            }),
          })),
    reliefPressure,
    reliefCapacity: reliefPressure === null || curve === null ? null : flowAt(highest(lift), curve, reliefPressure),
  };
}

/** The parts the tank's pressure reaches, each rating carried to the level of the tank. */
function ratedParts(lift: Lift, layout: LayoutStage): readonly RatedPart[] {
  const { job, water } = lift;
  const places = elevations(job);
  const atTank = (rating: GaugePressure, elevation: Length): GaugePressure =>
    Math.max(
      rating - pressureOfHead({ head: (tankElevation(job) - elevation) as Length, density: water.density }),
      0,
    ) as GaugePressure;
  return [
    ...(job.tank?.maximumPressure === undefined ? [] : [{ name: "tank", rating: job.tank.maximumPressure }]),
    ...layout.runs.flatMap(({ name, pressureRating, ...run }) =>
      pressureRating === null
        ? []
        : [
            {
              name: `run ${name}`,
              rating: atTank(pressureRating, lowerEnd(run, places)),
            },
          ],
    ),
  ];
}

/** Controls against each other, the pump and the ratings. */
export function controlsFindings(
  lift: Lift,
  curve: PumpCurve | null,
  stage: ControlsStage,
  layout: LayoutStage,
): readonly Finding[] {
  const { controls } = lift.job;
  return [
    ...setPressureFindings(lift.job),
    ...(curve === null ? [] : [...inletFindings(lift, curve), ...reliefFindings(lift, curve, layout)]),
    ...heldFindings(stage),
    ...finding({
      code: "switch-differential-narrow",
      stage: "controls",
      kind: "pressureDifference",
      value: controls.cutOut - controls.cutIn,
      limit: USUAL_DIFFERENTIAL,
      wrong: "below",
      severity: "look",
      message: "Cut-in and cut-out lie closer together than is usual: the tank gives little water between them.",
      remedy: "Widen the switch setting, if the user and the ratings allow.",
      basis: PRACTICE,
    }),
    ...(controls.dryRunCutOff === true
      ? []
      : finding({
          code: "no-dry-run-cut-off",
          stage: "controls",
          kind: "count",
          value: 0,
          limit: 1,
          wrong: "below",
          severity: "look",
          message: "No low-level or dry-run cut-off is fitted: a dry season would burn out the pump.",
          remedy: "Fit one.",
          basis: PRACTICE,
        })),
  ];
}

function setPressureFindings({ controls }: Job): readonly Finding[] {
  const { regulatingValve, cutIn, cutOut } = controls;
  if (regulatingValve === undefined) return [];
  const base = {
    stage: "controls",
    kind: "pressure",
    value: regulatingValve.setPressure,
    severity: "fix",
    basis: { kind: "derived", locator: "the valve works only between cut-in and cut-out" },
  } as const;
  return [
    ...finding({
      ...base,
      code: "valve-set-below-cut-in",
      limit: cutIn,
      wrong: "at or below",
      message: "The valve is set at or below cut-in: it throttles a pump that is filling the tank.",
      remedy: "Set the valve between cut-in and cut-out.",
    }),
    ...finding({
      ...base,
      code: "valve-set-above-cut-out",
      limit: cutOut,
      wrong: "at or above",
      message:
        "The valve is set at or above cut-out: the switch stops the pump before the valve holds, and the pump cycles.",
      remedy: "Set the valve between cut-in and cut-out.",
    }),
  ];
}

function inletFindings(lift: Lift, curve: PumpCurve): readonly Finding[] {
  const most = lift.job.controls.regulatingValve?.maximumInletPressure;
  if (most === undefined) return [];
  return finding({
    code: "valve-inlet-pressure",
    stage: "controls",
    kind: "pressure",
    value: pressureAtShutoff(highest(lift), curve),
    limit: most,
    wrong: "above",
    severity: "stop",
    message: "With little water used the pump can put more on the valve's inlet than it may see.",
    remedy: "Take a pump of fewer stages or a valve for the pressure.",
    basis: { kind: "given", locator: "highest inlet pressure of the valve" },
  });
}

function reliefFindings(lift: Lift, curve: PumpCurve, layout: LayoutStage): readonly Finding[] {
  const { cutOut, reliefPressure } = lift.job.controls;
  const parts = ratedParts(lift, layout);
  const weakest = parts.reduce<RatedPart | null>(
    (least, part) => (least === null || part.rating < least.rating ? part : least),
    null,
  );
  if (weakest === null) return [];
  const atHighest = highest(lift);
  if (reliefPressure === undefined) {
    return finding({
      code: "no-relief-valve",
      stage: "controls",
      subject: weakest.name,
      kind: "pressure",
      value: pressureAtShutoff(atHighest, curve),
      limit: weakest.rating,
      wrong: "above",
      severity: "stop",
      message:
        "A stuck switch would let the pump put more on the weakest part than it is rated for, and no relief valve is fitted.",
      remedy:
        "Fit a relief valve at the tank, after any regulating valve and with no shutoff between, able to pass the pump's flow at its set pressure.",
      basis: PRACTICE,
    });
  }
  const { reliefCapacity: ratedCapacity } = lift.job.controls;
  const { conditions } = checkReliefValve({
    setPressure: reliefPressure,
    cutOut,
    ...(ratedCapacity === undefined ? {} : { ratedCapacity }),
    pumpFlowAt: (pressure) => flowAt(atHighest, curve, pressure),
    parts,
  });
  const base = { stage: "controls", subject: "relief valve", kind: "pressure", value: reliefPressure } as const;
  return conditions.flatMap(({ code, value, limit }) => {
    if (code === "set above a rating") {
      return finding({
        ...base,
        code: "relief-above-rating",
        limit,
        wrong: "above",
        severity: "stop",
        message: `The relief valve opens above the rating of the weakest part, the ${weakest.name}.`,
        remedy: "Set it lower, or take a part of a higher rating.",
        basis: PRACTICE,
      });
    }
    if (code === "set at or below the cut-out") {
      return finding({
        ...base,
        code: "relief-below-cut-out",
        limit,
        wrong: "at or below",
        severity: "fix",
        message: "The relief valve opens at or below cut-out: it weeps at every cycle.",
        remedy: "Set it above the cut-out.",
        basis: PRACTICE,
      });
    }
    if (code === "capacity too small") {
      return finding({
        stage: "controls",
        subject: "relief valve",
        kind: "flow",
        code: "relief-capacity",
        value,
        limit,
        wrong: "below",
        severity: "stop",
        message:
          "The relief valve passes less than the pump gives at its set pressure: it cannot hold the pressure there.",
        remedy: "Take a relief valve of that capacity, or two.",
        basis: PRACTICE,
      });
    }
    return [];
  });
}

function heldFindings({ held, minimumFlow, setPressure, cutIn, cutOut }: ControlsStage): readonly Finding[] {
  // A valve set outside the switch's range has its own finding; what follows from it would only confuse.
  if (setPressure === null || minimumFlow === null || setPressure <= cutIn || setPressure >= cutOut) return [];
  return held.flatMap(({ use, flow, held: outcome }) => {
    const base = { stage: "controls", subject: use, kind: "flow", value: flow } as const;
    if (outcome.state === "falls below cut-in") {
      return finding({
        ...base,
        code: "use-outruns-pump",
        limit: flow - outcome.short,
        wrong: "above",
        severity: "fix",
        message: "The use takes more than the pump gives even at cut-in: the pressure goes on falling.",
        remedy: "Open fewer outlets at once or take a larger pump.",
        basis: { kind: "derived", locator: "operating point at cut-in" },
      });
    }
    return finding({
      ...base,
      code: "use-below-valve-minimum",
      limit: minimumFlow,
      wrong: "below",
      severity: "look",
      message: "The use takes less than the valve's minimum flow: the pump starts and stops on the tank during it.",
      remedy: "Nothing, if the tank gives a long enough run; else a larger tank.",
      basis: { kind: "given", locator: "minimum flow of the valve" },
    });
  });
}
