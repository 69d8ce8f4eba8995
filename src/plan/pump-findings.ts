/**
 * The pump and its setting against their limits.
 *
 * @module
 */
import { type PumpCurve, pumpDuty } from "../pump/index.ts";
import type { Length, VolumeFlow } from "../units/index.ts";
import type { SettingCheck } from "../well/index.ts";
import { type Basis, type Finding, PRACTICE } from "./finding.ts";
import { finding } from "./findings.ts";
import type { Job } from "./job.ts";
import type { Lift } from "./lift.ts";
import { measure } from "./measure.ts";
import { greatestShaftPower, leastUsedFlow, type PumpWork } from "./pump-stage.ts";
import type { ChosenPump, PumpStage } from "./stages.ts";

/** The preferred region of a pump, as shares of the flow of best efficiency (`ansi-hi-9.6.3`, recalled). */
const NEAR_BEST = 0.7;
const UPTHRUST = 1.2;
/** Room wanted between pump and casing on the diameter: half an inch, common practice. */
const LEAST_CLEARANCE = 0.0127;

/** Everything that stands against the pump or its setting. */
export function pumpFindings(job: Job, { stage, pump, lift }: PumpWork): readonly Finding[] {
  return [
    ...settingFindings(job, stage),
    ...choiceFindings(job, stage),
    ...(stage.chosen === null || pump === null
      ? []
      : [...chosenFindings(job, stage.chosen, pump), ...motorFindings(stage.chosen, pump, lift)]),
  ];
}

function settingFindings({ well }: Job, { setting, settingChecks, casingServes }: PumpStage): readonly Finding[] {
  const { casingDepth = well.depth } = well;
  const missed = (
    code: string,
    check: SettingCheck | null,
    severity: "stop" | "fix" | "look",
    message: string,
    remedy: string,
    basis: Basis,
  ): readonly Finding[] =>
    check === null || check.met
      ? []
      : finding({
          code,
          stage: "pump",
          kind: "length",
          value: setting,
          limit: (setting + check.margin) as Length,
          wrong: "above",
          severity,
          message,
          remedy,
          basis,
        });
  return [
    ...missed(
      "pump-below-casing",
      settingChecks.insideCasing,
      casingServes ? "fix" : "look",
      casingServes
        ? "The pump hangs out of the casing into the open hole, where sediment can reach and bury it."
        : "No depth inside the casing keeps water over the intake: the pump hangs in the open hole, where the wall can shed sediment.",
      casingServes
        ? casingDepth < well.depth
          ? "Raise the pump into the casing, or line the hole."
          : "Raise the pump."
        : "Fit a flow sleeve and guides, keep well off the bottom, and look at the driller's log for caving rock.",
      PRACTICE,
    ),
    ...missed(
      "pump-beside-screen",
      settingChecks.aboveScreen,
      "fix",
      "The pump hangs beside the screen: water comes in above the motor and does not cool it, and sand is drawn straight in.",
      "Raise the pump above the screen, or fit a flow sleeve.",
      PRACTICE,
    ),
    ...missed(
      "pump-near-bottom",
      settingChecks.offBottom,
      "fix",
      "The pump hangs close to the bottom, where sediment gathers.",
      "Raise the pump.",
      PRACTICE,
    ),
    ...(settingChecks.covered.met
      ? []
      : finding({
          code: settingChecks.submergence <= 0 ? "intake-uncovered" : "little-water-over-intake",
          stage: "pump",
          kind: "length",
          value: settingChecks.submergence,
          limit: (settingChecks.submergence - settingChecks.covered.margin) as Length,
          wrong: "below",
          severity: settingChecks.submergence <= 0 ? "stop" : "fix",
          message:
            settingChecks.submergence <= 0
              ? "While pumping, the water falls below the intake: the pump draws air."
              : "While pumping, little water is left over the intake: a dry season takes it away.",
          remedy: "Set the pump deeper if the casing allows, use less at once, and fit a dry-run cut-off.",
          basis: PRACTICE,
        })),
  ];
}

function choiceFindings({ pump }: Job, { chosen, candidates, dutyFlow }: PumpStage): readonly Finding[] {
  if (pump?.candidates === undefined || candidates.some(({ name, suits }) => suits && name === chosen?.name)) return [];
  const [nearest] = candidates;
  const [first] = nearest?.faults ?? [];
  const why = nearest?.faults.map(({ reason }) => reason).join(", and ") ?? "";
  return [
    {
      code: "no-pump-suits",
      severity: "stop",
      stage: "pump",
      subject: nearest?.name ?? "the pumps listed",
      message:
        chosen === null
          ? `None of the pumps listed does the job. The nearest ${why}.`
          : `The pump does not do the job: it ${why}.`,
      value: first?.value ?? measure("flow", 0),
      limit: first?.limit ?? measure("flow", dutyFlow),
      basis: { kind: "derived", locator: "operating point in this well" },
      remedy:
        "Look for a pump that gives the duty flow at the duty head with room to spare, or lower the switch setting.",
    },
  ];
}

