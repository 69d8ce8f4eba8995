/**
 * Fixed figures about generators that a plan or a report may need.
 *
 * @module
 */

/** Figures with their sources. */
export interface GeneratorRules {
  /** Least distance of a running set from doors, windows and vents, m: 20 ft. */
  readonly leastDistance: number;
  /** Distance that the most careful federal notice asks for, m: 25 ft. */
  readonly carefulDistance: number;
  /** Ampacity of the conductors from the terminals to the first overcurrent device, of the nameplate current. */
  readonly conductorShare: number;
  /** Starting over running power of farm motors, from and to. */
  readonly startingRatio: readonly [low: number, high: number];
  /** Engine power for each kilowatt of electric power, horsepower, from and to. */
  readonly enginePerKilowatt: readonly [low: number, high: number];
  /** Dip of voltage allowed while a motor starts, where nothing else is known. */
  readonly dipLimit: number;
  /** Share of the rating for a load that runs for hours. */
  readonly continuousShare: number;
}

/**
 * The figures.
 *
 * @source cpsc-generators: 20 ft
 * @source cdc-carbon-monoxide: 20 ft
 * @source nist-generator-distance: 25 ft
 * @source nfpa-70, 445.13(A): 115 % (memory)
 * @source progressive-dairy-generators: 3 to 5 times
 * @source carteret-craven-2013: 2 to 2.25 hp for each kilowatt
 * @source ufgs-16237n, 2.1.1.4: 25 %
 * @source common practice: 80 %
 */
export const generatorRules: GeneratorRules = {
  leastDistance: 6.096,
  carefulDistance: 7.62,
  conductorShare: 1.15,
  startingRatio: [3, 5],
  enginePerKilowatt: [2, 2.25],
  dipLimit: 0.25,
  continuousShare: 0.8,
};
