/**
 * Alternating-current resistance and reactance of 600 V conductors, three in a raceway, at 75 °C and 60 Hz, each to neutral:
 * National Electrical Code, Chapter 9, Table 9.
 *
 * Source: `nfpa-70`, 2014 edition (effective impedance from the 2017 edition). Provenance: read in public reproductions;
 * the 1/0 AWG copper resistance in aluminium raceway, where they disagree (0.12 and 0.13), is 0.13 from memory of the
 * metric column. Figures as printed there: ohms per 1000 ft, rounded to two figures.
 *
 * @module
 */
import type { ConductorSize } from "./size.ts";

/** One figure for each kind of raceway, ohms per 1000 ft. */
export interface NecTable9Figures {
  /** In plastic (PVC) raceway. */
  readonly plastic: number;
  /** In aluminium raceway. */
  readonly aluminium: number;
  /** In steel raceway. */
  readonly steel: number;
}

/** One size of the table. */
export interface NecTable9Row {
  /** Trade size. */
  readonly size: ConductorSize;
  /** Reactance, the same for both metals, ohms per 1000 ft. */
  readonly reactance: NecTable9Figures;
  /** Resistance of uncoated copper, ohms per 1000 ft. */
  readonly copper: NecTable9Figures;
  /** Resistance of aluminium, ohms per 1000 ft; null where the code lists none. */
  readonly conductorOfAluminium: NecTable9Figures | null;
  /** Effective impedance of copper at power factor 0.85, as the code prints it, ohms per 1000 ft. */
  readonly effectiveCopper: NecTable9Figures;
}

/**
 * The rows, thin to thick.
 *
 * @source nfpa-70, Chapter 9 Table 9
 */
