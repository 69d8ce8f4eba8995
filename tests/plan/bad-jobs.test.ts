/** Job files with one fault each: the message names the place, what was read, and what a plumber should write instead. */
import { readFileSync } from "node:fs";
import { type JobError, planSystem, readJob, readJobText } from "risingmain/plan";
import { describe, expect, test } from "vitest";

const ranch = (): Record<string, unknown> =>
  JSON.parse(readFileSync(new URL("../../docs/jobs/ranch.json", import.meta.url), "utf8")) as Record<string, unknown>;

/** The demo with one part replaced; `undefined` takes the part out. */
function changed(path: string, value: unknown): unknown {
  const document = ranch();
  const keys = path.split(/[.[\]]+/).filter((key) => key !== "");
  const last = keys.pop() as string;
  const parent = keys.reduce<Record<string, unknown>>((node, key) => node[key] as Record<string, unknown>, document);
  if (value === undefined) delete parent[last];
  else parent[last] = value;
  return document;
}

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
  ["a pump below the bottom", "pump.setting", "330 ft", /^pump\.setting: .*above the bottom of the hole at 312 ft/],
  ["casing deeper than the hole", "well.casingDepth", "400 ft", /^well\.casingDepth: .*above the bottom of the hole/],
  [
    "a pumping level above the water at rest",
    "well.test[0].pumpingLevel",
    "60 ft",
    /^well\.test\[0\]\.pumpingLevel: .*below the water at rest/,
  ],
  ["cut-in above cut-out", "controls.cutIn", "80 psi", /^controls\.cutOut: .*above the cut-in, 80 psi/],
  ["an empty curve", "pump.candidates[0].curve", [], /^pump\.candidates\[0\]\.curve: .*at least 3/],
  [
    "a rising curve",
    "pump.candidates[0].curve",
    [point("0 gpm", "300 ft"), point("5 gpm", "310 ft"), point("9 gpm", "200 ft")],
    /curve\[1\]\.head: .*below that of the point before, 300 ft/,
  ],
  [
    "a curve out of order",
    "pump.candidates[0].curve",
    [point("5 gpm", "300 ft"), point("0 gpm", "310 ft"), point("9 gpm", "200 ft")],
    /curve\[1\]\.flow: .*above that of the point before/,
  ],
  ["a pump wider than the casing", "pump.candidates[0].diameter", "8 in", /diameter: .*goes down the casing/],
  ["an unknown pipe", "dropPipe.pipe", "1-1/2 in bamboo", /^dropPipe\.pipe: /],
  ["an unknown family of pipe", "pipeChoice.family", "bamboo", /^pipeChoice\.family: .*a family of pipe such as/],
  ["a duplicate outlet", "outlets[1].name", "house", /^outlets\[1\]\.name: .*not used before/],
  ["an outlet at no place", "outlets[0].at", "moon", /^outlets\[0\]\.at: .*a place of the job: "wellhead", "house"/],
  ["an outlet nothing leads to", "runs[0].to", "barn", /^outlets\[0\]\.at: .*runs of pipe join to the wellhead/],
  ["a run to itself", "runs[0].to", "wellhead", /^runs\[0\]\.to: .*another place/],
  ["a use of an unknown outlet", "uses[0].outlets[0]", "pool", /^uses\[0\]\.outlets\[0\]: .*an outlet of the job/],
  ["an unknown animal", "demand.livestock[0].kind", "dragon", /^demand\.livestock\[0\]\.kind: .*one of/],
  [
    "a generator without its power",
    "power.sources[0].runningPower",
    undefined,
    /^power\.sources\[0\]\.runningPower: .*from its plate/,
  ],
  [
    "a surge below the running power",
    "power.sources[0].surgePower",
    "500 W",
    /^power\.sources\[0\]\.surgePower: .*at least the running power/,
  ],
  [
    "an unknown phase",
    "power.sources[0].phase",
    "two-phase",
    /^power\.sources\[0\]\.phase: .*"single-phase", "three-phase"/,
  ],
  ["an unknown conductor size", "power.circuit[0].size", "77 AWG", /^power\.circuit\[0\]\.size: /],
  ["another version", "version", 2, /^version: .*1, the form of the document/],
  ["an empty name", "name", "  ", /^name: .*not empty/],
  [
    "half a valve",
    "controls.regulatingValve.ratedFlow",
    undefined,
    /^controls\.regulatingValve\.ratedFlow: .*both or neither/,
  ],
];

describe("a job file", () => {
  test("without a fault is read", () => {
    expect(issuesOf(ranch())).toEqual([]);
  });

  test.each(FAULTS)("with %s", (_, path, value, message) => {
    const lines = issuesOf(changed(path, value));
    expect(lines.join("\n")).toMatch(new RegExp(message.source, "m"));
    for (const line of lines) expect(line).not.toContain("\n");
  });

  test("with several faults has them all listed", () => {
    const document = changed("well.depth", "240") as { controls: Record<string, unknown>; name: unknown };
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
