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
];
