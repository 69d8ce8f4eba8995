/**
 * Sources of the pump module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the pump module. */
export const pumpSources: readonly Source[] = [
  {
    id: "fritsch-carlson-1980",
    type: "article-journal",
    title: "Monotone Piecewise Cubic Interpolation",
    author: [
      { family: "Fritsch", given: "F. N." },
      { family: "Carlson", given: "R. E." },
    ],
    issued: { "date-parts": [[1980]] },
    "container-title": "SIAM Journal on Numerical Analysis",
    volume: "17",
    issue: "2",
    page: "238–246",
    DOI: "10.1137/0717021",
    note: "The region of monotone slopes is recalled, not read again.",
  },
  {
    id: "hyman-1983",
    type: "article-journal",
    title: "Accurate Monotonicity Preserving Cubic Interpolation",
    author: [{ family: "Hyman", given: "J. M." }],
    issued: { "date-parts": [[1983]] },
    "container-title": "SIAM Journal on Scientific and Statistical Computing",
    volume: "4",
    issue: "4",
    page: "645–654",
    DOI: "10.1137/0904045",
    note: "The limit of three chords is recalled, not read again.",
  },
  {
    id: "brent-1973",
    type: "book",
    title: "Algorithms for Minimization Without Derivatives",
    author: [{ family: "Brent", given: "R. P." }],
    issued: { "date-parts": [[1973]] },
    publisher: "Prentice-Hall",
    note: "Chapter 4; recalled, not read again.",
  },
  {
    id: "golub-van-loan",
    type: "book",
    title: "Matrix Computations",
    author: [
      { family: "Golub", given: "G. H." },
      { family: "Van Loan", given: "C. F." },
    ],
    edition: "4",
    issued: { "date-parts": [[2013]] },
    publisher: "Johns Hopkins University Press",
    note: "Chapter 5; recalled, not read again.",
  },
  {
    id: "iso-9906",
    type: "standard",
    title: "Rotodynamic pumps: hydraulic performance acceptance tests, grades 1, 2 and 3",
    author: [{ literal: "International Organization for Standardization" }],
    issued: { "date-parts": [[2012]] },
    number: "ISO 9906:2012; ANSI/HI 14.6",
    note: "The lettered grades were read in one full transcription, not in the standard; the small-pump rule is recalled.",
  },
  {
    id: "ansi-hi-9.6.3",
    type: "standard",
    title: "Rotodynamic pumps: guideline for allowable operating region",
    author: [{ literal: "Hydraulic Institute" }],
    issued: { "date-parts": [[2017]] },
    number: "ANSI/HI 9.6.3",
    note: "The preferred region of 70 to 120 % is recalled, not read again; edition recalled.",
  },
];
