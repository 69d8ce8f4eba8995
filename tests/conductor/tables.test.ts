/** Tables against laws that did not make them: resistance from geometry, ambient factors from heat, Table 9 from Table 8. */
import {
  ambientFactor,
  conductorGeometry,
  conductorReactance,
  conductorResistance,
  iec60228Class1,
  iec60228Class2,
  iec60228Class5,
  iecCapacity,
  iecCapacityAreas,
  necAmbientCorrection,
  necChapter9Table8,
  necChapter9Table9,
  necTable250_122,
  necTable310_16,
  necTable310_17,
  parseConductorSize,
  proximityEffect,
  skinEffectFactor,
  standardOvercurrentRatings,
  wireResistance,
} from "risingmain/conductor";
import {
  type Area,
  celsius,
  circularMils,
  feet,
  hertz,
  inCircularMils,
  inches,
  type Length,
  type ResistancePerLength,
} from "risingmain/units";
import { describe, expect, test } from "vitest";

/** Half a unit in the last place of a figure printed to three significant figures. */
const halfDigit = (printed: number): number => 0.5 * 10 ** (Math.floor(Math.log10(printed)) - 2);

describe("Chapter 9 Table 8 is B258, resistivity and 2 % for stranding", () => {
  test.each(necChapter9Table8.map((row) => [`${row.size}, ${row.strands} strand(s)`, row] as const))("%s", (_, row) => {
    const law = (material: "copper" | "aluminium"): number =>
      wireResistance({
        material,
        area: circularMils(row.circularMils),
        length: feet(1000),
        temperature: celsius(75),
      }) * (row.strands > 1 ? 1.02 : 1);
    // Solid rows meet the law to the printed digit; stranded ones scatter with the lay of each stranding.
    const slack = row.strands > 1 ? 0.006 : 0.0015;
    for (const material of ["copper", "aluminium"] as const) {
      const off = Math.abs(row[material] - law(material));
      expect(off, `${material}: ${row[material]} by law ${law(material)}`).toBeLessThanOrEqual(
        halfDigit(row[material]) + slack * row[material],
      );
    }
    expect(row.coatedCopper).toBeGreaterThan(row.copper);
    expect(row.coatedCopper / row.copper).toBeLessThan(1.065);
  });

  test("printed areas are the gauge law's, to four figures", () => {
    for (const { size, circularMils: printed } of necChapter9Table8) {
      expect(Math.abs(inCircularMils(conductorGeometry(size).area) / printed - 1), size).toBeLessThan(0.0027);
    }
  });

  test("rows are in order of area, resistance falling", () => {
    for (const [i, row] of necChapter9Table8.entries()) {
      const before = necChapter9Table8[i - 1];
      if (before === undefined) continue;
      expect(row.circularMils).toBeGreaterThanOrEqual(before.circularMils);
      if (row.circularMils > before.circularMils) expect(row.copper).toBeLessThan(before.copper);
    }
  });
});

describe("Chapter 9 Table 9 is Table 8 with skin effect and the raceway", () => {
  test.each(necChapter9Table9.map((row) => [row.size, row] as const))("%s", (_, row) => {
    const table8 = necChapter9Table8.find(({ size, strands }) => size === row.size && strands > 1);
    const direct = ((table8?.copper ?? 0) / 304.8) as ResistancePerLength;
    const frequency = hertz(60);
    const diameter = conductorGeometry(row.size).solidDiameter;
    // Conductors in a raceway touch: their centres lie an insulated diameter apart, about 1.4 of the solid one.
    const neighbours = proximityEffect({
      resistance: direct,
      frequency,
      diameter,
      spacing: (1.4 * diameter) as Length,
      conductors: 3,
    });
    const law = direct * 304.8 * (skinEffectFactor({ resistance: direct, frequency }) + neighbours);
    // Printed to two figures.
    const half = 0.5 * 10 ** (Math.floor(Math.log10(row.copper.plastic)) - 1);
    expect(Math.abs(row.copper.plastic - law)).toBeLessThanOrEqual(half + 0.01 * law);
    expect(row.reactance.steel).toBeGreaterThan(row.reactance.plastic);
    expect(row.copper.aluminium).toBeGreaterThanOrEqual(row.copper.plastic);
  });

  test("effective impedances are R cos φ + X sin φ at 0.85, to the printed digit", () => {
    const sine = Math.sqrt(1 - 0.85 ** 2);
    for (const row of necChapter9Table9) {
      for (const raceway of ["plastic", "aluminium", "steel"] as const) {
        const law = row.copper[raceway] * 0.85 + row.reactance[raceway] * sine;
        const printed = row.effectiveCopper[raceway];
        const unit = 10 ** (Math.floor(Math.log10(printed)) - 1);
        // Resistance and impedance are each rounded to two figures.
        expect(Math.abs(law - printed), `${row.size} in ${raceway}`).toBeLessThanOrEqual(1.05 * unit);
      }
    }
  });

  test("reactance is that of three conductors lying loosely together", () => {
    // Insulated 4/0 AWG is about 0.64 in across; the table allows for conductors lying a little apart.
    const touching = conductorReactance({ diameter: inches(0.528), spacing: inches(0.642), frequency: hertz(60) });
    const printed = (necChapter9Table9.find(({ size }) => size === "4/0 AWG")?.reactance.plastic ?? 0) / 304.8;
    expect(printed / touching).toBeGreaterThan(1);
    expect(printed / touching).toBeLessThan(1.7);
  });
});

