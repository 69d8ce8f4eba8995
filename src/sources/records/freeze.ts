/**
 * Sources of the freeze module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the freeze module. */
export const freezeSources: readonly Source[] = [
  {
    id: "ashrae-fundamentals",
    type: "book",
    title: "ASHRAE Handbook: Fundamentals, insulation chapter",
    author: [{ literal: "ASHRAE" }],
    note: "Time to freeze as quoted elsewhere; the surface coefficient of still air recalled.",
  },
  {
    id: "warren-freezing",
    type: "webpage",
    title: "Time for water in a pipe to freeze (engineering note, descriptive title)",
    author: [{ literal: "Warren Forensics" }],
    note: "Quotes the ASHRAE estimate with two worked answers.",
  },
  {
    id: "churchill-bernstein-1977",
    type: "article-journal",
    title: "A correlating equation for forced convection from gases and liquids to a circular cylinder in crossflow",
    author: [
      { family: "Churchill", given: "S. W." },
      { family: "Bernstein", given: "M." },
    ],
    issued: { "date-parts": [[1977]] },
    "container-title": "Journal of Heat Transfer",
    volume: "99",
    page: "300",
    note: "Recalled.",
  },
  {
    id: "incropera",
    type: "book",
    title: "Fundamentals of Heat and Mass Transfer",
    author: [
      { family: "Incropera", given: "F. P." },
      { family: "DeWitt", given: "D. P." },
    ],
    note: "Properties of air; recalled.",
  },
  {
    id: "slack-1980",
    type: "article-journal",
    title: "Thermal conductivity of ice",
    author: [{ family: "Slack", given: "G. A." }],
    issued: { "date-parts": [[1980]] },
    "container-title": "Physical Review B",
    volume: "22",
    page: "3065",
    note: "Recalled.",
  },
  {
    id: "tm-5-852-4",
    type: "report",
    title: "Arctic and Subarctic Construction: Foundations for Structures",
    author: [{ literal: "US Army Corps of Engineers" }],
    issued: { "date-parts": [[1983]] },
    number: "TM 5-852-4 / AFM 88-19 Chap. 4 (UFC 3-130-04)",
  },
  {
    id: "tm-5-852-5",
    type: "report",
    title: "Arctic and Subarctic Construction: Utilities",
    author: [{ literal: "US Departments of the Army and the Air Force" }],
    issued: { "date-parts": [[1987]] },
    number: "TM 5-852-5 / AFR 88-19 Vol. 5 (UFC 3-130-05)",
  },
  {
    id: "tm-5-852-6",
    type: "report",
    title:
      "Arctic and Subarctic Construction: Calculation Methods for Determination of Depths of Freeze and Thaw in Soils",
    author: [{ literal: "US Departments of the Army and the Air Force" }],
    issued: { "date-parts": [[1988]] },
    number: "TM 5-852-6 / AFR 88-19 Vol. 6 (UFC 3-130-06)",
    note: "Recalled.",
  },
  {
    id: "stefan-1891",
    type: "article-journal",
    title: "Über die Theorie der Eisbildung, insbesondere über die Eisbildung im Polarmeere",
    author: [{ family: "Stefan", given: "J." }],
    issued: { "date-parts": [[1891]] },
    "container-title": "Annalen der Physik und Chemie",
    volume: "42",
    page: "269",
    note: "Recalled; the form used is the one printed by the source named beside it.",
  },
  {
    id: "pavement-interactive-frost",
    type: "webpage",
    title: "Frost depth by Stefan's formula (pavement engineering course)",
    author: [{ literal: "Pavement Interactive" }],
  },
  {
    id: "aldrich-paynter-1953",
    type: "report",
    title: "Analytical Studies of Freezing and Thawing of Soils",
    author: [
      { family: "Aldrich", given: "H. P." },
      { family: "Paynter", given: "H. M." },
    ],
    issued: { "date-parts": [[1953]] },
    number: "Arctic Construction and Frost Effects Laboratory, Technical Report 42",
    note: "Recalled; the formulas are those printed in the pavement course.",
  },
  {
    id: "wsdot-berggren",
    type: "webpage",
    title: "Modified Berggren formula for estimating freeze/thaw depth",
    author: [{ literal: "University of Washington and Washington State Department of Transportation pavement course" }],
  },
  {
    id: "plumbing-exam-burial",
    type: "webpage",
    title:
      "Minimum depth for exterior water supply piping below the frost line (examination questions restating two codes)",
    author: [{ literal: "Plumbing examination question bank" }],
    note: "The code text itself was not seen.",
  },
];
