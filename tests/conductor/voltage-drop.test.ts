/** Laws of voltage drop that hold for every circuit, and the inverses undoing what they invert. */
import fc from "fast-check";
import {
  approximateDrops,
  type CircuitSegment,
  conductorChoices,
  leastMetal,
  longestLength,
  smallestConductor,
  type VoltageDropInput,
  voltageDrop,
} from "risingmain/conductor";
import type { Current, Length, Ratio, ResistancePerLength, Voltage } from "risingmain/units";
import { expect, test } from "vitest";

/** Numbers so small that doubles lose digits have no relative precision to hold a law to: they count as 0. */
const between = <Q extends number>(min: number, max: number): fc.Arbitrary<Q> =>
  fc.double({ min, max, noNaN: true }).map((value) => (Math.abs(value) < 1e-100 ? 0 : value) as Q);
const segments: fc.Arbitrary<CircuitSegment> = fc.record({
  length: between<Length>(0, 300),
  resistance: between<ResistancePerLength>(1e-5, 0.01),
  reactance: between<ResistancePerLength>(0, 5e-4),
});
const circuits: fc.Arbitrary<VoltageDropInput> = fc.record({
  system: fc.constantFrom("single-phase" as const, "three-phase" as const),
  sourceVoltage: between<Voltage>(100, 600),
  current: between<Current>(0, 50),
  powerFactor: between<Ratio>(0.05, 1),
  segments: fc.array(segments, { minLength: 1, maxLength: 5 }),
});
const carried = (input: VoltageDropInput) => {
  const got = voltageDrop(input);
  fc.pre(got.state === "carried");
  return got as Extract<typeof got, { state: "carried" }>;
};
const scaled = (input: VoltageDropInput, factor: number): VoltageDropInput => ({
  ...input,
  segments: input.segments.map((one) => ({ ...one, length: (one.length * factor) as Length })),
});

test("the exact drop is at least its in-phase part, and that at least its resistive part", () => {
  fc.assert(
    fc.property(circuits, (input) => {
      const { drop, inPhase, resistive } = carried(input);
      expect(drop).toBeGreaterThanOrEqual(inPhase);
      expect(inPhase).toBeGreaterThanOrEqual(resistive * (1 - 1e-12));
    }),
  );
});

test("at unity power factor without reactance the drop is k I R", () => {
  fc.assert(
    fc.property(circuits, (input) => {
      const plain = input.segments.map(({ length, resistance }) => ({ length, resistance }));
      const { drop } = carried({ ...input, powerFactor: 1 as Ratio, segments: plain });
      const ohms = plain.reduce((sum, one) => sum + one.length * one.resistance, 0);
      const k = input.system === "single-phase" ? 2 : Math.sqrt(3);
      expect(Math.abs(drop - k * input.current * ohms)).toBeLessThanOrEqual(1e-12 * drop);
    }),
  );
});

test("the in-phase part is proportional to length and to current; the drop rises with both", () => {
  fc.assert(
    fc.property(circuits, between<Ratio>(1.01, 3), (input, factor) => {
      const near = carried(input);
      const far = carried(scaled(input, factor));
      const more = carried({ ...input, current: (input.current * factor) as Current });
      expect(far.inPhase).toBeCloseTo(factor * near.inPhase, 9);
      expect(more.inPhase).toBeCloseTo(factor * near.inPhase, 9);
      expect(far.drop).toBeGreaterThanOrEqual(near.drop);
      expect(more.drop).toBeGreaterThanOrEqual(near.drop);
    }),
  );
});

test("a segment split in two changes nothing", () => {
  fc.assert(
    fc.property(circuits, between<Ratio>(0, 1), fc.nat(), (input, share, pick) => {
      const at = pick % input.segments.length;
      const cut = input.segments.flatMap((one, i) =>
        i === at
          ? [
              { ...one, length: (one.length * share) as Length },
              { ...one, length: (one.length * (1 - share)) as Length },
            ]
          : [one],
      );
      const whole = carried(input);
      const split = carried({ ...input, segments: cut });
      expect(Math.abs(split.drop - whole.drop)).toBeLessThanOrEqual(1e-11 * input.sourceVoltage);
      expect(Math.abs(split.loss - whole.loss)).toBeLessThanOrEqual(1e-11 * (1 + whole.loss));
    }),
  );
});

