/**
 * Whether the water drawn past a submersible motor is fast enough to cool it.
 *
 * @module
 */
import { requireBoolean, requireObject, requirePositive, requireWithin } from "../numeric/index.ts";
import { InputError, type Length, type Velocity, type VolumeFlow } from "../units/index.ts";
import { annulus } from "./casing.ts";

/** A submersible motor in a casing or sleeve. */
export interface MotorCoolingInput {
  /** Flow drawn past the motor: the least at which it runs for long. 0 to 100 m³/s. */
  readonly flow: VolumeFlow;
  /** Inside diameter of the casing or sleeve around the motor. Above 0, at most 100 m. */
  readonly casingInsideDiameter: Length;
  /** Outside diameter of the motor. 0.01 m to below the casing's. */
  readonly motorDiameter: Length;
  /** Whether water enters the well above the pump, so that none passes the motor; false where left out. */
  readonly feedsFromAbove?: boolean;
  /** Least velocity, where the motor's maker states it. 1e-6 to 10 m/s; by diameter where left out. */
  readonly leastVelocity?: Velocity;
}

/** How a motor is cooled. */
export interface MotorCooling {
  /** Mean velocity in the ring around the motor, m/s; 0 where the well feeds from above. */
  readonly velocity: Velocity;
  /** Velocity wanted, m/s. */
  readonly leastVelocity: Velocity;
  /** Flow that would give it in this casing, m³/s. */
  readonly leastFlow: VolumeFlow;
  /** Whether a flow sleeve is needed, and why. */
  readonly sleeve: "not needed" | "needed: too slow" | "needed: fed from above";
  /** Greatest inside diameter of a sleeve in which this flow is fast enough, m. */
  readonly greatestSleeve: Length;
}

/** Motors up to this diameter, nominal 4 in, want the lower velocity; common practice. */
const SMALL_MOTOR = 0.1143;
/** Motors from this diameter, nominal 10 in, want the highest. */
const LARGE_MOTOR = 0.2413;
/** 0.25 ft/s for nominal 4 in motors; common practice. */
const SMALL_MOTOR_VELOCITY = 0.0762;
/** 0.5 ft/s for nominal 6 and 8 in motors; common practice. */
const MIDDLE_MOTOR_VELOCITY = 0.1524;
/** 0.8 ft/s for nominal 10 in motors and larger, the safer of two figures in use; common practice. */
const LARGE_MOTOR_VELOCITY = 0.24384;

/**
 * Velocity of the water past a submersible motor, and whether a flow sleeve is needed.
 *
 * @remarks
 * V = Q / A with A the ring between casing and motor. Common practice for water up to about 30 °C asks for 0.25 ft/s
 * past nominal 4 in motors, 0.5 ft/s past 6 and 8 in, and 0.5 to 0.8 ft/s past 10 in and larger (0.8 is used here).
 * The motor maker's own figure comes first: give it as `leastVelocity`.
 *
 * @param input - flow, diameters and where the water enters; each field says its unit and the values it takes
 * @returns velocity, the flow that would be enough, and whether a sleeve is needed
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { motorCooling } from "risingmain/well";
 * import { gpm, inches, inFeetPerSecond, inGpm } from "risingmain/units";
 *
 * const cooling = motorCooling({ flow: gpm(10), casingInsideDiameter: inches(6.065), motorDiameter: inches(3.75) });
 * inFeetPerSecond(cooling.velocity); // ≈ 0.180
 * inGpm(cooling.leastFlow); // ≈ 13.91
 * cooling.sleeve; // => "needed: too slow"
 * ```
 *
 * @source common practice
 */
export function motorCooling(input: MotorCoolingInput): MotorCooling {
  requireObject("input", input);
  const { flow, casingInsideDiameter, motorDiameter, feedsFromAbove = false } = input;
  requireWithin("flow", flow, 0, 100, "m³/s");
  requirePositive("casingInsideDiameter", casingInsideDiameter, 100, "m");
  requireWithin("motorDiameter", motorDiameter, 0.01, 100, "m");
  if (!(motorDiameter < casingInsideDiameter)) {
    throw new InputError("motorDiameter", motorDiameter, `less than the inside diameter, ${casingInsideDiameter} m`);
  }
  requireBoolean("feedsFromAbove", feedsFromAbove);
  const leastVelocity = input.leastVelocity ?? usualVelocity(motorDiameter);
  requireWithin("leastVelocity", leastVelocity, 1e-6, 10, "m/s");
  const { area } = annulus({ insideDiameter: casingInsideDiameter, bodyDiameter: motorDiameter });
  // A ring thinner than rounding has no area to divide by; nor would the motor go in.
  if (!(area > 1e-9)) throw new InputError("motorDiameter", motorDiameter, "small enough to leave an open ring");
  const velocity = feedsFromAbove ? 0 : flow / area;
  return {
    velocity: velocity as Velocity,
    leastVelocity: leastVelocity as Velocity,
    leastFlow: (leastVelocity * area) as VolumeFlow,
    sleeve: feedsFromAbove ? "needed: fed from above" : velocity < leastVelocity ? "needed: too slow" : "not needed",
    greatestSleeve: Math.sqrt(motorDiameter * motorDiameter + flow / leastVelocity / (Math.PI / 4)) as Length,
  };
}

function usualVelocity(motorDiameter: number): number {
  if (motorDiameter <= SMALL_MOTOR) return SMALL_MOTOR_VELOCITY;
  return motorDiameter < LARGE_MOTOR ? MIDDLE_MOTOR_VELOCITY : LARGE_MOTOR_VELOCITY;
}
