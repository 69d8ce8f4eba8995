/**
 * Quantities of the job as plain SI numbers, told apart by type, with a constructor and a reader for each unit.
 *
 * @module
 */
export {
  type AbsolutePressure,
  barAbsolute,
  inBarAbsolute,
  inchesOfMercury,
  inInchesOfMercury,
  inKilopascalsAbsolute,
  inMegapascalsAbsolute,
  inPascalsAbsolute,
  inPsia,
  inStandardAtmospheres,
  kilopascalsAbsolute,
  megapascalsAbsolute,
  pascalsAbsolute,
  psia,
  standardAtmospheres,
} from "./absolute-pressure.ts";
export {
  type ApparentPower,
  inKilovoltAmperes,
  inVoltAmperes,
  kilovoltAmperes,
  voltAmperes,
} from "./apparent-power.ts";
export {
  type Area,
  acres,
  circularMils,
  hectares,
  inAcres,
  inCircularMils,
  inHectares,
  inSquareCentimetres,
  inSquareFeet,
  inSquareInches,
  inSquareMetres,
  inSquareMillimetres,
  squareCentimetres,
  squareFeet,
  squareInches,
  squareMetres,
  squareMillimetres,
} from "./area.ts";
export { absoluteOfGauge, gaugeOfAbsolute } from "./atmospheric.ts";
export {
  type Concentration,
  gramsPerLitre,
  inGramsPerLitre,
  inKilogramsPerCubicMetreConcentration,
  inMgPerLitre,
  inMicrogramsPerLitre,
  kilogramsPerCubicMetreConcentration,
  mgPerLitre,
  microgramsPerLitre,
} from "./concentration.ts";
export { type ConcentrationTime, inMgMinutesPerLitre, mgMinutesPerLitre } from "./concentration-time.ts";
export { amperes, type Current, inAmperes, inMilliamperes, milliamperes } from "./current.ts";
export {
  celsiusDegreeDays,
  type DegreeTime,
  fahrenheitDegreeDays,
  inCelsiusDegreeDays,
  inFahrenheitDegreeDays,
} from "./degree-time.ts";
export {
  type Density,
  inKilogramsPerCubicMetre,
  inPoundsPerCubicFoot,
  kilogramsPerCubicMetre,
  poundsPerCubicFoot,
} from "./density.ts";
export {
  type Duration,
  days,
  hours,
  inDays,
  inHours,
  inMilliseconds,
  inMinutes,
  inSeconds,
  inYears,
  milliseconds,
  minutes,
  seconds,
  years,
} from "./duration.ts";
export {
  centipoise,
  type DynamicViscosity,
  inCentipoise,
  inMillipascalSeconds,
  inPascalSeconds,
  millipascalSeconds,
  pascalSeconds,
} from "./dynamic-viscosity.ts";
export {
  btu,
  type Energy,
  inBtu,
  inJoules,
  inKilowattHours,
  inMegajoules,
  inWattHours,
  joules,
  kilowattHours,
  megajoules,
  wattHours,
} from "./energy.ts";
export { type Force, inKilonewtons, inNewtons, inPoundsForce, kilonewtons, newtons, poundsForce } from "./force.ts";
export { type FormatOptions, format, type UnitSymbols } from "./format.ts";
export {
  type Frequency,
  hertz,
  inHertz,
  inPerDay,
  inPerHour,
  inPerMinute,
  perDay,
  perHour,
  perMinute,
} from "./frequency.ts";
export {
  bar,
  type GaugePressure,
  inBar,
  inKilopascals,
  inMegapascals,
  inPascals,
  inPsi,
  kilopascals,
  megapascals,
  pascals,
  psi,
} from "./gauge-pressure.ts";
export { InputError } from "./input-error.ts";
export {
  centistokes,
  inCentistokes,
  inSquareFeetPerSecond,
  inSquareMetresPerSecond,
  inSquareMillimetresPerSecond,
  type KinematicViscosity,
  squareFeetPerSecond,
  squareMetresPerSecond,
  squareMillimetresPerSecond,
} from "./kinematic-viscosity.ts";
export {
  centimetres,
  feet,
  inCentimetres,
  inches,
  inFeet,
  inInches,
  inKilometres,
  inMetres,
  inMicrometres,
  inMiles,
  inMillimetres,
  inMils,
  inYards,
  kilometres,
  type Length,
  metres,
  micrometres,
  miles,
  millimetres,
  mils,
  yards,
} from "./length.ts";
export {
  grams,
  inGrams,
  inKilograms,
  inMilligrams,
  inOunces,
  inPounds,
  inTonnes,
  kilograms,
  type Mass,
  milligrams,
  ounces,
  pounds,
  tonnes,
} from "./mass.ts";
export {
  inKilogramsPerMetre,
  inPoundsPerFoot,
  kilogramsPerMetre,
  type MassPerLength,
  poundsPerFoot,
} from "./mass-per-length.ts";
export {
  gigapascals,
  inGigapascals,
  inMegapascalsModulus,
  inPascalsModulus,
  inPsiModulus,
  type Modulus,
  megapascalsModulus,
  pascalsModulus,
  psiModulus,
} from "./modulus.ts";
export {
  btuPerHour,
  electricHorsepower,
  horsepower,
  inBtuPerHour,
  inElectricHorsepower,
  inHorsepower,
  inKilowatts,
  inMetricHorsepower,
  inWatts,
  kilowatts,
  metricHorsepower,
  type Power,
  watts,
} from "./power.ts";
export {
  barDifference,
  inBarDifference,
  inKilopascalsDifference,
  inMegapascalsDifference,
  inPascalsDifference,
  inPsiDifference,
  kilopascalsDifference,
  megapascalsDifference,
  type PressureDifference,
  pascalsDifference,
  psiDifference,
} from "./pressure-difference.ts";
export type { Quantity } from "./quantity.ts";
export { inPercent, inRatio, percent, type Ratio, ratio } from "./ratio.ts";
export {
  inKilohms,
  inMegohms,
  inMilliohms,
  inOhms,
  kilohms,
  megohms,
  milliohms,
  ohms,
  type Resistance,
} from "./resistance.ts";
export {
  inOhmsPerKilometre,
  inOhmsPerMetre,
  inOhmsPerThousandFeet,
  ohmsPerKilometre,
  ohmsPerMetre,
  ohmsPerThousandFeet,
  type ResistancePerLength,
} from "./resistance-per-length.ts";
export {
  celsius,
  celsiusDegrees,
  fahrenheit,
  fahrenheitDegrees,
  inCelsius,
  inCelsiusDegrees,
  inFahrenheit,
  inFahrenheitDegrees,
  inKelvins,
  inKelvinsDifference,
  kelvins,
  kelvinsDifference,
  type Temperature,
  type TemperatureDifference,
} from "./temperature.ts";
export { parseAbsolutePressure } from "./texts/absolute-pressure.ts";
export { parseApparentPower } from "./texts/apparent-power.ts";
export { parseArea } from "./texts/area.ts";
export { parseConcentration } from "./texts/concentration.ts";
export { parseCurrent } from "./texts/current.ts";
export { parseDensity } from "./texts/density.ts";
export { parseDuration } from "./texts/duration.ts";
export { parseDynamicViscosity } from "./texts/dynamic-viscosity.ts";
export { parseEnergy } from "./texts/energy.ts";
export { parseForce } from "./texts/force.ts";
export { parseFrequency } from "./texts/frequency.ts";
export { parsePressure } from "./texts/gauge-pressure.ts";
export { parseKinematicViscosity } from "./texts/kinematic-viscosity.ts";
export { parseLength } from "./texts/length.ts";
export { parseMass } from "./texts/mass.ts";
export { parseMassPerLength } from "./texts/mass-per-length.ts";
export { parseModulus } from "./texts/modulus.ts";
export { parsePower } from "./texts/power.ts";
export { parsePressureDifference } from "./texts/pressure-difference.ts";
export { parseRatio } from "./texts/ratio.ts";
export { parseResistance } from "./texts/resistance.ts";
export { parseResistancePerLength } from "./texts/resistance-per-length.ts";
export { parseTemperature } from "./texts/temperature.ts";
export { parseTemperatureDifference } from "./texts/temperature-difference.ts";
export { parseThermalConductivity } from "./texts/thermal-conductivity.ts";
export { parseTorque } from "./texts/torque.ts";
export { parseTransmissivity } from "./texts/transmissivity.ts";
export { parseVelocity } from "./texts/velocity.ts";
export { parseVoltage } from "./texts/voltage.ts";
export { parseVolume } from "./texts/volume.ts";
export { parseFlow } from "./texts/volume-flow.ts";
export {
  btuPerHourFootDegreeF,
  inBtuPerHourFootDegreeF,
  inWattsPerMetreKelvin,
  type ThermalConductivity,
  wattsPerMetreKelvin,
} from "./thermal-conductivity.ts";
export { inNewtonMetres, inPoundFeet, newtonMetres, poundFeet, type Torque } from "./torque.ts";
export {
  gpmPerFoot,
  inGpmPerFoot,
  inLitresPerSecondPerMetre,
  inSquareFeetPerDay,
  inSquareMetresPerDay,
  inSquareMetresPerSecondTransmissivity,
  inUsGallonsPerDayPerFoot,
  litresPerSecondPerMetre,
  squareFeetPerDay,
  squareMetresPerDay,
  squareMetresPerSecondTransmissivity,
  type Transmissivity,
  usGallonsPerDayPerFoot,
} from "./transmissivity.ts";
export {
  feetPerSecond,
  inFeetPerSecond,
  inKilometresPerHour,
  inMetresPerSecond,
  inMilesPerHour,
  kilometresPerHour,
  metresPerSecond,
  milesPerHour,
  type Velocity,
} from "./velocity.ts";
export { inKilovolts, inMillivolts, inVolts, kilovolts, millivolts, type Voltage, volts } from "./voltage.ts";
export {
  acreFeet,
  cubicFeet,
  cubicInches,
  cubicMetres,
  cubicYards,
  imperialFluidOunces,
  imperialGallons,
  inAcreFeet,
  inCubicFeet,
  inCubicInches,
  inCubicMetres,
  inCubicYards,
  inImperialFluidOunces,
  inImperialGallons,
  inLitres,
  inMillilitres,
  inUsCups,
  inUsFluidOunces,
  inUsGallons,
  inUsPints,
  inUsQuarts,
  inUsTablespoons,
  litres,
  millilitres,
  usCups,
  usFluidOunces,
  usGallons,
  usPints,
  usQuarts,
  usTablespoons,
  type Volume,
} from "./volume.ts";
export {
  cubicFeetPerSecond,
  cubicMetresPerDay,
  cubicMetresPerHour,
  cubicMetresPerSecond,
  gpm,
  imperialGallonsPerDay,
  imperialGpm,
  inCubicFeetPerSecond,
  inCubicMetresPerDay,
  inCubicMetresPerHour,
  inCubicMetresPerSecond,
  inGpm,
  inImperialGallonsPerDay,
  inImperialGpm,
  inLitresPerHour,
  inLitresPerMinute,
  inLitresPerSecond,
  inUsGallonsPerDay,
  inUsGallonsPerHour,
  inUsGallonsPerSecond,
  litresPerHour,
  litresPerMinute,
  litresPerSecond,
  usGallonsPerDay,
  usGallonsPerHour,
  usGallonsPerSecond,
  type VolumeFlow,
} from "./volume-flow.ts";
