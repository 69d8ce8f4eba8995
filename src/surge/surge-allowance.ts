/**
 * Working pressure plus surge against what the standards for plastic pipe allow.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { GaugePressure, PressureDifference } from "../units/index.ts";

/** Pipe, and the pressures it has to bear. */
export interface SurgeAllowanceInput {
  /** PVC, or polyethylene. */
  readonly material: "pvc" | "pe";
  /** Pressure class (rating) at the temperature of the water. 0 to 1e9 Pa. */
  readonly pressureClass: GaugePressure;
  /** Highest steady pressure. 0 to 1e9 Pa. */
  readonly workingPressure: GaugePressure;
  /** Surge that comes back often: pump starts and stops, valves in use. 0 to 1e9 Pa. */
  readonly recurringSurge: PressureDifference;
  /** Surge of a rare event: a power cut at full flow, a hydrant or main slammed shut. 0 to 1e9 Pa. */
  readonly occasionalSurge: PressureDifference;
}

/** One comparison. */
export interface SurgeCheck {
  /** What is compared. */
  readonly name: "working pressure" | "working plus recurring surge" | "working plus occasional surge";
  /** The pressure that occurs, Pa. */
  readonly pressure: GaugePressure;
  /** The pressure allowed, Pa. */
  readonly allowed: GaugePressure;
  /** What is left; negative where it is exceeded, Pa. */
  readonly margin: PressureDifference;
}

/** The verdict, with all three comparisons. */
export interface SurgeAllowance {
  /** Whether every pressure lies within what is allowed. */
  readonly state: "within allowance" | "over allowance";
  /** The comparisons. */
  readonly checks: readonly SurgeCheck[];
  /** The rule used. */
  readonly method: "awwa-m23" | "awwa-m55";
  /** What to show beside it. */
  readonly cautions: readonly Caution[];
}

/** What to show beside a verdict on surge. */
const ALLOWANCE_CAUTIONS: readonly Caution[] = [
  {
    code: "surge-allowance",
    text: "Pipe that bursts under pressure does harm. The allowance is that of the pipe alone, derated for its water: joints, fittings and valves can hold less. Local code and the maker's marking have the last word.",
    basis: "common practice",
  },
];

/** Share of the pressure class allowed with recurring and with occasional surge; from memory of the two manuals. */
const FACTORS: Readonly<Record<"pvc" | "pe", { readonly recurring: number; readonly occasional: number }>> = {
  pvc: { recurring: 1, occasional: 1.6 },
  pe: { recurring: 1.5, occasional: 2 },
};

/**
 * Checks working pressure and surge against the allowance for PVC or polyethylene pipe.
 *
 * @remarks
 * PVC: p ≤ PC, p + recurring ≤ PC, p + occasional ≤ 1.6 PC.  PE: p ≤ PC, p + recurring ≤ 1.5 PC, p + occasional ≤ 2 PC.
 *
 * with PC `pressureClass`, derated for the water's temperature beforehand. The rules are those of water mains; pipe and
 * fittings of other standards can allow less, threaded or solvent-welded joints too. Fatigue by millions of recurring
 * surges is a further check of the PVC manual and is left out.
 * Caution: pipe that bursts under pressure does harm. Local code and the maker's marking have the last word.
 *
 * @param input - material, class and pressures
 * @returns the verdict, the comparisons behind it, and the cautions to show with it
 * @throws {@link units.InputError} naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { surgeAllowance } from "risingmain/surge";
 * import { inPsi, psi, psiDifference } from "risingmain/units";
 *
 * const check = surgeAllowance({
 *   material: "pvc", pressureClass: psi(235), workingPressure: psi(160),
 *   recurringSurge: psiDifference(30), occasionalSurge: psiDifference(122),
 * });
 * check.state; // => "within allowance"
 * check.checks.map(({ allowed }) => Math.round(inPsi(allowed))); // => [235, 235, 376]
 * ```
 *
 * @source awwa-m23: PVC (from memory); the 1.6 also in moser-2008, example 4.2
 * @source awwa-m55: PE (from memory)
 */
export function surgeAllowance(input: SurgeAllowanceInput): SurgeAllowance {
  requireObject("input", input);
  const { material, pressureClass, workingPressure, recurringSurge, occasionalSurge } = input;
  requireOneOf("material", material, ["pvc", "pe"]);
  requireWithin("pressureClass", pressureClass, 0, 1e9, "Pa");
  requireWithin("workingPressure", workingPressure, 0, 1e9, "Pa");
  requireWithin("recurringSurge", recurringSurge, 0, 1e9, "Pa");
  requireWithin("occasionalSurge", occasionalSurge, 0, 1e9, "Pa");
  const { recurring, occasional } = FACTORS[material];
  const checks = [
    compare("working pressure", workingPressure, pressureClass),
    compare("working plus recurring surge", workingPressure + recurringSurge, recurring * pressureClass),
    compare("working plus occasional surge", workingPressure + occasionalSurge, occasional * pressureClass),
  ];
  return {
    state: checks.every(({ margin }) => margin >= 0) ? "within allowance" : "over allowance",
    checks,
    method: material === "pvc" ? "awwa-m23" : "awwa-m55",
    cautions: ALLOWANCE_CAUTIONS,
  };
}

function compare(name: SurgeCheck["name"], pressure: number, allowed: number): SurgeCheck {
  return {
    name,
    pressure: pressure as GaugePressure,
    allowed: allowed as GaugePressure,
    margin: (allowed - pressure) as PressureDifference,
  };
}
