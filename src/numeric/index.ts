/**
 * Guards, root finding and constants shared by every floor. Private: not in the package's exports.
 *
 * @module
 */
export { erf, erfc, scaledErfc } from "./erf.ts";
export { findRoot, type Root } from "./find-root.ts";
export {
  GAUSS_POINTS,
  gaussIntegral,
  gaussPoint,
  gaussWeight,
  SHORT_POINTS,
  SHORT_WEIGHTS,
} from "./gauss-legendre.ts";
export { STANDARD_GRAVITY } from "./gravity.ts";
export {
  requireBoolean,
  requireList,
  requireObject,
  requireOneOf,
  requirePositive,
  requireWhole,
  requireWithin,
} from "./guards.ts";
export { type Integral, integrate } from "./integrate.ts";
export { type LeastSquares, leastSquares } from "./least-squares.ts";
export { type CubicLine, cubicSlope, cubicValue, monotoneCubic } from "./monotone-cubic.ts";
export { polyline } from "./polyline.ts";
export { dormandPrince, type Rates, type StepRoom, stepRoom } from "./runge-kutta.ts";
export { sameBitsExp, sameBitsLog } from "./same-bits.ts";
