/** Motors: the code's tables against each other, rules against hand figures, readings judged, wrong input refused. */
import fc from "fast-check";
import {
  type CodeLetter,
  codeLetterOf,
  codeLetterRanges,
  currentUnbalance,
  driveOutputPeak,
  fullLoadCurrent,
  insulationAtTemperature,
  insulationReading,
  lockedRotorCurrent,
  type MotorSystem,
  motorBranchCircuit,
  motorConnections,
  motorCurrent,
  motorFeederAmpacity,
  necTable430_248,
  necTable430_250,
  powerReading,
  protectionRules,
  reducedSupplyStart,
  supplyTolerance,
  threeWireReading,
  typicalMotor,
  unbalanceDerating,
  voltageUnbalance,
  windingReading,
} from "risingmain/motor";
import {
  amperes,
  type Current,
  celsius,
  electricHorsepower,
  feet,
  horsepower,
  InputError,
  type Length,
  megohms,
  ohms,
  type Power,
  type Ratio,
  type Resistance,
  ratio,
  type Torque,
  type Voltage,
  volts,
  watts,
} from "risingmain/units";
import { describe, expect, test } from "vitest";

const refused = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    if (error instanceof InputError) return error.parameter;
    throw error;
  }
  throw new Error("nothing was refused");
};

describe("full-load current", () => {
  const tables = [
    ["single-phase", necTable430_248],
    ["three-phase", necTable430_250],
  ] as const;

  test.each(tables)(
    "%s: every row and column is met, current rises with power and falls with voltage",
    (system, table) => {
      for (const [i, { horsepower: size, amperes: row }] of table.rows.entries()) {
        for (const [j, printed] of row.entries()) {
          if (printed === null) continue;
          const voltage = table.voltages[j] as Voltage;
          expect(fullLoadCurrent({ power: horsepower(size), voltage, system })).toMatchObject({
            current: printed,
            insideRange: true,
          });
          expect(fullLoadCurrent({ power: electricHorsepower(size), voltage, system }).current).toBe(printed);
          const before = table.rows[i - 1]?.amperes[j];
          if (before) expect(printed).toBeGreaterThan(before);
          const lower = row[j - 1];
          if (lower) expect(printed).toBeLessThan(lower);
        }
      }
    },
  );

  test("the table's motors take at least what efficiency 1 and power factor 1 would", () => {
    for (const [system, table] of tables) {
      for (const { horsepower: size, amperes: row } of table.rows) {
        for (const [j, printed] of row.entries()) {
          if (printed === null) continue;
          const least = motorCurrent({
            power: horsepower(size),
            voltage: table.voltages[j] as Voltage,
            system: system as MotorSystem,
            efficiency: ratio(1),
            powerFactor: ratio(1),
          }).current;
          expect(printed).toBeGreaterThan(least);
          // Three-phase motors of 1 hp and more have an efficiency times power factor of 0.5 to 0.85.
          if (system === "three-phase" && size >= 1) expect(least / printed).toBeGreaterThan(0.43);
        }
      }
    }
  });

  test("nominal voltages stand for their motors'; a power between rows takes the next row and says so", () => {
    const at = (voltage: number, system: MotorSystem = "single-phase") =>
      fullLoadCurrent({ power: horsepower(1.5), voltage: volts(voltage), system });
    expect([110, 115, 120].map((v) => at(v).current)).toEqual([20, 20, 20]);
    expect([220, 230, 240].map((v) => at(v).current)).toEqual([10, 10, 10]);
    expect(at(480, "three-phase").voltage).toBe(460);
    const between = fullLoadCurrent({ power: horsepower(1.2), voltage: volts(230), system: "single-phase" });
    expect(between).toMatchObject({ current: 10, insideRange: false });
  });

  test("an app's own table", () => {
    const table = { voltages: [400], rows: [{ horsepower: 2, amperes: [3.6] }] };
    expect(
      fullLoadCurrent({ power: horsepower(1.5), voltage: volts(400), system: "three-phase", table }),
    ).toMatchObject({
      current: 3.6,
      method: "table given",
    });
  });
});

