/**
 * A small job document to start from: a cabin of our own invention with one well, one pump and two outlets.
 *
 * @module
 */

/**
 * The document, as a job file would hold it: quantities as text with units. Read it with `readJob`.
 *
 * @source derived: invented for the examples
 */
export const sampleJob: unknown = {
  version: 1,
  name: "Alder Spring cabin",
  site: { elevation: "1,150 ft", waterTemperature: "50 °F" },
  well: {
    casingInsideDiameter: "5 in",
    depth: "180 ft",
    staticLevel: "40 ft",
    yield: "12 gpm",
    test: [{ flow: "12 gpm", pumpingLevel: "76 ft" }],
  },
  pump: {
    candidates: [
      {
        name: "half-horse, 8 stages",
        curve: [
          { flow: "0 gpm", head: "250 ft", efficiency: "0 %" },
          { flow: "4 gpm", head: "238 ft", efficiency: "40 %" },
          { flow: "8 gpm", head: "196 ft", efficiency: "57 %" },
          { flow: "12 gpm", head: "118 ft", efficiency: "54 %" },
        ],
        diameter: "3.8 in",
        motor: { power: "0.5 hp", voltage: "230 V", phase: "single-phase", serviceFactor: "1.6", codeLetter: "K" },
      },
    ],
  },
  controls: { cutIn: "30 psi", cutOut: "50 psi", reliefPressure: "75 psi", dryRunCutOff: true },
  tank: { maximumPressure: "100 psi" },
  places: [
    { name: "cabin", elevation: "8 ft" },
    { name: "garden", elevation: "-3 ft" },
  ],
  runs: [
    { from: "wellhead", to: "cabin", length: "120 ft" },
    { from: "wellhead", to: "garden", length: "60 ft" },
  ],
  outlets: [
    { name: "cabin", at: "cabin", flow: "5 gpm", pressure: "20 psi" },
    { name: "garden tap", at: "garden", flow: "3 gpm", pressure: "15 psi" },
  ],
  demand: { people: 2 },
  power: {
    sources: [{ name: "utility", kind: "utility", voltage: "240 V", phase: "single-phase" }],
    circuit: [{ name: "service to wellhead", length: "80 ft" }, { name: "drop cable" }],
  },
};
