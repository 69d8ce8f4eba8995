/**
 * The inch, for the published formulas that carry one.
 *
 * @module
 */

/** One inch in metres; exact by definition (`nist-sp811`). */
export const INCH = 0.0254;
