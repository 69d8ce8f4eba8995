/**
 * The whole library as namespaces. A program that wants one module imports it by its subpath.
 *
 * @module
 */
export * as conductor from "./conductor/index.ts";
export * as control from "./control/index.ts";
export * as demand from "./demand/index.ts";
export * as disinfection from "./disinfection/index.ts";
export * as field from "./field/index.ts";
export * as fittings from "./fittings/index.ts";
export * as freeze from "./freeze/index.ts";
export * as generator from "./generator/index.ts";
export * as head from "./head/index.ts";
export * as motor from "./motor/index.ts";
export * as network from "./network/index.ts";
export * as pipe from "./pipe/index.ts";
export * as plan from "./plan/index.ts";
export * as plot from "./plot/index.ts";
export * as pump from "./pump/index.ts";
export * as selection from "./selection/index.ts";
export * as sources from "./sources/index.ts";
export * as surge from "./surge/index.ts";
export * as system from "./system/index.ts";
export * as tank from "./tank/index.ts";
export * as units from "./units/index.ts";
export * as water from "./water/index.ts";
export * as well from "./well/index.ts";
