/** Random layouts for the laws, and short ways to write one down. */
import fc from "fast-check";
import type {
  Junction,
  Network,
  NetworkResult,
  Outlet,
  OutletCoefficient,
  Run,
  SolvedNetwork,
} from "risingmain/network";
import { darcyWeisbachLoss, hazenWilliamsLoss } from "risingmain/pipe";
import type { KinematicViscosity, Length, VolumeFlow } from "risingmain/units";

export const water = { density: 999.7, kinematicViscosity: 1.307e-6 } as Network["water"];

export const m = (value: number): Length => value as Length;
export const flow = (value: number): VolumeFlow => value as VolumeFlow;

/** A solved result, or a failed test. */
export function solved(result: NetworkResult): SolvedNetwork {
  if (result.state !== "solved") throw new Error(`not solved: ${JSON.stringify(result)}`);
  return result;
}

/** Head lost in a run by the public formulas, apart from the solver's own. */
export function lossOf(run: Run, q: number): number {
  if (run.law === "power") return run.resistance * Math.abs(q) ** run.exponent * Math.sign(q);
  const v = q / ((Math.PI / 4) * run.insideDiameter ** 2);
  const minor = ((run.lossCoefficient ?? 0) * v * Math.abs(v)) / (2 * 9.80665);
  if (run.law === "hazen-williams") return hazenWilliamsLoss({ ...run, flow: flow(q) }).headLoss + minor;
  const viscosity = water.kinematicViscosity as KinematicViscosity;
  return darcyWeisbachLoss({ ...run, flow: flow(q), viscosity }).headLoss + minor;
}

/** The law of one run, without its ends. */
const laws = fc.oneof(
  fc.record({
    law: fc.constant("darcy-weisbach" as const),
    insideDiameter: fc.constantFrom(0.0209, 0.0266, 0.0351, 0.0525).map(m),
    length: fc.double({ min: 1, max: 400, noNaN: true }).map(m),
    roughness: fc.constantFrom(0, 1.5e-6, 4.5e-5).map(m),
    lossCoefficient: fc.constantFrom(0, 2, 10),
  }),
  fc.record({
    law: fc.constant("hazen-williams" as const),
    insideDiameter: fc.constantFrom(0.0266, 0.0351, 0.0525).map(m),
    length: fc.double({ min: 1, max: 400, noNaN: true }).map(m),
    coefficient: fc.constantFrom(100, 130, 150),
  }),
  fc.record({
    law: fc.constant("power" as const),
    resistance: fc.double({ min: 1e3, max: 1e7, noNaN: true }),
    exponent: fc.constantFrom(1, 1.5, 1.852, 2),
  }),
);

export interface LayoutOptions {
  /** Runs beyond a tree, at most. */
  readonly loops: number;
  /** Outlets that answer to pressure, besides fixed demands. */
  readonly pressureDependent: boolean;
}

/** A random layout fed by a tank at junction "0", 60 to 120 m up. */
export function layouts({ loops, pressureDependent }: LayoutOptions): fc.Arbitrary<Network> {
  return fc.integer({ min: 2, max: 12 }).chain((n) =>
    fc
      .record({
        elevations: fc.array(fc.double({ min: 0, max: 30, noNaN: true }), { minLength: n, maxLength: n }),
        parents: fc.tuple(...Array.from({ length: n - 1 }, (_, i) => fc.integer({ min: 0, max: i }))),
        extra: fc.array(
          fc.tuple(fc.nat(n - 1), fc.nat(n - 1)).filter(([a, b]) => a !== b),
          { maxLength: loops },
        ),
        laws: fc.array(laws, { minLength: n - 1 + loops, maxLength: n - 1 + loops }),
        turned: fc.array(fc.boolean(), { minLength: n - 1 + loops, maxLength: n - 1 + loops }),
        draws: fc.array(fc.double({ min: 0, max: 5e-4, noNaN: true }), { minLength: n, maxLength: n }),
        coefficients: fc.array(fc.option(fc.double({ min: 1e-6, max: 1e-4, noNaN: true })), {
          minLength: n,
          maxLength: n,
        }),
        head: fc.double({ min: 60, max: 120, noNaN: true }),
      })
      .map(({ elevations, parents, extra, laws, turned, draws, coefficients, head }): Network => {
        const junctions = elevations.map((elevation, i): Junction => ({ id: `${i}`, elevation: m(elevation) }));
        const pairs = [...parents.map((parent, i) => [parent, i + 1]), ...extra];
        const runs = pairs.map(([a, b], k) => {
          const [from, to] = turned[k] ? [b, a] : [a, b];
          return { id: `r${k}`, from: `${from}`, to: `${to}`, ...laws[k] } as Run;
        });
        const outlets = draws.map(
          (q, i): Outlet => ({ id: `d${i}`, junction: `${i}`, kind: "fixed demand", flow: flow(q) }),
        );
        if (pressureDependent) {
          coefficients.forEach((c, i) => {
            if (c === null) return;
            outlets.push({
              id: `o${i}`,
              junction: `${i}`,
              kind: "pressure-dependent",
              coefficient: c as OutletCoefficient,
            });
          });
        }
        return {
          water,
          junctions,
          runs,
          outlets,
          sources: [{ id: "tank", junction: "0", kind: "fixed head", head: m(head) }],
        };
      }),
  );
}
