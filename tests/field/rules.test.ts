/** Verdicts on both sides of each limit, and figures of the field tests worked by hand. */
import {
  airLineLevel,
  authorityCaution,
  bucketFlow,
  bucketRuns,
  currentTest,
  drawdownLog,
  echoDepth,
  gaugeHead,
  insulationTest,
  judgeReading,
  leaningTape,
  leastAirGap,
  liftingLoad,
  measuredCurve,
  pressureHold,
  propagateUncertainty,
  settingHardware,
  tankTest,
  trajectoryFlow,
  voltageTest,
  wellheadRules,
  windingTest,
} from "risingmain/field";
import { describe, expect, test } from "vitest";
import { RULES } from "../../src/field/standards/published-rules.ts";
import { refused } from "../refused.ts";

const GRAVITY = 9.80665;
const PSI = 6894.757;
/** Plain numbers as any input. */
const of = <T>(input: object): T => input as unknown as T;
/** The standard uncertainty of each part, by its name. */
const doubtsOf = ({
  parts,
}: {
  readonly parts: readonly { readonly name: string; readonly contribution: number; readonly sensitivity: number }[];
}) =>
  Object.fromEntries(parts.map(({ name, contribution, sensitivity }) => [name, contribution / Math.abs(sensitivity)]));

describe("doubts where none are given, common practice in the SI of each docstring", () => {
  test.each<readonly [name: string, run: () => { readonly parts: never }, want: Readonly<Record<string, number>>]>([
    [
      "air line",
      () => airLineLevel(of({ lineLength: 50, pressure: 1e5, density: 1000, lengthUncertainty: 0.1 })) as never,
      { lineLength: 0.1, pressure: PSI },
    ],
    [
      "gauge",
      () => gaugeHead(of({ pressure: 1e5, gaugeElevation: 3, density: 1000, elevationUncertainty: 0.2 })) as never,
      { pressure: PSI, gaugeElevation: 0.2 },
    ],
    ["bucket", () => bucketFlow(of({ volume: 0.02, times: [20] })) as never, { volume: 0.0004, time: 0.5 }],
    ["quick bucket", () => bucketFlow(of({ volume: 0.02, times: [0.6] })) as never, { volume: 0.0004, time: 0.3 }],
    [
      "echo",
      () => echoDepth(of({ echoTime: 0.2, airTemperature: 285 })) as never,
      { echoTime: 1e-3, airTemperature: 3 },
    ],
    [
      "jet",
      () => trajectoryFlow(of({ insideDiameter: 0.08, throw: 0.5, drop: 0.3, diameterUncertainty: 1e-3 })) as never,
      { insideDiameter: 1e-3, throw: 0.006, drop: 0.006 },
    ],
    [
      "current",
      () => currentTest(of({ reading: 9, expected: 10, expectedUncertainty: 0.3 })) as never,
      { reading: 0.18, expected: 0.3 },
    ],
    [
      "tank",
      () =>
        tankTest(
          of({ volume: 0.3, precharge: 2.6e5, atmosphere: 1e5, lowPressure: 2.8e5, highPressure: 4.1e5, time: 90 }),
        ) as never,
      { volume: 0.006, precharge: PSI, lowPressure: PSI, highPressure: PSI, time: 1 },
    ],
    [
      "winding",
      () => windingTest(of({ reading: 3, cable: 0.9, expected: 2.2, temperature: 288 })) as never,
      { reading: 0.03, cable: 0.009, temperature: 2 },
    ],
    [
      "insulation",
      () => insulationTest(of({ reading: 8e7, ratedVoltage: 230, temperature: 288 })) as never,
      { reading: 4e6, temperature: 2 },
    ],
    [
      "curve",
      () =>
        measuredCurve(
          of({
            readings: [{ flow: 1e-3, pressure: 3e5, pumpingLevel: 30 }],
            gaugeElevation: 1,
            density: 1000,
            gaugeDiameter: 0.03,
          }),
        ).points[0] as never,
      { flow: 3e-5, pressure: PSI, pumpingLevel: 0.003048 },
    ],
    [
      "leak",
      () =>
        pressureHold(
          of({
            pipeVolume: 0.2,
            startPressure: 4e5,
            endPressure: 3.9e5,
            time: 3600,
            startTemperature: 285,
            endTemperature: 286,
            tank: { volume: 0.3, precharge: 2.6e5, atmosphere: 1e5 },
          }),
        ) as never,
      {
        pipeVolume: 0.01,
        startPressure: PSI / 2,
        endPressure: PSI / 2,
        time: 1,
        startTemperature: 0.5,
        endTemperature: 0.5,
        precharge: PSI,
        tankVolume: 0.006,
      },
    ],
    [
      "specific capacity",
      () =>
        drawdownLog(of({ staticLevel: 20, flow: 1e-3, readings: [{ time: 60, level: 25 }] }))
          .specificCapacityDoubt as never,
      { flow: 3e-5, staticLevel: 0.003048, pumpingLevel: 0.003048 },
    ],
  ])("%s", (_, run, want) => {
    const got = doubtsOf(run());
    expect(Object.keys(got)).toEqual(Object.keys(want));
    for (const [name, u] of Object.entries(want))
      expect([name, (got[name] ?? 0) / u]).toEqual([name, expect.closeTo(1, 6)]);
  });

  test("voltage: 1 % of either reading", () => {
    const { drop } = voltageTest(of({ rated: 230, underLoad: 228, atRest: 240 }));
    const doubts = drop?.parts.map(({ contribution, sensitivity }) => contribution / Math.abs(sensitivity));
    expect(doubts).toEqual([expect.closeTo(2.4, 6), expect.closeTo(2.28, 6)]);
  });

  test("without temperatures a thermometer is no doubt, without a tank its charge is none", () => {
    const { parts } = pressureHold(of({ pipeVolume: 0.2, startPressure: 4e5, endPressure: 3.9e5, time: 3600 }));
    expect(parts.map(({ name }) => name)).toEqual([
      "pipeVolume",
      "startPressure",
      "endPressure",
      "time",
      "startTemperature",
      "endTemperature",
    ]);
    expect(parts.slice(4).map(({ contribution }) => contribution)).toEqual([0, 0]);
  });
});

