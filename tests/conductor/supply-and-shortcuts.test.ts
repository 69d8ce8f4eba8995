/** Shortcuts and their inverses, supply impedance, metric capacity, impedance of a laid conductor, aluminium. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import {
  ambientFactor,
  approximateDrops,
  circularMilArea,
  circularMilDrop,
  conductorChoices,
  conductorGeometry,
  conductorImpedance,
  conductorMass,
  conductorReactance,
  conductorResistance,
  effectiveImpedance,
  gaugeDiameter,
  iecCapacityAreas,
  iecCurrentCapacity,
  lockedRotorDrop,
  longestLength,
  parseConductorSize,
  proximityEffect,
  serviceImpedance,
  skinEffectFactor,
  smallConductorLimit,
  smallestConductor,
  tabulatedDrop,
  transformerImpedance,
  voltageDrop,
} from "risingmain/conductor";
import {
  amperes,
  type Current,
  celsius,
  feet,
  hertz,
  InputError,
  inPoundsPerFoot,
  kilovoltAmperes,
  type Length,
  millimetres,
  ohmsPerThousandFeet,
  percent,
  type Ratio,
  type Resistance,
  type ResistancePerLength,
  ratio,
  type Voltage,
  volts,
} from "risingmain/units";
import { describe, expect, test } from "vitest";

const system = fc.constantFrom("direct current" as const, "single-phase" as const, "three-phase" as const);
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("shortcuts", () => {
  test("the circular-mil area of a drop drops just that", () => {
    fc.assert(
      fc.property(system, double(1, 60), double(1, 300), double(0.5, 20), (fed, current, length, drop) => {
        const run = { system: fed, current: current as Current, length: length as Length };
        const area = circularMilArea({ ...run, drop: drop as Voltage });
        if (area < 1e-9) return;
        expect(circularMilDrop({ ...run, area })).toBeCloseTo(drop, 9);
      }),
    );
  });

  test("aluminium's constant is 1.64 of copper's, and one given replaces it", () => {
    const run = {
      system: "single-phase",
      current: amperes(10),
      length: feet(100),
      area: conductorGeometry("8 AWG").area,
    } as const;
    const copper = circularMilDrop(run);
    expect(circularMilDrop({ ...run, material: "aluminium" }) / copper).toBeCloseTo(21.2 / 12.9, 12);
    expect(circularMilDrop({ ...run, constant: 25.8 })).toBeCloseTo(2 * copper, 12);
  });

  test("12.9 is copper at about 75 °C", () => {
    // ohms of a foot of one circular mil: the law's resistance of 1 kcmil-foot, times 1000.
    const at75 = conductorResistance({ size: "250 kcmil", temperature: celsius(75) }).resistance * 0.3048 * 250_000;
    expect(at75).toBeGreaterThan(12.6);
    expect(at75).toBeLessThan(13);
  });

  test("the usual formula is effective impedance times current, length and factor; a tabulated drop the same", () => {
    const one = { resistance: ohmsPerThousandFeet(0.49), reactance: ohmsPerThousandFeet(0.051) };
    const z = effectiveImpedance({ ...one, powerFactor: ratio(0.85) });
    const got = voltageDrop({
      system: "three-phase",
      sourceVoltage: volts(460),
      current: amperes(30),
      powerFactor: ratio(0.85),
      segments: [{ length: feet(400), ...one }],
    });
    if (got.state !== "carried") throw new Error(got.state);
    const tabulated = tabulatedDrop({
      dropPerAmpereMetre: (Math.sqrt(3) * z) as ResistancePerLength,
      current: amperes(30),
      length: feet(400),
    });
    expect(got.inPhase).toBeCloseTo(tabulated, 10);
  });

  test("a circuit without current has no error to state; one that collapses says so", () => {
    const circuit = {
      system: "single-phase",
      sourceVoltage: volts(230),
      powerFactor: ratio(0.8),
      segments: [{ length: feet(100), resistance: ohmsPerThousandFeet(2) }],
    } as const;
    const idle = approximateDrops({ ...circuit, current: amperes(0) });
    if (idle.state !== "carried") throw new Error(idle.state);
    expect(idle.forms.map(({ error }) => error)).toEqual([0, 0, 0, 0]);
    expect(approximateDrops({ ...circuit, current: amperes(5000) }).state).toBe("collapsed");
  });
});

describe("supply", () => {
  test("a transformer at its rated current loses its per-unit impedance", () => {
    const rated = 10_000 / 240;
    const source = transformerImpedance({ rating: kilovoltAmperes(10), voltage: volts(240), impedance: percent(2) });
    expect((Math.hypot(source.resistance, source.reactance) * rated) / 240).toBeCloseTo(0.02, 12);
    expect(source.reactance / source.resistance).toBeCloseTo(2, 12);
  });

  test("a short at the service draws the fault current, one phase or three", () => {
    for (const fed of ["single-phase", "three-phase"] as const) {
      const source = serviceImpedance({ system: fed, voltage: volts(240), faultCurrent: amperes(1500) });
      const short = lockedRotorDrop({
        system: fed,
        sourceVoltage: volts(240),
        source,
        segments: [],
        // A motor of next to no impedance is a short.
        lockedRotorCurrent: amperes(10_000),
        lockedRotorPowerFactor: ratio(0.447),
        ratedVoltage: 0.1 as Voltage,
      });
      expect(short.current / 1500).toBeCloseTo(1, 3);
    }
  });

  test("a source's impedance lowers the voltage, and what it takes is stated apart", () => {
    const circuit = {
      system: "three-phase",
      sourceVoltage: volts(240),
      current: amperes(20),
      powerFactor: ratio(0.8),
      segments: [{ length: feet(200), ...conductorResistance({ size: "8 AWG" }) }],
    } as const;
    const stiff = voltageDrop(circuit);
    const soft = voltageDrop({
      ...circuit,
      source: transformerImpedance({ rating: kilovoltAmperes(15), voltage: volts(240), impedance: percent(3) }),
    });
    if (stiff.state !== "carried" || soft.state !== "carried") throw new Error("collapsed");
    expect(soft.drop).toBeGreaterThan(stiff.drop);
    expect(soft.sourceDrop + (soft.segments[0]?.drop ?? 0)).toBeCloseTo(soft.drop, 10);
  });
});

describe("a laid conductor", () => {
  test("reactance is in proportion to frequency and grows with spacing", () => {
    const at = (spacing: number, frequency: number) =>
      conductorReactance({ diameter: millimetres(5), spacing: millimetres(spacing), frequency: hertz(frequency) });
    expect(at(10, 120)).toBeCloseTo(2 * at(10, 60), 15);
    expect(at(20, 60)).toBeGreaterThan(at(10, 60));
    // Twice the spacing adds 2 · 10⁻⁷ · ln 2 henries per metre, whatever the conductor.
    expect((at(20, 60) - at(10, 60)) / (2 * Math.PI * 60)).toBeCloseTo(2e-7 * Math.LN2, 15);
  });

  test("skin effect follows the exact solution by Bessel functions (tests/fixtures/skin-effect.py)", () => {
    const { rows } = JSON.parse(readFileSync(new URL("../fixtures/skin-effect.json", import.meta.url), "utf8")) as {
      rows: readonly { x: number; resistance: number; frequency: number; factor: number }[];
    };
    for (const { x, resistance, frequency, factor } of rows) {
      const got = skinEffectFactor({ resistance: resistance as ResistancePerLength, frequency: hertz(frequency) });
      expect(Math.abs(got / factor - 1), `x = ${x}`).toBeLessThan(0.0011);
      // Up to 1/0 AWG and somewhat beyond, the two series are one.
      if (x <= 1) expect(Math.abs(got / factor - 1)).toBeLessThan(1e-8);
    }
  });

  test("direct current knows no reactance, no skin and no proximity", () => {
    const still = conductorImpedance({ size: "4/0 AWG", frequency: hertz(0) });
    expect(still.reactance).toBe(0);
    expect(still.resistance).toBe(conductorResistance({ size: "4/0 AWG" }).resistance);
    const resistance = 1e-4 as ResistancePerLength;
    expect(skinEffectFactor({ resistance, frequency: hertz(0) })).toBe(1);
    const neighbours = { resistance, frequency: hertz(0), diameter: millimetres(20), spacing: millimetres(25) };
    expect(proximityEffect({ ...neighbours, conductors: 2 })).toBe(0);
    expect(proximityEffect({ ...neighbours, frequency: hertz(60), conductors: 2 })).toBeGreaterThan(0);
  });

  test("Table 9 at 50 Hz has five sixths of its reactance and says it left its range", () => {
    const at = (frequency: number) =>
      conductorImpedance({ size: "1/0 AWG", raceway: "steel", frequency: hertz(frequency) });
    expect(at(50).reactance).toBeCloseTo((at(60).reactance * 5) / 6, 15);
    expect([at(60).insideRange, at(50).insideRange]).toEqual([true, false]);
  });

  test("aluminium: more resistance, less mass, one size fewer", () => {
    const aluminium = conductorImpedance({ size: "2 AWG", material: "aluminium", raceway: "plastic" });
    expect(aluminium.resistance).toBeGreaterThan(conductorImpedance({ size: "2 AWG", raceway: "plastic" }).resistance);
    const { area } = conductorGeometry("2 AWG");
    expect(conductorMass({ area, material: "aluminium" }) / conductorMass({ area })).toBeCloseTo(2703 / 8890, 12);
    expect(inPoundsPerFoot(conductorMass({ area }))).toBeCloseTo(0.2009, 4);
    expect(conductorChoices({ insulation: "75 °C", material: "aluminium" })[0]?.size).toBe("12 AWG");
    expect(smallConductorLimit("12 AWG", "aluminium")).toBe(15);
    expect(smallConductorLimit("250 kcmil")).toBeNull();
    expect(() => smallConductorLimit("16 AWG")).toThrow(InputError);
    expect(() => conductorImpedance({ size: "14 AWG", material: "aluminium", raceway: "steel" })).toThrow(InputError);
  });

  test("a tinned conductor has a little more resistance; a metric size that no class lists comes from the law", () => {
    expect(conductorResistance({ size: "10 AWG", coated: true }).resistance * 304.8).toBeCloseTo(1.29, 12);
    const odd = conductorResistance({ size: "5 mm²", stranding: "flexible" });
    expect(odd).toMatchObject({ method: "iec-60028", insideRange: false });
    expect(conductorResistance({ size: "4 AWG", stranding: "solid" }).method).toBe("iec-60028");
  });

  test("three gauge numbers halve the resistance, six double the diameter", () => {
    for (let gauge = -3; gauge <= 30; gauge++) {
      expect(gaugeDiameter(gauge) / gaugeDiameter(gauge + 6)).toBeCloseTo(2.005, 3);
      expect((gaugeDiameter(gauge) / gaugeDiameter(gauge + 3)) ** 2).toBeCloseTo(2.005, 3);
    }
  });
});

describe("metric capacity", () => {
  test("the table's own conditions give the table, hotter and bunched less", () => {
    for (const area of iecCapacityAreas) {
      const cable = {
        size: parseConductorSize(`${area} mm2`),
        insulation: "PVC 70 °C",
        installation: "D1",
        loaded: 3,
      } as const;
      const plain = iecCurrentCapacity(cable);
      expect(plain.capacity).toBe(plain.tabulated);
      expect(iecCurrentCapacity({ ...cable, circuits: 2 }).capacity).toBeCloseTo(0.8 * plain.capacity, 10);
      expect(iecCurrentCapacity({ ...cable, ambient: celsius(70) }).capacity).toBe(0);
      expect(iecCurrentCapacity({ ...cable, circuits: 12 }).insideRange).toBe(false);
    }
  });

  test("the ambient law gives the standard's factors (from memory: 0.87 at 40 °C for PVC in air, 1.12 at 20 °C)", () => {
    const air = { insulation: celsius(70), tableAmbient: celsius(30) };
    expect(ambientFactor({ ...air, ambient: celsius(40) })).toBeCloseTo(0.87, 2);
    expect(ambientFactor({ ...air, ambient: celsius(20) })).toBeCloseTo(1.12, 2);
    expect(() => ambientFactor({ ...air, ambient: celsius(40), tableAmbient: celsius(70) })).toThrow(InputError);
  });
});

describe("limits of the inverses", () => {
  const load = {
    system: "single-phase",
    sourceVoltage: volts(230),
    current: amperes(10),
    powerFactor: ratio(0.8),
    dropLimit: percent(3),
  } as const;
  const wire = conductorResistance({ size: "12 AWG" });

  test("a conductor that takes nothing reaches any distance; where the limit is spent there is no length", () => {
    expect(longestLength({ ...load, conductor: { resistance: 0 as ResistancePerLength } }).state).toBe("unlimited");
    expect(longestLength({ ...load, current: 0 as Current, conductor: wire }).state).toBe("unlimited");
    const spent = longestLength({ ...load, conductor: wire, settled: [{ length: feet(300), ...wire }] });
    expect(spent.state).toBe("limit already exceeded");
    const joints = longestLength({ ...load, conductor: { ...wire, joints: 1 as Resistance } });
    expect(joints.state).toBe("limit already exceeded");
    const hopeless = longestLength({ ...load, conductor: wire, settled: [{ length: 50_000 as Length, ...wire }] });
    expect(hopeless).toEqual({ state: "limit already exceeded", excess: null });
  });

  test("a limit of the nominal voltage beyond what the source has is refused", () => {
    const wrong = {
      ...load,
      sourceVoltage: volts(100),
      nominalVoltage: volts(480),
      dropLimit: 0.5 as Ratio,
      conductor: wire,
    };
    expect(() => longestLength(wrong)).toThrow(InputError);
  });

  test("a start cannot be asked of direct current", () => {
    const start = {
      lockedRotorCurrent: amperes(50),
      lockedRotorPowerFactor: ratio(0.5),
      ratedVoltage: volts(230),
      leastVoltage: ratio(0.7),
    };
    const job = { ...load, system: "direct current", powerFactor: ratio(1), length: feet(10), start } as const;
    expect(() => smallestConductor({ ...job, choices: conductorChoices({ insulation: "75 °C" }) })).toThrow(InputError);
  });
});
