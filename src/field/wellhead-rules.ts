/**
 * Published rules for a wellhead, side by side, and the air gap over a tank that is filled from it.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import { InputError, type Length } from "../units/index.ts";
import { authorityCaution } from "./cautions.ts";
import { type PublishedRule, RULES, type RuleSubject } from "./standards/published-rules.ts";

/** What has been published on a subject. */
export interface WellheadRules {
  /** The least figure, SI. */
  readonly least: number;
  /** The greatest, SI. */
  readonly most: number;
  /** Every figure with its source, least first. */
  readonly rules: readonly PublishedRule[];
  /** What to say with it: the local rule wins. */
  readonly cautions: readonly Caution[];
}

/**
 * What authorities have published on a subject: setbacks, casing height, pressures, line tests, burial, chlorine at the tap.
 *
 * @remarks
 * A handful of rules that were read, not a survey: it shows how far authorities differ, and that a figure from elsewhere proves nothing.
 * Ask which rule holds on the site.
 *
 * @param subject - one of the subjects listed in its type
 * @returns the span of the figures, the figures, and the caution
 * @throws {@link units.InputError} where there is no such subject
 *
 * @example From well to septic tank: 50, 100 and 300 ft
 * ```ts
 * import { wellheadRules } from "risingmain/field";
 *
 * const asked = wellheadRules("well to septic tank");
 * [asked.least, asked.most].map((metres) => Math.round(metres / 0.3048)); // => [50, 300]
 * asked.rules[0]?.place; // => "Washtenaw County, Michigan"
 * ```
 *
 * @source el-dorado-setbacks
 * @source washtenaw-isolation
 * @source army-md0160, 6-10
 * @source ten-states-standards, 3.2.5; recalled
 * @source montana-arm-36-21-647
 * @source washington-wac-173-160-291
 * @source maine-cmr-232, 401.2.3
 * @source florida-fac-62-532, 500(4)(b)2
 * @source warren-county-52-22
 * @source davis-2010, p. 4-13
 * @source texas-30-tac-290-45
 * @source the-driller-pressure-drop
 * @source iapmo-upc-2015-608
 * @source vermillion-53-057
 * @source bloomington-service-pipes
 * @source bedford-service-pipes
 * @source eldridge-3-08
 * @source greentown-154-128
 * @source nashua-15210
 * @source us-40-cfr-141, 141.65(a); recalled
 * @source who-drinking-water, chapter 12; recalled
 */
export function wellheadRules(subject: RuleSubject): WellheadRules {
  const rules = RULES.filter((rule) => rule.subject === subject).sort((a, b) => a.value - b.value);
  const [first] = rules;
  const last = rules[rules.length - 1];
  if (first === undefined || last === undefined) throw new InputError("subject", subject, "one of the subjects listed");
  return { least: first.value, most: last.value, rules, cautions: [authorityCaution] };
}

/** A rule for the air gap. */
export type AirGapRule = "twice the bore, one inch at least" | "twice the bore, 20 mm at least";

/** The floor under each rule: an inch in the United States, 20 mm in the United Kingdom. */
const FLOORS: Readonly<Record<AirGapRule, number>> = {
  "twice the bore, one inch at least": 0.0254,
  "twice the bore, 20 mm at least": 0.02,
};

/** A spout over a tank, trough or basin. */
export interface AirGapInput {
  /** Bore of the supply, at its narrowest opening. 0 to 1 m. */
  readonly bore: Length;
  /** The rule; "twice the bore, one inch at least" where left out. */
  readonly rule?: AirGapRule;
}

/** The gap. */
export interface AirGap {
  /** Least height of the spout over the rim that water spills over, m. */
  readonly gap: Length;
  /** What to say with it: the local rule wins. */
  readonly cautions: readonly Caution[];
}

/**
 * The least air gap between a spout and the spill rim under it, so that nothing can be drawn back into the line.
 *
 * @remarks
 * Twice the bore, and no less than a floor. Beside a wall more is asked; hydrants with a weep hole and chemical fills have rules of
 * their own.
 *
 * @param input - bore and rule; each field says its unit and range
 * @returns the gap and the caution
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { leastAirGap } from "risingmain/field";
 * import { inches, inInches } from "risingmain/units";
 *
 * inInches(leastAirGap({ bore: inches(0.75) }).gap); // ≈ 1.5
 * ```
 *
 * @source air-gap-ordinance, table of minimum air gaps
 * @source dc-25-b1405, 1405.1
 * @source water-regs-uk-air-gap, item a
 */
export function leastAirGap(input: AirGapInput): AirGap {
  requireObject("input", input);
  const { bore, rule = "twice the bore, one inch at least" } = input;
  requireWithin("bore", bore, 0, 1, "m");
  requireOneOf("rule", rule, Object.keys(FLOORS));
  return { gap: Math.max(2 * bore, FLOORS[rule]) as Length, cautions: [authorityCaution] };
}
