/** Wrong input is refused by name; the limits of ampacity, temperature and grounding. */
import fc from "fast-check";
import {
  bs7671Table4E4B,
  type CircuitSegment,
  type ConductorSize,
  circuitCautions,
  conductorAmpacity,
  conductorChoices,
  conductorImpedance,
  conductorResistance,
  conductorTemperature,
  groundingConductor,
  iecCurrentCapacity,
  leastMetal,
  necChapter9Table8,
  parseConductorSize,
  recommendedDropLimits,
  resistanceAtTemperature,
  runVoltages,
  serviceImpedance,
  smallestConductor,
  standardRatings,
  temperatureFromResistance,
  transformerImpedance,
  voltageDrop,
} from "risingmain/conductor";
import {
  amperes,
  type Current,
  celsius,
  feet,
  InputError,
  inCelsius,
  kilovoltAmperes,
  type Length,
  ohms,
  ohmsPerThousandFeet,
  percent,
  type Ratio,
  type Resistance,
  type ResistancePerLength,
  ratio,
  type Temperature,
  volts,
} from "risingmain/units";
import { describe, expect, test } from "vitest";

const segment: CircuitSegment = { length: feet(100), resistance: ohmsPerThousandFeet(1.98) };
const circuit = {
  system: "single-phase",
  sourceVoltage: volts(230),
  current: amperes(10),
  powerFactor: ratio(0.85),
  segments: [segment],
} as const;

