import fc from "fast-check";
import {
  type AirTank,
  type PumpEnd,
  pumpStopSurge,
  type SurgePipe,
  simulateSurge,
  type ValveEnd,
} from "risingmain/surge";
import {
  type Duration,
  type GaugePressure,
  InputError,
  type Length,
  type Velocity,
  type Volume,
  type VolumeFlow,
} from "risingmain/units";
import { describe, expect, test } from "vitest";
import { area, BOILING, follow, held, nodes, only, pipe, STANDARD_GRAVITY, stopAtOnce, water } from "./lines.ts";

const seconds = (value: number): Duration => value as Duration;

const pump: PumpEnd = {
  kind: "pump",
  sourceHead: 5 as Length,
  shutoffHead: 130 as Length,
  ratedFlow: 0.001 as VolumeFlow,
  ratedHead: 100 as Length,
  stopTime: seconds(0.5),
  halfSpeedTime: seconds(0.05),
  checkValveDelay: seconds(0),
};

const main: SurgePipe = { ...pipe(300, 0.035, 330, 0.02), endElevation: 60 as Length };

const tank: AirTank = {
  volume: 0.1 as Volume,
  precharge: 700_000 as GaugePressure,
  exponent: 1.2,
  connectionDiameter: 0.035 as Length,
  connectionLoss: 2,
};

function valve(...openings: readonly (readonly [time: number, opening: number])[]): ValveEnd {
  return {
    kind: "valve",
    outletHead: 0 as Length,
    ratedFlow: 0.002 as VolumeFlow,
    ratedHeadLoss: 20 as Length,
    openings: openings.map(([time, opening]) => ({ time: seconds(time), opening })),
  };
}

describe("a line left alone", () => {
  test("keeps its steady flow and heads", () => {
    const pipes = [main, { ...pipe(120, 0.05, 500, 0.025), endElevation: 40 as Length }];
    const surge = follow({
      pipes,
      start: { ...pump, stopTime: seconds(1000) },
      end: valve([0, 0.4]),
      duration: seconds(20),
    });
    for (const point of surge.envelope) {
      expect(Math.abs(point.highestHead / point.startHead - 1)).toBeLessThan(1e-11);
      expect(Math.abs(point.lowestHead / point.startHead - 1)).toBeLessThan(1e-11);
    }
    expect(surge.startFlow).toBeGreaterThan(0);
    expect(surge.columnSeparation).toBeUndefined();
  });

  test("a pump too weak for the far tank leaves its check valve shut", () => {
    const surge = follow({ pipes: [main], start: pump, end: held(200), duration: seconds(5) });
    expect(surge.startFlow).toBe(0);
    expect(surge.envelope.every(({ highestHead, lowestHead }) => highestHead === 200 && lowestHead === 200)).toBe(true);
    const slow = { ...pump, checkValveDelay: seconds(1) };
    expect(follow({ pipes: [main], start: slow, end: held(200), duration: seconds(5) }).highestPressure).toBe(
      surge.highestPressure,
    );
  });

  test("the steady flow satisfies Darcy–Weisbach between two tanks", () => {
    const surge = follow({ pipes: [pipe(100, 0.05, 500, 0.02)], start: held(30), end: held(20), duration: seconds(1) });
    const V = surge.startFlow / area(0.05);
    expect((0.02 * (100 / 0.05) * V * V) / (2 * STANDARD_GRAVITY)).toBeCloseTo(10, 10);
  });
});