describe("slopes of the results by hand, their signs with them", () => {
  const column = 1000 * GRAVITY;
  const tank = { volume: 0.3, precharge: 5e4, atmosphere: 1e5 };
  test.each<readonly [name: string, run: () => { readonly parts: never }, want: readonly number[]]>([
    [
      "air line: a longer line, a deeper level; more pressure, a shallower one",
      () => airLineLevel(of({ lineLength: 50, pressure: 1e5, density: 1000, lengthUncertainty: 0.1 })) as never,
      [1, -1 / column],
    ],
    [
      "gauge",
      () => gaugeHead(of({ pressure: 1e5, gaugeElevation: 3, density: 1000, elevationUncertainty: 0.1 })) as never,
      [1 / column, 1],
    ],
    // q = V/t: 1/20 and −0.02/400.
    ["bucket", () => bucketFlow(of({ volume: 0.02, times: [20] })) as never, [1 / 20, -0.02 / 400]],
    // c t/2 and c t/(4 T).
    [
      "echo",
      () => echoDepth(of({ echoTime: 0.2, airTemperature: 273.15 })) as never,
      [331.3 / 2, (331.3 * 0.2) / (4 * 273.15)],
    ],
    ["current", () => currentTest(of({ reading: 9, expected: 10, expectedUncertainty: 0.1 })) as never, [0.1, -0.09]],
    // w = V (1 − p₀/p): from 2 to 3 bar of air over 1.5 when empty, 0.075 m³ in 50 s.
    [
      "tank",
      () => tankTest(of({ ...tank, lowPressure: 1e5, highPressure: 2e5, time: 50 })) as never,
      [
        (1.5 / 2 - 1.5 / 3) / 50,
        (0.3 * (1 / 2 - 1 / 3)) / 1e5 / 50,
        (-0.3 * 1.5) / 4 / 1e5 / 50,
        (0.3 * 1.5) / 9 / 1e5 / 50,
        -0.075 / 2500,
      ],
    ],
    [
      "curve",
      () =>
        measuredCurve(
          of({
            readings: [{ flow: 1e-3, pressure: 3e5, pumpingLevel: 30 }],
            gaugeElevation: 7,
            density: 1000,
            friction: (q: number) => 2e6 * q * q,
          }),
        ).points[0] as never,
      [4e3, 1 / column, 1],
    ],
    // 1 − r/s with r = 1 and s = 5 m: the static level is in both.
    [
      "recovery",
      () =>
        drawdownLog(
          of({
            staticLevel: 20,
            flow: 1e-3,
            stopped: 60,
            readings: [
              { time: 60, level: 25 },
              { time: 90, level: 21 },
            ],
          }),
        ).recoveryDoubt as never,
      [1 / 5 - 1 / 25, 1 / 25, -1 / 5],
    ],
    [
      "specific capacity",
      () =>
        drawdownLog(of({ staticLevel: 20, flow: 1e-3, readings: [{ time: 60, level: 25 }] }))
          .specificCapacityDoubt as never,
      [1 / 5, 1e-3 / 25, -1e-3 / 25],
    ],
    // Boyle's law again, and the pipe's 1e-3 m³ a GPa; nothing warmed.
    [
      "leak",
      () =>
        pressureHold(
          of({
            pipeVolume: 1,
            startPressure: 2e5,
            endPressure: 1e5,
            time: 100,
            bulkModulus: 1e9,
            tank,
            startTemperature: 277.13,
            endTemperature: 277.13,
          }),
        ) as never,
      [
        1e5 / 1e9 / 100,
        (1e-9 + (0.3 * 1.5) / 9 / 1e5) / 100,
        -(1e-9 + (0.3 * 1.5) / 4 / 1e5) / 100,
        -(1e-4 + 0.075) / 1e4,
        // Water is densest there; the tank's water, a quarter of it, warms its air by a 277th a kelvin.
        -(0.3 * 0.75) / 277.13 / 100,
        (0.3 * 0.75) / 277.13 / 100,
        (0.3 * (1 / 2 - 1 / 3)) / 1e5 / 100,
        (1.5 / 2 - 1.5 / 3) / 100,
      ],
    ],
  ])("%s", (_, run, want) => {
    const { parts } = run() as { readonly parts: readonly { readonly sensitivity: number }[] };
    expect(parts.map(({ sensitivity }, i) => sensitivity / (want[i] as number))).toEqual(
      want.map(() => expect.closeTo(1, 2)),
    );
  });

  test("the expanded uncertainty is twice the standard one", () => {
    const sum = propagateUncertainty({
      inputs: [3, 4].map((standardUncertainty, i) => ({ name: `${i}`, value: 10, standardUncertainty })),
      model: ([a = 0, b = 0]) => a + b,
    });
    expect([sum.value, sum.standardUncertainty, sum.expandedUncertainty]).toEqual([
      20,
      expect.closeTo(5, 9),
      expect.closeTo(10, 9),
    ]);
  });
});

