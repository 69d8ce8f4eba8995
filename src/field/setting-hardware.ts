/**
 * What to have on the truck for a setting: joints, clamps, splices, cable, and the fixings of the drop pipe.
 *
 * @module
 */
import { requireObject, requireWhole, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Length } from "../units/index.ts";
import { dropPipeFixings, type Fixings, type FixingsInput } from "../well/index.ts";
import { liftingCautions } from "./cautions.ts";

/** A pump's setting: depths and spacings as for `dropPipeFixings` of `risingmain/well`, and what pipe and cable come in. */
export interface SettingHardwareInput extends FixingsInput {
  /** Length of one joint of rigid pipe; a coil without joints where left out. 0.1 to 5000 m. */
  readonly jointLength?: Length;
  /** Length of cable on one reel. 0.1 to 100 000 m; one reel does where left out. */
  readonly reelLength?: Length;
  /** Cable beyond the setting, from wellhead to box. 0 to 10 000 m; 0 where left out. */
  readonly cableBeyond?: Length;
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
  /** Check valves by depth, guides or centralisers, and ties of the cable. */
  readonly fixings: Fixings;
  /** Torque arrestors: one, just over the pump, on flexible pipe; none on rigid threaded pipe. */
  readonly torqueArrestors: number;
  /** Clamps: two a barb, their screws on opposite sides. */
  readonly clamps: number;
  /** Splices: one at the motor's lead, one for each further reel. */
  readonly splices: number;
  /** Cable to have, m, with 2 % for wander (common practice). */
  readonly cable: Length;
  /** Where the counts come from. */
  readonly basis: "common practice";
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

/** Cable wanders round the pipe, common practice. */
const WANDER = 1.02;
const CLAMPS_PER_BARB = 2;
/** A length that is a whole number of joints but for its last bit is not one joint more. */
const SLACK = 1e-9;

/**
 * Counts of what goes on a drop pipe for a setting.
 *
 * @remarks
 * Joints ⌈l/j⌉, splices one at the motor and one for each further reel, two clamps a barb; check valves, guides and ties by
 * `dropPipeFixings`. All common practice: the pump's own instructions and the local code win.
 *
 * @param input - depths, joints, reels and spacings; each field says its unit and range
 * @returns the counts
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example 250 ft on 20 ft joints, pumping from 200 ft
 * ```ts
 * import { settingHardware } from "risingmain/field";
 * import { feet } from "risingmain/units";
 *
 * const set = settingHardware({ pumpSetting: feet(250), pumpingLevel: feet(200), jointLength: feet(20) });
 * [set.joints, set.couplings, set.fixings.ties, set.fixings.guides]; // => [13, 12, 25, 3]
 * ```
 *
 * @source common practice
 */
export function settingHardware(input: SettingHardwareInput): SettingHardware {
  requireObject("input", input);
  const fixings = dropPipeFixings(input);
  const { pumpSetting: setting, jointLength, reelLength, cableBeyond = 0 } = input;
  const { barbFittings = jointLength === undefined ? 2 : 0 } = input;
  if (jointLength !== undefined) requireWithin("jointLength", jointLength, 0.1, 5000, "m");
  if (reelLength !== undefined) requireWithin("reelLength", reelLength, 0.1, 1e5, "m");
  requireWithin("cableBeyond", cableBeyond, 0, 1e4, "m");
  requireWhole("barbFittings", barbFittings, 0, 1000);
  const joints = jointLength === undefined ? 1 : Math.max(pieces(setting, jointLength), 1);
  const cable = setting * WANDER + cableBeyond;
  return {
    joints,
    couplings: joints - 1,
    lastJoint: (setting - (joints - 1) * (jointLength ?? 0)) as Length,
    fixings,
    torqueArrestors: jointLength === undefined ? 1 : 0,
    clamps: CLAMPS_PER_BARB * barbFittings,
    splices: reelLength === undefined ? 1 : Math.max(pieces(cable, reelLength), 1),
    cable: cable as Length,
    basis: "common practice",
    cautions: liftingCautions,
  };
}

function pieces(length: number, piece: number): number {
  return Math.ceil((length / piece) * (1 - SLACK));
}