const refused = (call: () => unknown): InputError => {
  try {
    call();
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error("nothing was refused");
};

describe("wrong input is refused by name", () => {
  test.each([
    ["an unknown gauge", () => conductorResistance({ size: "13.5 AWG" as ConductorSize }), "size"],
    ["a bare gauge", () => conductorResistance({ size: "12" as ConductorSize }), "size"],
    ["a size the ampacity table lacks", () => conductorAmpacity({ size: "11 AWG", insulation: "75 °C" }), "size"],
    ["a metric size in the code's table", () => conductorAmpacity({ size: "4 mm²", insulation: "75 °C" }), "size"],
    ["a size Table 9 lacks", () => conductorImpedance({ size: "700 kcmil", raceway: "steel" }), "size"],
    [
      "a size Table 9 lacks, in aluminium",
      () => conductorImpedance({ size: "700 kcmil", material: "aluminium", raceway: "steel" }),
      "size",
    ],
    [
      "aluminium thinner than the table's",
      () => conductorAmpacity({ size: "14 AWG", material: "aluminium", insulation: "75 °C" }),
      "size",
    ],
    [
      "a negative length",
      () => voltageDrop({ ...circuit, segments: [{ ...segment, length: -1 as Length }] }),
      "segments[0].length",
    ],
    ["a power factor of 85", () => voltageDrop({ ...circuit, powerFactor: 85 as Ratio }), "powerFactor"],
    ["a medium voltage", () => voltageDrop({ ...circuit, sourceVoltage: volts(12_470) }), "sourceVoltage"],
    ["an unknown system", () => voltageDrop({ ...circuit, system: "two-phase" as "single-phase" }), "system"],
    ["reactive direct current", () => voltageDrop({ ...circuit, system: "direct current" }), "powerFactor"],
    ["no segments", () => voltageDrop({ ...circuit, segments: [] }), "segments"],
    ["a hole in the list", () => voltageDrop({ ...circuit, segments: new Array(2) }), "segments[0]"],
    [
      "a limit of 5, meant as 5 %",
      () =>
        smallestConductor({
          ...circuit,
          length: feet(100),
          dropLimit: 5 as Ratio,
          choices: conductorChoices({ insulation: "75 °C" }),
        }),
      "dropLimit",
    ],
    [
      "sizes from thick to thin",
      () =>
        smallestConductor({
          ...circuit,
          length: feet(100),
          dropLimit: percent(5),
          choices: [...conductorChoices({ insulation: "75 °C" })].reverse(),
        }),
      "choices[1].resistance",
    ],
    [
      "choices without areas where metal is compared",
      () =>
        leastMetal({
          ...circuit,
          dropLimit: percent(5),
          runs: [
            { length: feet(10), choices: [{ size: "own", resistance: ohmsPerThousandFeet(1) }] },
            { length: feet(10), choices: [{ size: "own", resistance: ohmsPerThousandFeet(1) }] },
          ],
        }),
      "runs[0].choices[0].area",
    ],
    ["a load too few", () => runVoltages({ ...circuit, loads: [] }), "loads"],
    ["tinned aluminium", () => conductorResistance({ size: "10 AWG", material: "aluminium", coated: true }), "coated"],
    ["flexible AWG", () => conductorResistance({ size: "10 AWG", stranding: "flexible" }), "stranding"],
    [
      "a spacing inside the conductor",
      () => conductorImpedance({ size: "4/0 AWG", spacing: 0.001 as Length }),
      "spacing",
    ],
    [
      "a raceway with a spacing",
      () => conductorImpedance({ size: "4/0 AWG", raceway: "steel", spacing: 0.1 as Length }),
      "spacing",
    ],
    [
      "enlarging downwards",
      () => groundingConductor({ overcurrentRating: amperes(20), enlarged: { from: "8 AWG", to: "12 AWG" } }),
      "enlarged.to",
    ],
    [
      "a metric grounding ratio",
      () => groundingConductor({ overcurrentRating: amperes(20), enlarged: { from: "4 mm²", to: "6 mm²" } }),
      "enlarged.from",
    ],
    ["a current beyond any breaker", () => standardRatings(amperes(6001)), "current"],
    [
      "an area the standard lacks",
      () => iecCurrentCapacity({ size: "5 mm²", insulation: "PVC 70 °C", installation: "C", loaded: 2 }),
      "size",
    ],
    [
      "an impedance of 2, meant as 2 %",
      () => transformerImpedance({ rating: kilovoltAmperes(10), voltage: volts(240), impedance: 2 as Ratio }),
      "impedance",
    ],
    [
      "no fault current",
      () => serviceImpedance({ system: "single-phase", voltage: volts(240), faultCurrent: amperes(0) }),
      "faultCurrent",
    ],
    [
      "a table of the wrong shape",
      () =>
        conductorAmpacity({
          size: "12 AWG",
          insulation: "75 °C",
          table: [{ size: "12 AWG", copper: [20, 25], aluminium: [15, 20, 25] } as never],
        }),
      "table[0].copper",
    ],
  ])("%s", (_, call, parameter) => {
    expect(refused(call).parameter).toBe(parameter);
  });

  test.each(["", "100", "12.5", "5/0", "00000", "12 mm", "AWG", "-3", "250.5 kcmil", "9999 mm2", "99 AWG"])(
    "the size %j",
    (text) => {
      expect(refused(() => parseConductorSize(text)).parameter).toBe("text");
    },
  );
});

describe("ampacity", () => {
  test("the terminals' column is an upper limit that correction starts above", () => {
    const hot = conductorAmpacity({ size: "10 AWG", insulation: "90 °C", terminals: "60 °C", ambient: celsius(50) });
    expect(hot.ampacity).toBe(30);
    expect(hot.governedBy).toBe("terminals");
    const hotter = conductorAmpacity({ size: "10 AWG", insulation: "90 °C", terminals: "60 °C", ambient: celsius(60) });
    expect(hotter.ampacity).toBeCloseTo(40 * 0.71, 12);
    expect(hotter.governedBy).toBe("conductor");
  });

  test("hotter surroundings and more neighbours never raise it", () => {
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 90 }), fc.integer({ min: 1, max: 60 }), (ambient, bundled) => {
        const at = (t: number, n: number): number =>
          conductorAmpacity({ size: "8 AWG", insulation: "75 °C", ambient: celsius(t), bundled: n }).ampacity;
        expect(at(ambient + 1, bundled)).toBeLessThanOrEqual(at(ambient, bundled));
        expect(at(ambient, bundled + 1)).toBeLessThanOrEqual(at(ambient, bundled));
      }),
    );
  });

  test("beyond the insulation's temperature there is none", () => {
    expect(conductorAmpacity({ size: "8 AWG", insulation: "60 °C", ambient: celsius(58) })).toMatchObject({
      ampacity: 0,
      governedBy: "ambient too hot",
    });
  });

  test("an app's own table", () => {
    const own = conductorAmpacity({
      size: "12 AWG",
      insulation: "75 °C",
      table: [{ size: "12 AWG", copper: [null, 23, null], aluminium: [null, null, null] }],
    });
    expect(own).toMatchObject({ ampacity: 23, method: "table given" });
  });
});