describe("at the ends of what a formula takes, its slopes stay finite", () => {
  test("nothing read, nothing filled, nothing asked", () => {
    expect(airLineLevel(of({ lineLength: 0, pressure: 0, density: 1000, lengthUncertainty: 1 }))).toMatchObject({
      level: 0,
      state: "read",
    });
    expect(currentTest(of({ reading: 0, expected: 10, readingUncertainty: 1 })).standardUncertainty).toBeGreaterThan(0);
    const volts = voltageTest(of({ rated: 230, underLoad: 0, atRest: 240, readingUncertainty: 1 }));
    expect(volts.drop?.share).toBe(1);
    expect(Number.isFinite(volts.drop?.standardUncertainty)).toBe(true);
    expect(voltageTest(of({ rated: 230, underLoad: 228, atRest: 0, starting: 5 }))).toMatchObject({
      drop: null,
      dip: null,
      dipInside: null,
    });
    expect(voltageTest(of({ rated: 230, underLoad: 228, atRest: 2e-6, starting: 1e-6 })).dip?.share).toBeCloseTo(
      0.5,
      9,
    );
    expect(voltageTest(of({ rated: 230, underLoad: 228, atRest: 1e-6, starting: 1e-6 })).dip).toBeNull();
  });
});

describe("verdicts", () => {
  test("a current: low, as expected, high, over the limit; sure by two doubts from its nearest edge", () => {
    const amps = (reading: number, more: object = {}) =>
      currentTest(of({ reading, expected: 10, most: 12, readingUncertainty: 0.1, ...more }));
    expect([8.99, 9, 11, 11.01, 12, 12.01].map((reading) => amps(reading).state)).toEqual([
      "low",
      "as expected",
      "as expected",
      "high",
      "high",
      "over the motor's limit",
    ]);
    // Two doubts of the ratio are 0.02, of the reading 0.2 A.
    expect([9.19, 9.21, 10.79, 10.81, 11.21, 11.79, 11.81, 12.19, 12.21].map((reading) => amps(reading).sure)).toEqual([
      false,
      true,
      true,
      false,
      true,
      true,
      false,
      false,
      true,
    ]);
    expect(amps(9.5, { tolerance: 0.04 }).state).toBe("low");
    expect(amps(11.81, { most: undefined })).toMatchObject({ state: "high", sure: true, limitShare: null });
    expect(amps(9)).toMatchObject({ ratio: 0.9, limitShare: 0.75 });
    // Just two doubts away: 0.5 A of 0.25, and shares far off.
    const edge = { reading: 11.5, expected: 11.5, tolerance: 0.5, most: 12, readingUncertainty: 0.25 };
    expect(currentTest(of(edge)).sure).toBe(true);
    expect(amps(8).hints.join()).toMatch(/closed valve/);
    expect(amps(10).hints).toEqual([]);
  });

  test("a supply: 10 % either side of the motor's voltage", () => {
    const supply = (underLoad: number, more: object = {}) => voltageTest(of({ rated: 200, underLoad, ...more }));
    expect([179.9, 180, 220, 220.1].map((v) => supply(v).state)).toEqual([
      "low",
      "within tolerance",
      "within tolerance",
      "high",
    ]);
    expect([supply(200).lowest, supply(200).highest]).toEqual([expect.closeTo(180, 9), expect.closeTo(220, 9)]);
    // 1 % of the reading, twice: 3.7 V of 183.7 and 4.3 of 215.7.
    expect([183.6, 183.7, 215.6, 215.7].map((v) => supply(v).sure)).toEqual([false, true, true, false]);
    const dip = (starting: number, more: object = {}) => supply(200, { atRest: 200, starting, ...more });
    expect([149.9, 150].map((v) => dip(v).dipInside)).toEqual([false, true]);
    expect([149.9, 150].map((v) => dip(v, { dipLimit: 0.3 }).dipInside)).toEqual([true, true]);
    // Shares of rest and of the lowest, independent: 0.75 × √2 % of 1, twice 0.0212.
    expect([0.228, 0.229].map((share) => dip(200 * (1 - share)).dipSure)).toEqual([true, false]);
    expect(supply(200, { atRest: 210 }).drop?.share).toBeCloseTo(10 / 210, 12);
    expect(supply(200, { atRest: 210 }).dip).toBeNull();
  });

  test("a winding is sure away from its tolerance and from ten times what is expected", () => {
    const winding = (reading: number) =>
      windingTest(
        of({ reading, expected: 2, temperature: 293.15, readingUncertainty: 0.01, temperatureUncertainty: 0 }),
      );
    // Edges at 1.8, 2.2 and 20 ohms, by 0.02.
    expect(
      [1.79, 1.81, 1.83, 2.17, 2.19, 2.21, 2.23, 19.97, 19.99, 20.01, 20.03].map((ohms) => winding(ohms).sure),
    ).toEqual([false, false, true, true, false, false, true, true, false, false, true]);
  });

  test("insulation is sure away from the lesser and the greater minimum", () => {
    const motor = (reading: number, more: object = {}) =>
      insulationTest(
        of({
          reading,
          temperature: 313.15,
          ratedVoltage: 230,
          readingUncertainty: 1e5,
          temperatureUncertainty: 0,
          ...more,
        }),
      );
    // At 40 °C as read. Of the two minima: 5 MΩ for random windings; kV + 1 = 1.23 MΩ of the older rule.
    expect(motor(1e7).minimum).toBe(5e6);
    expect([0.9e6, 1.1e6, 1.4e6, 1.5e6, 4.7e6, 4.9e6, 5.1e6, 5.3e6].map((ohms) => motor(ohms).sure)).toEqual([
      true,
      false,
      false,
      true,
      true,
      false,
      false,
      true,
    ]);
  });

  test("a reading at an end of its band passes if it is known, and is too close to call if not", () => {
    const judged = (reading: number, standardUncertainty: number) =>
      judgeReading({ reading, low: 10, high: 20, standardUncertainty });
    expect([10, 20].map((reading) => judged(reading, 0).verdict)).toEqual(["pass", "pass"]);
    expect([9.99, 20.01].map((reading) => judged(reading, 0).verdict)).toEqual(["fail", "fail"]);
    expect(judged(12, 1)).toEqual({ verdict: "pass", side: "inside", margin: 2, doubt: 2 });
    expect(judged(11.9, 1).verdict).toBe("too close to call");
    expect(judged(8, 1)).toEqual({ verdict: "fail", side: "low", margin: -2, doubt: 2 });
    expect(judged(22.1, 1)).toMatchObject({ verdict: "fail", side: "high" });
    expect(judgeReading({ reading: 10, low: 10, high: 10 })).toEqual({
      verdict: "pass",
      side: "inside",
      margin: 0,
      doubt: 0,
    });
  });

  test("a hoist: enough at the wanted margin, too small under it, over at less than the load", () => {
    const hoist = {
      pumpMass: 50,
      pumpSetting: 50,
      pipeMass: 1,
      insideDiameter: 0.03,
      outsideDiameter: 0.04,
      density: 1000,
      full: false,
    };
    const at = (capacity: number, more: object = {}) => liftingLoad(of({ ...hoist, capacity, ...more }));
    // 50 kg and 50 m of 1 kg.
    expect(at(500).load).toBeCloseTo(100, 9);
    expect([99.9, 100.1, 199.9, 200.1].map((kg) => at(kg).state)).toEqual([
      "over capacity",
      "margin too small",
      "margin too small",
      "enough",
    ]);
    const { load } = at(500);
    expect([at(load).state, at(2 * load).state]).toEqual(["margin too small", "enough"]);
    expect([299, 301].map((kg) => at(kg, { wantedMargin: 3 }).state)).toEqual(["margin too small", "enough"]);
    expect([at(1999).margin, at(2001).margin]).toEqual([expect.closeTo(19.99, 9), 20]);
    // Nothing hanging at all.
    expect(at(500, { pumpMass: 0, pipeMass: 0 })).toMatchObject({ margin: 20, state: "enough" });
  });

  test("a jet: inside the published tables from 2 to 4 in of bore and 12 to 24 in of throw", () => {
    const INCH = 0.0254;
    const inside = (bore: number, reach: number) =>
      trajectoryFlow(of({ insideDiameter: bore * INCH, throw: reach * INCH, drop: 0.3 })).insideRange;
    expect(
      [
        [2, 12],
        [4, 24],
        [1.99, 18],
        [4.01, 18],
        [3, 11.9],
        [3, 24.1],
      ].map(([bore = 0, reach = 0]) => inside(bore, reach)),
    ).toEqual([true, true, false, false, false, false]);
  });

  test("an air line: to the measuring point it reads, over it the line is wrong", () => {
    const read = (submergence: number) =>
      airLineLevel(of({ lineLength: 30, pressure: submergence * 1000 * GRAVITY, density: 1000 }));
    expect(read(29.9).state).toBe("read");
    expect(read(30.1)).toEqual({ state: "over the top", submergence: expect.closeTo(30.1, 9) });
    expect(read(10)).toMatchObject({ level: expect.closeTo(20, 9), submergence: expect.closeTo(10, 9) });
  });

  test("an air gap by either rule, and wellhead rules from the least on", () => {
    const gap = (bore: number, rule?: string) => leastAirGap(of({ bore, ...(rule && { rule }) })).gap;
    expect([0.005, 0.0127, 0.02].map((bore) => gap(bore))).toEqual([0.0254, 0.0254, 0.04]);
    expect([0.005, 0.01, 0.02].map((bore) => gap(bore, "twice the bore, 20 mm at least"))).toEqual([0.02, 0.02, 0.04]);
    for (const subject of new Set(RULES.map((rule) => rule.subject))) {
      const { rules, least, most, cautions } = wellheadRules(subject);
      const values = rules.map(({ value }) => value);
      expect(values).toEqual([...values].sort((a, b) => a - b));
      expect([least, most]).toEqual([Math.min(...values), Math.max(...values)]);
      expect(new Set(rules.map((rule) => rule.subject))).toEqual(new Set([subject]));
      expect(cautions).toEqual([authorityCaution]);
    }
    expect(leastAirGap(of({ bore: 0.02 })).cautions).toEqual([authorityCaution]);
    expect(refused(() => wellheadRules("well to the moon" as never))).toBe("subject");
  });
});

