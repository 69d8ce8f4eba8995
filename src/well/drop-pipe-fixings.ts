/**
 * What goes on a drop pipe on the way down: check valves, guides and ties, and the twist of a starting motor.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Frequency, Length, Power, Torque } from "../units/index.ts";

/** A drop pipe to be hung. Depths are measured down from the top of the pipe. */
export interface FixingsInput {
  /** Depth of the pump. 0 to 5000 m. */
  readonly pumpSetting: Length;
  /** Depth of the water while the pump runs. 0 to 10 000 m. */
  readonly pumpingLevel: Length;
  /** Between the pumping level and the first check valve above it. 0 to 100 m; 25 ft where left out. */
  readonly valveAboveLevel?: Length;
  /** Between check valves from there up. 1 to 1000 m; 200 ft where left out. */
  readonly valveSpacing?: Length;
  /** Between guides that keep the pipe off the casing and take the twist. 1 to 1000 m; 100 ft where left out. */
  readonly guideSpacing?: Length;
  /** Between ties of the cable to the pipe. 0.1 to 100 m; 10 ft where left out. */
  readonly tieSpacing?: Length;
}

/** What goes where. */
export interface Fixings {
  /** Depths of the check valves from the bottom up, m; the first is the pump's own. */
  readonly checkValves: readonly Length[];
  /** Guides: one just above the pump, where the twist is taken, and one each spacing up. */
  readonly guides: number;
  /** Ties of the cable. */
  readonly ties: number;
  /** The rule: common practice; codes and makers differ. */
  readonly method: "common practice";
}

/** 25, 200, 100 and 10 ft: usual distances; common practice. */
const VALVE_ABOVE_LEVEL = 7.62;
const VALVE_SPACING = 60.96;
const GUIDE_SPACING = 30.48;
const TIE_SPACING = 3.048;

/**
 * Check valves, guides and cable ties of a drop pipe, by depth.
 *
 * @remarks
 * A check valve at the pump; where the pump hangs deep, the next 25 ft above the pumping level and one each 200 ft up:
 * a valve higher than that above the water would leave a void below it when the level falls, and water hammer on start.
 * Depths that do not reach the next valve get none. Common practice; local code and the pump's maker come first.
 *
 * @param input - the depths and spacings; each field says its unit and the values it takes
 * @returns depths of the valves, and how many guides and ties
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { dropPipeFixings } from "risingmain/well";
 * import { feet, inFeet } from "risingmain/units";
 *
 * const fixings = dropPipeFixings({ pumpSetting: feet(740), pumpingLevel: feet(700) });
 * fixings.checkValves.map((depth) => Math.round(inFeet(depth))); // => [740, 675, 475, 275, 75]
 * ```
 *
 * @source common practice
 */
export function dropPipeFixings(input: FixingsInput): Fixings {
  requireObject("input", input);
  const { pumpSetting, pumpingLevel, valveAboveLevel = VALVE_ABOVE_LEVEL, valveSpacing = VALVE_SPACING } = input;
  const { guideSpacing = GUIDE_SPACING, tieSpacing = TIE_SPACING } = input;
  requireWithin("pumpSetting", pumpSetting, 0, 5000, "m");
  requireWithin("pumpingLevel", pumpingLevel, 0, 10_000, "m");
  requireWithin("valveAboveLevel", valveAboveLevel, 0, 100, "m");
  requireWithin("valveSpacing", valveSpacing, 1, 1000, "m");
  requireWithin("guideSpacing", guideSpacing, 1, 1000, "m");
  requireWithin("tieSpacing", tieSpacing, 0.1, 100, "m");
  const checkValves = [pumpSetting];
  const second = Math.min(pumpingLevel, pumpSetting) - valveAboveLevel;
  for (let i = 0; second - i * valveSpacing > 0; i++) checkValves.push((second - i * valveSpacing) as Length);
  return {
    checkValves,
    guides: 1 + Math.floor(pumpSetting / guideSpacing),
    ties: Math.ceil(pumpSetting / tieSpacing),
    method: "common practice",
  };
}

/** A motor about to start. */
export interface MotorTorqueInput {
  /** Shaft power at full load. 0 to 1e7 W. */
  readonly power: Power;
  /** Speed at full load; `perMinute` takes r/min. 0.1 to 1000 Hz. */
  readonly speed: Frequency;
  /** Starting torque over that at full load. 0.1 to 10; 2 where left out (assumed, common practice). */
  readonly startingMultiple?: number;
}

/** The twist on the drop pipe. */
export interface MotorTorque {
  /** At full load, N·m. */
  readonly running: Torque;
  /** At start, N·m. */
  readonly starting: Torque;
}

/** Usual starting torque of a submersible motor over its full-load torque; common practice. */
const USUAL_MULTIPLE = 2;

/**
 * The twist a motor puts on its drop pipe when it runs and when it starts.
 *
 * @remarks
 * M = P / (2 π n). The reaction turns the pump against its own sense each start: guides take it, and it must tighten
 * threaded joints, not loosen them.
 *
 * @param input - power, speed and starting multiple; each field says its unit and the values it takes
 * @returns both torques, N·m
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example
 * ```ts
 * import { motorTorque } from "risingmain/well";
 * import { horsepower, inPoundFeet, perMinute } from "risingmain/units";
 *
 * const torque = motorTorque({ power: horsepower(2), speed: perMinute(3450) });
 * inPoundFeet(torque.running); // ≈ 3.045
 * inPoundFeet(torque.starting); // ≈ 6.09
 * ```
 *
 * @source derived: power over angular speed
 */
export function motorTorque(input: MotorTorqueInput): MotorTorque {
  requireObject("input", input);
  const { power, speed, startingMultiple = USUAL_MULTIPLE } = input;
  requireWithin("power", power, 0, 1e7, "W");
  requireWithin("speed", speed, 0.1, 1000, "Hz");
  requireWithin("startingMultiple", startingMultiple, 0.1, 10, "");
  const running = power / (2 * Math.PI * speed);
  return { running: running as Torque, starting: (running * startingMultiple) as Torque };
}
