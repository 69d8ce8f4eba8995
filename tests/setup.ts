/**
 * One seed for every property test, so that a pull request fails for what it changed and not for the dice. FC_SEED takes
 * another; the nightly run takes a new one each time and prints it.
 */
import fc from "fast-check";

/** Any number would do; it stays the same so that runs can be compared. */
const USUAL_SEED = 20261125;

fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(process.env["FC_SEED"] ?? USUAL_SEED) });
