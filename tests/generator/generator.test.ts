/** Generators: starts solved beforehand, the field fact of the trade, laws, wrong input refused. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { conductorResistance } from "risingmain/conductor";
import {
  cordCheck,
  frequencyUnderLoad,
  fuelUse,
  fuelUseBetween,
  type GeneratorChecked,
  type GeneratorCheckInput,
  generatorCautions,
  generatorCheck,
  generatorDerating,
  generatorForDip,
  pumpingFuel,
  reactanceFromCapability,
  receptacleCheck,
  receptacleRatings,
  startingDip,
  tankRunTime,
} from "risingmain/generator";
import { fullLoadCurrent, lockedRotorCurrent, typicalMotor } from "risingmain/motor";
import {
  type ApparentPower,
  amperes,
  type Current,
  celsius,
  feet,
  horsepower,
  hours,
  InputError,
  inGpm,
  kilowatts,
  type Length,
  type Power,
  percent,
  type Ratio,
  type ResistancePerLength,
  ratio,
  usGallons,
  usGallonsPerHour,
  type Voltage,
  volts,
  watts,
} from "risingmain/units";
import { describe, expect, test } from "vitest";

const checked = (input: GeneratorCheckInput): GeneratorChecked => {
  const got = generatorCheck(input);
  if (!("margins" in got)) throw new Error(got.state);
  return got;
};
const margin = (got: GeneratorChecked, name: string) => {
  const found = got.margins.find(({ check }) => check === name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
};

/** A 1-1/2 hp, 230 V pump 150 ft from the set and 300 ft down the well, on an 8,000 W set with 10,000 W surge. */
const motor = typicalMotor({ power: horsepower(1.5), system: "single-phase" });
const plate = { power: horsepower(1.5), voltage: volts(230), system: "single-phase" } as const;
const job: GeneratorCheckInput = {
  generator: { runningPower: watts(8000), surgePower: watts(10_000), voltage: volts(240), system: "single-phase" },
  motor: {
    system: "single-phase",
    ratedVoltage: volts(230),
    current: fullLoadCurrent(plate).current,
    powerFactor: motor.powerFactor,
    lockedRotorCurrent: lockedRotorCurrent({ ...plate, codeLetter: motor.codeLetter }).middle,
    lockedRotorPowerFactor: motor.lockedRotorPowerFactor,
  },
  segments: [
    { length: feet(150), ...conductorResistance({ size: "10 AWG" }) },
    { length: feet(300), ...conductorResistance({ size: "10 AWG" }) },
  ],
  receptacle: "L14-30",
};

describe("field fact (common practice, no source): 1-1/2 hp, 230 V on 8,000 W, 10,000 W surge, 30 A 250 V receptacle", () => {
  const got = checked(job);
  test("it starts and runs", () => {
    expect(got.state).toBe("starts and runs");
  });
  test("with margins a plan can print", () => {
    expect(margin(got, "starting power").margin).toBeGreaterThan(4000);
    expect(margin(got, "starting apparent power").margin).toBeGreaterThan(1500);
    expect(margin(got, "voltage dip").margin).toBeGreaterThan(0.04);
    expect(margin(got, "running power").margin).toBeGreaterThan(4000);
    expect(margin(got, "receptacle")).toMatchObject({ value: 10, limit: 24, margin: 14 });
  });
  test("and through a 30 A, 250 V receptacle without neutral as well", () => {
    expect(checked({ ...job, receptacle: "L6-30" }).state).toBe("starts and runs");
  });
  test("but a set of a quarter the size does not start it, and a receptacle of 10 A less would not do for 20 A", () => {
    const small = { ...job.generator, runningPower: watts(2000), surgePower: watts(2500) };
    expect(checked({ ...job, generator: small }).state).toBe("cannot start");
    const thirsty = { ...job, motor: { ...job.motor, current: amperes(20) }, receptacle: "L14-20" } as const;
    expect(checked(thirsty).state).toBe("starts but overloads");
  });
});