describe("the standard's metric conductors", () => {
  test.each([
    ["class 1", iec60228Class1],
    ["class 2", iec60228Class2],
    ["class 5", iec60228Class5],
  ] as const)("%s: each resistance means less metal than the nominal area, by at most a fifth", (_, rows) => {
    for (const { area, copper, coatedCopper, aluminium } of rows) {
      const nominal = (material: "copper" | "aluminium"): number =>
        wireResistance({ material, area: (area * 1e-6) as Area, length: 1000 as Length });
      if (copper !== null) {
        expect(copper / nominal("copper"), `${area} mm²`).toBeGreaterThan(0.98);
        expect(copper / nominal("copper"), `${area} mm²`).toBeLessThan(1.2);
      }
      if (aluminium !== null) expect(aluminium / nominal("aluminium")).toBeLessThan(1.2);
      if (copper !== null && coatedCopper !== null) expect(coatedCopper).toBeGreaterThan(copper);
    }
  });
});

describe("ambient factors are the law at the upper end of the band", () => {
  test.each(necAmbientCorrection.map((band) => [band.upTo, band] as const))("up to %i °C", (upTo, { factors }) => {
    for (const [i, rating] of [60, 75, 90].entries()) {
      const printed = factors[i];
      if (printed === null || printed === undefined) continue;
      const law = ambientFactor({ insulation: celsius(rating), ambient: celsius(upTo) });
      expect(Math.abs(printed - law)).toBeLessThanOrEqual(0.0051);
    }
  });
});

describe("order in every table of currents", () => {
  test("more metal, hotter insulation and free air never carry less", () => {
    for (const table of [necTable310_16, necTable310_17]) {
      for (const material of ["copper", "aluminium"] as const) {
        let before = [0, 0, 0];
        for (const row of table) {
          const now = row[material].map((value, i) => value ?? (before[i] as number));
          for (const [i, value] of now.entries()) expect(value).toBeGreaterThanOrEqual(before[i] as number);
          before = now;
          const [a, b, c] = row[material];
          if (a !== null && b !== null) expect(b).toBeGreaterThan(a);
          if (b !== null && c !== null) expect(c).toBeGreaterThan(b);
        }
      }
    }
    for (const { size, copper } of necTable310_17) {
      const inRaceway = necTable310_16.find((row) => row.size === size)?.copper;
      if (inRaceway?.[1] && copper[1]) expect(copper[1]).toBeGreaterThan(inRaceway[1]);
    }
  });

  test("aluminium carries less than copper of its size", () => {
    for (const { copper, aluminium } of necTable310_16) {
      for (const [i, value] of aluminium.entries()) if (value !== null) expect(value).toBeLessThan(copper[i] as number);
    }
  });

  test("metric capacities rise with area; three loaded conductors carry less than two", () => {
    for (const byMethod of Object.values(iecCapacity)) {
      for (const byLoad of Object.values(byMethod)) {
        expect(byLoad[2]).toHaveLength(iecCapacityAreas.length);
        expect(byLoad[3]).toHaveLength(iecCapacityAreas.length);
        for (const [i, two] of byLoad[2].entries()) {
          expect(byLoad[3][i]).toBeLessThan(two);
          if (i > 0) expect(two).toBeGreaterThan(byLoad[2][i - 1] as number);
        }
      }
    }
  });

  test("grounding conductors grow with the rating, aluminium never thinner than copper", () => {
    const area = (size: (typeof necTable250_122)[number]["copper"]): number => conductorGeometry(size).area;
    for (const [i, { copper, aluminium, rating }] of necTable250_122.entries()) {
      expect(area(aluminium)).toBeGreaterThan(area(copper));
      const before = necTable250_122[i - 1];
      if (before === undefined) continue;
      expect(rating).toBeGreaterThan(before.rating);
      expect(area(copper)).toBeGreaterThanOrEqual(area(before.copper));
    }
    for (const { rating } of necTable250_122) expect(standardOvercurrentRatings).toContain(rating);
  });
});

test("sizes that no table lists come from the law, and say so", () => {
  const thick = conductorResistance({ size: "1000 kcmil" });
  expect(thick.method).toBe("iec-60028");
  expect(thick.insideRange).toBe(false);
  // Table 8, 1000 kcmil, 61 strands: 0.0129 Ω/kft, from memory.
  expect(thick.resistance * 304.8).toBeCloseTo(0.0129, 3);
});

test.each([
  ["12", "12 AWG"],
  [" #10 ", "10 AWG"],
  ["AWG 8", "8 AWG"],
  ["6 ga", "6 AWG"],
  ["No. 4", "4 AWG"],
  ["0", "1/0 AWG"],
  ["0000", "4/0 AWG"],
  ["2/0 awg", "2/0 AWG"],
  ["250", "250 kcmil"],
  ["500 MCM", "500 kcmil"],
  ["2,5 mm2", "2.5 mm²"],
  ["16 sq mm", "16 mm²"],
  ["4mm²", "4 mm²"],
])("%j is %s", (text, size) => {
  expect(parseConductorSize(text)).toBe(size);
});
