/**
 * What is wrong: explanations ranked by how well each predicts all the readings at once.
 *
 * @module
 */
import { requireList, requireObject } from "../numeric/index.ts";
import { authorityCaution, mainsCautions, pressureCautions } from "./cautions.ts";
import { type Cause, causesOf } from "./diagnosis-causes.ts";
import { requirePlant, requireReading } from "./diagnosis-input.ts";
import { type Fault, modelUncertainty, predict } from "./diagnosis-model.ts";
import type { Diagnosis, DiagnosisPlant, DiagnosisReading, Explanation } from "./diagnosis-types.ts";
import { fitResiduals } from "./fit-residuals.ts";
import { nextReading } from "./next-reading.ts";

/** The plant and its readings. */
export interface DiagnoseInput {
  /** The plant as it should be. */
  readonly plant: DiagnosisPlant;
  /** The readings; 1 to 100. */
  readonly readings: readonly DiagnosisReading[];
}

/**
 * Weights further apart than 10 to 1 tell; less does not. Ten is what is commonly called strong evidence (`kass-raftery-1995`).
 */
const TELLING = 10;
/** A misfit this many of its own standard deviations over the number of readings is still what chance makes. */
const USUAL = 2;
/** A misfit this many of its own standard deviations over the number of readings fits nothing. */
const UNFIT = 5;

/**
 * Ranks explanations of a plant's readings.
 *
 * @remarks
 * Each explanation is the plant's physical model with one or two figures free, fitted to all readings together by least
 * squares of (read − predicted)/u. Weights are e^(−B/2), B = misfit + k ln n + 2 m ln 2 with k figures, m of them free
 * to go either way, and n readings, so that a second figure or a wider one must earn its place. Where the plan itself
 * fits as chance would have it and nothing outweighs it ten to one, the answer is "as planned". Two explanations that
 * predict the same readings share the weight, and the answer is then "cannot tell". One fault at a time: with two at
 * once the best may be wrong or none may fit. Leaks are taken half way down to the water; a reversed pump as one that
 * makes 0.3 to 0.75 of its head and flow (common practice); wear as taking a fifth to half as much again of the share of flow
 * off the head (common practice), which is what the shutoff pressure tells it from a clog by. A valve part closed in the yard reads as an undersized run.
 *
 * @param input - plant and readings; each field says its unit and range
 * @returns the explanations, best first, whether they can be told apart, and the next reading to take
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example Little water at a good level and with a tight line
 * ```ts
 * import { diagnose } from "risingmain/field";
 * import { pumpCurve } from "risingmain/pump";
 * import { amperes, feet, gpm, kilogramsPerCubicMetre, psi, standardAtmospheres, usGallons, volts } from "risingmain/units";
 *
 * const plant = {
 *   pump: pumpCurve({
 *     points: [[0, 330], [6, 300], [12, 220], [18, 90]].map(([q = 0, h = 0]) => ({ flow: gpm(q), head: feet(h) })),
 *   }),
 *   well: { staticLevel: feet(80), law: { aquiferLoss: feet(1) / gpm(1), wellLoss: 0 } },
 *   rise: feet(3), mainLoss: { flow: gpm(10), headLoss: feet(8) }, cutIn: psi(40), cutOut: psi(60),
 *   tank: { volume: usGallons(85), precharge: psi(38), atmosphere: standardAtmospheres(1) },
 *   density: kilogramsPerCubicMetre(999.7), voltage: volts(230), current: amperes(9),
 * };
 * const answer = diagnose({
 *   plant,
 *   readings: [
 *     { kind: "static level", value: feet(80), standardUncertainty: feet(0.5) },
 *     { kind: "flow", at: psi(40), value: gpm(6.3), standardUncertainty: gpm(0.15) },
 *     { kind: "flow", at: psi(60), value: gpm(2.9), standardUncertainty: gpm(0.1) },
 *     { kind: "shutoff pressure", value: psi(71), standardUncertainty: psi(1) },
 *     { kind: "pressure fall", value: psi(0.1), standardUncertainty: psi(0.5) },
 *   ],
 * });
 * answer.explanations[0]?.cause; // => "worn pump"
 * ```
 *
 * @source derived: least squares on the plant's own model
 * @source schwarz-1978: the price of a free figure
 * @source kass-raftery-1995: ten to one
 */
export function diagnose(input: DiagnoseInput): Diagnosis {
  requireObject("input", input);
  const { plant, readings } = input;
  requirePlant(plant);
  requireList("readings", readings, 1, 100);
  readings.forEach((reading, i) => {
    requireReading(plant, reading, `readings[${i}]`);
  });

  const fits = causesOf(plant).map((cause) => fitted(plant, cause, readings));
  const least = Math.min(...fits.map(({ score }) => score));
  const sum = fits.reduce((total, { score }) => total + Math.exp((least - score) / 2), 0);
  const ranked = [...fits].sort((a, b) => a.score - b.score);
  const explanations = ranked.map(({ cause, values, misfit, fault, score }): Explanation => {
    return {
      cause: cause.cause,
      fitted: cause.free.map(({ name }, i) => ({ name, value: values[i] as number })),
      misfit,
      weight: Math.exp((least - score) / 2) / sum,
      residuals: readings.map((reading) => {
        const predicted = predict(plant, fault, reading);
        const inUncertainties = (reading.value - predicted) / doubt(plant, reading);
        return { kind: reading.kind, read: reading.value, predicted, inUncertainties };
      }),
    };
  });
  const [first, second] = ranked as [Fitted, Fitted];
  const n = readings.length;
  const telling = 2 * Math.log(TELLING);
  const scatter = Math.sqrt(2 * n);
  const planned = ranked.find(({ cause }) => cause.cause === "as planned") as Fitted;
  const sound = planned.misfit <= n + USUAL * scatter && planned.score - first.score <= telling;
  return {
    state: sound
      ? "as planned"
      : first.misfit > n + UNFIT * scatter
        ? "none fits"
        : second.score - first.score > telling
          ? "told"
          : "cannot tell",
    explanations,
    next: nextReading(plant, readings, first.fault, second.fault),
    method: "schwarz-1978",
    cautions: [authorityCaution, ...pressureCautions, ...mainsCautions],
  };
}

/** Uncertainty of a reading, with that of the model beside it. */
function doubt(plant: DiagnosisPlant, reading: DiagnosisReading): number {
  return Math.hypot(reading.standardUncertainty, modelUncertainty(plant, reading));
}

interface Fitted {
  readonly cause: Cause;
  readonly values: readonly number[];
  readonly fault: Fault;
  readonly misfit: number;
  readonly score: number;
}

function fitted(plant: DiagnosisPlant, cause: Cause, readings: readonly DiagnosisReading[]): Fitted {
  const residuals = (values: readonly number[]): readonly number[] => {
    const fault = cause.fault(values);
    return readings.map((reading) => (reading.value - predict(plant, fault, reading)) / doubt(plant, reading));
  };
  const { values, least } = fitResiduals(residuals, cause.free);
  // A figure that may go either way has twice the room: half the evidence.
  const eitherWay = cause.free.filter(({ low, high }) => low < 0 && high > 0).length;
  return {
    cause,
    values,
    fault: cause.fault(values),
    misfit: least,
    score: least + cause.free.length * Math.log(readings.length) + eitherWay * 2 * Math.LN2,
  };
}
