/** The diagnosis: the blind test, its honesty about what cannot be told, and what it asks for next. */
import { readFileSync } from "node:fs";
import { diagnose } from "risingmain/field";
import { expect, test } from "vitest";
import { fitResiduals } from "../../src/field/fit-residuals.ts";
import { askedFor, askedTable, confusion, confusionTable, WELLS } from "./confusion.ts";
import { makeCase } from "./diagnosis-cases.ts";

const guide = readFileSync(new URL("../../docs/guides/diagnosis.md", import.meta.url), "utf8");

test("the guide prints the blind test as it comes out: twenty wells of each fault, made by physics of their own", () => {
  const result = confusion(WELLS);
  const [, printed = ""] = /<!-- blind test -->\n([\s\S]*?)\n<!-- end -->/.exec(guide) ?? [];
  expect(printed.trim()).toBe(confusionTable(result));
  expect(result.topOne / result.total).toBeGreaterThan(0.9);
  expect(result.topTwo / result.total).toBeGreaterThan(0.98);
}, 240_000);

test("from the sheet alone it may not tell; after the readings it asks for the right one is first", () => {
  const result = askedFor(WELLS);
  const [, printed = ""] = /<!-- asked for -->\n([\s\S]*?)\n<!-- end -->/.exec(guide) ?? [];
  expect(printed.trim()).toBe(askedTable(result));
  for (const { truth, after } of result.rows) expect(after / result.wells, truth).toBeGreaterThan(0.9);
}, 240_000);

function ranked(truth: Parameters<typeof makeCase>[0], seed: number, keep: (kind: string) => boolean = () => true) {
  const { plant, readings } = makeCase(truth, seed);
  return { plant, answer: diagnose({ plant, readings: readings.filter(({ kind }) => keep(kind)) }) };
}

