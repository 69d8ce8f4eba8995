/** How the published least-cost layouts are chosen with the library. */
import type { GaugePressure, Length, VolumeFlow } from "risingmain/units";
import { choose, found } from "../selection/solver.ts";
import { networkOf } from "./network.checks.ts";
import type { Computation } from "./register.ts";

const DENSITY = 1000;
const G = 9.80665;
const INCH = 0.0254;
/** Links that carry next to nothing, of the smallest size: left out of the branched layout. */
const CLOSING_LINKS = ["4", "8"];

export const computations: readonly Computation[] = [
  {
    ids: /two-loop-part-way/,
    compute: (given) => {
      const { nodes, pipes } = networkOf("net-two-loop-419000-design");
      const length = given.si<Length>("length");
      const diameters = given.list<Length>("diameters");
      const prices = given.list("costPerMetre");
      const sizes = diameters.map((insideDiameter, k) => ({
        name: `${Math.round(insideDiameter / INCH)} in`,
        insideDiameter,
        costPerMetre: prices[k] as number,
      }));
      const [through4, through8] = [given.si("flowOfLink4"), given.si("flowOfLink8")];
      // Link 4 leads from node 4 to 5, link 8 from 7 to 5.
      const moved: Readonly<Record<string, number>> = { 4: through4, 7: through8, 5: -through4 - through8 };
      const main = pipes.filter(({ id }) => !CLOSING_LINKS.includes(id));
      const drawn = nodes.filter(({ demand = 0 }) => demand > 0);
      const { least, proven } = found(
        choose({
          network: {
            water: { density: DENSITY, kinematicViscosity: 1e-6 } as never,
            junctions: nodes.map(({ id, elevation }) => ({ id, elevation: elevation as Length })),
            runs: main.map(({ id, from, to }) => ({
              id,
              from,
              to,
              law: "hazen-williams",
              insideDiameter: diameters[0] as Length,
              length,
              coefficient: given.si("C"),
            })),
            outlets: drawn.map(({ id, demand = 0 }) => ({
              id,
              junction: id,
              kind: "fixed demand",
              flow: (demand + (moved[id] ?? 0)) as VolumeFlow,
              leastPressure: (given.si("leastPressureHead") * DENSITY * G) as GaugePressure,
            })),
            sources: [{ id: "reservoir", junction: "1", kind: "fixed head", head: given.si<Length>("sourceHead") }],
          },
          choices: main.map(({ id }) => ({ run: id, sizes })),
          scenarios: [{ name: "peak", open: drawn.map(({ id }) => id) }],
        }),
      );
      if (!proven) throw new Error("not proven");
      const closing = CLOSING_LINKS.length * length * (prices[0] as number);
      return {
        cost: least.cost + closing,
        ...Object.fromEntries(
          least.runs.map(({ run, parts }) => [`link${run}`, parts.map(({ size }) => size).join(", ")]),
        ),
      };
    },
  },
];
