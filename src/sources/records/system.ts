/**
 * Sources of the system module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the system module. */
export const systemSources: readonly Source[] = [
  {
    id: "dormand-prince-1980",
    type: "article-journal",
    title: "A family of embedded Runge-Kutta formulae",
    author: [
      { family: "Dormand", given: "J. R." },
      { family: "Prince", given: "P. J." },
    ],
    issued: { "date-parts": [[1980]] },
    "container-title": "Journal of Computational and Applied Mathematics",
    volume: "6",
    issue: "1",
    page: "19–26",
    note: "Coefficients recalled, and held to the order conditions by test.",
  },
];
