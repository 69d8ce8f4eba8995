/**
 * Sources of the disinfection module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the disinfection module. */
export const disinfectionSources: readonly Source[] = [];
