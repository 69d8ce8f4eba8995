/**
 * What is wrong with a plant whose record is not in order: the job says what should be, the record what is.
 *
 * @module
 */
import { type Diagnosis, type DiagnosisPlant, type DiagnosisReading, diagnose } from "../field/index.ts";
import { requireList, requireObject } from "../numeric/index.ts";
import { InputError } from "../units/index.ts";
import { diagnosisPlantOf } from "./diagnosis-plant.ts";
import type { Job } from "./job.ts";
import { planSystem } from "./plan-system.ts";
import { checkedRecord } from "./read-record.ts";
import type { AsBuiltRecord } from "./record.ts";
import { sortReadings, type UnusedReading, type UsedReading, valveHolds } from "./record-readings.ts";

/** A job, its record, and what was read since. */
export interface DiagnoseRecordInput {
  /** The job the record belongs to, from {@link readJob}. */
  readonly job: Job;
  /** The record, from {@link asBuiltRecord} or {@link readRecord}; its name must be the job's. */
  readonly record: AsBuiltRecord;
  /** Readings beyond the sheet, such as the one a first diagnosis asks for. At most 50. */
  readonly further?: readonly DiagnosisReading[];
}

/** The diagnosis of a record. */
export type RecordDiagnosis =
  | {
      /** The record was diagnosed; what was found is in `diagnosis`. */
      readonly state: "diagnosed";
      /** Explanations, best first; whether they can be told apart; the next reading. */
      readonly diagnosis: Diagnosis;
      /** The plant as it should be. */
      readonly plant: DiagnosisPlant;
      /** The readings of the record that were used. */
      readonly used: readonly UsedReading[];
      /** The readings of the record that were taken and left out, with the reason. */
      readonly leftOut: readonly UnusedReading[];
    }
  | {
      /** The record cannot be diagnosed. */
      readonly state: "cannot be diagnosed";
      /** Why. */
      readonly reason: string;
      /** The readings of the record that were taken. */
      readonly leftOut: readonly UnusedReading[];
    };

/**
 * Ranks what could be wrong with a plant, from its job and its as-built record as it is.
 *
 * @remarks
 * The plan is made again from the job; pump curve, well, switch, tank, water and motor pass to {@link field.diagnose} unchanged.
 * The loss from pump to tank is the plan's at the flow at cut-in. Assumed: the narrower side of a band is two standard
 * uncertainties; flow and pumping level were read with the gauge at the planned cut-in; the source that was read fed the pump
 * all the while and lost as large a share on its way as the plan says; the least use that a valve throttles shows what it holds;
 * without one the tank stood anywhere between cut-in and cut-out while an outlet was read. A pressure read at an outlet becomes
 * the flow it would take, open as wide as planned. A current below full load says nothing and is left out; so are volumes drawn,
 * and the filling of a tank behind a valve. The sheet has one point of the pump's curve: worn pump, clogged main and leak then
 * look alike, and the answer says "cannot tell" and which reading to take; give it as `further`.
 *
 * @param input - job, record and further readings
 * @returns the diagnosis with the readings used and left out, or why there is none
 * @throws {@link JobError} (an InputError) where job or record are none, InputError where they do not belong together
 *
 * @example The water has fallen
 * ```ts
 * import { asBuiltRecord, diagnoseRecord, planSystem, readJob, sampleJob } from "risingmain/plan";
 * import { feet, gpm, psi } from "risingmain/units";
 *
 * const job = readJob(sampleJob);
 * const record = asBuiltRecord({
 *   plan: planSystem(job),
 *   readings: { "static-level": feet(62), "pumping-level": feet(89), "flow-at-cut-in": gpm(9.3), "cut-in": psi(30) },
 * });
 * const answer = diagnoseRecord({ job, record });
 * answer.state === "diagnosed" ? answer.diagnosis.explanations[0]?.cause : answer.reason; // => "low well level"
 * ```
 *
 * @source derived: the plan's own model, fitted by the field module
 */
export function diagnoseRecord(input: DiagnoseRecordInput): RecordDiagnosis {
  requireObject("input", input);
  const { further = [] } = input;
  const record = checkedRecord(input.record);
  requireList("further", further, 0, 50);
  const { job } = input;
  const { name, stages } = planSystem(job);
  if (record.name !== name) throw new InputError("record.name", record.name, `the record of the job "${name}"`);
  const throttled = valveHolds(stages);
  for (const [i, reading] of further.entries()) {
    requireObject(`further[${i}]`, reading);
    if (throttled && reading.kind === "fill time")
      throw new InputError(`further[${i}].kind`, reading.kind, "another kind: behind a valve the filling is throttled");
  }
  const { used, leftOut, yard } = sortReadings({ job, stages, record });
  const without = (reason: string): RecordDiagnosis => ({
    state: "cannot be diagnosed",
    reason,
    leftOut: [...used.map(({ code }) => ({ code, reason })), ...leftOut],
  });
  const sound = diagnosisPlantOf(job, stages);
  if (sound === null) return without("The plan has no pump.");
  if (sound.pump.shape !== "falling") return without("The pump's curve does not fall all the way.");
  const plant = yard === null ? sound : { ...sound, yard };
  const readings = [...used.map(({ code: _, ...reading }): DiagnosisReading => reading), ...further];
  if (readings.length === 0) return without("The record holds no reading that the diagnosis takes.");
  const diagnosis = diagnose({ plant, readings });
  // A reading that could not be used must not be asked for.
  const next = throttled && diagnosis.next?.kind === "fill time" ? null : diagnosis.next;
  return { state: "diagnosed", diagnosis: { ...diagnosis, next }, plant, used, leftOut };
}
