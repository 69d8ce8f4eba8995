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
  {
    id: "ansi-hi-9.6.1",
    type: "standard",
    title: "Rotodynamic Pumps: Guideline for NPSH Margin",
    author: [{ literal: "Hydraulic Institute" }],
    issued: { "date-parts": [[2017]] },
    number: "ANSI/HI 9.6.1",
    note: "Cited from memory for the definition of NPSH available.",
  },
];