test.each([
  [
    "a voltage of a different system",
    () => fullLoadCurrent({ power: horsepower(1.5), voltage: volts(460), system: "single-phase" }),
    "voltage",
  ],
  [
    "a motor beyond the table",
    () => fullLoadCurrent({ power: horsepower(15), voltage: volts(230), system: "single-phase" }),
    "power",
  ],
  [
    "kilowatts in place of watts",
    () => fullLoadCurrent({ power: 0 as Power, voltage: volts(230), system: "single-phase" }),
    "power",
  ],
  [
    "a table out of order",
    () =>
      fullLoadCurrent({
        power: horsepower(1),
        voltage: volts(230),
        system: "single-phase",
        table: {
          voltages: [230],
          rows: [
            { horsepower: 2, amperes: [12] },
            { horsepower: 1, amperes: [8] },
          ],
        },
      }),
    "table.rows[1].horsepower",
  ],
  [
    "an efficiency of 70",
    () =>
      motorCurrent({
        power: watts(1000),
        efficiency: 70 as Ratio,
        powerFactor: ratio(0.8),
        voltage: volts(230),
        system: "single-phase",
      }),
    "efficiency",
  ],
  [
    "a power factor of 85",
    () =>
      motorCurrent({
        power: watts(1000),
        efficiency: ratio(0.7),
        powerFactor: 85 as Ratio,
        voltage: volts(230),
        system: "single-phase",
      }),
    "powerFactor",
  ],
  [
    "an unused code letter",
    () =>
      lockedRotorCurrent({
        power: watts(1000),
        voltage: volts(230),
        system: "single-phase",
        codeLetter: "I" as CodeLetter,
      }),
    "codeLetter",
  ],
  [
    "a service factor below 1",
    () => motorBranchCircuit({ fullLoadCurrent: amperes(10), serviceFactor: 0.9 as Ratio }),
    "serviceFactor",
  ],
  [
    "an unknown device",
    () => motorBranchCircuit({ fullLoadCurrent: amperes(10), device: "__proto__" as never }),
    "device",
  ],
  ["two voltages of three", () => voltageUnbalance([volts(230), volts(231)] as never), "voltages"],
  [
    "more watts than volts times amperes",
    () => powerReading({ inputPower: watts(3000), voltage: volts(230), current: amperes(10), system: "single-phase" }),
    "inputPower",
  ],
  ["no motors", () => motorFeederAmpacity([]), "fullLoadCurrents"],
])("%s is refused by name", (_, call, parameter) => {
  expect(refused(call)).toBe(parameter);
});

describe("branch circuit", () => {
  test("the larger of table and nameplate sizes the conductors; the nameplate sets the overload", () => {
    const circuit = motorBranchCircuit({
      fullLoadCurrent: amperes(10),
      nameplateCurrent: amperes(11.5),
      serviceFactor: ratio(1.3),
    });
    expect(circuit.designCurrent).toBe(11.5);
    expect(circuit.conductorAmpacity).toBeCloseTo(14.375, 12);
    expect(circuit.overloadSetting).toBeCloseTo(1.25 * 11.5, 12);
    expect(motorBranchCircuit({ fullLoadCurrent: amperes(10), nameplateCurrent: amperes(9) }).designCurrent).toBe(10);
  });

  test("protection never falls below the conductors' share, nor the largest below the usual", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 700, noNaN: true }),
        fc.constantFrom(...Object.keys(protectionRules)),
        (current, device) => {
          const circuit = motorBranchCircuit({
            fullLoadCurrent: current as Current,
            device: device as "dual-element fuse",
          });
          expect(circuit.protectionRating).toBeGreaterThanOrEqual(circuit.protectionByShare * (1 - 1e-9));
          expect(circuit.protectionByShare).toBeGreaterThan(circuit.conductorAmpacity);
          expect(circuit.protectionLargest).toBeGreaterThanOrEqual(circuit.protectionRating);
          expect(circuit.overloadLargest).toBeGreaterThan(circuit.overloadSetting);
        },
      ),
    );
  });

  test("a feeder of one motor is its branch circuit", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 700, noNaN: true }), (current) => {
        const one = motorFeederAmpacity([current as Current]);
        expect(one).toBeCloseTo(motorBranchCircuit({ fullLoadCurrent: current as Current }).conductorAmpacity, 9);
      }),
    );
  });
});

