/**
 * Sources of the disinfection module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the disinfection module. */
export const disinfectionSources: readonly Source[] = [
  {
    id: "navfac-mil-hdbk-1164",
    type: "report",
    title: "Operation and Maintenance of Water Supply Systems",
    author: [{ literal: "Naval Facilities Engineering Command" }],
    issued: { "date-parts": [[1997]] },
    number: "MIL-HDBK-1164 (reissued as UFC 3-230-02)",
  },
  {
    id: "davis-2010",
    type: "book",
    title: "Water and Wastewater Engineering: Design Principles and Practice",
    author: [{ family: "Davis", given: "M. L." }],
    issued: { "date-parts": [[2010]] },
  },
  {
    id: "alberta-agdex-716-a10",
    type: "report",
    title: "Water Wells That Last for Generations",
    author: [{ literal: "Alberta Agriculture and Rural Development" }],
    number: "Agdex 716 (A10)",
  },
  {
    id: "state-disinfecting-fact-sheet",
    type: "report",
    title: "Fact sheet: Disinfecting a Well",
    author: [{ literal: "State Division of Environmental Health and Protection" }],
    note: "Read in a re-posted copy; the state does not show in it.",
  },
  {
    id: "maryland-well-disinfection",
    type: "legislation",
    title: "COMAR 26.04.04.24, Disinfection of wells and water supply systems",
    author: [{ literal: "State of Maryland" }],
    note: "Paragraphs D(1) and D(2).",
  },
  {
    id: "san-bernardino-13-24",
    type: "legislation",
    title: "Code 13.24.350, Disinfection of water wells",
    author: [{ literal: "San Bernardino (California)" }],
    issued: { "date-parts": [[1975]] },
  },
  {
    id: "water-systems-council-disinfection",
    type: "report",
    title: "State well codes database, Oklahoma, Disinfection",
    author: [{ literal: "Water Systems Council" }],
  },
  {
    id: "epa-giardia-ct",
    type: "report",
    title: "CT values for inactivation of Giardia cysts by free chlorine, with their regression formula",
    author: [{ literal: "US Environmental Protection Agency" }],
    note: "Formula and values read in a re-posted copy.",
  },
  {
    id: "epa-profiling-1999",
    type: "report",
    title: "Disinfection Profiling and Benchmarking Guidance Manual",
    author: [{ literal: "US Environmental Protection Agency" }],
    issued: { "date-parts": [[1999]] },
    note: "Tables seen as transcriptions.",
  },
  {
    id: "morris-1966",
    type: "article-journal",
    title: "The acid ionization constant of HOCl from 5 to 35°",
    author: [{ family: "Morris", given: "J. C." }],
    issued: { "date-parts": [[1966]] },
    "container-title": "Journal of Physical Chemistry",
    volume: "70",
    page: "3798",
    note: "Recalled.",
  },
  {
    id: "adam-gordon-1999",
    type: "article-journal",
    title: "Hypochlorite ion decomposition: effects of temperature, ionic strength, and chloride ion",
    author: [
      { family: "Adam", given: "L. C." },
      { family: "Gordon", given: "G." },
    ],
    issued: { "date-parts": [[1999]] },
    "container-title": "Inorganic Chemistry",
    volume: "38",
    page: "1299",
    note: "Recalled.",
  },
  {
    id: "white-chlorination",
    type: "book",
    title: "Handbook of Chlorination and Alternative Disinfectants",
    author: [{ family: "White", given: "G. C." }],
    note: "Recalled.",
  },
  {
    id: "iupac-2021",
    type: "article-journal",
    title: "Standard atomic weights of the elements 2021 (IUPAC Technical Report)",
    author: [{ family: "Prohaska", given: "T." }, { literal: "and others" }],
    issued: { "date-parts": [[2022]] },
    "container-title": "Pure and Applied Chemistry",
    volume: "94",
    page: "573",
    note: "Recalled.",
  },
];
