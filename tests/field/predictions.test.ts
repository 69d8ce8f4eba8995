/** What each gauge, watch and meter of a plant with a fault would read, against its physics written out again. */
import { pumpCurve } from "risingmain/pump";
import { describe, expect, test } from "vitest";
import { type Fault, modelUncertainty, predict, SOUND, tankAge } from "../../src/field/diagnosis-model.ts";
import type { DiagnosisPlant, ReadingKind } from "../../src/field/diagnosis-types.ts";
import { nextReading } from "../../src/field/next-reading.ts";

const WEIGHT = 9.80665 * 1000;
const PSI = 6894.757;
const AIR = 101_325;

/** H = 90 − 3.5e7 Q², to 1.5 L/s: 11.25 m at the end. */
const [SHUTOFF, BEND, END] = [90, 3.5e7, 1.5e-3];
const LAW = { aquiferLoss: 4e3, wellLoss: 2e6 };
const plant = {
  pump: pumpCurve({
    points: Array.from({ length: 11 }, (_, i) => ({
      flow: ((END * i) / 10) as never,
      head: (SHUTOFF - BEND * ((END * i) / 10) ** 2) as never,
    })),
  }),
  well: { staticLevel: 20, law: LAW },
  rise: 1.5,
  mainLoss: { flow: 8e-4, headLoss: 2.4 },
  cutIn: 2.5e5,
  cutOut: 3.9e5,
  tank: { volume: 0.25, precharge: 2.36e5, atmosphere: AIR },
  density: 1000,
  voltage: 230,
  current: 9,
  threePhase: true,
  tankAge: 3e7,
  regulatedPressure: 3e5,
  yard: { loss: { flow: 5e-4, headLoss: 6 }, rise: -3, outlet: { flow: 1e-3, headLoss: 4 } },
} as unknown as DiagnosisPlant;

const FAULTS: Readonly<Record<string, Fault>> = {
  "nothing wrong": SOUND,
  "a worn pump in a low well, its main half shut": {
    ...SOUND,
    headShare: 0.9,
    flowShare: 0.8,
    mainFactor: 4,
    staticFall: 3,
    drawdownFactor: 1.6,
  },
  "a leak, a check valve that passes, less air": {
    ...SOUND,
    leak: 3e-5,
    backFlow: 1e-5,
    airShare: 0.7,
    airLossRate: 1.2e-8,
  },
  "a low voltage and a switch out of setting": {
    ...SOUND,
    voltageShare: 0.85,
    cutInRise: -2e4,
    cutOutRise: 3e4,
    regulatedRise: -4e4,
    yardFactor: 5,
  },
  "more air than was set, a switch that stops early": { ...SOUND, airShare: 1.1, cutOutRise: -5e4, backFlow: 4e-6 },
};

/** The physics again: Bernoulli, Boyle and the affinity laws, solved by halving and by small steps. */
function physics(fault: Fault) {
  // Slip of 5 % at the rated voltage, as the square of the fall (common practice, as the model says).
  const n = (1 - 0.05 / fault.voltageShare ** 2) / 0.95;
  const leakAt = (p: number): number => fault.leak * Math.sqrt(Math.max(p / WEIGHT + 1.5 + 20 / 2, 0));
  const level = (q: number): number =>
    20 + fault.staticFall + fault.drawdownFactor * (LAW.aquiferLoss * q + LAW.wellLoss * q * q);
  const spare = (q: number, p: number): number => {
    const pumped = q + leakAt(p);
    const x = Math.min(pumped / (fault.flowShare * n), END);
    const made = fault.headShare * n * n * (SHUTOFF - BEND * x * x);
    return made - level(q) - 1.5 - p / WEIGHT - fault.mainFactor * 2.4 * (pumped / 8e-4) ** 2;
  };
  /** Where a falling function is no longer above 0. */
  const halved = (f: (x: number) => number, high: number): number => {
    let [a, b] = [0, high];
    for (let i = 0; i < 80; i++) {
      if (f((a + b) / 2) > 0) a = (a + b) / 2;
      else b = (a + b) / 2;
    }
    return a;
  };
  const flowAt = (p: number): number =>
    Math.max(
      0,
      halved((q) => spare(q, p), END * fault.flowShare * n - leakAt(p)),
    );
  const air = (plant.tank.precharge + AIR) * fault.airShare;
  const give = (p: number): number => (p + AIR > air ? (0.25 * air) / (p + AIR) ** 2 : 0);
  const fill = (): number => {
    const [low, high] = [2.5e5 + fault.cutInRise, 3.9e5 + fault.cutOutRise];
    let time = 0;
    for (let i = 0; i < 400; i++) {
      const p = low + ((high - low) * (i + 0.5)) / 400;
      time += (give(p) * (high - low)) / 400 / flowAt(p);
    }
    return time;
  };
  /** How far the pressure falls in a time, 0.01 % of it a step. */
  const fall = (time: number): number => {
    const start = 3.9e5 + fault.cutOutRise;
    let [p, left] = [start, time];
    while (left > 0) {
      const lost = leakAt(p) + fault.backFlow * Math.sqrt(Math.max(p / WEIGHT + 1.5 + 20, 0));
      if (!(lost > 0)) return 0;
      if (!(give(p) > 0)) return start;
      const step = start * 1e-4;
      left -= (give(p) * step) / lost;
      p -= step;
    }
    return start - p;
  };
  return { n, leakAt, level, spare, halved, flowAt, air, fill, fall };
}

