/**
 * Sources of the fittings module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the fittings module. */
export const fittingsSources: readonly Source[] = [
  {
    id: "crane-410",
    type: "book",
    title: "Flow of Fluids through Valves, Fittings and Pipe",
    author: [{ literal: "Crane Co." }],
    issued: { "date-parts": [[2009]] },
    number: "Technical Paper 410",
    note: "Lengths in diameters, entrances and lifting velocities recalled; tees and tapers read as coded in a general-purpose fluids library; answers of examples read in an open notebook.",
  },
  {
    id: "darby-1999",
    type: "article-journal",
    title: "Correlate pressure drops through fittings",
    author: [
      { family: "Silverberg", given: "P." },
      { family: "Darby", given: "R." },
    ],
    issued: { "date-parts": [[1999]] },
    "container-title": "Chemical Engineering",
    volume: "106",
    issue: "7",
    page: "101",
    note: "3-K constants read as coded in a general-purpose fluids library.",
  },
  {
    id: "hooper-1981",
    type: "article-journal",
    title: "The two-K method predicts head losses in pipe fittings",
    author: [{ family: "Hooper", given: "W. B." }],
    issued: { "date-parts": [[1981]] },
    "container-title": "Chemical Engineering",
    volume: "88",
    issue: "17",
    page: "96-100",
    note: "2-K constants read as coded in a general-purpose fluids library, three of them recalled.",
  },
  {
    id: "idelchik-2007",
    type: "book",
    title: "Handbook of Hydraulic Resistance",
    author: [{ family: "Idelchik", given: "I. E." }],
    issued: { "date-parts": [[2007]] },
    edition: "4",
    publisher: "Begell House",
    note: "The dividing tee of 90°, recalled.",
  },
  {
    id: "iec-60534-2-1",
    type: "standard",
    title:
      "Industrial-process control valves: Part 2-1: Flow capacity: Sizing equations for fluid flow under installed conditions",
    author: [{ literal: "International Electrotechnical Commission" }],
    issued: { "date-parts": [[2011]] },
    number: "IEC 60534-2-1",
    note: "Equations recalled; the worked answers of its annex read in the tests of a general-purpose fluids library.",
  },
  {
    id: "illinois-plumbing-code",
    type: "legislation",
    title: "Illinois Plumbing Code",
    author: [{ literal: "State of Illinois" }],
    number: "77 Ill. Adm. Code 890",
    note: "Appendix A, table Q read in an open copy.",
  },
  {
    id: "irc-appendix",
    type: "standard",
    title: "International Residential Code, appendix A: equivalent lengths of pipe fittings and valves",
    author: [{ literal: "International Code Council" }],
    issued: { "date-parts": [[2018]] },
    note: "Table A.2.2 read in an open copy.",
  },
  {
    id: "munson-2006",
    type: "book",
    title: "Fundamentals of Fluid Mechanics",
    author: [
      { family: "Munson", given: "B. R." },
      { family: "Young", given: "D. F." },
      { family: "Okiishi", given: "T. H." },
    ],
    issued: { "date-parts": [[2006]] },
    edition: "5",
    publisher: "Wiley",
    note: "Table of loss coefficients for pipe components, recalled.",
  },
  {
    id: "nfpa-291",
    type: "standard",
    title: "Recommended Practice for Fire Flow Testing and Marking of Hydrants",
    author: [{ literal: "National Fire Protection Association" }],
    number: "NFPA 291",
    note: "Outlet coefficients recalled; the constant 29.84 read in a secondary page.",
  },
  {
    id: "nist-push-connect",
    type: "report",
    title: "Measurement and Uncertainty Analysis of Pressure Losses in a Push-to-Connect Elbow and Coupling",
    author: [
      { family: "Lin", given: "L." },
      { family: "Milesi-Ferretti", given: "N." },
      { family: "Glaeser", given: "G." },
      { family: "Kim", given: "K. Y." },
    ],
    publisher: "National Institute of Standards and Technology",
    note: "Abstract read.",
  },
  {
    id: "pvc-fittings-table",
    type: "webpage",
    title: "Friction loss of PVC pipe fittings, equivalent length of straight pipe",
    author: [{ literal: "PVC piping consultancy reference page" }],
    note: "A trade table, read; year not stated.",
  },
];
