/** Published conversion factors: each goes in by one constructor of the library and out by another unit's reader. */
import * as units from "risingmain/units";
import type { Computation, Given } from "./register.ts";
import { toSi } from "./unit-table.ts";

type Pair = readonly [make: (value: number) => number, read: (quantity: never) => number];

/** The library's constructor and reader for the unit texts of the records. */
const PAIRS: Readonly<Record<string, Pair>> = {
  m: [units.metres, units.inMetres],
  ft: [units.feet, units.inFeet],
  in: [units.inches, units.inInches],
  yd: [units.yards, units.inYards],
  mi: [units.miles, units.inMiles],
  m2: [units.squareMetres, units.inSquareMetres],
  mm2: [units.squareMillimetres, units.inSquareMillimetres],
  acre: [units.acres, units.inAcres],
  ha: [units.hectares, units.inHectares],
  cmil: [units.circularMils, units.inCircularMils],
  kcmil: [(value) => units.circularMils(1000 * value), (area) => units.inCircularMils(area) / 1000],
  m3: [units.cubicMetres, units.inCubicMetres],
  L: [units.litres, units.inLitres],
  in3: [units.cubicInches, units.inCubicInches],
  ft3: [units.cubicFeet, units.inCubicFeet],
  "acre-ft": [units.acreFeet, units.inAcreFeet],
  "gal (US)": [units.usGallons, units.inUsGallons],
  "gal (imp)": [units.imperialGallons, units.inImperialGallons],
  Pa: [units.pascals, units.inPascals],
  kPa: [units.kilopascals, units.inKilopascals],
  bar: [units.bar, units.inBar],
  psi: [units.psi, units.inPsi],
  atm: [units.standardAtmospheres, units.inStandardAtmospheres],
  inHg: [units.inchesOfMercury, units.inInchesOfMercury],
  W: [units.watts, units.inWatts],
  kW: [units.kilowatts, units.inKilowatts],
  hp: [units.horsepower, units.inHorsepower],
  "hp (electric)": [units.electricHorsepower, units.inElectricHorsepower],
  "hp (metric)": [units.metricHorsepower, units.inMetricHorsepower],
  N: [units.newtons, units.inNewtons],
  lbf: [units.poundsForce, units.inPoundsForce],
  kg: [units.kilograms, units.inKilograms],
  lb: [units.pounds, units.inPounds],
  J: [units.joules, units.inJoules],
  kWh: [units.kilowattHours, units.inKilowattHours],
  Btu_IT: [units.btu, units.inBtu],
  "Pa s": [units.pascalSeconds, units.inPascalSeconds],
  cP: [units.centipoise, units.inCentipoise],
  "m2/s": [units.squareMetresPerSecond, units.inSquareMetresPerSecond],
  "ft2/s": [units.squareFeetPerSecond, units.inSquareFeetPerSecond],
  "kg/m3": [units.kilogramsPerCubicMetre, units.inKilogramsPerCubicMetre],
  "lb/ft3": [units.poundsPerCubicFoot, units.inPoundsPerCubicFoot],
  "m3/s": [units.cubicMetresPerSecond, units.inCubicMetresPerSecond],
  "L/s": [units.litresPerSecond, units.inLitresPerSecond],
  "L/min": [units.litresPerMinute, units.inLitresPerMinute],
  "m3/h": [units.cubicMetresPerHour, units.inCubicMetresPerHour],
  "ft3/s": [units.cubicFeetPerSecond, units.inCubicFeetPerSecond],
  "gpm (US)": [units.gpm, units.inGpm],
  "gpm (imp)": [units.imperialGpm, units.inImperialGpm],
  "Mgal/d": [(value) => units.usGallonsPerDay(1e6 * value), (flow) => units.inUsGallonsPerDay(flow) / 1e6],
  degF: [units.fahrenheit, units.inFahrenheit],
  degC: [units.celsius, units.inCelsius],
};

function pair(unit: string): Pair {
  const found = PAIRS[unit];
  if (found === undefined) throw new Error(`no constructor and reader for "${unit}"`);
  return found;
}

function converted({ record }: Given, from: string, to: string): Record<string, number> {
  const input = record.inputs[from];
  const output = record.expected[to];
  if (input === undefined || output === undefined) throw new Error(`${record.id} lacks ${from} or ${to}`);
  const read = pair(output.unit)[1] as (quantity: number) => number;
  return { [to]: toSi(read(pair(input.unit)[0](Number(input.value))), output.unit) };
}

export const computations: readonly Computation[] = [
  { ids: /unit-degf-.*/, compute: (given) => converted(given, "temperature", "temperature") },
  { ids: /unit-(?!degf-).*/, compute: (given) => converted(given, "from", "to") },
];
