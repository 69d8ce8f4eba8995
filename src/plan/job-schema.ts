/**
 * The form of a job, once, in a schema library: the same form reads quantities from text (a job file) or as SI numbers
 * (typed data), and makes the published JSON Schema.
 *
 * @module
 */
import * as v from "valibot";
import { type FittingName, namedFittings } from "../fittings/index.ts";
import { type Receptacle, receptacleRatings } from "../generator/index.ts";
import {
  format,
  type InputError,
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
} from "../units/index.ts";
import type { Job } from "./job.ts";

/** Whether quantities are text with units, or SI numbers. */
export type QuantityForm = "text" | "si";

/** Form number of the job document. */
const JOB_VERSION = 1;
/** Line breaks and other control characters, which would break a report. */
const CONTROL = /\p{Cc}/u;
/** More than any property has; a bound against runaway input. */
const MOST_ITEMS = 500;

/** A schema for one kind of quantity, given the range accepted (SI) and what the field means. */
type QuantitySchema<Q extends number> = (meaning: string, low: number, high: number) => v.GenericSchema<unknown, Q>;

function quantity<Q extends number>(
  form: QuantityForm,
  parse: (text: string) => Q,
  sample: string,
  unit: keyof UnitSymbols,
  si: string,
): QuantitySchema<Q> {
  return (meaning, low, high) => {
    const inUnit = (value: number): string => format(value as never, unit);
    const inSi = `${low} to ${high}${si === "" ? "" : ` ${si}`}`;
    if (form === "si") {
      const wanted = `${meaning}, a number from ${inSi}`;
      return v.pipe(
        v.number(wanted),
        v.check((value) => value >= low && value <= high, wanted),
        v.description(meaning),
      ) as never;
    }
    const wanted = `from ${inUnit(low)} to ${inUnit(high)} (${inSi})`;
    // A limit typed in another unit may miss it by the rounding of the conversion.
    const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
    return v.pipe(
      v.string(`${meaning}, as text such as "${sample}"`),
      v.description(`${meaning}, as text with its unit such as "${sample}"; ${wanted}`),
      v.rawTransform(({ dataset, addIssue, NEVER }) => {
        try {
          const value: number = parse(dataset.value);
          if (value >= low - slack && value <= high + slack) return Math.min(Math.max(value, low), high);
          addIssue({ message: `${meaning} ${wanted}` });
        } catch (error) {
          addIssue({ message: `${meaning}: ${(error as InputError).expected}` });
        }
        return NEVER;
      }),
    ) as never;
  };
}

/**
 * The schema of a job in one of its two forms.
 *
 * @internal
 */