describe("laws of any line", () => {
  test("raising everything by one height raises every head by it and moves no pressure", () => {
    const raised = (z: number) =>
      follow({
        pipes: [{ ...main, endElevation: (60 + z) as Length }],
        startElevation: z as Length,
        start: { ...pump, sourceHead: (5 + z) as Length },
        end: held(90 + z),
        duration: seconds(5),
      });
    const low = raised(0);
    raised(250).envelope.forEach((point, i) => {
      expect(point.highestHead).toBeCloseTo((low.envelope[i]?.highestHead ?? 0) + 250, 8);
      expect(Math.abs(point.lowestPressure - (low.envelope[i]?.lowestPressure ?? 0))).toBeLessThan(1e-3);
    });
  });

  test("a pipe cut in two is the same pipe", () => {
    const whole = follow({
      pipes: [pipe(300, 0.05, 500, 0.02)],
      start: held(80),
      end: valve([0, 1], [1, 0]),
      duration: seconds(6),
      reaches: 60,
    });
    const cut = follow({
      pipes: [pipe(100, 0.05, 500, 0.02), pipe(200, 0.05, 500, 0.02)],
      start: held(80),
      end: valve([0, 1], [1, 0]),
      duration: seconds(6),
      reaches: 60,
    });
    cut.envelope.forEach((point, i) => {
      expect(point.highestHead).toBeCloseTo(whole.envelope[i]?.highestHead ?? 0, 8);
      expect(point.lowestHead).toBeCloseTo(whole.envelope[i]?.lowestHead ?? 0, 8);
    });
  });

  test("time scales with length and wave speed: same heads for any size (frictionless)", () => {
    const run = (scale: number) =>
      follow({
        pipes: [pipe(300 * scale, 0.05, 500)],
        start: held(80),
        end: valve([0, 1], [2 * scale, 0]),
        duration: seconds(6 * scale),
        reaches: 30,
      });
    const one = run(1);
    run(7).envelope.forEach((point, i) => {
      expect(point.highestHead).toBeCloseTo(one.envelope[i]?.highestHead ?? 0, 8);
    });
  });

  test("a finer grid agrees with a coarse one", () => {
    const peak = (reaches: number) =>
      follow({
        pipes: [pipe(600, 0.5, 1200, 0.018)],
        start: held(150),
        end: { ...valve([0, 1], [2, 0]), ratedFlow: 0.48 as VolumeFlow, ratedHeadLoss: 143 as Length },
        duration: seconds(4),
        reaches,
      }).highestPressure;
    expect(Math.abs(peak(20) / peak(640) - 1)).toBeLessThan(1e-3);
    expect(Math.abs(peak(80) / peak(640) - 1)).toBeLessThan(1e-4);
  });

  test("friction wears a surge down to the head at rest", () => {
    const surge = follow({
      pipes: [pipe(300, 0.035, 330, 0.03)],
      start: held(80),
      end: stopAtOnce(0.001),
      duration: seconds(2000),
      probes: [300 as Length],
      reaches: 10,
    });
    const { heads } = only(surge);
    const swing = heads.map((head) => Math.abs(head - 80));
    expect(Math.max(...swing.slice(-100))).toBeLessThan(0.05 * Math.max(...swing));
  });

  test("no head lies below boiling, and a cavity is reported wherever one reaches it", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        fc.double({ min: 200, max: 1300, noNaN: true }),
        fc.double({ min: 2, max: 80, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        (V, a, head, friction) => {
          const lost = (friction * (200 / 0.05) * V * V) / (2 * STANDARD_GRAVITY);
          const surge = follow({
            pipes: [pipe(200, 0.05, a, friction)],
            start: stopAtOnce(V * area(0.05)),
            end: held(head),
            duration: seconds(4000 / a),
          });
          const lowest = Math.min(...surge.envelope.map(({ lowestHead }) => lowestHead));
          expect(lowest).toBeGreaterThan(BOILING - 1e-9);
          expect(surge.columnSeparation !== undefined).toBe(Math.abs(lowest - BOILING) < 1e-9);
          // At the far end the head starts lowest; unpacking of the line can take up to its friction more.
          if (head - lost - (a * V) / STANDARD_GRAVITY > 0) expect(surge.columnSeparation).toBeUndefined();
        },
      ),
      { numRuns: 100 },
    );
  });
});

