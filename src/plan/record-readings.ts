/**
 * The readings of a record as the diagnosis takes them.
 *
 * @module
 */
import type { DiagnosisReading, ReadingKind, YardRun } from "../field/index.ts";
import { STANDARD_GRAVITY } from "../numeric/index.ts";
import type { GaugePressure, Length } from "../units/index.ts";
import type { Job } from "./job.ts";
import { elevations, tankElevation } from "./layout-solve.ts";
import type { AsBuiltRecord, RecordedReading } from "./record.ts";
import type { PlanStages, SourcePlan } from "./stages.ts";

/** A reading of the record that the diagnosis took. */
export interface UsedReading extends DiagnosisReading {
  /** Its code on the sheet. */
  readonly code: string;
}

/** A reading of the record that was taken and left out. */
export interface UnusedReading {
  /** Its code on the sheet. */
  readonly code: string;
  /** Why. */
  readonly reason: string;
}

/** The readings, sorted out. */
export interface SortedReadings {
  readonly used: readonly UsedReading[];
  readonly leftOut: readonly UnusedReading[];
  /** The line to the outlet whose pressure is used, where one is. */
  readonly yard: YardRun | null;
}

/** What the readings are sorted out by. */
export interface ReadingsBasis {
  readonly job: Job;
  readonly stages: PlanStages;
  readonly record: AsBuiltRecord;
}

/** Readings that the sheet and the diagnosis have in common. */
const SAME: Readonly<Record<string, ReadingKind>> = {
  "static-level": "static level",
  precharge: "precharge",
  "flow-at-cut-in": "flow",
  "pumping-level": "pumping level",
  "cut-in": "cut-in",
  "cut-out": "cut-out",
  "shutoff-pressure": "shutoff pressure",
  "pressure-fall": "pressure fall",
};
/** The narrower side of a band is taken as two standard uncertainties: about 95 % (`jcgm-100`, 6.3.3). */
const SIDE_IN_UNCERTAINTIES = 2;
/** Standard uncertainty of what lies anywhere between two ends, as a share of their distance: 1/√12 (`jcgm-100`, 4.3.7). */
const ANYWHERE = 1 / Math.sqrt(12);
/** Least standard uncertainty, as a share of what is expected, or in SI where nothing is. */
const LEAST_UNCERTAINTY = 1e-3;

/** Least head lost in a line, m, that a gauge can say anything of. Common practice. */
const LEAST_LOSS = 1e-3;

/** A reading that was taken. */
interface Taken extends RecordedReading {
  readonly measured: number;
}

/** Sorts the readings of a record into those the diagnosis can take and the others. */
export function sortReadings({ job, stages, record }: ReadingsBasis): SortedReadings {
  const taken = new Map(
    record.readings
      .filter((reading): reading is Taken => reading.measured !== null)
      .map((reading) => [reading.code, reading]),
  );
  const used: UsedReading[] = [];
  const take = (reading: Taken, kind: ReadingKind): void => {
    used.push({ code: reading.code, kind, value: reading.measured, standardUncertainty: uncertaintyOf(reading) });
  };
  for (const [code, kind] of Object.entries(SAME)) {
    const reading = taken.get(code);
    if (reading !== undefined) take(reading, kind);
  }
  const bucket = taken.get("bucket-time");
  const planned = record.readings.find(({ code }) => code === "flow-at-cut-in")?.expected.value;
  if (bucket !== undefined && planned !== undefined && !taken.has("flow-at-cut-in"))
    used.push(flowOfBucket(bucket, planned));
  const fill = taken.get("tank-fill");
  if (fill !== undefined && !valveHolds(stages)) take(fill, "fill time");
  const current = taken.get("running-current");
  if (current !== undefined && current.measured > current.expected.value) take(current, "current");
  const held = regulatedUses(stages)
    .map((name) => taken.get(`held-${name}`))
    .find((reading) => reading !== undefined);
  if (held !== undefined) take(held, "regulated pressure");
  const sources = stages.power?.sources ?? [];
  const voltage = sources
    .map(({ name }) => taken.get(`running-voltage-${name}`))
    .find((reading) => reading !== undefined);
  if (voltage !== undefined) take(shareOfFirstSource(voltage, sources), "voltage");
  const far = farFlow(job, stages, taken);
  if (far !== null) used.push(far.reading);

  const codes = new Set(used.map(({ code }) => code));
  return {
    used,
    leftOut: [...taken.keys()]
      .filter((code) => !codes.has(code))
      .map((code) => ({ code, reason: reasonLeftOut(code, stages) })),
    yard: far?.yard ?? null,
  };
}

/** Whether a valve holds a pressure below cut-out: it then throttles the filling too, which the diagnosis does not know. */
export function valveHolds({ controls }: PlanStages): boolean {
  return controls.setPressure !== null && controls.setPressure < controls.cutOut;
}

function uncertaintyOf({ low, high, expected }: RecordedReading): number {
  const u = Math.min(high.value - expected.value, expected.value - low.value) / SIDE_IN_UNCERTAINTIES;
  return u > 0 ? u : Math.max(LEAST_UNCERTAINTY * Math.abs(expected.value), LEAST_UNCERTAINTY);
}

