/**
 * Sources of the field module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the field module. */
export const fieldSources: readonly Source[] = [
  {
    id: "jcgm-100",
    type: "standard",
    title: "Evaluation of measurement data: Guide to the expression of uncertainty in measurement",
    author: [{ literal: "Joint Committee for Guides in Metrology" }],
    issued: { "date-parts": [[2008]] },
    number: "JCGM 100:2008",
    note: "Recalled.",
  },
  {
    id: "jcgm-101",
    type: "standard",
    title:
      "Evaluation of measurement data: Supplement 1 to the Guide: propagation of distributions using a Monte Carlo method",
    author: [{ literal: "Joint Committee for Guides in Metrology" }],
    issued: { "date-parts": [[2008]] },
    number: "JCGM 101:2008",
    note: "Recalled.",
  },
  {
    id: "jcgm-106",
    type: "standard",
    title: "Evaluation of measurement data: The role of measurement uncertainty in conformity assessment",
    author: [{ literal: "Joint Committee for Guides in Metrology" }],
    issued: { "date-parts": [[2012]] },
    number: "JCGM 106:2012",
    note: "Recalled.",
  },
  {
    id: "blackman-vigna-2021",
    type: "article-journal",
    title: "Scrambled linear pseudorandom number generators",
    author: [
      { family: "Blackman", given: "D." },
      { family: "Vigna", given: "S." },
    ],
    issued: { "date-parts": [[2021]] },
    "container-title": "ACM Transactions on Mathematical Software",
    volume: "47",
    note: "Recalled.",
  },
  {
    id: "cramer-1993",
    type: "article-journal",
    title: "The variation of the specific heat ratio and the speed of sound in air",
    author: [{ family: "Cramer", given: "O." }],
    issued: { "date-parts": [[1993]] },
    "container-title": "Journal of the Acoustical Society of America",
    volume: "93",
    page: "2510",
    note: "Recalled.",
  },
  {
    id: "hohn-discharge",
    type: "report",
    title: "Estimating Water Flow From Pipes",
    author: [{ family: "Hohn", given: "C. H." }],
    number: "Guide A-104",
    publisher: "New Mexico State University",
  },
  {
    id: "awwa-c605",
    type: "standard",
    title: "Underground Installation of Polyvinyl Chloride (PVC) Pressure Pipe and Fittings",
    author: [{ literal: "American Water Works Association" }],
    issued: { "date-parts": [[2005]] },
    number: "ANSI/AWWA C605-05",
    note: "Allowance as quoted in a specification filed with a Colorado agency.",
  },
  {
    id: "usgs-gwpd-4",
    type: "report",
    title: "GWPD 4, Measuring water levels by use of an electric tape",
    author: [{ literal: "US Geological Survey" }],
    issued: { "date-parts": [[2010]] },
    note: "Version 2010.1, read in a re-posted copy.",
  },
  {
    id: "schwarz-1978",
    type: "article-journal",
    title: "Estimating the dimension of a model",
    author: [{ family: "Schwarz", given: "G." }],
    issued: { "date-parts": [[1978]] },
    "container-title": "Annals of Statistics",
    volume: "6",
    page: "461",
    note: "Recalled.",
  },
  {
    id: "kass-raftery-1995",
    type: "article-journal",
    title: "Bayes factors",
    author: [
      { family: "Kass", given: "R. E." },
      { family: "Raftery", given: "A. E." },
    ],
    issued: { "date-parts": [[1995]] },
    "container-title": "Journal of the American Statistical Association",
    volume: "90",
    page: "773",
    note: "Recalled.",
  },
  {
    id: "levenberg-1944",
    type: "article-journal",
    title: "A method for the solution of certain non-linear problems in least squares",
    author: [{ family: "Levenberg", given: "K." }],
    issued: { "date-parts": [[1944]] },
    "container-title": "Quarterly of Applied Mathematics",
    volume: "2",
    page: "164",
    note: "Recalled.",
  },
];