describe("a pump that stops", () => {
  test("swings inside the bounds of the closed form, and to them without friction", () => {
    const V = 0.4;
    // A pump strong enough that its whole flow stops, and does so within one step.
    const start: PumpEnd = {
      ...pump,
      sourceHead: 0 as Length,
      ratedFlow: (V * area(0.035)) as VolumeFlow,
      ratedHead: 90 as Length,
      shutoffHead: 91 as Length,
      halfSpeedTime: seconds(0),
      stopTime: seconds(0),
    };
    const surge = follow({ pipes: [pipe(300, 0.035, 330)], start, end: held(90), duration: seconds(5) });
    const bound = pumpStopSurge({
      velocity: V as Velocity,
      waveSpeed: 330 as Velocity,
      staticHead: 90 as Length,
      frictionHead: 0 as Length,
      vapourHead: BOILING as Length,
    });
    expect(surge.envelope[0]?.lowestHead).toBeCloseTo(bound.lowestHead, 8);
    expect(surge.envelope[0]?.highestHead).toBeCloseTo(bound.highestHead, 8);

    const rubbed = follow({ pipes: [pipe(300, 0.035, 330, 0.02)], start, end: held(80), duration: seconds(5) });
    const startVelocity = (rubbed.startFlow / area(0.035)) as Velocity;
    const frictionHead = ((rubbed.envelope[0]?.startHead ?? 0) - 80) as Length;
    const wider = pumpStopSurge({
      velocity: startVelocity,
      waveSpeed: 330 as Velocity,
      staticHead: 80 as Length,
      frictionHead,
      vapourHead: BOILING as Length,
    });
    expect(rubbed.envelope[0]?.highestHead).toBeLessThan(wider.highestHead);
    expect(rubbed.envelope[0]?.lowestHead).toBeGreaterThan(wider.lowestHead - frictionHead);
  });

  test("an ideal check valve passes nothing back; a late one slams", () => {
    const run = (delay: number) =>
      follow({
        pipes: [main],
        start: { ...pump, checkValveDelay: seconds(delay) },
        end: held(90),
        duration: seconds(6),
        probes: [0 as Length],
      });
    const ideal = run(0);
    expect(ideal.checkValve?.reverseVelocity).toBe(0);
    expect(Math.min(...only(ideal).flows)).toBe(0);
    const late = run(0.2);
    expect(late.checkValve?.reverseVelocity).toBeGreaterThan(0.1);
    expect(late.checkValve?.time).toBeGreaterThan(ideal.checkValve?.time ?? Infinity);
    expect(late.highestPressure).toBeGreaterThan(ideal.highestPressure);
  });

  test("a tank after the check valve tames the swing, and its water is what the line took", () => {
    const bare = follow({ pipes: [main], start: pump, end: held(90), duration: seconds(60) });
    const tamed = follow({
      pipes: [main],
      start: { ...pump, airTank: tank },
      end: held(90),
      duration: seconds(60),
      probes: [0 as Length],
    });
    expect(tamed.highestPressure).toBeLessThan(bare.highestPressure);
    expect(tamed.lowestPressure).toBeGreaterThanOrEqual(bare.lowestPressure);
    const [swing] = tamed.airTanks;
    expect(swing?.at).toBe("start");
    expect(swing?.leastWater).toBeGreaterThan(0);
    // With the pump off, all that enters the line comes out of the tank.
    const off = Math.ceil((tamed.checkValve?.time ?? 0) / tamed.timeStep) + 1;
    const { flows } = only(tamed);
    let drawn = 0;
    let most = 0;
    for (let step = off; step < flows.length; step++) {
      drawn += (((flows[step - 1] as number) + (flows[step] as number)) / 2) * tamed.timeStep;
      most = Math.max(most, drawn);
    }
    const given = (swing?.mostWater ?? 0) - (swing?.leastWater ?? 0);
    expect(Math.abs(most / given - 1)).toBeLessThan(0.02);
  });

  test("a tank run empty gives no more, and fills again", () => {
    const small = { ...tank, volume: 0.002 as Volume, precharge: 850_000 as GaugePressure };
    const surge = follow({
      pipes: [main],
      start: { ...pump, airTank: small },
      end: held(90),
      duration: seconds(10),
      reaches: 400,
      probes: [0 as Length],
    });
    expect(surge.airTanks[0]?.leastWater).toBe(0);
    // Filled slowly and emptied fast, the air ends colder, and lower, than the precharge: by (p₀/p)^(n − 1).
    const precharge = 850_000 + water.atmosphere;
    const full = 1000 * STANDARD_GRAVITY * (surge.envelope[0]?.startHead ?? 0) + water.atmosphere;
    expect(surge.airTanks[0]?.lowestPressure).toBeCloseTo(precharge * (precharge / full) ** 0.2 - water.atmosphere, 3);
    expect(surge.airTanks[0]?.mostWater).toBeGreaterThan(0);
    // Empty behind a shut check valve: nothing enters the line, step after step.
    const { flows } = only(surge);
    expect(flows.some((flow, i) => flow === 0 && flows[i + 1] === 0 && flows[i + 2] === 0)).toBe(true);
    // Until then the line drew what the tank held, all of it.
    const shut = Math.round((surge.checkValve?.time ?? 0) / surge.timeStep);
    const empty = flows.indexOf(0 as VolumeFlow);
    let drawn = 0;
    for (let i = shut; i <= empty; i++) drawn += (((flows[i - 1] ?? 0) + (flows[i] ?? 0)) / 2) * surge.timeStep;
    expect(empty).toBeGreaterThan(shut);
    // One step's flow is 0.9 % of it; the first and last steps are part steps.
    expect(Math.abs(drawn / (small.volume * (1 - precharge / full)) - 1)).toBeLessThan(0.009);
  });
});

