/**
 * The bibliography: one record per published source, in the open citation format CSL-JSON.
 *
 * @module
 */
export { basesOf } from "./bases-of.ts";
export type { Basis } from "./basis.ts";
export { bibliography, findSource } from "./bibliography.ts";
export type { Caution } from "./caution.ts";
export { asBibtex, asCslJson, citeAsBibtex, citeAsText } from "./cite.ts";
export type { Source, SourceDate, SourceName } from "./source.ts";
