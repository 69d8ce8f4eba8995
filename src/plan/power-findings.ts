/**
 * The circuit and its sources against drop, ampacity, voltage, phase and the generator's margins.
 *
 * @module
 */
import { type ConductorSize, conductorAmpacity, conductorGeometry, parseConductorSize } from "../conductor/index.ts";
import { type GeneratorChecked, type GeneratorMargin, type Receptacle, receptacleRatings } from "../generator/index.ts";
import { type Basis, type Finding, PRACTICE } from "./finding.ts";
import { finding } from "./findings.ts";
import type { Job, JobMotor, JobPower } from "./job.ts";
import type { MeasureKind } from "./measure.ts";
import { USUAL_DROP, USUAL_WIRE } from "./power-stage.ts";
import { phases } from "./pump-stage.ts";
import type { PowerStage, SourcePlan } from "./stages.ts";

/** A motor runs within 10 % of its rated voltage (`nema-mg-1`). */
const VOLTAGE_TOLERANCE = 0.1;
/** Most drop as a motor starts: 15 %, common practice. */
const MOST_STARTING_DROP = 0.15;
/** Below this share of its rated voltage a motor does not start: common practice, as for generators. */
const LEAST_STARTING_SHARE = 0.65;

/** Everything that stands against the circuit or a source, and what each generator has left. */
export function powerFindings(job: Job, motor: JobMotor, stage: PowerStage): readonly Finding[] {
  return [...cableFindings(job, stage), ...stage.sources.flatMap((source) => sourceFindings(source, motor))];
}

function cableFindings({ power }: Job, stage: PowerStage): readonly Finding[] {
  const { cables, dropShare, conductorAmpacity: needed } = stage;
  const { mostVoltageDrop = USUAL_DROP } = power;
  return [
    ...protectionFindings(power, stage),
    ...finding({
      code: "voltage-drop",
      stage: "power",
      kind: "ratio",
      value: dropShare,
      limit: mostVoltageDrop,
      wrong: "above",
      severity: "fix",
      message: "The cables lose more voltage while running than they should: the motor runs hot and starts badly.",
      remedy: "Take thicker conductors.",
      basis:
        power.mostVoltageDrop === undefined
          ? { kind: "published", source: "nfpa-70", locator: "210.19(A) note, 5 % in all" }
          : { kind: "given", locator: "most voltage drop" },
    }),
    ...cables.flatMap(({ name, size, material }) => {
      const { ampacity } = conductorAmpacity({ size: parseConductorSize(size), material, ...USUAL_WIRE });
      return finding({
        code: "ampacity",
        stage: "power",
        subject: name,
        kind: "current",
        value: ampacity,
        limit: needed,
        wrong: "below",
        severity: "stop",
        message: "The conductor carries less than the code asks for this motor: it overheats.",
        remedy: "Take the next size up that carries it.",
        basis: { kind: "published", source: "nfpa-70", locator: "430.22, 110.14(C) and Table 310.16" },
      });
    }),
  ];
}

/** The breaker and the grounding conductor the job gives, against the code. */
function protectionFindings({ breaker, groundingSize }: JobPower, stage: PowerStage): readonly Finding[] {
  const least = parseConductorSize(stage.groundingSize);
  const area = (size: ConductorSize): number => conductorGeometry(size).area;
  const published = (locator: string): Basis => ({ kind: "published", source: "nfpa-70", locator });
  return [
    ...(breaker === undefined
      ? []
      : [
          ...finding({
            code: "breaker-too-large",
            stage: "power",
            kind: "current",
            value: breaker,
            limit: stage.highestBreaker,
            wrong: "above",
            severity: "stop",
            message: "The breaker is larger than the code permits for this motor: a fault would not trip it in time.",
            remedy:
              "Take a breaker of the rating permitted; a larger one only where the motor will not start and the code allows.",
            basis: published("430.52"),
          }),
          ...finding({
            code: "breaker-too-small",
            stage: "power",
            kind: "current",
            value: breaker,
            limit: stage.fullLoadCurrent,
            wrong: "at or below",
            severity: "fix",
            message: "The breaker is rated at or below the running current: it trips while the pump runs.",
            remedy: "Take the next standard rating above the conductors' need.",
            basis: { kind: "derived", locator: "full-load current" },
          }),
        ]),
    ...(groundingSize === undefined
      ? []
      : finding({
          code: "grounding-too-thin",
          stage: "power",
          kind: "conductorArea",
          value: area(parseConductorSize(groundingSize)),
          limit: area(least),
          wrong: "below",
          severity: "stop",
          message: "The equipment grounding conductor is thinner than the code asks.",
          remedy:
            "Take the size the plan says; where drop enlarged the conductors, the grounding conductor grows with them.",
          basis: published("Table 250.122 and 250.122(B)"),
        })),
  ];
}

