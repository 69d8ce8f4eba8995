/** The list of fittings on a run: it sums, it is odd, it rises with flow, it says which entry is wrong. */
import fc from "fast-check";
import {
  type FittingsLossInput,
  fittingsLoss,
  minorLoss,
  namedFittings,
  type RunFitting,
  suddenContraction,
  suddenExpansion,
} from "risingmain/fittings";
import { darcyWeisbachLoss } from "risingmain/pipe";
import { gpm, InputError, inches, type Length, millimetres, psiDifference, type VolumeFlow } from "risingmain/units";
import { expect, test } from "vitest";

const within = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const names = Object.keys(namedFittings) as (keyof typeof namedFittings)[];
const count = fc.nat(4);
const reversible: fc.Arbitrary<RunFitting> = fc.oneof(
  fc.record({ kind: fc.constant("named" as const), fitting: fc.constantFrom(...names), count }),
  fc.record({ kind: fc.constant("coefficient" as const), coefficient: within(0, 50), count }),
  fc.record({ kind: fc.constant("equivalent length" as const), length: within(0, 50) as fc.Arbitrary<Length>, count }),
  fc.record({
    kind: fc.constant("insert" as const),
    form: fc.constantFrom("coupling", "elbow 90", "tee run", "tee branch"),
    count,
  }),
  fc.record({ kind: fc.constant("flow coefficient" as const), Kv: within(1, 100), count }),
  fc.record({
    kind: fc.constant("rated loss" as const),
    ratedFlow: fc.constant(gpm(15)),
    ratedLoss: fc.constant(psiDifference(5)),
    exponent: within(1, 2),
  }),
);
const check: fc.Arbitrary<RunFitting> = fc.record({
  kind: fc.constant("check valve" as const),
  coefficient: within(1, 10),
  crackingPressure: fc.constantFrom(psiDifference(0), psiDifference(0.5)),
});
const run = (fittings: readonly RunFitting[], flow: number): FittingsLossInput => ({
  flow: flow as VolumeFlow,
  insideDiameter: inches(1.049),
  roughness: millimetres(0.0015),
  viscosity: 1.3e-6 as FittingsLossInput["viscosity"],
  fittings,
});

test("the loss is the sum of its parts, and of the same loss as a coefficient and as a length", () => {
  fc.assert(
    fc.property(fc.array(fc.oneof(reversible, check), { maxLength: 6 }), within(1e-6, 0.01), (fittings, flow) => {
      const input = run(fittings, flow);
      const loss = fittingsLoss(input);
      const sum = loss.parts.reduce((total, part) => total + part.headLoss, 0);
      expect(loss.headLoss).toBe(sum);
      expect(loss.parts.length).toBe(fittings.length);
      const same = minorLoss({ ...input, coefficient: loss.coefficient ?? Number.NaN });
      expect(Math.abs(same - loss.headLoss)).toBeLessThanOrEqual(1e-12 * loss.headLoss);
      const asPipe = darcyWeisbachLoss({ ...input, length: loss.equivalentLength ?? (0 as Length) }).headLoss;
      expect(Math.abs(asPipe - loss.headLoss)).toBeLessThanOrEqual(1e-12 * loss.headLoss);
    }),
  );
});

test("the loss is odd in flow and never falls with it", () => {
  fc.assert(
    fc.property(fc.array(reversible, { maxLength: 6 }), within(0, 0.01), within(0, 0.01), (fittings, a, b) => {
      const at = (flow: number): number => fittingsLoss(run(fittings, flow)).headLoss;
      expect(at(-a) + at(a)).toBe(0);
      expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)) * (1 - 1e-14));
    }),
  );
});

test("a change of bore is the widening or narrowing of its own narrow side, whichever way the water goes", () => {
  const narrow = inches(0.824);
  const wide = inches(1.38);
  const at = (to: Length, flow: number): number => fittingsLoss(run([{ kind: "bore change", to }], flow)).headLoss;
  const bore = inches(1.049);
  const [flow, back] = [1e-3 as VolumeFlow, -1e-3 as VolumeFlow];
  const intoNarrow = suddenContraction({ smallDiameter: narrow, largeDiameter: bore });
  const outOfNarrow = suddenExpansion({ smallDiameter: narrow, largeDiameter: bore });
  const intoWide = suddenExpansion({ smallDiameter: bore, largeDiameter: wide });
  expect(at(narrow, flow)).toBeCloseTo(minorLoss({ coefficient: intoNarrow, flow, insideDiameter: narrow }), 12);
  expect(at(narrow, back)).toBeCloseTo(minorLoss({ coefficient: outOfNarrow, flow: back, insideDiameter: narrow }), 12);
  expect(at(wide, flow)).toBeCloseTo(minorLoss({ coefficient: intoWide, flow, insideDiameter: bore }), 12);
  expect(at(bore, flow)).toBe(0);
});

