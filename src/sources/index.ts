/**
 * The bibliography: one record per published source, in the open citation format CSL-JSON.
 *
 * @module
 */
export { bibliography, findSource } from "./bibliography.ts";
export type { Caution } from "./caution.ts";
export { citeAsBibtex, citeAsText } from "./cite.ts";
export type { Source, SourceDate, SourceName } from "./source.ts";
