/**
 * Whether a pump hangs at a good depth: inside the casing, above the screen, off the bottom, and covered with water.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import { InputError, type Length } from "../units/index.ts";

/** Usual clearance below the pump, so that it draws no settled sediment: 10 ft, the lower end of 10 to 20 ft; common practice. */
const USUAL_BOTTOM_CLEARANCE = 3.048;

/** Usual cover of the intake at the lowest pumping level: 10 ft, the lower end of 10 to 20 ft; common practice. */
const USUAL_SUBMERGENCE = 3.048;

/** A pump in a well. Every depth is measured down from one mark, such as the top of the casing. */
export interface PumpSettingInput {
  /** Depth of the pump's intake. 0 to 10 000 m. */
  readonly pumpSetting: Length;
  /** Length of motor and any sleeve below the intake. 0 to 50 m; 0 where left out. */
  readonly lengthBelowIntake?: Length;
  /** Depth of the bottom of the well. Above 0, at most 10 000 m. */
  readonly wellDepth: Length;
  /** Depth of the bottom of the casing. Above 0 to the well's depth, m. */
  readonly casingDepth: Length;
  /** Depth of the top of the screen or of the first perforation; left out where the hole below the casing is open. 0 to the well's depth, m. */
  readonly screenTop?: Length;
  /** Lowest depth of the water at the end of the longest draw. −1000 to 10 000 m. */
  readonly pumpingLevel: Length;
  /** Clearance wanted below the lowest part. 0 to 1000 m; 10 ft where left out (common practice, 10 to 20 ft). */
  readonly bottomClearance?: Length;
  /** Cover wanted over the intake at the pumping level. 0 to 1000 m; 10 ft where left out (common practice, 10 to 20 ft). */
  readonly submergence?: Length;
  /** What the pump's suction needs, to check it in terms of boiling too; left out, that check is not made. */
  readonly suction?: SettingSuction;
}

/** A pump's suction, for the check of a setting. */
export interface SettingSuction {
  /** Head of the air over the water less its vapour pressure: `npshAvailable` with the water level with the pump. 0 to 100 m. */
  readonly headAtSurface: Length;
  /** NPSH the pump requires at its greatest flow. 0 to 1000 m. */
  readonly npshRequired: Length;
  /** Head kept in hand above that. 0 to 100 m; 0 where left out. */
  readonly margin?: Length;
}

/** One check: by how much it is met. */
export interface SettingCheck {
  /** Whether the margin is 0 or more. */
  readonly met: boolean;
  /** What there is less what is wanted, m; negative where it is missed. */
  readonly margin: Length;
}

/** The checks of a pump's depth. */
export interface PumpSetting {
  /** Whether every check is met. */
  readonly good: boolean;
  /** The lowest part of the set hangs inside the casing, which keeps sediment from it. */
  readonly insideCasing: SettingCheck;
  /** The lowest part hangs above the screen, so that water passes the motor from below; null where no screen was given. */
  readonly aboveScreen: SettingCheck | null;
  /** The lowest part hangs clear of the bottom. */
  readonly offBottom: SettingCheck;
  /** Water covers the intake at the pumping level. */
  readonly covered: SettingCheck;
  /** Air and water over the intake exceed what the pump's suction requires; null where `suction` was not given. */
  readonly suction: SettingCheck | null;
  /** Height of water over the intake at the pumping level, m; negative where the intake draws air. */
  readonly submergence: Length;
  /** The shallowest intake that meets the wanted cover, m below the mark. */
  readonly shallowest: Length;
  /** The deepest intake that meets the other checks, m below the mark; may lie above the shallowest, and then no depth is good. */
  readonly deepest: Length;
}

/**
 * Checks the depth at which a pump hangs in its well.
 *
 * @remarks
 * Common practice: keep the whole set inside the casing and above the screen, off the bottom, and covered at the
 * pumping level. A set hung lower draws sediment, and water from above passes no motor; a set hung higher draws air.
 *
 * @param input - the depths below one mark, m; each field says the values it takes
 * @returns each check with its margin, and the depths between which all are met
 * @throws {@link units.InputError} naming the first field that cannot be used
 *
 * @example
 * ```ts
 * import { pumpSetting } from "risingmain/well";
 * import { feet, inFeet } from "risingmain/units";
 *
 * const setting = pumpSetting({
 *   pumpSetting: feet(170), lengthBelowIntake: feet(2),
 *   wellDepth: feet(240), casingDepth: feet(180), pumpingLevel: feet(130),
 * });
 * setting.good; // => true
 * inFeet(setting.submergence); // ≈ 40.0
 * inFeet(setting.deepest); // ≈ 178.0
 * ```
 *
 * @source common practice
 */
export function pumpSetting(input: PumpSettingInput): PumpSetting {
  requireObject("input", input);
  const { pumpSetting: intake, lengthBelowIntake = 0, wellDepth, casingDepth, screenTop, pumpingLevel } = input;
  const { bottomClearance = USUAL_BOTTOM_CLEARANCE, submergence: cover = USUAL_SUBMERGENCE } = input;
  requireWithin("pumpSetting", intake, 0, 10_000, "m");
  requireWithin("lengthBelowIntake", lengthBelowIntake, 0, 50, "m");
  requireWithin("wellDepth", wellDepth, 1e-3, 10_000, "m");
  requireWithin("casingDepth", casingDepth, 1e-3, 10_000, "m");
  if (!(casingDepth <= wellDepth)) {
    throw new InputError("casingDepth", casingDepth, `at most the depth of the well, ${wellDepth} m`);
  }
  if (screenTop !== undefined) requireWithin("screenTop", screenTop, 0, wellDepth, "m, the depth of the well");
  requireWithin("pumpingLevel", pumpingLevel, -1000, 10_000, "m");
  requireWithin("bottomClearance", bottomClearance, 0, 1000, "m");
  requireWithin("submergence", cover, 0, 1000, "m");
  const suction = input.suction === undefined ? null : suctionCheck(input.suction, intake - pumpingLevel);

  const lowest = intake + lengthBelowIntake;
  const submergence = intake - pumpingLevel;
  const insideCasing = check(casingDepth - lowest);
  const aboveScreen = screenTop === undefined ? null : check(screenTop - lowest);
  const offBottom = check(wellDepth - lowest - bottomClearance);
  const covered = check(submergence - cover);
  const lowestAllowed = Math.min(casingDepth, wellDepth - bottomClearance, screenTop ?? Number.MAX_VALUE);
  return {
    good: [insideCasing, aboveScreen, offBottom, covered, suction].every((each) => each === null || each.met),
    insideCasing,
    aboveScreen,
    offBottom,
    covered,
    suction,
    submergence: submergence as Length,
    shallowest: (pumpingLevel + cover) as Length,
    deepest: (lowestAllowed - lengthBelowIntake) as Length,
  };
}

/** NPSH available is the head at the surface plus the cover; it must reach the required with its margin. */
function suctionCheck(suction: SettingSuction, cover: number): SettingCheck {
  requireObject("suction", suction);
  const { headAtSurface, npshRequired, margin = 0 } = suction;
  requireWithin("suction.headAtSurface", headAtSurface, 0, 100, "m");
  requireWithin("suction.npshRequired", npshRequired, 0, 1000, "m");
  requireWithin("suction.margin", margin, 0, 100, "m");
  return check(headAtSurface + cover - npshRequired - margin);
}

function check(margin: number): SettingCheck {
  return { met: margin >= 0, margin: margin as Length };
}
