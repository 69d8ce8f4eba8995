/** Both sides of every limit, whole circuits by complex arithmetic written out here, and what is refused. */
import fc from "fast-check";
import {
  ambientFactor,
  type ConductorChoice,
  type ConductorSize,
  conductorAmpacity,
  conductorChoices,
  conductorImpedance,
  conductorReactance,
  conductorResistance,
  conductorTemperature,
  groundingConductor,
  iecCurrentCapacity,
  leastMetal,
  longestLength,
  parseConductorSize,
  resistanceAtTemperature,
  runVoltages,
  smallConductorLimit,
  smallestConductor,
  standardRatings,
  temperatureFromResistance,
  voltageDrop,
} from "risingmain/conductor";
import {
  type Area,
  amperes,
  type Current,
  celsius,
  type Frequency,
  type Length,
  metres,
  ohms,
  type Ratio,
  type Resistance,
  type ResistancePerLength,
  ratio,
  type Temperature,
  volts,
} from "risingmain/units";
import { describe, expect, test } from "vitest";
import { refusedWith } from "../refused.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const perMetre = (value: number) => value as ResistancePerLength;

describe("sizes", () => {
  const taken = (size: string) => refusedWith(() => conductorResistance({ size: size as ConductorSize }));

  test.each(["1 AWG", "40 AWG", "4/0 AWG", "250 kcmil", "2000 kcmil", "0.5 mm²", "1000 mm²", "2.125 mm²"])(
    "%s is one",
    (size) => {
      expect(taken(size)).toBeUndefined();
    },
  );

  test.each([
    ...["0 AWG", "41 AWG", "12.5 AWG", "5/0 AWG", "249 kcmil", "2001 kcmil", "0.4 mm²", "1001 mm²", "2.1255 mm²"],
    ...["x2/0 AWG", "2/0 AWGx", "x12 AWG", "12 AWGx", "12 awg", "12", "", "300 AWG", "12 kcmil"],
  ])("%s is none", (size) => {
    expect(taken(size)).toEqual(["size", size]);
  });

  test.each([
    ...[
      ["12", "12 AWG"],
      ["#12", "12 AWG"],
      ["no 12", "12 AWG"],
      ["no. 12", "12 AWG"],
      ["awg 12", "12 AWG"],
    ],
    ...[
      ["12ga", "12 AWG"],
      ["12 ga.", "12 AWG"],
      ["12 gauge", "12 AWG"],
      ["2/0", "2/0 AWG"],
      ["0000", "4/0 AWG"],
    ],
    ...[
      ["250", "250 kcmil"],
      ["350mcm", "350 kcmil"],
      ["350 kcmil", "350 kcmil"],
      ["350  MCM", "350 kcmil"],
    ],
    ...[
      ["2.5 mm2", "2.5 mm²"],
      ["2.125mm²", "2.125 mm²"],
      ["2.5 sq  mm", "2.5 mm²"],
      ["2,5 sq.mm", "2.5 mm²"],
    ],
    ["16 mm2", "16 mm²"],
    ["  12  AWG           ", "12 AWG"],
  ] as const)("%s is read as %s", (text, size) => {
    expect(parseConductorSize(text)).toBe(size);
  });

  test.each([
    ...["x2.5 mm2", "2.5 mm2 x", "x350 mcm", "350 mcm x", "x2/0", "2/0x", "00000", "000x", "x12", "12x", "12345"],
    ...["1#2", "12 no", "1ga2", "300 AWG", "#300", "100", "249", "5/0", "0", ""].filter((text) => text !== "0"),
    "  12  AWG            ",
  ])("%s is not read", (text) => {
    expect(refusedWith(() => parseConductorSize(text))?.[0]).toBe("text");
  });

  test("what was typed is what is shown, not what was made of it", () => {
    for (const text of ["twelve", "x12", "12x", "12345"])
      expect(refusedWith(() => parseConductorSize(text))).toEqual(["text", text]);
  });

  test("usual sizes begin at the thinnest the code allows, 14 AWG in copper and 12 in aluminium", () => {
    const first = (material: "copper" | "aluminium") => conductorChoices({ insulation: "75 °C", material })[0]?.size;
    expect([first("copper"), first("aluminium")]).toEqual(["14 AWG", "12 AWG"]);
  });
});

