/**
 * The register's own unit table, apart from the library's, so that a wrong factor in one is not cancelled by the other.
 *
 * Factors are the exact definitions, or the figures of NIST SP 811 appendix B.
 */
const INCH = 0.0254;
const FOOT = 12 * INCH;
const POUND = 0.45359237;
const STANDARD_GRAVITY = 9.80665;
const POUND_FORCE = POUND * STANDARD_GRAVITY;
const US_GALLON = 231 * INCH ** 3;
const IMPERIAL_GALLON = 4.54609e-3;
const MERCURY = 13595.1 * STANDARD_GRAVITY;
const WATER = 1000 * STANDARD_GRAVITY;

/** SI value of one of each unit; units that are names or pure numbers are 1. */
const UNITS: Readonly<Record<string, number>> = {
  "": 1,
  "1": 1,
  name: 1,
  "%": 0.01,
  percent: 0.01,
  fraction: 1,
  pu: 1,
  AWG: 1,
  deg: Math.PI / 180,
  m: 1,
  mm: 1e-3,
  cm: 1e-2,
  km: 1e3,
  um: 1e-6,
  in: INCH,
  ft: FOOT,
  yd: 3 * FOOT,
  mi: 5280 * FOOT,
  mil: INCH / 1000,
  ha: 1e4,
  acre: 43560 * FOOT ** 2,
  cmil: (Math.PI / 4) * (INCH / 1000) ** 2,
  kcmil: 1000 * (Math.PI / 4) * (INCH / 1000) ** 2,
  L: 1e-3,
  mL: 1e-6,
  gal: US_GALLON,
  Mgal: 1e6 * US_GALLON,
  qt: US_GALLON / 4,
  pint: US_GALLON / 8,
  cup: US_GALLON / 16,
  floz: US_GALLON / 128,
  Impgal: IMPERIAL_GALLON,
  gpm: US_GALLON / 60,
  gpd: US_GALLON / 86400,
  bbl: 42 * US_GALLON,
  s: 1,
  min: 60,
  h: 3600,
  d: 86400,
  day: 86400,
  yr: 365.25 * 86400,
  year: 365.25 * 86400,
  Hz: 1,
  rpm: 1 / 60,
  r: 1,
  starts: 1,
  WSFU: 1,
  connection: 1,
  FU: 1,
  ERU: 1,
  head: 1,
  kg: 1,
  g: 1e-3,
  mg: 1e-6,
  ug: 1e-9,
  t: 1000,
  lb: POUND,
  oz: POUND / 16,
  slug: POUND_FORCE / FOOT,
  N: 1,
  kN: 1e3,
  lbf: POUND_FORCE,
  Pa: 1,
  uPa: 1e-6,
  kPa: 1e3,
  MPa: 1e6,
  GPa: 1e9,
  bar: 1e5,
  atm: 101325,
  psi: POUND_FORCE / INCH ** 2,
  psig: POUND_FORCE / INCH ** 2,
  Torr: 101325 / 760,
  inHg: INCH * MERCURY,
  inH2O: INCH * WATER,
  ftH2O: FOOT * WATER,
  cP: 1e-3,
  cSt: 1e-6,
  St: 1e-4,
  J: 1,
  kJ: 1e3,
  MJ: 1e6,
  kWh: 3.6e6,
  Wh: 3600,
  Btu: 1055.05585262,
  Btu_IT: 1055.05585262,
  W: 1,
  kW: 1e3,
  hp: 550 * FOOT * POUND_FORCE,
  whp: 550 * FOOT * POUND_FORCE,
  VA: 1,
  kVA: 1e3,
  kvar: 1e3,
  V: 1,
  mV: 1e-3,
  kV: 1e3,
  A: 1,
  mA: 1e-3,
  ohm: 1,
  kohm: 1e3,
  Mohm: 1e6,
  kft: 1000 * FOOT,
  K: 1,
  C: 1,
  F: 1 / 1.8,
};

/** Units of more than one word, before they are cut up. */
const ALIASES: Readonly<Record<string, string>> = {
  "gpm (US)": "gpm",
  "gal (US)": "gal",
  "US gal": "gal",
  "US gal/min": "gpm",
  "gpm (imp)": "Impgal/min",
  "gal (imp)": "Impgal",
  "gal (imp)/day": "Impgal/d",
  "hp (water)": "hp",
  "ft lbf/lb": "ft",
  "ft lb": "ft lbf",
  "gpd/ft per gpm/ft": "gpd/gpm",
  "m/(L/min)^2": "m min2/L2",
  "ft/(ft3/s)^2": "ft s2/ft6",
  "m/(m3/s)^2": "m s2/m6",
  "kWh/acre-ft": "kWh/(acre ft)",
  "gal/acre-in": "gal/(acre in)",
  "rpm gpm^0.5 / ft^0.75": "1",
  US: "1",
  "US per dimensionless": "1",
  "USD/year": "1",
  "grade number": "1",
};

/** An affine unit: SI = (value + zero) · scale. */
const AFFINE: Readonly<Record<string, readonly [zero: number, scale: number]>> = {
  degC: [273.15, 1],
  degF: [459.67, 1 / 1.8],
};

/** The SI value of a number of units; compound units as "ft/1000 ft", "gal/(d ft)", "Pa s", "m2", "s2/m5". */
export function toSi(value: number, unit: string): number {
  const affine = AFFINE[unit];
  if (affine !== undefined) return (value + affine[0]) * affine[1];
  return value * factor(ALIASES[unit] ?? unit);
}

function factor(unit: string): number {
  const text = unit
    .replace(/Imp gal/g, "Impgal")
    .replace(/fl oz/g, "floz")
    .replace(/degC/g, "K")
    .replace(/degF/g, "F");
  const [numerator = "", ...denominators] = text.split("/");
  return denominators.reduce((result, part) => result / product(part.replace(/[()]/g, "")), product(numerator));
}

function product(text: string): number {
  return text.split(/\s+/).reduce((result, word) => result * power(word), 1);
}

function power(word: string): number {
  if (word in UNITS) return UNITS[word] as number;
  if (/^[\d.]+$/.test(word)) return Number(word);
  const [, base, exponent] = /^([A-Za-z]+?)\^?(-?[\d.]+)$/.exec(word) ?? [];
  if (base === undefined || !(base in UNITS)) throw new Error(`the register's unit table has no "${word}"`);
  return (UNITS[base] as number) ** Number(exponent);
}
