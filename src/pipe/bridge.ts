/**
 * Between laminar and turbulent flow, where no law is published: a cubic that joins the two laws.
 *
 * G = f Re² is the head loss without dimensions (h = G ν² L / (2 g D³)). As a cubic in Re that meets both laws in
 * value and slope it rises strictly, since neither end slope is over three times the chord's: the laminar end has
 * G' = G/Re, the turbulent end less than 2 G/Re, and the chord is steeper than half of that.
 *
 * @module
 */
import { colebrookFactor, colebrookSlope } from "./colebrook.ts";

/** Up to this Reynolds number the flow is taken as laminar. */
export const LAMINAR_END = 2000;
/** From this Reynolds number on the flow is taken as turbulent. */
export const TURBULENT_START = 4000;

const SPAN = TURBULENT_START - LAMINAR_END;

/** The cubic G = low + t (rise' + t (square + t cube)), t = (Re − 2000)/2000 from 0 to 1. */
export interface Bridge {
  readonly low: number;
  readonly linear: number;
  readonly square: number;
  readonly cube: number;
}

/** The cubic for a wall of this relative roughness. */
export function bridge(relativeRoughness: number): Bridge {
  const factor = colebrookFactor(TURBULENT_START, relativeRoughness);
  const low = 64 * LAMINAR_END;
  const high = factor * TURBULENT_START ** 2;
  // End slopes with t.
  const linear = 64 * SPAN;
  const last = (2 + colebrookSlope(TURBULENT_START, relativeRoughness, factor)) * (high / TURBULENT_START) * SPAN;
  const rise = high - low;
  return { low, linear, square: 3 * rise - 2 * linear - last, cube: linear + last - 2 * rise };
}

/** f and d ln f / d ln Re on the bridge. */
export function onBridge(
  { low, linear, square, cube }: Bridge,
  reynolds: number,
): { readonly value: number; readonly slope: number } {
  const t = (reynolds - LAMINAR_END) / SPAN;
  const G = low + t * (linear + t * (square + t * cube));
  const slope = (linear + t * (2 * square + t * 3 * cube)) / SPAN;
  return { value: G / (reynolds * reynolds), slope: (slope * reynolds) / G - 2 };
}

/** The Reynolds number at which the bridge has this G; the caller keeps G between its ends. */
export function reynoldsOnBridge({ low, linear, square, cube }: Bridge, G: number): number {
  let from = 0;
  let to = 1;
  let t = 0.5;
  // Newton's step where it stays inside the bracket, half the bracket otherwise: 60 halvings would do alone.
  for (let i = 0; i < 60; i++) {
    const excess = low - G + t * (linear + t * (square + t * cube));
    if (excess > 0) to = t;
    else from = t;
    const next = t - excess / (linear + t * (2 * square + t * 3 * cube));
    if (next === t) break;
    t = next > from && next < to ? next : (from + to) / 2;
  }
  return LAMINAR_END + SPAN * t;
}
