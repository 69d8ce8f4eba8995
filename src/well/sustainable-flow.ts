/**
 * How much a well can give: the drawdown there is, and the flow that uses it up in a given time.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Duration, Length, VolumeFlow } from "../units/index.ts";
import { type DrawdownLaw, requireLaw } from "./drawdown.ts";
import { type Aquifer, aquiferLaw, requireAquifer } from "./theis.ts";

/** Levels between which a well may be pumped; depths below one mark. */
export interface AvailableDrawdownInput {
  /** Static level: the lowest of the year for a lasting supply. −1000 to 10 000 m. */
  readonly staticLevel: Length;
  /** Lowest level allowed: above the intake by its cover, and above the screen. −1000 to 10 000 m. */
  readonly lowestLevel: Length;
  /** Held back for drought, clogging and neighbours. 0 to 10 000 m; 0 where left out. */
  readonly reserve?: Length;
}

/** The drawdown a well has to give, or how much it lacks. */
export type AvailableDrawdown =
  | {
      /** There is some. */
      readonly state: "available";
      /** Drawdown available, m. */
      readonly drawdown: Length;
    }
  | {
      /** The static level, less the reserve, already lies at or below the lowest allowed. */
      readonly state: "none";
      /** By so much, m. */
      readonly short: Length;
    };

/**
 * The drawdown a well has to give.
 *
 * @remarks
 * Lowest allowed level less static level less reserve.
 *
 * @param input - the levels, as depths below one mark, m
 * @returns the drawdown, or how far the levels are apart the wrong way
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { availableDrawdown } from "risingmain/well";
 * import { feet, inFeet } from "risingmain/units";
 *
 * const available = availableDrawdown({ staticLevel: feet(60), lowestLevel: feet(160), reserve: feet(20) });
 * available.state === "available" ? inFeet(available.drawdown) : 0; // ≈ 80.0
 * ```
 *
 * @source derived: difference of depths
 */
export function availableDrawdown(input: AvailableDrawdownInput): AvailableDrawdown {
  requireObject("input", input);
  const { staticLevel, lowestLevel, reserve = 0 } = input;
  requireWithin("staticLevel", staticLevel, -1000, 10_000, "m");
  requireWithin("lowestLevel", lowestLevel, -1000, 10_000, "m");
  requireWithin("reserve", reserve, 0, 10_000, "m");
  const drawdown = lowestLevel - staticLevel - reserve;
  if (drawdown > 0) return { state: "available", drawdown: drawdown as Length };
  return { state: "none", short: (0 - drawdown) as Length };
}

/** Flow a law gives for a drawdown, and how the drawdown is shared. */
export interface FlowForDrawdown {
  /** Flow, m³/s; at most 100, beyond which the law has no meaning. */
  readonly flow: VolumeFlow;
  /** B Q, lost in the aquifer, m. */
  readonly aquiferPart: Length;
  /** C Q², lost in the well, m. */
  readonly wellPart: Length;
  /** True where the law asks for more than 100 m³/s, which is given in its place. */
  readonly capped: boolean;
}

/** Most flow of any function here, m³/s. */
const MOST_FLOW = 100;

/**
 * The flow at which a well's drawdown is a given one.
 *
 * @remarks
 * The positive root of C Q² + B Q = s, Q = 2 s / (B + √(B² + 4 C s)), which keeps its digits for any C.
 *
 * @param law - the well's law, from a test or {@link aquiferLaw}
 * @param drawdown - fall of the level below static, 0 to 10 000 m
 * @returns the flow and the two parts of the drawdown
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { flowForDrawdown, singleTestLaw } from "risingmain/well";
 * import { feet, gpm, inGpm } from "risingmain/units";
 *
 * const law = singleTestLaw({ flow: gpm(20), drawdown: feet(40) });
 * inGpm(flowForDrawdown(law, feet(60)).flow); // ≈ 30.00
 * ```
 *
 * @source jacob-1947
 */
export function flowForDrawdown(law: DrawdownLaw, drawdown: Length): FlowForDrawdown {
  requireLaw(law);
  requireWithin("drawdown", drawdown, 0, 10_000, "m");
  const { aquiferLoss: B, wellLoss: C } = law;
  const denominator = B + Math.sqrt(B * B + 4 * C * drawdown);
  const wanted = drawdown === 0 ? 0 : (2 * drawdown) / denominator;
  const flow = Math.min(wanted, MOST_FLOW);
  return {
    flow: flow as VolumeFlow,
    aquiferPart: (B * flow) as Length,
    wellPart: (C * flow * flow) as Length,
    capped: wanted > MOST_FLOW,
  };
}

/** A well to be pumped for a time without passing a level. */
export interface SustainableFlowInput {
  /** The aquifer, with the well's effective radius. */
  readonly aquifer: Aquifer;
  /** C of s = B Q + C Q², from a step test. 0 to 1e20 s²/m⁵; 0 where left out. */
  readonly wellLoss?: number;
  /** Drawdown available, from {@link availableDrawdown}. 0 to 10 000 m. */
  readonly drawdown: Length;
  /** Time of steady pumping: for a lasting supply the longest season without recharge. 1e-3 to 1e12 s. */
  readonly time: Duration;
}

/**
 * The steady flow that draws a well down to its lowest level just at the end of a time.
 *
 * @remarks
 * Solves Q W(u) / (4 π T) + C Q² = s for Q, with u taken at the time. Boundaries, recharge and neighbours are not in
 * it: a pumping test of a day does not see what a season meets, so test long and keep a reserve.
 *
 * @param input - aquifer, well loss, drawdown and time; each field says its unit and the values it takes
 * @returns the flow, and how the drawdown is shared
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { sustainableFlow } from "risingmain/well";
 * import { days, feet, inches, inGpm, usGallonsPerDayPerFoot } from "risingmain/units";
 *
 * const aquifer = { transmissivity: usGallonsPerDayPerFoot(500), storativity: 1e-4, radius: inches(3) };
 * inGpm(sustainableFlow({ aquifer, drawdown: feet(80), time: days(100) }).flow); // ≈ 16.2
 * ```
 *
 * @source theis-1935
 * @source jacob-1947: the loss in the well
 */
export function sustainableFlow(input: SustainableFlowInput): FlowForDrawdown {
  requireObject("input", input);
  const { aquifer, wellLoss = 0, drawdown, time } = input;
  requireAquifer(aquifer, "aquifer");
  return flowForDrawdown(aquiferLaw({ ...aquifer, time, wellLoss }), drawdown);
}
