/**
 * Sources of the control module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the control module. */
export const controlSources: readonly Source[] = [
  {
    id: "midwest-plan-service-1979",
    type: "book",
    title: "Private Water Systems Handbook",
    author: [{ literal: "MidWest Plan Service" }],
    issued: { "date-parts": [[1979]] },
    number: "MWPS-14",
    note: "The rule on relief capacity is recalled, not read again.",
  },
];
