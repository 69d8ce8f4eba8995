/**
 * Hydraulics with a well that stores water in its bore: two states, the water in the tanks and the drawdown.
 *
 * While the pump runs, dw/dt = Q − q and A ds/dt = Q − Q_in(s), with Q from the head the pump makes against pressure and
 * level; integrated in adaptive steps, each event found on the step that passes it. At rest both have closed forms.
 *
 * @module
 */
import { dormandPrince, findRoot, type StepRoom, stepRoom } from "../numeric/index.ts";
import { bankPressure, bankWater } from "../tank/bank.ts";
import { InputError } from "../units/index.ts";
import type { CompiledSystem } from "./compile.ts";
import { type CubicPiece, falls, slopeAt, valueAt } from "./cubic-pieces.ts";
import { emptyPressure } from "./locus.ts";
import type { Mutable, Outcome, Plant, PlantStart } from "./plant.ts";

/** Error allowed a step, as a share of the water at the cut-out and of a metre of drawdown. */
const TOLERANCE = 1e-9;

/** A rest of less than this share is no movement. */
const STILL = 1e-13;

/** A step shorter than this, s, is taken whatever it passes. */
const SHORTEST_STEP = 1e-9;

/** How the flow follows from the state. "at set" holds the pressure by giving what is used; "empty" has no water stored. */
type Regime = "free" | "at set" | "above set" | "empty";

