/**
 * Hydraulics with a well whose level follows the pump's flow at once: time is an integral along the delivery path.
 *
 * With w the water in the tanks, p the pressure, Q the pump's flow and q the use, dt = w′(p) dp / (Q − q). Taken along
 * the pump's curve by flow, dp = P′(Q) dQ, so no curve is ever read backwards; what is left is smooth but for the pole at
 * Q = q, towards which panels shrink.
 *
 * @module
 */
import { GAUSS_POINTS, gaussIntegral, gaussPoint, gaussWeight, SHORT_POINTS, SHORT_WEIGHTS } from "../numeric/index.ts";
import { bankCompliance, bankPressure, bankWater } from "../tank/bank.ts";
import type { CompiledSystem } from "./compile.ts";
import { type CubicPiece, valueAt } from "./cubic-pieces.ts";
import { deliveryLocus, emptyPressure, flowAt, type LocusPiece, pressureAt, storagePath } from "./locus.ts";
import type { Mutable, Outcome, Plant, PlantStart } from "./plant.ts";
import { POLE_RATIO, poleIntegral } from "./pole-integral.ts";

/** A stretch this many times shorter than its distance to the pole: four Gauss points then err by 1e-13. */
const SHORT = 10;

/** A step this small a share of the distance to the use is the last: the next would be of its square. */
const CLOSE = 1e-7;

/** Most steps of a search for a flow; each at least halves its bracket every other time. */
const MOST_STEPS = 200;

/** A piece of the path with its integrand ready at the Gauss points. */
interface ReadyPiece extends LocusPiece {
  readonly waterLow: number;
  readonly waterHigh: number;
  /** True for a step: one pressure, many flows. */
  readonly step: boolean;
  /** Flows at the Gauss points. */
  readonly q: readonly number[];
  /** −w′(p) P′(Q) at them, times their weights. */
  readonly weighted: readonly number[];
  /** Their sum: the water stored over the piece, m³. */
  readonly stored: number;
  /** Power at them, where it is known. */
  readonly power: readonly number[];
}

