/**
 * Bernoulli's equation between two points of a line, with a pump, losses and both velocity heads: solved for any one part.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import { type Density, type GaugePressure, InputError, type Length, type Velocity } from "../units/index.ts";
import { requireDensity, requireHead, requirePressure, requireVelocity } from "./ranges.ts";

/** One point of the line. What is left out is 0: at the datum, open to the air, at rest. */
export interface EnergyPointInput {
  /** Height above the datum. ±1 000 000 m. */
  readonly elevation?: Length;
  /** Gauge pressure. ±1e9 Pa. */
  readonly pressure?: GaugePressure;
  /** Mean velocity. −1000 to 1000 m/s. */
  readonly velocity?: Velocity;
}

/** The part of the equation that is not known. */
export type BernoulliUnknown =
  | "from.elevation"
  | "from.pressure"
  | "to.elevation"
  | "to.pressure"
  | "to.velocity"
  | "pumpHead"
  | "headLoss";

/** Two points of a line, and what happens to the water between them. */
export interface BernoulliInput {
  /** The point the water comes from. */
  readonly from: EnergyPointInput;
  /** The point it goes to. */
  readonly to: EnergyPointInput;
  /** Head a pump adds between them; negative for a turbine. ±1 000 000 m; 0 where left out. */
  readonly pumpHead?: Length;
  /** Head lost between them that is already known. 0 to 1 000 000 m; 0 where left out. */
  readonly headLoss?: Length;
  /** Further loss as so many velocity heads of the point `to`. 0 to 1e6; 0 where left out. */
  readonly lossCoefficient?: number;
  /**
   * Kinetic energy correction: true kinetic energy over that of the mean velocity, at both points. 1 to 2; 1 where left
   * out, about 1.05 in turbulent and 2 in laminar pipe flow.
   */
  readonly kineticCorrection?: number;
  /** Density of the water. 1 to 25 000 kg/m³. */
  readonly density: Density;
  /** The part to find. It must itself be left out of the input. */
  readonly solveFor: BernoulliUnknown;
}

/** A point with all its heads. */
export interface EnergyPoint {
  /** Height above the datum, m. */
  readonly elevation: Length;
  /** Gauge pressure, Pa. */
  readonly pressure: GaugePressure;
  /** Mean velocity, m/s. */
  readonly velocity: Velocity;
  /** Head of the pressure, m. */
  readonly pressureHead: Length;
  /** Velocity head, with the kinetic energy correction, m. */
  readonly velocityHead: Length;
  /** Elevation plus pressure head: where water stands in a tube on the pipe, m. */
  readonly hydraulicGrade: Length;
  /** Hydraulic grade plus velocity head, m. */
  readonly energyGrade: Length;
}

/** The balance, complete; or how much head is missing for it to exist. */
export type Bernoulli =
  | {
      /** The equation holds with the parts below. */
      readonly state: "balanced";
      /** The point the water comes from. */
      readonly from: EnergyPoint;
      /** The point it goes to. */
      readonly to: EnergyPoint;
      /** Head added by the pump, m; negative: head to spare, for a valve or a turbine to take. */
      readonly pumpHead: Length;
      /** All head lost between the points, m. */
      readonly headLoss: Length;
    }
  | {
      /** The water cannot get there: the point `to` asks for more energy than the point `from` and the pump give. */
      readonly state: "not enough head";
      /** How much is missing, m. */
      readonly short: Length;
    };

/**
 * Balances the energy of the water between two points and finds the one part that is not known.
 *
 * @remarks
 * z₁ + p₁/(ρ g) + α V₁²/(2 g) + H = z₂ + p₂/(ρ g) + α V₂²/(2 g) + h + K V₂²/(2 g)
 *
 * with z `elevation`, p `pressure`, V `velocity`, H `pumpHead`, h `headLoss`, K `lossCoefficient`, α `kineticCorrection`.
 * Steady flow of a liquid of one density. No limit of vapour pressure is applied: where a pressure found lies near
 * −1 atmosphere the water boils and the balance is fiction; see `gradeLines`.
 *
 * @param input - two points, what lies between them, the density, and the part to find
 * @returns both points with all their heads, the pump head and the loss; or the head that is missing, where a loss or a
 * velocity head would have to be negative
 * @throws {@link units.InputError} naming the first field that is not in its range, or that is given and asked for at once
 *
 * @example A siphon over a dam: the velocity of a 10 ft fall with two velocity heads lost
 * ```ts
 * import { bernoulli } from "risingmain/head";
 * import { feet, inFeetPerSecond, kilogramsPerCubicMetre } from "risingmain/units";
 *
 * const siphon = bernoulli({
 *   from: { elevation: feet(10) }, to: {}, lossCoefficient: 2,
 *   density: kilogramsPerCubicMetre(999.7), solveFor: "to.velocity",
 * });
 * siphon.state === "balanced" ? inFeetPerSecond(siphon.to.velocity) : Number.NaN; // ≈ 14.65
 * ```
 *
 * @source derived: conservation of energy along a stream tube, per weight of water
 */
