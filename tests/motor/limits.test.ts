/** Both sides of the limits between rows, bands and verdicts, with figures of the tables or worked by hand. */
import {
  codeLetterOf,
  currentUnbalance,
  type FullLoadTable,
  fullLoadCurrent,
  insulationReading,
  lockedRotorCurrent,
  motorBranchCircuit,
  powerReading,
  threeWireReading,
  typicalMotor,
  voltageUnbalance,
  windingReading,
} from "risingmain/motor";
import {
  amperes,
  type Current,
  celsius,
  electricHorsepower,
  horsepower,
  ohms,
  type Ratio,
  type Resistance,
  volts,
  watts,
} from "risingmain/units";
import { describe, expect, test } from "vitest";
import { refused } from "../refused.ts";

describe("full-load current", () => {
  const at = (size: number, voltage: number, table?: FullLoadTable) =>
    fullLoadCurrent({
      power: horsepower(size),
      voltage: volts(voltage),
      system: "three-phase",
      ...(table && { table }),
    });

  test("the code's tables cite the code; 3 hp is past the 115 V column, which ends at 2 hp", () => {
    expect(at(2, 115)).toMatchObject({ current: 13.6, method: "nfpa-70" });
    expect(refused(() => at(3, 115))).toBe("power");
    expect(() => at(3, 115)).toThrow("at most 2 hp");
  });

  test("a voltage between the nominal ones belongs to none", () => {
    expect([109, 121, 150, 205, 219, 241, 500, 601].map((voltage) => refused(() => at(1, voltage)))).toEqual(
      Array(8).fill("voltage"),
    );
    expect([110, 120, 200, 208, 220, 240, 440, 480, 550, 600].map((voltage) => at(1, voltage).voltage)).toEqual([
      115, 115, 200, 208, 230, 230, 460, 460, 575, 575,
    ]);
  });

  test("a row without a figure for the voltage is passed over, and a column without any has no motor", () => {
    const rows = [
      { horsepower: 1, amperes: [null, null] },
      { horsepower: 2, amperes: [6, null] },
    ];
    const table = { voltages: [400, 690], rows };
    expect(at(1, 400, table)).toMatchObject({ current: 6, insideRange: false });
    expect(refused(() => at(1, 690, table))).toBe("power");
  });

  test("an own table's voltage is met as written before it is taken for a nominal one", () => {
    const voltages = [220, 440, 460];
    const rows = [{ horsepower: 1, amperes: [3, 2, 1] }];
    expect([220, 440, 480].map((voltage) => at(1, voltage, { voltages, rows }).current)).toEqual([3, 2, 1]);
  });

  test("a table's currents are looked at", () => {
    const rows = [{ horsepower: 1, amperes: [-1] }];
    expect(refused(() => at(1, 400, { voltages: [400], rows }))).toBe("table.rows[0].amperes");
  });
});

describe("branch circuit", () => {
  test("a breaker that will not hold may go to 400 % up to 100 A and to 300 % above, down to a standard rating", () => {
    const largest = (current: number) => motorBranchCircuit({ fullLoadCurrent: amperes(current) }).protectionLargest;
    expect(largest(20)).toBe(4 * 20);
    expect(largest(100)).toBe(4 * 100);
    // 3 × 101 = 303.
    expect(largest(101)).toBe(300);
  });

  test("an instantaneous trip is set, not rounded: 800 % and 1300 %", () => {
    const circuit = motorBranchCircuit({ fullLoadCurrent: amperes(21), device: "instantaneous-trip breaker" });
    expect(circuit).toMatchObject({ protectionRating: 8 * 21, protectionLargest: 13 * 21 });
  });
});

describe("starting", () => {
  const motor = { power: horsepower(10), voltage: volts(230), system: "single-phase" } as const;

  test("letter V begins at 22.4 kVA/hp and has no end", () => {
    const start = lockedRotorCurrent({ ...motor, codeLetter: "V" });
    expect(start.high).toBeNull();
    expect(start.low).toBeCloseTo((22.4 * 10 * 1000) / 230, 9);
  });

  test("no current at all is letter A's", () => {
    expect(codeLetterOf({ ...motor, lockedRotorCurrent: amperes(0) }).codeLetter).toBe("A");
  });
});

