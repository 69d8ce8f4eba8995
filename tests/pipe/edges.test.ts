/** The edges of every accepted range, and numbers that are no quantity: finite, or an InputError that names a field. */
import fc from "fast-check";
import {
  churchillFactor,
  coefficientForHeadLoss,
  compareLosses,
  darcyWeisbachLoss,
  diameterForHeadLoss,
  equivalentPipe,
  flowForHeadLoss,
  frictionFactor,
  haalandFactor,
  hazenWilliamsDiameter,
  hazenWilliamsFlow,
  hazenWilliamsLoss,
  lengthForHeadLoss,
  multipleOutletFactor,
  parallelFlow,
  parallelLoss,
  roughnessForHeadLoss,
  serghidesFactor,
  seriesFlow,
  seriesLoss,
  swameeJainFactor,
} from "risingmain/pipe";
import { InputError } from "risingmain/units";
import { expect, test } from "vitest";

/** Edges of the ranges in the docstrings, their neighbours, and what is no number. */
const number = fc.oneof(
  fc.constantFrom(
    ...[
      0, -0, 1e-9, 1e-4, 1e-3, 2e-4, 5e-5, 0.05, 0.1, 0.5, 1, 2, 10, 100, 120, 200, 1e3, 2000, 4000, 1e5, 1e6, 1e8,
      1e17,
    ],
    ...[2 ** 31, 2 ** 31 - 1, 5e-324, 1e-320, 1e308, Number.NaN, Infinity, -Infinity, -1, -1e3, -1e5],
  ),
  fc.double(),
  fc.double({ min: -20, max: 20, noNaN: true }).map((x) => 10 ** x),
);
/** Mostly a sane value, so that a field's own edges are met with the others in order. */
const mostly = (sane: number): fc.Arbitrary<number> =>
  fc.oneof({ weight: 3, arbitrary: fc.constant(sane) }, { weight: 1, arbitrary: number });
const pipe = fc.record({ insideDiameter: mostly(0.05), length: mostly(100), roughness: mostly(1e-5) });
const input = fc.record({
  flow: mostly(0.002),
  headLoss: mostly(3),
  insideDiameter: mostly(0.05),
  length: mostly(100),
  roughness: mostly(1e-5),
  viscosity: mostly(1e-6),
  coefficient: mostly(150),
  reynolds: mostly(3000),
  relativeRoughness: mostly(1e-3),
  outlets: fc.oneof(fc.integer({ min: 0, max: 50 }), number),
  exponent: mostly(1.85),
  pipes: fc.array(pipe, { maxLength: 3 }),
  arrangement: fc.constantFrom("series", "parallel", "neither"),
});

/** Every number in a result, however deep. */
function numbers(value: unknown): readonly number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbers) : [];
}

const functions: readonly ((given: never) => unknown)[] = [
  churchillFactor,
  coefficientForHeadLoss,
  compareLosses,
  darcyWeisbachLoss,
  diameterForHeadLoss,
  equivalentPipe,
  flowForHeadLoss,
  frictionFactor,
  haalandFactor,
  hazenWilliamsDiameter,
  hazenWilliamsFlow,
  hazenWilliamsLoss,
  lengthForHeadLoss,
  multipleOutletFactor,
  parallelFlow,
  parallelLoss,
  roughnessForHeadLoss,
  seriesFlow,
  seriesLoss,
  serghidesFactor,
  swameeJainFactor,
];

test.each(functions.map((call) => [call.name, call] as const))("%s", (_, call) => {
  let answered = 0;
  fc.assert(
    fc.property(input, (given) => {
      try {
        expect(numbers(call(given as never)).filter((x) => !Number.isFinite(x))).toEqual([]);
        answered++;
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
      }
    }),
    { numRuns: 3000 },
  );
  // A gate that refuses everything would pass the test above.
  expect(answered).toBeGreaterThan(0);
});

test("the whole accepted box, edge by edge, has a finite loss and finite inverses", () => {
  const edges = {
    flow: [1e-9, 1e3],
    insideDiameter: [1e-4, 100],
    length: [1e-3, 1e6],
    share: [0, 0.5],
    viscosity: [1e-9, 1],
  };
  for (const flow of edges.flow)
    for (const insideDiameter of edges.insideDiameter)
      for (const length of edges.length)
        for (const share of edges.share)
          for (const viscosity of edges.viscosity)
            for (const headLoss of [1e-9, 1e5]) {
              const given = { flow, insideDiameter, length, viscosity, headLoss, roughness: share * insideDiameter };
              for (const call of [darcyWeisbachLoss, flowForHeadLoss, lengthForHeadLoss, roughnessForHeadLoss]) {
                expect(numbers((call as (given: never) => unknown)(given as never)).every(Number.isFinite)).toBe(true);
              }
              const walls = [0, 0.1];
              for (const roughness of walls) {
                const bore = diameterForHeadLoss({ ...given, roughness } as never);
                expect(numbers(bore).every(Number.isFinite)).toBe(true);
                if (bore.state === "found") expect(bore.insideDiameter).toBeGreaterThan(0);
              }
            }
});
