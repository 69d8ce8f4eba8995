/**
 * Sources of the head module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the head module. */
export const headSources: readonly Source[] = [
  {
    id: "us-army-corps-1998",
    type: "report",
    title: "Water Supply",
    author: [{ literal: "US Army Corps of Engineers" }],
    issued: { "date-parts": [[1998]] },
    number: "TI 814-01",
    note: "Section 5-6 read in an open copy.",
  },
];