describe.each(Object.entries(FAULTS))("%s", (_, fault) => {
  const read = (kind: ReadingKind, more: object = {}) => predict(plant, fault, { kind, ...more });
  const close = (got: number, want: number, within = 1e-6): void => {
    expect(Math.abs(got - want)).toBeLessThanOrEqual(within * Math.max(Math.abs(want), 1e-9));
  };

  test("levels, flows and pressures", () => {
    const { level, spare, halved, flowAt, air } = physics(fault);
    close(read("static level"), 20 + fault.staticFall);
    for (const at of [0, 1e5, 2.5e5, 3.9e5]) {
      close(read("flow", { at }), flowAt(at));
      close(read("pumping level", { at }), level(flowAt(at)));
      const yard = at / WEIGHT + 3;
      close(read("far flow", { at }), Math.sqrt(yard / ((fault.yardFactor * 6) / 25e-8 + 4 / 1e-6)));
    }
    // At the cut-in where no pressure is said.
    expect(read("flow")).toBe(read("flow", { at: 2.5e5 }));
    close(
      read("shutoff pressure"),
      halved((p) => spare(0, p), SHUTOFF * WEIGHT),
      1e-5,
    );
    expect([read("cut-in"), read("cut-out")]).toEqual([2.5e5 + fault.cutInRise, 3.9e5 + fault.cutOutRise]);
    close(read("precharge"), air - AIR);
    expect(read("regulated pressure")).toBe(3e5 + fault.regulatedRise);
  });

  test("the tank's filling and falling, and the meters", () => {
    const { n, air, fill, fall } = physics(fault);
    // Twelve steps of a smooth integral: a third of a per cent at most.
    close(read("fill time"), fill(), 3e-3);
    for (const over of [60, 600, 3000]) {
      const want = fall(over);
      expect(Math.abs(read("pressure fall", { over }) - want)).toBeLessThanOrEqual(0.01 * want + 300);
    }
    expect(read("pressure fall")).toBe(read("pressure fall", { over: 600 }));
    close(read("voltage"), 230 * fault.voltageShare);
    close(read("current"), (9 * n ** 3) / fault.voltageShare);
    const full = plant.tank.precharge + AIR;
    close(read("precharge fall", { over: 5e6 }), full * (1 - Math.exp(-fault.airLossRate * 5e6)));
    // Half of the tank's age where no time is said.
    expect(read("precharge fall")).toBe(read("precharge fall", { over: 1.5e7 }));
    expect(air).toBeGreaterThan(AIR);
  });

  test("two leads swapped: half of the head and flow between three tenths and three quarters", () => {
    const made = 0.525;
    const turned = { ...fault, headShare: fault.headShare * made, flowShare: fault.flowShare * made };
    const { spare, halved } = physics(turned);
    const want = spare(0, 0) > 0 ? halved((p) => spare(0, p), SHUTOFF * WEIGHT) : 0;
    expect(Math.abs(read("swapped shutoff pressure") - want)).toBeLessThan(2);
    // One that turned the wrong way turns right.
    const back = predict(
      plant,
      { ...fault, headShare: 0.5, flowShare: 0.5, backwards: true },
      { kind: "swapped shutoff pressure" },
    );
    const right = predict(plant, { ...fault, headShare: 1, flowShare: 1 }, { kind: "shutoff pressure" });
    expect(back).toBe(right);
  });
});

