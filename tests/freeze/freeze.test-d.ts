/** Wrong quantities are refused by the types. */
import type { BerggrenInput, StefanInput, SurfaceIndexInput, TimeToFreezeInput } from "risingmain/freeze";
import {
  celsius,
  celsiusDegrees,
  days,
  fahrenheitDegreeDays,
  feet,
  inches,
  kilogramsPerCubicMetre,
  percent,
  wattsPerMetreKelvin,
} from "risingmain/units";

const soil: StefanInput = {
  conductivity: wattsPerMetreKelvin(1),
  dryDensity: kilogramsPerCubicMetre(1600),
  moisture: percent(15),
  surfaceIndex: fahrenheitDegreeDays(1000),
};
const pipe: TimeToFreezeInput = {
  insideDiameter: inches(1),
  insulationInside: inches(1.3),
  insulationOutside: inches(3),
  conductivity: wattsPerMetreKelvin(0.04),
  water: celsius(8),
  air: celsius(-10),
};

// @ts-expect-error a time is not a freezing index
export const timeForIndex: StefanInput = { ...soil, surfaceIndex: days(100) };
// @ts-expect-error a difference of temperatures is not a temperature
export const differenceForMean: BerggrenInput = { ...soil, season: days(120), meanAnnual: celsiusDegrees(5) };
// @ts-expect-error a temperature is not a length
export const temperatureForDiameter: TimeToFreezeInput = { ...pipe, insideDiameter: celsius(1) };
// @ts-expect-error a length is not an index
export const lengthForIndex: SurfaceIndexInput = { airIndex: feet(4), surface: "turf" };