describe("temperature", () => {
  const kelvin = fc.double({ min: 240, max: 450, noNaN: true }) as unknown as fc.Arbitrary<Temperature>;
  const material = fc.constantFrom("copper" as const, "aluminium" as const);

  test("there and back is no change, and the temperature is read back from the resistance", () => {
    fc.assert(
      fc.property(kelvin, kelvin, material, (from, to, metal) => {
        const there = resistanceAtTemperature({ resistance: ohms(2), from, to, material: metal });
        expect(resistanceAtTemperature({ resistance: there, from: to, to: from, material: metal })).toBeCloseTo(2, 12);
        const told = temperatureFromResistance({
          coldResistance: ohms(2),
          coldTemperature: from,
          hotResistance: there,
          material: metal,
        });
        expect(told).toBeCloseTo(to, 8);
      }),
    );
  });

  test("at its ampacity in the table's ambient a conductor reaches its rating, without current its ambient", () => {
    const at = (current: number, ambient: number) =>
      conductorTemperature({
        current: amperes(current),
        ampacity: amperes(25),
        ratedTemperature: celsius(75),
        ambient: celsius(ambient),
      });
    const full = at(25, 30);
    if (full.state === "burns out") throw new Error(full.state);
    expect(inCelsius(full.temperature)).toBeCloseTo(75, 10);
    const idle = at(0, 12);
    if (idle.state === "burns out") throw new Error(idle.state);
    expect(inCelsius(idle.temperature)).toBeCloseTo(12, 10);
    expect(at(26, 30).state).toBe("above rating");
    expect(at(75, 30).state).toBe("burns out");
  });

  test("every row of Table 8 is met at 75 °C, and falls on cooling", () => {
    for (const { size, strands, copper } of necChapter9Table8) {
      const stranding = strands === 1 ? "solid" : "stranded";
      const hot = conductorResistance({ size, stranding }).resistance;
      expect(hot * 304.8).toBeCloseTo(copper, 12);
      expect(conductorResistance({ size, stranding, temperature: celsius(10) }).resistance).toBeLessThan(hot);
    }
  });
});

test("a grounding conductor need not be thicker than the circuit's own", () => {
  const sizes: readonly ConductorSize[] = ["14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG", "2 AWG", "1/0 AWG"];
  for (const [i, from] of sizes.entries()) {
    for (const to of sizes.slice(i)) {
      const { size } = groundingConductor({ overcurrentRating: amperes(15), enlarged: { from, to } });
      expect(sizes.indexOf(size) <= sizes.indexOf(to) || to === "14 AWG").toBe(true);
    }
  }
});

test("standard ratings enclose a current", () => {
  fc.assert(
    fc.property(fc.double({ min: 15, max: 6000, noNaN: true }), (current) => {
      const { below, above } = standardRatings(current as Current);
      expect(below).toBeLessThanOrEqual(current * (1 + 1e-9));
      expect(above).toBeGreaterThanOrEqual(current * (1 - 1e-9));
    }),
  );
});

test("a metric drop table is twice the standard's resistance at 90 °C for two cores", () => {
  for (const { area, directCurrent } of bs7671Table4E4B) {
    const { resistance } = conductorResistance({
      size: parseConductorSize(`${area} mm2`),
      temperature: celsius(90),
    });
    // Printed to two or three figures; the British table also rounds up.
    expect(Math.abs((2000 * resistance) / directCurrent - 1), `${area} mm²`).toBeLessThan(0.04);
  }
});

test("cautions and limits are plain data", () => {
  expect(circuitCautions.map(({ id }) => id)).toContain("licensed-work");
  expect(structuredClone(recommendedDropLimits)).toEqual(recommendedDropLimits);
});

test("without current, resistance or length there is no drop", () => {
  for (const over of [
    { current: 0 as Current },
    { segments: [{ ...segment, length: 0 as Length }] },
    { segments: [{ length: feet(100), resistance: 0 as ResistancePerLength, joints: 0 as Resistance }] },
  ]) {
    expect(voltageDrop({ ...circuit, ...over })).toMatchObject({ state: "carried", drop: 0, loadVoltage: 230 });
  }
});
