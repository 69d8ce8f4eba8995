/** Wrong quantities are refused by the types. */
import { type IrrigationInput, type LivestockInput, type PeakFlowInput, storageNeed } from "risingmain/demand";
import { acres, fahrenheit, fahrenheitDegrees, feet, gpm, hours, inches, usGallons } from "risingmain/units";

const plot: IrrigationInput = { area: acres(1), depth: inches(0.25) };
const herd: LivestockInput = { kind: "horse", head: 2, temperature: fahrenheit(80) };
const day: PeakFlowInput = { volume: usGallons(400), period: hours(2) };

// @ts-expect-error a length is not an area
export const lengthForArea: IrrigationInput = { ...plot, area: feet(200) };
// @ts-expect-error a difference of temperatures is not a temperature
export const differenceForTemperature: LivestockInput = { ...herd, temperature: fahrenheitDegrees(80) };
// @ts-expect-error no such animal in the tables
export const unknownKind: LivestockInput = { ...herd, kind: "unicorn" };
// @ts-expect-error a flow is not a volume
export const flowForVolume: PeakFlowInput = { ...day, volume: gpm(5) };
// @ts-expect-error a volume is not a flow
export const volumeForFlow = storageNeed({ wellYield: usGallons(2), pattern: [{ duration: hours(1), draw: gpm(1) }] });
