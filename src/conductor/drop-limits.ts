/**
 * Voltage drops that codes recommend or prescribe.
 *
 * @module
 */

/** One recommendation. */
export interface DropLimit {
  /** Who gives it, and for which supply. */
  readonly rule:
    | "code, branch circuit"
    | "code, feeder and branch"
    | "international, public supply"
    | "international, own transformer";
  /** For lighting, as a share of the nominal voltage; null where the rule makes no difference. */
  readonly lighting: number | null;
  /** For all else, motors included, as a share of the nominal voltage. */
  readonly other: number;
  /** Source. */
  readonly method: "nfpa-70" | "iec-60364-5-52";
}

/**
 * Recommended greatest voltage drops: advice in the American code, usual practice under the international standard.
 *
 * @source nfpa-70, 210.19(A) and 215.2, informational notes
 * @source iec-60364-5-52, annex G
 */
export const recommendedDropLimits: readonly DropLimit[] = [
  { rule: "code, branch circuit", lighting: null, other: 0.03, method: "nfpa-70" },
  { rule: "code, feeder and branch", lighting: null, other: 0.05, method: "nfpa-70" },
  { rule: "international, public supply", lighting: 0.03, other: 0.05, method: "iec-60364-5-52" },
  { rule: "international, own transformer", lighting: 0.06, other: 0.08, method: "iec-60364-5-52" },
];