test("the segments' shares add up to the drop, in any order of segments", () => {
  fc.assert(
    fc.property(circuits, (input) => {
      const got = carried(input);
      const sum = got.segments.reduce<number>((total, { drop }) => total + drop, got.sourceDrop);
      expect(Math.abs(sum - got.drop)).toBeLessThanOrEqual(1e-12 * input.sourceVoltage);
      const turned = carried({ ...input, segments: [...input.segments].reverse() });
      expect(Math.abs(turned.drop - got.drop)).toBeLessThanOrEqual(1e-12 * input.sourceVoltage);
    }),
  );
});

test("two sets in parallel are one of half the length", () => {
  fc.assert(
    fc.property(circuits, (input) => {
      const doubled = carried({ ...input, segments: input.segments.map((one) => ({ ...one, sets: 2 })) });
      const half = carried(scaled(input, 0.5));
      expect(Math.abs(doubled.drop - half.drop)).toBeLessThanOrEqual(1e-12 * input.sourceVoltage);
    }),
  );
});

test("no circuit takes more than its source has: it collapses, or the load keeps some voltage", () => {
  fc.assert(
    fc.property(circuits, (input) => {
      const got = voltageDrop(scaled(input, 20));
      if (got.state === "carried") expect(got.loadVoltage).toBeGreaterThanOrEqual(0);
      else expect(got.needed).toBeGreaterThan(0);
    }),
  );
});

test("the whole impedance is the largest of the shortcuts, resistance with power factor the smallest", () => {
  fc.assert(
    fc.property(circuits, (input) => {
      const got = approximateDrops(input);
      fc.pre(got.state === "carried");
      const drops = (got as Extract<typeof got, { state: "carried" }>).forms.map(({ drop }) => drop);
      const [, smallest = 0, , largest = 0] = drops;
      for (const drop of drops) {
        expect(drop).toBeLessThanOrEqual(largest * (1 + 1e-12));
        expect(drop).toBeGreaterThanOrEqual(smallest * (1 - 1e-12));
      }
    }),
  );
});

/** A circuit that always carries its load, taken apart: the conductor to be measured, and what is settled. */
const short: fc.Arbitrary<CircuitSegment> = fc.record({
  length: between<Length>(1, 50),
  resistance: between<ResistancePerLength>(1e-4, 5e-3),
  reactance: between<ResistancePerLength>(0, 3e-4),
});
const apart = fc.record({
  load: fc.record({
    system: fc.constantFrom("single-phase" as const, "three-phase" as const),
    sourceVoltage: between<Voltage>(200, 600),
    current: between<Current>(1, 50),
    powerFactor: between<Ratio>(0.05, 1),
  }),
  conductor: short,
  settled: fc.array(short, { maxLength: 3 }),
});

test("the longest length drops exactly the limit", () => {
  fc.assert(
    fc.property(apart, between<Ratio>(0.005, 0.2), ({ load, conductor, settled }, dropLimit) => {
      const got = longestLength({ ...load, conductor, settled, dropLimit });
      if (got.state !== "limited") return;
      const { share } = carried({ ...load, segments: [...settled, { ...conductor, length: got.length }] });
      expect(share).toBeCloseTo(dropLimit, 9);
    }),
  );
});

test("the drop of a length has that length as its longest", () => {
  fc.assert(
    fc.property(apart, ({ load, conductor, settled }) => {
      const there = voltageDrop({ ...load, segments: [...settled, conductor] });
      fc.pre(there.state === "carried" && there.share < 0.9);
      const { share: dropLimit } = there as Extract<typeof there, { state: "carried" }>;
      const back = longestLength({ ...load, conductor, settled, dropLimit });
      if (back.state !== "limited") throw new Error(back.state);
      expect(back.length).toBeCloseTo(conductor.length, 5);
    }),
  );
});

