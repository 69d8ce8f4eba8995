/** Random trees with sizes and uses, for the laws of least cost. */
import fc from "fast-check";
import type { Network, Run } from "risingmain/network";
import type { PartWayInput, SizeChoice } from "risingmain/selection";
import type { GaugePressure } from "risingmain/units";
import { flow, m, water } from "../network/layouts.ts";

/** Pressure of one metre of head, Pa. */
export const PER_HEAD = 999.7 * 9.80665;

/** A tree, sizes for all its runs, and its uses. */
export interface Layout {
  readonly network: Network;
  readonly sizes: readonly SizeChoice[];
  readonly scenarios: readonly { readonly name: string; readonly open: readonly string[] }[];
}

/** Small trees: 2 to 5 runs, 2 to 4 sizes, 1 to 3 uses; costs fall neither with the bore nor evenly. */
export const small: fc.Arbitrary<Layout> = fc.integer({ min: 2, max: 5 }).chain((count) =>
  fc
    .record({
      parents: fc.tuple(...Array.from({ length: count }, (_, i) => fc.integer({ min: 0, max: i }))),
      lengths: fc.array(fc.integer({ min: 20, max: 300 }), { minLength: count, maxLength: count }),
      elevations: fc.array(fc.integer({ min: 0, max: 15 }), { minLength: count, maxLength: count }),
      draws: fc.array(fc.integer({ min: 0, max: 6 }), { minLength: count, maxLength: count }),
      least: fc.array(fc.integer({ min: 0, max: 15 }), { minLength: count, maxLength: count }),
      costs: fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 2, maxLength: 4 }),
      open: fc.array(fc.array(fc.boolean(), { minLength: count, maxLength: count }), { minLength: 1, maxLength: 3 }),
      head: fc.integer({ min: 25, max: 60 }),
    })
    .map(({ parents, lengths, elevations, draws, least, costs, open, head }) => ({
      network: {
        water,
        junctions: [0, ...elevations].map((z, i) => ({ id: `${i}`, elevation: m(z) })),
        runs: parents.map(
          (parent, i): Run => ({
            id: `r${i}`,
            from: `${parent}`,
            to: `${i + 1}`,
            law: "darcy-weisbach",
            insideDiameter: m(0.02),
            length: m(lengths[i] as number),
            roughness: m(1.5e-6),
          }),
        ),
        outlets: draws.map((q, i) => ({
          id: `o${i}`,
          junction: `${i + 1}`,
          kind: "fixed demand" as const,
          flow: flow(q * 1e-4),
          leastPressure: ((least[i] as number) * PER_HEAD) as GaugePressure,
        })),
        sources: [{ id: "tank", junction: "0", kind: "fixed head" as const, head: m(head) }],
      },
      sizes: costs.map((cost, k) => ({
        name: `size ${k}`,
        insideDiameter: m([0.0209, 0.0266, 0.0351, 0.0409][k] as number),
        costPerMetre: cost,
      })),
      scenarios: open.map((list, s) => ({ name: `use ${s}`, open: list.flatMap((yes, i) => (yes ? [`o${i}`] : [])) })),
    })),
);

/** 100 m of line that may lose so much head at 0.4 L/s, in two sizes at 1 and 2 a metre. */
export function oneRun(head: number): PartWayInput {
  return {
    network: {
      water,
      junctions: ["0", "1"].map((id) => ({ id, elevation: m(0) })),
      runs: [
        {
          id: "r",
          from: "0",
          to: "1",
          law: "darcy-weisbach",
          insideDiameter: m(0.02),
          length: m(100),
          roughness: m(0),
        },
      ],
      outlets: [{ id: "o", junction: "1", kind: "fixed demand", flow: flow(4e-4) }],
      sources: [{ id: "tank", junction: "0", kind: "fixed head", head: m(head) }],
    },
    choices: [
      {
        run: "r",
        sizes: [
          { name: "narrow", insideDiameter: m(0.0209), costPerMetre: 1 },
          { name: "wide", insideDiameter: m(0.0266), costPerMetre: 2 },
        ],
      },
    ],
    scenarios: [{ name: "use", open: ["o"] }],
  };
}