/** The flow that filled the bucket: what the sheet expects of both is the same bucket. */
function flowOfBucket(bucket: Taken, planned: number): UsedReading {
  const value = (planned * bucket.expected.value) / bucket.measured;
  // A bucket that takes for ever leaves no flow, and no uncertainty in the first order.
  const standardUncertainty = Math.max((value * uncertaintyOf(bucket)) / bucket.measured, LEAST_UNCERTAINTY * planned);
  return { code: bucket.code, kind: "flow", value, standardUncertainty };
}

/**
 * Names of the uses in which the valve throttles, least flow first: where a weak pump holds a pressure longest, it is the valve's
 * alone. Wide open it holds nothing: the pressure is then the pump's.
 */
function regulatedUses({ controls }: PlanStages): readonly string[] {
  return controls.held
    .filter(({ held }) => held.state === "holds" && held.mode === "regulating")
    .sort((a, b) => a.flow - b.flow)
    .map(({ use }) => use);
}

/** The voltage of whichever source was read, as the first source would show the same share of its own. */
function shareOfFirstSource(reading: Taken, [first]: readonly SourcePlan[]): Taken {
  const scale = (first as SourcePlan).voltage / reading.expected.value;
  const scaled = ({ kind, value }: RecordedReading["low"]) => ({ kind, value: value * scale });
  return {
    ...reading,
    measured: reading.measured * scale,
    low: scaled(reading.low),
    expected: scaled(reading.expected),
    high: scaled(reading.high),
  };
}

/**
 * The pressure read at an outlet, as the flow that the outlet would take, opened as wide as the plan has it: the diagnosis
 * reads yard lines by flow. One outlet is used: of a use it has to itself before others, then the one with most lost on the
 * way, which shows a tight line best.
 */
function farFlow(
  job: Job,
  stages: PlanStages,
  taken: ReadonlyMap<string, Taken>,
): { readonly reading: UsedReading; readonly yard: YardRun } | null {
  const { density } = stages.site.water;
  const places = elevations(job);
  // Plainly so: an outlet the plan cannot reach has a pressure no gauge shows.
  const head = (pressure: number): number => pressure / (density * STANDARD_GRAVITY);
  const found = stages.layout.uses.flatMap(({ name, outlets }) => {
    const held = heldDuring(name, stages, taken);
    if (held === null) return [];
    return outlets.flatMap((outlet) => {
      const reading = taken.get(`outlet-${name}-${outlet.name}`);
      const place = places.get(job.outlets.find((each) => each.name === outlet.name)?.at ?? "");
      if (reading === undefined || place === undefined) return [];
      const rise = place - tankElevation(job);
      const planned = head(held.planned) - rise - head(outlet.pressureHeld);
      return [{ reading, outlet, held, rise, planned, alone: outlets.length === 1 }];
    });
  });
  found.sort((a, b) => Number(b.alone) - Number(a.alone) || b.planned - a.planned);
  const best = found.find(({ outlet, planned }) => planned > LEAST_LOSS && outlet.pressureHeld > 0);
  if (best === undefined) return null;
  const { reading, outlet, held, rise, planned } = best;
  const open = head(outlet.pressureHeld);
  const over = head(held.measured) - rise;
  const lost = over - head(reading.measured);
  // With the line as it was found, lost + open is what would be taken at the planned flow.
  if (!(over > LEAST_LOSS && lost + open > LEAST_LOSS)) return null;
  const value = outlet.flow * Math.sqrt(over / (lost + open));
  const u = head(Math.hypot(uncertaintyOf(reading), held.uncertainty));
  return {
    reading: {
      code: reading.code,
      kind: "far flow",
      at: held.measured as GaugePressure,
      value,
      standardUncertainty: Math.max((0.5 * value * u) / (lost + open), LEAST_UNCERTAINTY * outlet.flow),
    },
    yard: {
      rise: rise as Length,
      loss: { flow: outlet.flow, headLoss: planned as Length },
      outlet: { flow: outlet.flow, headLoss: open as Length },
    },
  };
}

/** Pressure at the tank while an outlet was read: behind a valve as read; without one anywhere the switch lets it be. */
function heldDuring(
  use: string,
  stages: PlanStages,
  taken: ReadonlyMap<string, Taken>,
): { readonly planned: number; readonly measured: number; readonly uncertainty: number } | null {
  const { cutIn, cutOut } = stages.controls;
  if (!valveHolds(stages))
    return { planned: cutIn, measured: (cutIn + cutOut) / 2, uncertainty: (cutOut - cutIn) * ANYWHERE };
  const reading = taken.get(`held-${use}`);
  return reading === undefined
    ? null
    : { planned: reading.expected.value, measured: reading.measured, uncertainty: uncertaintyOf(reading) };
}

/** Why a reading that was taken is not used. */
function reasonLeftOut(code: string, stages: PlanStages): string {
  if (code === "bucket-time") return "The same test as the flow at cut-in.";
  if (code === "tank-fill" && valveHolds(stages))
    return "The valve throttles the filling, which the diagnosis does not reckon with.";
  if (code === "tank-draw")
    return "The diagnosis has no reading of its kind; precharge and switch points say the same.";
  if (code === "running-current") return "A pump lightly loaded draws less than its plate: only more would tell.";
  if (code.startsWith("held-")) return "The use of least flow in which the valve throttles speaks for it.";
  if (code.startsWith("running-voltage-")) return "Another source speaks for the voltage.";
  if (code.startsWith("outlet-"))
    return "One outlet speaks for the yard: alone in its use, with most lost on the way, the pressure at the tank known.";
  return "The diagnosis has no reading of its kind.";
}
