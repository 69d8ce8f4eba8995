/**
 * Sources of the well module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the well module. */
export const wellSources: readonly Source[] = [
  {
    id: "theis-1935",
    type: "article-journal",
    title:
      "The relation between the lowering of the piezometric surface and the rate and duration of discharge of a well using ground-water storage",
    author: [{ family: "Theis", given: "C. V." }],
    issued: { "date-parts": [[1935]] },
    "container-title": "Transactions of the American Geophysical Union",
    volume: "16",
    page: "519–524",
    DOI: "10.1029/TR016i002p00519",
    note: "The equation and the recovery method; recalled, not read again.",
  },
  {
    id: "cooper-jacob-1946",
    type: "article-journal",
    title: "A generalized graphical method for evaluating formation constants and summarizing well-field history",
    author: [
      { family: "Cooper", given: "H. H." },
      { family: "Jacob", given: "C. E." },
    ],
    issued: { "date-parts": [[1946]] },
    "container-title": "Transactions of the American Geophysical Union",
    volume: "27",
    page: "526–534",
    DOI: "10.1029/TR027i004p00526",
    note: "Recalled, not read again.",
  },
  {
    id: "jacob-1947",
    type: "article-journal",
    title: "Drawdown test to determine effective radius of artesian well",
    author: [{ family: "Jacob", given: "C. E." }],
    issued: { "date-parts": [[1947]] },
    "container-title": "Transactions of the American Society of Civil Engineers",
    volume: "112",
    page: "1047–1064",
    note: "The abstract was read.",
  },
  {
    id: "bierschenk-1963",
    type: "article-journal",
    title: "Determining well efficiency by multiple step-drawdown tests",
    author: [{ family: "Bierschenk", given: "W. H." }],
    issued: { "date-parts": [[1963]] },
    "container-title": "International Association of Scientific Hydrology Publication",
    volume: "64",
    page: "493–507",
    note: "Recalled, not read again.",
  },
  {
    id: "walton-1962",
    type: "report",
    title: "Selected Analytical Methods for Well and Aquifer Evaluation",
    author: [{ family: "Walton", given: "W. C." }],
    issued: { "date-parts": [[1962]] },
    number: "Illinois State Water Survey Bulletin 49",
    note: "The classes of well loss are recalled; only the contents were opened.",
  },
  {
    id: "thiem-1906",
    type: "book",
    title: "Hydrologische Methoden",
    author: [{ family: "Thiem", given: "G." }],
    issued: { "date-parts": [[1906]] },
    publisher: "Gebhardt",
    note: "Recalled, not read again.",
  },
  {
    id: "dupuit-1863",
    type: "book",
    title: "Études théoriques et pratiques sur le mouvement des eaux",
    author: [{ family: "Dupuit", given: "J." }],
    issued: { "date-parts": [[1863]] },
    publisher: "Dunod",
    note: "Recalled, not read again.",
  },
  {
    id: "kyrieleis-sichardt-1930",
    type: "book",
    title: "Grundwasserabsenkung bei Fundierungsarbeiten",
    author: [
      { family: "Kyrieleis", given: "W." },
      { family: "Sichardt", given: "W." },
    ],
    issued: { "date-parts": [[1930]] },
    publisher: "Springer",
    note: "Recalled, not read again.",
  },
  {
    id: "nist-dlmf",
    type: "webpage",
    title: "Digital Library of Mathematical Functions",
    author: [{ literal: "National Institute of Standards and Technology" }],
    URL: "https://dlmf.nist.gov/",
    note: "Chapters 5 and 6; recalled, not read again.",
  },
];
