/**
 * The commissioning sheet: what the installer should read, in the order he reads it, if the plan is right.
 *
 * @module
 */
import { bucketTime } from "../field/index.ts";
import type { Volume, VolumeFlow } from "../units/index.ts";
import type { Measure, MeasureKind } from "./measure.ts";
import type { PlanStages } from "./stages.ts";

/** A reading to take. */
export interface ExpectedReading {
  /** Short name that does not change: `static-level`. */
  readonly code: string;
  /** What is read. */
  readonly reading: string;
  /** How and where. */
  readonly how: string;
  /** What it should be. */
  readonly expected: Measure;
  /** Least that passes. */
  readonly low: Measure;
  /** Most that passes. */
  readonly high: Measure;
}

/** The bucket of the bucket test: five US gallons. */
const BUCKET = 0.01892705892 as Volume;

/**
 * How far a good reading may lie from the expected one, as a share: what gauges, stopwatches and pump curves leave
 * open together. Common practice, no source.
 */
const BANDS = {
  level: 0.1,
  pressure: 0.05,
  bucket: 0.04,
  current: 0.1,
  voltage: 0.05,
  time: 0.15,
  precharge: 0.04,
} as const;

/** The sheet of a plan. */
export function commissioningSheet({
  well,
  pump,
  controls,
  tank,
  power,
  layout,
}: PlanStages): readonly ExpectedReading[] {
  const band = (
    code: string,
    reading: string,
    how: string,
    kind: MeasureKind,
    value: number,
    share: number,
  ): ExpectedReading => ({
    code,
    reading,
    how,
    expected: { kind, value },
    low: { kind, value: value * (1 - share) },
    high: { kind, value: value * (1 + share) },
  });
  const { chosen } = pump;
  const sheet: ExpectedReading[] = [
    band(
      "static-level",
      "Water level at rest",
      "Sounder down the casing, pump off for an hour",
      "length",
      well.staticLevel,
      BANDS.level,
    ),
    band(
      "precharge",
      "Precharge of the tank",
      "Tire gauge on the air valve, tank empty of water, pump off",
      "pressure",
      tank.precharge,
      BANDS.precharge,
    ),
  ];
  if (chosen?.atCutIn != null) {
    const { flow } = chosen.atCutIn;
    // Where the acceptance grade says how far a good pump may lie from its curve, that is the band, and the reading's own
    // error on top of it.
    const { low, high } = chosen.flowBand ?? { low: flow, high: flow };
    const least = low * (1 - BANDS.bucket);
    const most = high * (1 + BANDS.bucket);
    const time = (at: number): number => bucketTime({ volume: BUCKET, flow: at as VolumeFlow });
    const level = (at: number): number => well.staticLevel + at * (well.law.aquiferLoss + well.law.wellLoss * at);
    const between = (
      code: string,
      reading: string,
      how: string,
      kind: MeasureKind,
      expected: number,
      from: number,
      to: number,
    ): ExpectedReading => ({
      code,
      reading,
      how,
      expected: { kind, value: expected },
      low: { kind, value: from },
      high: { kind, value: to },
    });
    sheet.push(
      between(
        "flow-at-cut-in",
        "Flow at the wellhead, gauge held at cut-in",
        "Bucket and stopwatch at the wellhead hydrant, several runs",
        "flow",
        flow,
        least,
        most,
      ),
      between(
        "bucket-time",
        "Time to fill a five-gallon bucket at that flow",
        "Stopwatch, to the mark on the bucket",
        "shortTime",
        time(flow),
        time(most),
        time(least),
      ),
      band(
        "pumping-level",
        "Water level while pumping at that flow",
        "Sounder, after the level has settled",
        "length",
        level(flow),
        BANDS.level,
      ),
    );
  }
  sheet.push(
    band(
      "cut-in",
      "Pressure at which the pump starts",
      "Gauge at the tank, a small flow open",
      "pressure",
      controls.cutIn,
      BANDS.pressure,
    ),
    band(
      "cut-out",
      "Pressure at which the pump stops",
      "Gauge at the tank, all outlets shut",
      "pressure",
      controls.cutOut,
      BANDS.pressure,
    ),
  );
  for (const { use, held } of controls.held) {
    if (held.state === "holds")
      sheet.push(
        band(
          `held-${use}`,
          `Pressure held during "${use}"`,
          "Gauge at the tank, the outlets of the use open",
          "pressure",
          held.pressure,
          BANDS.pressure,
        ),
      );
  }
  if (tank.fillTime !== null) {
    sheet.push(
      band(
        "tank-fill",
        "Time from cut-in to cut-out, all outlets shut",
        "Stopwatch on the pump",
        "shortTime",
        tank.fillTime,
        BANDS.time,
      ),
      band(
        "tank-draw",
        "Water drawn from cut-out to cut-in, pump off at the breaker",
        "Bucket at the wellhead hydrant",
        "volume",
        tank.drawdown.usable,
        BANDS.time,
      ),
    );
  }
  for (const { name, outlets } of layout.uses) {
    for (const outlet of outlets) {
      sheet.push(
        band(
          `outlet-${name}-${outlet.name}`,
          `Pressure at ${outlet.name} during "${name}"`,
          "Gauge at the outlet, flow as planned",
          "pressure",
          outlet.pressureHeld,
          BANDS.pressure,
        ),
      );
    }
  }
  if (power !== null) {
    sheet.push(
      band(
        "running-current",
        "Current of the motor while running",
        "Clamp meter on one leg, at the control box",
        "current",
        power.fullLoadCurrent,
        BANDS.current,
      ),
    );
    for (const source of power.sources) {
      sheet.push(
        band(
          `running-voltage-${source.name}`,
          `Voltage while running, on the ${source.name}`,
          "Meter at the source",
          "voltage",
          source.voltage,
          BANDS.voltage,
        ),
      );
    }
  }
  return sheet;
}
