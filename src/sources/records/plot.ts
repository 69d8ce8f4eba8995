/**
 * Sources of the plot module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the plot module. */
export const plotSources: readonly Source[] = [
  {
    id: "okabe-ito-2008",
    type: "webpage",
    title: "Color Universal Design (CUD): How to make figures and presentations that are friendly to colorblind people",
    author: [
      { family: "Okabe", given: "M." },
      { family: "Ito", given: "K." },
    ],
    issued: { "date-parts": [[2008]] },
    note: "Published 2002, revised 2008. The eight colours recalled; the page was not seen.",
  },
];
