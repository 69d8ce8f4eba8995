/**
 * A quantity as text, in the unit asked for.
 *
 * @module
 */
import { requireObject, requireWhole } from "../numeric/guards.ts";
import type { AbsolutePressure } from "./absolute-pressure.ts";
import type { ApparentPower } from "./apparent-power.ts";
import type { Area } from "./area.ts";
import type { Concentration } from "./concentration.ts";
import type { Current } from "./current.ts";
import type { Density } from "./density.ts";
import type { Duration } from "./duration.ts";
import type { DynamicViscosity } from "./dynamic-viscosity.ts";
import type { Energy } from "./energy.ts";
import type { Force } from "./force.ts";
import type { Frequency } from "./frequency.ts";
import type { GaugePressure } from "./gauge-pressure.ts";
import { InputError } from "./input-error.ts";
import type { KinematicViscosity } from "./kinematic-viscosity.ts";
import type { Length } from "./length.ts";
import type { Mass } from "./mass.ts";
import type { MassPerLength } from "./mass-per-length.ts";
import type { Modulus } from "./modulus.ts";
import type { UnitText } from "./parse-quantity.ts";
import type { Power } from "./power.ts";
import type { PressureDifference } from "./pressure-difference.ts";
import type { Ratio } from "./ratio.ts";
import type { Resistance } from "./resistance.ts";
import type { ResistancePerLength } from "./resistance-per-length.ts";
import type { Temperature, TemperatureDifference } from "./temperature.ts";
import { absolutePressureUnits } from "./texts/absolute-pressure.ts";
import { apparentPowerUnits } from "./texts/apparent-power.ts";
import { areaUnits } from "./texts/area.ts";
import { concentrationUnits } from "./texts/concentration.ts";
import { currentUnits } from "./texts/current.ts";
import { densityUnits } from "./texts/density.ts";
import { durationUnits } from "./texts/duration.ts";
import { dynamicViscosityUnits } from "./texts/dynamic-viscosity.ts";
import { energyUnits } from "./texts/energy.ts";
import { forceUnits } from "./texts/force.ts";
import { frequencyUnits } from "./texts/frequency.ts";
import { gaugePressureUnits } from "./texts/gauge-pressure.ts";
import { kinematicViscosityUnits } from "./texts/kinematic-viscosity.ts";
import { lengthUnits } from "./texts/length.ts";
import { massUnits } from "./texts/mass.ts";
import { massPerLengthUnits } from "./texts/mass-per-length.ts";
import { modulusUnits } from "./texts/modulus.ts";
import { powerUnits } from "./texts/power.ts";
import { pressureDifferenceUnits } from "./texts/pressure-difference.ts";
import { ratioUnits } from "./texts/ratio.ts";
import { resistanceUnits } from "./texts/resistance.ts";
import { resistancePerLengthUnits } from "./texts/resistance-per-length.ts";
import { temperatureUnits } from "./texts/temperature.ts";
import { temperatureDifferenceUnits } from "./texts/temperature-difference.ts";
import { thermalConductivityUnits } from "./texts/thermal-conductivity.ts";
import { torqueUnits } from "./texts/torque.ts";
import { transmissivityUnits } from "./texts/transmissivity.ts";
import { velocityUnits } from "./texts/velocity.ts";
import { voltageUnits } from "./texts/voltage.ts";
import { volumeUnits } from "./texts/volume.ts";
import { volumeFlowUnits } from "./texts/volume-flow.ts";
import type { ThermalConductivity } from "./thermal-conductivity.ts";
import type { Torque } from "./torque.ts";
import type { Transmissivity } from "./transmissivity.ts";
import type { Velocity } from "./velocity.ts";
import type { Voltage } from "./voltage.ts";
import type { Volume } from "./volume.ts";
import type { VolumeFlow } from "./volume-flow.ts";
/** The quantity each unit symbol belongs to; a symbol of two quantities takes either. */
export interface UnitSymbols {
  /** Length. */
  readonly m: Length;
  /** Length. */
  readonly mm: Length;
  /** Length. */
  readonly cm: Length;
  /** Length. */
  readonly km: Length;
  /** Length. */
  readonly µm: Length;
  /** Length. */
  readonly in: Length;
  /** Length. */
  readonly ft: Length;
  /** Length. */
  readonly yd: Length;
  /** Length. */
  readonly mi: Length;
  /** Length. */
  readonly mil: Length;
  /** Area. */
  readonly "m²": Area;
  /** Area. */
  readonly "mm²": Area;
  /** Area. */
  readonly "cm²": Area;
  /** Area. */
  readonly ha: Area;
  /** Area. */
  readonly "in²": Area;
  /** Area. */
  readonly "ft²": Area;
  /** Area. */
  readonly acre: Area;
  /** Area. */
  readonly cmil: Area;
  /** Volume. */
  readonly "m³": Volume;
  /** Volume. */
  readonly L: Volume;
  /** Volume. */
  readonly mL: Volume;
  /** Volume. */
  readonly gal: Volume;
  /** Volume. */
  readonly "imp gal": Volume;
  /** Volume. */
  readonly qt: Volume;
  /** Volume. */
  readonly pt: Volume;
  /** Volume. */
  readonly cup: Volume;
  /** Volume. */
  readonly "fl oz": Volume;
  /** Volume. */
  readonly "imp fl oz": Volume;
  /** Volume. */
  readonly tbsp: Volume;
  /** Volume. */
  readonly "ft³": Volume;
  /** Volume. */
  readonly "in³": Volume;
  /** Volume. */
  readonly "yd³": Volume;
  /** Volume. */
  readonly "acre-ft": Volume;
  /** VolumeFlow. */
  readonly "m³/s": VolumeFlow;
  /** VolumeFlow. */
  readonly "L/s": VolumeFlow;
  /** VolumeFlow. */
  readonly "gal/s": VolumeFlow;
  /** VolumeFlow. */
  readonly "ft³/s": VolumeFlow;
  /** VolumeFlow. */
  readonly "L/min": VolumeFlow;
  /** VolumeFlow. */
  readonly "L/h": VolumeFlow;
  /** VolumeFlow. */
  readonly "m³/h": VolumeFlow;
  /** VolumeFlow. */
  readonly "m³/d": VolumeFlow;
  /** VolumeFlow. */
  readonly gpm: VolumeFlow;
  /** VolumeFlow. */
  readonly "imp gpm": VolumeFlow;
  /** VolumeFlow. */
  readonly gph: VolumeFlow;
  /** VolumeFlow. */
  readonly gpd: VolumeFlow;
  /** VolumeFlow. */
  readonly "imp gpd": VolumeFlow;
  /** Velocity. */
  readonly "m/s": Velocity;
  /** Velocity. */
  readonly "ft/s": Velocity;
  /** Velocity. */
  readonly "km/h": Velocity;
  /** Velocity. */
  readonly mph: Velocity;
  /** GaugePressure or PressureDifference or Modulus. */
  readonly Pa: GaugePressure | PressureDifference | Modulus;
  /** GaugePressure or PressureDifference. */
  readonly kPa: GaugePressure | PressureDifference;
  /** GaugePressure or PressureDifference or Modulus. */
  readonly MPa: GaugePressure | PressureDifference | Modulus;
  /** GaugePressure or PressureDifference. */
  readonly bar: GaugePressure | PressureDifference;
  /** GaugePressure or PressureDifference or Modulus. */
  readonly psi: GaugePressure | PressureDifference | Modulus;
  /** AbsolutePressure. */
  readonly "Pa abs": AbsolutePressure;
  /** AbsolutePressure. */
  readonly "kPa abs": AbsolutePressure;
  /** AbsolutePressure. */
  readonly "MPa abs": AbsolutePressure;
  /** AbsolutePressure. */
  readonly "bar abs": AbsolutePressure;
  /** AbsolutePressure. */
  readonly psia: AbsolutePressure;
  /** AbsolutePressure. */
  readonly atm: AbsolutePressure;
  /** AbsolutePressure. */
  readonly inHg: AbsolutePressure;
  /** Modulus. */
  readonly GPa: Modulus;
  /** Density or Concentration. */
  readonly "kg/m³": Density | Concentration;
  /** Density. */
  readonly "lb/ft³": Density;
  /** DynamicViscosity. */
  readonly Pa·s: DynamicViscosity;
  /** DynamicViscosity. */
  readonly mPa·s: DynamicViscosity;
  /** DynamicViscosity. */
  readonly cP: DynamicViscosity;
  /** KinematicViscosity or Transmissivity. */
  readonly "m²/s": KinematicViscosity | Transmissivity;
  /** KinematicViscosity. */
  readonly "mm²/s": KinematicViscosity;
  /** KinematicViscosity. */
  readonly cSt: KinematicViscosity;
  /** KinematicViscosity. */
  readonly "ft²/s": KinematicViscosity;
  /** Transmissivity. */
  readonly "m²/d": Transmissivity;
  /** Transmissivity. */
  readonly "ft²/d": Transmissivity;
  /** Transmissivity. */
  readonly "gpm/ft": Transmissivity;
  /** Transmissivity. */
  readonly "gpd/ft": Transmissivity;
  /** Transmissivity. */
  readonly "L/s/m": Transmissivity;
  /** Mass. */
  readonly kg: Mass;
  /** Mass. */
  readonly g: Mass;
  /** Mass. */
  readonly mg: Mass;
  /** Mass. */
  readonly t: Mass;
  /** Mass. */
  readonly lb: Mass;
  /** Mass. */
  readonly oz: Mass;
  /** MassPerLength. */
  readonly "kg/m": MassPerLength;
  /** MassPerLength. */
  readonly "lb/ft": MassPerLength;
  /** Force. */
  readonly N: Force;
  /** Force. */
  readonly kN: Force;
  /** Force. */
  readonly lbf: Force;
  /** Torque. */
  readonly N·m: Torque;
  /** Torque. */
  readonly lbf·ft: Torque;
  /** Power. */
  readonly W: Power;
  /** Power. */
  readonly kW: Power;
  /** Power. */
  readonly hp: Power;
  /** Power. */
  readonly "hp(E)": Power;
  /** Power. */
  readonly "hp(M)": Power;
  /** Power. */
  readonly "Btu/h": Power;
  /** ApparentPower. */
  readonly VA: ApparentPower;
  /** ApparentPower. */
  readonly kVA: ApparentPower;
  /** Energy. */
  readonly J: Energy;
  /** Energy. */
  readonly MJ: Energy;
  /** Energy. */
  readonly Wh: Energy;
  /** Energy. */
  readonly kWh: Energy;
  /** Energy. */
  readonly Btu: Energy;
  /** Duration. */
  readonly s: Duration;
  /** Duration. */
  readonly ms: Duration;
  /** Duration. */
  readonly min: Duration;
  /** Duration. */
  readonly h: Duration;
  /** Duration. */
  readonly d: Duration;
  /** Duration. */
  readonly a: Duration;
  /** Frequency. */
  readonly Hz: Frequency;
  /** Frequency. */
  readonly "1/min": Frequency;
  /** Frequency. */
  readonly "1/h": Frequency;
  /** Frequency. */
  readonly "1/d": Frequency;
  /** Voltage. */
  readonly V: Voltage;
  /** Voltage. */
  readonly mV: Voltage;
  /** Voltage. */
  readonly kV: Voltage;
  /** Current. */
  readonly A: Current;
  /** Current. */
  readonly mA: Current;
  /** Resistance. */
  readonly Ω: Resistance;
  /** Resistance. */
  readonly mΩ: Resistance;
  /** Resistance. */
  readonly kΩ: Resistance;
  /** Resistance. */
  readonly MΩ: Resistance;
  /** ResistancePerLength. */
  readonly "Ω/m": ResistancePerLength;
  /** ResistancePerLength. */
  readonly "Ω/km": ResistancePerLength;
  /** ResistancePerLength. */
  readonly "Ω/kft": ResistancePerLength;
  /** Concentration. */
  readonly "mg/L": Concentration;
  /** Concentration. */
  readonly "g/L": Concentration;
  /** Concentration. */
  readonly "µg/L": Concentration;
  /** ThermalConductivity. */
  readonly "W/(m·K)": ThermalConductivity;
  /** ThermalConductivity. */
  readonly "Btu/(h·ft·°F)": ThermalConductivity;
  /** Ratio. */
  readonly "1": Ratio;
  /** Ratio. */
  readonly "%": Ratio;
  /** Temperature or TemperatureDifference. */
  readonly K: Temperature | TemperatureDifference;
  /** Temperature or TemperatureDifference. */
  readonly "°C": Temperature | TemperatureDifference;
  /** Temperature or TemperatureDifference. */
  readonly "°F": Temperature | TemperatureDifference;
}

