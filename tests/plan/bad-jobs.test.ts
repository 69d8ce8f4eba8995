/**
 * Job files with one fault each: the message names the place, what was read, and what a plumber should write instead. What
 * contradicts the rest of a job is in the tests of its limits.
 */
import { type JobError, planSystem, readJob, readJobText } from "risingmain/plan";
import { describe, expect, test } from "vitest";
import { ranch } from "./jobs.ts";

function issuesOf(document: unknown): readonly string[] {
  try {
    readJob(document);
  } catch (error) {
    expect((error as Error).name).toBe("InputError");
    return (error as JobError).lines;
  }
  return [];
}

const point = (flow: string, head: string) => ({ flow, head });

const FAULTS: readonly (readonly [kind: string, path: string, value: unknown, message: RegExp])[] = [
  ["a length without a unit", "well.depth", "240", /^well\.depth: .*the unit is missing.*got "?240/],
  ["a bare number", "well.depth", 240, /^well\.depth: .*as text such as "240 ft".*got 240/],
  ["a flow where a length belongs", "well.depth", "18 gpm", /^well\.depth: .*"gpm" is not one of .*ft/],
  ["an absolute pressure for a gauge", "controls.cutIn", "50 psia", /^controls\.cutIn: .*"psia" is not one of .*psi/],
  ["a decimal comma", "runs[0].length", "12,5 m", /^runs\[0\]\.length: .*such as/],
  [
    "a negative depth",
    "well.depth",
    "-312 ft",
    /^well\.depth: .*depth of the hole from 3\.281 ft to 6,562 ft \(1 to 2000 m\), got -312 ft/,
  ],
  ["a missing field", "well.staticLevel", undefined, /^well\.staticLevel: .*\(missing\)/],
  ["an unknown field", "well.colour", "blue", /^well\.colour: .*a known field of the well: casingInsideDiameter/],
  ["a misspelt field", "controls.cutin", "50 psi", /^controls\.cutin: .*a known field of the controls: cutIn/],
  ["no outlets", "outlets", [], /^outlets: .*at least 1/],
  ["a text for a list", "outlets", "house", /^outlets: .*a list/],
  ["null for an object", "well", null, /^well: .*an object/],
  [
    "a huge number",
    "runs[0].length",
    "1e30 ft",
    /^runs\[0\]\.length: .*to 164,000 ft \(0\.01 to 50000 m\), got 1e30 ft/,
  ],
  ["infinity", "runs[0].length", "1e999 ft", /^runs\[0\]\.length: .*finite/],
  ["NaN", "tank.volume", "NaN gal", /^tank\.volume: .*a volume such as "5 gal"/],
  ["an efficiency of 85", "pump.candidates[0].curve[1].efficiency", "85", /efficiency: .*from 0 % to 100 %.*got 85/],
  ["an empty curve", "pump.candidates[0].curve", [], /^pump\.candidates\[0\]\.curve: .*at least 3/],
  [
    "a curve out of order",
    "pump.candidates[0].curve",
    [point("5 gpm", "300 ft"), point("0 gpm", "310 ft"), point("9 gpm", "200 ft")],
    /curve\[1\]\.flow: .*above that of the point before/,
  ],
  [
    "an unknown phase",
    "power.sources[0].phase",
    "two-phase",
    /^power\.sources\[0\]\.phase: .*"single-phase", "three-phase"/,
  ],
  ["another version", "version", 2, /^version: .*1, the form of the document/],
  ["an empty name", "name", "  ", /^name: .*not empty/],
];

describe("a job file", () => {
  test("without a fault is read", () => {
    expect(issuesOf(ranch())).toEqual([]);
  });

  test.each(FAULTS)("with %s", (_, path, value, message) => {
    const lines = issuesOf(ranch({ [path]: value }));
    expect(lines.join("\n")).toMatch(new RegExp(message.source, "m"));
    for (const line of lines) expect(line).not.toContain("\n");
  });

  test("with several faults has them all listed", () => {
    const document = ranch({ "well.depth": "240" }) as { controls: Record<string, unknown>; name: unknown };
    document.controls["cutIn"] = "50 ft";
    document.name = 7;
    expect(issuesOf(document)).toHaveLength(3);
  });

  test("that is no JSON says where it breaks", () => {
    expect(() => readJobText('{ "version": 1, }')).toThrow(/^text: expected JSON \(.*position|line/);
  });

  test("with a byte-order mark is read", () => {
    expect(readJobText(`\uFEFF${JSON.stringify(ranch())}`).name).toBe("Three Larks Ranch");
  });
});

test("typed data is checked like a document", () => {
  const job = readJob(ranch());
  expect(() => planSystem({ ...job, well: { ...job.well, depth: Number.NaN as never } })).toThrow(
    /^well\.depth: .*from 1 to 2000 m/,
  );
  expect(() => planSystem({ ...job, surprise: 1 } as never)).toThrow(/surprise/);
});