describe("the temperature of a conductor", () => {
  const run = { ampacity: amperes(10), ratedTemperature: celsius(75), ambient: celsius(30) };

  test("balances its heat: rise over rated rise is current squared times resistance over rated resistance", () => {
    fc.assert(
      fc.property(
        between(0, 15),
        between(-20, 50),
        between(0, 50),
        fc.constantFrom("copper" as const, "aluminium" as const),
        (current, ambient, tableAmbient, material) => {
          const given = { ...run, ambient: celsius(ambient), tableAmbient: celsius(tableAmbient), material };
          const got = conductorTemperature({ ...given, current: amperes(current) });
          if (got.state === "burns out") throw new Error(got.state);
          const hotter = resistanceAtTemperature({
            resistance: ohms(1),
            from: run.ratedTemperature,
            to: got.temperature,
            material,
          });
          const rise = (current / 10) ** 2 * (75 - tableAmbient) * hotter;
          expect(got.temperature - given.ambient).toBeCloseTo(rise, 9);
          expect(got.state).toBe(got.temperature <= run.ratedTemperature ? "within rating" : "above rating");
        },
      ),
    );
  });

  test("burns out where the balance has no end below 1000 K", () => {
    // share = (I/Iz)² · 45/(348.15 − 38.7) reaches (1000 − 303.15)/(1000 − 38.7) at 2.23 times the ampacity, 1 at 2.62.
    const state = (current: number) => conductorTemperature({ ...run, current: amperes(current) }).state;
    expect([9.9, 10.1, 22, 22.6, 26, 27, 40].map(state)).toEqual([
      "within rating",
      "above rating",
      "above rating",
      ...Array(4).fill("burns out"),
    ]);
  });

  test("without current it is the ambient's, within the rating up to just that", () => {
    const idle = (ambient: number) =>
      conductorTemperature({ ...run, current: amperes(0), ambient: celsius(ambient) }).state;
    expect([idle(75), idle(75.001)]).toEqual(["within rating", "above rating"]);
  });

  test("a table for an ambient at or over the rated temperature is refused", () => {
    const at = (ambient: number) =>
      refusedWith(() => conductorTemperature({ ...run, current: amperes(1), tableAmbient: celsius(ambient) }))?.[0];
    expect([at(75), at(80), at(74)]).toEqual(["tableAmbient", "tableAmbient", undefined]);
  });
});

describe("resistance and temperature", () => {
  const given = { resistance: ohms(1), from: celsius(20), to: celsius(20) };
  const coefficient = (perKelvin: number) => ({ perKelvin, at: celsius(20) });

  test("a coefficient that leaves under a hundredth of the resistance is refused, at either end", () => {
    const low = celsius(-29.4);
    const lower = celsius(-29.6);
    // 1 − 0.02 · 49.5 = 0.01.
    expect(
      refusedWith(() => resistanceAtTemperature({ ...given, to: low, coefficient: coefficient(0.02) })),
    ).toBeUndefined();
    expect(
      refusedWith(() => resistanceAtTemperature({ ...given, to: lower, coefficient: coefficient(0.02) }))?.[0],
    ).toBe("to");
    expect(
      refusedWith(() => resistanceAtTemperature({ ...given, from: lower, coefficient: coefficient(0.02) }))?.[0],
    ).toBe("from");
  });

  test("a coefficient too flat to tell a temperature, and temperatures beyond 0 to 2000 K, are refused", () => {
    const told = (hot: number, perKelvin = 0.004) =>
      refusedWith(() =>
        temperatureFromResistance({
          coldResistance: ohms(1),
          coldTemperature: celsius(20),
          hotResistance: ohms(hot),
          coefficient: coefficient(perKelvin),
        }),
      )?.[0];
    expect(told(1.001, 1e-5)).toBeUndefined();
    expect(told(1.001, 0.99e-5)).toBe("coefficient.perKelvin");
    expect(told(1.001, 0)).toBe("coefficient.perKelvin");
    // 0.004 · (2000 − 293.15) = 6.83 over the 1 of 20 °C.
    expect([told(7.82), told(7.83)]).toEqual([undefined, "hotResistance"]);
    // A rise of −0.9/0.003 = −300 K from 293.15 K.
    expect([told(0.13, 0.003), told(0.1, 0.003)]).toEqual([undefined, "hotResistance"]);
    // In powers of two, to the bit: 1/512 per kelvin at 256 K is a line through 0 K at a half and 2000 K at 4.40625.
    const line = { coldResistance: ohms(1), coldTemperature: 256 as Temperature };
    const read = (hot: number) =>
      refusedWith(() =>
        temperatureFromResistance({
          ...line,
          hotResistance: ohms(hot),
          coefficient: { perKelvin: 1 / 512, at: line.coldTemperature },
        }),
      )?.[0];
    expect([read(0.5), read(0.500001), read(4.40625), read(4.40626)]).toEqual([
      "hotResistance",
      undefined,
      undefined,
      "hotResistance",
    ]);
  });
});