/** A plant whose well remembers. */
export function storingPlant(system: CompiledSystem, begin: PlantStart): Plant {
  const { bank, cutIn, cutOut, makes, mostFlow, weight, power, freeArea, aquiferLoss: B, wellLoss: C } = system;
  for (const piece of makes) {
    if (!falls(piece))
      throw new InputError("system.pump", piece.from, "a head at the tank that falls as the flow grows");
  }
  const regulator = system.regulator !== undefined && system.regulator.least < mostFlow ? system.regulator : undefined;
  // A regulator without droop switches between regimes; with droop its flow is a function of the pressure like any other.
  const stepAt = regulator !== undefined && regulator.droop === 0 ? regulator : undefined;
  const opening = emptyPressure(bank);
  const dead = bankWater(bank, opening);
  const waterAtCutIn = storedAt(cutIn);
  const waterAtCutOut = storedAt(cutOut);
  const waterAtSet = stepAt === undefined ? Infinity : storedAt(stepAt.set);
  const lift = system.staticLevel + system.rise;
  const trip = (system.lowLevel?.stopLevel ?? Infinity) - system.staticLevel;
  const dry = system.intake - system.staticLevel;
  /** Flows nearer than this are equal. */
  const alike = 1e-12 * mostFlow;
  const room: StepRoom = stepRoom(4);

  // Water stored, drawdown, and since the stretch began: volume pumped, energy used.
  let state: number[] = [storedAt(begin.pressure), begin.drawdown, 0, 0];
  let pressure = begin.pressure;
  let flow = 0;
  let elapsed = 0;
  let refused = 0;
  let step = 1;
  let steps = 0;
  // Where the last search for a flow ended: the next begins there.
  let lastFlow = 0;

  const now: Mutable<Plant> = {
    water: at(0),
    pressure: begin.pressure,
    flow: 0,
    elapsed: 0,
    pumped: 0,
    refused: 0,
    energy: 0,
    steps: 0,
    memory: at(1),
    depth: () => system.staticLevel + at(1),
    start(demand) {
      flow = flowIn(regimeAt(demand), state, demand);
      now.flow = flow;
      return at(1) < trip;
    },
    stop() {
      flow = 0;
      now.flow = 0;
    },
    running: (limit, demand) => shown(running(limit, demand)),
    resting: (limit, demand, heldOff) => shown(resting(limit, demand, heldOff)),
    recoveryTime(depth) {
      const target = depth - system.staticLevel;
      if (at(1) <= target) return 0;
      return target > 0 ? recovering(inflow(at(1)), inflow(target)) : Infinity;
    },
  };
  return now;

  /** Shows outside how things stand after a stretch. */
  function shown(outcome: Outcome): Outcome {
    now.water = at(0);
    now.pressure = pressure;
    now.flow = flow;
    now.elapsed = elapsed;
    now.pumped = at(2);
    now.refused = refused;
    now.energy = at(3);
    now.steps = steps;
    now.memory = at(1);
    return outcome;
  }

  function running(limit: number, demand: number): Outcome {
    let left = limit;
    let spent = 0;
    refused = state[2] = state[3] = 0;
    for (;;) {
      if (at(1) >= trip) return ended("low level");
      if (at(1) >= dry) return ended("ran dry");
      if (!(left > 0)) return ended("limit");
      if (++steps > begin.mostSteps) return ended("given up");
      const regime = regimeAt(demand);
      const passed = advance(regime, demand);
      if (passed === "cut-out") {
        state[0] = waterAtCutOut;
        pressure = cutOut;
        flow = 0;
        return ended("cut-out");
      }
      if (passed === "tank empty") {
        state[0] = 0;
        return ended("tank empty");
      }
    }

    /** One step of time, or less where something is passed in it. */
    function advance(regime: Regime, demand: number): Outcome {
      const rates = (y: readonly number[], out: number[]): void => {
        const q = flowIn(regime, y, demand);
        out[0] = regime === "at set" || regime === "empty" ? 0 : q - demand;
        out[1] = (q - inflow(y[1] as number)) / freeArea;
        out[2] = q;
        out[3] = power === undefined ? 0 : power(q, headAt(q, y));
      };
      // Nothing moves any more: the rest of the time passes at once.
      const now = [0, 0, 0, 0];
      rates(state, now);
      if (
        Math.abs(now[0] as number) * left <= STILL * waterAtCutOut &&
        Math.abs(now[1] as number) * left <= STILL * Math.max(1, at(1))
      ) {
        state = [at(0), at(1), at(2) + (now[2] as number) * left, at(3) + (now[3] as number) * left];
        settle(regime, left, (now[2] as number) * left, demand);
        left = 0;
        return "limit";
      }
      let h = Math.min(step, left);
      for (;;) {
        dormandPrince(rates, state, h, room);
        const error = Math.max(
          Math.abs(room.error[0] as number) / (TOLERANCE * waterAtCutOut),
          Math.abs(room.error[1] as number) / (TOLERANCE * Math.max(1, at(1))),
        );
        if (error > 1 && h > SHORTEST_STEP) {
          h = Math.max(SHORTEST_STEP, h * Math.max(0.2, 0.9 * error ** -0.2));
          continue;
        }
        const event = firstPassed(regime, state, room.next, demand);
        if (event === undefined) {
          const whole = h >= left;
          step = h * Math.min(5, Math.max(0.2, 0.9 * Math.max(error, 1e-10) ** -0.2));
          take(regime, h, demand);
          if (whole) left = 0;
          return "limit";
        }
        const excess = (y: readonly number[]): number => excessOf(event, regime, y, demand);
        if (excess(state) >= 0 && h > SHORTEST_STEP) {
          // It stands at the mark and comes back to it: a shorter step sees it leave first.
          h = Math.max(SHORTEST_STEP, h / 4);
          continue;
        }
        const from = state;
        if (excess(from) < 0) {
          const reach = (part: number): number => {
            dormandPrince(rates, from, part, room);
            return excess(room.next);
          };
          // Never less than the shortest step: a mark met again at once must not stop the clock.
          const found = Math.min(h, Math.max(SHORTEST_STEP, findRoot(reach, 0, h, 1e-14 * h).x));
          dormandPrince(rates, from, found, room);
          h = found;
        }
        take(regime, h, demand);
        if (event === "set") {
          state[0] = waterAtSet;
          pressure = (stepAt as { set: number }).set;
        }
        if (event === "low level") state[1] = trip;
        if (event === "ran dry") state[1] = dry;
        return event === "cut-out" || event === "tank empty" ? event : "limit";
      }
    }

    function take(regime: Regime, h: number, demand: number): void {
      const before = at(2);
      state = [...room.next];
      state[1] = Math.max(0, at(1));
      settle(regime, h, at(2) - before, demand);
      left -= h;
      spent += h;
    }

    /** Pressure and flow that belong to the state, and what was refused on the way. */
    function settle(regime: Regime, time: number, given: number, demand: number): void {
      pressure = pressureIn(regime, state, demand);
      flow = flowIn(regime, state, demand);
      if (regime === "empty") refused += Math.max(0, demand * time - given);
    }

    function ended(outcome: Outcome): Outcome {
      elapsed = outcome === "limit" ? limit : spent;
      return outcome;
    }
  }

  /** What a step passed, if anything; where several, the one that is looked at first by its place in the list. */
  function firstPassed(
    regime: Regime,
    from: readonly number[],
    to: readonly number[],
    demand: number,
  ): Mark | undefined {
    let first: Mark | undefined;
    let soonest = Infinity;
    for (const mark of MARKS) {
      const after = excessOf(mark, regime, to, demand);
      if (!(after > 0)) continue;
      // By proportion, which of several is passed first; the search then finds it exactly.
      const before = Math.min(0, excessOf(mark, regime, from, demand));
      const part = before / (before - after);
      if (part < soonest) {
        soonest = part;
        first = mark;
      }
    }
    return first;
  }

  /** How far a state is past a mark: above 0 once it is passed. */
  function excessOf(mark: Mark, regime: Regime, y: readonly number[], demand: number): number {
    const [water, drawdown] = y as [number, number];
    switch (mark) {
      case "cut-out":
        return regime === "free" || regime === "above set" ? water - waterAtCutOut : -1;
      case "low level":
        return drawdown - trip;
      case "ran dry":
        return drawdown - dry;
      case "tank empty":
        return regime === "free" ? -water : -1;
      case "set":
        if (stepAt === undefined) return -1;
        if (regime === "free") return water - waterAtSet;
        return regime === "above set" ? waterAtSet - water : -1;
      case "regime":
        if (regime === "at set") return demand - alike - baseFlow((stepAt as { set: number }).set, drawdown);
        return regime === "empty" ? openFlow(drawdown) - demand : -1;
    }
  }

  function regimeAt(demand: number): Regime {
    if (!(at(0) > 0) && !(openFlow(at(1)) > demand)) return "empty";
    if (stepAt === undefined) return "free";
    const { least } = stepAt;
    if (at(0) < waterAtSet) return "free";
    if (at(0) > waterAtSet) return "above set";
    const base = baseFlow(stepAt.set, at(1));
    if (demand >= least) return base >= demand - alike ? "at set" : "free";
    return Math.min(least, base) >= demand ? "above set" : "free";
  }

  /** The pump's flow in a state. */
  function flowIn(regime: Regime, y: readonly number[], demand: number): number {
    const drawdown = y[1] as number;
    if (regime === "at set") return demand;
    if (regime === "empty") return Math.min(demand, regulatedFlow(0, drawdown));
    const p = pressureOf(y[0] as number);
    if (regime === "above set") return Math.min((stepAt as { least: number }).least, baseFlow(p, drawdown));
    return stepAt === undefined ? regulatedFlow(p, drawdown) : baseFlow(p, drawdown);
  }

  function pressureIn(regime: Regime, y: readonly number[], demand: number): number {
    if (regime !== "empty") return regime === "at set" ? (stepAt as { set: number }).set : pressureOf(y[0] as number);
    if (regulatedFlow(0, y[1] as number) <= demand) return 0;
    // Between the open air and the pressure at which the tanks open, where the pump gives just what is used.
    const surplus = (p: number): number => regulatedFlow(p, y[1] as number) - demand;
    return surplus(opening) >= 0 ? opening : findRoot(surplus, 0, opening).x;
  }

  /** Flow at the pressure where the tanks begin to fill. */
  function openFlow(drawdown: number): number {
    return regulatedFlow(opening, drawdown);
  }

  /** The pump's flow at a pressure through the regulator, a step taken at its lower pressure. */
  function regulatedFlow(p: number, drawdown: number): number {
    const base = baseFlow(p, drawdown);
    if (regulator === undefined) return base;
    const { set, least, droop } = regulator;
    if (p > set) return Math.min(least, base);
    return droop > 0 ? Math.min(least + (set - p) / droop, base) : base;
  }

  /** The pump's flow at a pressure with nothing between. */
  function baseFlow(p: number, drawdown: number): number {
    const head = p / weight + lift + drawdown;
    const last = makes.length - 1;
    for (let i = last; i >= 0; i--) {
      const piece = makes[i] as (typeof makes)[number];
      if (i === last && head <= valueAt(piece, piece.to)) return piece.to;
      if (head > piece.c0) continue;
      lastFlow = flowOnPiece(piece, head, lastFlow);
      return lastFlow;
    }
    return 0;
  }

  function headAt(q: number, y: readonly number[]): number {
    const p = (y[0] as number) > 0 ? pressureOf(y[0] as number) : 0;
    return p / weight + lift + (y[1] as number) + system.lossAt(q);
  }

  function resting(limit: number, demand: number, heldOff: boolean): Outcome {
    flow = refused = state[2] = state[3] = 0;
    const floor = heldOff ? 0 : waterAtCutIn;
    if (!heldOff && pressure <= cutIn) {
      elapsed = 0;
      return "cut-in";
    }
    if (!(at(0) > 0)) {
      if (demand > 0) pressure = 0;
      elapsed = demand > 0 && !heldOff && pressure <= cutIn ? 0 : limit;
      refused = demand * elapsed;
      recover(elapsed);
      return elapsed === 0 ? "cut-in" : "limit";
    }
    const time = Math.max(0, at(0) - floor) / demand;
    // Not so for 0/0, nothing stored above the floor and nothing used.
    const reaches = time <= limit;
    elapsed = reaches ? time : limit;
    recover(elapsed);
    if (reaches) {
      state[0] = floor;
      // With the precharge at the cut-in the pump starts as the last water leaves, and no pressure is lost.
      const empties = heldOff || opening > cutIn;
      pressure = empties ? opening : cutIn;
      return empties ? "tank empty" : "cut-in";
    }
    state[0] = at(0) - demand * limit;
    pressure = pressureOf(at(0));
    return "limit";
  }

  /** The level rises for a time with the pump at rest: A (B + 2 C Q) dQ = −Q dt in the inflow Q. */
  function recover(time: number): void {
    const start = inflow(at(1));
    if (!(start > 0) || !(time > 0)) return;
    const reached = inflowAfter(start, time / freeArea);
    state[1] = reached * (B + C * reached);
  }

  /** Solves B u + 2 C Q₀ (1 − e^(−u)) = t/A for u = ln(Q₀/Q); the left side bends down, so Newton from below only rises. */
  function inflowAfter(start: number, time: number): number {
    if (C === 0) return start * Math.exp(-time / B);
    if (B === 0) return Math.max(0, start - time / (2 * C));
    let u = time / (B + 2 * C * start);
    for (let i = 0; i < 200; i++) {
      const e = Math.exp(-u);
      const next = u + (time - B * u - 2 * C * start * (1 - e)) / (B + 2 * C * start * e);
      if (!(next > u * (1 + 1e-15))) break;
      u = next;
    }
    return start * Math.exp(-u);
  }

  /** Time at rest for the inflow to fall from one value to another. */
  function recovering(from: number, to: number): number {
    return freeArea * (B * Math.log(from / to) + 2 * C * (from - to));
  }

  /** Flow out of the ground at a drawdown: the root of s = B Q + C Q² that does not cancel. */
  function inflow(drawdown: number): number {
    return drawdown > 0 ? (2 * drawdown) / (B + Math.sqrt(B * B + 4 * C * drawdown)) : 0;
  }

  function storedAt(p: number): number {
    return p > opening ? bankWater(bank, p) - dead : 0;
  }

  function pressureOf(stored: number): number {
    return stored > 0 ? Math.max(opening, bankPressure(bank, stored + dead, 2e8)) : opening;
  }

  function at(i: number): number {
    return state[i] as number;
  }
}

/** What a step may pass. */
type Mark = "cut-out" | "low level" | "ran dry" | "tank empty" | "set" | "regime";
const MARKS: readonly Mark[] = ["cut-out", "low level", "ran dry", "tank empty", "set", "regime"];

/** The flow at which a falling piece makes a head, by Newton kept in its bracket, from a guess where it lies on the piece. */
function flowOnPiece(piece: CubicPiece, head: number, guess: number): number {
  let low = piece.from;
  let high = piece.to;
  const small = 1e-15 * high;
  let x = guess > low && guess < high ? guess : low + (high - low) / 2;
  for (let i = 0; i < 100; i++) {
    const excess = valueAt(piece, x) - head;
    if (excess > 0) low = x;
    else high = x;
    let next = x - excess / slopeAt(piece, x);
    if (!(next >= low && next <= high)) next = low + (high - low) / 2;
    if (Math.abs(next - x) <= small) return next;
    x = next;
  }
  return x;
}
