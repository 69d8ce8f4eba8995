/** What the stages make together: findings of all of them, gravest first, and the citations of a plan. */
import { citationsOf, reportOf } from "risingmain/plan";
import { bibliography } from "risingmain/sources";
import { expect, test } from "vitest";
import { cabin, planOf, ranch } from "./jobs.ts";

test("every stage brings its findings, gravest first and then in the order of the work", () => {
  const { findings } = planOf(
    ranch({
      "well.yield": "10 gpm",
      "outlets[2].pressure": "60 psi",
      "dropPipe.checkValves": 0,
      "controls.dryRunCutOff": false,
      "tank.precharge": "35 psi",
      "tank.mostStartsPerDay": 2,
      "power.breaker": "60 A",
    }),
  );
  const order = ["demand", "well", "layout", "pump", "dropPipe", "controls", "tank", "day", "power"];
  expect(new Set(findings.map(({ stage }) => stage))).toEqual(new Set(order));
  const ranks = findings.map(({ severity, stage }) => [
    ["stop", "fix", "look", "good"].indexOf(severity),
    order.indexOf(stage),
  ]);
  expect(new Set(ranks.map(([grave]) => grave)).size).toBeGreaterThanOrEqual(3);
  expect(ranks).toEqual([...ranks].sort(([a = 0, b = 0], [c = 0, d = 0]) => a - c || b - d));
});

test("the well is judged at the pump's most flow, where that is more than the uses take", () => {
  // 15 gpm at once; pump B gives some 19 at cut-in.
  const codes = (flow: string) =>
    planOf(ranch({ "well.test[0].flow": flow, "well.yield": "30 gpm" })).findings.map(({ code }) => code);
  expect(codes("16 gpm")).toContain("flow-beyond-test");
  expect(codes("22 gpm")).not.toContain("flow-beyond-test");
  const bare = planOf(ranch({ pump: undefined, "well.test[0].flow": "14 gpm" }));
  expect(bare.findings.find(({ code }) => code === "flow-beyond-test")?.value.value).toBe(
    bare.stages.demand.designFlow,
  );
});

test("whatever a job leaves out, each finding is whole", () => {
  const bare = [0, 4, 8, 12].map((q, i) => ({ flow: `${q} gpm`, head: `${[250, 238, 196, 118][i]} ft` }));
  for (const document of [
    cabin({ tank: undefined }),
    cabin({ "pump.candidates[0].curve": bare, "controls.dryRunCutOff": undefined }),
    cabin({ pump: undefined, demand: undefined, tank: undefined }),
    cabin({ "tank.maximumPressure": undefined, pipeChoice: { family: "steel SCH 40" } }),
    ranch({ "controls.regulatingValve": undefined, "controls.reliefPressure": undefined }),
  ])
    for (const { code, value, limit, basis } of planOf(document).findings) {
      expect(code).toMatch(/^[a-z]+(-[a-z]+)+$/);
      expect([typeof value.value, typeof limit.value, typeof basis.kind]).toEqual(["number", "number", "string"]);
    }
});

test("a plan says its form and its name", () => {
  expect(planOf(cabin())).toMatchObject({ version: 1, name: "Alder Spring cabin" });
});

test("what is no plan is refused by the part that is not there", () => {
  const plan = planOf(cabin());
  const { layout: _, ...others } = plan.stages;
  for (const [changes, path] of [
    [{ version: 2 }, /^plan\.version: expected 1/],
    [{ name: 7 }, /^plan\.name: expected a text/],
    [{ stages: null }, /^plan\.stages/],
    [{ stages: others }, /^plan\.stages\.layout/],
    [{ findings: null }, /^plan\.findings/],
    [{ commissioning: {} }, /^plan\.commissioning/],
    [{ cautions: "none" }, /^plan\.cautions/],
    // Further down it shows when the reader trips over it.
    [
      { stages: { ...plan.stages, pump: { ...plan.stages.pump, duty: undefined } } },
      /^plan: expected a whole plan, as planSystem made it \(/,
    ],
  ] as const) {
    const spoiled = { ...plan, ...changes } as never;
    expect(() => reportOf(spoiled)).toThrow(path);
  }
  expect(() => reportOf(null as never)).toThrow(/^plan: /);
  expect(() => reportOf(7 as never)).toThrow(/^plan: /);
});

test("a plan cites each source its parts name, in the order of the bibliography, and a finding its own", () => {
  const plan = planOf(ranch());
  const cited = citationsOf(plan).map(({ id }) => id);
  const known = bibliography().map(({ id }) => id);
  const named = new Set<string>(["iapws-sr6-08", "colebrook-1939", "iso-9906"]);
  JSON.stringify(plan, (key, value) => {
    if (["method", "source", "basis"].includes(key) && known.includes(value)) named.add(value);
    return value;
  });
  expect(cited).toEqual(known.filter((id) => named.has(id)));
  expect(cited).toEqual(expect.arrayContaining(["nfpa-70", "water-systems-council-2007", "nema-wd-6"]));
  for (const finding of plan.findings)
    expect(citationsOf(finding).map(({ id }) => id)).toEqual(
      finding.basis.source === undefined ? [] : [finding.basis.source],
    );
  expect(plan.findings.some(({ basis }) => basis.source !== undefined)).toBe(true);
  expect(() => citationsOf({} as never)).toThrow(/^cited\.basis/);
  expect(() => citationsOf(null as never)).toThrow(/^cited/);
  // A field that holds no text names no source; a plan is not read deeper than plans go.
  const deep = { ...plan, extra: { source: 7, basis: { kind: "x" } } } as never;
  expect(citationsOf(deep).map(({ id }) => id)).toEqual(cited);
  const round: Record<string, unknown> = { ...plan };
  round["again"] = round;
  expect(citationsOf(round as never).map(({ id }) => id)).toEqual(cited);
});
