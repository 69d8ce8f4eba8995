import { readFileSync } from "node:fs";
import fc from "fast-check";
import { type AirTank, joukowsky, type PumpEnd } from "risingmain/surge";
import type { Duration, GaugePressure, Length, Velocity, Volume, VolumeFlow } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { area, BOILING, flows, follow, held, nodes, only, pipe, STANDARD_GRAVITY, stopAtOnce, water } from "./lines.ts";

const seconds = (value: number): Duration => value as Duration;
const at = (distance: number): readonly Length[] => [distance as Length];

describe("a valve shut at once on a line without friction", () => {
  test("makes Joukowsky's head, far inside 0.1 %, with the period 4 L/a", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 2000, noNaN: true }),
        fc.double({ min: 200, max: 1400, noNaN: true }),
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        fc.integer({ min: 1, max: 60 }),
        (length, waveSpeed, V, reaches) => {
          const D = 0.05;
          const surge = follow({
            pipes: [pipe(length, D, waveSpeed)],
            start: held(1000),
            end: stopAtOnce(V * area(D)),
            duration: seconds((8 * length) / waveSpeed),
            reaches,
            probes: at(length),
          });
          const rise = joukowsky({
            velocityChange: V as Velocity,
            waveSpeed: waveSpeed as Velocity,
            density: water.density,
          }).head;
          const { heads } = only(surge);
          // Two whole periods: up for 2 L/a, down for 2 L/a. A step at each end is the jump itself.
          for (let step = 1; step <= 8 * reaches; step++) {
            const up = Math.ceil(step / (2 * reaches)) % 2 === 1;
            const expected = 1000 + (up ? rise : -rise);
            expect(Math.abs((heads[step] as number) - expected)).toBeLessThan(1e-9 * expected);
          }
        },
      ),
      { numRuns: 50 },
    );
  });

  test("keeps kinetic and elastic energy together constant", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: 0, max: 2, noNaN: true }), fc.double({ min: 0, max: 0.002, noNaN: true })), {
          minLength: 1,
          maxLength: 6,
        }),
        (rows) => {
          const [L, D, a, N] = [400, 0.05, 1000, 40];
          const times = rows.map(([time]) => time).sort((x, y) => x - y);
          // Any schedule of flow stirs the line for two seconds; then it is shut, and the waves run free.
          const stirred = times.map((time, i) => [time, rows[i]?.[1] ?? 0] as const);
          const surge = follow({
            pipes: [pipe(L, D, a)],
            start: held(1000),
            end: flows(...stirred, [2, 0.001], [2, 0]),
            duration: seconds(6),
            reaches: N,
            probes: nodes(L, N),
          });
          const energyAt = (step: number): number => {
            let energy = 0;
            surge.histories.forEach(({ heads, flows: Q }, i) => {
              const V = (Q[step] as number) / area(D);
              const h = ((heads[step] as number) - 1000) * (STANDARD_GRAVITY / a);
              // Trapezium rule along the line: kinetic ρ A V²/2, elastic ρ A (g h/a)²/2.
              energy += (i === 0 || i === N ? 0.5 : 1) * (V * V + h * h);
            });
            return energy;
          };
          const first = Math.ceil(2 / surge.timeStep) + 1;
          const before = energyAt(first);
          for (let step = first; step <= surge.steps; step++) {
            // The heads' own rounding, 1e-13 m, is all that is left of a line that was hardly stirred.
            expect(Math.abs(energyAt(step) - before)).toBeLessThan(1e-9 * before + 1e-12);
          }
        },
      ),
      { numRuns: 20 },
    );
  });
});

