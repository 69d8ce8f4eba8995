/**
 * What authorities ask of a wellhead, its pressures and the test of its lines. They disagree: there is no national figure for most,
 * and the local one wins.
 *
 * Each row names its source; read in stored copies but for those that say "recalled". SI: metres, pascals, seconds, kg/m³, shares.
 *
 * @module
 */

/** What a published rule is about. */
export type RuleSubject =
  | "burial of a water service"
  | "casing above flood"
  | "casing above floor"
  | "casing above ground"
  | "chlorine in drinking water at most"
  | "grout depth"
  | "least pressure at a fixture"
  | "line test fall allowed"
  | "line test fall allowed, of the pressure"
  | "line test hold"
  | "line test over working pressure"
  | "line test pressure at least"
  | "most relief setting behind a regulator"
  | "most static pressure without a regulator"
  | "polyethylene rest before the test"
  | "pressure of a public system"
  | "pressure of a public system in an emergency"
  | "share of the reduced pressure to size pipes by"
  | "slab beyond casing"
  | "slab thickness"
  | "well to animals"
  | "well to drainfield"
  | "well to septic tank"
  | "well to sewer line";

/** One authority's figure. */
export interface PublishedRule {
  /** What it is about. */
  readonly subject: RuleSubject;
  /** The figure, SI. */
  readonly value: number;
  /** What kind of quantity it is: m, Pa, s, kg/m³, or a share. */
  readonly kind: "length" | "pressure" | "duration" | "concentration" | "ratio";
  /** Source id. */
  readonly source: string;
  /** Whose rule it is. */
  readonly place: string;
}