function chosenFindings(
  job: Job,
  chosen: ChosenPump,
  { candidate, curve }: NonNullable<PumpWork["pump"]>,
): readonly Finding[] {
  const { controls } = job;
  const { cooling } = chosen;
  const base = { stage: "pump", subject: chosen.name } as const;
  return [
    ...finding({
      ...base,
      code: "cannot-reach-cut-out",
      kind: "pressure",
      value: chosen.shutoffPressure,
      limit: controls.cutOut,
      wrong: "at or below",
      severity: "stop",
      message: "Even against a closed valve the pump makes less than the cut-out: it would run for ever.",
      remedy: "Lower the cut-out or take a pump of more stages.",
      basis: { kind: "derived", locator: "shutoff head less lift" },
    }),
    ...(cooling.sleeve === "not needed"
      ? []
      : finding({
          ...base,
          code: "motor-cooling",
          kind: "velocity",
          value: cooling.velocity,
          limit: cooling.leastVelocity,
          wrong: "below",
          severity: "fix",
          message: "Water passes the motor too slowly to cool it at the least flow it runs long at.",
          remedy: "Fit a flow sleeve over the motor, no wider than the plan says.",
          basis: PRACTICE,
        })),
    ...finding({
      ...base,
      code: "tight-in-casing",
      kind: "diameter",
      value: job.well.casingInsideDiameter - candidate.diameter,
      limit: LEAST_CLEARANCE,
      wrong: "below",
      severity: "look",
      message: "The pump fits the casing tightly: a bend, a weld or scale can catch it on the way down.",
      remedy: "Run a gauge of the pump's size down the casing first, or take a slimmer pump.",
      basis: PRACTICE,
    }),
    ...bestEfficiencyFindings(base, job, chosen, curve),
  ];
}

function motorFindings(
  { atCutIn }: ChosenPump,
  { candidate, curve }: NonNullable<PumpWork["pump"]>,
  lift: Lift,
): readonly Finding[] {
  const { motor, name } = candidate;
  const most = greatestShaftPower(lift, curve, atCutIn?.flow ?? 0);
  if (most === null) return [];
  return finding({
    code: "motor-overloaded",
    stage: "pump",
    subject: name,
    kind: "motorPower",
    value: most,
    limit: motor.power * (motor.serviceFactor ?? 1),
    wrong: "above",
    severity: "fix",
    message: "At some flow the pump asks more of its motor than the plate allows.",
    remedy: "Check the pump's sheet for the motor that belongs to it; take the next motor up.",
    basis: { kind: "given", locator: "motor plate" },
  });
}

/** Where the pump works against its best flow: the least it runs long at, and the most. */
function bestEfficiencyFindings(
  base: { readonly stage: "pump"; readonly subject: string },
  job: Job,
  chosen: ChosenPump,
  curve: PumpCurve,
): readonly Finding[] {
  const basis: Basis = { kind: "published", source: "ansi-hi-9.6.3", locator: "preferred region, recalled" };
  const share = (flow: VolumeFlow): number | null => pumpDuty({ curve, flow }).bestFraction;
  const least = share(Math.min(leastUsedFlow(job, chosen), curve.runoutFlow) as VolumeFlow);
  const most = chosen.atCutIn === null ? null : share(chosen.atCutIn.flow);
  return [
    ...(least === null
      ? []
      : finding({
          ...base,
          code: "far-left-of-best",
          kind: "ratio",
          value: least,
          limit: NEAR_BEST,
          wrong: "below",
          severity: "look",
          message:
            "At the least flow it runs long at, the pump works well left of its best flow: it wastes power there.",
          remedy: "A pump of a smaller flow class may cost less to run.",
          basis,
        })),
    ...(most === null
      ? []
      : finding({
          ...base,
          code: "upthrust",
          kind: "ratio",
          value: most,
          limit: UPTHRUST,
          wrong: "above",
          severity: "fix",
          message:
            "At cut-in the pump works far right of its best flow, where its shaft is lifted off the thrust bearing.",
          remedy: "Throttle the pump, raise the switch setting, or take a pump of a larger flow class.",
          basis,
        })),
  ];
}