describe("figures by hand", () => {
  test("a bucket: V/t of each run, the scatter or the thumb, and their shares", () => {
    const read = bucketFlow(of({ volume: 0.02, times: [20, 25], volumeUncertainty: 0.0002, timeUncertainty: 0.1 }));
    // 1 and 0.8 L/s: mean 0.9, standard deviation 0.1 √2, of the mean 0.1 L/s; 1 % of the mark.
    expect(read.runs).toEqual([0.001, 0.0008]);
    expect(read.flow).toBeCloseTo(0.0009, 15);
    expect(read.fromVolume * 1e6).toBeCloseTo(9, 4);
    expect(read.fromTiming * 1e6).toBeCloseTo(100, 2);
    expect(read.standardUncertainty * 1e6).toBeCloseTo(Math.hypot(9, 100), 2);
    expect(read.expandedUncertainty).toBe(2 * read.standardUncertainty);
    expect(read.relativeUncertainty).toBe(read.standardUncertainty / read.flow);
    expect(read.timingShare).toBeCloseTo(100 ** 2 / (9 ** 2 + 100 ** 2), 6);
    // 1, 0.8 and 0.5 L/s: mean 23/30, squares about it 38/300, of two degrees; over the root of three.
    const three = bucketFlow(of({ volume: 0.02, times: [20, 25, 40], volumeUncertainty: 0, timeUncertainty: 0 }));
    expect(three.standardUncertainty * 1e3).toBeCloseTo(Math.sqrt(38 / 300 / 2 / 3), 4);
    // Where runs agree, the thumb over the mean time and the root of the runs.
    const calm = bucketFlow(of({ volume: 0.02, times: [20, 20, 20, 20], volumeUncertainty: 0, timeUncertainty: 1 }));
    expect(calm.fromTiming / calm.flow).toBeCloseTo(1 / 20 / 2, 6);
    const sure = bucketFlow(of({ volume: 0.02, times: [20], volumeUncertainty: 0, timeUncertainty: 0 }));
    expect([sure.standardUncertainty, sure.timingShare]).toEqual([0, 0]);
  });

  test("runs of a bucket: (0.5/20)² over (w² − 0.02²), and a floor of the mark", () => {
    const need = (wanted: number, more: object = {}) => bucketRuns(of({ volume: 0.02, flow: 1e-3, wanted, ...more }));
    // 0.000625/(0.000625 − 0.0004) = 2.78.
    expect(need(0.025)).toEqual({ state: "enough", runs: 3 });
    expect(need(0.5)).toEqual({ state: "enough", runs: 1 });
    expect(need(0.02)).toEqual({ state: "volume too uncertain", limit: 0.02 });
    expect(need(0.0200001).state).toBe("enough");
    expect(need(0.01, { volumeUncertainty: 0, timeUncertainty: 0 })).toEqual({ state: "enough", runs: 1 });
    // 0.5 s of 0.2 ms, for a thousandth more than the mark: a million million runs.
    expect(refused(() => need(0.02001, { flow: 100 }))).toBe("runs needed (timeUncertainty × flow / volume)");
    // (2/20)²/0.01² = 100.
    expect(need(0.01, { volumeUncertainty: 0, timeUncertainty: 2 })).toMatchObject({ runs: expect.closeTo(100, -0.5) });
  });

  test("an echo: 331.3 m/s at 0 °C, twice the way; a tape: the long side of the triangle", () => {
    expect(echoDepth(of({ echoTime: 0.4, airTemperature: 273.15 })).depth).toBeCloseTo(331.3 * 0.2, 10);
    // Four times the temperature doubles the speed; the ratio of roots within what is accepted.
    expect(echoDepth(of({ echoTime: 0.4, airTemperature: 300 })).depth).toBeCloseTo(
      331.3 * Math.sqrt(300 / 273.15) * 0.2,
      10,
    );
    expect(leaningTape(of({ trueDepth: 40, offset: 9 }))).toBe(41);
  });

  test("a jet: π/4 d² x √(g/2y)", () => {
    const { flow } = trajectoryFlow(of({ insideDiameter: 0.1, throw: 0.6, drop: 0.2 }));
    expect(flow).toBeCloseTo((Math.PI / 4) * 0.01 * 0.6 * Math.sqrt(GRAVITY / 0.4), 12);
  });

  test("a curve by Bernoulli: level, gauge, friction and V²/2g", () => {
    const [point] = measuredCurve(
      of({
        readings: [{ flow: 2e-3, pressure: 2e5, pumpingLevel: 30 }],
        gaugeElevation: 1.5,
        density: 980,
        gaugeDiameter: 0.025,
        friction: (q: number) => 2e6 * q * q,
      }),
    ).points;
    const velocity = 2e-3 / ((Math.PI / 4) * 0.025 ** 2);
    expect(point).toMatchObject({
      flow: 2e-3,
      lift: 30,
      gauge: expect.closeTo(1.5 + 2e5 / (980 * GRAVITY), 9),
      friction: expect.closeTo(8, 12),
      velocityHead: expect.closeTo(velocity ** 2 / (2 * GRAVITY), 12),
    });
    expect(point?.head).toBeCloseTo(30 + (point?.gauge ?? 0) + 8 + (point?.velocityHead ?? 0), 12);
    const [tried] = measuredCurve(
      of({
        readings: [{ flow: 1e-3, pressure: 2e5, pumpingLevel: 30 }],
        gaugeElevation: 40,
        density: 1000,
        seed: 1,
        trials: 1000,
      }),
    ).points;
    // Trials lie about the head itself, by its doubt over the root of their number.
    const spread = (5 * (tried?.standardUncertainty ?? 0)) / Math.sqrt(1000);
    expect(Math.abs((tried?.trial?.mean ?? 0) - (tried?.head ?? 0))).toBeLessThan(spread);
    const unsorted = [8e-4, 0, 3e-4, 1e-3].map((flow) => ({ flow, pressure: 1e5, pumpingLevel: 30 }));
    const { points } = measuredCurve(of({ readings: unsorted, gaugeElevation: 0, density: 1000 }));
    expect(points.map(({ flow }) => flow)).toEqual([0, 3e-4, 8e-4, 1e-3]);
    // Without a friction or a bore there is none of either.
    const bare = measuredCurve(
      of({ readings: [{ flow: 2e-3, pressure: 0, pumpingLevel: 30 }], gaugeElevation: 0, density: 1000 }),
    ).points[0];
    expect([bare?.friction, bare?.velocityHead, bare?.head]).toEqual([0, 0, 30]);
  });

  test("hardware: joints, clamps, splices, cable with its 2 %", () => {
    const set = (more: object) => settingHardware(of({ pumpSetting: 60, pumpingLevel: 45, ...more }));
    expect(set({ jointLength: 6 })).toMatchObject({
      joints: 10,
      couplings: 9,
      lastJoint: 6,
      clamps: 0,
      torqueArrestors: 0,
    });
    expect(set({ jointLength: 7 })).toMatchObject({ joints: 9, couplings: 8, lastJoint: 60 - 8 * 7 });
    // 60 of 0.1 is not 600.0000001.
    expect(set({ jointLength: 0.1 }).joints).toBe(600);
    expect(set({})).toMatchObject({
      joints: 1,
      couplings: 0,
      lastJoint: 60,
      clamps: 4,
      torqueArrestors: 1,
      splices: 1,
    });
    expect(set({ barbFittings: 5 }).clamps).toBe(10);
    expect(set({ cableBeyond: 8 }).cable).toBeCloseTo(60 * 1.02 + 8, 12);
    // 61.2 m of cable: three reels of 30 m have two joins and the motor's.
    expect([100, 61.2, 30].map((reelLength) => set({ reelLength }).splices)).toEqual([1, 1, 3]);
    expect(set({ pumpSetting: 0, jointLength: 6, reelLength: 6 })).toMatchObject({ joints: 1, splices: 1 });
  });
});

