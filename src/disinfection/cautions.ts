/**
 * What to say whenever a chlorine amount is given.
 *
 * @module
 */
import type { Caution } from "../sources/index.ts";

/**
 * The cautions of chlorine, in the order they matter at the wellhead.
 *
 * @source common practice
 */
export const chlorineCautions: readonly Caution[] = [
  {
    code: "local-authority",
    text: "The health department and the local well code set the dose, the stand time and the tests. Their figures win over these.",
    basis: "common practice",
  },
  {
    code: "chlorine-mixing",
    text: "Never let chlorine meet acid, ammonia or any other cleaner, and never mix two kinds of chlorine: the gases given off can kill.",
    basis: "common practice",
  },
  {
    code: "ventilation",
    text: "Work in the open air, with gloves and eye protection. Chlorine fumes gather in pits and pump houses: never enter a well pit, and air a pump house before going in.",
    basis: "common practice",
  },
  {
    code: "mains-off",
    text: "Turn off and lock out the power before opening the well cap or touching the wiring.",
    basis: "common practice",
  },
  {
    code: "plain-bleach",
    text: "Use plain, unscented bleach in date, or calcium hypochlorite made for drinking water. Not splash-less, scented or pool products with additives.",
    basis: "common practice",
  },
  {
    code: "no-drinking",
    text: "Do not drink, cook with or bathe in the water, and keep animals from it, until it is flushed, a sample is clean and the health department's rule is met.",
    basis: "common practice",
  },
  {
    code: "flush-away",
    text: "Do not flush strong chlorine into a septic system, stream, pond or garden: dechlorinate it first or spread it where the local rule allows.",
    basis: "common practice",
  },
  {
    code: "bypass-equipment",
    text: "Bypass softeners, carbon filters and membranes: chlorine damages some and others use it up.",
    basis: "common practice",
  },
];