test("a trickle loses little and in proportion, however slow", () => {
  const fittings: readonly RunFitting[] = [
    { kind: "named", fitting: "lift check valve" },
    { kind: "insert", form: "elbow 90", bore: inches(0.11) },
  ];
  // Re from 0.01 down past 1e-6, where the coefficients pass any bound.
  for (let flow = 3e-10; flow > 3e-16; flow /= 10) {
    const loss = fittingsLoss(run(fittings, flow)).headLoss;
    expect(loss, `${flow}`).toBeGreaterThanOrEqual(0);
    const half = fittingsLoss(run(fittings, flow / 2)).headLoss;
    if (half > 0) expect(loss / half).toBeCloseTo(2, 3);
  }
});

test("ten of a fitting lose ten times what one does", () => {
  const one = fittingsLoss(run([{ kind: "named", fitting: "elbow 90" }], 1e-3));
  const ten = fittingsLoss(run([{ kind: "named", fitting: "elbow 90", count: 10 }], 1e-3));
  expect(ten.headLoss / one.headLoss).toBeCloseTo(10, 12);
  expect(ten.parts[0]?.coefficient).toBe(one.parts[0]?.coefficient);
});

test("water at rest loses nothing and has no coefficient", () => {
  const loss = fittingsLoss(
    run(
      [
        { kind: "named", fitting: "elbow 90" },
        { kind: "insert", form: "coupling" },
      ],
      0,
    ),
  );
  expect(loss).toMatchObject({ headLoss: 0, coefficient: null, equivalentLength: null, insideRange: true });
  expect(loss.parts.every((part) => part.coefficient === null)).toBe(true);
});

test("flow too small to hold a check valve open is said so", () => {
  const valve: RunFitting = { kind: "check valve", coefficient: 5, crackingPressure: psiDifference(0.5) };
  expect(fittingsLoss(run([valve], gpm(2))).insideRange).toBe(false);
  expect(fittingsLoss(run([valve], gpm(20))).insideRange).toBe(true);
});

test("a foot valve's one figure is for turbulent flow, an elbow's three constants for any", () => {
  const at = (fitting: "foot valve" | "elbow 90", flow: number): boolean =>
    fittingsLoss(run([{ kind: "named", fitting }], flow)).insideRange;
  // Re 10 000 in this pipe is about 2.7e-4 m³/s.
  expect([at("foot valve", 2.6e-4), at("foot valve", 2.8e-4)]).toEqual([false, true]);
  expect(at("elbow 90", 1e-6)).toBe(true);
});

test.each([
  [
    "fittings[1].fitting",
    [
      { kind: "coefficient", coefficient: 1 },
      { kind: "named", fitting: "elbow 91" },
    ],
  ],
  ["fittings[0].kind", [{ kind: "magic" }]],
  ["fittings[0].count", [{ kind: "coefficient", coefficient: 1, count: 1.5 }]],
  ["fittings[0].coefficient", [{ kind: "coefficient", coefficient: -1 }]],
  ["fittings[0].form", [{ kind: "insert", form: "elbow 91" }]],
  ["fittings[0].bore", [{ kind: "insert", form: "coupling", bore: 1 }]],
  ["fittings[0].Kv", [{ kind: "flow coefficient", Kv: Number.NaN }]],
  ["fittings[0].ratedFlow", [{ kind: "rated loss", ratedFlow: 0, ratedLoss: 1 }]],
  ["fittings[0].label", [{ kind: "coefficient", coefficient: 1, label: 7 }]],
  ["fittings[0]", [null]],
])("a wrong %s is named", (parameter, fittings) => {
  let caught: unknown;
  try {
    fittingsLoss(run(fittings as unknown as readonly RunFitting[], 1e-3));
  } catch (error) {
    caught = error;
  }
  expect(caught).toBeInstanceOf(InputError);
  expect((caught as InputError).parameter).toBe(parameter);
});

test("backflow through a check valve is refused", () => {
  const valve: RunFitting = { kind: "check valve", coefficient: 5, crackingPressure: psiDifference(0.5) };
  expect(() => fittingsLoss(run([valve], -1e-3))).toThrow(
    /flow: expected 0 m³\/s or more, since fittings\[0\] is a check valve/,
  );
});