const choices = conductorChoices({ insulation: "75 °C" });
const jobs = fc.record({
  system: fc.constantFrom("single-phase" as const, "three-phase" as const),
  sourceVoltage: fc.constantFrom(115, 230, 460) as unknown as fc.Arbitrary<Voltage>,
  current: between<Current>(1, 60),
  powerFactor: between<Ratio>(0.5, 1),
  length: between<Length>(1, 500),
  dropLimit: between<Ratio>(0.01, 0.1),
  ampacityNeeded: between<Current>(1, 120),
});

test("the chosen size passes, and the next thinner one fails by what governed", () => {
  fc.assert(
    fc.property(jobs, (job) => {
      const got = smallestConductor({ ...job, choices });
      const passes = ({ resistance, reactance, ampacity = 0 as Current }: (typeof choices)[number]) => {
        const drop = voltageDrop({
          ...job,
          segments: [{ length: job.length, resistance, reactance: reactance ?? (0 as ResistancePerLength) }],
        });
        return {
          drop: drop.state === "carried" && drop.share <= job.dropLimit,
          ampacity: ampacity >= job.ampacityNeeded,
        };
      };
      const at = choices.findIndex(({ size }) => size === got.choice.size);
      if (got.state === "none thick enough") {
        const last = passes(choices[choices.length - 1] as (typeof choices)[number]);
        expect(last.drop && last.ampacity).toBe(false);
        return;
      }
      expect(passes(got.choice)).toEqual({ drop: true, ampacity: true });
      if (at === 0) {
        expect(got.governedBy).toBe("thinnest on offer");
        return;
      }
      const thinner = passes(choices[at - 1] as (typeof choices)[number]);
      expect(got.governedBy).toBe(thinner.drop ? "ampacity" : "voltage drop");
      expect(thinner.drop && thinner.ampacity).toBe(false);
    }),
  );
});

test("no pair of sizes with less metal than the chosen pair keeps the limit", () => {
  const few = choices.slice(0, 5);
  fc.assert(
    fc.property(jobs, between<Length>(1, 300), (job, second) => {
      const runs = [
        { length: job.length, choices: few },
        { length: second, choices: few },
      ] as const;
      const { ampacityNeeded: _, length: __, ...load } = job;
      const got = leastMetal({ ...load, runs });
      const able = few.filter(({ ampacity = 0 }) => ampacity >= job.current);
      const metals = able.flatMap((one) =>
        able.flatMap((other) => {
          const drop = voltageDrop({
            ...load,
            segments: [
              {
                length: job.length,
                resistance: one.resistance,
                reactance: one.reactance ?? (0 as ResistancePerLength),
              },
              {
                length: second,
                resistance: other.resistance,
                reactance: other.reactance ?? (0 as ResistancePerLength),
              },
            ],
          });
          const fits = drop.state === "carried" && drop.share <= job.dropLimit;
          const count = job.system === "three-phase" ? 3 : 2;
          return fits ? [count * (job.length * (one.area ?? 0) + second * (other.area ?? 0))] : [];
        }),
      );
      if (got.state === "none thick enough") expect(metals).toEqual([]);
      else expect(got.metal).toBeCloseTo(Math.min(...metals), 12);
    }),
    { numRuns: 50 },
  );
});

test("a start that asks for more than the drop does governs the size, on both sides of its limit", () => {
  const job = {
    system: "single-phase",
    sourceVoltage: 230 as Voltage,
    current: 10 as Current,
    powerFactor: 0.8 as Ratio,
    length: 90 as Length,
    dropLimit: 0.05 as Ratio,
    choices,
  } as const;
  const start = (leastVoltage: number) =>
    smallestConductor({
      ...job,
      start: {
        lockedRotorCurrent: 55 as Current,
        lockedRotorPowerFactor: 0.5 as Ratio,
        ratedVoltage: 230 as Voltage,
        leastVoltage: leastVoltage as Ratio,
      },
    });
  const plain = smallestConductor(job);
  expect(plain).toMatchObject({ governedBy: "voltage drop", choice: { size: "12 AWG" } });
  expect(start(0.8)).toMatchObject({ governedBy: "voltage drop", choice: { size: "12 AWG" } });
  expect(start(0.95)).toMatchObject({ governedBy: "starting voltage", choice: { size: "6 AWG" } });
  expect(start(1)).toMatchObject({ state: "none thick enough", governedBy: "starting voltage" });
});
