/**
 * Standard gravity, once.
 *
 * @module
 */

/** Standard gravity, m/s²; exact by definition (`cgpm-1901`). */
export const STANDARD_GRAVITY = 9.80665;
