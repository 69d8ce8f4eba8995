/** The findings of circuit, sources and generator a hair to either side of their limits. */
import { conductorGeometry, parseConductorSize } from "risingmain/conductor";
import { type Finding, type Job, type PowerStage, readJob, type SourcePlan } from "risingmain/plan";
import { describe, expect, test } from "vitest";
import { powerFindings } from "../../src/plan/power-findings.ts";
import { having, planOf, ranch } from "./jobs.ts";
import { codesOf, holds } from "./limits.ts";

interface Powered {
  readonly job: Job;
  readonly stage: PowerStage;
  readonly found: (changes: { readonly [K in keyof PowerStage]?: unknown }, of?: Job) => readonly Finding[];
  /** Findings of the generator alone, changed. */
  readonly of: (changes: { readonly [K in keyof SourcePlan]?: unknown }) => readonly Finding[];
}

/** The ranch's power, with its motor of 2 hp and 230 V. */
function powered(): Powered {
  const job = readJob(ranch());
  const stage = planOf(ranch()).stages.power ?? expect.unreachable("no power");
  const motor = job.pump?.candidates?.[1]?.motor ?? expect.unreachable("no motor");
  const [generator] = stage.sources;
  if (generator === undefined) return expect.unreachable("no source");
  const found: Powered["found"] = (changes, of = job) => powerFindings(of, motor, having(stage, changes));
  return { job, stage, found, of: (changes) => found({ cables: [], sources: [having(generator, changes)] }) };
}

const NFPA = { basis: "published", source: "nfpa-70" } as const;
const NEMA = { basis: "published", source: "nema-mg-1", subject: "generator" } as const;

describe("a hair to either side of the limit of", () => {
  test("the cables", () => {
    const { found } = powered();
    const free = readJob(ranch({ "power.mostVoltageDrop": undefined }));
    const strict = readJob(ranch({ "power.mostVoltageDrop": "3 %" }));
    const drop = (of: Job) => (dropShare: number) => found({ dropShare }, of);
    const base = { code: "voltage-drop", wrong: "above", severity: "fix" } as const;
    holds({ ...base, ...NFPA, found: drop(free), limit: 0.05 });
    holds({ ...base, basis: "given", found: drop(strict), limit: 0.03 });
    // NEC table 310.16, 60 °C, from memory: 10 AWG copper carries 30 A, aluminium 25 A.
    for (const [material, carries] of [
      ["copper", 30],
      ["aluminium", 25],
    ] as const) {
      const cables = [{ name: "long one", size: "10 AWG", material }];
      const said = (conductorAmpacity: number) =>
        found({ cables, conductorAmpacity }).filter(({ code }) => code === "ampacity");
      expect(said(carries)).toEqual([]);
      expect(said(carries + 1e-6)).toMatchObject([
        {
          severity: "stop",
          subject: "long one",
          value: { value: carries },
          basis: { kind: "published", source: "nfpa-70" },
        },
      ]);
    }
  });

  test("breaker and grounding conductor", () => {
    const { found, job } = powered();
    const breaker = (rating: number) =>
      found(
        { fullLoadCurrent: 12, highestBreaker: 30 },
        having(job, { power: having(job.power, { breaker: rating }) }),
      );
    holds({ ...NFPA, code: "breaker-too-large", found: breaker, limit: 30, wrong: "above", severity: "stop" });
    holds({ code: "breaker-too-small", found: breaker, limit: 12, wrong: "below", severity: "fix", basis: "derived" });
    const grounding = (groundingSize: string) =>
      found({ groundingSize: "10 AWG" }, having(job, { power: having(job.power, { groundingSize }) })).filter(
        ({ code }) => code === "grounding-too-thin",
      );
    const area = (size: string) => conductorGeometry(parseConductorSize(size)).area;
    expect(grounding("12 AWG")).toMatchObject([
      {
        severity: "stop",
        value: { kind: "conductorArea", value: area("12 AWG") },
        limit: { kind: "conductorArea", value: area("10 AWG") },
        basis: { kind: "published", source: "nfpa-70" },
      },
    ]);
    expect(["10 AWG", "8 AWG"].map(grounding)).toEqual([[], []]);
    // A job that says neither is asked neither.
    expect(codesOf(found({ highestBreaker: 0, fullLoadCurrent: 1e4, groundingSize: "4/0 AWG" }))).toEqual(
      codesOf(found({})),
    );
  });

  test("a source's voltage", () => {
    const { of } = powered();
    const stop = { ...NEMA, severity: "stop" } as const;
    const voltage = (value: number) => of({ voltage: value });
    holds({ ...stop, code: "source-voltage-low", found: voltage, limit: 0.9 * 230, wrong: "below" });
    holds({ ...stop, code: "source-voltage-high", found: voltage, limit: 1.1 * 230, wrong: "above" });
    // What follows from a wrong voltage would only confuse.
    expect(codesOf(of({ voltage: 120, runningVoltage: 1, startingVoltage: 1 }))).toEqual(["source-voltage-low"]);
    expect(codesOf(of({ voltage: 480, runningVoltage: 1, startingVoltage: 1 }))).toEqual(["source-voltage-high"]);
    holds({
      ...NEMA,
      code: "motor-voltage-low",
      found: (runningVoltage) => of({ runningVoltage }),
      limit: 0.9 * 230,
      wrong: "below",
      severity: "fix",
    });
    const starting = (startingVoltage: number) => of({ voltage: 240, startingVoltage });
    holds({
      code: "starting-drop",
      found: starting,
      limit: 0.85 * 240,
      wrong: "below",
      severity: "look",
      basis: "common practice",
      subject: "generator",
    });
    // Under 65 % of its own voltage a motor does not start.
    const severity = (volts: number) => starting(volts).find(({ code }) => code === "starting-drop")?.severity;
    expect(severity(0.65 * 230 + 0.001)).toBe("look");
    expect(severity(0.65 * 230 - 0.001)).toBe("stop");
  });

  test("a source's phases", () => {
    const { of, found, job, stage } = powered();
    const wrong = of({ phase: "three-phase", voltage: 120 });
    expect(wrong).toMatchObject([
      {
        code: "wrong-phase",
        severity: "stop",
        subject: "generator",
        value: { value: 3 },
        limit: { value: 1 },
        basis: { kind: "given" },
      },
    ]);
    const three = having(job.pump?.candidates?.[1]?.motor ?? expect.unreachable(), { phase: "three-phase" });
    const [generator] = stage.sources;
    expect(
      powerFindings(job, three, { ...stage, cables: [], sources: generator === undefined ? [] : [generator] }),
    ).toMatchObject([{ code: "wrong-phase", value: { value: 1 }, limit: { value: 3 } }]);
    // Each source is asked; the utility beside the generator stands.
    expect(found({ sources: [] }).filter(({ subject }) => subject === "generator")).toEqual([]);
  });

  test("a receptacle", () => {
    const { of, stage } = powered();
    const checked = stage.sources[0]?.generator;
    if (checked == null || !("margins" in checked)) return expect.unreachable("no check");
    const with_ = (receptacle: string | null, state: string | undefined) =>
      of({
        receptacle,
        generator: having(checked, {
          receptacle: state === undefined ? undefined : having(checked.receptacle ?? {}, { state } as never),
        }),
      }).filter(({ code }) => code === "receptacle-voltage");
    // NEMA 5-20 is made for 125 V.
    expect(with_("5-20", "voltage too high")).toMatchObject([
      {
        severity: "stop",
        subject: "generator",
        value: { kind: "voltage", value: 240 },
        limit: { kind: "voltage", value: 125 },
        basis: { kind: "published", source: "nema-wd-6" },
      },
    ]);
    expect(with_("5-20", "within limit")).toEqual([]);
    expect(with_(null, undefined)).toEqual([]);
    expect(with_(null, "voltage too high")[0]?.limit.value).toBe(0);
    expect(of({ generator: null }).filter(({ code }) => /receptacle|generator/.test(code))).toEqual([]);
  });
});