describe("against other methods", () => {
  const { cases, stepsPerEcho } = JSON.parse(
    readFileSync(new URL("../fixtures/allievi.json", import.meta.url), "utf8"),
  ) as {
    stepsPerEcho: number;
    cases: { rho: number; echoesToClose: number; power: number; heads: number[] }[];
  };

  test.each(cases)("Allievi's chain equations: rho $rho, shut in $echoesToClose echoes", (given) => {
    const [L, D, a, H0] = [500, 0.1, 1000, 6];
    const V0 = (2 * given.rho * STANDARD_GRAVITY * H0) / a;
    const echo = (2 * L) / a;
    const shut = given.echoesToClose * echo;
    const openings = Array.from({ length: given.echoesToClose * stepsPerEcho + 1 }, (_, j) => {
      const time = (j * echo) / stepsPerEcho;
      return { time: seconds(time), opening: Math.max(0, 1 - time / shut) ** given.power };
    });
    const surge = follow({
      pipes: [pipe(L, D, a)],
      start: held(H0),
      end: {
        kind: "valve",
        outletHead: 0 as Length,
        ratedFlow: (V0 * area(D)) as VolumeFlow,
        ratedHeadLoss: H0 as Length,
        openings,
      },
      duration: seconds(6 * echo),
      reaches: stepsPerEcho / 2,
      probes: at(L),
    });
    const { heads } = only(surge);
    given.heads.forEach((expected, step) => {
      expect(Math.abs((heads[step] as number) / H0 - expected)).toBeLessThan(1e-9);
    });
  });

  test("an air tank at a dead end swings at the frequency of linear theory", () => {
    const [L, D, a] = [300, 0.05, 1200];
    const [volume, precharge, exponent] = [0.02, 300_000, 1.2];
    const surge = follow({
      pipes: [pipe(L, D, a)],
      start: held(50),
      end: {
        ...stopAtOnce(2e-6),
        airTank: {
          volume: volume as never,
          precharge: precharge as never,
          exponent,
          connectionDiameter: 0.05 as Length,
          connectionLoss: 0,
        },
      },
      duration: seconds(90),
      reaches: 100,
      probes: at(L),
    });
    const { heads } = only(surge);
    const crossings: number[] = [];
    for (let step = 1; step < heads.length; step++) {
      const [x, y] = [(heads[step - 1] as number) - 50, (heads[step] as number) - 50];
      if (x < 0 && y >= 0) crossings.push((step - 1 + x / (x - y)) * surge.timeStep);
    }
    const period = ((crossings.at(-1) as number) - (crossings[0] as number)) / (crossings.length - 1);

    // The pipe pushes back with (a/gA) tan(ωL/a) and the air with 1/(ω C), C = dV/dH of the air; they are equal at ω.
    const pressure = 1000 * STANDARD_GRAVITY * 50 + water.atmosphere;
    const air = (volume * (precharge + water.atmosphere)) / pressure;
    const C = (air * 1000 * STANDARD_GRAVITY) / (exponent * pressure);
    let omega = Math.sqrt((STANDARD_GRAVITY * area(D)) / (L * C));
    for (let i = 0; i < 100; i++) {
      omega = Math.sqrt(((STANDARD_GRAVITY * area(D)) / (a * C)) * (omega / Math.tan((omega * L) / a)));
    }
    expect(crossings.length).toBeGreaterThan(5);
    expect(Math.abs((period * omega) / (2 * Math.PI) - 1)).toBeLessThan(2e-3);
  });

  test("a tank feeding a line swings as scipy integrates a rigid column, friction and losses included", () => {
    const {
      case: given,
      times,
      heads: expected,
      flows: expectedFlows,
    } = JSON.parse(readFileSync(new URL("../fixtures/rigid-column.json", import.meta.url), "utf8")) as {
      case: Record<string, number>;
      times: number[];
      heads: number[];
      flows: number[];
    };
    const field = (name: string): number => given[name] as number;
    const surge = follow({
      pipes: [pipe(field("length"), field("insideDiameter"), field("waveSpeed"), field("frictionFactor"))],
      start: {
        ...stopAtOnce(field("flow")),
        airTank: {
          volume: field("volume") as Volume,
          precharge: field("precharge") as GaugePressure,
          exponent: field("exponent"),
          connectionDiameter: field("connectionDiameter") as Length,
          connectionLoss: field("connectionLoss"),
        },
      },
      end: held(field("reservoirHead")),
      duration: seconds(61),
      reaches: 20,
      probes: at(0),
    });
    const { heads, flows: Q } = only(surge);
    const swing = Math.max(...expected) - Math.min(...expected);
    times.slice(1).forEach((time, i) => {
      const step = Math.round(time / surge.timeStep);
      // Elasticity moves the swing by (ω L/a)²/3, 0.1 %, and the column feels its own small waves.
      expect(Math.abs((heads[step] as number) - (expected[i + 1] as number))).toBeLessThan(0.01 * swing);
      expect(Math.abs((Q[step] as number) - (expectedFlows[i + 1] as number))).toBeLessThan(0.01 * field("flow"));
    });
  });

  test("a wave that meets a wider pipe goes on and back as impedances say", () => {
    // Transmitted over incident: 2 Z₂/(Z₁ + Z₂), with Z = a/(g A).
    const [a1, a2, D1, D2] = [1000, 500, 0.05, 0.08];
    const V = 1;
    const surge = follow({
      pipes: [pipe(500, D2, a2), pipe(1000, D1, a1)],
      start: held(1000),
      end: stopAtOnce(V * area(D1)),
      duration: seconds(1.9),
      reaches: 40,
      probes: at(250),
    });
    const Z1 = a1 / area(D1);
    const Z2 = a2 / area(D2);
    const expected = 1000 + ((a1 * V) / STANDARD_GRAVITY) * ((2 * Z2) / (Z1 + Z2));
    expect(only(surge).heads.at(-1)).toBeCloseTo(expected, 8);
    expect(surge.waveSpeedShift).toBeLessThan(1e-12);
  });

  test("a column parted at a stopped pump grows and rejoins as rigid steps of velocity say", () => {
    // Each echo of 2 L/a takes twice u = g (H − H_boiling)/a off the velocity: 3u, u, −u, −3u from a start of 4u.
    const [L, D, a, H] = [500, 0.1, 1000, 20];
    const u = (STANDARD_GRAVITY * (H - BOILING)) / a;
    const echo = (2 * L) / a;
    const surge = follow({
      pipes: [pipe(L, D, a)],
      start: stopAtOnce(4 * u * area(D)),
      end: held(H),
      duration: seconds(4.9 * echo),
      reaches: 20,
      probes: at(0),
    });
    const { heads } = only(surge);
    const boils = heads.map((head) => head < BOILING + 1e-9);
    expect(boils.indexOf(true)).toBe(1);
    expect((boils.lastIndexOf(true) * surge.timeStep) / echo).toBeCloseTo(4, 1);
    const largest = surge.columnSeparation?.largestCavity ?? 0;
    expect(largest / (4 * u * area(D) * echo)).toBeCloseTo(1, 6);
    // The echo that meets the closing cavity would make it −5u: stopping that stands 5u above boiling, which is 4u above H.
    expect(surge.envelope[0]?.highestHead).toBeCloseTo(H + (4 * u * a) / STANDARD_GRAVITY, 6);
  });

  test("the cavity closes in the step its volume is used up", () => {
    // From 4.2u: 3.2u, 1.2u, −0.8u, −2.8u leave 0.8 echoes' worth; −4.8u uses it up a sixth of an echo later, at step 166.7.
    const [L, D, a, H] = [500, 0.1, 1000, 20];
    const u = (STANDARD_GRAVITY * (H - BOILING)) / a;
    const surge = follow({
      pipes: [pipe(L, D, a)],
      start: stopAtOnce(4.2 * u * area(D)),
      end: held(H),
      duration: seconds(4.5 * ((2 * L) / a)),
      reaches: 20,
      probes: at(0),
    });
    const boils = only(surge).heads.map((head) => head < BOILING + 1e-9);
    expect(boils.indexOf(true)).toBe(1);
    expect(boils.indexOf(false, 1)).toBe(167);
  });

  test("a cavity on a crest just past the stop grows as one at the stop does", () => {
    const [L, D, a, H, reaches] = [500, 0.1, 1000, 20, 200];
    const u = (STANDARD_GRAVITY * (H - BOILING)) / a;
    const crest = L / reaches;
    // Only the crest stands at the height of the boiling head reckoned with; the stop lies too low to boil.
    const surge = follow({
      pipes: [
        { ...pipe(crest, D, a), endElevation: 0 as Length },
        { ...pipe(L - crest, D, a), endElevation: -30 as Length },
      ],
      startElevation: -200 as Length,
      start: stopAtOnce(4 * u * area(D)),
      end: held(H),
      duration: seconds(3 * ((2 * L) / a)),
      reaches,
    });
    const largest = surge.columnSeparation?.largestCavity ?? 0;
    expect(surge.columnSeparation?.distance).toBeCloseTo(crest, 9);
    expect(Math.abs(largest / (4 * u * area(D) * ((2 * L) / a)) - 1)).toBeLessThan(0.02);
  });

  test("a tank that can give little takes off the cavity beside it what it gives", () => {
    const [L, D, a, H] = [500, 0.1, 1000, 20];
    const u = (STANDARD_GRAVITY * (H - BOILING)) / a;
    const echo = (2 * L) / a;
    const [bore, K] = [0.004, 50];
    const largest = (airTank?: AirTank): number =>
      follow({
        pipes: [pipe(L, D, a)],
        start: { ...stopAtOnce(4 * u * area(D)), ...(airTank && { airTank }) },
        end: held(H),
        duration: seconds(3 * echo),
        reaches: 20,
      }).columnSeparation?.largestCavity ?? 0;
    // So large that its pressure, that of the head at the start, hardly falls.
    const airTank: AirTank = {
      volume: 1000 as Volume,
      precharge: 0 as GaugePressure,
      exponent: 1,
      connectionDiameter: bore as Length,
      connectionLoss: K,
    };
    const given = area(bore) * Math.sqrt((2 * STANDARD_GRAVITY * (H - BOILING)) / K) * 2 * echo;
    expect(given / largest()).toBeGreaterThan(0.001);
    expect(Math.abs((largest() - largest(airTank)) / given - 1)).toBeLessThan(0.03);
  });

  test("a pump runs down to half its speed in the time given, and its flow with it", () => {
    // No lift and a short pipe: head goes as flow squared everywhere, so the flow is in proportion to the speed.
    const start: PumpEnd = {
      kind: "pump",
      sourceHead: 0 as Length,
      shutoffHead: 60 as Length,
      ratedFlow: 0.001 as VolumeFlow,
      ratedHead: 40 as Length,
      stopTime: seconds(1),
      halfSpeedTime: seconds(20),
      checkValveDelay: seconds(0),
    };
    const openings = [{ time: seconds(0), opening: 1 }];
    const end = {
      kind: "valve",
      outletHead: 0 as Length,
      ratedFlow: 0.001 as VolumeFlow,
      ratedHeadLoss: 40 as Length,
      openings,
    } as const;
    const surge = follow({
      pipes: [pipe(0.5, 0.05, 300)],
      start,
      end,
      duration: seconds(61.5),
      reaches: 1,
      probes: at(0),
    });
    const { flows: Q } = only(surge);
    const flowAt = (time: number): number => Q[Math.round(time / surge.timeStep)] ?? 0;
    expect(flowAt(0.5) / surge.startFlow).toBeCloseTo(1, 9);
    expect(flowAt(21) / surge.startFlow).toBeCloseTo(1 / 2, 3);
    expect(flowAt(61) / surge.startFlow).toBeCloseTo(1 / 4, 3);
  });
});
