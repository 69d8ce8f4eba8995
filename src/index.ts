/**
 * The whole library as namespaces. A program that wants one module imports it by its subpath.
 *
 * @module
 */
export * as head from "./head/index.ts";
export * as sources from "./sources/index.ts";
export * as units from "./units/index.ts";