export function jobSchema(form: QuantityForm): v.GenericSchema<unknown, Job> {
  const length = quantity(form, parseLength, "240 ft", "ft", "m");
  const diameter = quantity(form, parseLength, "6 in", "in", "m");
  const flow = quantity(form, parseFlow, "12 gpm", "gpm", "m³/s");
  const pressure = quantity(form, parsePressure, "50 psi", "psi", "Pa gauge");
  const loss = quantity(form, parsePressureDifference, "3 psi", "psi", "Pa");
  const temperature = quantity(form, parseTemperature, "52 °F", "°F", "K");
  const volume = quantity(form, parseVolume, "80 gal", "gal", "m³");
  const power = quantity(form, parsePower, "1 hp", "hp", "W");
  const voltage = quantity(form, parseVoltage, "230 V", "V", "V");
  const current = quantity(form, parseCurrent, "9.8 A", "A", "A");
  const ratio = quantity(form, parseRatio, "60 %", "%", "");
  const mass = quantity(form, parseMass, "40 lb", "lb", "kg");
  const duration = quantity(form, parseDuration, "30 min", "s", "s");
  const velocity = quantity(form, parseVelocity, "5 ft/s", "ft/s", "m/s");
  const concentration = quantity(form, parseConcentration, "100 mg/L", "mg/L", "kg/m³");

  const depth = (what: string) => length(what, 0, 2000);
  const elevation = (what: string) => length(what, -500, 500);
  const anyFlow = (what: string) => flow(what, 1e-7, 1);
  const anyPressure = (what: string) => pressure(what, 0, 4e6);
  const count = (what: string, low: number, high: number) =>
    v.pipe(
      v.number(`${what}, a whole number`),
      v.integer(`${what}, a whole number`),
      v.minValue(low, `${what}, at least ${low}`),
      v.maxValue(high, `${what}, at most ${high}`),
      v.description(what),
    );
  const name = (what: string) =>
    v.pipe(
      v.string(`${what}, as text`),
      v.trim(),
      v.minLength(1, `${what}, not empty`),
      v.maxLength(80, `${what}, at most 80 letters`),
      v.check((value) => !CONTROL.test(value), `${what}, on one line`),
      v.description(what),
    );
  const oneOf = <const T extends readonly string[]>(what: string, options: T) =>
    v.pipe(
      v.picklist(options, `${what}: one of ${options.map((option) => `"${option}"`).join(", ")}`),
      v.description(what),
    );
  const list = <S extends v.GenericSchema<unknown, unknown>>(item: S, least: number, what: string) =>
    v.pipe(
      v.array(item, `${what}, a list`),
      v.minLength(least, `${what}: at least ${least}`),
      v.maxLength(MOST_ITEMS, `${what}: at most ${MOST_ITEMS}`),
      v.description(what),
    );
  const object = <E extends v.ObjectEntries>(what: string, entries: E) =>
    v.pipe(
      v.strictObject(entries, ({ expected }) => {
        if (expected === "never") return `a known field of ${what}: ${Object.keys(entries).join(", ")}`;
        if (expected === "Object") return `${what}, an object`;
        // A field that is missing: what it should hold.
        const entry = entries[expected?.replaceAll('"', "") ?? ""];
        return (entry && v.getDescription(entry as v.GenericSchema)) ?? `a value that ${what} needs`;
      }),
      v.description(what),
    );
  const optional = v.exactOptional;

  const fittings = list(
    object("a fitting", {
      kind: oneOf("kind of fitting", Object.keys(namedFittings) as FittingName[]),
      count: count("how many", 1, 1000),
    }),
    0,
    "fittings",
  );
  const phase = oneOf("phase", ["single-phase", "three-phase"]);

  const motor = object("the motor", {
    power: power("power of the motor", 10, 1e6),
    voltage: voltage("voltage of the motor", 20, 1000),
    phase,
    fullLoadCurrent: optional(current("full-load current", 0.01, 2000)),
    codeLetter: optional(
      v.pipe(
        v.string("code letter, one letter"),
        v.regex(/^[A-HJ-NPR-V]$/, "a code letter from A to V, without I, O and Q"),
        v.description("locked-rotor code letter"),
      ),
    ),
    lockedRotorCurrent: optional(current("locked-rotor current", 0.01, 10000)),
    serviceFactor: optional(ratio("service factor", 1, 2)),
    efficiency: optional(ratio("motor efficiency", 0.05, 1)),
    powerFactor: optional(ratio("power factor", 0.05, 1)),
    coolingVelocity: optional(velocity("least velocity past the motor", 1e-6, 5)),
  });
  const candidate = object("a pump", {
    name: name("name of the pump"),
    curve: list(
      object("a point of the curve", {
        flow: flow("flow", 0, 1),
        head: length("head", 0, 2000),
        efficiency: optional(ratio("pump efficiency", 0, 1)),
      }),
      3,
      "points of the curve",
    ),
    diameter: diameter("outside diameter of the pump", 0.03, 2),
    length: optional(length("length of pump and motor", 0.1, 30)),
    lengthBelowIntake: optional(length("length below the intake", 0, 30)),
    mass: optional(mass("mass of pump and motor", 0.5, 10000)),
    motor,
  });

  return object("the job", {
    version: v.pipe(
      v.literal(JOB_VERSION, `${JOB_VERSION}, the form of the document`),
      v.description("form of the document"),
    ),
    name: name("name of the property"),
    reportUnits: optional(oneOf("units of the report", ["us", "metric"])),
    site: object("the site", {
      elevation: length("elevation above sea level", -500, 6000),
      waterTemperature: temperature("temperature of the water", 273.15, 333.15),
    }),
    well: object("the well", {
      casingInsideDiameter: diameter("inside diameter of the casing", 0.05, 2),
      depth: length("depth of the hole", 1, 2000),
      casingDepth: optional(length("depth of the casing", 0.5, 2000)),
      openHoleDiameter: optional(diameter("diameter of the open hole", 0.05, 2)),
      screenTop: optional(depth("depth of the top of the screen")),
      staticLevel: length("depth to the water at rest", -100, 1500),
      highestStaticLevel: optional(length("least depth to the water at rest", -100, 1500)),
      yield: flow("yield of the well", 1e-6, 1),
      test: list(
        object("a step of the test", {
          flow: flow("flow of the test", 1e-6, 1),
          pumpingLevel: length("depth to the water while pumping", -100, 2000),
        }),
        1,
        "pumping test",
      ),
    }),
    dropPipe: optional(
      object("the drop pipe", {
        pipe: optional(name("pipe")),
        fittings: optional(fittings),
        checkValves: optional(count("check valves above the pump's own", 0, 10)),
      }),
    ),
    pump: optional(
      object("the pump", {
        setting: optional(length("depth of the intake", 0.5, 2000)),
        candidates: optional(list(candidate, 1, "pumps to choose from")),
      }),
    ),
    controls: object("the controls", {
      cutIn: anyPressure("cut-in pressure"),
      cutOut: anyPressure("cut-out pressure"),
      regulatingValve: optional(
        object("the regulating valve", {
          setPressure: anyPressure("set pressure"),
          minimumFlow: anyFlow("minimum flow of the valve"),
          loss: optional(loss("loss of the open valve", 0, 1e6)),
          ratedFlow: optional(anyFlow("flow of that loss")),
          maximumInletPressure: optional(anyPressure("highest inlet pressure")),
        }),
      ),
      reliefPressure: optional(anyPressure("pressure the relief valve opens at")),
      reliefCapacity: optional(anyFlow("flow the relief valve passes")),
      dryRunCutOff: optional(v.pipe(v.boolean("true or false"), v.description("whether a dry-run cut-off is fitted"))),
    }),
    tank: optional(
      object("the tank", {
        volume: optional(volume("volume of the tank", 1e-3, 1000)),
        precharge: optional(anyPressure("precharge")),
        maximumPressure: optional(anyPressure("highest working pressure of the tank")),
        elevation: optional(length("elevation of the tank's connection", -50, 500)),
        leastRunTime: optional(duration("least run of the pump", 1, 86400)),
        mostStartsPerDay: optional(count("most starts in a day", 1, 10000)),
      }),
    ),
    places: list(
      object("a place", {
        name: name("name of the place"),
        elevation: elevation("elevation above the ground at the well"),
      }),
      0,
      "places",
    ),
    runs: list(
      object("a run of pipe", {
        from: name("one end"),
        to: name("other end"),
        length: length("length of the run", 0.01, 50000),
        pipe: optional(name("pipe")),
        fittings: optional(fittings),
      }),
      0,
      "runs of pipe",
    ),
    outlets: list(
      object("an outlet", {
        name: name("name of the outlet"),
        at: name("place of the outlet"),
        flow: anyFlow("flow wanted"),
        pressure: anyPressure("pressure wanted"),
      }),
      1,
      "outlets",
    ),
    uses: optional(
      list(
        object("a use", {
          name: name("name of the use"),
          outlets: list(name("outlet"), 1, "outlets open"),
        }),
        1,
        "uses",
      ),
    ),
    demand: optional(
      object("the demand", {
        people: optional(count("people", 0, 100000)),
        livestock: optional(
          list(
            object("animals", { kind: name("kind of animal"), head: count("how many", 0, 1_000_000) }),
            0,
            "livestock",
          ),
        ),
        other: optional(
          list(
            object("another use", { name: name("name of the use"), volume: volume("water on a day", 0, 1e5) }),
            0,
            "other uses",
          ),
        ),
      }),
    ),
    pipeChoice: optional(
      object("the choice of pipe", {
        family: optional(name("family of pipe")),
        highestVelocity: optional(velocity("highest velocity", 0.1, 10)),
      }),
    ),
    power: object("the power", {
      sources: list(
        object("a source", {
          name: name("name of the source"),
          kind: oneOf("kind of source", ["utility", "generator"]),
          voltage: voltage("voltage of the source", 20, 1000),
          phase,
          runningPower: optional(power("power the generator runs", 100, 1e7)),
          surgePower: optional(power("power the generator gives for a start", 100, 1e7)),
          receptacle: optional(oneOf("receptacle", Object.keys(receptacleRatings) as Receptacle[])),
          otherLoad: optional(power("other loads on the generator", 0, 1e7)),
        }),
        1,
        "sources of power",
      ),
      circuit: list(
        object("a cable", {
          name: name("name of the cable"),
          length: optional(length("one-way length of the cable", 0, 20000)),
          size: optional(name("size of the conductor")),
          material: optional(oneOf("material of the conductor", ["copper", "aluminium"])),
        }),
        1,
        "cables from source to motor",
      ),
      breaker: optional(current("rating of the breaker", 1, 6000)),
      groundingSize: optional(name("size of the grounding conductor")),
      mostVoltageDrop: optional(ratio("most voltage drop", 0.001, 0.2)),
    }),
    disinfection: optional(
      object("the disinfection", {
        target: optional(concentration("chlorine wanted", 1e-4, 1)),
        bleachStrength: optional(ratio("strength of the bleach", 0.01, 0.2)),
      }),
    ),
  }) as v.GenericSchema<unknown, Job>;
}
