/**
 * CT for 4-log inactivation of viruses by free chlorine, mg·min/L.
 *
 * US EPA, *Disinfection Profiling and Benchmarking Guidance Manual* (1999), table B-2 (`epa-profiling-1999`); seen as a
 * transcription, the year recalled.
 *
 * @module
 */

/** One temperature. */
export interface VirusCtRow {
  readonly celsius: number;
  readonly pH6to9: number;
  readonly pH10: number;
}

/** Rows by rising temperature. */
export const VIRUS_CT: readonly [VirusCtRow, ...VirusCtRow[]] = [
  { celsius: 0.5, pH6to9: 12, pH10: 90 },
  { celsius: 5, pH6to9: 8, pH10: 60 },
  { celsius: 10, pH6to9: 6, pH10: 45 },
  { celsius: 15, pH6to9: 4, pH10: 30 },
  { celsius: 20, pH6to9: 3, pH10: 22 },
  { celsius: 25, pH6to9: 2, pH10: 15 },
];