describe("what is not possible", () => {
  test("a start that boils says where and by how much", () => {
    const surge = simulateSurge({
      ...water,
      startElevation: 0 as Length,
      pipes: [
        { ...pipe(100, 0.05, 500), endElevation: 40 as Length },
        { ...pipe(100, 0.05, 500), endElevation: 0 as Length },
      ],
      start: held(20),
      end: { kind: "closed" },
      duration: seconds(1),
    });
    expect(surge.state).toBe("cannot start");
    if (surge.state !== "cannot start") return;
    expect(surge.distance).toBe(100);
    expect(surge.short).toBeCloseTo(40 + BOILING - 20, 10);
  });

  test.each([
    ["two ends that lay down different flows", { start: stopAtOnce(0.001), end: stopAtOnce(0.0005) }],
    ["two ends without a head", { start: stopAtOnce(0.001), end: stopAtOnce(0.001) }],
    ["two tanks with nothing to hold the flow", { start: held(30), end: held(20) }],
    ["flow back through a check valve", { start: pump, end: stopAtOnce(-0.001) }],
    ["a flow faster than any water line's", { start: held(30), end: stopAtOnce(10) }],
    ["more steps than it will pay for", { start: held(30), end: { kind: "closed" }, duration: seconds(90_000) }],
    [
      "more kept values than it will pay for",
      { start: held(30), end: { kind: "closed" }, duration: seconds(1000), probes: nodes(100, 49), reaches: 100 },
    ],
    ["a rated head at the shutoff head", { start: { ...pump, ratedHead: pump.shutoffHead }, end: held(90) }],
    ["openings that run backwards in time", { start: held(30), end: valve([1, 1], [0.5, 0]) }],
  ] as const)("refuses %s", (_, ends) => {
    const input = {
      ...water,
      startElevation: 0 as Length,
      pipes: [pipe(100, 0.05, 500)],
      duration: seconds(1),
      ...ends,
    };
    expect(() => simulateSurge(input as never)).toThrow(InputError);
  });
});