describe("a typical motor", () => {
  test.each([
    [1, "single-phase", 80.4, true],
    [1.1, "single-phase", 81.5, true],
    [3, "single-phase", 84.1, true],
    [5, "single-phase", 84.1, false],
    [0.5, "three-phase", 75.5, true],
    [3, "three-phase", 85.5, true],
    [30, "three-phase", 91, true],
    [40, "three-phase", 91, false],
  ] as const)(
    "of %f hp, %s, has the law's %f %% of the row that reaches it",
    (size, system, efficiency, insideRange) => {
      for (const power of [horsepower(size), electricHorsepower(size)]) {
        const motor = typicalMotor({ power, system });
        expect(motor.efficiency).toBeCloseTo(efficiency / 100, 12);
        expect(motor.inputPower).toBeCloseTo((100 * power) / efficiency, 9);
        expect(motor.insideRange).toBe(insideRange);
      }
    },
  );

  test("single-phase is K whatever the power; three-phase goes from L to G", () => {
    const letters = (system: "single-phase" | "three-phase") =>
      [2.9, 3, 4.9, 5, 7.4, 7.5, 14.9, 15].map((size) => typicalMotor({ power: horsepower(size), system }).codeLetter);
    expect(letters("single-phase").join("")).toBe("KKKKKKKK");
    expect(letters("three-phase").join("")).toBe("LKKJJHHG");
  });
});

describe("unbalance", () => {
  /** An average of 100 and a largest deviation of so much. */
  const off = (deviation: number) =>
    voltageUnbalance([volts(100 + deviation), volts(100 - deviation / 2), volts(100 - deviation / 2)]);

  test("derates above 1 %, as the curve says up to 5 %, and stops the motor above that", () => {
    expect([0.9, 1, 1.1, 5, 5.1].map((deviation) => off(deviation).state)).toEqual([
      "no derating",
      "no derating",
      "derate",
      "derate",
      "do not run",
    ]);
    // Half way from 0.95 at 2 % to 0.93 at 2.5 %.
    expect(off(2.25).deratingFactor).toBeCloseTo((0.95 + 0.93) / 2, 12);
    expect(off(5).deratingFactor).toBeCloseTo(0.76, 12);
  });

  test("of no current is none", () => {
    const none = 0 as Current;
    expect(currentUnbalance([none, none, none])).toEqual({ unbalance: 0, average: 0 });
  });
});

describe("readings", () => {
  test("watts may pass volts times amperes by a hundredth, for the meters' errors", () => {
    const read = (inputPower: number) =>
      powerReading({ inputPower: watts(inputPower), voltage: volts(10), current: amperes(10), system: "single-phase" });
    expect(read(101).powerFactor).toBe(1);
    expect(refused(() => read(101.1))).toBe("inputPower");
  });

  test.each([
    [1, "as expected"],
    [0.99, "low"],
    [3, "as expected"],
    [3.01, "high"],
    [20, "high"],
    [20.1, "open"],
  ])("a winding of 2 Ω, half of it to spare, that reads %f Ω: %s", (reading, state) => {
    const tolerance = 0.5 as Ratio;
    const read = windingReading({ reading: ohms(reading), temperature: celsius(20), expected: ohms(2), tolerance });
    expect(read.state).toBe(state);
  });

  test.each([
    [[2, 7, 10], "consistent"],
    [[2, 8, 10.9], "consistent"],
    [[2, 6.9, 10], "do not add up"],
    [[5, 5, 10], "consistent"],
    [[5.1, 5, 10], "leads mixed up"],
  ] as const)("windings and their sum, %j, may differ by a tenth of the sum: %s", ([main, start, both], state) => {
    // Each reading holds two conductors of 0.5 Ω.
    const read = threeWireReading({
      mainToCommon: ohms(main + 1),
      startToCommon: ohms(start + 1),
      mainToStart: ohms(both + 1),
      conductor: ohms(0.5),
    });
    expect(read.state).toBe(state);
    expect(read.main).toBeCloseTo(main, 12);
    expect(read.start).toBeCloseTo(start, 12);
    expect(read.difference).toBeCloseTo(both - main - start, 12);
  });

  const insulation = (ratedVoltage: number, more: object = {}) =>
    insulationReading({
      reading: 0 as Resistance,
      temperature: celsius(40),
      ratedVoltage: volts(ratedVoltage),
      ...more,
    });

  test("form-wound windings need 100 MΩ from 1 kV, random-wound ones 5 MΩ at any voltage", () => {
    const winding = "form-wound";
    expect([999, 1000].map((voltage) => insulation(voltage, { winding }).minimum)).toEqual([5e6, 100e6]);
    expect([999, 1000, 4160].map((voltage) => insulation(voltage).minimum)).toEqual([5e6, 5e6, 5e6]);
  });

  test("the older rule's minimum, met, is doubtful", () => {
    const reading = ((230 / 1000 + 1) * 1e6) as Resistance;
    expect(insulation(230, { reading }).state).toBe("doubtful");
    expect(insulation(230, { reading: (reading * 0.999) as Resistance }).state).toBe("bad");
  });

  test("the test voltage rises above 2500, 5000 and 12 000 V", () => {
    const tests = [2500, 2501, 5000, 5001, 12_000, 12_001].map((voltage) => insulation(voltage).testVoltage);
    expect(tests).toEqual([500, 1000, 1000, 2500, 2500, 5000]);
  });
});
