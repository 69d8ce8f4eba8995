/**
 * The commissioning sheet: what the installer should read, in the order he reads it, if the plan is right.
 *
 * @module
 */
import { bucketTime } from "../field/index.ts";
import type { Volume, VolumeFlow } from "../units/index.ts";
import { drawdownAt } from "../well/index.ts";
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
const BANDS = { level: 0.1, pressure: 0.05, bucket: 0.04, voltage: 0.05, time: 0.15, precharge: 0.04 } as const;

/** The least band to either side, whatever the share: what a sounder and a gauge can tell apart. Common practice. */
const LEAST_BANDS: Readonly<Partial<Record<MeasureKind, number>>> = { length: 0.3048, pressure: 6895 };

/** Fall of pressure that a gauge cannot tell from none: 1 psi, common practice. */
const LEAST_FALL = 6895;

/** Share of its full-load current that a motor may draw above it before something is wrong. Common practice. */
const MOST_CURRENT = 1.1;

/** The sheet of a plan. */
export function commissioningSheet(stages: PlanStages): readonly ExpectedReading[] {
  return [
    ...atRest(stages),
    ...withPump(stages),
    ...controlReadings(stages),
    ...tightness(stages),
    ...outletReadings(stages),
    ...powerReadings(stages),
  ];
}

function between(
  code: string,
  reading: string,
  how: string,
  kind: MeasureKind,
  expected: number,
  low: number,
  high: number,
): ExpectedReading {
  return {
    code,
    reading,
    how,
    expected: { kind, value: expected },
    low: { kind, value: low },
    high: { kind, value: high },
  };
}

function band(
  code: string,
  reading: string,
  how: string,
  kind: MeasureKind,
  value: number,
  share: number,
): ExpectedReading {
  const width = Math.max(Math.abs(value) * share, LEAST_BANDS[kind] ?? 0);
  return between(code, reading, how, kind, value, value - width, value + width);
}

/** The two readings before anything runs. */
function atRest({ well, tank }: PlanStages): readonly ExpectedReading[] {
  return [
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
}

/** Flow and level with the pump at cut-in, where it gives most. */
function withPump({ pump, well }: PlanStages): readonly ExpectedReading[] {
  const { chosen } = pump;
  if (chosen?.atCutIn == null) return [];
  const { flow } = chosen.atCutIn;
  // Where the acceptance grade says how far a good pump may lie from its curve, that is the band, and the reading's own
  // error on top of it.
  const { low, high } = chosen.flowBand ?? { low: flow, high: flow };
  const least = (low * (1 - BANDS.bucket)) as VolumeFlow;
  const most = (high * (1 + BANDS.bucket)) as VolumeFlow;
  const time = (at: VolumeFlow): number => bucketTime({ volume: BUCKET, flow: at });
  const level = well.staticLevel + drawdownAt(well.law, flow);
  return [
    between(
      "flow-at-cut-in",
      "Flow at the wellhead, gauge held at cut-in",
      "Bucket and stopwatch at a tap by the tank, several runs",
      "flow",
      flow,
      least,
      most,
    ),
    between(
      "bucket-time",
      "Time to fill a bucket of 5 US gallons (19 L) at that flow",
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
      level,
      BANDS.level,
    ),
  ];
}

/** Shutoff pressure, where nothing stands in the way of reading it, and whether the pressure holds. */
function tightness({ pump, controls, tank, dropPipe, layout }: PlanStages): readonly ExpectedReading[] {
  const { chosen } = pump;
  const ratings = [
    controls.reliefPressure,
    tank.maximumPressure,
    dropPipe.pressureRating,
    ...layout.runs.map(({ pressureRating }) => pressureRating),
  ];
  // Behind a valve or a relief valve the gauge never sees it; above a rating nobody should try.
  const safe =
    chosen !== null &&
    controls.setPressure === null &&
    ratings.every((rating) => rating === null || rating > chosen.shutoffPressure * (1 + BANDS.pressure));
  return [
    ...(safe && chosen !== null
      ? [
          band(
            "shutoff-pressure",
            "Highest pressure, all outlets shut and the switch held closed for a moment",
            "Gauge at the tank; let go at once",
            "pressure",
            chosen.usualShutoff,
            BANDS.pressure,
          ),
        ]
      : []),
    between(
      "pressure-fall",
      "Fall of the pressure in ten minutes, all outlets shut, pump off at the breaker",
      "Gauge at the tank",
      "pressureDifference",
      0,
      -LEAST_FALL,
      LEAST_FALL,
    ),
  ];
}

/** Switch, valve and tank. */
function controlReadings({ controls, tank }: PlanStages): readonly ExpectedReading[] {
  return [
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
    ...controls.held.flatMap(({ use, held }) =>
      held.state === "holds"
        ? [
            band(
              `held-${use}`,
              `Pressure held during "${use}"`,
              "Gauge at the tank, the outlets of the use open",
              "pressure",
              held.pressure,
              BANDS.pressure,
            ),
          ]
        : [],
    ),
    ...(tank.fillTime === null
      ? []
      : [
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
            "Bucket at a tap by the tank",
            "volume",
            tank.drawdown.usable,
            BANDS.time,
          ),
        ]),
  ];
}

/** Pressure at each outlet in each use; without a valve it swings with the switch. */
function outletReadings({ layout, controls }: PlanStages): readonly ExpectedReading[] {
  const { cutIn, cutOut, setPressure } = controls;
  const holds = setPressure !== null && setPressure < cutOut;
  return layout.uses.flatMap(({ name, outlets }) =>
    outlets.map((outlet) => {
      const { low, high, ...rest } = band(
        `outlet-${name}-${outlet.name}`,
        `Pressure at ${outlet.name} during "${name}"`,
        "Gauge at the outlet, flow as planned",
        "pressure",
        outlet.pressureHeld,
        BANDS.pressure,
      );
      return { ...rest, low, high: holds ? high : { ...high, value: high.value + (cutOut - cutIn) } };
    }),
  );
}

/** Amperes and volts. A pump lightly loaded draws less than its plate; only more is wrong. */
function powerReadings({ power }: PlanStages): readonly ExpectedReading[] {
  if (power === null) return [];
  const { fullLoadCurrent, sources } = power;
  return [
    between(
      "running-current",
      "Current of the motor while running, at most",
      "Clamp meter on one leg, at the control box",
      "current",
      fullLoadCurrent,
      0,
      fullLoadCurrent * MOST_CURRENT,
    ),
    ...sources.map(({ name, voltage }) =>
      band(
        `running-voltage-${name}`,
        `Voltage while running, on the ${name}`,
        "Meter at the source",
        "voltage",
        voltage,
        BANDS.voltage,
      ),
    ),
  ];
}