describe("starts solved beforehand with complex numbers (tests/fixtures/circuits.py)", () => {
  const { generators } = JSON.parse(readFileSync(new URL("../fixtures/circuits.json", import.meta.url), "utf8")) as {
    generators: readonly (GeneratorCheckInput & { expected: Readonly<Record<string, number>> })[];
  };
  test.each(generators.map((circuit, i) => [i, circuit] as const))("start %i", (_, circuit) => {
    const { expected } = circuit;
    const got = checked(circuit);
    const agree = (value: number, wanted: number | undefined, scale: number): void =>
      expect(Math.abs(value - (wanted ?? Number.NaN))).toBeLessThanOrEqual(1e-12 * scale);
    agree(margin(got, "voltage dip").value, expected["dip"], 1);
    agree(got.startingCurrent, expected["startingCurrent"], got.startingCurrent);
    agree(margin(got, "starting voltage").value, expected["startingVoltage"], 1);
    agree(got.runningVoltage, expected["runningVoltage"], got.runningVoltage);
    agree(margin(got, "running power").value, expected["runningPower"], margin(got, "running power").value);
    agree(
      margin(got, "running apparent power").value,
      expected["runningApparentPower"],
      margin(got, "running apparent power").value,
    );
    agree(margin(got, "starting power").value, expected["startingPower"], got.startingCurrent * 240);
    agree(margin(got, "starting apparent power").value, expected["startingApparentPower"], got.startingCurrent * 240);
  });
});

describe("laws of the check", () => {
  const load = fc.record({
    power: fc.double({ min: 0, max: 3000, noNaN: true }),
    powerFactor: fc.double({ min: 0.5, max: 1, noNaN: true }),
  });

  test("another load never widens a margin of running, nor lets the motor start that did not", () => {
    fc.assert(
      fc.property(fc.array(load, { maxLength: 4 }), load, (loads, one) => {
        const without = checked({ ...job, otherLoads: loads as never });
        const added = checked({ ...job, otherLoads: [...loads, one] as never });
        expect(margin(added, "running power").margin).toBeLessThanOrEqual(margin(without, "running power").margin);
        expect(margin(added, "starting power").margin).toBeLessThanOrEqual(
          margin(without, "starting power").margin + 1e-6,
        );
      }),
    );
  });

  test("a stiffer set dips less; a longer line makes the set dip less and the motor start weaker", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 0.9, noNaN: true }),
        fc.double({ min: 0, max: 500, noNaN: true }),
        (x, l) => {
          const at = (reactance: number, length: number): GeneratorChecked =>
            checked({
              ...job,
              generator: { ...job.generator, transientReactance: reactance as Ratio },
              segments: [{ length: length as Length, resistance: 0.004 as ResistancePerLength }],
            });
          const dip = (got: GeneratorChecked): number => margin(got, "voltage dip").value;
          expect(dip(at(x, l))).toBeLessThan(dip(at(x * 1.1, l)));
          expect(dip(at(x, l + 10))).toBeLessThan(dip(at(x, l)));
          expect(at(x, l + 10).torqueShare).toBeLessThan(at(x, l).torqueShare);
        },
      ),
    );
  });

  test("without conductors and with a purely reactive motor it is the reactive divider", () => {
    const reactive = checked({
      ...job,
      generator: { ...job.generator, voltage: volts(230), transientReactance: ratio(0.2) },
      motor: { ...job.motor, lockedRotorPowerFactor: 0.05 as Ratio },
      segments: [{ length: 0 as Length, resistance: 0 as ResistancePerLength }],
    });
    const divider = startingDip({
      generatorPower: 8000 as ApparentPower,
      transientReactance: ratio(0.2),
      startingPower: (230 * job.motor.lockedRotorCurrent) as ApparentPower,
    });
    expect(margin(reactive, "voltage dip").value).toBeCloseTo(divider, 2);
  });

  test("the tightest is the one with the least margin for its limit", () => {
    fc.assert(
      fc.property(fc.array(load, { maxLength: 4 }), fc.double({ min: 0.5, max: 1, noNaN: true }), (loads, factor) => {
        const generator = { ...job.generator, powerFactor: factor as Ratio };
        const { margins, tightest } = checked({ ...job, generator, otherLoads: loads as never });
        expect(margins).toContain(tightest);
        for (const { margin, limit } of margins) {
          expect(tightest.margin / tightest.limit).toBeLessThanOrEqual(margin / limit);
        }
      }),
    );
  });

  test("apparent power goes by the power factor of the rating; voltages are shares of the motor's", () => {
    const got = checked({ ...job, generator: { ...job.generator, powerFactor: ratio(0.8) } });
    expect(margin(got, "starting apparent power").limit).toBeCloseTo(10_000 / 0.8, 9);
    expect(margin(got, "running apparent power").limit).toBeCloseTo((8000 / 0.8) * 0.8, 9);
    const running = margin(got, "running voltage");
    expect(running).toMatchObject({ limit: 0.9, unit: "1" });
    expect(running.value).toBeCloseTo(got.runningVoltage / 230, 12);
    expect(running.margin).toBeCloseTo(running.value - 0.9, 12);
  });

  test("only what was named is checked, and only what was left out is assumed", () => {
    const { receptacle: _, ...without } = job;
    const got = checked(without);
    expect(got.margins.map(({ check }) => check)).toEqual([
      "starting power",
      "starting apparent power",
      "voltage dip",
      "starting voltage",
      "running power",
      "running apparent power",
      "running voltage",
    ]);
    expect(got).toMatchObject({ receptacle: null, assumedReactance: true });
    const given = { ...job.generator, transientReactance: ratio(0.2) };
    expect(checked({ ...job, generator: given })).toEqual({ ...checked(job), assumedReactance: false });
  });

  test("a limit met to the bit is kept", () => {
    // 80 % of 30 A.
    expect(checked({ ...job, motor: { ...job.motor, current: amperes(24) } }).state).toBe("starts and runs");
    const on = (voltage: number) =>
      generatorCheck({ ...job, generator: { ...job.generator, voltage: volts(voltage) } });
    // 230 V ± 10 %.
    expect([206.9, 207, 253, 253.1].map((voltage) => on(voltage).state === "wrong voltage")).toEqual([
      true,
      false,
      false,
      true,
    ]);
  });

  test("the supply must fit", () => {
    const three = { ...job, motor: { ...job.motor, system: "three-phase" as const } };
    expect(generatorCheck(three)).toEqual({ state: "wrong phases", needed: "three-phase", available: "single-phase" });
    const low = { ...job, generator: { ...job.generator, voltage: volts(120) } };
    expect(generatorCheck(low).state).toBe("wrong voltage");
    const far = { ...job, segments: [{ length: 1e5 as Length, resistance: 0.01 as ResistancePerLength }] };
    expect(generatorCheck(far).state).toBe("circuit collapses");
  });
});

