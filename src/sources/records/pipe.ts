/**
 * Sources of the pipe module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the pipe module. */
export const pipeSources: readonly Source[] = [
  {
    id: "colebrook-1939",
    type: "article-journal",
    title:
      "Turbulent flow in pipes, with particular reference to the transition region between the smooth and rough pipe laws",
    author: [{ family: "Colebrook", given: "C. F." }],
    issued: { "date-parts": [[1939]] },
    "container-title": "Journal of the Institution of Civil Engineers",
    volume: "11",
    issue: "4",
    page: "133-156",
  },
  {
    id: "moody-1944",
    type: "article-journal",
    title: "Friction factors for pipe flow",
    author: [{ family: "Moody", given: "L. F." }],
    issued: { "date-parts": [[1944]] },
    "container-title": "Transactions of the ASME",
    volume: "66",
    page: "671-684",
    note: "Roughness of materials recalled from figure 2.",
  },
  {
    id: "poiseuille-1840",
    type: "article-journal",
    title: "Recherches expérimentales sur le mouvement des liquides dans les tubes de très-petits diamètres",
    author: [{ family: "Poiseuille", given: "J. L. M." }],
    issued: { "date-parts": [[1840]] },
    "container-title": "Comptes rendus de l'Académie des sciences",
    volume: "11",
  },
  {
    id: "williams-hazen-1920",
    type: "book",
    title: "Hydraulic Tables",
    author: [
      { family: "Williams", given: "G. S." },
      { family: "Hazen", given: "A." },
    ],
    issued: { "date-parts": [[1920]] },
    edition: "3",
    publisher: "Wiley",
    note: "Constants recalled.",
  },
  {
    id: "mott-2006",
    type: "book",
    title: "Applied Fluid Mechanics",
    author: [{ family: "Mott", given: "R. L." }],
    issued: { "date-parts": [[2006]] },
    edition: "6",
    publisher: "Pearson Prentice Hall",
    note: "Range of the Hazen–Williams rule recalled.",
  },
];