describe("a generator", () => {
  const CHECKS = [
    ["starting power", "generator-starting-power", "power", "stop"],
    ["starting apparent power", "generator-starting-current", "apparentPower", "stop"],
    ["voltage dip", "generator-dip", "ratio", "stop"],
    ["starting voltage", "generator-starting-voltage", "ratio", "stop"],
    ["running power", "generator-running-power", "power", "fix"],
    ["running apparent power", "generator-running-current", "apparentPower", "fix"],
    ["running voltage", "generator-running-voltage", "ratio", "fix"],
    ["receptacle", "receptacle-current", "current", "fix"],
  ] as const;

  test("fails by each of its margins below nothing, and is in order only where it starts and runs", () => {
    const { of, stage } = powered();
    const checked = stage.sources[0]?.generator;
    if (checked == null || !("margins" in checked)) return expect.unreachable("no check");
    const [first] = checked.margins;
    if (first === undefined) return expect.unreachable("no margin");
    const margins = (margin: number) => CHECKS.map(([check]) => ({ ...first, check, value: 7, limit: 5, margin }));
    const said = (margin: number, state: string) =>
      of({ generator: having(checked, { margins: margins(margin), state, tightest: margins(1)[7] }) });
    const failed = said(-1e-9, "does not start");
    expect(failed.map(({ code, severity, value, limit }) => [code, severity, value, limit])).toEqual(
      CHECKS.map(([, code, kind, severity]) => [code, severity, { kind, value: 7 }, { kind, value: 5 }]),
    );
    for (const { subject, stage: where, basis, message, remedy } of failed) {
      expect([subject, where, basis.kind]).toEqual(["generator", "power", "common practice"]);
      expect(message).toMatch(/\.$/);
      expect(remedy).toMatch(/\.$/);
    }
    expect(new Set(failed.map(({ remedy }) => remedy)).size).toBe(2);
    expect(failed.find(({ code }) => code === "receptacle-current")?.remedy).toMatch(/receptacle/);
    expect(said(0, "does not start")).toEqual([]);
    expect(said(0, "starts and runs")).toMatchObject([
      {
        code: "generator-starts-and-runs",
        severity: "good",
        stage: "power",
        subject: "generator",
        value: { kind: "current", value: 7 },
        limit: { kind: "current", value: 5 },
        basis: { kind: "common practice" },
        remedy: "",
      },
    ]);
    expect(said(0, "starts and runs")[0]?.message).toContain("the receptacle.");
  });

  test("of the wrong kind has no margins to say", () => {
    const { of } = powered();
    expect(codesOf(of({ generator: { state: "wrong voltage", needed: "230 V", available: "240 V" } }))).toEqual([]);
  });
});
