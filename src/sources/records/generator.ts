/**
 * Sources of the generator module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the generator module. */
export const generatorSources: readonly Source[] = [
  {
    id: "nema-wd-6",
    type: "standard",
    title: "Wiring Devices: Dimensional Specifications",
    author: [{ literal: "National Electrical Manufacturers Association" }],
    number: "NEMA WD 6",
    note: "Designations and ratings from memory; the 30 A, 125/250 V locking receptacle read in a note.",
  },
  {
    id: "ufgs-16237n",
    type: "report",
    title: "Diesel Engine-Generator Sets (guide specification)",
    author: [{ literal: "United States Department of Defense" }],
    number: "UFGS-16237N",
  },
  {
    id: "cpsc-generators",
    type: "report",
    title: "Generator safety: carbon monoxide",
    author: [{ literal: "United States Consumer Product Safety Commission" }],
    issued: { "date-parts": [[2021]] },
  },
  {
    id: "cdc-carbon-monoxide",
    type: "report",
    title: "Carbon monoxide poisoning prevention after an emergency",
    author: [{ literal: "United States Centers for Disease Control and Prevention" }],
    issued: { "date-parts": [[2020]] },
  },
  {
    id: "dorn-2008",
    type: "report",
    title: "Repair or Replace Inefficient Pumping Plants: Nebraska Pumping Plant Performance Criteria",
    author: [{ family: "Dorn", given: "T." }],
    issued: { "date-parts": [[2008]] },
    publisher: "University of Nebraska-Lincoln Extension",
  },
  {
    id: "progressive-gardening-altitude",
    type: "webpage",
    title: "Altitude (derating of naturally aspirated engines)",
    author: [{ literal: "Progressive Gardening, agricultural engineering text" }],
  },
  {
    id: "nist-generator-distance",
    type: "report",
    title: "Guidelines to Prevent Carbon Monoxide Poisoning when using a Generator, as quoted by a town",
    author: [{ literal: "National Institute of Standards and Technology" }],
  },
  {
    id: "progressive-dairy-generators",
    type: "article-journal",
    title: "Standby generators for the farm foil unexpected outages",
    author: [{ literal: "Progressive Dairy" }],
    issued: { "date-parts": [[2008]] },
    note: "Trade press; the ratio of starting to running power of farm motors.",
  },
  {
    id: "carteret-craven-2013",
    type: "report",
    title: "Standby Electric Generators",
    author: [{ literal: "Carteret-Craven Electric Cooperative" }],
    issued: { "date-parts": [[2013]] },
  },
];
