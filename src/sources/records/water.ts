/**
 * Sources of the water module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the water module. */
export const waterSources: readonly Source[] = [
  {
    id: "iapws-sr6-08",
    type: "standard",
    title: "Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa",
    author: [{ literal: "International Association for the Properties of Water and Steam" }],
    issued: { "date-parts": [[2011]] },
    number: "IAPWS SR6-08(2011)",
    note: "Coefficients checked against the python library iapws 1.5.2; uncertainties recalled.",
  },
  {
    id: "iapws-sr1-86",
    type: "standard",
    title: "Revised Supplementary Release on Saturation Properties of Ordinary Water Substance",
    author: [{ literal: "International Association for the Properties of Water and Steam" }],
    issued: { "date-parts": [[1992]] },
    number: "IAPWS SR1-86(1992)",
    note: "Coefficients recalled, and checked against the python library iapws 1.5.2; uncertainties recalled.",
  },
  {
    id: "iso-2533",
    type: "standard",
    title: "Standard Atmosphere",
    author: [{ literal: "International Organization for Standardization" }],
    issued: { "date-parts": [[1975]] },
    number: "ISO 2533:1975",
    note: "Constants recalled.",
  },
];
