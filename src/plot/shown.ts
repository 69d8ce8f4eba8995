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

interface Unit {
  /** The number in it, from SI. */
  readonly read: (value: number) => number;
  /** Its name, for an axis. */
  readonly words: string;
  /** Its symbol, for a text. */
  readonly symbol: string;
}

const unit = <T extends number>(read: (value: T) => number, words: string, symbol: string): Unit => ({
  read: read as (value: number) => number,
  words,
  symbol,
});

const UNITS: Readonly<Record<ShownQuantity, Readonly<Record<UnitSystem, Unit>>>> = {
  head: { us: unit(inFeet, "feet of water", "ft"), metric: unit(inMetres, "metres of water", "m") },
  length: { us: unit(inFeet, "feet", "ft"), metric: unit(inMetres, "metres", "m") },
  flow: { us: unit(inGpm, "gallons per minute", "gpm"), metric: unit(inLitresPerSecond, "litres per second", "L/s") },
  velocity: {
    us: unit(inFeetPerSecond, "feet per second", "ft/s"),
    metric: unit(inMetresPerSecond, "metres per second", "m/s"),
  },
  pressure: { us: unit(inPsi, "pounds per square inch", "psi"), metric: unit(inKilopascals, "kilopascals", "kPa") },
  volume: { us: unit(inUsGallons, "gallons", "gal"), metric: unit(inLitres, "litres", "L") },
  voltage: { us: unit(inVolts, "volts", "V"), metric: unit(inVolts, "volts", "V") },
  time: { us: unit(inHours, "hours", "h"), metric: unit(inHours, "hours", "h") },
  starts: { us: unit(inPerHour, "an hour", "an hour"), metric: unit(inPerHour, "an hour", "an hour") },
};

/** Digits kept of a number drawn: finer than any eye and any pump, and the same on every engine. */
const DIGITS = 7;

/** A number as it is drawn. */
export function drawn(value: number): number {
  // Without the sum a negative zero would stay one, which JSON does not carry.
  return Number(value.toPrecision(DIGITS)) + 0;
}

/** An SI number in the unit it is drawn in. */
export function shownIn(quantity: ShownQuantity, value: number, units: UnitSystem): number {
  return drawn(UNITS[quantity][units].read(value));
}

/** Title of an axis: "Flow, gallons per minute". */
export function axisTitle(name: string, quantity: ShownQuantity, units: UnitSystem): string {
  return `${name}, ${UNITS[quantity][units].words}`;
}

/** A number as text for a title: three significant digits, "15.8 gpm". */
export function inWords(quantity: ShownQuantity, value: number, units: UnitSystem): string {
  const { read, symbol } = UNITS[quantity][units];
  const number = read(value);
  const whole = Math.abs(number) >= 100;
  return `${whole ? Math.round(number) : Number(number.toPrecision(3))} ${symbol}`;
}

/** A text with a capital letter to begin it. */
export function capital(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
