/** What a run counts: by division as one by one, and in bins that begin at the beginning. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { Tally } from "../../src/system/tally.ts";

const HOUR = 3600;
const DAY = 86_400;
const plant = { pressure: 3e5, depth: () => 40 };

/** All that a tally says. */
const told = (tally: Tally) => ({
  starts: tally.starts,
  inAnHour: tally.mostStartsInAnHour,
  inADay: tally.mostStartsInADay,
  byDay: [...tally.startsByDay],
  shortestCycle: tally.shortestCycle,
  shortestRun: tally.shortestRun,
});

test("cycles alike are counted by division as one by one, and the next start after them is timed from the last", () => {
  const whole = (min: number, max: number) => fc.integer({ min, max });
  fc.assert(
    fc.property(
      fc.array(whole(0, 2 * DAY), { maxLength: 3 }),
      // Whole seconds, among them such as fall on the hour.
      fc.oneof(whole(1, 40), fc.constantFrom(600, 900, 1200, 1800, 3600, 7200, 21_600, 43_200, 100_000)),
      whole(1, 400),
      whole(0, 5),
      (before, period, count, days) => {
        const [each, divided] = [new Tally(0, days), new Tally(0, days)];
        let time = 0;
        for (const wait of before) {
          time += wait;
          for (const tally of [each, divided]) tally.start(time);
        }
        for (const tally of [each, divided]) tally.start(time);
        for (let i = 1; i <= count; i++) each.start(time + i * period);
        divided.cycles(time, period, count);
        expect(told(divided)).toEqual(told(each));
        expect(divided.eventCount).toBe(2 * count);
        // What follows counts on from there.
        const later = time + count * period + 7;
        for (const tally of [each, divided]) {
          tally.start(later);
          tally.stop(later + 3);
        }
        expect(told(divided)).toEqual(told(each));
      },
    ),
    { numRuns: 300 },
  );
});

test("an hour and a day begin with the run, and the busiest of each is kept", () => {
  const tally = new Tally(0, 2);
  // Two in the first hour, its last second among them; three in the second from its first on; one on the third day.
  for (const time of [0, HOUR - 1, HOUR, HOUR + 1, 2 * HOUR - 1, 2 * DAY]) tally.start(time);
  expect(told(tally)).toMatchObject({ starts: 6, inAnHour: 3, inADay: 5, shortestCycle: 1 });
  // Days beyond those asked for are not kept; a quiet day between is a nought.
  expect(tally.startsByDay).toEqual([5]);
  const third = new Tally(0, 3);
  third.start(2 * DAY);
  expect(third.startsByDay).toEqual([0, 0, 1]);
});

test("a run is timed from its start, if that was seen", () => {
  const tally = new Tally(0, 0);
  tally.stop(50);
  expect(tally.shortestRun).toBe(Number.POSITIVE_INFINITY);
  tally.start(100);
  tally.stop(160);
  tally.start(200);
  tally.stop(290);
  expect([tally.shortestRun, tally.shortestCycle]).toEqual([60, 100]);
});

test("events are kept up to the number asked for, and counted beyond", () => {
  const tally = new Tally(2, 0);
  for (const [time, full] of [
    [1, false],
    [2, false],
    [3, true],
  ] as const) {
    expect(tally.full).toBe(full);
    tally.event(time, "pump starts", plant);
  }
  expect(tally.events).toEqual([1, 2].map((time) => ({ time, kind: "pump starts", pressure: 3e5, depth: 40 })));
  expect(tally.eventCount).toBe(3);
});
