/**
 * What goes on a drop pipe by depth: joints, ties, guards, clamps, splices, check valves.
 *
 * @module
 */
import { requireObject, requireWhole, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Length } from "../units/index.ts";
import { liftingCautions } from "./cautions.ts";

/** A pump's setting. */
export interface SettingHardwareInput {
  /** Depth from the wellhead to the pump's outlet. 0 to 5000 m. */
  readonly setting: Length;
  /** Length of one joint of rigid pipe; a coil without joints where left out. 0.1 to 5000 m. */
  readonly jointLength?: Length;
  /** Length of cable on one reel. 0.1 to 100 000 m; one reel does where left out. */
  readonly reelLength?: Length;
  /** Cable beyond the setting, from wellhead to box. 0 to 10 000 m; 0 where left out. */
  readonly cableBeyond?: Length;
  /** Spacing of tape or ties that hold the cable to the pipe. 0.1 to 1000 m; 10 ft where left out (common practice). */
  readonly tieSpacing?: Length;
  /** Spacing of guards that keep cable and pipe off the casing. 0.1 to 1000 m; 50 ft where left out (common practice). */
  readonly guardSpacing?: Length;
  /** Spacing of check valves over the pump's own. 0.1 to 5000 m; 200 ft where left out (common practice). */
  readonly checkSpacing?: Length;
  /** Barb fittings on the drop pipe, pump and wellhead ends included. 0 to 1000; 2 for a coil, 0 for jointed pipe, where left out. */
  readonly barbFittings?: number;
}

/** What to have on the truck. */
export interface SettingHardware {
  /** Joints of pipe, the last one cut; 1 for a coil. */
  readonly joints: number;
  /** Couplings between them. */
  readonly couplings: number;
  /** Length of the last joint, m. */
  readonly lastJoint: Length;
  /** Tape wraps or ties on the cable. */
  readonly ties: number;
  /** Wire guards or centralisers. */
  readonly guards: number;
  /** Torque arrestors: one, just over the pump, on flexible pipe; none on rigid threaded pipe. */
  readonly torqueArrestors: number;
  /** Clamps: two a barb, their screws on opposite sides. */
  readonly clamps: number;
  /** Splices: one at the motor's lead, one for each further reel. */
  readonly splices: number;
  /** Check valves beside the pump's own. */
  readonly checkValves: number;
  /** Cable to have, m, with 2 % for wander (common practice). */
  readonly cable: Length;
  /** Where the counts come from. */
  readonly basis: "common practice";
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

const FOOT = 0.3048;
/** Cable wanders round the pipe, common practice. */
const WANDER = 1.02;
const CLAMPS_PER_BARB = 2;
/** A length that is a whole number of joints but for its last bit is not one joint more. */
const SLACK = 1e-9;

/**
 * Counts of what goes on a drop pipe for a setting.
 *
 * @remarks
 * Joints ⌈l/j⌉, ties and guards one a spacing, check valves ⌈l/spacing⌉ − 1 over the pump's own, splices one at the motor and one
 * for each further reel. All common practice: the pump's own instructions and the local code win.
 *
 * @param input - setting, joints, reels and spacings; each field says its unit and range
 * @returns the counts
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example 250 ft on 20 ft joints
 * ```ts
 * import { settingHardware } from "risingmain/field";
 * import { feet } from "risingmain/units";
 *
 * const set = settingHardware({ setting: feet(250), jointLength: feet(20) });
 * [set.joints, set.couplings, set.ties, set.guards, set.checkValves]; // => [13, 12, 25, 5, 1]
 * ```
 *
 * @source common practice
 */
export function settingHardware(input: SettingHardwareInput): SettingHardware {
  requireObject("input", input);
  const { setting, jointLength, cableBeyond = 0, tieSpacing = 10 * FOOT, guardSpacing = 50 * FOOT } = input;
  const { checkSpacing = 200 * FOOT, reelLength, barbFittings = jointLength === undefined ? 2 : 0 } = input;
  requireWithin("setting", setting, 0, 5000, "m");
  if (jointLength !== undefined) requireWithin("jointLength", jointLength, 0.1, 5000, "m");
  if (reelLength !== undefined) requireWithin("reelLength", reelLength, 0.1, 1e5, "m");
  requireWithin("cableBeyond", cableBeyond, 0, 1e4, "m");
  requireWithin("tieSpacing", tieSpacing, 0.1, 1000, "m");
  requireWithin("guardSpacing", guardSpacing, 0.1, 1000, "m");
  requireWithin("checkSpacing", checkSpacing, 0.1, 5000, "m");
  requireWhole("barbFittings", barbFittings, 0, 1000);
  const joints = jointLength === undefined ? 1 : Math.max(pieces(setting, jointLength), 1);
  const cable = setting * WANDER + cableBeyond;
  const reels = reelLength === undefined ? 1 : Math.max(pieces(cable, reelLength), 1);
  return {
    joints,
    couplings: joints - 1,
    lastJoint: (setting - (joints - 1) * (jointLength ?? 0)) as Length,
    ties: pieces(setting, tieSpacing),
    guards: pieces(setting, guardSpacing),
    torqueArrestors: jointLength === undefined ? 1 : 0,
    clamps: CLAMPS_PER_BARB * barbFittings,
    splices: reels,
    checkValves: Math.max(pieces(setting, checkSpacing) - 1, 0),
    cable: cable as Length,
    basis: "common practice",
    cautions: liftingCautions,
  };
}

function pieces(length: number, piece: number): number {
  return Math.ceil((length / piece) * (1 - SLACK));
}
