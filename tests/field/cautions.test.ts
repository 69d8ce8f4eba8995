/** The cautions that must travel with field tests. */
import {
  authorityCaution,
  currentTest,
  diagnose,
  leastAirGap,
  liftingCautions,
  liftingLoad,
  mainsCautions,
  measuredCurve,
  pressureCautions,
  testAllowance,
  voltageTest,
  wellheadRules,
} from "risingmain/field";
import { amperes, feet, inches, kilogramsPerCubicMetre, pounds, poundsPerFoot, psi, volts } from "risingmain/units";
import { expect, test } from "vitest";
import { makeCase } from "./diagnosis-cases.ts";

const said = (cautions: readonly { readonly text: string }[]) => cautions.map(({ text }) => text).join(" ");

test("pressure: water not air, the weakest part, pressure off before opening", () => {
  const { cautions } = testAllowance({ length: feet(100), diameter: inches(2), pressure: psi(50) });
  expect(cautions).toBe(pressureCautions);
  expect(said(cautions)).toMatch(/never with compressed air.*weakest part.*pressure off/s);
  expect(
    measuredCurve({
      readings: [{ flow: 0 as never, pressure: psi(50), pumpingLevel: feet(50) }],
      gaugeElevation: feet(0),
      density: kilogramsPerCubicMetre(1000),
    }).cautions,
  ).toBe(pressureCautions);
});

test("mains: qualified people, locked out, discharged", () => {
  expect(said(mainsCautions)).toMatch(/qualified.*licensed.*locked out.*capacitors/s);
  expect(currentTest({ reading: amperes(1), expected: amperes(1) }).cautions).toBe(mainsCautions);
  expect(voltageTest({ rated: volts(230), underLoad: volts(230) }).cautions).toBe(mainsCautions);
});

test("lifting: rated gear, nobody under it, power lines, pits, and no drinking before a clean sample", () => {
  const { cautions } = liftingLoad({
    pumpMass: pounds(50),
    pumpSetting: feet(100),
    pipeMass: poundsPerFoot(1),
    insideDiameter: inches(1),
    outsideDiameter: inches(1.3),
    density: kilogramsPerCubicMetre(1000),
    capacity: pounds(1000),
  });
  expect(cautions).toBe(liftingCautions);
  expect(said(cautions)).toMatch(/rated.*Nobody under.*stuck.*power lines.*well pit.*clean sample/s);
});

test("local code, health department and trades have the last word", () => {
  expect(authorityCaution.text).toMatch(/Local code, the health department and the licensed trades/);
  expect(wellheadRules("burial of a water service").cautions).toContain(authorityCaution);
  expect(leastAirGap({ bore: inches(1) }).cautions).toContain(authorityCaution);
  const { plant, readings } = makeCase("as planned", 1);
  const { cautions } = diagnose({ plant, readings });
  expect(cautions).toContain(authorityCaution);
  expect(said(cautions)).toMatch(/compressed air.*locked out/s);
});

test("every caution has a code of its own in its list, a text and a basis", () => {
  for (const list of [pressureCautions, mainsCautions, liftingCautions, [authorityCaution]]) {
    expect(new Set(list.map(({ code }) => code)).size).toBe(list.length);
    for (const { text, basis } of list) {
      expect(text.length).toBeGreaterThan(20);
      expect(basis).toBe("common practice");
    }
  }
});

test("rules of a wellhead: least first, with a source each; an unknown subject is refused", () => {
  const { least, most, rules } = wellheadRules("well to septic tank");
  expect([least, most]).toEqual([rules[0]?.value, rules[rules.length - 1]?.value]);
  expect(most).toBeGreaterThan(least);
  for (const { source } of rules) expect(source).not.toBe("");
  expect(() => wellheadRules("well to moon" as never)).toThrow(/subject/);
});

test("an air gap is never under its floor, and twice the bore above it", () => {
  const gap = (bore: number) => leastAirGap({ bore: inches(bore) }).gap / inches(1);
  expect([0, 0.25, 0.5, 1, 2].map(gap)).toEqual([1, 1, 1, 2, 4]);
});
