/**
 * The reading to take next: the one that two explanations predict furthest apart.
 *
 * @module
 */
import { type Fault, modelUncertainty, predict } from "./diagnosis-model.ts";
import type { DiagnosisPlant, DiagnosisReading, NextReading, ReadingSetup } from "./diagnosis-types.ts";

/** Predictions nearer than this many standard uncertainties would not be told apart. */
const APART = 2;

/** Readings that could be taken, with the uncertainty a careful installer has: common practice. */
function candidates(plant: DiagnosisPlant): readonly (ReadingSetup & { readonly u: number })[] {
  const psi = 6894.757;
  const high = plant.cutOut;
  const flow = 0.03 * plant.pump.runoutFlow;
  const list: (ReadingSetup & { readonly u: number })[] = [
    { kind: "static level", u: 0.15 },
    { kind: "pumping level", u: 0.3 },
    { kind: "flow", u: flow },
    { kind: "flow", at: high, u: flow },
    { kind: "shutoff pressure", u: 2 * psi },
    { kind: "cut-in", u: psi },
    { kind: "cut-out", u: psi },
    { kind: "precharge", u: psi },
    { kind: "fill time", u: 2 },
    { kind: "pressure fall", u: psi },
    { kind: "voltage", u: 0.01 * plant.voltage },
    { kind: "current", u: 0.02 * plant.current },
  ];
  if (plant.regulatedPressure !== undefined) list.push({ kind: "regulated pressure", u: psi });
  if (plant.yard !== undefined) list.push({ kind: "far flow", u: flow });
  // Last, since they cost most: a change at the box, and months.
  if (plant.threePhase === true) list.push({ kind: "swapped shutoff pressure", u: 2 * psi });
  list.push({ kind: "precharge fall", u: psi });
  return list;
}

/**
 * The reading, of those not taken, that best tells two faults apart; null where none does.
 *
 * @internal
 */
export function nextReading(
  plant: DiagnosisPlant,
  readings: readonly DiagnosisReading[],
  first: Fault,
  second: Fault,
): NextReading | null {
  let best: NextReading | null = null;
  for (const { u, ...setup } of candidates(plant)) {
    const pressure = setup.at ?? plant.cutIn;
    if (readings.some((reading) => reading.kind === setup.kind && (reading.at ?? plant.cutIn) === pressure)) continue;
    const predictions = [predict(plant, first, setup), predict(plant, second, setup)] as const;
    const inUncertainties = Math.abs(predictions[0] - predictions[1]) / Math.hypot(u, modelUncertainty(plant, setup));
    if (inUncertainties > Math.max(APART, best?.inUncertainties ?? 0))
      best = { ...setup, predictions, inUncertainties };
  }
  return best;
}
