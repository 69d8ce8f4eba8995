/** The cautions that must travel with field tests. */
import {
  authorityCaution,
  currentTest,
  liftingCautions,
  liftingLoad,
  mainsCautions,
  measuredCurve,
  pressureCautions,
  testAllowance,
  voltageTest,
} from "risingmain/field";
import { amperes, feet, inches, kilogramsPerCubicMetre, pounds, poundsPerFoot, psi, volts } from "risingmain/units";
import { expect, test } from "vitest";

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
    pump: pounds(50),
    pipeLength: feet(100),
    pipe: poundsPerFoot(1),
    capacity: pounds(1000),
  });
  expect(cautions).toBe(liftingCautions);
  expect(said(cautions)).toMatch(/rated.*Nobody under.*stuck.*power lines.*well pit.*clean sample/s);
});

test("local code, health department and trades have the last word", () => {
  expect(authorityCaution.text).toMatch(/Local code, the health department and the licensed trades/);
});