test("a pump that does not reach gives nothing, makes no pressure and never fills; one of plenty gives the end of its curve", () => {
  const deep = { ...SOUND, staticFall: 100 };
  expect(predict(plant, deep, { kind: "flow" })).toBe(0);
  expect(predict(plant, deep, { kind: "shutoff pressure" })).toBe(0);
  expect(predict(plant, deep, { kind: "fill time" })).toBe(86_400);
  const shallow = {
    ...plant,
    well: { staticLevel: 0, law: { aquiferLoss: 0, wellLoss: 0 } },
    mainLoss: { flow: 1, headLoss: 1e-3 },
  };
  expect(predict(shallow as never, SOUND, { kind: "flow", at: 0 as never })).toBe(END);
  // With a leak of its own the rest of it: 2e-5 at a metre, under 1.5 m.
  const leaking = predict(shallow as never, { ...SOUND, leak: 2e-5 }, { kind: "flow", at: 0 as never });
  expect(leaking).toBeCloseTo(END - 2e-5 * Math.sqrt(1.5), 12);
  // The end of the curve goes with the speed and with the share of flow.
  const { n } = physics({ ...SOUND, voltageShare: 0.85 });
  const slow = predict(
    shallow as never,
    { ...SOUND, voltageShare: 0.85, flowShare: 0.7 },
    { kind: "flow", at: 0 as never },
  );
  expect(slow).toBeCloseTo(END * 0.7 * n, 12);
  // A leak that takes more than there is, of an easy main or of a hard one.
  expect(predict(shallow as never, { ...SOUND, leak: 2e-3 }, { kind: "flow", at: 0 as never })).toBe(0);
  expect(predict(plant, { ...SOUND, leak: 1 }, { kind: "flow" })).toBe(0);
  // A pump that lifts from above its gauge makes no more than its shutoff head.
  const high = { ...shallow, rise: -50 };
  expect(predict(high as never, SOUND, { kind: "shutoff pressure" })).toBe(SHUTOFF * WEIGHT);
});

test("a tank whose air is spent loses all its pressure; a switch that stops under its start fills in no time", () => {
  const spent = { ...SOUND, leak: 1e-3 };
  expect(predict(plant, spent, { kind: "pressure fall", over: 3600 as never })).toBe(3.9e5);
  expect(predict(plant, { ...spent, cutOutRise: -4e5 }, { kind: "pressure fall" })).toBe(0);
  expect(predict(plant, { ...SOUND, cutOutRise: -3e5 }, { kind: "fill time" })).toBe(0);
  // Hours and days: the watch stops at a day.
  const slow = { ...plant, tank: { ...plant.tank, volume: 1e4 } };
  expect(predict(slow as never, SOUND, { kind: "fill time" })).toBe(86_400);
});

test("a tank charged over the cut-out holds no water: any loss takes its pressure, and no loss none of it", () => {
  const over = { ...SOUND, airShare: 1.6 };
  expect(predict(plant, over, { kind: "pressure fall" })).toBe(0);
  expect(predict(plant, { ...over, backFlow: 1e-15 }, { kind: "pressure fall" })).toBe(3.9e5);
  expect(predict(plant, over, { kind: "fill time" })).toBe(0);
});

test("what a plant has not reads nothing, and a tank's age is a year where none is said", () => {
  const { yard: _, regulatedPressure: __, tankAge: ___, ...bare } = plant;
  expect(predict(bare, SOUND, { kind: "far flow" })).toBe(0);
  expect(predict(bare, { ...SOUND, regulatedRise: 5 }, { kind: "regulated pressure" })).toBe(5);
  expect([tankAge(plant), tankAge(bare)]).toEqual([3e7, 31_557_600]);
  // Uphill of what the gauge's pressure lifts, nothing.
  const uphill = { ...plant, yard: { ...plant.yard, rise: 100 } };
  expect(predict(uphill as never, SOUND, { kind: "far flow" })).toBe(0);
});

test("only a reversed pump is a doubt of the model: a flat spread from 0.3 to 0.75 of its shutoff", () => {
  // The standard deviation of a flat spread is its width over √12.
  expect(modelUncertainty(plant, { kind: "swapped shutoff pressure" })).toBeCloseTo(
    (0.45 / Math.sqrt(12)) * SHUTOFF * WEIGHT,
    6,
  );
  expect(modelUncertainty(plant, { kind: "shutoff pressure" })).toBe(0);
});

