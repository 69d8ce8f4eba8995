/**
 * Quantities as they are typed: the parser of each kind, and how a reading goes back into text.
 *
 * @module
 */
import type { MeasureKind, UnitSystem } from "../../src/plan/index.ts";
import { showMeasure } from "../../src/plan/measure.ts";
import {
  format,
  parseConcentration,
  parseCurrent,
  parseDuration,
  parseFlow,
  parseLength,
  parseMass,
  parsePower,
  parsePressure,
  parsePressureDifference,
  parseRatio,
  parseTemperature,
  parseVelocity,
  parseVoltage,
  parseVolume,
  type UnitSymbols,
} from "../../src/units/index.ts";

const PARSERS: Partial<Readonly<Record<MeasureKind, (text: string) => number>>> = {
  length: parseLength,
  diameter: parseLength,
  volume: parseVolume,
  flow: parseFlow,
  velocity: parseVelocity,
  pressure: parsePressure,
  pressureDifference: parsePressureDifference,
  temperature: parseTemperature,
  power: parsePower,
  motorPower: parsePower,
  voltage: parseVoltage,
  current: parseCurrent,
  ratio: parseRatio,
  shortTime: parseDuration,
  time: parseDuration,
  mass: parseMass,
  concentration: parseConcentration,
};

/** The quantity in a text, SI; throws InputError where it is none. */
export function parseKind(kind: MeasureKind, text: string): number {
  const parse = PARSERS[kind];
  if (parse === undefined) throw new Error(`no text of kind ${kind}`);
  return parse(text);
}

/** A quantity in both unit systems: what was read, for the eye to check. */
export function shownTwice(kind: MeasureKind, text: string): string {
  const value = parseKind(kind, text);
  const both = (["us", "metric"] as const).map((system: UnitSystem) => showMeasure({ kind, value }, system));
  return [...new Set(both)].join(" = ");
}

/** The units readings are taken in. */
const READING_UNITS: Partial<Readonly<Record<MeasureKind, Readonly<Record<UnitSystem, keyof UnitSymbols>>>>> = {
  length: { us: "ft", metric: "m" },
  volume: { us: "gal", metric: "L" },
  flow: { us: "gpm", metric: "L/s" },
  pressure: { us: "psi", metric: "kPa" },
  pressureDifference: { us: "psi", metric: "kPa" },
  shortTime: { us: "s", metric: "s" },
  voltage: { us: "V", metric: "V" },
  current: { us: "A", metric: "A" },
};

/** The unit a reading of a kind is taken in. */
export function unitOf(kind: MeasureKind, system: UnitSystem): keyof UnitSymbols {
  const unit = READING_UNITS[kind]?.[system];
  if (unit === undefined) throw new Error(`no reading of kind ${kind}`);
  return unit;
}

/** A stored reading as text, with the fewest digits that give the number back. */
export function textOf(kind: MeasureKind, value: number, system: UnitSystem): string {
  const unit = unitOf(kind, system);
  for (let decimals = 0; ; decimals++) {
    const text = format(value as never, unit, { decimals });
    if (decimals === MOST_DECIMALS || Math.abs(parseKind(kind, text) - value) <= SAME * Math.abs(value)) return text;
  }
}

/** What the conversion of a unit may cost; far below any instrument. */
const SAME = 1e-9;
const MOST_DECIMALS = 12;
