/**
 * Sources of the selection module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the selection module. */
export const selectionSources: readonly Source[] = [
  {
    id: "bellman-1957",
    type: "book",
    title: "Dynamic Programming",
    author: [{ family: "Bellman", given: "R." }],
    publisher: "Princeton University Press",
    issued: { "date-parts": [[1957]] },
    note: "Recalled; the book was not seen.",
  },
  {
    id: "karmeli-1968",
    type: "article-journal",
    title: "Design of Optimal Water Distribution Networks",
    author: [
      { family: "Karmeli", given: "D." },
      { family: "Gadish", given: "Y." },
      { family: "Meyers", given: "S." },
    ],
    "container-title": "Journal of the Pipeline Division, ASCE",
    volume: "94",
    issue: "PL1",
    page: "1-10",
    issued: { "date-parts": [[1968]] },
    note: "Recalled; the paper was not seen.",
  },
];
