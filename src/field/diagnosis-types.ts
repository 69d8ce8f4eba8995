/**
 * What a diagnosis is told and what it answers: the plant as it should be, the readings, the explanations.
 *
 * @module
 */
import type { PumpCurve } from "../pump/index.ts";
import type { Caution } from "../sources/index.ts";
import type { MainLossPoint, WellInService } from "../system/index.ts";
import type { AirCharge } from "../tank/index.ts";
import type { Current, Density, Duration, GaugePressure, Length, Voltage } from "../units/index.ts";

/** The line from the gauge to the far outlet, standing open. */
export interface YardRun {
  /** Loss in it at one flow; it grows as the square. Flow above 0. */
  readonly loss: MainLossPoint;
  /** Rise from the gauge to the outlet; negative where it lies lower. −1000 to 1000 m. */
  readonly rise: Length;
  /** Head that the open outlet takes at one flow; it grows as the square. */
  readonly outlet: MainLossPoint;
}

/** The plant as it should be. */
export interface DiagnosisPlant {
  /** The pump's curve; it must fall all the way. */
  readonly pump: PumpCurve;
  /** The well: static level and drawdown law. */
  readonly well: WellInService;
  /** Height of the gauge over the datum of the well's depths. −1000 to 1000 m. */
  readonly rise: Length;
  /** Loss from pump to gauge at one flow; it grows as the square. Flow above 0. */
  readonly mainLoss: MainLossPoint;
  /** Gauge pressure at which the switch starts the pump. 0 to 10 MPa. */
  readonly cutIn: GaugePressure;
  /** Gauge pressure at which it stops; above the cut-in, to 10 MPa. */
  readonly cutOut: GaugePressure;
  /** The tank, at the gauge. */
  readonly tank: AirCharge;
  /** Density of the water. 900 to 1100 kg/m³. */
  readonly density: Density;
  /** Voltage at the motor while it runs. 1 to 1000 V. */
  readonly voltage: Voltage;
  /** Current while it runs, taken as the same at any flow. 0.01 to 10 000 A. */
  readonly current: Current;
  /** True for three phases, which can be crossed; false where left out. */
  readonly threePhase?: boolean;
  /** Time since the precharge was last set. 1 h to 100 years; a year where left out (common practice). */
  readonly tankAge?: Duration;
  /** Pressure that a regulating valve after the gauge holds, where there is one. 0 to 10 MPa. */
  readonly regulatedPressure?: GaugePressure;
  /** The line to the far outlet, where it was read. */
  readonly yard?: YardRun;
}

/**
 * What can be read.
 *
 * - "static level", "pumping level" (while the flow is held at `at`): depth, m
 * - "flow": at the wellhead, throttled to the gauge pressure `at`, m³/s
 * - "shutoff pressure": the pump for seconds against a shut valve, Pa
 * - "far flow": at the far outlet, open, with the gauge at `at`, m³/s
 * - "cut-in", "cut-out", "precharge" (tank empty), "regulated pressure": Pa
 * - "fill time": from cut-in to cut-out, taps shut, s
 * - "pressure fall": from cut-out, pump off, taps shut, in the time `over`, Pa
 * - "voltage", "current": while the pump runs, V and A
 * - "precharge fall": the precharge set right, and how much of it is gone after the time `over`, at the same temperature, Pa
 * - "swapped shutoff pressure": the shutoff pressure with two leads of a three-phase motor swapped, Pa
 */
export type ReadingKind =
  | "static level"
  | "pumping level"
  | "flow"
  | "shutoff pressure"
  | "far flow"
  | "cut-in"
  | "cut-out"
  | "precharge"
  | "regulated pressure"
  | "fill time"
  | "pressure fall"
  | "voltage"
  | "current"
  | "precharge fall"
  | "swapped shutoff pressure";

/** What a reading is of, and how it is taken. */
export interface ReadingSetup {
  /** What is read. */
  readonly kind: ReadingKind;
  /** Gauge pressure it is taken at: "flow", "pumping level" and "far flow". 0 to 10 MPa; the cut-in where left out. */
  readonly at?: GaugePressure;
  /** Time watched: "pressure fall", 1 s to 1 day, 10 min where left out; "precharge fall", to 100 years, half of the
   * plant's `tankAge` where left out. */
  readonly over?: Duration;
}

/** A reading. */
export interface DiagnosisReading extends ReadingSetup {
  /** What was read, in SI. −1e9 to 1e9. */
  readonly value: number;
  /** Its standard uncertainty, in SI. 1e-12 to 1e9. */
  readonly standardUncertainty: number;
}

/** The explanations that are tried. */
export type CauseName =
  | "as planned"
  | "worn pump"
  | "plugged or part-closed main"
  | "leak in the drop pipe"
  | "failed check valve"
  | "lost tank air"
  | "wrong precharge"
  | "low voltage"
  | "low well level"
  | "wrong rotation"
  | "switch out of setting"
  | "regulating valve stuck"
  | "undersized run";

/** A fitted figure of an explanation. */
export interface FittedValue {
  /** What it is, with its unit. */
  readonly name: string;
  /** Its value, SI or a share. */
  readonly value: number;
}

/** One reading beside what an explanation makes of it. */
export interface Residual {
  /** The reading's kind. */
  readonly kind: ReadingKind;
  /** What was read. */
  readonly read: number;
  /** What the explanation predicts. */
  readonly predicted: number;
  /** Read less predicted, in standard uncertainties. */
  readonly inUncertainties: number;
}

/** One explanation, fitted. */
export interface Explanation {
  /** What it says is wrong. */
  readonly cause: CauseName;
  /** The figures that fit best. */
  readonly fitted: readonly FittedValue[];
  /** Sum of the squared residuals. */
  readonly misfit: number;
  /** Weight among all the explanations, 0 to 1: they add up to 1. */
  readonly weight: number;
  /** Each reading beside the prediction. */
  readonly residuals: readonly Residual[];
}

/** The reading that would best tell the leading two apart. */
export interface NextReading extends ReadingSetup {
  /** What each of the two predicts, SI. */
  readonly predictions: readonly [number, number];
  /** Their difference in standard uncertainties of such a reading. */
  readonly inUncertainties: number;
}

/** The answer. */
export interface Diagnosis {
  /**
   * "as planned": the readings are what they should be. "told": one explanation stands out. "cannot tell": the leading two fit alike. "none fits": not even the best explains the
   * readings: look for a second fault or a wrong reading.
   */
  readonly state: "as planned" | "told" | "cannot tell" | "none fits";
  /** All explanations, the best first. */
  readonly explanations: readonly Explanation[];
  /** The reading to take next, of those not taken; null where none would tell the two apart. */
  readonly next: NextReading | null;
  /** How the explanations are weighed. */
  readonly method: "schwarz-1978";
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}
