/**
 * The bibliography: one record per published source, in the open citation format CSL-JSON.
 *
 * @module
 */
export type { Source, SourceName } from "./source.ts";