/** Rules by subject. */
export const RULES: readonly PublishedRule[] = [
  {
    subject: "burial of a water service",
    value: 1.524,
    kind: "length",
    source: "vermillion-53-057",
    place: "Vermillion, South Dakota",
  },
  {
    subject: "burial of a water service",
    value: 2.286,
    kind: "length",
    source: "bloomington-service-pipes",
    place: "Bloomington, Minnesota",
  },
  {
    subject: "burial of a water service",
    value: 0.762,
    kind: "length",
    source: "bedford-service-pipes",
    place: "Bedford, Indiana",
  },
  { subject: "casing above flood", value: 0.4572, kind: "length", source: "montana-arm-36-21-647", place: "Montana" },
  {
    subject: "casing above flood",
    value: 0.6096,
    kind: "length",
    source: "washington-wac-173-160-291",
    place: "Washington",
  },
  { subject: "casing above flood", value: 0.6, kind: "length", source: "davis-2010", place: "a textbook" },
  {
    subject: "casing above floor",
    value: 0.3048,
    kind: "length",
    source: "ten-states-standards",
    place: "Ten states, recalled",
  },
  { subject: "casing above floor", value: 0.4572, kind: "length", source: "montana-arm-36-21-647", place: "Montana" },
  {
    subject: "casing above ground",
    value: 0.4572,
    kind: "length",
    source: "ten-states-standards",
    place: "Ten states, recalled",
  },
  { subject: "casing above ground", value: 0.4572, kind: "length", source: "montana-arm-36-21-647", place: "Montana" },
  {
    subject: "casing above ground",
    value: 0.1524,
    kind: "length",
    source: "washington-wac-173-160-291",
    place: "Washington",
  },
  { subject: "casing above ground", value: 0.2032, kind: "length", source: "maine-cmr-232", place: "Maine" },
  { subject: "casing above ground", value: 0.3048, kind: "length", source: "florida-fac-62-532", place: "Florida" },
  {
    subject: "casing above ground",
    value: 0.3048,
    kind: "length",
    source: "warren-county-52-22",
    place: "Warren County, North Carolina",
  },
  {
    subject: "chlorine in drinking water at most",
    value: 0.004,
    kind: "concentration",
    source: "us-40-cfr-141",
    place: "United States, public systems, recalled",
  },
  {
    subject: "chlorine in drinking water at most",
    value: 0.005,
    kind: "concentration",
    source: "who-drinking-water",
    place: "World Health Organization, recalled",
  },
  { subject: "grout depth", value: 3.048, kind: "length", source: "army-md0160", place: "US Army, in the field" },
  {
    subject: "least pressure at a fixture",
    value: 103421.3593975254,
    kind: "pressure",
    source: "the-driller-pressure-drop",
    place: "the Uniform Plumbing Code, as a trade journal quotes it",
  },
  {
    subject: "line test fall allowed",
    value: 34473.786465841804,
    kind: "pressure",
    source: "greentown-154-128",
    place: "Greentown, Indiana",
  },
  {
    subject: "line test fall allowed, of the pressure",
    value: 0.05,
    kind: "ratio",
    source: "eldridge-3-08",
    place: "Eldridge, Iowa",
  },
  { subject: "line test hold", value: 3600, kind: "duration", source: "eldridge-3-08", place: "Eldridge, Iowa" },
  {
    subject: "line test hold",
    value: 7200,
    kind: "duration",
    source: "greentown-154-128",
    place: "Greentown, Indiana",
  },
  {
    subject: "line test hold",
    value: 3600,
    kind: "duration",
    source: "nashua-15210",
    place: "Nashua, New Hampshire, polyethylene",
  },
  {
    subject: "line test over working pressure",
    value: 1.5,
    kind: "ratio",
    source: "eldridge-3-08",
    place: "Eldridge, Iowa",
  },
  {
    subject: "line test over working pressure",
    value: 1.5,
    kind: "ratio",
    source: "greentown-154-128",
    place: "Greentown, Indiana",
  },
  {
    subject: "line test over working pressure",
    value: 1.5,
    kind: "ratio",
    source: "nashua-15210",
    place: "Nashua, New Hampshire, polyethylene",
  },
  {
    subject: "line test pressure at least",
    value: 689475.7293168361,
    kind: "pressure",
    source: "greentown-154-128",
    place: "Greentown, Indiana",
  },
  {
    subject: "most relief setting behind a regulator",
    value: 689475.7293168361,
    kind: "pressure",
    source: "iapmo-upc-2015-608",
    place: "the Uniform Plumbing Code",
  },
  {
    subject: "most static pressure without a regulator",
    value: 551580.5834534689,
    kind: "pressure",
    source: "iapmo-upc-2015-608",
    place: "the Uniform Plumbing Code",
  },
  {
    subject: "polyethylene rest before the test",
    value: 10800,
    kind: "duration",
    source: "nashua-15210",
    place: "Nashua, New Hampshire, polyethylene",
  },
  {
    subject: "pressure of a public system",
    value: 241316.50526089262,
    kind: "pressure",
    source: "texas-30-tac-290-45",
    place: "Texas, public systems",
  },
  {
    subject: "pressure of a public system in an emergency",
    value: 137895.14586336722,
    kind: "pressure",
    source: "texas-30-tac-290-45",
    place: "Texas, public systems",
  },
  {
    subject: "share of the reduced pressure to size pipes by",
    value: 0.8,
    kind: "ratio",
    source: "iapmo-upc-2015-608",
    place: "the Uniform Plumbing Code",
  },
  {
    subject: "slab beyond casing",
    value: 0.6096,
    kind: "length",
    source: "army-md0160",
    place: "US Army, in the field",
  },
  { subject: "slab thickness", value: 0.1016, kind: "length", source: "army-md0160", place: "US Army, in the field" },
  {
    subject: "well to animals",
    value: 30.48,
    kind: "length",
    source: "el-dorado-setbacks",
    place: "El Dorado County, California",
  },
  {
    subject: "well to drainfield",
    value: 30.48,
    kind: "length",
    source: "washtenaw-isolation",
    place: "Washtenaw County, Michigan",
  },
  {
    subject: "well to septic tank",
    value: 30.48,
    kind: "length",
    source: "el-dorado-setbacks",
    place: "El Dorado County, California",
  },
  {
    subject: "well to septic tank",
    value: 15.24,
    kind: "length",
    source: "washtenaw-isolation",
    place: "Washtenaw County, Michigan",
  },
  {
    subject: "well to septic tank",
    value: 91.44,
    kind: "length",
    source: "army-md0160",
    place: "US Army, in the field",
  },
  {
    subject: "well to sewer line",
    value: 15.24,
    kind: "length",
    source: "el-dorado-setbacks",
    place: "El Dorado County, California",
  },
];