export const necChapter9Table9: readonly NecTable9Row[] = [
  {
    size: "14 AWG",
    reactance: { plastic: 0.058, aluminium: 0.058, steel: 0.073 },
    copper: { plastic: 3.1, aluminium: 3.1, steel: 3.1 },
    conductorOfAluminium: null,
    effectiveCopper: { plastic: 2.7, aluminium: 2.7, steel: 2.7 },
  },
  {
    size: "12 AWG",
    reactance: { plastic: 0.054, aluminium: 0.054, steel: 0.068 },
    copper: { plastic: 2, aluminium: 2, steel: 2 },
    conductorOfAluminium: { plastic: 3.2, aluminium: 3.2, steel: 3.2 },
    effectiveCopper: { plastic: 1.7, aluminium: 1.7, steel: 1.7 },
  },
  {
    size: "10 AWG",
    reactance: { plastic: 0.05, aluminium: 0.05, steel: 0.063 },
    copper: { plastic: 1.2, aluminium: 1.2, steel: 1.2 },
    conductorOfAluminium: { plastic: 2, aluminium: 2, steel: 2 },
    effectiveCopper: { plastic: 1.1, aluminium: 1.1, steel: 1.1 },
  },
  {
    size: "8 AWG",
    reactance: { plastic: 0.052, aluminium: 0.052, steel: 0.065 },
    copper: { plastic: 0.78, aluminium: 0.78, steel: 0.78 },
    conductorOfAluminium: { plastic: 1.3, aluminium: 1.3, steel: 1.3 },
    effectiveCopper: { plastic: 0.69, aluminium: 0.69, steel: 0.7 },
  },
  {
    size: "6 AWG",
    reactance: { plastic: 0.051, aluminium: 0.051, steel: 0.064 },
    copper: { plastic: 0.49, aluminium: 0.49, steel: 0.49 },
    conductorOfAluminium: { plastic: 0.81, aluminium: 0.81, steel: 0.81 },
    effectiveCopper: { plastic: 0.44, aluminium: 0.45, steel: 0.45 },
  },
  {
    size: "4 AWG",
    reactance: { plastic: 0.048, aluminium: 0.048, steel: 0.06 },
    copper: { plastic: 0.31, aluminium: 0.31, steel: 0.31 },
    conductorOfAluminium: { plastic: 0.51, aluminium: 0.51, steel: 0.51 },
    effectiveCopper: { plastic: 0.29, aluminium: 0.29, steel: 0.3 },
  },
  {
    size: "3 AWG",
    reactance: { plastic: 0.047, aluminium: 0.047, steel: 0.059 },
    copper: { plastic: 0.25, aluminium: 0.25, steel: 0.25 },
    conductorOfAluminium: { plastic: 0.4, aluminium: 0.41, steel: 0.4 },
    effectiveCopper: { plastic: 0.23, aluminium: 0.24, steel: 0.24 },
  },
  {
    size: "2 AWG",
    reactance: { plastic: 0.045, aluminium: 0.045, steel: 0.057 },
    copper: { plastic: 0.19, aluminium: 0.2, steel: 0.2 },
    conductorOfAluminium: { plastic: 0.32, aluminium: 0.32, steel: 0.32 },
    effectiveCopper: { plastic: 0.19, aluminium: 0.19, steel: 0.2 },
  },
  {
    size: "1 AWG",
    reactance: { plastic: 0.046, aluminium: 0.046, steel: 0.057 },
    copper: { plastic: 0.15, aluminium: 0.16, steel: 0.16 },
    conductorOfAluminium: { plastic: 0.25, aluminium: 0.26, steel: 0.25 },
    effectiveCopper: { plastic: 0.16, aluminium: 0.16, steel: 0.16 },
  },
  {
    size: "1/0 AWG",
    reactance: { plastic: 0.044, aluminium: 0.044, steel: 0.055 },
    copper: { plastic: 0.12, aluminium: 0.13, steel: 0.12 },
    conductorOfAluminium: { plastic: 0.2, aluminium: 0.21, steel: 0.2 },
    effectiveCopper: { plastic: 0.13, aluminium: 0.13, steel: 0.13 },
  },
  {
    size: "2/0 AWG",
    reactance: { plastic: 0.043, aluminium: 0.043, steel: 0.054 },
    copper: { plastic: 0.1, aluminium: 0.1, steel: 0.1 },
    conductorOfAluminium: { plastic: 0.16, aluminium: 0.16, steel: 0.16 },
    effectiveCopper: { plastic: 0.11, aluminium: 0.11, steel: 0.11 },
  },
  {
    size: "3/0 AWG",
    reactance: { plastic: 0.042, aluminium: 0.042, steel: 0.052 },
    copper: { plastic: 0.077, aluminium: 0.082, steel: 0.079 },
    conductorOfAluminium: { plastic: 0.13, aluminium: 0.13, steel: 0.13 },
    effectiveCopper: { plastic: 0.088, aluminium: 0.092, steel: 0.094 },
  },
  {
    size: "4/0 AWG",
    reactance: { plastic: 0.041, aluminium: 0.041, steel: 0.051 },
    copper: { plastic: 0.062, aluminium: 0.067, steel: 0.063 },
    conductorOfAluminium: { plastic: 0.1, aluminium: 0.11, steel: 0.1 },
    effectiveCopper: { plastic: 0.074, aluminium: 0.078, steel: 0.08 },
  },
  {
    size: "250 kcmil",
    reactance: { plastic: 0.041, aluminium: 0.041, steel: 0.052 },
    copper: { plastic: 0.052, aluminium: 0.057, steel: 0.054 },
    conductorOfAluminium: { plastic: 0.085, aluminium: 0.09, steel: 0.086 },
    effectiveCopper: { plastic: 0.066, aluminium: 0.07, steel: 0.073 },
  },
  {
    size: "300 kcmil",
    reactance: { plastic: 0.041, aluminium: 0.041, steel: 0.051 },
    copper: { plastic: 0.044, aluminium: 0.049, steel: 0.045 },
    conductorOfAluminium: { plastic: 0.071, aluminium: 0.076, steel: 0.072 },
    effectiveCopper: { plastic: 0.059, aluminium: 0.063, steel: 0.065 },
  },
  {
    size: "350 kcmil",
    reactance: { plastic: 0.04, aluminium: 0.04, steel: 0.05 },
    copper: { plastic: 0.038, aluminium: 0.043, steel: 0.039 },
    conductorOfAluminium: { plastic: 0.061, aluminium: 0.066, steel: 0.063 },
    effectiveCopper: { plastic: 0.053, aluminium: 0.058, steel: 0.06 },
  },
  {
    size: "400 kcmil",
    reactance: { plastic: 0.04, aluminium: 0.04, steel: 0.049 },
    copper: { plastic: 0.033, aluminium: 0.038, steel: 0.035 },
    conductorOfAluminium: { plastic: 0.054, aluminium: 0.059, steel: 0.055 },
    effectiveCopper: { plastic: 0.049, aluminium: 0.053, steel: 0.056 },
  },
  {
    size: "500 kcmil",
    reactance: { plastic: 0.039, aluminium: 0.039, steel: 0.048 },
    copper: { plastic: 0.027, aluminium: 0.032, steel: 0.029 },
    conductorOfAluminium: { plastic: 0.043, aluminium: 0.048, steel: 0.045 },
    effectiveCopper: { plastic: 0.043, aluminium: 0.048, steel: 0.05 },
  },
  {
    size: "600 kcmil",
    reactance: { plastic: 0.039, aluminium: 0.039, steel: 0.048 },
    copper: { plastic: 0.023, aluminium: 0.028, steel: 0.025 },
    conductorOfAluminium: { plastic: 0.036, aluminium: 0.041, steel: 0.038 },
    effectiveCopper: { plastic: 0.04, aluminium: 0.044, steel: 0.047 },
  },
  {
    size: "750 kcmil",
    reactance: { plastic: 0.038, aluminium: 0.038, steel: 0.048 },
    copper: { plastic: 0.019, aluminium: 0.024, steel: 0.021 },
    conductorOfAluminium: { plastic: 0.029, aluminium: 0.034, steel: 0.031 },
    effectiveCopper: { plastic: 0.036, aluminium: 0.04, steel: 0.043 },
  },
];