describe("inside the published range", () => {
  test("from 0 to 100 °C, ends included, for a listed wire", () => {
    const inside = (temperature: Temperature, size: ConductorSize = "12 AWG") =>
      conductorResistance({ size, temperature }).insideRange;
    const [ice, boiling] = [273.15 as Temperature, 373.15 as Temperature];
    expect([inside(ice), inside(boiling), inside(celsius(-1)), inside(celsius(101))]).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect(inside(celsius(20), "13 AWG")).toBe(false);
    const conduit = (temperature: Temperature, frequency = 60) =>
      conductorImpedance({ size: "10 AWG", raceway: "plastic", temperature, frequency: frequency as Frequency })
        .insideRange;
    expect([conduit(ice), conduit(boiling), conduit(celsius(-1)), conduit(celsius(101))]).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect(conduit(celsius(20), 50)).toBe(false);
  });

  test("a stranded wire that no table lists is longer than its run, a solid one is not", () => {
    const of = (stranding: "solid" | "stranded") => conductorResistance({ size: "13 AWG", stranding }).resistance;
    expect(of("stranded")).toBeGreaterThan(of("solid"));
    // 5.26 mm² wire of 9 AWG and IEC 60028 copper, 0.017241 Ω mm²/m at 20 °C: 13 AWG is 2.6243 mm².
    const cold = conductorResistance({ size: "13 AWG", stranding: "solid", temperature: celsius(20) }).resistance;
    expect(Math.abs(cold / (0.017241e-6 / 2.6243e-6) - 1)).toBeLessThan(1e-3);
  });

  test("aluminium that its class does not list has the resistance of the law", () => {
    // Class 2 of IEC 60228 begins at 10 mm² in aluminium.
    const of = (size: ConductorSize) => conductorResistance({ size, material: "aluminium" }).method;
    expect([of("6 mm²"), of("10 mm²")]).toEqual(["iec-60028", "iec-60228"]);
  });

  test("a table of ampacity is for an ambient at least 1 K under its insulation", () => {
    const at = (tableAmbient: number) =>
      refusedWith(() =>
        ambientFactor({
          insulation: 350 as Temperature,
          ambient: 300 as Temperature,
          tableAmbient: tableAmbient as Temperature,
        }),
      )?.[0];
    expect([at(349), at(349.01)]).toEqual([undefined, "tableAmbient"]);
  });

  test("up to nine circuits together are listed", () => {
    const inside = (circuits: number) =>
      iecCurrentCapacity({ size: "4 mm²", insulation: "PVC 70 °C", installation: "C", loaded: 2, circuits })
        .insideRange;
    // The factors read from Table B.52.17 are those of 1 to 9 circuits.
    expect([inside(1), inside(9), inside(10)]).toEqual([true, true, false]);
    expect(
      refusedWith(() => iecCurrentCapacity({ size: "4 AWG", insulation: "PVC 70 °C", installation: "C", loaded: 2 })),
    ).toEqual(["size", "4 AWG"]);
  });

  test("the listed metal of copper with its skin effect is over the direct one in open air", () => {
    const size = "500 kcmil";
    expect(conductorImpedance({ size }).resistance).toBeGreaterThan(conductorResistance({ size }).resistance);
  });

  test("wires may touch, not lie in each other", () => {
    const at = (spacing: number) =>
      refusedWith(() =>
        conductorReactance({ diameter: 0.002 as Length, spacing: spacing as Length, frequency: 60 as Frequency }),
      )?.[0];
    expect([at(0.002), at(0.0019)]).toEqual([undefined, "spacing"]);
  });
});