function sourceFindings(source: SourcePlan, motor: JobMotor): readonly Finding[] {
  const base = { stage: "power", subject: source.name } as const;
  const tolerance: Basis = { kind: "published", source: "nema-mg-1", locator: "12.44, 10 % of rated voltage" };
  if (source.phase !== motor.phase) {
    return finding({
      ...base,
      code: "wrong-phase",
      kind: "count",
      value: phases(source.phase),
      limit: phases(motor.phase),
      wrong: source.phase === "three-phase" ? "above" : "below",
      severity: "stop",
      message: "The source's phases are not the motor's.",
      remedy: "Take a motor for the supply, or a drive made to feed it.",
      basis: { kind: "given", locator: "motor plate" },
    });
  }
  const wrongVoltage = [
    ...finding({
      ...base,
      code: "source-voltage-low",
      kind: "voltage",
      value: source.voltage,
      limit: motor.voltage * (1 - VOLTAGE_TOLERANCE),
      wrong: "below",
      severity: "stop",
      message: "The source's voltage is too low for the motor.",
      remedy: "Take a motor for the supply.",
      basis: tolerance,
    }),
    ...finding({
      ...base,
      code: "source-voltage-high",
      kind: "voltage",
      value: source.voltage,
      limit: motor.voltage * (1 + VOLTAGE_TOLERANCE),
      wrong: "above",
      severity: "stop",
      message: "The source's voltage is too high for the motor.",
      remedy: "Take a motor for the supply.",
      basis: tolerance,
    }),
  ];
  if (wrongVoltage.length > 0) return wrongVoltage;
  return [
    ...finding({
      ...base,
      code: "motor-voltage-low",
      kind: "voltage",
      value: source.runningVoltage,
      limit: motor.voltage * (1 - VOLTAGE_TOLERANCE),
      wrong: "below",
      severity: "fix",
      message: "While running, the motor has less voltage than it is made for.",
      remedy: "Take thicker conductors.",
      basis: tolerance,
    }),
    ...finding({
      ...base,
      code: "starting-drop",
      kind: "voltage",
      value: source.startingVoltage,
      limit: source.voltage * (1 - MOST_STARTING_DROP),
      wrong: "below",
      severity: source.startingVoltage < motor.voltage * LEAST_STARTING_SHARE ? "stop" : "look",
      message: "As it starts, the cables alone take more voltage than is usual.",
      remedy: "Take thicker conductors: with too little voltage the motor does not start, and burns out trying.",
      basis: PRACTICE,
    }),
    ...(source.generator !== null &&
    "receptacle" in source.generator &&
    source.generator.receptacle?.state === "voltage too high"
      ? finding({
          ...base,
          code: "receptacle-voltage",
          kind: "voltage",
          value: source.voltage,
          limit: receptacleVoltage(source.receptacle),
          wrong: "above",
          severity: "stop",
          message: "The receptacle is not made for the source's voltage.",
          remedy: "Use a receptacle and cord made for the voltage.",
          basis: { kind: "published", source: "nema-wd-6" },
        })
      : []),
    ...(source.generator === null || !("margins" in source.generator)
      ? []
      : generatorFindings(source.name, source.generator)),
  ];
}

/** Highest voltage of a receptacle by its designation. */
function receptacleVoltage(receptacle: Receptacle | null): number {
  return receptacle === null ? 0 : receptacleRatings[receptacle].voltage;
}

interface MarginWords {
  readonly code: string;
  readonly kind: MeasureKind;
  readonly message: string;
}

/** How each of the generator's checks is said when it fails. */
export const MARGINS: Readonly<Record<GeneratorMargin["check"], MarginWords>> = {
  "starting power": {
    code: "generator-starting-power",
    kind: "power",
    message: "The generator cannot give the power of the start.",
  },
  "starting apparent power": {
    code: "generator-starting-current",
    kind: "apparentPower",
    message: "The start asks more volt-amperes than the generator gives for a surge.",
  },
  "voltage dip": {
    code: "generator-dip",
    kind: "ratio",
    message: "The generator's voltage dips too far as the pump starts.",
  },
  "starting voltage": {
    code: "generator-starting-voltage",
    kind: "ratio",
    message: "On the generator the motor has too little voltage to start.",
  },
  "running power": {
    code: "generator-running-power",
    kind: "power",
    message: "Running the pump takes more than the generator may give for hours.",
  },
  "running apparent power": {
    code: "generator-running-current",
    kind: "apparentPower",
    message: "Running the pump takes more volt-amperes than the generator may give for hours.",
  },
  "running voltage": {
    code: "generator-running-voltage",
    kind: "ratio",
    message: "On the generator the running motor has too little voltage.",
  },
  receptacle: {
    code: "receptacle-current",
    kind: "current",
    message: "The pump draws more than the receptacle may carry for hours.",
  },
};

function generatorFindings(name: string, { margins, state, tightest }: GeneratorChecked): readonly Finding[] {
  const failed = margins
    .filter(({ margin }) => margin < 0)
    .map(({ check, value, limit }): Finding => {
      const { code, kind, message } = MARGINS[check];
      return {
        code,
        severity: check.startsWith("starting") || check === "voltage dip" ? "stop" : "fix",
        stage: "power",
        subject: name,
        message,
        value: { kind, value },
        limit: { kind, value: limit },
        basis: PRACTICE,
        remedy:
          check === "receptacle"
            ? "Use a receptacle and cord of a higher rating."
            : "Take a larger generator, or turn off other loads before the pump starts.",
      };
    });
  if (state !== "starts and runs") return failed;
  const { kind } = MARGINS[tightest.check];
  return [
    {
      code: "generator-starts-and-runs",
      severity: "good",
      stage: "power",
      subject: name,
      message: `The generator starts the pump and runs it. The tightest of its margins, in proportion to its limit, is the ${tightest.check}.`,
      value: { kind, value: tightest.value },
      limit: { kind, value: tightest.limit },
      basis: PRACTICE,
      remedy: "",
    },
  ];
}
