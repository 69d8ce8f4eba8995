/**
 * Sources of the field module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the field module. */
export const fieldSources: readonly Source[] = [
  {
    id: "jcgm-100",
    type: "standard",
    title: "Evaluation of measurement data: Guide to the expression of uncertainty in measurement",
    author: [{ literal: "Joint Committee for Guides in Metrology" }],
    issued: { "date-parts": [[2008]] },
    number: "JCGM 100:2008",
    note: "Recalled.",
  },
];
