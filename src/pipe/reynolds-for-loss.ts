/**
 * Reynolds number from a head loss, without guessing: the friction factor's three laws, turned around.
 *
 * @module
 */
import { bridge, LAMINAR_END, reynoldsOnBridge, TURBULENT_START } from "./bridge.ts";
import { minusLogLess } from "./minus-log.ts";

/** 2 / ln 10. */
const TWO_OVER_LN10 = 0.8685889638065036;

/**
 * Reynolds number at which f Re² = G. Given G, Re √f = √G stands on the right of Colebrook's equation alone, so that
 * 1/√f = −2 log₁₀(k/3.7 + 2.51/√G) is no longer implicit.
 */
export function reynoldsForLoss(G: number, relativeRoughness: number): number {
  const laminar = G / 64;
  if (laminar <= LAMINAR_END) return laminar;
  const root = Math.sqrt(G);
  const turbulent = root * TWO_OVER_LN10 * minusLogLess(relativeRoughness / 3.7 + 2.51 / root, 0);
  return turbulent >= TURBULENT_START ? turbulent : reynoldsOnBridge(bridge(relativeRoughness), G);
}