export function bernoulli(input: BernoulliInput): Bernoulli {
  requireObject("input", input);
  const { pumpHead = 0, headLoss = 0, lossCoefficient: K = 0, kineticCorrection: alpha = 1, density, solveFor } = input;
  requireOneOf("solveFor", solveFor, UNKNOWNS);
  const from = point("from", input.from);
  const to = point("to", input.to);
  requireHead("pumpHead", pumpHead);
  requireWithin("headLoss", headLoss, 0, 1e6, "m");
  requireWithin("lossCoefficient", K, 0, 1e6, "");
  requireWithin("kineticCorrection", alpha, 1, 2, "");
  requireDensity(density);
  refuseGiven(input, solveFor);

  const headPerPascal = 1 / (density * STANDARD_GRAVITY);
  const velocityHead = (V: number): number => (alpha * V * V) / (2 * STANDARD_GRAVITY);
  const toVelocityHead = (to.velocity * to.velocity) / (2 * STANDARD_GRAVITY);
  // What is left over at `to` while the unknown stands at 0: the unknown takes it up.
  const surplus =
    from.elevation +
    from.pressure * headPerPascal +
    velocityHead(from.velocity) +
    pumpHead -
    (to.elevation + to.pressure * headPerPascal + velocityHead(to.velocity) + headLoss + K * toVelocityHead);

  switch (solveFor) {
    case "from.elevation":
      from.elevation = 0 - surplus;
      break;
    case "from.pressure":
      from.pressure = (0 - surplus) / headPerPascal;
      break;
    case "to.elevation":
      to.elevation = surplus;
      break;
    case "to.pressure":
      to.pressure = surplus / headPerPascal;
      break;
    case "to.velocity":
      if (surplus < 0) return { state: "not enough head", short: -surplus as Length };
      to.velocity = Math.sqrt((2 * STANDARD_GRAVITY * surplus) / (alpha + K));
      break;
    case "headLoss":
      if (surplus < 0) return { state: "not enough head", short: -surplus as Length };
  }

  const foundLoss = solveFor === "headLoss" ? surplus : headLoss;
  const allLoss = foundLoss + (K * to.velocity * to.velocity) / (2 * STANDARD_GRAVITY);
  const foundPump = solveFor === "pumpHead" ? 0 - surplus : pumpHead;
  return {
    state: "balanced",
    from: heads(from, headPerPascal, velocityHead),
    to: heads(to, headPerPascal, velocityHead),
    pumpHead: foundPump as Length,
    headLoss: allLoss as Length,
  };
}

const UNKNOWNS: readonly BernoulliUnknown[] = [
  "from.elevation",
  "from.pressure",
  "to.elevation",
  "to.pressure",
  "to.velocity",
  "pumpHead",
  "headLoss",
];

interface Point {
  elevation: number;
  pressure: number;
  velocity: number;
}

function point(name: "from" | "to", given: EnergyPointInput): Point {
  requireObject(name, given);
  const { elevation = 0, pressure = 0, velocity = 0 } = given;
  requireHead(`${name}.elevation`, elevation);
  requirePressure(`${name}.pressure`, pressure);
  requireVelocity(`${name}.velocity`, velocity);
  return { elevation, pressure, velocity };
}

function refuseGiven(input: BernoulliInput, solveFor: BernoulliUnknown): void {
  const [first, second] = solveFor.split(".") as [keyof BernoulliInput, (keyof EnergyPointInput)?];
  const given = second === undefined ? input[first] : (input[first] as EnergyPointInput)[second];
  if (given !== undefined) throw new InputError(solveFor, given, "nothing, since it is the part to find");
}

function heads(at: Point, headPerPascal: number, velocityHead: (V: number) => number): EnergyPoint {
  const pressureHead = at.pressure * headPerPascal;
  const hydraulicGrade = at.elevation + pressureHead;
  return {
    elevation: at.elevation as Length,
    pressure: at.pressure as GaugePressure,
    velocity: at.velocity as Velocity,
    pressureHead: pressureHead as Length,
    velocityHead: velocityHead(at.velocity) as Length,
    hydraulicGrade: hydraulicGrade as Length,
    energyGrade: (hydraulicGrade + velocityHead(at.velocity)) as Length,
  };
}
