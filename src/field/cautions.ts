/**
 * What to say with field tests: pressure, mains, lifting, exhaust, drinking water.
 *
 * @module
 */
import type { Caution } from "../sources/index.ts";

/**
 * Cautions of work with pressure.
 *
 * @source common practice
 */
export const pressureCautions: readonly Caution[] = [
  {
    code: "pressure-water-only",
    text: "Test with water, never with compressed air: air stores enough energy to kill when a pipe or tank lets go. Bleed all air out first.",
    basis: "common practice",
  },
  {
    code: "pressure-weakest",
    text: "Do not go over the rating of the weakest part: pipe, fitting, tank, switch or gauge. A relief valve belongs between the pump and the first valve that can shut.",
    basis: "common practice",
  },
  {
    code: "pressure-release",
    text: "Let the pressure off before loosening a fitting or the well cap, and stand clear of plugs and caps while under test.",
    basis: "common practice",
  },
];

/**
 * Cautions of work on mains.
 *
 * @source common practice
 */
export const mainsCautions: readonly Caution[] = [
  {
    code: "mains-qualified",
    text: "Live readings are for a qualified person with a meter and leads rated for the circuit. Wiring is the business of a licensed electrician where the law says so.",
    basis: "common practice",
  },
  {
    code: "mains-off",
    text: "For resistance and insulation: power off, locked out and proved dead, capacitors discharged, the motor leads off the control box.",
    basis: "common practice",
  },
  {
    code: "mains-insulation-tester",
    text: "An insulation tester puts 500 V on the leads: keep hands and other people off them, and discharge the cable afterwards.",
    basis: "common practice",
  },
];

/**
 * Cautions of lifting and lowering.
 *
 * @source common practice
 */
export const liftingCautions: readonly Caution[] = [
  {
    code: "lifting-rated",
    text: "Use a hoist, clamps and slings rated and inspected for the load. Nobody under it, no hands between pipe and casing, a clamp on the pipe before the hook is let go.",
    basis: "common practice",
  },
  {
    code: "lifting-stuck",
    text: "A stuck pump can load the hoist without limit. Stop and find out why; do not pull harder.",
    basis: "common practice",
  },
  {
    code: "lifting-overhead",
    text: "Keep the mast and pipe clear of overhead power lines by the distance the local rule asks for.",
    basis: "common practice",
  },
  {
    code: "ventilation",
    text: "Never enter a well pit: the air in it may not keep a person alive. Run engines and generators in the open, away from openings.",
    basis: "common practice",
  },
  {
    code: "sanitary",
    text: "Whatever goes down the well is washed and chlorinated first, and the water is not drunk before a clean sample.",
    basis: "common practice",
  },
];

/**
 * Who has the last word.
 *
 * @source common practice
 */
export const authorityCaution: Caution = {
  code: "local-authority",
  text: "Local code, the health department and the licensed trades have the last word over any figure here.",
  basis: "common practice",
};
