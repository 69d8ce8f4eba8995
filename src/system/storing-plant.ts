/**
 * Hydraulics with a well that stores water in its bore: two states, the water in the tanks and the drawdown.
 *
 * While the pump runs, dw/dt = Q − q and A ds/dt = Q − Q_in(s), with Q from the head the pump makes against pressure and
 * level; integrated in adaptive steps, each event found on the step that passes it. At rest both have closed forms.
 *
 * @module
 */
import { findRoot } from "../numeric/index.ts";
import { dormandPrince, type StepRoom, stepOn, stepRoom, within } from "../numeric/runge-kutta.ts";
import { bankPressure, bankWater } from "../tank/bank.ts";
import { InputError } from "../units/index.ts";
import type { CompiledSystem } from "./compile.ts";
import { type CubicPiece, falls, valueAt } from "./cubic-pieces.ts";
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
  const { bank, cutIn, cutOut, makes, mostFlow, weight, power, variableSpeed, freeArea } = system;
  const { aquiferLoss: B, wellLoss: C } = system;
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
  const last = makes.length - 1;
  const { to: endFlow } = makes[last] as CubicPiece;
  const endHead = valueAt(makes[last] as CubicPiece, endFlow);
  // One tank of slow air, the usual case, has its law written out.
  const oneTank = bank.amount.length === 1 && bank.power === 1;
  const amount = bank.amount[0] as number;
  const offset = bank.offset[0] as number;
  const airOfOneTank = (bank.volume[0] as number) - dead;

  // Water stored, drawdown, and since the stretch began: volume pumped, energy used. The rates depend on the first two.
  const room: StepRoom = stepRoom(4, 2);
  const state = Float64Array.of(storedAt(begin.pressure), begin.drawdown, 0, 0);

  // Numbers changed in place, in objects: variables shared by closures would be boxed anew at every change.
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
      now.flow = flowIn(regimeAt(demand), state, demand);
      return at(1) < trip;
    },
    stop() {
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
  const going = {
    regime: "free" as Regime,
    demand: 0,
    left: 0,
    /** Length of the step to try next, s. */
    step: 1,
    /** Whether the first stage holds the rates of the state. */
    ratesKnown: false,
    // Where the last search for a flow ended, and the slope there: the next begins on that tangent.
    piece: last,
    flow: 0,
    head: 0,
    perHead: 0,
  };
  return now;

  /** Shows outside how things stand after a stretch. */
  function shown(outcome: Outcome): Outcome {
    now.water = at(0);
    now.pumped = at(2);
    now.energy = at(3);
    now.memory = at(1);
    return outcome;
  }

  function running(limit: number, demand: number): Outcome {
    going.demand = demand;
    going.left = limit;
    going.ratesKnown = false;
    now.refused = state[2] = state[3] = 0;
    let moved = false;
    let outcome: Outcome | undefined;
    while (outcome === undefined) {
      if (at(1) >= trip) outcome = "low level";
      else if (at(1) >= dry) outcome = "ran dry";
      else if (!(going.left > 0)) outcome = "limit";
      else if (++now.steps > begin.mostSteps) outcome = "given up";
      else {
        const regime = regimeAt(demand);
        if (regime !== going.regime) going.ratesKnown = false;
        going.regime = regime;
        moved = true;
        const mark = advance();
        if (mark === "cut-out" || mark === "tank empty") outcome = mark;
      }
    }
    now.elapsed = outcome === "limit" ? limit : limit - going.left;
    if (outcome === "cut-out") {
      now.pressure = cutOut;
      now.flow = 0;
    } else if (moved) {
      now.pressure = pressureIn(going.regime, state, demand);
      now.flow = flowIn(going.regime, state, demand);
    }
    return outcome;
  }

  /** One step of time, or less where a mark is passed in it. */
  function advance(): Mark | undefined {
    const { left } = going;
    const start = room.stages[0] as Float64Array;
    if (!going.ratesKnown) rates(state, start);
    // Nothing moves any more: the rest of the time passes at once.
    if (
      Math.abs(start[0] as number) * left <= STILL * waterAtCutOut &&
      Math.abs(start[1] as number) * left <= STILL * Math.max(1, at(1))
    ) {
      for (let i = 2; i < 4; i++) state[i] = at(i) + (start[i] as number) * left;
      refuse(left, (start[2] as number) * left);
      going.left = 0;
      return undefined;
    }
    let h = Math.min(going.step, left);
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
      const mark = firstPassed(state, room.next);
      if (mark === undefined) {
        const next = h * Math.min(5, Math.max(0.2, 0.9 * Math.max(error, 1e-10) ** -0.2));
        // A step cut short by the end of the stretch says nothing against the one meant.
        going.step = h < left ? next : Math.max(next, going.step);
        take(h);
        return undefined;
      }
      const before = excessOf(mark, state);
      if (before >= 0 && h > SHORTEST_STEP) {
        // It stands at the mark and comes back to it: a shorter step sees it leave first.
        h = Math.max(SHORTEST_STEP, h / 4);
        continue;
      }
      if (before < 0) {
        h = passing(mark, h, before);
        dormandPrince(rates, state, h, room);
        h += ontoMark(mark, h);
      }
      take(h);
      going.ratesKnown = false;
      if (mark === "cut-out") state[0] = waterAtCutOut;
      if (mark === "tank empty") state[0] = 0;
      if (mark === "set") state[0] = waterAtSet;
      if (mark === "low level") state[1] = trip;
      if (mark === "ran dry") state[1] = dry;
      return mark;
    }
  }

  /** When within the step just taken a mark is passed, by the states on the way, which err no more than the step does. */
  function passing(mark: Mark, h: number, before: number): number {
    const after = excessOf(mark, room.next);
    const excess = (share: number): number => {
      if (share === 0) return before;
      return share === 1 ? after : excessOf(mark, within(state, h, share, room));
    };
    // Never less than the shortest step: a mark met again at once must not stop the clock.
    return Math.min(h, Math.max(SHORTEST_STEP, h * findRoot(excess, 0, 1, 1e-14).x));
  }

  /** Moves the end of a step that errs by a little onto the mark, along the rates there; the time that takes. */
  function ontoMark(mark: Mark, h: number): number {
    const { next, state: beyond } = room;
    const end = room.stages[6] as Float64Array;
    const probe = 1e-6 * h;
    for (let i = 0; i < 2; i++) beyond[i] = (next[i] as number) + probe * (end[i] as number);
    const excess = excessOf(mark, next);
    const time = Math.min((-excess * probe) / (excessOf(mark, beyond) - excess), going.left - h);
    // Where it only touches the mark, or h is too short to tell, it stays as it is.
    if (!(Math.abs(time) <= 1e-3 * h)) return 0;
    for (let i = 0; i < 4; i++) next[i] = (next[i] as number) + time * (end[i] as number);
    return time;
  }

  function take(h: number): void {
    const pumpedBefore = at(2);
    for (let i = 0; i < 4; i++) state[i] = room.next[i] as number;
    stepOn(room);
    going.ratesKnown = true;
    if (at(1) < 0) {
      state[1] = 0;
      going.ratesKnown = false;
    }
    refuse(h, at(2) - pumpedBefore);
    going.left -= h;
  }

  /** Counts what is not delivered in a time. */
  function refuse(time: number, given: number): void {
    if (going.regime === "empty") now.refused += Math.max(0, going.demand * time - given);
  }

  function rates(y: Float64Array, out: Float64Array): void {
    const { regime, demand } = going;
    const q = flowIn(regime, y, demand);
    out[0] = regime === "at set" || regime === "empty" ? 0 : q - demand;
    out[1] = (q - inflow(y[1] as number)) / freeArea;
    out[2] = q;
    // At full speed the power follows from the flow alone.
    out[3] = power === undefined ? 0 : power(q, variableSpeed ? headAt(q, y) : 0);
  }

  /** What a step passed, if anything; where several, the one that is looked at first by its place in the list. */
  function firstPassed(from: Float64Array, to: Float64Array): Mark | undefined {
    let first: Mark | undefined;
    let soonest = Infinity;
    for (const mark of MARKS) {
      const after = excessOf(mark, to);
      if (!(after > 0)) continue;
      // By proportion, which of several is passed first; the search then finds it exactly.
      const before = Math.min(0, excessOf(mark, from));
      const part = before / (before - after);
      if (part < soonest) {
        soonest = part;
        first = mark;
      }
    }
    return first;
  }

  /** How far a state is past a mark: above 0 once it is passed. */
  function excessOf(mark: Mark, y: Float64Array): number {
    const { regime, demand } = going;
    const water = y[0] as number;
    const drawdown = y[1] as number;
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
  function flowIn(regime: Regime, y: Float64Array, demand: number): number {
    const drawdown = y[1] as number;
    if (regime === "at set") return demand;
    if (regime === "empty") return Math.min(demand, regulatedFlow(0, drawdown));
    const p = pressureOf(y[0] as number);
    if (regime === "above set") return Math.min((stepAt as { least: number }).least, baseFlow(p, drawdown));
    return stepAt === undefined ? regulatedFlow(p, drawdown) : baseFlow(p, drawdown);
  }

  function pressureIn(regime: Regime, y: Float64Array, demand: number): number {
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
    if (head <= endHead) return endFlow;
    let i = going.piece;
    while (i < last && head <= (makes[i + 1] as CubicPiece).c0) i++;
    while (i >= 0 && head > (makes[i] as CubicPiece).c0) i--;
    if (i < 0) return 0;
    going.piece = i;
    const { from, to, c0, c1, c2, c3 } = makes[i] as CubicPiece;
    // Newton kept in its bracket. The tangent at the last flow found gives the guess, and saves one step in three.
    const guess = going.flow + (head - going.head) * going.perHead;
    const end = to - from;
    let t = guess > from && guess < to ? guess - from : end / 2;
    let low = 0;
    let high = end;
    let perHead = 0;
    const small = 1e-15 * to;
    for (let n = 0; n < 100; n++) {
      const excess = c0 - head + t * (c1 + t * (c2 + t * c3));
      perHead = 1 / (c1 + t * (2 * c2 + t * 3 * c3));
      if (excess > 0) low = t;
      else high = t;
      const before = t;
      const move = excess * perHead;
      t -= move;
      if (!(t >= low && t <= high)) t = low + (high - low) / 2;
      // What is left after a Newton step is curvature over slope times half its square.
      else if (move * move * Math.abs((c2 + 3 * c3 * before) * perHead) <= small) break;
      if (Math.abs(t - before) <= small) break;
    }
    going.flow = from + t;
    going.head = head;
    going.perHead = perHead;
    return going.flow;
  }

  function headAt(q: number, y: Float64Array): number {
    return pressureIn(going.regime, y, going.demand) / weight + lift + (y[1] as number) + system.lossAt(q);
  }

  function resting(limit: number, demand: number, heldOff: boolean): Outcome {
    now.flow = now.refused = state[2] = state[3] = 0;
    const floor = heldOff ? 0 : waterAtCutIn;
    if (!heldOff && now.pressure <= cutIn) {
      now.elapsed = 0;
      return "cut-in";
    }
    if (!(at(0) > 0)) {
      if (demand > 0) now.pressure = 0;
      now.elapsed = demand > 0 && !heldOff && now.pressure <= cutIn ? 0 : limit;
      now.refused = demand * now.elapsed;
      recover(now.elapsed);
      return now.elapsed === 0 ? "cut-in" : "limit";
    }
    const time = Math.max(0, at(0) - floor) / demand;
    // Not so for 0/0, nothing stored above the floor and nothing used.
    const reaches = time <= limit;
    now.elapsed = reaches ? time : limit;
    recover(now.elapsed);
    if (reaches) {
      state[0] = floor;
      // With the precharge at the cut-in the pump starts as the last water leaves, and no now.pressure is lost.
      const empties = heldOff || opening > cutIn;
      now.pressure = empties ? opening : cutIn;
      return empties ? "tank empty" : "cut-in";
    }
    state[0] = at(0) - demand * limit;
    now.pressure = pressureOf(at(0));
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
    if (!(stored > 0)) return opening;
    if (!oneTank) return Math.max(opening, bankPressure(bank, stored + dead, 2e8));
    return Math.min(Math.max(amount / (airOfOneTank - stored) - offset, opening), 2e8);
  }

  function at(i: number): number {
    return state[i] as number;
  }
}

/** What a step may pass. */
type Mark = "cut-out" | "low level" | "ran dry" | "tank empty" | "set" | "regime";
const MARKS: readonly Mark[] = ["cut-out", "low level", "ran dry", "tank empty", "set", "regime"];
