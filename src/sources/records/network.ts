/**
 * Sources of the network module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the network module. */
export const networkSources: readonly Source[] = [
  {
    id: "todini-1988",
    type: "chapter",
    title: "A gradient algorithm for the analysis of pipe networks",
    author: [
      { family: "Todini", given: "E." },
      { family: "Pilati", given: "S." },
    ],
    "container-title": "Computer Applications in Water Supply, volume 1: Systems Analysis and Simulation",
    publisher: "Research Studies Press",
    issued: { "date-parts": [[1988]] },
    page: "1-20",
    note: "Recalled; the chapter was not seen.",
  },
  {
    id: "cherry-1951",
    type: "article-journal",
    title: "Some general theorems for non-linear systems possessing reactance",
    author: [{ family: "Cherry", given: "E. C." }],
    "container-title": "Philosophical Magazine",
    volume: "42",
    issue: "333",
    page: "1161-1177",
    issued: { "date-parts": [[1951]] },
    note: "Content and co-content of a network of non-linear elements. Recalled; the paper was not seen.",
  },
  {
    id: "torricelli-1644",
    type: "book",
    title: "Opera geometrica: De motu gravium naturaliter descendentium",
    author: [{ family: "Torricelli", given: "E." }],
    issued: { "date-parts": [[1644]] },
    note: "Recalled.",
  },
  {
    id: "amestoy-1996",
    type: "article-journal",
    title: "An approximate minimum degree ordering algorithm",
    author: [
      { family: "Amestoy", given: "P. R." },
      { family: "Davis", given: "T. A." },
      { family: "Duff", given: "I. S." },
    ],
    "container-title": "SIAM Journal on Matrix Analysis and Applications",
    volume: "17",
    issue: "4",
    page: "886-905",
    issued: { "date-parts": [[1996]] },
    note: "Recalled; the paper was not seen.",
  },
  {
    id: "grassmann-1985",
    type: "article-journal",
    title: "Regenerative analysis and steady state distributions for Markov chains",
    author: [
      { family: "Grassmann", given: "W. K." },
      { family: "Taksar", given: "M. I." },
      { family: "Heyman", given: "D. P." },
    ],
    "container-title": "Operations Research",
    volume: "33",
    issue: "5",
    page: "1107-1116",
    issued: { "date-parts": [[1985]] },
    note: "Elimination without subtraction. Recalled; the paper was not seen.",
  },
  {
    id: "ng-1993",
    type: "article-journal",
    title: "Block sparse Cholesky algorithms on advanced uniprocessor computers",
    author: [
      { family: "Ng", given: "E. G." },
      { family: "Peyton", given: "B. W." },
    ],
    "container-title": "SIAM Journal on Scientific Computing",
    volume: "14",
    issue: "5",
    page: "1034-1056",
    issued: { "date-parts": [[1993]] },
    note: "Columns of one pattern as a dense block. Recalled; the paper was not seen.",
  },
];
