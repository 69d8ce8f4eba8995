/**
 * The plant with something wrong: what each gauge, stopwatch and meter would then read.
 *
 * @module
 */
import { cubicValue, findRoot, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { DiagnosisPlant, ReadingSetup } from "./diagnosis-types.ts";

/** What is wrong, as departures from the plant; all nothing in a sound one. */
export interface Fault {
  /** Shares of head and of flow the pump still makes. */
  readonly headShare: number;
  readonly flowShare: number;
  /** Main loss over what it should be. */
  readonly mainFactor: number;
  /** Leak in the drop pipe and back flow of the check valve, m³/s at one metre of head across it. */
  readonly leak: number;
  readonly backFlow: number;
  /** Air in the tank over what it should be, by mass. */
  readonly airShare: number;
  /** Share of the air that goes on being lost, 1/s. */
  readonly airLossRate: number;
  /** Whether the motor turns the wrong way. */
  readonly backwards: boolean;
  /** Voltage over what it should be. */
  readonly voltageShare: number;
  /** Static level deeper, m, and drawdown over what it should be. */
  readonly staticFall: number;
  readonly drawdownFactor: number;
  /** Switch points higher than set, Pa. */
  readonly cutInRise: number;
  readonly cutOutRise: number;
  /** Regulated pressure higher than set, Pa. */
  readonly regulatedRise: number;
  /** Yard loss over what it should be. */
  readonly yardFactor: number;
}

/** Nothing wrong. */
export const SOUND: Fault = {
  headShare: 1,
  flowShare: 1,
  mainFactor: 1,
  leak: 0,
  backFlow: 0,
  airShare: 1,
  airLossRate: 0,
  backwards: false,
  voltageShare: 1,
  staticFall: 0,
  drawdownFactor: 1,
  cutInRise: 0,
  cutOutRise: 0,
  regulatedRise: 0,
  yardFactor: 1,
};

/** Slip of a submersible at its rated voltage; it grows as the square of the fall. Common practice. */
const SLIP = 0.05;
/** What a pump makes of its head and flow when it turns the wrong way: common practice. */
export const REVERSED_LEAST = 0.3;
export const REVERSED_MOST = 0.75;
/** A tank that never fills reads as this long, s. */
const FOR_EVER = 86_400;
/** Time a fall of pressure is watched where none is said, s. */
const USUAL_WATCH = 600;
/** A year, s: how often a precharge is looked at. Common practice. */
const USUAL_TANK_AGE = 31_557_600;
/** Steps of the filling and of the fall: the error is well under a stopwatch's. */
const STEPS = 12;

/**
 * Time since the precharge was set.
 *
 * @internal
 */
export function tankAge(plant: DiagnosisPlant): number {
  return plant.tankAge ?? USUAL_TANK_AGE;
}

/** What a reading would be with a fault. */
export function predict(plant: DiagnosisPlant, fault: Fault, { kind, at, over }: ReadingSetup): number {
  const pressure = at ?? plant.cutIn;
  switch (kind) {
    case "static level":
      return plant.well.staticLevel + fault.staticFall;
    case "pumping level":
      return pumpingLevel(plant, fault, flowAt(plant, fault, pressure));
    case "flow":
      return flowAt(plant, fault, pressure);
    case "shutoff pressure":
      return shutoffPressure(plant, fault);
    case "far flow":
      return farFlow(plant, fault, pressure);
    case "cut-in":
      return plant.cutIn + fault.cutInRise;
    case "cut-out":
      return plant.cutOut + fault.cutOutRise;
    case "precharge":
      return precharge(plant, fault);
    case "regulated pressure":
      return (plant.regulatedPressure ?? 0) + fault.regulatedRise;
    case "fill time":
      return fillTime(plant, fault);
    case "precharge fall":
      return (
        (plant.tank.precharge + plant.tank.atmosphere) * -Math.expm1(-fault.airLossRate * (over ?? tankAge(plant) / 2))
      );
    case "swapped shutoff pressure":
      return shutoffPressure(plant, swapped(fault));
    case "pressure fall":
      return pressureFall(plant, fault, over ?? USUAL_WATCH);
    case "voltage":
      return plant.voltage * fault.voltageShare;
    case "current":
      return (plant.current * speed(fault) ** 3) / fault.voltageShare;
  }
}

/**
 * Doubt of the model itself about a reading, in its unit: how much a pump makes when it turns the wrong way is known between
 * two ends alone, and anywhere between them is alike (`jcgm-100`, 4.3.7).
 */
export function modelUncertainty({ pump, density }: DiagnosisPlant, { kind }: ReadingSetup): number {
  if (kind !== "swapped shutoff pressure") return 0;
  return ((REVERSED_MOST - REVERSED_LEAST) / Math.sqrt(12)) * pump.shutoffHead * density * STANDARD_GRAVITY;
}

/** The fault with two leads of the motor swapped. */
function swapped(fault: Fault): Fault {
  if (fault.backwards) return { ...fault, headShare: 1, flowShare: 1, backwards: false };
  const made = (REVERSED_LEAST + REVERSED_MOST) / 2;
  return { ...fault, headShare: fault.headShare * made, flowShare: fault.flowShare * made, backwards: true };
}

/** Speed over that at the rated voltage. */
function speed({ voltageShare }: Fault): number {
  return (1 - SLIP / (voltageShare * voltageShare)) / (1 - SLIP);
}

function pumpHead(plant: DiagnosisPlant, fault: Fault, flow: number): number {
  const n = speed(fault);
  const similar = flow / (fault.flowShare * n);
  return fault.headShare * n * n * cubicValue(plant.pump.head, Math.min(similar, plant.pump.runoutFlow));
}

function pumpingLevel({ well }: DiagnosisPlant, fault: Fault, flow: number): number {
  const { aquiferLoss, wellLoss } = well.law;
  return well.staticLevel + fault.staticFall + fault.drawdownFactor * (aquiferLoss + wellLoss * flow) * flow;
}

function squareLoss({ flow, headLoss }: { readonly flow: number; readonly headLoss: number }): number {
  return headLoss / (flow * flow);
}

function headOf(plant: DiagnosisPlant, pressure: number): number {
  return pressure / (plant.density * STANDARD_GRAVITY);
}

/** The leak is taken half way down to the water: what it loses falls back into the well. */
function leakFlow(plant: DiagnosisPlant, fault: Fault, pressure: number): number {
  return fault.leak * Math.sqrt(Math.max(headOf(plant, pressure) + plant.rise + plant.well.staticLevel / 2, 0));
}

/** Flow past the gauge at a gauge pressure: 0 where the pump does not reach it. */
function flowAt(plant: DiagnosisPlant, fault: Fault, pressure: number): number {
  const leak = leakFlow(plant, fault, pressure);
  const spare = (flow: number): number => spareHead(plant, fault, pressure, flow, leak);
  const most = plant.pump.runoutFlow * fault.flowShare * speed(fault) - leak;
  if (!(most > 0) || !(spare(0) > 0)) return 0;
  if (spare(most) >= 0) return most;
  return findRoot(spare, 0, most, most * 1e-8).x;
}

/** Head the pump makes beyond what is asked of it, with a flow past the gauge. Falls as the flow grows. */
function spareHead(plant: DiagnosisPlant, fault: Fault, pressure: number, flow: number, leak: number): number {
  const pumped = flow + leak;
  const loss = fault.mainFactor * squareLoss(plant.mainLoss) * pumped * pumped;
  return (
    pumpHead(plant, fault, pumped) - pumpingLevel(plant, fault, flow) - plant.rise - headOf(plant, pressure) - loss
  );
}

function shutoffPressure(plant: DiagnosisPlant, fault: Fault): number {
  const spare = (pressure: number): number => spareHead(plant, fault, pressure, 0, leakFlow(plant, fault, pressure));
  const most = plant.pump.shutoffHead * plant.density * STANDARD_GRAVITY;
  if (!(spare(0) > 0)) return 0;
  return spare(most) >= 0 ? most : findRoot(spare, 0, most, 1).x;
}

function farFlow(plant: DiagnosisPlant, fault: Fault, pressure: number): number {
  if (plant.yard === undefined) return 0;
  const { loss, rise, outlet } = plant.yard;
  const head = headOf(plant, pressure) - rise;
  return Math.sqrt(Math.max(head, 0) / (fault.yardFactor * squareLoss(loss) + squareLoss(outlet)));
}

/** Absolute pressure of the air with no water in the tank, Pa. */
function emptyAir({ tank }: DiagnosisPlant, fault: Fault): number {
  return (tank.precharge + tank.atmosphere) * fault.airShare;
}

function precharge(plant: DiagnosisPlant, fault: Fault): number {
  return emptyAir(plant, fault) - plant.tank.atmosphere;
}

/** Water that comes into the tank for each pascal, m³/Pa: Boyle's law; none under the precharge. */
function give(plant: DiagnosisPlant, fault: Fault, pressure: number): number {
  const absolute = pressure + plant.tank.atmosphere;
  const air = emptyAir(plant, fault);
  return absolute > air ? (plant.tank.volume * air) / (absolute * absolute) : 0;
}

function fillTime(plant: DiagnosisPlant, fault: Fault): number {
  // Under the precharge there is nothing to fill: the pressure is up at once.
  const low = Math.max(plant.cutIn + fault.cutInRise, precharge(plant, fault));
  const step = (plant.cutOut + fault.cutOutRise - low) / STEPS;
  let time = 0;
  for (let i = 0; i < STEPS && step > 0; i++) {
    const pressure = low + (i + 0.5) * step;
    const flow = flowAt(plant, fault, pressure);
    if (!(flow > 0)) return FOR_EVER;
    time += (give(plant, fault, pressure) * step) / flow;
  }
  return Math.min(time, FOR_EVER);
}

/** The tank feeds the leak and the check valve until its air is spent; then the pressure is gone. */
function pressureFall(plant: DiagnosisPlant, fault: Fault, time: number): number {
  const start = plant.cutOut + fault.cutOutRise;
  const gone = Math.max(start, 0);
  let pressure = start;
  let left = time;
  // A step of pressure at a time: the time it takes is the water it gives over what is lost.
  const step = Math.max(start - Math.max(precharge(plant, fault), 0), 1) / STEPS;
  for (let i = 0; i < STEPS; i++) {
    const middle = pressure - step / 2;
    const back = fault.backFlow * Math.sqrt(Math.max(headOf(plant, middle) + plant.rise + plant.well.staticLevel, 0));
    const lost = leakFlow(plant, fault, middle) + back;
    if (!(lost > 0)) return start - pressure;
    const taken = (give(plant, fault, middle) * step) / lost;
    if (taken > left) return start - pressure + (step * left) / taken;
    left -= taken;
    pressure -= step;
  }
  return gone;
}
