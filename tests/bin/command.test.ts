/** The command: its arguments, what it prints where, and its exit status. */
import { readFileSync } from "node:fs";
import { planSystem, readJobText, reportOf } from "risingmain/plan";
import { describe, expect, test } from "vitest";
import { command } from "../../src/bin/command.ts";

const FILE = "docs/jobs/ranch.json";
const job = (): string => readFileSync(new URL(`../../${FILE}`, import.meta.url), "utf8");

/** Runs the command where the only files are those given; `-` stands for standard input. */
function run(args: readonly string[], files: Readonly<Record<string, string>> = { [FILE]: job() }) {
  let printed = "";
  const complaints: string[] = [];
  const status = command(args, {
    read: (file) => files[file] ?? refuse("ENOENT", `ENOENT: no such file or directory, open '${file}'`),
    print: (text) => {
      printed += text;
    },
    complain: (line) => complaints.push(line),
  });
  return { status, printed, complaints };
}

function refuse(code: string, message: string): never {
  throw Object.assign(new Error(message), { code });
}

describe("a job", () => {
  const plan = () => planSystem(readJobText(job()));

  test("is printed as the report of its plan", () => {
    expect(run([FILE])).toEqual({ status: 0, printed: reportOf(plan(), { units: "us" }), complaints: [] });
  });

  test("may be asked for in other units than its own", () => {
    expect(run(["--units", "metric", FILE]).printed).toBe(reportOf(plan(), { units: "metric" }));
    expect(run(["--units", "us", FILE]).printed).toBe(reportOf(plan(), { units: "us" }));
  });

  test("is reported in the units it asks for itself, unless told otherwise", () => {
    const metric = JSON.stringify({ ...JSON.parse(job()), reportUnits: "metric" });
    const files = { [FILE]: metric };
    expect(run([FILE], files).printed).toBe(run(["--units", "metric", FILE], files).printed);
    expect(run(["--units", "us", FILE], files).printed).not.toBe(run([FILE], files).printed);
  });

  test("comes as the whole plan in JSON", () => {
    const { status, printed } = run(["--json", FILE]);
    expect(status).toBe(0);
    expect(JSON.parse(printed)).toEqual(JSON.parse(JSON.stringify(plan())));
    expect(printed.endsWith("}\n")).toBe(true);
  });

  test("may come by standard input", () => {
    expect(run(["-"], { "-": job() })).toEqual(run([FILE]));
  });

  test("named last is the one planned", () => {
    expect(run(["default.json", FILE])).toEqual(run([FILE]));
  });
});

test("help is no error; no job is one, and prints the same", () => {
  for (const flag of ["--help", "-h"]) {
    const { status, printed, complaints } = run([flag]);
    expect([status, complaints]).toEqual([0, []]);
    expect(printed).toMatch(/^usage: risingmain .*JOB\.json/);
    expect(run([])).toEqual({ status: 1, printed, complaints: [] });
  }
  expect(run(["--help", FILE]).printed).toBe(run(["--help"]).printed);
});

describe("what is wrong is said, one fault a line, and nothing is printed", () => {
  test.each([
    ["an unknown option", ["--metric", FILE], /--metric/],
    ["units it does not know", ["--units", "imperial", FILE], /^--units: expected us or metric, got imperial$/],
    ["no such file", ["none.json"], /^none\.json: no such file$/],
  ])("%s", (_, args, complaint) => {
    const { status, printed, complaints } = run(args);
    expect([status, printed, complaints.length]).toEqual([1, "", 1]);
    expect(complaints[0]).toMatch(complaint);
  });

  test("a refusal it has no words for is passed on", () => {
    const complaints: string[] = [];
    const status = command(["a.json"], {
      read: () => refuse("EIO", "the disk hums"),
      print: () => expect.unreachable(),
      complain: (line) => complaints.push(line),
    });
    expect([status, complaints]).toEqual([1, ["a.json: the disk hums"]]);
  });

  test("two faults of a job", () => {
    const { status, printed, complaints } = run(["a.json"], { "a.json": '{ "title": 1 }' });
    expect([status, printed]).toEqual([1, ""]);
    expect(complaints.length).toBeGreaterThan(1);
    expect(complaints.every((line) => line !== "" && !line.includes("\n"))).toBe(true);
  });
});
