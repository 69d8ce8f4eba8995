/**
 * A number of a plan with the quantity it is, so that a report can show it in either unit system.
 *
 * @module
 */
import { format, type UnitSymbols } from "../units/index.ts";

/** The kinds of number a plan holds; the name says how it is read at the wellhead. */
export type MeasureKind =
  | "length"
  | "diameter"
  | "volume"
  | "smallVolume"
  | "flow"
  | "velocity"
  | "pressure"
  | "pressureDifference"
  | "temperature"
  | "power"
  | "motorPower"
  | "apparentPower"
  | "energy"
  | "voltage"
  | "current"
  | "ratio"
  | "shortTime"
  | "time"
  | "startsPerHour"
  | "startsPerDay"
  | "mass"
  | "force"
  | "concentration"
  | "specificCapacity"
  | "conductorArea"
  | "count";

/** A number with its kind; SI. */
export interface Measure {
  /** What kind of number it is. */
  readonly kind: MeasureKind;
  /** The number, in the SI unit of its kind. */
  readonly value: number;
}

/** US customary or metric. */
export type UnitSystem = "us" | "metric";

interface Shown {
  readonly us: keyof UnitSymbols;
  readonly metric: keyof UnitSymbols;
  /** Decimals in each. */
  readonly decimals: readonly [us: number, metric: number];
}

/** The unit and decimals each kind is shown in: as fine as the gauges and rules of the trade, no finer. */
const SHOWN: Readonly<Record<MeasureKind, Shown>> = {
  length: { us: "ft", metric: "m", decimals: [1, 1] },
  diameter: { us: "in", metric: "mm", decimals: [3, 1] },
  volume: { us: "gal", metric: "L", decimals: [1, 0] },
  smallVolume: { us: "fl oz", metric: "mL", decimals: [1, 0] },
  flow: { us: "gpm", metric: "L/s", decimals: [1, 2] },
  velocity: { us: "ft/s", metric: "m/s", decimals: [2, 2] },
  pressure: { us: "psi", metric: "kPa", decimals: [1, 0] },
  pressureDifference: { us: "psi", metric: "kPa", decimals: [1, 0] },
  temperature: { us: "°F", metric: "°C", decimals: [0, 1] },
  power: { us: "W", metric: "W", decimals: [0, 0] },
  motorPower: { us: "hp", metric: "kW", decimals: [2, 2] },
  apparentPower: { us: "VA", metric: "VA", decimals: [0, 0] },
  energy: { us: "kWh", metric: "kWh", decimals: [2, 2] },
  voltage: { us: "V", metric: "V", decimals: [1, 1] },
  current: { us: "A", metric: "A", decimals: [1, 1] },
  ratio: { us: "%", metric: "%", decimals: [1, 1] },
  shortTime: { us: "s", metric: "s", decimals: [0, 0] },
  time: { us: "min", metric: "min", decimals: [1, 1] },
  startsPerHour: { us: "1/h", metric: "1/h", decimals: [1, 1] },
  startsPerDay: { us: "1/d", metric: "1/d", decimals: [0, 0] },
  mass: { us: "lb", metric: "kg", decimals: [0, 0] },
  force: { us: "lbf", metric: "N", decimals: [0, 0] },
  concentration: { us: "mg/L", metric: "mg/L", decimals: [0, 0] },
  specificCapacity: { us: "gpm/ft", metric: "L/s/m", decimals: [2, 3] },
  conductorArea: { us: "mm²", metric: "mm²", decimals: [2, 2] },
  count: { us: "1", metric: "1", decimals: [0, 0] },
};

/**
 * A number with its kind.
 *
 * @internal
 */
export function measure(kind: MeasureKind, value: number): Measure {
  return { kind, value };
}

/**
 * A measure as text in a unit system.
 *
 * @internal
 */
export function showMeasure({ kind, value }: Measure, system: UnitSystem): string {
  const { us, metric, decimals } = SHOWN[kind];
  const unit = system === "us" ? us : metric;
  const text = format(value as never, unit, { decimals: decimals[system === "us" ? 0 : 1] });
  return text.replace(" 1/h", " starts an hour").replace(" 1/d", " starts a day");
}
