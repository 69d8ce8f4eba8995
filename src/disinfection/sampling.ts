/**
 * When to sample after disinfection, and for what.
 *
 * @module
 */

/** One sample. */
export interface SamplingStep {
  /** Short name that does not change. */
  readonly code: string;
  /** When. */
  readonly when: string;
  /** For what. */
  readonly what: string;
  /** Why, and what the answer means. */
  readonly why: string;
  /** A source id, "common practice" or "derived". */
  readonly basis: string;
}

/**
 * The usual samples after a well is disinfected, in order. The health department's list wins.
 *
 * @source common practice
 */
export const samplingPractice: readonly SamplingStep[] = [
  {
    code: "chlorine-gone",
    when: "Before any bacterial sample, at the tap to be sampled.",
    what: "Free chlorine, by test strip or kit: none.",
    why: "Chlorine in the bottle kills what the sample looks for. A clean result would mean nothing.",
    basis: "common practice",
  },
  {
    code: "first-bacteria",
    when: "A day or more after the chlorine is flushed out, in ordinary use; many authorities ask 5 to 14 days.",
    what: "Total coliforms and E. coli, in the laboratory's own sterile bottle, kept cold, delivered inside its time limit.",
    why: "Shows whether the disinfection held. Do not drink the water before this result.",
    basis: "common practice",
  },
  {
    code: "second-bacteria",
    when: "One to two weeks after the first clean sample; again after two to three months.",
    what: "Total coliforms and E. coli.",
    why: "Bacteria that come back show a way in (cap, seal, casing, surface water), which chlorine does not mend.",
    basis: "common practice",
  },
  {
    code: "chemistry",
    when: "On a new well, after it has been pumped clear.",
    what: "Nitrate, and what the region is known for: arsenic, fluoride, uranium, iron, manganese, hardness, pH.",
    why: "Disinfection does nothing about these.",
    basis: "common practice",
  },
  {
    code: "yearly",
    when: "Every year, and after a flood, a repair, or a change of taste, colour or smell.",
    what: "Total coliforms, E. coli, nitrate.",
    why: "A private well has no one else to watch it.",
    basis: "common practice",
  },
];
