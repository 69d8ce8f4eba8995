/** Wrong quantities are refused by the types. */
import {
  type AirLineInput,
  type BucketInput,
  bucketTime,
  type LiftingInput,
  type PressureHoldInput,
} from "risingmain/field";
import {
  feet,
  gpm,
  hours,
  inches,
  kilogramsPerCubicMetre,
  pounds,
  poundsPerFoot,
  psi,
  psia,
  seconds,
  usGallons,
} from "risingmain/units";

const bucket: BucketInput = { volume: usGallons(5), times: [seconds(18)] };
const line: AirLineInput = { lineLength: feet(180), pressure: psi(4), density: kilogramsPerCubicMetre(999.7) };
const hold: PressureHoldInput = {
  pipeVolume: usGallons(40),
  startPressure: psi(60),
  endPressure: psi(59),
  time: hours(1),
};
const hoist: LiftingInput = {
  pumpMass: pounds(60),
  pumpSetting: feet(300),
  pipeMass: poundsPerFoot(1),
  insideDiameter: inches(1.38),
  outsideDiameter: inches(1.66),
  density: kilogramsPerCubicMetre(1000),
  capacity: pounds(2000),
};

// @ts-expect-error a flow is not a volume
export const flowForVolume: BucketInput = { ...bucket, volume: gpm(5) };
// @ts-expect-error an absolute pressure is not a gauge pressure
export const absoluteForGauge: AirLineInput = { ...line, pressure: psia(4) };
// @ts-expect-error an absolute pressure is not a gauge pressure
export const absoluteEnd: PressureHoldInput = { ...hold, endPressure: psia(59) };
// @ts-expect-error a mass is not a mass per length
export const massForLineMass: LiftingInput = { ...hoist, pipeMass: pounds(1) };
// @ts-expect-error a time is not a flow
export const timeForFlow = bucketTime({ volume: usGallons(5), flow: seconds(18) });