describe("ampacity", () => {
  const row = { size: "10 AWG", copper: [30, 35, 40], aluminium: [25, 30, null] } as const;

  test("a table of one's own says so, and each of its figures is looked at", () => {
    const given = { size: "10 AWG", insulation: "75 °C" } as const;
    expect(conductorAmpacity(given).method).toBe("nfpa-70");
    expect(conductorAmpacity({ ...given, table: [row] as never })).toMatchObject({
      method: "table given",
      tabulated: 35,
    });
    expect(conductorAmpacity({ ...given, material: "aluminium", table: [row] as never }).tabulated).toBe(30);
    const spoilt = [{ ...row, copper: [30, 35, -1] }];
    expect(refusedWith(() => conductorAmpacity({ ...given, table: spoilt as never }))?.[0]).toBe("table[0].copper[2]");
    const other = { ...row, size: "8 AWG" };
    const lacking = () => conductorAmpacity({ ...given, size: "6 AWG", table: [row, other] as never });
    expect(lacking).toThrow("a size in the table: 10 AWG, 8 AWG");
  });

  test("a band of ambient ends at its whole degree", () => {
    const factor = (ambient: number) =>
      conductorAmpacity({ size: "10 AWG", insulation: "75 °C", ambient: (ambient + 273.15) as Temperature })
        .ambientFactor;
    // NEC Table 310.15(B)(1), 75 °C column: 26–30 °C 1.00, 31–35 °C 0.94.
    expect([factor(30), factor(30.1), factor(35), factor(35.1)]).toEqual([1, 0.94, 0.94, 0.88]);
  });

  test("a conductor that carries just what its terminals may is governed by itself", () => {
    expect(conductorAmpacity({ size: "10 AWG", insulation: "75 °C", terminals: "75 °C" }).governedBy).toBe("conductor");
    expect(conductorAmpacity({ size: "10 AWG", insulation: "90 °C", terminals: "75 °C" }).governedBy).toBe("terminals");
  });

  test("standard ratings either side of a current, and a rating that is one", () => {
    // NEC 240.6(A): 15, 20, 25, 30 A.
    expect(standardRatings(amperes(22))).toEqual({ below: 20, above: 25 });
    expect(standardRatings(amperes(25))).toEqual({ below: 25, above: 25 });
    expect(standardRatings((2.5 * 10) as Current)).toEqual({ below: 25, above: 25 });
    expect(standardRatings((25 * (1 - 1e-13)) as Current)).toEqual({ below: 25, above: 25 });
    expect(standardRatings((25 * (1 + 1e-13)) as Current)).toEqual({ below: 25, above: 25 });
    expect(standardRatings(amperes(3))).toEqual({ below: 0, above: 15 });
  });

  test("small conductors by metal (NEC 240.4(D))", () => {
    const of = (size: ConductorSize, metal: "copper" | "aluminium") => smallConductorLimit(size, metal);
    expect([of("14 AWG", "copper"), of("12 AWG", "aluminium"), of("10 AWG", "aluminium")]).toEqual([15, 15, 25]);
    expect([of("8 AWG", "copper"), of("250 kcmil", "copper"), of("4 mm²", "copper")]).toEqual([null, null, null]);
    expect(() => of("16 AWG", "copper")).toThrow("size: expected 14 AWG or thicker");
    expect(() => of("14 AWG", "aluminium")).toThrow("size: expected 12 AWG or thicker");
  });

  test("grounding conductors enlarged with the circuit (NEC 250.122(B))", () => {
    const ground = (rating: number, from: ConductorSize, to: ConductorSize) =>
      groundingConductor({ overcurrentRating: amperes(rating), enlarged: { from, to } }).size;
    // 60 A: 10 AWG. The same size keeps it; 6 to 4 AWG is 41,740/26,240 of 10,380 = 16,511 cmil: 8 AWG of 16,510 is a mil short.
    expect(ground(60, "6 AWG", "6 AWG")).toBe("10 AWG");
    expect(ground(60, "6 AWG", "4 AWG")).toBe("6 AWG");
    // Table 250.122 for 6000 A copper is 800 kcmil; 500 to 1000 kcmil doubles it, but never past the conductors.
    expect(ground(6000, "500 kcmil", "1000 kcmil")).toBe("1000 kcmil");
    // Unchanged conductors leave the table's own.
    expect(ground(6000, "1000 kcmil", "1000 kcmil")).toBe("800 kcmil");
    expect(refusedWith(() => ground(60, "4 mm²", "6 mm²"))?.[0]).toBe("enlarged.from");
    expect(refusedWith(() => ground(60, "6 AWG", "8 AWG"))?.[0]).toBe("enlarged.to");
  });
});

/** Complex numbers, so that a circuit can be worked with phasors apart from the library's own way. */
type Phasor = readonly [number, number];
const times = ([a, b]: Phasor, [c, d]: Phasor): Phasor => [a * c - b * d, a * d + b * c];
const plus = ([a, b]: Phasor, [c, d]: Phasor): Phasor => [a + c, b + d];