/** A plant whose well keeps no memory. */
export function steadyPlant(system: CompiledSystem, begin: PlantStart): Plant {
  const { bank, cutIn, cutOut, weight, power } = system;
  const locus = deliveryLocus(system);
  const tripFlow = flowOfDrawdown(system, (system.lowLevel?.stopLevel ?? Infinity) - system.staticLevel);
  const dryFlow = flowOfDrawdown(system, system.intake - system.staticLevel);
  const opening = emptyPressure(bank);
  // A charge below the pressure of the open air keeps water that no tap can have; it is left out of the count.
  const dead = bankWater(bank, opening);
  // One tank of slow air, the usual case, has its law written out in the integrand.
  const oneTank = bank.amount.length === 1 && bank.power === 1;
  const amount = bank.amount[0] as number;
  const offset = bank.offset[0] as number;
  const path = storagePath(system, locus, Math.min(tripFlow, dryFlow)).map((piece) => ready(piece));
  const openingFlow = flowAt(locus, opening);
  /** Flows nearer than this are equal: what rounding leaves between them would be waited for without end. */
  const alike = 1e-15 * system.mostFlow;
  const waterAtCutIn = storedAt(cutIn);
  const startIndex = indexAt(cutIn);

  // One object of numbers, changed in place: variables shared by closures would be boxed anew at every change.
  const now: Mutable<Plant> & { index: number } = {
    water: storedAt(begin.pressure),
    pressure: begin.pressure as number,
    flow: 0,
    elapsed: 0,
    pumped: 0,
    refused: 0,
    energy: 0,
    steps: 0,
    memory: 0,
    index: 0,
    depth() {
      return system.staticLevel + now.flow * (system.aquiferLoss + system.wellLoss * now.flow);
    },
    start,
    stop() {
      now.flow = 0;
    },
    running,
    resting,
    recoveryTime: (depth) => (system.staticLevel < depth ? 0 : Infinity),
  };
  return now;

  function start(demand: number): boolean {
    if (now.water > 0) {
      now.index = now.pressure === cutIn ? startIndex : indexAt(now.pressure);
      now.flow = now.pressure === cutIn ? (path[now.index] as ReadyPiece).qHigh : flowAt(locus, now.pressure);
      // Begun at the pressure that is held, the pump gives what is used as far as it can.
      for (let piece = path[now.index] as ReadyPiece; piece.step; piece = path[++now.index] as ReadyPiece) {
        now.flow = Math.min(Math.max(demand, piece.qLow), piece.qHigh);
        if (demand >= piece.qLow) break;
      }
    } else {
      fillOrStayEmpty(demand);
    }
    return now.flow < tripFlow;
  }

  function running(limit: number, demand: number): Outcome {
    let left = limit;
    // Added up, not limit − left, which loses the digits of a short stretch in a long limit.
    let spent = 0;
    now.pumped = now.refused = now.energy = 0;
    for (;;) {
      if (now.flow >= tripFlow) return ended("low level");
      if (now.flow >= dryFlow) return ended("ran dry");
      if (!(now.water > 0)) {
        fillOrStayEmpty(demand);
        if (now.flow >= tripFlow) return ended("low level");
        if (now.flow >= dryFlow) return ended("ran dry");
        if (now.flow <= demand) {
          holds(left, Math.min(now.flow, demand));
          now.refused += (demand - now.flow) * left;
          left = 0;
          return ended("limit");
        }
      }
      const piece = path[now.index] as ReadyPiece;
      if (piece.step && demand >= piece.qLow && demand <= piece.qHigh) {
        now.flow = demand;
        if (now.flow >= tripFlow) return ended("low level");
        holds(left, demand);
        left = 0;
        return ended("limit");
      }
      if (Math.abs(now.flow - demand) <= alike) {
        now.flow = demand;
        holds(left, demand);
        left = 0;
        return ended("limit");
      }
      const fills = now.flow > demand;
      const whole = through(piece, fills, demand, left);
      if (whole < 0) {
        left = 0;
        return ended("limit");
      }
      left -= whole;
      spent += whole;
      now.pressure = fills ? piece.pHigh : piece.pLow;
      now.water = fills ? piece.waterHigh : piece.waterLow;
      now.flow = fills ? piece.qLow : piece.qHigh;
      if (fills && now.pressure === cutOut) return ended("cut-out");
      if (fills) now.index++;
      else if (now.index > 0) now.index--;
      else {
        now.water = 0;
        return ended("tank empty");
      }
      // A neighbour begins with the same flow; the trip is looked for on the way down only at its ends, where it was cut.
      now.flow = fills ? (path[now.index] as ReadyPiece).qHigh : (path[now.index] as ReadyPiece).qLow;
    }

    function ended(outcome: Outcome): Outcome {
      now.elapsed = outcome === "limit" ? limit : spent;
      return outcome;
    }
  }

  /** Goes through the rest of a piece, or as far as `left` allows: the time taken, or −1 where time ran out in it. */
  function through(piece: ReadyPiece, fills: boolean, demand: number, left: number): number {
    const { cubic } = piece;
    if (cubic === undefined) {
      const rate = now.flow - demand;
      const time = ((fills ? piece.waterHigh : piece.waterLow) - now.water) / rate;
      if (time > left) {
        const before = now.pressure;
        now.water += rate * left;
        now.pressure = pressureOf(now.water, piece.pHigh);
        levelEnergy(left, rate, before);
        now.pumped += now.flow * left;
        return -1;
      }
      levelEnergy(time, rate, now.pressure, fills ? piece.pHigh : piece.pLow);
      now.pumped += now.flow * time;
      return time;
    }
    const end = fills ? piece.qLow : piece.qHigh;
    if (now.flow === end || piece.step) return 0;
    // The use lies on this piece, so the pressure only comes near the one where they balance.
    const balances = fills ? demand >= end : demand <= end;
    if (!balances) {
      const time =
        piece.qHigh === now.flow || piece.qLow === now.flow
          ? sweep(piece, demand)
          : between(cubic, now.flow, end, demand);
      if (time <= left) {
        // By the sum along the curve, not by the difference of waters: the balance then tests the one against the other.
        const whole = piece.qHigh === now.flow || piece.qLow === now.flow;
        now.pumped += (fills ? 1 : -1) * (whole ? piece.stored : storedAlong(cubic, now.flow, end)) + demand * time;
        useEnergy(piece, cubic, now.flow, end, time, demand);
        return time;
      }
    }
    const from = now.flow;
    const before = now.water;
    now.flow = flowAfter(cubic, from, balances ? demand : end, left, demand);
    now.pressure = Math.min(Math.max(valueAt(cubic, now.flow), piece.pLow), piece.pHigh);
    now.water = storedAt(now.pressure);
    now.pumped += now.water - before + demand * left;
    useEnergy(piece, cubic, from, now.flow, left, demand);
    return -1;
  }

  /** Adds the energy used while the flow went from one value to another. */
  function useEnergy(
    piece: ReadyPiece,
    cubic: CubicPiece,
    from: number,
    to: number,
    time: number,
    demand: number,
  ): void {
    if (power === undefined) return;
    const whole = (from === piece.qHigh && to === piece.qLow) || (from === piece.qLow && to === piece.qHigh);
    if (whole && clear(piece, demand)) {
      let used = 0;
      for (let i = 0; i < GAUSS_POINTS; i++) {
        used += ((piece.weighted[i] as number) * (piece.power[i] as number)) / ((piece.q[i] as number) - demand);
      }
      now.energy += Math.abs(used);
      return;
    }
    // Less the power at the end, so that what is left stays finite where the end is the pole itself.
    const last = power(to, headAt(to, valueAt(cubic, to)));
    now.energy +=
      last * time +
      poleIntegral(
        (q) => integrand(cubic, q) * (power(q, headAt(q, valueAt(cubic, q))) - last),
        Math.min(from, to),
        Math.max(from, to),
        demand,
      );
  }

  /** Water stored while the pump's flow goes from one value to another. */
  function storedAlong(cubic: CubicPiece, from: number, to: number): number {
    return gaussIntegral((q) => integrand(cubic, q), Math.min(from, to), Math.max(from, to));
  }

  /** Time to sweep a whole piece. */
  function sweep(piece: ReadyPiece, demand: number): number {
    const { qLow, qHigh, q, weighted, cubic } = piece;
    if (!clear(piece, demand)) return between(cubic as CubicPiece, qLow, qHigh, demand);
    let time = 0;
    for (let i = 0; i < GAUSS_POINTS; i++) time += (weighted[i] as number) / ((q[i] as number) - demand);
    return Math.abs(time);
  }

  /** Whether the use lies far enough from the flows of a piece for one panel to do. */
  function clear({ qLow, qHigh }: ReadyPiece, demand: number): boolean {
    const near = demand < qLow ? qLow - demand : demand - qHigh;
    return qHigh - qLow <= (POLE_RATIO - 1) * near;
  }

  /** Time for the pump's flow to go from one value to another while `demand` is used. */
  function between(cubic: CubicPiece, from: number, to: number, demand: number): number {
    const low = Math.min(from, to);
    const high = Math.max(from, to);
    const near = demand <= low ? low - demand : demand - high;
    // Far from the pole for its length, a stretch is as good as level: four points do. Written out, for it is most of a run.
    if (!(high - low <= near / SHORT)) return poleIntegral((q) => integrand(cubic, q), low, high, demand);
    const half = (high - low) / 2;
    const middle = low + half;
    let sum = 0;
    for (let i = 0; i < SHORT_POINTS.length; i++) {
      const q = middle + half * (SHORT_POINTS[i] as number);
      sum += ((SHORT_WEIGHTS[i] as number) * integrand(cubic, q)) / Math.abs(q - demand);
    }
    return half * sum;
  }

  /** −w′(p) P′(Q): water stored per fall of the pump's flow. */
  function integrand(cubic: CubicPiece, q: number): number {
    const t = q - cubic.from;
    const p = cubic.c0 + t * (cubic.c1 + t * (cubic.c2 + t * cubic.c3));
    const slope = cubic.c1 + t * (2 * cubic.c2 + t * 3 * cubic.c3);
    if (!oneTank) return -bankCompliance(bank, p) * slope;
    const air = p + offset;
    return (-amount * slope) / (air * air);
  }

  /** The flow a time after `from`, on the way to `end`; each step exact if the integrand were level. */
  function flowAfter(cubic: CubicPiece, from: number, end: number, time: number, demand: number): number {
    let near = from;
    let far = end;
    let x = from;
    let left = time;
    for (let i = 0; i < MOST_STEPS; i++) {
      // As if the integrand were level at what it is half way there.
      const tried = demand + (x - demand) * Math.exp(-left / integrand(cubic, x));
      const g = integrand(cubic, (x + within(tried, near, far, x)) / 2);
      let next = demand + (x - demand) * Math.exp(-left / g);
      // Outside the bracket, or nowhere: halve it.
      if (!(g > 0) || (next - near) * (next - far) > 0 || Number.isNaN(next)) next = near + (far - near) / 2;
      // The use itself is only reached where rounding says so.
      if (next === demand) return demand;
      if (Math.abs(next - x) <= CLOSE * Math.abs(next - demand) + alike / 10 || next === x) return next;
      const step = between(cubic, x, next, demand);
      left += Math.abs(next - from) > Math.abs(x - from) ? -step : step;
      x = next;
      if (left > 0) near = x;
      else far = x;
    }
    return x;
  }

  /** The flow and pressure of a running pump with its tanks empty, or the first piece where it can fill them. */
  function fillOrStayEmpty(demand: number): void {
    now.water = 0;
    now.index = 0;
    if (openingFlow > demand) {
      now.pressure = opening;
      now.flow = (path[0] as ReadyPiece).qHigh;
      return;
    }
    const atOutlet = flowAt(locus, 0);
    now.pressure = atOutlet > demand ? pressureAt(locus, demand) : 0;
    now.flow = Math.min(atOutlet, demand);
  }

  /** The pump gives `flow` for a time at one pressure. */
  function holds(time: number, given: number): void {
    now.pumped += given * time;
    if (power !== undefined) now.energy += power(given, headAt(given, now.pressure)) * time;
  }

  /** Energy while a level piece is gone through, the pressure changing and the flow not. */
  function levelEnergy(time: number, rate: number, from: number, to: number = now.pressure): void {
    if (power === undefined) return;
    if (!system.variableSpeed || from === to) {
      now.energy += power(now.flow, headAt(now.flow, to)) * time;
      return;
    }
    now.energy += Math.abs(
      gaussIntegral((p) => (power(now.flow, headAt(now.flow, p)) * bankCompliance(bank, p)) / rate, from, to),
    );
  }

  /** Head the pump makes to give a flow into a pressure, the loss in the main included. */
  function headAt(q: number, p: number): number {
    const { staticLevel, rise, aquiferLoss, wellLoss } = system;
    return p / weight + staticLevel + rise + q * (aquiferLoss + wellLoss * q) + system.lossAt(q);
  }

  function storedAt(p: number): number {
    return p > opening ? bankWater(bank, p) - dead : 0;
  }

  function pressureOf(stored: number, highest: number): number {
    return Math.max(opening, bankPressure(bank, stored + dead, highest));
  }

  function resting(limit: number, demand: number, heldOff: boolean): Outcome {
    now.flow = 0;
    now.pumped = now.refused = now.energy = 0;
    const floor = heldOff ? 0 : waterAtCutIn;
    if (!heldOff && now.pressure <= cutIn) {
      now.elapsed = 0;
      return "cut-in";
    }
    if (!(now.water > 0)) {
      // Nothing stored and no pump: the pressure is gone as soon as a tap opens.
      if (demand > 0) now.pressure = 0;
      now.elapsed = demand > 0 && !heldOff && now.pressure <= cutIn ? 0 : limit;
      now.refused += demand * now.elapsed;
      return now.elapsed === 0 ? "cut-in" : "limit";
    }
    const time = Math.max(0, now.water - floor) / demand;
    if (time <= limit) {
      now.elapsed = time;
      now.water = floor;
      // With the precharge at the cut-in the pump starts as the last water leaves, and no pressure is lost.
      const empties = heldOff || opening > cutIn;
      now.pressure = empties ? opening : cutIn;
      return empties ? "tank empty" : "cut-in";
    }
    now.elapsed = limit;
    now.water -= demand * limit;
    now.pressure = pressureOf(now.water, now.pressure);
    return "limit";
  }

  function indexAt(p: number): number {
    const found = path.findIndex(({ pHigh, step }) => p < pHigh || (step && p === pHigh));
    return found < 0 ? path.length - 1 : found;
  }

  function ready(piece: LocusPiece): ReadyPiece {
    const { cubic, qLow, qHigh, pLow, pHigh } = piece;
    const step = cubic !== undefined && !(pHigh > pLow);
    const q: number[] = [];
    const weighted: number[] = [];
    const powers: number[] = [];
    if (cubic !== undefined && !step) {
      for (let i = 0; i < GAUSS_POINTS; i++) {
        const at = gaussPoint(i, qLow, qHigh);
        q.push(at);
        weighted.push(gaussWeight(i, qLow, qHigh) * integrand(cubic, at));
        powers.push(power === undefined ? 0 : power(at, headAt(at, valueAt(cubic, at))));
      }
    }
    return {
      ...piece,
      step,
      q,
      weighted,
      stored: weighted.reduce((sum, part) => sum + part, 0),
      power: powers,
      waterLow: storedAt(pLow),
      waterHigh: storedAt(pHigh),
    };
  }
}

/** `x` where it lies between two ends in either order, otherwise `instead`. */
function within(x: number, a: number, b: number, instead: number): number {
  return (x - a) * (x - b) <= 0 ? x : instead;
}

/** The flow at which the well is drawn down by `drawdown`, infinite where none does it. */
function flowOfDrawdown({ aquiferLoss: B, wellLoss: C }: CompiledSystem, drawdown: number): number {
  if (!(drawdown > 0)) return 0;
  if (!Number.isFinite(drawdown)) return Infinity;
  // The root that does not cancel; 0/0 cannot arise as the drawdown is above 0.
  const root = (2 * drawdown) / (B + Math.sqrt(B * B + 4 * C * drawdown));
  return Number.isFinite(root) ? root : Infinity;
}
