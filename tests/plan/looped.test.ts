/** The demo with a loop in its yard lines: the same plan, by the network solver's loops. */
import { readFileSync } from "node:fs";
import { planSystem, readJobText } from "risingmain/plan";
import { expect, test } from "vitest";

const plan = (file: string) =>
  planSystem(readJobText(readFileSync(new URL(`../../docs/jobs/${file}`, import.meta.url), "utf8")));
const looped = plan("ranch-looped.json").stages.layout;
const branched = plan("ranch.json").stages.layout;

test("least pipe is proven for the tree; the loop is sized step by step", () => {
  expect(branched.choice).toBe("least pipe");
  expect(looped.choice).toBe("step by step");
});

test("every outlet of the looped layout has what it wants while the pump runs", () => {
  for (const { outlets } of looped.uses)
    for (const { pressureHeld, wanted } of outlets) expect(pressureHeld).toBeGreaterThanOrEqual(wanted);
});

test("water reaches the trough from both sides", () => {
  const runs = looped.runs.filter(({ to }) => to === "north trough");
  expect(runs).toHaveLength(2);
  for (const { flow } of runs) expect(flow).toBeGreaterThan(0);
});