describe("a log", () => {
  const readings = (...list: readonly (readonly [minutes: number, level: number])[]) =>
    list.map(([minutes, level]) => ({ time: 60 * minutes, level }));
  const log = (more: object) => drawdownLog(of({ staticLevel: 20, flow: 1e-3, ...more }));

  test("is steady by the latest reading a span old: 3 cm in an hour where nothing else is said", () => {
    const held = (minutes: number, level: number, more: object = {}) =>
      log({ readings: readings([0, 24], [30, 29], [minutes, level]), ...more }).steadiness;
    expect([89, 90].map((minutes) => held(minutes, 29))).toEqual(["falling", "steady"]);
    expect([28.96, 28.971, 29.029, 29.04].map((level) => held(90, level))).toEqual([
      "rising",
      "steady",
      "steady",
      "falling",
    ]);
    expect(held(90, 29.5, { steadyChange: 0.5 })).toBe("steady");
    expect([held(59, 29), held(45, 29, { steadySpan: 900 })]).toEqual(["too short", "steady"]);
    expect(log({ readings: readings([30, 24]), stopped: 60 }).steadiness).toBe("too short");
    // Only what is read while it pumps counts, the moment of the stop included.
    expect(log({ stopped: 90 * 60, readings: readings([30, 29], [90, 29], [100, 22]) }).steadiness).toBe("steady");
  });

  test("phases, drawdowns, specific capacity, recovery", () => {
    const worked = log({ stopped: 3600, readings: readings([30, 24], [60, 25], [61, 24], [70, 21]) });
    expect(worked.entries.map(({ phase, drawdown, time }) => [phase, drawdown, time])).toEqual([
      ["pumping", 4, 1800],
      ["pumping", 5, 3600],
      ["recovering", 4, 3660],
      ["recovering", 1, 4200],
    ]);
    expect(worked.finalDrawdown).toBe(5);
    expect(worked.specificCapacity).toBeCloseTo(1e-3 / 5, 15);
    expect(worked.recovery).toBeCloseTo(1 - 1 / 5, 12);
    // A tenth of 5 m was not reached.
    expect(worked.timeToRecover).toBeNull();
  });

  test("recovers by a straight line to a tenth of its drawdown, from the stop on", () => {
    const stopped = (...after: readonly (readonly [number, number])[]) =>
      log({ stopped: 3600, readings: readings([50, 25], ...after) }).timeToRecover;
    // From 5 m at the stop to 0.25 at 10 min: 0.5 m at 4.5/4.75 of it.
    expect(stopped([70, 20.25])).toBeCloseTo((4.5 / 4.75) * 600, 9);
    // From 1 m at 10 min to nothing at 20: half way.
    expect(stopped([70, 21], [80, 20])).toBeCloseTo(900, 9);
    // Just there at 10 min.
    expect(stopped([70, 20.5], [80, 20])).toBeCloseTo(600, 9);
  });

  test("with a drawdown of a micrometre or less, or nothing pumped, has neither capacity nor recovery", () => {
    const at = (level: number) => log({ stopped: 3600, readings: readings([60, level], [70, 20]) });
    expect(at(20 + 0.9e-6)).toMatchObject({
      specificCapacity: null,
      specificCapacityDoubt: null,
      recovery: null,
      recoveryDoubt: null,
      timeToRecover: null,
    });
    expect(at(20 + 1.2e-6).specificCapacity).toBeGreaterThan(0);
    expect(at(20 + 1.2e-6).recovery).toBeCloseTo(1, 6);
    const only = log({ stopped: 60, readings: readings([5, 22]) });
    expect(only).toMatchObject({ finalDrawdown: 0, specificCapacity: null, timeToRecover: null });
    // Pumped to its end: no recovery to speak of.
    expect(log({ readings: readings([5, 22]) })).toMatchObject({
      recovery: null,
      recoveryDoubt: null,
      timeToRecover: null,
    });
  });
});

