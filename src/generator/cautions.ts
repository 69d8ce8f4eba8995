/**
 * Cautions that go with a generator; a report prints them.
 *
 * @module
 */

/** One caution. */
export interface GeneratorCaution {
  /** Short name. */
  readonly id: "carbon-monoxide" | "transfer" | "bonding" | "licensed-work" | "fuel";
  /** What to do or not to do. */
  readonly text: string;
}

/**
 * What everyone near a generator must know.
 *
 * @source cpsc-generators: 20 ft from openings
 * @source cdc-carbon-monoxide: 20 ft from openings
 * @source nfpa-70, 250.34 and 702: bonding and transfer
 */
export const generatorCautions: readonly GeneratorCaution[] = [
  {
    id: "carbon-monoxide",
    text: "Exhaust kills without smell. Run the generator outdoors only, at least 20 ft (6.1 m) from doors, windows, vents and well pits, exhaust pointing away. Never in a pump house, garage or crawl space. Fit carbon-monoxide alarms.",
  },
  {
    id: "transfer",
    text: "Never feed a building or pump circuit that is still connected to the utility: it kills line workers. Use a listed transfer switch or interlock, or a plug and inlet that make both at once impossible.",
  },
  {
    id: "bonding",
    text: "Neutral and frame must be joined in exactly one place. A generator that feeds only its own receptacles is joined at its frame; one that feeds a building through a switch that leaves the neutral connected is joined at the building. Read the set's manual and ask the inspector.",
  },
  {
    id: "licensed-work",
    text: "Connecting a generator to fixed wiring is licensed work in most places. The local code and the inspector have the last word.",
  },
  {
    id: "fuel",
    text: "Stop the engine and let it cool before filling the tank. Keep fuel away from the well, from flames and from living space.",
  },
];
