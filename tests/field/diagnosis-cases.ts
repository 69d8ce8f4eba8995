/**
 * Made-up wells with one thing wrong, for a blind test of the diagnosis.
 *
 * The physics is written again here from closed forms and small steps of time, and calls nothing of the library but the
 * constructor of the pump's curve: a slip in the library's model shows as wrong answers. The faults are drawn wider than the
 * library's explanations: a leak at any depth, a reversed pump with unlike shares, a tank that has lost air for longer or less
 * long than anyone knows.
 */
import type { CauseName, DiagnosisPlant, DiagnosisReading, ReadingKind, ReadingSetup } from "risingmain/field";
import { pumpCurve } from "risingmain/pump";
import type { Duration, GaugePressure, Length, VolumeFlow } from "risingmain/units";

/** Numbers between 0 and 1 by a generator apart from the library's (Park and Miller's, 1988). */
export function numbers(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** A well, what is wrong with it and what was read. */
export interface Case {
  readonly truth: CauseName;
  readonly plant: DiagnosisPlant;
  /** One reading of each kind that a day at the well gives. */
  readonly readings: readonly DiagnosisReading[];
  /** A reading that is asked for. */
  readonly take: (setup: ReadingSetup) => DiagnosisReading;
}

const PSI = 6894.757;
const GPM = 6.30902e-5;
const G = 9.80665 * 999.7;
const AIR = 101_325;
const YEAR = 365 * 86_400;

/** All causes, in the order of the table. */
export const CAUSES: readonly CauseName[] = [
  "as planned",
  "worn pump",
  "plugged or part-closed main",
  "leak in the drop pipe",
  "failed check valve",
  "lost tank air",
  "wrong precharge",
  "low voltage",
  "low well level",
  "wrong rotation",
  "switch out of setting",
  "regulating valve stuck",
  "undersized run",
];

/** A case of a cause. */
export function makeCase(truth: CauseName, seed: number): Case {
  const random = numbers(seed * 7919 + 17);
  for (let i = 0; i < 5; i++) random();
  const within = (low: number, high: number): number => low + (high - low) * random();
  const noise = (): number => {
    let sum = 0;
    for (let i = 0; i < 12; i++) sum += random();
    return sum - 6;
  };

  // The plant: pump H = A − B Q², losses c Q², drawdown b Q, tank by Boyle.
  const level = within(15, 60);
  const cutIn = within(30, 45) * PSI;
  const cutOut = cutIn + 20 * PSI;
  const duty = within(6, 14) * GPM;
  const drawdown = within(3, 12) / duty;
  const main = within(1.5, 5) / duty ** 2;
  const rise = within(0.5, 2);
  const need = level + drawdown * duty + rise + (cutIn + cutOut) / 2 / G + main * duty ** 2;
  const A = need * within(1.25, 1.5);
  const B = (A - need) / duty ** 2;
  const runout = 0.97 * Math.sqrt(A / B);
  const tank = within(0.12, 0.4);
  const precharge = cutIn - 2 * PSI;
  const tankAge = within(0.5, 2) * YEAR;
  const voltage = 230;
  const current = within(5, 12);
  const regulated = cutIn + within(5, 12) * PSI;
  const yard = within(4, 10) / duty ** 2;
  const outlet = within(2, 6) / duty ** 2;
  const yardRise = within(-5, 5);
  const curve = pumpCurve({
    points: Array.from({ length: 12 }, (_, i) => {
      const flow = (runout * i) / 11;
      return { flow: flow as VolumeFlow, head: (A - B * flow * flow) as Length };
    }),
  });

  // What is wrong.
  const wrong = {
    head: 1,
    flow: 1,
    main: 1,
    leak: 0,
    leakDepth: within(0.2, 0.8) * level,
    back: 0,
    air: 1,
    /** Share of the air lost each day. */
    airLoss: 0,
    volts: 1,
    level: 0,
    drawdown: 1,
    cutIn: 0,
    cutOut: 0,
    regulated: 0,
    yard: 1,
  };
  const either = (size: number): number => (random() < 0.5 ? -size : size);
  if (truth === "worn pump") {
    const x = within(0.12, 0.3);
    wrong.flow = 1 - x;
    wrong.head = 1 - x * within(0.25, 1);
  } else if (truth === "plugged or part-closed main") wrong.main = within(5, 15);
  else if (truth === "leak in the drop pipe")
    wrong.leak = (within(0.12, 0.35) * duty) / Math.sqrt(cutIn / G + level / 2);
  else if (truth === "failed check valve") wrong.back = (within(0.02, 0.5) * duty) / Math.sqrt(cutIn / G + level);
  else if (truth === "lost tank air") {
    wrong.air = within(0.4, 0.8);
    wrong.airLoss = 1 - wrong.air ** (86_400 / (within(0.75, 1.3) * tankAge));
  } else if (truth === "wrong precharge") wrong.air = 1 + either(within(8, 14) * PSI) / (precharge + AIR);
  else if (truth === "low voltage") wrong.volts = within(0.78, 0.92);
  else if (truth === "low well level") {
    wrong.level = within(3, 10);
    wrong.drawdown = within(1.3, 2);
  } else if (truth === "wrong rotation") {
    wrong.head = within(0.5, 0.6);
    wrong.flow = wrong.head * within(0.97, 1.03);
  } else if (truth === "switch out of setting") {
    wrong.cutIn = either(within(4, 8) * PSI);
    wrong.cutOut = wrong.cutIn + either(within(0, 2) * PSI);
  } else if (truth === "regulating valve stuck") wrong.regulated = either(within(6, 15) * PSI);
  else if (truth === "undersized run") wrong.yard = within(4, 12);

  // Its physics, by small steps.
  const slip = within(0.04, 0.06);
  const n = (1 - slip / wrong.volts ** 2) / (1 - slip);
  const head = (q: number, made: { readonly head: number; readonly flow: number } = wrong): number =>
    made.head * n * n * (A - B * (q / (made.flow * n)) ** 2);
  const leak = (p: number): number => wrong.leak * Math.sqrt(p / G + rise + wrong.leakDepth);
  const flowAt = (p: number): number => {
    let low = 0;
    let high = runout;
    const lost = leak(p);
    for (let i = 0; i < 60; i++) {
      const q = (low + high) / 2;
      const asked =
        level + wrong.level + wrong.drawdown * drawdown * q + rise + p / G + wrong.main * main * (q + lost) ** 2;
      if (head(q + lost) > asked) low = q;
      else high = q;
    }
    return low < runout * 1e-9 ? 0 : low;
  };
  const air = (precharge + AIR) * wrong.air;
  const stored = (p: number): number => tank * Math.max(0, 1 - air / (p + AIR));
  const startsAt = cutIn + wrong.cutIn;
  const stopsAt = cutOut + wrong.cutOut;
  const fill = (): number => {
    let time = 0;
    for (let i = 0; i < 400; i++) {
      const p = startsAt + ((stopsAt - startsAt) * (i + 0.5)) / 400;
      const dw = stored(p + (stopsAt - startsAt) / 800) - stored(p - (stopsAt - startsAt) / 800);
      const q = flowAt(p);
      if (q <= 0) return 86_400;
      time += dw / q;
    }
    return Math.min(time, 86_400);
  };
  const fall = (): number => {
    let p = stopsAt;
    for (let t = 0; t < 600; t++) {
      const lost = leak(p) + wrong.back * Math.sqrt(Math.max(p / G + rise + level, 0));
      const dwdp = (stored(p + 10) - stored(p - 10)) / 20;
      if (lost <= 0) return 0;
      if (dwdp <= 0) return stopsAt;
      p -= lost / dwdp;
      if (p <= 0) return stopsAt;
    }
    return stopsAt - p;
  };
  const shutoff = (made: { readonly head: number; readonly flow: number } = wrong): number => {
    let low = 0;
    let high = A * G;
    for (let i = 0; i < 60; i++) {
      const p = (low + high) / 2;
      const lost = leak(p);
      if (head(lost, made) > level + wrong.level + rise + p / G + wrong.main * main * lost ** 2) low = p;
      else high = p;
    }
    return low;
  };
  const farFlow = Math.sqrt(Math.max(cutIn / G - yardRise, 0) / (wrong.yard * yard + outlet));
  const backwards = within(0.4, 0.65);
  const turned =
    truth === "wrong rotation"
      ? { head: 1, flow: 1 }
      : { head: wrong.head * backwards, flow: wrong.flow * backwards * within(0.95, 1.05) };

  /** What stands on the gauge, the watch or the meter, and its standard uncertainty. */
  const shown = ({ kind, at = cutIn, over }: { kind: ReadingKind; at?: number; over?: number }): [number, number] => {
    switch (kind) {
      case "static level":
        return [level + wrong.level, 0.1];
      case "pumping level":
        return [level + wrong.level + wrong.drawdown * drawdown * flowAt(at), 0.2];
      case "flow":
        return [flowAt(at), Math.max(0.03 * flowAt(at), 0.1 * GPM)];
      case "shutoff pressure":
        return [shutoff(), 1.5 * PSI];
      case "far flow":
        return [farFlow, 0.03 * farFlow];
      case "cut-in":
        return [startsAt, 0.7 * PSI];
      case "cut-out":
        return [stopsAt, 0.7 * PSI];
      case "precharge":
        return [air - AIR, 0.7 * PSI];
      case "regulated pressure":
        return [regulated + wrong.regulated, 1 * PSI];
      case "fill time":
        return [fill(), 1 + 0.03 * fill()];
      case "pressure fall":
        return [fall(), 0.5 * PSI];
      case "voltage":
        return [voltage * wrong.volts, 2];
      case "current":
        return [(current * n ** 3) / wrong.volts, 0.02 * current];
      case "precharge fall": {
        const days = (over ?? tankAge / 2) / 86_400;
        return [(precharge + AIR) * (1 - (1 - wrong.airLoss) ** days), PSI];
      }
      case "swapped shutoff pressure":
        return [shutoff(turned), 1.5 * PSI];
    }
  };
  const take = (setup: ReadingSetup): DiagnosisReading => {
    const [value, standardUncertainty] = shown(setup);
    return { ...setup, value: value + standardUncertainty * noise(), standardUncertainty };
  };
  const day: readonly ReadingSetup[] = [
    { kind: "static level" },
    { kind: "pumping level", at: cutIn as GaugePressure },
    ...[0, cutIn, cutOut].map((at) => ({ kind: "flow", at: at as GaugePressure }) as const),
    { kind: "shutoff pressure" },
    { kind: "far flow", at: cutIn as GaugePressure },
    { kind: "cut-in" },
    { kind: "cut-out" },
    { kind: "precharge" },
    { kind: "regulated pressure" },
    { kind: "fill time" },
    { kind: "pressure fall" },
    { kind: "voltage" },
    { kind: "current" },
  ];

  return {
    truth,
    take,
    readings: day.map(take),
    plant: {
      pump: curve,
      well: { staticLevel: level as Length, law: { aquiferLoss: drawdown, wellLoss: 0 } },
      rise: rise as Length,
      mainLoss: { flow: duty as VolumeFlow, headLoss: (main * duty * duty) as Length },
      cutIn: cutIn as never,
      cutOut: cutOut as never,
      tank: { volume: tank as never, precharge: precharge as never, atmosphere: AIR as never },
      density: 999.7 as never,
      voltage: voltage as never,
      current: current as never,
      threePhase: true,
      tankAge: tankAge as Duration,
      regulatedPressure: regulated as never,
      yard: {
        loss: { flow: duty as VolumeFlow, headLoss: (yard * duty * duty) as Length },
        rise: yardRise as Length,
        outlet: { flow: duty as VolumeFlow, headLoss: (outlet * duty * duty) as Length },
      },
    },
  };
}
