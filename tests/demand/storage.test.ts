/** Storage by the mass curve, against filling and drawing a tank minute by minute. */
import fc from "fast-check";
import { type DrawPeriod, storageNeed } from "risingmain/demand";
import { gpm, hours, inUsGallons, minutes, usGallons, type VolumeFlow } from "risingmain/units";
import { describe, expect, test } from "vitest";

const patterns = fc
  .array(fc.record({ length: fc.integer({ min: 1, max: 600 }), draw: fc.integer({ min: 0, max: 20 }) }), {
    minLength: 1,
    maxLength: 12,
  })
  .map((periods) => periods.map(({ length, draw }): DrawPeriod => ({ duration: minutes(length), draw: gpm(draw) })));

function mean(pattern: readonly DrawPeriod[]): number {
  const drawn = pattern.reduce((sum, { duration, draw }) => sum + duration * draw, 0);
  return drawn / pattern.reduce((sum, { duration }) => sum + duration, 0);
}

/** The lowest a tank falls from full in four passes of the pattern, minute by minute. */
function fallFromFull(pattern: readonly DrawPeriod[], wellYield: number): number {
  let gone = 0;
  let most = 0;
  for (let pass = 0; pass < 4; pass++) {
    for (const { duration, draw } of pattern) {
      for (let minute = 0; minute < Math.round(duration / 60); minute++) {
        gone = Math.max(0, gone + 60 * (draw - wellYield));
        most = Math.max(most, gone);
      }
    }
  }
  return most;
}

const withYields = fc.tuple(patterns, fc.double({ min: 1.001, max: 3, noNaN: true }));

test("the storage is how far a tank falls from full", () => {
  fc.assert(
    fc.property(withYields, ([pattern, more]) => {
      const wellYield = (mean(pattern) * more + 1e-9) as VolumeFlow;
      const need = storageNeed({ pattern, wellYield });
      expect(need.state).toBe("enough");
      if (need.state === "enough") expect(need.storage).toBeCloseTo(fallFromFull(pattern, wellYield), 9);
    }),
  );
});

test("where the pattern starts does not matter", () => {
  fc.assert(
    fc.property(withYields, fc.nat(11), ([pattern, more], turn) => {
      const wellYield = (mean(pattern) * more + 1e-9) as VolumeFlow;
      const at = turn % pattern.length;
      const turned = [...pattern.slice(at), ...pattern.slice(0, at)];
      const [a, b] = [storageNeed({ pattern, wellYield }), storageNeed({ pattern: turned, wellYield })];
      if (a.state !== "enough" || b.state !== "enough") throw new Error("too weak");
      expect(b.storage).toBeCloseTo(a.storage, 9);
      expect(b.refillTime / 60).toBeCloseTo(a.refillTime / 60, 3);
    }),
  );
});

test("more yield never needs more storage", () => {
  fc.assert(
    fc.property(withYields, ([pattern, more]) => {
      const wellYield = (mean(pattern) * more + 1e-9) as VolumeFlow;
      const need = storageNeed({ pattern, wellYield });
      const better = storageNeed({ pattern, wellYield: (wellYield * 1.1) as VolumeFlow });
      if (need.state !== "enough" || better.state !== "enough") throw new Error("too weak");
      expect(better.storage).toBeLessThanOrEqual(need.storage + 1e-12);
    }),
  );
});

test("a well just as strong as the mean draw does, and a weaker one is told what it needs", () => {
  const pattern = [
    { duration: hours(6), draw: gpm(4) },
    { duration: hours(18), draw: gpm(0) },
  ];
  const just = storageNeed({ pattern, wellYield: gpm(1) });
  expect(just.state).toBe("enough");
  if (just.state === "enough") {
    expect(inUsGallons(just.storage)).toBeCloseTo(3 * 360, 6);
    expect(just.wellUse).toBeCloseTo(1, 12);
    expect(just.refillTime).toBeCloseTo(hours(18), 3);
    expect(just.lowestAt).toBe(hours(6));
  }
  const weak = storageNeed({ pattern, wellYield: gpm(0.9) });
  expect(weak.state).toBe("well too weak");
  if (weak.state === "well too weak") {
    expect(weak.neededYield).toBeCloseTo(gpm(1), 12);
    expect(inUsGallons(weak.short)).toBeCloseTo(144, 6);
  }
});

test("a well stronger than every draw needs no storage, and refill takes the storage over what is spare", () => {
  const pattern = [
    { duration: hours(2), draw: gpm(8) },
    { duration: hours(22), draw: gpm(0.5) },
  ];
  expect(storageNeed({ pattern, wellYield: gpm(9) })).toMatchObject({ storage: 0, refillTime: 0 });
  const need = storageNeed({ pattern, wellYield: gpm(3) });
  if (need.state !== "enough") throw new Error("too weak");
  expect(need.storage).toBeCloseTo(usGallons(600), 9);
  expect(need.refillTime).toBeCloseTo(usGallons(600) / gpm(2.5), 3);
});

describe("by hand, with a well of 1 gpm", () => {
  test.each<[title: string, pattern: [hours: number, gpm: number][], gallons: number, lowest: number, refill: number]>([
    // 2 h at 3 gpm leave 240 gal gone, a quarter of an hour 30 more; an hour of rest between gives 60 back.
    [
      "a refill that is broken off is timed from the lowest point",
      [
        [2, 3],
        [1, 0],
        [0.25, 3],
        [20, 0],
      ],
      240,
      2,
      1 + 0.25 + 3.5,
    ],
    [
      "a later low that is lower counts",
      [
        [2, 3],
        [1, 0],
        [1, 3],
        [20, 0],
      ],
      300,
      4,
      5,
    ],
    [
      "a draw of just what the well gives leaves it as low, and counts in the refill",
      [
        [2, 3],
        [1, 1],
        [20, 0],
      ],
      240,
      2,
      1 + 4,
    ],
    [
      "of two lows alike the first is told",
      [
        [2, 3],
        [6, 0],
        [2, 3],
        [14, 0],
      ],
      240,
      2,
      4,
    ],
    [
      "of two refills the longer",
      [
        [1, 3],
        [6, 0],
        [2, 3],
        [15, 0],
      ],
      240,
      9,
      4,
    ],
  ])("%s", (_, periods, gallons, lowest, refill) => {
    const pattern = periods.map(([time, draw]) => ({ duration: hours(time), draw: gpm(draw) }));
    const need = storageNeed({ pattern, wellYield: gpm(1) });
    if (need.state !== "enough") throw new Error("too weak");
    expect(inUsGallons(need.storage)).toBeCloseTo(gallons, 9);
    expect(need.lowestAt).toBeCloseTo(hours(lowest), 6);
    expect(need.refillTime).toBeCloseTo(hours(refill), 6);
  });
});
