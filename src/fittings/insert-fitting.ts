/**
 * Insert (barb) fittings in polyethylene pipe: the water squeezes into a narrower bore, runs through it and spreads again.
 *
 * @module
 */
import { polyline, requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import { frictionFactor } from "../pipe/index.ts";
import { InputError, type KinematicViscosity, type Length, type VolumeFlow } from "../units/index.ts";
import { suddenContraction, suddenExpansion } from "./bore-change.ts";
import { INCH } from "./inch.ts";
import { insertBores } from "./insert-bores.ts";
import { threeKCoefficient } from "./three-k.ts";
import { type ThreeKFitting, threeKFittings } from "./three-k-fittings.ts";

/** Shape of an insert fitting. */
export type InsertForm = "coupling" | "elbow 90" | "tee run" | "tee branch";

/** An insert fitting and the flow in it. */
export interface InsertFittingInput {
  /** Shape. */
  readonly form: InsertForm;
  /** Flow; the loss is the same either way. −1000 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Inside diameter of the pipe. 0.001 to 10 m. */
  readonly insideDiameter: Length;
  /** Bore of the insert as measured; the usual bore for the pipe when left out. 1/10 of the inside diameter up to it, m. */
  readonly bore?: Length;
  /** Kinematic viscosity of the water. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
}

/** The resistance of an insert fitting, and what it was made from. */
export interface InsertFittingCoefficient {
  /** Resistance coefficient on the velocity head in the pipe; null at rest. */
  readonly coefficient: number | null;
  /** Share of squeezing in, on the velocity head in the pipe. */
  readonly contraction: number;
  /** Share of friction along the bore; null at rest. */
  readonly friction: number | null;
  /** Share of turning or passing a branch inside; null at rest. */
  readonly turn: number | null;
  /** Share of spreading again. */
  readonly expansion: number;
  /** Bore used, m. */
  readonly bore: Length;
  /** Whether the bore was measured or is the usual one. */
  readonly boreBasis: "measured" | "common practice";
  /** False where the usual bore was taken for a pipe outside 1/2 to 2 in. */
  readonly insideRange: boolean;
}

/** The barbs of a coupling and the space between take about three bores of length: common practice. */
const LENGTH_IN_BORES = 3;

/** How the inside of each shape is taken: a sharp turn for the elbow, since moulded ones have no sweep. */
export const INSERT_TURNS: Readonly<Record<InsertForm, ThreeKFitting | null>> = {
  coupling: null,
  "elbow 90": "elbow 90 mitred 1 weld",
  "tee run": "tee run threaded",
  "tee branch": "tee branch threaded",
};

/** Below this Reynolds number the coefficient of laminar flow grows without bound: the water is at rest. */
const AT_REST = 1e-9;

/**
 * Resistance coefficient of an insert (barb) fitting in polyethylene pipe.
 *
 * @remarks
 * K = [½ (1 − β²) + f L / d + K_turn + (1 − β²)²] / β⁴,  β = d / D
 *
 * with d `bore`, D `insideDiameter`, f the smooth-wall friction factor in the bore, L three bores, and K_turn by the three-K
 * method at the bore (a mitred turn for the elbow). No published losses of insert fittings from 1/2 to 2 in were found; this
 * sum of published parts is about 30 % uncertain with a measured bore, and can be off by half with the usual one, because K
 * goes with the fourth power of the bore.
 *
 * @param input - the shape, flow, pipe and bore; each field says its unit and the values it takes
 * @returns the coefficient with its parts
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A coupling in 1 in polyethylene at 10 gpm
 * ```ts
 * import { insertFittingCoefficient } from "risingmain/fittings";
 * import { gpm, inches, inInches, squareMetresPerSecond } from "risingmain/units";
 *
 * const coupling = insertFittingCoefficient({
 *   form: "coupling", flow: gpm(10), insideDiameter: inches(1.049), viscosity: squareMetresPerSecond(1.306e-6),
 * });
 * inInches(coupling.bore); // ≈ 0.86
 * coupling.coefficient; // ≈ 0.759
 * ```
 *
 * @source derived: sum of a narrowing, friction, a turn and a widening
 * @source darby-1999: the turns
 * @source common practice: the usual bores
 */
export function insertFittingCoefficient(input: InsertFittingInput): InsertFittingCoefficient {
  requireObject("input", input);
  const { form, flow, insideDiameter: D, viscosity } = input;
  requireOneOf("form", form, Object.keys(INSERT_TURNS));
  requireWithin("flow", flow, -1e3, 1e3, "m³/s");
  requireWithin("insideDiameter", D, 1e-3, 10, "m");
  requireWithin("viscosity", viscosity, 1e-9, 1, "m²/s");
  const usual = usualBore(D);
  const d = input.bore ?? usual.bore;
  requireWithin("bore", d, D / 10, D, "m (from a tenth of the inside diameter up to it)");

  const bores = { smallDiameter: d as Length, largeDiameter: D };
  const toPipe = (D / d) ** 4;
  const contraction = suddenContraction(bores) * toPipe;
  const expansion = suddenExpansion(bores) * toPipe;
  const reynolds = (4 * Math.abs(flow)) / (Math.PI * d * viscosity);
  if (reynolds > 1e12) throw new InputError("flow", flow, "a flow of Reynolds number up to 1e12 in the bore");
  const rest = { contraction, expansion, bore: d as Length };
  const basis = {
    boreBasis: input.bore === undefined ? ("common practice" as const) : ("measured" as const),
    insideRange: input.bore !== undefined || usual.insideRange,
  };
  if (reynolds < AT_REST) return { coefficient: null, friction: null, turn: null, ...rest, ...basis };

  const friction = frictionFactor({ reynolds, relativeRoughness: 0 }).value * LENGTH_IN_BORES * toPipe;
  const fitting = INSERT_TURNS[form];
  const turn =
    fitting === null
      ? 0
      : threeKCoefficient({ constants: threeKFittings[fitting], reynolds, nominalSize: d as Length }) * toPipe;
  return { coefficient: contraction + friction + turn + expansion, friction, turn, ...rest, ...basis };
}

/** Inside diameters, in, that polyethylene of 1/2 to 2 in nominal size falls between. */
const SMALLEST = 0.48;
const LARGEST = 2.1;

/** The usual bore for a pipe: its share of the pipe's own bore in line between the two nearest sizes of the table. */
function usualBore(pipeBore: number): { readonly bore: number; readonly insideRange: boolean } {
  const inches = pipeBore / INCH;
  const insideRange = inches >= SMALLEST && inches <= LARGEST;
  const shares = insertBores.map(([, pipe, insert]) => [pipe, insert / pipe] as const);
  return { bore: pipeBore * polyline(shares, inches), insideRange };
}
