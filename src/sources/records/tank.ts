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
];
