/**
 * The explanations: each is the plant's model with one or two figures free.
 *
 * @module
 */

import { type Fault, REVERSED_LEAST, REVERSED_MOST, SOUND, tankAge } from "./diagnosis-model.ts";
import type { CauseName, DiagnosisPlant } from "./diagnosis-types.ts";

/** A free figure. */
export interface FreeValue {
  /** What it is, with its unit. */
  readonly name: string;
  /** Ends of what is tried. */
  readonly low: number;
  readonly high: number;
}

/** An explanation. */
export interface Cause {
  readonly cause: CauseName;
  readonly free: readonly FreeValue[];
  /** The fault with the free figures set. */
  readonly fault: (values: readonly number[]) => Fault;
}

/** Ends that a submersible in a small well keeps to; common practice. */
const MOST_WEAR = 0.6;
/**
 * Opened clearances and rubbed vanes take head at shutoff as well as flow, and that is what tells wear from a clog, which
 * takes none there: from a fifth of the share of flow to half as much again. Common practice, no source.
 */
const LEAST_HEAD_WEAR = 0.2;
const MOST_HEAD_WEAR = 1.5;
const LOWEST_VOLTAGE = 0.7;
/** 40 psi, Pa: as far out as a switch or valve that still works is found. */
const MOST_OFF = 276_000;

/** The explanations that a plant can have. */
export function causesOf(plant: DiagnosisPlant): readonly Cause[] {
  const { shutoffHead, runoutFlow } = plant.pump;
  // A hole or a check valve that passes all the pump can give, at the head of its shutoff.
  const wideOpen = runoutFlow / Math.sqrt(Math.max(shutoffHead, 1));
  const air = plant.tank.precharge + plant.tank.atmosphere;
  const causes: Cause[] = [
    { cause: "as planned", free: [], fault: () => SOUND },
    {
      cause: "worn pump",
      free: [
        { name: "share of flow lost", low: 0, high: MOST_WEAR },
        { name: "share of head lost over that of flow", low: LEAST_HEAD_WEAR, high: MOST_HEAD_WEAR },
      ],
      fault: ([flow = 0, head = 1]) => ({ ...SOUND, headShare: Math.max(1 - head * flow, 0), flowShare: 1 - flow }),
    },
    {
      cause: "plugged or part-closed main",
      free: [{ name: "loss over planned", low: 1, high: mostFactor(plant.mainLoss, shutoffHead, runoutFlow) }],
      fault: ([mainFactor = 1]) => ({ ...SOUND, mainFactor }),
    },
    {
      cause: "leak in the drop pipe",
      free: [{ name: "leak, m³/s at 1 m of head", low: 0, high: wideOpen }],
      fault: ([leak = 0]) => ({ ...SOUND, leak }),
    },
    {
      cause: "failed check valve",
      free: [{ name: "back flow, m³/s at 1 m of head", low: 0, high: wideOpen }],
      fault: ([backFlow = 0]) => ({ ...SOUND, backFlow }),
    },
    {
      cause: "lost tank air",
      free: [{ name: "share of the air left", low: 0.1, high: 1 }],
      // Air that went will go on going: at the mean rate since the tank was set.
      fault: ([airShare = 1]) => ({ ...SOUND, airShare, airLossRate: -Math.log(airShare) / tankAge(plant) }),
    },
    {
      cause: "wrong precharge",
      free: [
        {
          name: "precharge off by, Pa",
          low: -Math.min(MOST_OFF, 0.9 * air),
          high: MOST_OFF,
        },
      ],
      fault: ([off = 0]) => ({ ...SOUND, airShare: (air + off) / air }),
    },
    {
      cause: "low voltage",
      free: [{ name: "voltage over planned", low: LOWEST_VOLTAGE, high: 1 }],
      fault: ([voltageShare = 1]) => ({ ...SOUND, voltageShare }),
    },
    {
      cause: "low well level",
      free: [
        { name: "static level deeper by, m", low: 0, high: Math.max(shutoffHead, 1) },
        { name: "drawdown over planned", low: 1, high: 10 },
      ],
      fault: ([staticFall = 0, drawdownFactor = 1]) => ({ ...SOUND, staticFall, drawdownFactor }),
    },
    {
      cause: "switch out of setting",
      free: [
        { name: "cut-in higher by, Pa", low: -MOST_OFF, high: MOST_OFF },
        { name: "cut-out higher by, Pa", low: -MOST_OFF, high: MOST_OFF },
      ],
      fault: ([cutInRise = 0, cutOutRise = 0]) => ({ ...SOUND, cutInRise, cutOutRise }),
    },
  ];
  if (plant.threePhase === true) {
    causes.push({
      cause: "wrong rotation",
      free: [{ name: "share of head and flow made", low: REVERSED_LEAST, high: REVERSED_MOST }],
      fault: ([made = 1]) => ({ ...SOUND, headShare: made, flowShare: made, backwards: true }),
    });
  }
  if (plant.regulatedPressure !== undefined) {
    causes.push({
      cause: "regulating valve stuck",
      free: [{ name: "regulated pressure higher by, Pa", low: -MOST_OFF, high: MOST_OFF }],
      fault: ([regulatedRise = 0]) => ({ ...SOUND, regulatedRise }),
    });
  }
  if (plant.yard !== undefined) {
    causes.push({
      cause: "undersized run",
      free: [{ name: "loss over planned", low: 1, high: 1000 }],
      fault: ([yardFactor = 1]) => ({ ...SOUND, yardFactor }),
    });
  }
  return causes;
}

/** The loss that leaves a hundredth of the pump's flow, over the planned one. */
function mostFactor(
  { flow, headLoss }: { readonly flow: number; readonly headLoss: number },
  head: number,
  runout: number,
): number {
  const small = 0.01 * runout;
  return Math.max((head * flow * flow) / (small * small * Math.max(headLoss, 1e-9)), 2);
}
