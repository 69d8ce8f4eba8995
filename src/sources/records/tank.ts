/**
 * Sources of the tank module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the tank module. */
export const tankSources: readonly Source[] = [
  {
    id: "water-systems-council-2007",
    type: "report",
    title: "Information sheet: Pressure Tanks",
    author: [{ literal: "Water Systems Council" }],
    issued: { "date-parts": [[2007]] },
    note: "The rule on p. 3, precharge 2 psi below the cut-in, was read.",
  },
  {
    id: "water-systems-council-performance-standard-for",
    type: "standard",
    title: "Performance standard for pressurized water storage tanks",
    author: [{ literal: "Water Systems Council" }],
    note: "Scope and general text read in a re-posted copy.",
  },
  {
    id: "pelikan-2006",
    type: "article-journal",
    title: "How to Calculate and Control Pressure Tank Drawdown",
    author: [{ family: "Pelikan", given: "R." }],
    issued: { "date-parts": [[2006]] },
    "container-title": "The Driller",
    note: "Example 1 read.",
  },
  {
    id: "the-driller-when-the-well",
    type: "article-journal",
    title: "When the Well Runs Dry (Tech Topics column)",
    author: [{ literal: "The Driller" }],
    "container-title": "The Driller",
    note: "Storage paragraph read; the copy shows no year.",
  },
  {
    id: "washington-state-department-2009",
    type: "report",
    title: "Water System Design Manual",
    author: [{ literal: "Washington State Department of Health" }],
    issued: { "date-parts": [[2009]] },
    number: "DOH 331-123",
    note: "Section 11.1.2, equation 11-2, read; equation 11-3 was not seen.",
  },
  {
    id: "kill-tank-selection-by",
    type: "article-journal",
    title: "Tank Selection by the Numbers",
    author: [{ family: "Kill", given: "D." }],
    "container-title": "Water Well Journal",
    note: "Daily start limits read; the copy shows no year.",
  },
  {
    id: "us-environmental-protection-seahome-library-private",
    type: "report",
    title: "SEAHOME library: Private Water Systems",
    author: [{ literal: "US Environmental Protection Agency" }],
    note: "Archived 2008. Pressure Tank Selection Chart read in a stored copy whose columns run together.",
  },
  {
    id: "great-lakes-upper-recommended-standards-for",
    type: "standard",
    title: "Recommended Standards for Water Works, section 7.2",
    author: [{ literal: "Great Lakes - Upper Mississippi River Board" }],
    note: "Section 7.2 read in a re-posted copy.",
  },
];