const systems = fc.constantFrom("single-phase" as const, "three-phase" as const);
const wires = fc.record({ length: between(1, 300), r: between(1e-4, 0.01), x: between(0, 5e-4) });
const sources = fc.record({ resistance: between(0, 0.2), reactance: between(0, 0.3) });
const segmentOf = ({ length, r, x }: { length: number; r: number; x: number }) => ({
  length: length as Length,
  resistance: perMetre(r),
  reactance: perMetre(x),
});

describe("circuits", () => {
  const circuits = fc.record({
    system: systems,
    current: between(0.1, 20),
    powerFactor: between(0, 1),
    source: sources,
    list: fc.array(wires, { minLength: 1, maxLength: 4 }),
  });

  test("the load's voltage and the drops bring back the source's, by phasors", () => {
    fc.assert(
      fc.property(circuits, ({ system, current, powerFactor, source, list }) => {
        const sourceVoltage = volts(230);
        const got = voltageDrop({
          system,
          sourceVoltage,
          current: amperes(current),
          powerFactor: ratio(powerFactor),
          source: { resistance: ohms(source.resistance), reactance: ohms(source.reactance) },
          segments: list.map(segmentOf),
        });
        const k = system === "three-phase" ? Math.sqrt(3) : 2;
        const phase: Phasor = [powerFactor, -Math.sqrt(1 - powerFactor * powerFactor)];
        const own = system === "three-phase" ? Math.sqrt(3) : 1;
        const parts: Phasor[] = [
          [own * source.resistance, own * source.reactance],
          ...list.map(({ length, r, x }): Phasor => [k * length * r, k * length * x]),
        ];
        const drop = times([current * phase[0], current * phase[1]], parts.reduce(plus));
        if (got.state === "collapsed") {
          // Even a load of no voltage would take more than the source has: across it, or along with it.
          expect(Math.abs(drop[1]) > 230 || drop[0] + 230 - Math.sqrt(230 ** 2 - drop[1] ** 2) > 230 * (1 - 1e-9)).toBe(
            true,
          );
          expect(got.needed).toBeCloseTo(Math.hypot(...drop), 9);
          return;
        }
        const sent = plus([got.loadVoltage, 0], drop);
        expect(Math.hypot(...sent)).toBeCloseTo(230, 9);
        // Segment by segment from the source, the fall of the voltage's size.
        let behind: Phasor = sent;
        const falls = parts.map((part) => {
          const before = Math.hypot(...behind);
          const [a, b] = times([current * phase[0], current * phase[1]], part);
          behind = plus(behind, [-a, -b]);
          return before - Math.hypot(...behind);
        });
        expect(got.sourceDrop).toBeCloseTo(falls[0] ?? Number.NaN, 8);
        got.segments.forEach((segment, i) => {
          expect(segment.drop).toBeCloseTo(falls[i + 1] ?? Number.NaN, 8);
        });
      }),
    );
  });

  test("the longest length loses just the limit, behind any source and settled run", () => {
    fc.assert(
      fc.property(circuits, between(0.01, 0.4), ({ system, current, powerFactor, source, list }, dropLimit) => {
        const [wire, ...settled] = list.map(segmentOf);
        if (wire === undefined) return;
        const { length: _, ...conductor } = wire;
        const job = {
          system,
          sourceVoltage: volts(230),
          current: amperes(current),
          powerFactor: ratio(powerFactor),
          source: { resistance: ohms(source.resistance), reactance: ohms(source.reactance) },
        };
        const got = longestLength({ ...job, conductor, settled, dropLimit: ratio(dropLimit) });
        const lost = (length: number) =>
          voltageDrop({ ...job, segments: [...settled, { ...conductor, length: length as Length }] });
        if (got.state === "limit already exceeded") {
          const none = lost(0);
          if (none.state === "carried") expect(none.share).toBeGreaterThan(dropLimit);
          return;
        }
        const drop = lost(got.state === "limited" ? got.length : 1e5);
        const share = drop.state === "carried" ? drop.share : Number.NaN;
        if (got.state === "unlimited") expect(share).toBeLessThanOrEqual(dropLimit);
        else expect(share).toBeCloseTo(dropLimit, 9);
      }),
    );
  });

  const load = {
    system: "single-phase",
    sourceVoltage: volts(100),
    current: amperes(10),
    powerFactor: ratio(1),
  } as const;
  const half = { resistance: perMetre(0.0005) };

  test("a drop limit is a share above 0 and below 1, wherever it is asked for", () => {
    const choices: ConductorChoice[] = [{ size: "one", resistance: perMetre(1e-3), area: 1e-6 as Area }];
    const run = { length: metres(1), choices };
    for (const [limit, field] of [
      [0, "dropLimit"],
      [1, "dropLimit"],
      [-1, "dropLimit"],
      [1e-9, undefined],
      [0.999, undefined],
    ]) {
      const dropLimit = limit as Ratio;
      expect(refusedWith(() => longestLength({ ...load, conductor: half, dropLimit }))?.[0]).toBe(field);
      expect(refusedWith(() => smallestConductor({ ...load, choices, length: metres(1), dropLimit }))?.[0]).toBe(field);
      expect(refusedWith(() => leastMetal({ ...load, runs: [run, run], dropLimit }))?.[0]).toBe(field);
    }
  });

  test("a limit spent to the last by what is settled leaves no length, and none is exceeded", () => {
    // 2 · 100 m · 0.0005 Ω/m · 10 A = 1 V of 100 V.
    const settled = [{ length: metres(100), ...half }];
    const got = longestLength({ ...load, conductor: half, settled, dropLimit: ratio(0.01) });
    expect(got.state === "limited" ? got.length : Number.NaN).toBeCloseTo(0, 9);
    expect(longestLength({ ...load, conductor: half, settled, dropLimit: ratio(0.0099) }).state).toBe(
      "limit already exceeded",
    );
    const ofNominal = (nominal: number) => () =>
      longestLength({ ...load, nominalVoltage: volts(nominal), conductor: half, dropLimit: ratio(0.5) });
    expect(refusedWith(ofNominal(250))?.[0]).toBe("dropLimit");
    // Half of 200 V is all of the 100 V: 2 · 10 km · 0.0005 Ω/m · 10 A.
    expect(ofNominal(200)()).toMatchObject({ state: "limited", length: 10_000 });
  });

  test("a length is up to 100 km; what reaches farther is unlimited", () => {
    // 2 · 100 km · 2⁻¹⁴ Ω/m · 8 A is all of 100 000/1024 V, in powers of two.
    const reach = (resistance: number) =>
      longestLength({
        ...load,
        sourceVoltage: volts(100_000 / 1024),
        nominalVoltage: volts(200_000 / 1024),
        current: amperes(8),
        conductor: { resistance: perMetre(resistance) },
        dropLimit: ratio(0.5),
      });
    expect(reach(2 ** -14)).toEqual({ state: "limited", length: 100_000 });
    expect(reach(2 ** -14 * 0.999)).toEqual({ state: "unlimited" });
  });

  const choice = (size: string, resistance: number, rest: Partial<ConductorChoice> = {}): ConductorChoice => ({
    size: size as ConductorSize,
    resistance: perMetre(resistance),
    ...rest,
  });

  test("a size may lose just the limit and carry just the current; one over either is passed by", () => {
    // Powers of two, so that nothing is rounded: 2 · 128 m · 2⁻⁹ Ω/m · 8 A = 4 V of 128 V.
    const job = {
      ...load,
      sourceVoltage: volts(128),
      current: amperes(8),
      length: metres(128),
      choices: [
        choice("thin", 2 ** -8, { ampacity: amperes(20) }),
        choice("thick", 2 ** -9, { ampacity: amperes(20) }),
      ],
    };
    const found = (dropLimit: number, ampacityNeeded = 8) => {
      const got = smallestConductor({ ...job, dropLimit: dropLimit as Ratio, ampacityNeeded: amperes(ampacityNeeded) });
      return got.state === "found" ? [got.choice.size, got.governedBy] : [got.state, got.governedBy];
    };
    expect(found(1 / 32)).toEqual(["thick", "voltage drop"]);
    expect(found(1 / 33)).toEqual(["none thick enough", "voltage drop"]);
    expect(found(1 / 16)).toEqual(["thin", "thinnest on offer"]);
    expect(found(1 / 16, 20)).toEqual(["thin", "thinnest on offer"]);
    expect(found(1 / 16, 20.1)).toEqual(["none thick enough", "ampacity"]);
    expect(smallestConductor({ ...job, choices: [choice("bare", 2 ** -9)], dropLimit: ratio(0.5) }).state).toBe(
      "found",
    );
  });

  test("conductors may take all that the source has, and no more", () => {
    // 2 · 128 m · 2⁻⁴ Ω/m · 8 A = 128 V.
    const state = (current: number) =>
      voltageDrop({
        ...load,
        sourceVoltage: volts(128),
        current: amperes(current),
        segments: [{ length: metres(128), resistance: perMetre(2 ** -4) }],
      });
    expect(state(8)).toMatchObject({ state: "carried", drop: 128, loadVoltage: 0, share: 1 });
    expect(state(8.001)).toMatchObject({ state: "collapsed", available: 128 });
  });

  test("a drop that collapses the circuit is a voltage drop, whatever share it is of", () => {
    const job = { ...load, length: metres(1e4), choices: [choice("thin", 0.01)], dropLimit: ratio(0.9) };
    expect(smallestConductor(job)).toMatchObject({ state: "none thick enough", governedBy: "voltage drop" });
  });

  test("the voltage in the first moment counts the source's own impedance, and may be met to the bit", () => {
    const start = {
      lockedRotorCurrent: amperes(16),
      lockedRotorPowerFactor: ratio(1),
      ratedVoltage: volts(128),
      leastVoltage: ratio(0.5),
    };
    const job = {
      ...load,
      sourceVoltage: volts(128),
      current: amperes(1),
      length: metres(128),
      choices: [choice("thick", 2 ** -6)],
      dropLimit: ratio(0.9),
    };
    // 2 · 128 m · 2⁻⁶ Ω/m = 4 Ω beside the motor's 8 Ω: 128 · 8/12 V at it, and 128 · 8/16 V with 4 Ω in the source.
    const state = (leastVoltage: number, source?: number) =>
      smallestConductor({
        ...job,
        ...(source === undefined ? {} : { source: { resistance: ohms(source), reactance: ohms(0) } }),
        start: { ...start, leastVoltage: ratio(leastVoltage) },
      }).governedBy;
    expect([state(0.66), state(0.67)]).toEqual(["thinnest on offer", "starting voltage"]);
    expect([state(0.5, 4), state(0.51, 4)]).toEqual(["thinnest on offer", "starting voltage"]);
    expect(refusedWith(() => smallestConductor({ ...job, start: { ...start, leastVoltage: ratio(0.05) } }))?.[0]).toBe(
      "start.leastVoltage",
    );
    const direct = { ...job, system: "direct current" as const };
    expect(refusedWith(() => smallestConductor({ ...direct, start }))?.[0]).toBe("start");
  });

  test("each size on offer is looked at, and none may be thinner than the one before", () => {
    const offered = (...choices: unknown[]) =>
      refusedWith(() =>
        smallestConductor({ ...load, length: metres(1), dropLimit: ratio(0.5), choices: choices as ConductorChoice[] }),
      )?.[0];
    const good = choice("one", 1e-3);
    expect(offered(good, choice("same", 1e-3))).toBeUndefined();
    expect(offered(good, choice("thinner", 1.1e-3))).toBe("choices[1].resistance");
    expect(offered({ ...good, size: 12 })).toBe("choices[0].size");
    expect(offered({ ...good, reactance: -1 })).toBe("choices[0].reactance");
    expect(offered({ ...good, ampacity: -1 })).toBe("choices[0].ampacity");
  });

  test("the least metal is the least of all pairs; of two alike, the one that loses less", () => {
    const areas = [4e-6, 2e-6, 1e-6];
    const choices = [...areas].reverse().map((area, i) => choice(`${i}`, 1e-8 / area, { area: area as Area }));
    fc.assert(
      fc.property(between(1, 50), between(1, 50), between(0.002, 0.2), (a, b, dropLimit) => {
        const runs = [
          { length: a as Length, choices },
          { length: b as Length, choices },
        ] as const;
        const got = leastMetal({ ...load, runs, dropLimit: ratio(dropLimit) });
        // Every pair by hand: 2 · I · ρ · (a/A + b/B) of 100 V; 2 · (a A + b B) of metal.
        const pairs = areas.flatMap((A) =>
          areas.map((B) => ({ share: (2 * 10 * 1e-8 * (a / A + b / B)) / 100, metal: 2 * (a * A + b * B) })),
        );
        const able = pairs.filter(({ share }) => share <= dropLimit).map(({ metal }) => metal);
        fc.pre(pairs.every(({ share }) => Math.abs(share - dropLimit) > 1e-9));
        if (able.length === 0) expect(got.state).toBe("none thick enough");
        else expect(got.state === "found" ? got.metal : Number.NaN).toBeCloseTo(Math.min(...able), 12);
      }),
    );
    // Two runs alike: thin then thick weighs what thick then thin does; a joint makes the second way lose less.
    const [thin, thick] = [choice("thin", 0.02, { area: 1e-6 as Area }), choice("thick", 0.01, { area: 2e-6 as Area })];
    const shy = choice("thin", 0.021, { area: 1e-6 as Area });
    const sizes = (first: ConductorChoice[], second: ConductorChoice[], dropLimit: number) => {
      const got = leastMetal({
        ...load,
        current: amperes(1),
        runs: [
          { length: metres(16), choices: first },
          { length: metres(16), choices: second },
        ],
        dropLimit: ratio(dropLimit),
      });
      return got.state === "found" ? got.choices.map(({ size }) => size) : got.state;
    };
    // 2 · 16 · (0.02 + 0.01) = 0.96 V of 100 V; both thin 1.28 V and more.
    expect(sizes([thin, thick], [shy, thick], 0.01)).toEqual(["thin", "thick"]);
    expect(sizes([shy, thick], [thin, thick], 0.01)).toEqual(["thick", "thin"]);
  });

  test("a pair may lose just the limit; of two alike in all the first is taken; one that collapses is none", () => {
    // Powers of two: 2 · (16 · 2⁻⁵ + 16 · 2⁻⁶) Ω · 4 A = 6 V of 96 V, one sixteenth, either way round.
    const [thin, thick] = [
      choice("thin", 2 ** -5, { area: (2 ** -20) as Area }),
      choice("thick", 2 ** -6, { area: (2 ** -19) as Area }),
    ];
    const pair = (dropLimit: number, current = 4) => {
      const run = { length: metres(16), choices: [thin, thick] };
      const job = { ...load, sourceVoltage: volts(96), current: amperes(current), runs: [run, run] } as const;
      const got = leastMetal({ ...job, dropLimit: dropLimit as Ratio });
      return got.state === "found" ? got.choices.map(({ size }) => size) : got.state;
    };
    expect(pair(1 / 16)).toEqual(["thin", "thick"]);
    expect(pair(1 / 16 - 1e-9)).toEqual(["thick", "thick"]);
    // At 64 A two thin ones would take 128 V of the 96.
    expect(pair(0.99, 64)).toEqual(["thick", "thick"]);
  });

  test("a size of the ampacity needed is able, one without any is taken for able", () => {
    const pair = (ampacity?: number) => {
      const one = choice("one", 1e-3, { area: 1e-6 as Area, ...(ampacity && { ampacity: amperes(ampacity) }) });
      const run = { length: metres(1), choices: [one] };
      return leastMetal({ ...load, runs: [run, run], dropLimit: ratio(0.5) }).state;
    };
    expect([pair(10), pair(9.9), pair()]).toEqual(["found", "none thick enough", "found"]);
  });

  test("a run with loads is refused a power factor on direct current, and collapses where its loads need more", () => {
    const segment = { length: metres(100), resistance: perMetre(0.01) };
    const run = (current: number, powerFactor: number) =>
      runVoltages({
        system: "direct current",
        sourceVoltage: volts(128),
        segments: [segment],
        loads: [{ current: amperes(current), powerFactor: ratio(powerFactor) }],
      });
    expect(refusedWith(() => run(1, 0.9))?.[0]).toBe("loads[0].powerFactor");
    expect(run(10, 1)).toMatchObject({ state: "carried" });
    // 2 · 100 m · 0.01 Ω/m · 64 A takes all of the 128 V.
    expect(run(64, 1)).toMatchObject({ state: "collapsed", needed: 128, available: 128 });
    expect(run(63, 1)).toMatchObject({ state: "carried" });
  });

  test("without current the far voltage is the source's; a coil before a load takes little along with it", () => {
    const far = (current: number, reactance: number) => {
      const got = runVoltages({
        system: "single-phase",
        sourceVoltage: volts(100),
        source: { resistance: ohms(0), reactance: ohms(reactance) },
        segments: [{ length: metres(10), resistance: perMetre(0) }],
        loads: [{ current: amperes(current), powerFactor: ratio(1) }],
      });
      return got.state === "carried" ? (got.voltages[0] as number) : Number.NaN;
    };
    expect(far(0, 3)).toBeCloseTo(100, 12);
    // A right angle between 60 V over the coil and 80 V at the load: 60² + 80² = 100².
    expect(far(20, 3)).toBeCloseTo(80, 12);
  });

  test("a source of no resistance given is one of none", () => {
    const segments = [{ length: metres(10), ...half }];
    const none = { resistance: 0 as Resistance, reactance: 0 as Resistance };
    expect(voltageDrop({ ...load, segments, source: none })).toEqual(voltageDrop({ ...load, segments }));
    const still = { resistance: 0 as Resistance, reactance: ohms(1) };
    const direct = { ...load, system: "direct current" as const, segments };
    expect(voltageDrop({ ...direct, source: still })).toEqual(voltageDrop(direct));
  });
});