describe("starting", () => {
  test("a letter's middle current has that letter", () => {
    for (const codeLetter of Object.keys(codeLetterRanges) as CodeLetter[]) {
      for (const system of ["single-phase", "three-phase"] as const) {
        const motor = { power: horsepower(2), voltage: volts(230), system };
        const { middle } = lockedRotorCurrent({ ...motor, codeLetter });
        expect(codeLetterOf({ ...motor, lockedRotorCurrent: middle }).codeLetter).toBe(codeLetter);
      }
    }
  });

  test("the bands follow each other without overlap", () => {
    const bands = Object.values(codeLetterRanges);
    for (const [i, { low, middle, high }] of bands.entries()) {
      expect(middle).toBeGreaterThanOrEqual(low);
      if (high !== null) expect(bands[i + 1]?.low).toBeCloseTo(high + 0.01, 9);
    }
  });

  test("torque goes with the square of the current", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 300, noNaN: true }), (voltage) => {
        const start = reducedSupplyStart({
          lockedRotorCurrent: amperes(50),
          lockedRotorTorque: 10 as Torque,
          ratedVoltage: volts(230),
          voltage: voltage as Voltage,
        });
        expect(start.torque).toBeCloseTo(10 * (start.current / 50) ** 2, 9);
      }),
    );
  });
});

describe("supply", () => {
  test.each([
    [207, 60, "within tolerance"],
    [206.9, 60, "voltage too low"],
    [253, 60, "within tolerance"],
    [253.1, 60, "voltage too high"],
    [230, 57, "within tolerance"],
    [230, 56.9, "frequency off"],
    [215, 58, "within tolerance"],
    [212, 58, "both too far off"],
  ] as const)("%f V, %f Hz: %s", (voltage, frequency, state) => {
    expect(
      supplyTolerance({ ratedVoltage: volts(230), voltage: volts(voltage), frequency: frequency as never }).state,
    ).toBe(state);
  });

  test("equal voltages are balanced; scaling and order change nothing", () => {
    const volt = fc.double({ min: 200, max: 260, noNaN: true });
    fc.assert(
      fc.property(volt, volt, volt, (a, b, c) => {
        const of = (...v: number[]) => voltageUnbalance(v as never);
        expect(of(a, a, a).unbalance).toBeCloseTo(0, 12);
        expect(of(b, c, a).unbalance).toBeCloseTo(of(a, b, c).unbalance, 12);
        expect(of(2 * a, 2 * b, 2 * c).unbalance).toBeCloseTo(of(a, b, c).unbalance, 12);
        expect(currentUnbalance([a, b, c] as never).unbalance).toBeCloseTo(of(a, b, c).unbalance, 12);
      }),
    );
  });

  test("the derating curve falls without a step, and ends at 5 %", () => {
    const at = (u: number) =>
      voltageUnbalance([volts(100 * (1 + u)), volts(100 * (1 - u / 2)), volts(100 * (1 - u / 2))]);
    let before = 1;
    for (let u = 0; u < 0.05; u += 0.0005) {
      const { deratingFactor } = at(u);
      expect(deratingFactor).toBeLessThanOrEqual(before);
      expect(before - deratingFactor).toBeLessThan(0.005);
      before = deratingFactor;
    }
    expect(at(0.0501)).toMatchObject({ state: "do not run", deratingFactor: 0 });
    for (const { percent, factor } of unbalanceDerating.filter((row) => row.percent < 5)) {
      expect(at(percent / 100).deratingFactor).toBeCloseTo(factor, 9);
    }
  });
});