describe("a shut line", () => {
  const line = { pipeVolume: 0.2, startPressure: 4e5, endPressure: 3.6e5, time: 1000 };
  const hold = (more: object) => pressureHold(of({ ...line, ...more }));
  const K = 316_000 * 6894.757;

  test("the pipe's part: V (1/K + d/(E s)) (p₁ − p₂)", () => {
    expect(hold({}).fromPipe / ((0.2 / K) * 4e4)).toBeCloseTo(1, 9);
    expect(hold({ bulkModulus: 2e9 }).fromPipe / ((0.2 / 2e9) * 4e4)).toBeCloseTo(1, 12);
    const wall = { insideDiameter: 0.03, wall: 0.002, modulus: 5e8 };
    const want = 0.2 * (1 / 2e9 + 0.03 / (5e8 * 0.002)) * 4e4;
    expect(hold({ bulkModulus: 2e9, wall }).lost / want).toBeCloseTo(1, 12);
    expect(hold({ bulkModulus: 2e9, wall }).leak).toBe(hold({ bulkModulus: 2e9, wall }).lost / 1000);
  });

  test("the tank's part by Boyle's law, and its air warmed at the end pressure, no further than the tank is wide", () => {
    const tank = { volume: 0.3, precharge: 2e5, atmosphere: 1e5 };
    // Water V (1 − p₀/p): at 5 and at 4.6 bar of air over 3 bar when empty.
    const [before, after] = [0.3 * (1 - 3 / 5), 0.3 * (1 - 3 / 4.6)] as const;
    const cold = hold({ tank });
    expect(cold.fromTank).toBeCloseTo(before - after, 12);
    expect(cold.fromTemperature).toBe(0);
    const warm = hold({ tank, pipeVolume: 0, startTemperature: 280, endTemperature: 294 });
    expect(warm.fromTemperature).toBeCloseTo((0.3 - after) * (294 / 280 - 1), 12);
    const full = hold({ tank, pipeVolume: 0, endPressure: 2.05e5, startTemperature: 280, endTemperature: 320 });
    expect(full.fromTemperature).toBeCloseTo(0.3 * (1 - 3 / 3.05), 12);
  });

  test("is told by two doubts, and its sides", () => {
    const state = (endPressure: number) =>
      hold({ endPressure, volumeUncertainty: 0, pressureUncertainty: 1e3, timeUncertainty: 0 }).state;
    // Two needles of 1 kPa: √2, twice 2.83 kPa.
    expect([3.97e5, 3.973e5, 4e5, 4.027e5, 4.03e5].map(state)).toEqual([
      "leaks",
      "nothing to tell",
      "nothing to tell",
      "nothing to tell",
      "gains",
    ]);
    const known = { volumeUncertainty: 0, pressureUncertainty: 0, timeUncertainty: 0 };
    expect(hold({ ...known, endPressure: 4e5 }).state).toBe("nothing to tell");
    expect(hold({ ...known, endPressure: 3.99e5 }).state).toBe("leaks");
  });

  test("has no tight pressure where the cold would take all of it, or where nothing holds it", () => {
    // Cooled by ten kelvins a rigid line of water would fall through nought.
    expect(hold({ startTemperature: 300, endTemperature: 290 }).tightPressure).toBeNull();
    // Warmed by forty it would burst: 0.9 % of water over its compressibility is 200 bar; from 60 to 95 °C past 100 MPa of none.
    expect(hold({ bulkModulus: 1e10, startTemperature: 290, endTemperature: 350 }).tightPressure).toBeNull();
    expect(hold({ startTemperature: 290, endTemperature: 290 }).tightPressure).toBeCloseTo(4e5, 3);
    expect(hold({ pipeVolume: 0 }).tightPressure).toBeNull();
  });
});
