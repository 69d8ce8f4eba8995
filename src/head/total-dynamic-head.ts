/**
 * Total dynamic head of a well pump: every height, loss and pressure it works against, each under its own name.
 *
 * @module
 */
import { requireList, requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Density, GaugePressure, Length, Velocity } from "../units/index.ts";
import { requireDensity, requireHead, requireName, requirePressure, requireVelocity } from "./ranges.ts";

/** One loss along the way: a run of pipe, its fittings, a filter. */
export interface HeadLossPart {
  /** What loses the head, in the reader's words: "drop pipe", "check valve". At most 200 characters. */
  readonly name: string;
  /** The head it loses at the flow in question. 0 to 1 000 000 m. */
  readonly headLoss: Length;
}

/** Where the water stands, where it goes, and what it loses on the way. */
export interface TotalDynamicHeadInput {
  /**
   * Depth of the water below the wellhead (the datum) with the pump at rest; negative where water stands above it.
   * −1 000 000 to 1 000 000 m.
   */
  readonly staticLevel: Length;
  /** How far pumping draws that level down. 0 to 1 000 000 m; 0 where left out (an open water). */
  readonly drawdown?: Length;
  /** Rise from the wellhead to where the discharge pressure is read; negative downhill. ±1 000 000 m; 0 where left out. */
  readonly elevation?: Length;
  /** Pressure to be held there: for a pressure switch the cut-OUT pressure. ±1e9 Pa; 0 (open end) where left out. */
  readonly dischargePressure?: GaugePressure;
  /** Every loss between the water in the well and that point. At most 1 000 parts; none where left out. */
  readonly losses?: readonly HeadLossPart[];
  /** Velocity in the pipe there. −1000 to 1000 m/s; 0 where left out, as is usual: the head it adds is some inches. */
  readonly dischargeVelocity?: Velocity;
  /** Density of the water. 1 to 25 000 kg/m³. */
  readonly density: Density;
}

/** The total, and the parts it is the sum of. */
export interface TotalDynamicHead {
  /** What the pump must add to each weight of water, m. 0 or less: water arrives without a pump. */
  readonly totalDynamicHead: Length;
  /** Depth of the water below the wellhead while pumping: static level plus drawdown, m. */
  readonly pumpingLevel: Length;
  /** The share that does not change with flow at a given level: pumping level, elevation, discharge pressure, m. */
  readonly staticHead: Length;
  /** The parts; their sum is the total. */
  readonly parts: TotalDynamicHeadParts;
  /** The losses as they were given. */
  readonly losses: readonly HeadLossPart[];
}

/** The parts of a total dynamic head, m each. */
export interface TotalDynamicHeadParts {
  /** From the wellhead down to the water at rest. */
  readonly staticLevel: Length;
  /** From there down to the water while pumping. */
  readonly drawdown: Length;
  /** From the wellhead up to the point of discharge. */
  readonly elevation: Length;
  /** Head of the discharge pressure. */
  readonly dischargePressure: Length;
  /** Sum of the losses. */
  readonly losses: Length;
  /** Velocity head at the point of discharge. */
  readonly velocity: Length;
}

/**
 * The total dynamic head of a well pump, with every part named.
 *
 * @remarks
 * H = s + d + z + p / (ρ g) + Σ h + V² / (2 g)
 *
 * with s `staticLevel`, d `drawdown`, z `elevation`, p `dischargePressure`, h the losses, V `dischargeVelocity`. It is
 * Bernoulli's equation from the water in the well, at rest and open to the air, to the point of discharge. The level
 * that counts is the pumping level, not the static one; the pressure that counts is the highest the pump must reach,
 * a pressure switch's cut-out.
 *
 * @param input - levels and elevations (m), pressure (Pa), losses (m) and density (kg/m³), each with its range
 * @returns the total, the pumping level, the share that does not change with flow, and the parts
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A well at 60 ft, drawn down 20 ft, filling a tank to 50 psi
 * ```ts
 * import { totalDynamicHead } from "risingmain/head";
 * import { feet, inFeet, kilogramsPerCubicMetre, psi } from "risingmain/units";
 *
 * const head = totalDynamicHead({
 *   staticLevel: feet(60), drawdown: feet(20), elevation: feet(12), dischargePressure: psi(50),
 *   losses: [{ name: "drop pipe", headLoss: feet(4.2) }, { name: "line to the house", headLoss: feet(7.1) }],
 *   density: kilogramsPerCubicMetre(999.7),
 * });
 * inFeet(head.totalDynamicHead); // ≈ 218.7
 * inFeet(head.pumpingLevel); // ≈ 80.00
 * inFeet(head.parts.losses); // ≈ 11.30
 * ```
 *
 * @source derived: Bernoulli's equation from the pumping level to the discharge
 * @source us-army-corps-1998, equation 5-6: the same sum
 */
export function totalDynamicHead(input: TotalDynamicHeadInput): TotalDynamicHead {
  requireObject("input", input);
  const { staticLevel, drawdown = 0, elevation = 0, dischargePressure = 0, dischargeVelocity = 0, density } = input;
  const { losses: given = [] } = input;
  requireHead("staticLevel", staticLevel);
  requireWithin("drawdown", drawdown, 0, 1e6, "m");
  requireHead("elevation", elevation);
  requirePressure("dischargePressure", dischargePressure);
  requireVelocity("dischargeVelocity", dischargeVelocity);
  requireDensity(density);
  const losses = lossParts(given);

  const pumpingLevel = staticLevel + drawdown;
  const pressureHead = dischargePressure / (density * STANDARD_GRAVITY);
  const lost = losses.reduce((sum, { headLoss }) => sum + headLoss, 0);
  const velocity = (dischargeVelocity * dischargeVelocity) / (2 * STANDARD_GRAVITY);
  const staticHead = pumpingLevel + elevation + pressureHead;

  return {
    totalDynamicHead: (staticHead + lost + velocity) as Length,
    pumpingLevel: pumpingLevel as Length,
    staticHead: staticHead as Length,
    parts: {
      staticLevel,
      drawdown: drawdown as Length,
      elevation: elevation as Length,
      dischargePressure: pressureHead as Length,
      losses: lost as Length,
      velocity: velocity as Length,
    },
    losses,
  };
}

/** The losses, checked and copied. */
function lossParts(losses: readonly HeadLossPart[]): readonly HeadLossPart[] {
  requireList("losses", losses, 0, 1000);
  return Array.from(losses, (loss, i) => {
    requireObject(`losses[${i}]`, loss);
    const { name, headLoss } = loss;
    requireName(`losses[${i}].name`, name);
    requireWithin(`losses[${i}].headLoss`, headLoss, 0, 1e6, "m");
    return { name, headLoss };
  });
}
