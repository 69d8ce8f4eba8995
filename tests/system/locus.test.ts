/** What the pump delivers at a pressure, against the balance of heads. */
import fc from "fast-check";
import type { RunningSystem } from "risingmain/system";
import { describe, expect, test } from "vitest";
import { compileSystem } from "../../src/system/compile.ts";
import { deliveryLocus, emptyPressure, flowAt, pressureAt, storagePath } from "../../src/system/locus.ts";
import { changed } from "../changed.ts";
import { headOf, plainJob, SHAPE } from "./jobs.ts";

const WEIGHT = 9806.65;
const END = 1.5e-3;
const onSwitch = { kind: "switch", cutIn: 280e3, cutOut: 410e3 };

interface Held {
  readonly set: number;
  readonly least: number;
  readonly droop: number;
}

/** Systems with what holds their pressure, if anything, and the most that flows. */
const SYSTEMS: readonly (readonly [name: string, control: object, held: Held | undefined, most: number])[] = [
  ["a switch", onSwitch, undefined, END],
  ["a flow limit", onSwitch, undefined, 6e-4],
  [
    "a valve",
    { ...onSwitch, valve: { setPressure: 345e3, minimumFlow: 6e-5 } },
    { set: 345e3, least: 6e-5, droop: 0 },
    END,
  ],
  [
    "a valve with droop",
    { ...onSwitch, valve: { setPressure: 360e3, minimumFlow: 6e-5, droop: 54e3, droopFlow: 6e-4 } },
    { set: 360e3, least: 6e-5, droop: 54e3 / 54e-5 },
    END,
  ],
  [
    "a drive with a flow limit",
    { kind: "variable speed", startPressure: 290e3, setPressure: 345e3, stopPressure: 385e3, minimumFlow: 4e-4 },
    { set: 345e3, least: 4e-4, droop: 0 },
    6e-4,
  ],
  [
    "a valve that passes more than the pump gives",
    { ...onSwitch, valve: { setPressure: 345e3, minimumFlow: 2e-3 } },
    undefined,
    END,
  ],
];

describe.each(SYSTEMS)("%s", (_, control, held, most) => {
  const made = () => {
    const { system } = changed(changed(plainJob(), "system.control", control), "system.flowLimit", most);
    const compiled = compileSystem(system as RunningSystem);
    return { compiled, locus: deliveryLocus(compiled) };
  };
  /** Pressure the pump makes at the tank with nothing held, Pa. */
  const free = (q: number): number => WEIGHT * (headOf(SHAPE, q) - 3e6 * q * q - 32 - q * (8e3 + 1e6 * q));
  /** Pressure at which it gives a flow. */
  const madeAt = (q: number): number => {
    if (held === undefined || q <= held.least) return free(q);
    return Math.min(free(q), held.set - held.droop * (q - held.least));
  };

  test("gives each flow at the pressure of the head balance, and reads it back", () => {
    const { locus } = made();
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (share) => {
        const q = share * most;
        const p = madeAt(q);
        expect(Math.abs(pressureAt(locus, q) / p - 1)).toBeLessThan(1e-9);
        // A step holds one pressure over a range of flows, and gives its greatest at it.
        const flat = held !== undefined && held.droop === 0 && q > held.least && p === held.set;
        if (!flat) expect(Math.abs(flowAt(locus, p) / q - 1)).toBeLessThan(1e-6);
        expect(flowAt(locus, p - 1)).toBeGreaterThan(q);
        expect(flowAt(locus, p + 1)).toBeLessThan(q);
      }),
    );
  });

  test("gives nothing over its shutoff pressure, its most under all, and the least asked over the pressure held", () => {
    const { locus } = made();
    expect([flowAt(locus, free(0) + 1), flowAt(locus, 1e8)]).toEqual([0, 0]);
    expect([flowAt(locus, madeAt(most) - 1), flowAt(locus, -1e6)]).toEqual([most, most]);
    expect(flowAt(locus, 2e9)).toBe(0);
    if (held !== undefined) {
      expect(flowAt(locus, held.set + 1)).toBeCloseTo(held.least, 9);
      expect(flowAt(locus, (held.set + free(held.least)) / 2)).toBe(held.least);
    }
    // No less than nothing is ever delivered: the pressure for it is that of the shut valve.
    expect(pressureAt(locus, 0)).toBeCloseTo(free(0), 3);
    expect(pressureAt(locus, -1)).toBeCloseTo(free(0), 3);
    expect(pressureAt(locus, most)).toBeLessThanOrEqual(madeAt(most));
  });

  test("is a path without gaps, along which flow never rises", () => {
    const { compiled, locus } = made();
    const path = storagePath(compiled, locus, 3e-4);
    for (const list of [locus, path]) {
      list.forEach(({ pLow, pHigh, qLow, qHigh, cubic }, i) => {
        expect(pHigh).toBeGreaterThanOrEqual(pLow);
        expect(qHigh).toBeGreaterThanOrEqual(qLow);
        if (cubic === undefined) expect(qLow).toBe(qHigh);
        const next = list[i + 1];
        if (next !== undefined) expect([next.pLow, next.qHigh]).toEqual([pHigh, qLow]);
      });
    }
    // From the tanks' opening on, with an end at each pressure where something changes.
    expect(path[0]?.pLow).toBe(265e3);
    const ends = path.map(({ pHigh }) => pHigh);
    expect(ends).toContain(compiled.cutIn);
    expect(ends).toContain(compiled.cutOut);
    // Absolute pressure at most doubles over a piece, to 100 MPa.
    for (const { pLow, pHigh } of path.filter((piece) => piece.pHigh < 1e8)) {
      expect((pHigh + 101_325) / (pLow + 101_325)).toBeLessThanOrEqual(2 + 1e-12);
    }
    // Cut where the flow passes the one that trips, wherever a curve and no step or level has it.
    const crossed = path.filter(({ qLow, qHigh }) => qLow < 3e-4 && qHigh > 3e-4);
    for (const { cubic, pLow } of crossed) expect([cubic === undefined, pLow]).toEqual([false, 345e3]);
    if (held === undefined) expect(path.map(({ qLow }) => qLow)).toContain(3e-4);
  });
});

test("tanks are empty at the lowest pressure they open at, or at the open air's", () => {
  const empty = (...tanks: readonly object[]) =>
    emptyPressure(compileSystem(changed(plainJob(), "system.tanks", tanks).system).bank);
  expect(empty({ volume: 0.1, precharge: 2e5 }, { volume: 0.1, precharge: 1.5e5 })).toBe(1.5e5);
  expect(empty({ volume: 0.1, precharge: 2e5, elevation: -5 })).toBeCloseTo(2e5 - 5 * WEIGHT, 6);
  expect(empty({ volume: 0.1, precharge: -2e4 })).toBe(0);
});
