/** Laws of the constructors, readers, texts and formats: every unit, driven from the export list. */
import fc from "fast-check";
import * as units from "risingmain/units";
import { describe, expect, test } from "vitest";

const exports = units as unknown as Readonly<Record<string, (value: never) => never>>;
const readers = Object.keys(exports).filter((name) => /^in[A-Z]/.test(name));
const pairs = readers.map((reader) => [reader.charAt(2).toLowerCase() + reader.slice(3), reader] as const);

/** Zero and what lies far from the subnormals, where a double has lost digits. */
const finite = fc.double({ min: -1e12, max: 1e12, noNaN: true }).map((x) => (Math.abs(x) < 1e-200 ? 0 : x));
/** Affine scales lose what the shift takes: 273.15 K in a double near it. */
const isTemperature = (reader: string): boolean => ["inCelsius", "inFahrenheit"].includes(reader);

describe("every unit", () => {
  test.each(pairs)("%s has its reader %s, which undoes it to 2 ulp", (maker, reader) => {
    const make = exports[maker] as unknown as (value: number) => number;
    const read = exports[reader] as unknown as (quantity: number) => number;
    expect(typeof make).toBe("function");
    fc.assert(
      fc.property(finite, (value) => {
        const slack = isTemperature(reader)
          ? 4e-13 + 4 * Number.EPSILON * Math.abs(value)
          : 2 * Number.EPSILON * Math.abs(value);
        expect(Math.abs(read(make(value)) - value)).toBeLessThanOrEqual(slack + Number.MIN_VALUE);
      }),
    );
  });

  test.each(pairs)("%s grows with its number and keeps its sign", (maker, reader) => {
    const make = exports[maker] as unknown as (value: number) => number;
    fc.assert(
      fc.property(finite, finite, (a, b) => {
        fc.pre(a < b);
        expect(make(a)).toBeLessThanOrEqual(make(b));
      }),
    );
    if (!isTemperature(reader)) expect(Object.is(make(-0), -0)).toBe(true);
  });

  test.each(pairs)("%s and %s refuse what is no finite number", (maker, reader) => {
    for (const bad of [
      Number.NaN,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      undefined,
      null,
      "12",
      {},
      [],
      1n,
    ]) {
      for (const name of [maker, reader]) {
        const call = exports[name] as unknown as (value: unknown) => number;
        expect(() => call(bad)).toThrow(expect.objectContaining({ name: "InputError", parameter: name }));
      }
    }
  });
});

describe("factors are exact from the definitions", () => {
  // Definitions: yard and pound agreement of 1959, US gallon of 231 in³, Imperial gallon of 4.54609 L (1985), g_n (CGPM 1901); NIST SP 811 appendix B.
  test.each([
    ["feet", 1, 0.3048],
    ["inches", 1, 0.0254],
    ["miles", 1, 1609.344],
    ["acres", 1, 4046.8564224],
    ["usGallons", 1, 0.003785411784],
    ["imperialGallons", 1, 0.00454609],
    ["pounds", 1, 0.45359237],
    ["poundsForce", 1, 4.4482216152605],
    ["standardAtmospheres", 1, 101325],
    ["kilowattHours", 1, 3.6e6],
    ["celsius", 0, 273.15],
    ["fahrenheit", 32, 273.15],
    ["fahrenheitDegrees", 1.8, 1],
    ["ohmsPerThousandFeet", 304.8, 1],
    ["litresPerMinute", 60000, 1],
    ["perHour", 3600, 1],
    ["percent", 100, 1],
  ] as const)("%s(%d) is %d", (maker, value, si) => {
    expect((exports[maker] as unknown as (value: number) => number)(value)).toBe(si);
  });

  // Common practice, no source: how the units are said and typed on site.
  test.each([
    ["44 gals", units.parseVolume, units.usGallons(44)],
    ["44 U.S. gal", units.parseVolume, units.usGallons(44)],
    ["12 cu ft", units.parseVolume, units.cubicFeet(12)],
    ["12 ft3", units.parseVolume, units.cubicFeet(12)],
    ["12 gallons a minute", units.parseFlow, units.gpm(12)],
    ["12 gallons per minute", units.parseFlow, units.gpm(12)],
    ["50 deg F", units.parseTemperature, units.fahrenheit(50)],
    ["50 deg. C", units.parseTemperature, units.celsius(50)],
    ["50 DEG F", units.parseTemperature, units.fahrenheit(50)],
    ["8 lb 3 oz", units.parseMass, units.ounces(8 * 16 + 3)],
  ] as const)("units as they are said: %s", (text, parse, meant) => {
    expect(parse(text)).toBeCloseTo(meant, 12);
  });

  test("US and Imperial gallons are told apart", () => {
    expect(units.parseVolume("1 gal")).toBe(units.usGallons(1));
    expect(units.parseVolume("1 imp gal")).toBe(units.imperialGallons(1));
    expect(units.parseFlow("1 imp gpm")).toBe(units.imperialGpm(1));
  });
});

