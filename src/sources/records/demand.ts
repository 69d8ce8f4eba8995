/**
 * Sources of the demand module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the demand module. */
export const demandSources: readonly Source[] = [
  {
    id: "unh-livestock-water",
    type: "report",
    title: "Water Conservation and Use on Dairy and Livestock Farms",
    author: [{ literal: "University of New Hampshire Cooperative Extension" }],
    note: "Livestock and dairy washing tables, credited there to MWPS-14. Read in a re-posted copy without a year.",
  },
  {
    id: "kstate-livestock-water",
    type: "webpage",
    title: "Livestock Watering Handbook: Daily Water Requirements for Livestock",
    author: [{ literal: "Kansas State University" }],
  },
  {
    id: "federal-livestock-figures",
    type: "webpage",
    title: "Daily water use figures for people and animals",
    author: [{ literal: "Sustainable groundwater information site, repeating US federal figures" }],
    note: "A secondary site; descriptive title.",
  },
  {
    id: "penn-state-water-planning",
    type: "report",
    title: "Water System Planning: Estimating Water Needs",
    author: [{ literal: "Penn State Extension" }],
    issued: { "date-parts": [[2022]] },
  },
  {
    id: "broz-g1801",
    type: "report",
    title: "How to Size a Farm and Home Water System",
    author: [{ family: "Broz", given: "B." }],
    number: "G1801",
    publisher: "University of Missouri Extension",
  },
  {
    id: "alberta-pasture-pipeline",
    type: "report",
    title: "Pasture Pipeline Design",
    author: [{ literal: "Alberta Agriculture and Rural Development" }],
    number: "Agdex 716 (C44)",
  },
  {
    id: "nrc-beef-1996",
    type: "book",
    title: "Nutrient Requirements of Beef Cattle",
    author: [{ literal: "National Research Council" }],
    issued: { "date-parts": [[1996]] },
    edition: "7th revised",
    note: "Daily water intake against temperature; recalled, five of its figures seen again in Kansas State's handbook.",
  },
  {
    id: "ipc-2021",
    type: "standard",
    title: "International Plumbing Code, Appendix E",
    author: [{ literal: "International Code Council" }],
    issued: { "date-parts": [[2021]] },
    note: "Tables E103.3(2), recalled, and E103.3(3), seen in independent copies. Facts only.",
  },
  {
    id: "nspc",
    type: "standard",
    title: "National Standard Plumbing Code, Appendix B",
    author: [{ literal: "Plumbing-Heating-Cooling Contractors Association" }],
    note: "Table B.5.4, part of its rows, read in a copy; the issuing body inferred from the table's number.",
  },
  {
    id: "hunter-1940",
    type: "report",
    title: "Methods of Estimating Loads in Plumbing Systems",
    author: [{ family: "Hunter", given: "R. B." }],
    issued: { "date-parts": [[1940]] },
    number: "NBS Building Materials and Structures Report BMS65",
    note: "Points of the curve recalled.",
  },
  {
    id: "epa-seahome",
    type: "report",
    title: "Private Water Systems (SEAHOME library)",
    author: [{ literal: "US Environmental Protection Agency" }],
    note: "Archived 2008.",
  },
  {
    id: "driller-tech-topics",
    type: "article-journal",
    title: "Tech Topics: sizing a residential water system",
    author: [{ literal: "The Driller (trade journal)" }],
  },
  {
    id: "h2ouse-outdoor",
    type: "webpage",
    title: "Outdoor cleaning: water use of a hose",
    author: [{ literal: "California Urban Water Conservation Council" }],
    note: "The publishing body is recalled.",
  },
  {
    id: "tm-5-813-7",
    type: "report",
    title: "Water Supply for Special Projects",
    author: [{ literal: "US Departments of the Army and the Air Force" }],
    number: "TM 5-813-7 / AFM 88-10 Vol. 7",
  },
  {
    id: "rippl-1883",
    type: "article-journal",
    title: "The capacity of storage-reservoirs for water-supply",
    author: [{ family: "Rippl", given: "W." }],
    issued: { "date-parts": [[1883]] },
    "container-title": "Minutes of the Proceedings of the Institution of Civil Engineers",
    volume: "71",
    page: "270",
    note: "Recalled.",
  },
];
