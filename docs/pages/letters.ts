/**
 * Letters of the formulas that more than one reader asks about. A letter is the source's own, so one letter may stand for
 * several quantities; the reference page of a function says what it stands for there.
 */

/** A letter and what it stands for. */
export interface Letter {
  readonly letter: string;
  readonly quantity: string;
  readonly unit: string;
  /** The field that holds it. */
  readonly field?: string;
  /** Where no field holds it: the modules whose formulas use it. */
  readonly modules?: readonly string[];
}

/** The letters, in the order of the alphabet. */
export const letters: readonly Letter[] = [
  { letter: "a", quantity: "speed of a pressure wave", unit: "m/s", field: "waveSpeed" },
  { letter: "C", quantity: "coefficient of Hazen and Williams", unit: "1", modules: ["pipe"] },
  { letter: "d", quantity: "inside diameter", unit: "m", field: "insideDiameter" },
  { letter: "D", quantity: "inside diameter", unit: "m", field: "insideDiameter" },
  { letter: "E", quantity: "modulus of elasticity", unit: "Pa", field: "elasticModulus" },
  { letter: "f", quantity: "friction factor of Darcy and Weisbach", unit: "1", modules: ["pipe"] },
  {
    letter: "g",
    quantity: "standard acceleration of gravity, 9.80665",
    unit: "m/s²",
    modules: ["head", "pipe", "water"],
  },
  { letter: "h", quantity: "head loss", unit: "m", field: "headLoss" },
  { letter: "H", quantity: "head", unit: "m", field: "head" },
  { letter: "I", quantity: "current", unit: "A", field: "current" },
  { letter: "k", quantity: "equivalent sand roughness", unit: "m", field: "roughness" },
  { letter: "K", quantity: "loss coefficient of a fitting", unit: "1", modules: ["fittings"] },
  { letter: "L", quantity: "length", unit: "m", field: "length" },
  { letter: "p", quantity: "pressure", unit: "Pa", field: "pressure" },
  { letter: "P", quantity: "power", unit: "W", field: "power" },
  { letter: "Q", quantity: "volume flow", unit: "m³/s", field: "flow" },
  { letter: "R", quantity: "resistance", unit: "Ω, or Ω/m of a conductor", field: "resistance" },
  { letter: "s", quantity: "drawdown", unit: "m", field: "drawdown" },
  { letter: "T", quantity: "temperature", unit: "K", field: "temperature" },
  { letter: "T", quantity: "transmissivity", unit: "m²/s", field: "transmissivity" },
  { letter: "V", quantity: "mean velocity", unit: "m/s", field: "velocity" },
  { letter: "V", quantity: "voltage", unit: "V", field: "voltage" },
  { letter: "V", quantity: "volume", unit: "m³", field: "volume" },
  { letter: "X", quantity: "reactance", unit: "Ω/m", field: "reactance" },
  { letter: "z", quantity: "elevation", unit: "m", field: "elevation" },
  { letter: "η", quantity: "efficiency", unit: "1", field: "efficiency" },
  { letter: "ν", quantity: "kinematic viscosity", unit: "m²/s", field: "kinematicViscosity" },
  { letter: "ρ", quantity: "density", unit: "kg/m³", field: "density" },
  { letter: "φ", quantity: "angle between voltage and current", unit: "rad", modules: ["conductor", "motor"] },
];