test("divider, size and reactance are each other's inverses", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.02, max: 0.8, noNaN: true }),
      fc.double({ min: 0.05, max: 0.4, noNaN: true }),
      fc.double({ min: 1000, max: 50_000, noNaN: true }),
      (dip, x, start) => {
        const startingPower = start as ApparentPower;
        const generatorPower = generatorForDip({ dip: dip as Ratio, transientReactance: x as Ratio, startingPower });
        fc.pre(generatorPower >= 1);
        expect(startingDip({ generatorPower, transientReactance: x as Ratio, startingPower })).toBeCloseTo(dip, 12);
        expect(reactanceFromCapability({ generatorPower, startingPower, dip: dip as Ratio })).toBeCloseTo(x, 12);
      },
    ),
  );
});

describe("site, fuel, cord", () => {
  test("height and heat only take", () => {
    expect(generatorDerating({ altitude: feet(500) }).factor).toBe(1);
    expect(generatorDerating({ altitude: feet(4500), ambient: celsius(25 + 50 / 9) }).factor).toBeCloseTo(0.87, 9);
    const inside = (metres: number) =>
      generatorDerating({ altitude: metres as Length, altitudeFree: 0 as Length, lossPerMetre: 1 / 3000 }).insideRange;
    expect([1000, 1001].map(inside)).toEqual([true, false]);
    const derated = checked({ ...job, generator: { ...job.generator, derating: ratio(0.88) } });
    expect(margin(derated, "running power").limit).toBeCloseTo(0.88 * 6400, 9);
    // The alternator is the same machine: its dip does not change with the air.
    expect(margin(derated, "voltage dip").value).toBeCloseTo(margin(checked(job), "voltage dip").value, 12);
  });

  test("frequency: rated at full load, droop above it at none", () => {
    expect(frequencyUnderLoad({ ratedFrequency: 60 as never, loadShare: ratio(1) })).toBe(60);
    expect(frequencyUnderLoad({ ratedFrequency: 60 as never, loadShare: ratio(0), droop: percent(3) })).toBeCloseTo(
      61.8,
      9,
    );
  });

  test("fuel: the line passes through both figures, and a tank is emptied in its time", () => {
    const figures = { atHalfLoad: usGallonsPerHour(0.7), atFullLoad: usGallonsPerHour(1.1) };
    expect(fuelUseBetween({ loadShare: ratio(0.5), ...figures })).toBeCloseTo(figures.atHalfLoad, 15);
    expect(fuelUseBetween({ loadShare: ratio(1), ...figures })).toBeCloseTo(figures.atFullLoad, 15);
    const level = { ...figures, atFullLoad: figures.atHalfLoad };
    expect(fuelUseBetween({ loadShare: ratio(0.7), ...level })).toBeCloseTo(figures.atHalfLoad, 15);
    expect(fuelUse({ load: 0 as Power, fuel: "diesel" })).toBe(0);
    const use = fuelUse({ load: kilowatts(5), fuel: "gasoline" });
    // 5 kW / 0.85 = 7.888 hp at 11.5 hp·h for each gallon.
    expect(inGpm(use) * 60).toBeCloseTo(5000 / 0.85 / 745.7 / 11.5, 5);
    expect(tankRunTime({ tank: usGallons(1.1), use: figures.atFullLoad })).toBeCloseTo(hours(1), 6);
  });

  test("cords: two loaded conductors carry more than three", () => {
    const states = (loaded: 2 | 3) =>
      [25, 26, 30, 31].map((current) => cordCheck({ size: "10 AWG", loaded, current: amperes(current) }).state);
    expect(states(3)).toEqual(["within limit", "above limit", "above limit", "above limit"]);
    expect(states(2)).toEqual(["within limit", "within limit", "within limit", "above limit"]);
  });

  test("receptacles on both sides of their limit", () => {
    const at = (current: number) =>
      receptacleCheck({ receptacle: "L14-30", voltage: volts(240), current: current as Current }).state;
    expect([at(24), at(24.1)]).toEqual(["within limit", "above limit"]);
    const on = (voltage: number, receptacle: "5-20" | "6-20") =>
      receptacleCheck({ receptacle, voltage: volts(voltage), current: amperes(5) }).state;
    expect([120, 125, 126].map((voltage) => on(voltage, "5-20"))).toEqual([
      "within limit",
      "within limit",
      "voltage too high",
    ]);
    expect([208, 250, 251].map((voltage) => on(voltage, "6-20"))).toEqual([
      "within limit",
      "within limit",
      "voltage too high",
    ]);
    for (const { voltage, current } of Object.values(receptacleRatings)) {
      expect([125, 250]).toContain(voltage);
      expect(current).toBeGreaterThan(0);
    }
  });
});

