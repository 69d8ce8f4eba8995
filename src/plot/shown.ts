/**
 * The quantities of the charts: the unit each is shown in, in words for the axis, and its numbers.
 *
 * @module
 */
import type { UnitSystem } from "../plan/index.ts";
import {
  inFeet,
  inFeetPerSecond,
  inGpm,
  inHours,
  inKilopascals,
  inLitres,
  inLitresPerSecond,
  inMetres,
  inMetresPerSecond,
  inPerHour,
  inPsi,
  inUsGallons,
  inVolts,
} from "../units/index.ts";

/** The quantities a chart has an axis for. */
export type ShownQuantity =
  | "head"
  | "length"
  | "flow"
  | "velocity"
  | "pressure"
  | "volume"
  | "voltage"
  | "time"
  | "starts";

/** A unit: the number in it from SI, its name for an axis, its symbol for a text. */
type Unit = readonly [read: (value: never) => number, words: string, symbol: string];

const UNITS: Readonly<Record<ShownQuantity, Readonly<Record<UnitSystem, Unit>>>> = {
  head: { us: [inFeet, "feet of water", "ft"], metric: [inMetres, "metres of water", "m"] },
  length: { us: [inFeet, "feet", "ft"], metric: [inMetres, "metres", "m"] },
  flow: { us: [inGpm, "gallons per minute", "gpm"], metric: [inLitresPerSecond, "litres per second", "L/s"] },
  velocity: {
    us: [inFeetPerSecond, "feet per second", "ft/s"],
    metric: [inMetresPerSecond, "metres per second", "m/s"],
  },
  pressure: { us: [inPsi, "pounds per square inch", "psi"], metric: [inKilopascals, "kilopascals", "kPa"] },
  volume: { us: [inUsGallons, "gallons", "gal"], metric: [inLitres, "litres", "L"] },
  voltage: { us: [inVolts, "volts", "V"], metric: [inVolts, "volts", "V"] },
  time: { us: [inHours, "hours", "h"], metric: [inHours, "hours", "h"] },
  starts: { us: [inPerHour, "an hour", "an hour"], metric: [inPerHour, "an hour", "an hour"] },
};

/** Digits kept of a number drawn: finer than any eye and any pump, and the same on every engine. */
const DIGITS = 7;

function read(unit: Unit, value: number): number {
  return unit[0](value as never);
}

/** A number as it is drawn. */
export function drawn(value: number): number {
  return Number(value.toPrecision(DIGITS));
}

/** An SI number in the unit it is drawn in. */
export function shownIn(quantity: ShownQuantity, value: number, units: UnitSystem): number {
  return drawn(read(UNITS[quantity][units], value));
}

/** Title of an axis: "Flow, gallons per minute". */
export function axisTitle(name: string, quantity: ShownQuantity, units: UnitSystem): string {
  return `${name}, ${UNITS[quantity][units][1]}`;
}

/** A number as text for a title: three significant digits, "15.8 gpm". */
export function inWords(quantity: ShownQuantity, value: number, units: UnitSystem): string {
  const unit = UNITS[quantity][units];
  const number = read(unit, value);
  const whole = Math.abs(number) >= 100;
  return `${whole ? Math.round(number) : Number(number.toPrecision(3))} ${unit[2]}`;
}

/** A text with a capital letter to begin it. */
export function capital(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
