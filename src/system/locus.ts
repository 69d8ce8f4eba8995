/**
 * What the running pump delivers at each pressure at the tank, where the well's level follows its flow at once.
 *
 * A path of pieces from low pressure to high, along which flow never rises: level pieces, where a valve or the end of the
 * curve fixes the flow; curved ones, where the pressure is a cubic in the flow; and steps, curved pieces of no slope,
 * where a regulator without droop holds one pressure over a range of flows. Ends of neighbours are equal to the bit.
 *
 * @module
 */
import { type AirBank, lowestOpening } from "../tank/bank.ts";
import { InputError } from "../units/index.ts";
import type { CompiledSystem, Regulator } from "./compile.ts";
import { added, type CubicPiece, crossings, cut, falls, valueAt, whereAt } from "./cubic-pieces.ts";

/** One piece of the path. */
export interface LocusPiece {
  /** Pressure and flow at its low-pressure end. */
  readonly pLow: number;
  readonly qHigh: number;
  /** Pressure and flow at its high-pressure end. */
  readonly pHigh: number;
  readonly qLow: number;
  /** Pressure against flow; undefined for a level piece. */
  readonly cubic: CubicPiece | undefined;
}

/** Pressures lie between these, Pa: far past what is accepted, so that the path covers every case. */
const BOTTOM = -1e30;
const TOP = 1e9;

/** Greatest ratio of absolute pressures over one piece: keeps twelve-point quadrature at rounding. */
const WIDEST = 2;

/** The path from no absolute pressure to the top. */
export function deliveryLocus(system: CompiledSystem): readonly LocusPiece[] {
  const { makes, weight, staticLevel, rise, aquiferLoss, wellLoss, mostFlow, regulator } = system;
  const lift = { from: 0, to: mostFlow, c0: staticLevel + rise, c1: aquiferLoss, c2: wellLoss, c3: 0 };
  const base = added(makes, [lift], -1).map(({ from, to, c0, c1, c2, c3 }) => ({
    from,
    to,
    c0: weight * c0,
    c1: weight * c1,
    c2: weight * c2,
    c3: weight * c3,
  }));
  for (const piece of base) {
    if (!falls(piece)) {
      throw new InputError("system.pump", piece.from, "a pressure at the tank that falls as the flow grows");
    }
  }
  const curves = regulator === undefined ? base : regulated(base, regulator);
  return joined(curves, mostFlow);
}

/** The curve with the flows above the regulator's least held to the pressure it allows. */
function regulated(base: readonly CubicPiece[], regulator: Regulator): readonly CubicPiece[] {
  const { set, least, droop } = regulator;
  return base.flatMap((whole) => {
    if (whole.to <= least) return [whole];
    const head = whole.from < least ? [cut(whole, whole.from, least)] : [];
    const from = Math.max(whole.from, least);
    const held = { from, to: whole.to, c0: set - droop * (from - least), c1: -droop, c2: 0, c3: 0 };
    const free = cut(whole, from, whole.to);
    const ends = [from, ...crossings(free, held), whole.to];
    const parts = ends.slice(1).map((to, i) => {
      const begin = ends[i] as number;
      const middle = begin + (to - begin) / 2;
      return cut(valueAt(free, middle) < valueAt(held, middle) ? free : held, begin, to);
    });
    return [...head, ...parts];
  });
}

/** Pieces in order of pressure, with the level ones between. */
function joined(curves: readonly CubicPiece[], mostFlow: number): readonly LocusPiece[] {
  const pieces: LocusPiece[] = [];
  let pressure = BOTTOM;
  let flow = mostFlow;
  const level = (to: number): void => {
    if (to > pressure) pieces.push({ pLow: pressure, pHigh: to, qHigh: flow, qLow: flow, cubic: undefined });
    pressure = Math.max(pressure, to);
  };
  for (const cubic of [...curves].reverse()) {
    // Where the curve jumps up in pressure a regulator passes its least flow; elsewhere this closes a gap of rounding.
    level(valueAt(cubic, cubic.to));
    const pHigh = Math.max(pressure, valueAt(cubic, cubic.from));
    pieces.push({ pLow: pressure, pHigh, qHigh: cubic.to, qLow: cubic.from, cubic });
    pressure = pHigh;
    flow = cubic.from;
  }
  level(TOP);
  return pieces;
}

/** The part of a path on which the tanks take water, cut at every pressure or flow at which something changes. */
export function storagePath(
  system: CompiledSystem,
  locus: readonly LocusPiece[],
  tripFlow: number,
): readonly LocusPiece[] {
  const { bank, cutIn, cutOut } = system;
  const lowest = emptyPressure(bank);
  const absoluteZero = -bank.offset.reduce((low, offset) => Math.min(low, offset), Number.POSITIVE_INFINITY);
  const marks = [cutIn, cutOut, lowest, ...bank.opens];
  for (let p = (lowest - absoluteZero) * WIDEST; p < 1e8 && marks.length < 5000; p *= WIDEST)
    marks.push(p + absoluteZero);
  marks.sort((a, b) => a - b);
  return locus.flatMap((piece) => {
    let rest = piece;
    const parts: LocusPiece[] = [];
    const cutFlow = (flow: number): void => {
      if (!(rest.cubic !== undefined && flow < rest.qHigh && flow > rest.qLow)) return;
      const p = Math.min(Math.max(valueAt(rest.cubic, flow), rest.pLow), rest.pHigh);
      parts.push({ ...rest, pHigh: p, qLow: flow });
      rest = { ...rest, pLow: p, qHigh: flow };
    };
    for (const mark of marks) {
      if (!(mark > rest.pLow && mark < rest.pHigh)) continue;
      const flow = rest.cubic === undefined ? rest.qLow : whereAt(rest.cubic, mark);
      const q = Math.min(Math.max(flow, rest.qLow), rest.qHigh);
      if (tripFlow > q) cutFlow(tripFlow);
      parts.push({ ...rest, pHigh: mark, qLow: q });
      rest = { ...rest, pLow: mark, qHigh: q };
    }
    cutFlow(tripFlow);
    parts.push(rest);
    return parts.filter(({ pLow }) => pLow >= lowest);
  });
}

/** The pressure at which the tanks give no more water: the lowest they open at, and never below that of the open air. */
export function emptyPressure(bank: AirBank): number {
  return Math.max(0, lowestOpening(bank));
}

/** The flow delivered at a pressure; at a step its greatest. */
export function flowAt(locus: readonly LocusPiece[], pressure: number): number {
  const piece = locus.find(({ pHigh }) => pressure <= pHigh) ?? (locus.at(-1) as LocusPiece);
  if (piece.cubic === undefined || pressure <= piece.pLow) return piece.qHigh;
  return Math.min(Math.max(whereAt(piece.cubic, pressure), piece.qLow), piece.qHigh);
}

/** The least pressure at which no more than a flow is delivered. */
export function pressureAt(locus: readonly LocusPiece[], flow: number): number {
  const piece = locus.find(({ qLow }) => qLow <= flow) ?? (locus.at(-1) as LocusPiece);
  if (piece.cubic === undefined || flow >= piece.qHigh) return piece.pLow;
  return Math.min(Math.max(valueAt(piece.cubic, flow), piece.pLow), piece.pHigh);
}