test.each([
  [
    "surge below running",
    () => generatorCheck({ ...job, generator: { ...job.generator, surgePower: watts(7000) } }),
    "generator.surgePower",
  ],
  [
    "a power factor of 80",
    () => generatorCheck({ ...job, motor: { ...job.motor, powerFactor: 80 as Ratio } }),
    "motor.powerFactor",
  ],
  ["a dip of 25, meant as 25 %", () => generatorCheck({ ...job, dipLimit: 25 as Ratio }), "dipLimit"],
  ["a negative load", () => generatorCheck({ ...job, otherLoads: [{ power: -1 as Power }] }), "otherLoads[0].power"],
  [
    "an unknown receptacle",
    () => receptacleCheck({ receptacle: "L99-1" as never, voltage: volts(240), current: amperes(1) }),
    "receptacle",
  ],
  [
    "120 V from a receptacle without neutral",
    () => receptacleCheck({ receptacle: "L6-30", voltage: 120 as Voltage, current: amperes(1) }),
    "voltage",
  ],
  [
    "full load below half load",
    () => fuelUseBetween({ loadShare: ratio(0.5), atHalfLoad: usGallonsPerHour(2), atFullLoad: usGallonsPerHour(1) }),
    "atFullLoad",
  ],
])("%s is refused by name", (_, call, parameter) => {
  try {
    call();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    expect(error.parameter).toBe(parameter);
    return;
  }
  throw new Error("nothing was refused");
});

test("the cautions say what kills", () => {
  const text = generatorCautions.map((caution) => caution.text).join(" ");
  expect(text).toMatch(/20 ft/);
  expect(text).toMatch(/[Bb]ond|joined/);
  expect(text).toMatch(/licensed/);
});

test("a plant that does what the criteria ask has a share of 1", () => {
  const use = usGallonsPerHour(2);
  const power = (12.495 * 2 * 745.69987158227022) as Power;
  expect(pumpingFuel({ waterPower: power, fuel: "diesel", use }).share).toBeCloseTo(1, 12);
});
