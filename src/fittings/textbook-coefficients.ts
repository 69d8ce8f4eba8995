/**
 * Resistance coefficients by name, one figure for every size and flow, as a textbook of fluid mechanics prints them.
 *
 * Recalled. Older and rougher than the two-K and three-K methods: threaded fittings of about 1 in are meant.
 *
 * @module
 */

/** Fittings with a textbook coefficient. */
export type TextbookFitting =
  | "elbow 90 flanged"
  | "elbow 90 threaded"
  | "elbow 90 long radius flanged"
  | "elbow 90 long radius threaded"
  | "elbow 45 long radius flanged"
  | "elbow 45 threaded"
  | "return bend flanged"
  | "return bend threaded"
  | "tee run flanged"
  | "tee run threaded"
  | "tee branch flanged"
  | "tee branch threaded"
  | "union threaded"
  | "globe valve open"
  | "angle valve open"
  | "gate valve open"
  | "gate valve quarter closed"
  | "gate valve half closed"
  | "gate valve three quarter closed"
  | "swing check valve"
  | "ball valve open"
  | "ball valve one third closed"
  | "ball valve two thirds closed";

/**
 * Resistance coefficient of each fitting.
 *
 * @source munson-2006, table of loss coefficients for pipe components, recalled
 */
export const textbookCoefficients: Readonly<Record<TextbookFitting, number>> = {
  "elbow 90 flanged": 0.3,
  "elbow 90 threaded": 1.5,
  "elbow 90 long radius flanged": 0.2,
  "elbow 90 long radius threaded": 0.7,
  "elbow 45 long radius flanged": 0.2,
  "elbow 45 threaded": 0.4,
  "return bend flanged": 0.2,
  "return bend threaded": 1.5,
  "tee run flanged": 0.2,
  "tee run threaded": 0.9,
  "tee branch flanged": 1,
  "tee branch threaded": 2,
  "union threaded": 0.08,
  "globe valve open": 10,
  "angle valve open": 2,
  "gate valve open": 0.15,
  "gate valve quarter closed": 0.26,
  "gate valve half closed": 2.1,
  "gate valve three quarter closed": 17,
  "swing check valve": 2,
  "ball valve open": 0.05,
  "ball valve one third closed": 5.5,
  "ball valve two thirds closed": 210,
};
