/**
 * Sources of the conductor module.
 *
 * @module
 */
import type { Source } from "../source.ts";

/** Sources of the conductor module. */
export const conductorSources: readonly Source[] = [
  {
    id: "nfpa-70",
    type: "standard",
    title: "National Electrical Code",
    author: [{ literal: "National Fire Protection Association" }],
    issued: { "date-parts": [[2014]] },
    number: "NFPA 70",
    edition: "2014, unless a table's header names another",
    note: "Single values recorded as facts, from public reproductions; the printed code was not seen.",
  },
  {
    id: "astm-b258",
    type: "standard",
    title:
      "Standard Nominal Diameters and Cross-Sectional Areas of AWG Sizes of Solid Round Wires Used as Electrical Conductors",
    author: [{ literal: "ASTM International" }],
    issued: { "date-parts": [[2002]] },
    number: "ASTM B258",
    note: "The gauge law as summarised in an encyclopaedia.",
  },
  {
    id: "astm-b8",
    type: "standard",
    title: "Concentric-Lay-Stranded Copper Conductors, Hard, Medium-Hard, or Soft",
    author: [{ literal: "ASTM International" }],
    number: "ASTM B8",
    note: "The usual 2 % increment of resistance for stranding, from memory.",
  },
  {
    id: "iec-60028",
    type: "standard",
    title: "International standard of resistance for copper",
    author: [{ literal: "International Electrotechnical Commission" }],
    issued: { "date-parts": [[1925]] },
    number: "IEC 60028",
  },
  {
    id: "iec-60889",
    type: "standard",
    title: "Hard-drawn aluminium wire for overhead line conductors",
    author: [{ literal: "International Electrotechnical Commission" }],
    issued: { "date-parts": [[1987]] },
    number: "IEC 60889",
    note: "Resistivity (61 % of copper's conductivity), coefficient and density from memory.",
  },
  {
    id: "iec-60228",
    type: "standard",
    title: "Conductors of insulated cables",
    author: [{ literal: "International Electrotechnical Commission" }],
    issued: { "date-parts": [[2004]] },
    number: "IEC 60228",
    note: "Resistances read in three cable-trade reproductions, compared.",
  },
  {
    id: "iec-60287-1-1",
    type: "standard",
    title:
      "Electric cables: calculation of the current rating, part 1-1: current rating equations and calculation of losses",
    author: [{ literal: "International Electrotechnical Commission" }],
    issued: { "date-parts": [[2006]] },
    number: "IEC 60287-1-1",
    note: "Skin-effect formula from memory.",
  },
  {
    id: "iec-60364-5-52",
    type: "standard",
    title:
      "Low-voltage electrical installations, part 5-52: selection and erection of electrical equipment: wiring systems",
    author: [{ literal: "International Electrotechnical Commission" }],
    issued: { "date-parts": [[2009]] },
    number: "IEC 60364-5-52",
    note: "Default reactance read in a design guide that follows the standard; current ratings from memory.",
  },
  {
    id: "kuphaldt-lessons",
    type: "book",
    title: "Lessons in Electric Circuits",
    author: [{ family: "Kuphaldt", given: "T. R." }],
    issued: { "date-parts": [[2007]] },
    note: "Reference chapter of the open edition.",
  },
  {
    id: "bs-7671",
    type: "standard",
    title: "Requirements for Electrical Installations",
    author: [{ literal: "British Standards Institution; Institution of Engineering and Technology" }],
    number: "BS 7671",
    note: "Table 4E4B read in a distributor's reproduction that names no edition.",
  },
];
