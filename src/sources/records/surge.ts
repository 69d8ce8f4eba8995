/**
 * Sources of the surge module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the surge module. */
export const surgeSources: readonly Source[] = [
  {
    id: "joukowsky-1898",
    type: "article-journal",
    title: "Über den hydraulischen Stoss in Wasserleitungsröhren",
    author: [{ family: "Joukowsky", given: "N." }],
    issued: { "date-parts": [[1898]] },
    "container-title": "Mémoires de l'Académie Impériale des Sciences de St.-Pétersbourg",
    note: "Cited from memory; the equation is in every text on the subject.",
  },
  {
    id: "michaud-1878",
    type: "article-journal",
    title: "Coups de bélier dans les conduites. Étude des moyens employés pour en atténuer les effets",
    author: [{ family: "Michaud", given: "J." }],
    issued: { "date-parts": [[1878]] },
    "container-title": "Bulletin de la Société Vaudoise des Ingénieurs et des Architectes",
    note: "Cited from memory.",
  },
  {
    id: "wylie-streeter-1993",
    type: "book",
    title: "Fluid Transients in Systems",
    author: [
      { family: "Wylie", given: "E. B." },
      { family: "Streeter", given: "V. L." },
    ],
    issued: { "date-parts": [[1993]] },
    publisher: "Prentice Hall",
    note: "Chapters 2 (wave speed), 3 (method of characteristics), 8 (column separation), from memory.",
  },
  {
    id: "awwa-m23",
    type: "standard",
    title: "PVC Pipe: Design and Installation",
    author: [{ literal: "American Water Works Association" }],
    issued: { "date-parts": [[2020]] },
    number: "Manual M23",
    note: "Wave speed and surge allowance from memory.",
  },
  {
    id: "awwa-m55",
    type: "standard",
    title: "PE Pipe: Design and Installation",
    author: [{ literal: "American Water Works Association" }],
    issued: { "date-parts": [[2020]] },
    number: "Manual M55",
    note: "Wave speed and surge allowance from memory.",
  },
  {
    id: "moser-2008",
    type: "book",
    title: "Buried Pipe Design",
    author: [
      { family: "Moser", given: "A. P." },
      { family: "Folkman", given: "S." },
    ],
    issued: { "date-parts": [[2008]] },
    edition: "3",
    publisher: "McGraw-Hill",
  },
];
