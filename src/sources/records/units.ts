/**
 * Sources of the units module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the units module. */
export const unitsSources: readonly Source[] = [
  {
    id: "nist-sp811",
    type: "report",
    title: "Guide for the Use of the International System of Units (SI)",
    author: [
      { family: "Thompson", given: "A." },
      { family: "Taylor", given: "B. N." },
    ],
    issued: { "date-parts": [[2008]] },
    number: "NIST Special Publication 811",
    publisher: "National Institute of Standards and Technology",
  },
  {
    id: "cgpm-1901",
    type: "report",
    title: "Declaration on the unit of mass and on the definition of weight; conventional value of g_n",
    author: [{ literal: "3rd General Conference on Weights and Measures" }],
    issued: { "date-parts": [[1901]] },
  },
];