describe("texts", () => {
  test.each([
    ["1-1/4 in", units.inches(1.25)],
    ["1 1/4 in", units.inches(1.25)],
    ["1¼ in", units.inches(1.25)],
    ['1-1/4"', units.inches(1.25)],
    ["6 ft 2-1/2 in", units.inches(74.5)],
    ["6' 2-1/2\"", units.inches(74.5)],
    ["4,200 ft", units.feet(4200)],
    ["  240  FT ", units.feet(240)],
    ["-3 ft 6 in", units.inches(-42)],
    ["−3.5 ft", units.feet(-3.5)],
    ["1.5e3 mm", units.metres(1.5)],
    ["1.5E+3 mm", units.metres(1.5)],
    ["1500e-3 m", units.metres(1.5)],
    ["5. ft", units.feet(5)],
    [".5 ft", units.feet(0.5)],
    ["½ in", units.inches(0.5)],
    ["-½ in", units.inches(-0.5)],
    ["3/8 in", units.inches(0.375)],
    ["-3/8 in", units.inches(-0.375)],
    ["1- 1/4 in", units.inches(1.25)],
    ["+3 ft", units.feet(3)],
    ["- 3 ft", units.feet(-3)],
    ["\u00a012\u00a0ft", units.feet(12)],
    ["\t12\tft", units.feet(12)],
    ["123,456,789 ft", units.feet(123456789)],
    ["1 mi 200 yd 2 ft 9 in", units.inches(63360 + 200 * 36 + 2 * 12 + 9)],
    ["6 ft 0 in", units.feet(6)],
    ["-0 ft 6 in", units.inches(-6)],
    ["6'2\"", units.inches(74)],
    ["6′2-1/2″", units.inches(74.5)],
    ["6’2”", units.inches(74)],
    ["6' 2''", units.inches(74)],
  ])("%s is a length", (text, length) => {
    expect(Math.abs(units.parseLength(text) - length)).toBeLessThan(1e-12);
  });

  test.each([
    ["18 gpm", units.parseFlow, units.gpm(18)],
    ["1.1 L/s", units.parseFlow, units.litresPerSecond(1.1)],
    ["85 psi", units.parsePressure, units.psi(85)],
    ["52 °F", units.parseTemperature, units.fahrenheit(52)],
    ["1.5 hp", units.parsePower, units.horsepower(1.5)],
    ["0.2 mg/L", units.parseConcentration, units.mgPerLitre(0.2)],
    ["1.98 ohm/kft", units.parseResistancePerLength, units.ohmsPerThousandFeet(1.98)],
    ["1 h 30 min", units.parseDuration, units.minutes(90)],
    ["85 %", units.parseRatio, units.percent(85)],
    ["0.85", units.parseRatio, units.ratio(0.85)],
    ["14.7 psia", units.parseAbsolutePressure, units.psia(14.7)],
  ])("%s", (text, parse, quantity) => {
    expect(parse(text)).toBe(quantity);
  });

  test.each([
    "",
    "12",
    "ft",
    "12 gpm",
    "1,5 m",
    "12,34 ft",
    "1/0 in",
    "3 in 2 ft",
    "2 ft -3 in",
    "5 ft 2",
    "1.2.3 ft",
    "0x10 ft",
    "ft 12",
    "twelve ft",
    "12 ft ft",
    "12 ft; rm",
    "12 ",
    "3e ft",
    ". ft",
    ",123 ft",
    "1, ft",
    "1,2345 ft",
    "1234,567 ft",
    "1.5,3 ft",
    "3/ in",
    "1 1/ in",
    "3x1/2 in",
    "6 2.5 in",
    "3 ft 2 ft",
    "1.797e308 m 1.79e308 mm",
  ])("%s is no length", (text) => {
    expect(() => units.parseLength(text)).toThrow(
      expect.objectContaining({ name: "InputError", parameter: "text", value: text }),
    );
  });

  test("only what is said in parts is read in parts", () => {
    expect(() => units.parseFlow("1 m³/s 3 gpm")).toThrow(expect.objectContaining({ parameter: "text" }));
    expect(() => units.parsePressure("85 psi 2")).toThrow(expect.objectContaining({ parameter: "text" }));
  });

  test("the longest text has 100 characters", () => {
    const long = (length: number) => `1${" ".repeat(length - 3)}ft`;
    expect(units.parseLength(long(100))).toBe(0.3048);
    expect(() => units.parseLength(long(101))).toThrow(expect.objectContaining({ parameter: "text" }));
  });

  test("a refusal names the unit it did not know, or that there was none, and those it knows", () => {
    expect(() => units.parseLength("12 ")).toThrow('a length such as "1-1/4 in": the unit is missing');
    expect(() => units.parseResistance("12 gpm ")).toThrow(': "gpm" is not one of Ω, mΩ, kΩ, MΩ, got 12 gpm');
    expect(() => units.parseRatio("12 gpm")).toThrow("is not one of a plain number, %");
    expect(() => units.parseLength("1234,5 ft")).toThrow(/in", got 1234,5 ft$/);
    expect(() => units.parseLength("3 ft 2 ft")).toThrow(": parts run from the larger unit to the smaller");
  });

  test("milli and mega are told apart, other letter case is forgiven", () => {
    // Ω in capitals fits both.
    expect(() => units.parseResistance("5 MOHM")).toThrow(': "MOHM" is not one of');
    expect(units.parseResistance("5 MΩ")).toBe(units.megohms(5));
    expect(units.parseResistance("5 mΩ")).toBe(units.milliohms(5));
    expect(units.parseFlow("18 GPM")).toBe(units.gpm(18));
  });

  test("any text at all is read or refused, in time that grows no faster than its length", () => {
    const parsers = Object.entries(exports).filter(([name]) => name.startsWith("parse"));
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[-−+0-9 .,/eE'"½ft in]*$/)), (text) => {
        for (const [, parse] of parsers) {
          try {
            expect((parse as unknown as (text: string) => number)(text)).toSatisfy(Number.isFinite);
          } catch (error) {
            expect((error as Error).name).toBe("InputError");
          }
        }
      }),
    );
    // A scanner that backtracked would take minutes over these; they are refused by their length alone.
    for (const piece of ["1-", "1 1/", "1,111", "((", "9", " "])
      expect(() => units.parseLength(piece.repeat(50_000))).toThrow();
  });

  test("what format writes, parse reads", () => {
    fc.assert(
      fc.property(finite, fc.constantFrom("ft", "in", "m", "mi"), (value, unit) => {
        const length = value as units.Length;
        const back = units.parseLength(units.format(length, unit));
        expect(Math.abs(back - length)).toBeLessThanOrEqual(5.01e-4 * Math.abs(length));
      }),
    );
  });

  test.each([
    [units.psi(85), "psi", undefined, "85 psi"],
    [units.feet(1300), "ft", undefined, "1,300 ft"],
    [units.feet(130), "ft", undefined, "130 ft"],
    [units.feet(-1234567.8), "ft", 1, "−1,234,567.8 ft"],
    [units.feet(123456), "ft", 0, "123,456 ft"],
    [units.metres(2e25), "m", undefined, "2e+25 m"],
    [units.percent(62.5), "%", undefined, "62.5 %"],
    [units.ratio(0.5), "1", undefined, "0.5"],
    [units.metres(0), "m", 2, "0.00 m"],
    [units.metres(-0.004), "m", 2, "0.00 m"],
    [units.metres(-0.006), "m", 2, "−0.01 m"],
  ] as const)("%d m as %s, with decimals %s: %s", (quantity, unit, decimals, wanted) => {
    expect(units.format(quantity as never, unit, decimals === undefined ? {} : { decimals })).toBe(wanted);
  });

  test("decimals are a whole number from 0 to 15", () => {
    const decimals = (value: number) => units.format(units.metres(1), "m", { decimals: value });
    expect(decimals(15)).toBe("1.000000000000000 m");
    for (const bad of [-1, 16, 0.5])
      expect(() => decimals(bad)).toThrow(expect.objectContaining({ parameter: "options.decimals", value: bad }));
  });
});

test("the message of an error shows what was given: a number, the type of an object, 80 characters of a text", () => {
  const message = (value: unknown) => new units.InputError("field", value, "a depth").message;
  expect(message(12)).toBe("field: expected a depth, got 12");
  expect(message({})).toBe("field: expected a depth, got object");
  expect(message("x".repeat(81))).toBe(`field: expected a depth, got ${"x".repeat(80)}`);
});