describe("readings", () => {
  const winding = (reading: number) =>
    windingReading({ reading: ohms(reading), cable: ohms(1), temperature: celsius(20), expected: ohms(2) }).state;
  test.each([
    [3, "as expected"],
    [3.19, "as expected"],
    [3.21, "high"],
    [2.79, "low"],
    [0.5, "low"],
    [50, "open"],
  ])("a winding of 2 Ω behind 1 Ω of cable reads %f Ω: %s", (reading, state) => {
    expect(winding(reading)).toBe(state);
  });

  test.each([
    [[2, 8, 10], "consistent"],
    [[8, 2, 10], "leads mixed up"],
    [[10, 8, 2], "leads mixed up"],
    [[2, 8, 14], "do not add up"],
  ] as const)("main, start and both of %j: %s", ([main, start, both], state) => {
    const read = threeWireReading({
      mainToCommon: ohms(main),
      startToCommon: ohms(start),
      mainToStart: ohms(both),
    });
    expect(read.state).toBe(state);
  });

  test.each([
    [5, 40, "good"],
    [4.9, 40, "doubtful"],
    [1.2, 40, "bad"],
    [20, 20, "good"],
    [19, 20, "doubtful"],
  ])("%f MΩ at %f °C on a 230 V motor: %s", (reading, temperature, state) => {
    expect(
      insulationReading({ reading: megohms(reading), temperature: celsius(temperature), ratedVoltage: volts(230) })
        .state,
    ).toBe(state);
  });

  test("insulation halves for each ten degrees, there and back", () => {
    fc.assert(
      fc.property(fc.double({ min: 240, max: 430, noNaN: true }), (t) => {
        const there = insulationAtTemperature({ reading: megohms(8), from: 313.15 as never, to: t as never });
        expect(insulationAtTemperature({ reading: there, from: t as never, to: 313.15 as never })).toBeCloseTo(8e6, 3);
        const warmer = insulationAtTemperature({ reading: there, from: t as never, to: (t + 1) as never });
        expect(warmer / there).toBeCloseTo(2 ** -0.1, 12);
      }),
    );
    expect(insulationAtTemperature({ reading: 0 as Resistance, from: celsius(20), to: celsius(40) })).toBe(0);
  });
});

describe("drive output", () => {
  test("without cable the motor sees the link, beyond the critical length twice that", () => {
    const at = (length: number, supply: number) =>
      driveOutputPeak({ length: length as Length, supplyVoltage: volts(supply) });
    expect(at(0, 230).peakVoltage).toBeCloseTo(Math.SQRT2 * 230, 9);
    expect(at(8, 230).peakVoltage).toBeCloseTo(2 * Math.SQRT2 * 230, 9);
    expect(at(100, 230).state).toBe("any motor");
    expect(at(100, 460).state).toBe("inverter-duty motor");
    expect(at(100, 575).state).toBe("filter needed");
  });
});

test("a typical motor of any power has sane assumptions", () => {
  for (const system of ["single-phase", "three-phase"] as const) {
    let before = 0;
    for (const hp of [0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 30, 100]) {
      const motor = typicalMotor({ power: horsepower(hp), system });
      expect(motor.efficiency).toBeGreaterThanOrEqual(before);
      expect(motor.efficiency).toBeLessThan(0.96);
      before = motor.efficiency;
    }
  }
  expect(typicalMotor({ power: horsepower(3), system: "three-phase" }).codeLetter).toBe("K");
});

test("connections name their conductors", () => {
  expect(motorConnections["two-wire"].conductors).toBe(2);
  expect(motorConnections["three-wire"].surface).toMatch(/control box/);
});

test("feet are metres by the time they arrive", () => {
  expect(driveOutputPeak({ length: feet(10), supplyVoltage: volts(230) }).peakVoltage).toBeCloseTo(
    Math.SQRT2 * 230 * (1 + 3.048 / 7.5),
    9,
  );
});

test("form-wound and older windings have their own minima and test voltages", () => {
  const at = (ratedVoltage: number, winding: "random-wound" | "form-wound", beforeAbout1970 = false) =>
    insulationReading({
      reading: megohms(4),
      temperature: celsius(40),
      ratedVoltage: volts(ratedVoltage),
      winding,
      beforeAbout1970,
    });
  expect(at(4160, "form-wound")).toMatchObject({ minimum: 100e6, testVoltage: 1000, state: "bad" });
  expect(at(460, "form-wound").minimum).toBe(5e6);
  expect(at(2300, "random-wound", true)).toMatchObject({ minimum: 3.3e6, testVoltage: 500, state: "good" });
  expect(at(13_200, "form-wound").testVoltage).toBe(5000);
  expect(at(7200, "form-wound").testVoltage).toBe(2500);
});

test("readings of a meter give power factor and efficiency, within the meter's own error", () => {
  const reading = {
    inputPower: watts(1610),
    voltage: volts(230),
    current: amperes(7),
    system: "single-phase",
  } as const;
  expect(powerReading(reading)).toMatchObject({ powerFactor: 1, efficiency: null });
  expect(powerReading({ ...reading, inputPower: watts(1618) }).powerFactor).toBe(1);
  expect(powerReading({ ...reading, shaftPower: watts(805) }).efficiency).toBe(0.5);
  expect(refused(() => powerReading({ ...reading, shaftPower: watts(1611) }))).toBe("shaftPower");
});