describe("the reading to take next", () => {
  /** Doubts of a careful installer, as the module names them: common practice. */
  const doubts: Readonly<Partial<Record<ReadingKind, number>>> = {
    "static level": 0.15,
    "pumping level": 0.3,
    flow: 0.03 * END,
    "shutoff pressure": 2 * PSI,
    "cut-in": PSI,
    "cut-out": PSI,
    precharge: PSI,
    "fill time": 2,
    "pressure fall": PSI,
    voltage: 2.3,
    current: 0.18,
    "regulated pressure": PSI,
    "far flow": 0.03 * END,
    "swapped shutoff pressure": 2 * PSI,
    "precharge fall": PSI,
  };
  const taken = (...kinds: readonly ReadingKind[]) => kinds.map((kind) => ({ kind, value: 0, standardUncertainty: 1 }));
  const apart = (kind: ReadingKind, a: Fault, b: Fault, more: object = {}): number => {
    const setup = { kind, ...more };
    const u = Math.hypot(doubts[kind] ?? 0, modelUncertainty(plant, setup));
    return Math.abs(predict(plant, a, setup) - predict(plant, b, setup)) / u;
  };

  test("is the one whose predictions lie furthest apart, of those not taken", () => {
    for (const fault of Object.values(FAULTS).slice(1)) {
      const had: ReadingKind[] = [];
      for (;;) {
        const next = nextReading(plant, taken(...had), SOUND, fault);
        const rest = (Object.keys(doubts) as ReadingKind[]).filter((kind) => !had.includes(kind));
        const found = rest.map((kind) => apart(kind, SOUND, fault));
        // The flow at cut-out may be asked for when that at cut-in has been taken.
        const high = apart("flow", SOUND, fault, { at: plant.cutOut });
        const most = Math.max(...found, high);
        if (next === null) {
          expect(most).toBeLessThanOrEqual(2);
          break;
        }
        expect(next.inUncertainties).toBeCloseTo(most, 9);
        if (next.at !== undefined) break;
        expect(next.predictions).toEqual([predict(plant, SOUND, next), predict(plant, fault, next)]);
        had.push(next.kind);
      }
    }
  });

  test("is none where no two predictions lie more than two doubts apart", () => {
    const rises = (by: number) => nextReading(plant, [], SOUND, { ...SOUND, regulatedRise: by });
    expect(rises(1.99 * PSI)).toBeNull();
    expect(rises(2.01 * PSI)).toMatchObject({ kind: "regulated pressure", predictions: [3e5, 3e5 + 2.01 * PSI] });
    expect(nextReading(plant, taken("regulated pressure"), SOUND, { ...SOUND, regulatedRise: 5 * PSI })).toBeNull();
  });

  test("is the flow at cut-out where that at cut-in was taken, and not the other way about", () => {
    const leak = { ...SOUND, leak: 1.2e-4 };
    const others = (Object.keys(doubts) as ReadingKind[]).filter((kind) => kind !== "flow");
    const at = (pressure: number | undefined) =>
      nextReading(
        plant,
        [...taken(...others), { ...taken("flow")[0], ...(pressure && { at: pressure }) } as never],
        SOUND,
        leak,
      );
    expect(at(undefined)).toMatchObject({ kind: "flow", at: 3.9e5 });
    expect(at(2.5e5)).toMatchObject({ kind: "flow", at: 3.9e5 });
    const low = at(3.9e5);
    expect([low?.kind, low?.at]).toEqual(["flow", undefined]);
  });

  test("is not of what the plant has not", () => {
    const { yard: _, regulatedPressure: __, threePhase: ___, ...bare } = plant;
    const all = { ...SOUND, regulatedRise: 1e5, yardFactor: 50 };
    expect(nextReading(bare, [], SOUND, all)).toBeNull();
    // All else taken, two leads swapped would tell, were there three phases.
    const others = (Object.keys(doubts) as ReadingKind[]).filter((kind) => !kind.startsWith("swapped"));
    const every = [...taken(...others), { ...taken("flow")[0], at: plant.cutOut }] as never;
    expect(nextReading(plant, every, { ...SOUND, headShare: 3 }, SOUND)?.kind).toBe("swapped shutoff pressure");
    expect(nextReading(bare, every, { ...SOUND, headShare: 3 }, SOUND)).toBeNull();
    expect(nextReading(plant, [], SOUND, { ...SOUND, yardFactor: 50 })?.kind).toBe("far flow");
  });
});