const TABLES: readonly (readonly Pick<UnitText<never>, "symbol" | "read">[])[] = [
  lengthUnits,
  areaUnits,
  volumeUnits,
  volumeFlowUnits,
  velocityUnits,
  gaugePressureUnits,
  absolutePressureUnits,
  pressureDifferenceUnits,
  modulusUnits,
  densityUnits,
  dynamicViscosityUnits,
  kinematicViscosityUnits,
  transmissivityUnits,
  massUnits,
  massPerLengthUnits,
  forceUnits,
  torqueUnits,
  powerUnits,
  apparentPowerUnits,
  energyUnits,
  durationUnits,
  frequencyUnits,
  voltageUnits,
  currentUnits,
  resistanceUnits,
  resistancePerLengthUnits,
  concentrationUnits,
  thermalConductivityUnits,
  ratioUnits,
  temperatureUnits,
  temperatureDifferenceUnits,
];
/** How the number is written. */
export interface FormatOptions {
  /** Digits after the point, 0 to 15; without it the number is rounded to four significant digits. */
  readonly decimals?: number;
}

/** Digits that a reader at the wellhead can use; the fourth is already finer than his gauge. */
const SIGNIFICANT = 4;

/**
 * A quantity as text in a unit, with thousands set off by commas.
 *
 * @param quantity - the quantity
 * @param unit - the symbol of a unit of that quantity, such as "psi"
 * @param options - how many decimals
 * @returns the number and the unit, as the `parse…` functions read them
 * @throws {@link InputError} where the quantity is not finite, or the unit is not known
 * @source common practice
 *
 * @example
 * ```ts
 * import { feet, format, psi } from "risingmain/units";
 *
 * format(psi(85), "psi"); // => "85 psi"
 * format(feet(4200), "m", { decimals: 1 }); // => "1,280.2 m"
 * ```
 */
export function format<U extends keyof UnitSymbols>(
  quantity: UnitSymbols[U],
  unit: U,
  options: FormatOptions = {},
): string {
  const found = TABLES.flat().find(({ symbol }) => symbol === unit);
  if (found === undefined) throw new InputError("unit", unit, 'the symbol of a unit, such as "psi"');
  requireObject("options", options);
  const { decimals } = options;
  if (decimals !== undefined) requireWhole("options.decimals", decimals, 0, 15);
  const value = found.read(quantity as never);
  const text = grouped(
    decimals === undefined ? String(Number(value.toPrecision(SIGNIFICANT))) : value.toFixed(decimals),
  );
  return unit === "1" ? text : `${text} ${unit}`;
}

/** Commas in threes left of the point. A number in exponent form is left alone. */
function grouped(text: string): string {
  if (text.includes("e")) return text;
  const [whole = "", tail] = text.replace("-", "").split(".");
  const negative = text.startsWith("-") && /[1-9]/.test(text);
  const first = ((whole.length - 1) % 3) + 1;
  const commas = whole.slice(0, first) + whole.slice(first).replace(/\d{3}/g, ",$&");
  return (negative ? "−" : "") + commas + (tail === undefined ? "" : `.${tail}`);
}