test("weights add up to one, best first, and each residual is that of its own prediction", () => {
  const { answer } = ranked("leak in the drop pipe", 3);
  expect(answer.explanations.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  const weights = answer.explanations.map(({ weight }) => weight);
  expect([...weights].sort((a, b) => b - a)).toEqual(weights);
  for (const { residuals, misfit } of answer.explanations) {
    expect(residuals.reduce((sum, { inUncertainties }) => sum + inUncertainties ** 2, 0)).toBeCloseTo(misfit, 6);
  }
});

test("the fitted figure comes near the one that was made", () => {
  for (const seed of [1, 2, 3, 4]) {
    const { plant, answer } = ranked("low voltage", seed);
    const { readings } = makeCase("low voltage", seed);
    const voltage = readings.find(({ kind }) => kind === "voltage")?.value ?? 0;
    const [fitted] = answer.explanations[0]?.fitted ?? [];
    expect(answer.state).toBe("told");
    expect(Math.abs((fitted?.value ?? 0) - voltage / plant.voltage)).toBeLessThan(0.03);
  }
});

test("lost air and a low precharge read alike: it cannot tell till the precharge, set right, is read again", () => {
  const { plant, readings, take } = makeCase("lost tank air", 5);
  const answer = diagnose({ plant, readings });
  expect(answer.state).toBe("cannot tell");
  expect(
    answer.explanations
      .slice(0, 2)
      .map(({ cause }) => cause)
      .sort(),
  ).toEqual(["lost tank air", "wrong precharge"]);
  expect(answer.next?.kind).toBe("precharge fall");
  const later = diagnose({ plant, readings: [...readings, take({ kind: "precharge fall" })] });
  expect(later.state).toBe("told");
  expect(later.explanations[0]?.cause).toBe("lost tank air");
  // One that holds was set wrong.
  const held = { kind: "precharge fall", value: 0, standardUncertainty: 7000 } as const;
  expect(diagnose({ plant, readings: [...readings, held] }).explanations[0]?.cause).toBe("wrong precharge");
});

test("a pump worn to half reads like one that turns the wrong way: two leads swapped tell", () => {
  for (const truth of ["worn pump", "wrong rotation"] as const) {
    const { plant, readings, take } = makeCase("wrong rotation", 3);
    const answer = diagnose({ plant, readings });
    expect(answer.state).toBe("cannot tell");
    expect(answer.next?.kind).toBe("swapped shutoff pressure");
    const turned =
      truth === "wrong rotation"
        ? take({ kind: "swapped shutoff pressure" })
        : ({ kind: "swapped shutoff pressure", value: 0, standardUncertainty: 1e4 } as const);
    const after = diagnose({ plant, readings: [...readings, turned] });
    expect(after.state).toBe("told");
    expect(after.explanations[0]?.cause).toBe(truth);
  }
});

test("with the flow alone a leak and wear read alike; the next reading it asks for tells them apart", () => {
  const flowOnly = (kind: string) => kind === "flow" || kind === "static level";
  const { plant, readings } = makeCase("leak in the drop pipe", 2);
  const few = readings.filter(({ kind }) => flowOnly(kind));
  const before = diagnose({ plant, readings: few });
  expect(before.state).toBe("cannot tell");
  expect(before.next).not.toBeNull();
  expect(before.next?.inUncertainties ?? 0).toBeGreaterThan(2);
  const taken = readings.filter(({ kind }) => flowOnly(kind) || kind === before.next?.kind);
  const after = diagnose({ plant, readings: taken });
  expect(after.explanations[0]?.cause).toBe("leak in the drop pipe");
});

test("readings that nothing explains are said to fit nothing", () => {
  const { plant, readings } = makeCase("as planned", 1);
  // A leak, a raised switch and a sagging supply at once.
  const spoiled = readings.map((reading) =>
    ["pressure fall", "cut-in", "voltage"].includes(reading.kind)
      ? { ...reading, value: reading.value + 30 * reading.standardUncertainty * (reading.kind === "voltage" ? -1 : 1) }
      : reading,
  );
  expect(diagnose({ plant, readings: spoiled }).state).toBe("none fits");
});

test("a sound plant is said to be as planned, also with its faults' explanations listed", () => {
  const { answer } = ranked("as planned", 4);
  expect(answer.state).toBe("as planned");
  expect(answer.explanations.length).toBe(13);
  expect(answer.cautions.map(({ text }) => text).join(" ")).toMatch(/compressed air.*licensed/s);
});

test("what a plant does not have is not blamed, and reading it is refused", () => {
  const { plant, readings } = makeCase("worn pump", 1);
  const { regulatedPressure: _, yard: __, threePhase: ___, ...bare } = plant;
  const kept = readings.filter(({ kind }) => kind !== "far flow" && kind !== "regulated pressure");
  const causes = diagnose({ plant: bare, readings: kept }).explanations.map(({ cause }) => cause);
  expect(causes).not.toContain("wrong rotation");
  expect(causes).not.toContain("regulating valve stuck");
  expect(causes).not.toContain("undersized run");
  expect(() => diagnose({ plant: bare, readings })).toThrow(/something the plant has/);
});

test("the fit finds one and two figures, and stays inside their ends", () => {
  const one = fitResiduals(([x = 0]) => [x * x - 2, 0.1 * (x - 1.4)], [{ low: 0, high: 100 }]);
  expect(one.values[0]).toBeCloseTo(1.414, 2);
  const ends = [
    { low: -3, high: 3 },
    { low: -3, high: 3 },
  ];
  const two = fitResiduals(([a = 0, b = 0]) => [a + b - 1, a - b - 0.5, a * b - 0.1875], ends);
  expect(two.values[0]).toBeCloseTo(0.75, 4);
  expect(two.values[1]).toBeCloseTo(0.25, 4);
  const edge = fitResiduals(([x = 0]) => [x - 5], [{ low: 0, high: 3 }]);
  expect(edge.values).toEqual([3]);
  // A shelf up to 0.6, and the least just past it.
  const shelf = fitResiduals(([x = 0]) => [40 * Math.max(x - 0.6, 0) - 1], [{ low: 0, high: 1 }]);
  expect(shelf.values[0]).toBeCloseTo(0.625, 6);
});
