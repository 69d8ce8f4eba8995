/**
 * Between laminar and turbulent flow, where no law is published: a cubic that joins the two laws.
 *
 * G = f Re² is the head loss without dimensions (h = G ν² L / (2 g D³)). Over its laminar end, 64 · 2000, and with
 * t = Re/2000 − 1 from 0 to 1, it is the cubic 1 + t + square t² + cube t³ that meets both laws in value and slope. It
 * rises strictly, since neither end slope is over three times the chord's: the chord rises by e − 1, where e = 125 f is
 * at least 4.9; the ends by 1 and by less than e.
 *
 * @module
 */
import { colebrookFactor, colebrookSlope } from "./colebrook.ts";

/** Up to this Reynolds number the flow is taken as laminar. */
export const LAMINAR_END = 2000;
/** From this Reynolds number on the flow is taken as turbulent: twice the first, on which the cubic's form rests. */
export const TURBULENT_START = 4000;
/** f Re² at the laminar end. */
const UNIT = 64 * 2000;

/** The cubic's last two coefficients. */
export type Bridge = readonly [square: number, cube: number];

/** The cubic for a wall of this relative roughness. */
export function bridge(relativeRoughness: number): Bridge {
  const factor = colebrookFactor(TURBULENT_START, relativeRoughness);
  const end = 125 * factor; // 4000² / (64 · 2000)
  // Slope with t at the turbulent end: (2 + d ln f / d ln Re) e Re' / Re, and Re' / Re is a half.
  const last = (1 + colebrookSlope(TURBULENT_START, relativeRoughness, factor) / 2) * end;
  return [3 * end - 5 - last, 3 + last - 2 * end];
}

/** f and d ln f / d ln Re on the bridge. */
export function onBridge([square, cube]: Bridge, reynolds: number): { readonly value: number; readonly slope: number } {
  const t = reynolds / LAMINAR_END - 1;
  const G = 1 + t * (1 + t * (square + t * cube));
  const slope = 1 + t * (2 * square + t * 3 * cube);
  return { value: (UNIT * G) / (reynolds * reynolds), slope: (slope * (1 + t)) / G - 2 };
}

/** The Reynolds number at which the bridge has f Re² = G; the caller keeps G between its ends. */
export function reynoldsOnBridge([square, cube]: Bridge, G: number): number {
  let from = 0;
  let to = 1;
  let t = 0.5;
  // Newton's step where it stays inside the bracket, half the bracket otherwise: 60 halvings would do alone.
  for (let i = 0; i < 60; i++) {
    const excess = 1 - G / UNIT + t * (1 + t * (square + t * cube));
    if (excess > 0) to = t;
    else from = t;
    const next = t - excess / (1 + t * (2 * square + t * 3 * cube));
    if (next === t) break;
    t = next > from && next < to ? next : (from + to) / 2;
  }
  return LAMINAR_END * (1 + t);
}
