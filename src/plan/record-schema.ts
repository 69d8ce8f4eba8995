/**
 * The form of an as-built record, once: it reads a stored record and makes the published JSON Schema.
 *
 * @module
 */
import * as v from "valibot";
import type { MeasureKind } from "./measure.ts";
import type { AsBuiltRecord, RecordVerdict } from "./record.ts";

/** Form number of the record. */
const RECORD_VERSION = 1;
/** More than any sheet has; a bound against runaway input. */
const MOST_READINGS = 10_000;
const MOST_CAUTIONS = 1000;

/** What an instrument at a private well can show, SI; wide, to refuse slips of the pen and of the unit alone; common practice. */
const POSSIBLE: Partial<Readonly<Record<MeasureKind, readonly [low: number, high: number]>>> = {
  length: [0, 2000],
  volume: [0, 1e5],
  flow: [0, 1],
  pressure: [0, 4e6],
  voltage: [0, 1e5],
  current: [0, 2e4],
  shortTime: [0.01, 1e6],
};
const ANY_READING = [-1e12, 1e12] as const;

/** Every kind of number, for the schema. */
const KINDS: Readonly<Record<MeasureKind, 0>> = {
  length: 0,
  diameter: 0,
  volume: 0,
  smallVolume: 0,
  flow: 0,
  velocity: 0,
  pressure: 0,
  pressureDifference: 0,
  temperature: 0,
  power: 0,
  motorPower: 0,
  apparentPower: 0,
  energy: 0,
  voltage: 0,
  current: 0,
  ratio: 0,
  shortTime: 0,
  time: 0,
  startsPerHour: 0,
  startsPerDay: 0,
  mass: 0,
  force: 0,
  concentration: 0,
  specificCapacity: 0,
  conductorArea: 0,
  count: 0,
};

const VERDICTS: readonly RecordVerdict[] = ["pass", "fail", "not tested"];

/** Least and most that a reading of a kind can be, SI. */
export function possibleReading(kind: MeasureKind): readonly [low: number, high: number] {
  return (Object.hasOwn(POSSIBLE, kind) ? POSSIBLE[kind] : undefined) ?? ANY_READING;
}

const text = (what: string, most: number) =>
  v.pipe(
    v.string(`${what}, as text`),
    v.minLength(1, `${what}, not empty`),
    v.maxLength(most, `${what}, at most ${most} letters`),
    v.description(what),
  );
const oneOf = <const T extends readonly string[]>(what: string, options: T) =>
  v.pipe(
    v.picklist(options, `${what}: one of ${options.map((option) => `"${option}"`).join(", ")}`),
    v.description(what),
  );
const number = (what: string) =>
  v.pipe(
    v.number(`${what}, a number`),
    v.minValue(ANY_READING[0], `${what}, at least ${ANY_READING[0]}`),
    v.maxValue(ANY_READING[1], `${what}, at most ${ANY_READING[1]}`),
    v.description(what),
  );
const list = <S extends v.GenericSchema<unknown, unknown>>(item: S, most: number, what: string) =>
  v.pipe(v.array(item, `${what}, a list`), v.maxLength(most, `${what}: at most ${most}`), v.description(what));
const object = <E extends v.ObjectEntries>(what: string, entries: E) =>
  v.strictObject(entries, (issue) =>
    issue.expected === "never" ? `a known field of ${what}: ${Object.keys(entries).join(", ")}` : `${what}, an object`,
  );

const measure = (what: string) =>
  object("a measure", {
    kind: oneOf(`${what}: kind of number`, Object.keys(KINDS) as MeasureKind[]),
    value: number(`${what}, in SI`),
  });

/**
 * The schema of a record, made when one is read.
 *
 * @internal
 */
export function recordSchema(): v.GenericSchema<unknown, AsBuiltRecord> {
  return object("the record", {
    version: v.pipe(
      v.literal(RECORD_VERSION, `${RECORD_VERSION}, the form of record this release reads`),
      v.description("form of the record"),
    ),
    name: text("name of the property", 200),
    date: v.nullable(
      v.pipe(
        v.string("day of the readings, as text or null"),
        v.isoDate('day of the readings as year-month-day, such as "2031-05-14"'),
        v.description("day of the readings, as year-month-day"),
      ),
    ),
    by: v.nullable(text("who took the readings", 200)),
    notes: v.nullable(text("notes", 10_000)),
    readings: list(
      object("a reading", {
        code: text("code of the reading", 500),
        reading: text("what is read", 500),
        how: text("how it is read", 500),
        expected: measure("what it should be"),
        low: measure("least that passes"),
        high: measure("most that passes"),
        measured: v.nullable(number("what was read, in the SI unit of the expected value")),
        verdict: oneOf("verdict", VERDICTS),
        reason: text("reason of the verdict", 500),
      }),
      MOST_READINGS,
      "readings, in the order of the sheet",
    ),
    cautions: list(
      object("a caution", {
        code: text("code of the caution", 200),
        text: text("the caution", 2000),
        basis: text("basis of the caution", 500),
      }),
      MOST_CAUTIONS,
      "cautions",
    ),
  }) as unknown as v.GenericSchema<unknown, AsBuiltRecord>;
}
