/**
 * Sources of the motor module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the motor module. */
export const motorSources: readonly Source[] = [
  {
    id: "nema-mg-1",
    type: "standard",
    title: "Motors and Generators",
    author: [{ literal: "National Electrical Manufacturers Association" }],
    issued: { "date-parts": [[2011]] },
    number: "NEMA MG 1",
    note: "Condensed edition, and code letters and derating curve as tabulated by an engineering reference.",
  },
  {
    id: "ieee-43",
    type: "standard",
    title: "Recommended Practice for Testing Insulation Resistance of Electric Machinery",
    author: [{ literal: "Institute of Electrical and Electronics Engineers" }],
    issued: { "date-parts": [[2013]] },
    number: "IEEE 43",
    note: "Minima as restated by test technicians and a service association.",
  },
  {
    id: "cfr-10-431-446",
    type: "legislation",
    title: "10 CFR 431.446: Small electric motors energy conservation standards",
    author: [{ literal: "United States Department of Energy" }],
    issued: { "date-parts": [[2025]] },
  },
  {
    id: "cfr-10-431-25",
    type: "legislation",
    title: "10 CFR 431.25: Energy conservation standards of electric motors, standards in force from 1997",
    author: [{ literal: "United States Department of Energy" }],
    issued: { "date-parts": [[2006]] },
  },
  {
    id: "ufc-3-520-01",
    type: "report",
    title: "Interior Electrical Systems",
    author: [{ literal: "United States Department of Defense" }],
    issued: { "date-parts": [[2002]] },
    number: "UFC 3-520-01",
  },
  {
    id: "hubert-electric-machines",
    type: "book",
    title: "Electric Machines: Theory, Operation, Applications, Adjustment, and Control",
    author: [{ family: "Hubert", given: "C. I." }],
    issued: { "date-parts": [[2002]] },
    note: "Worked examples as printed by an open companion notebook; the book was not seen.",
  },
];
