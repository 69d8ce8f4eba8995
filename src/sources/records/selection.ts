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
];
