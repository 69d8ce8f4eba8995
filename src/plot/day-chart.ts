/**
 * Pressure, pump and water level as a run of the system goes on.
 *
 * @module
 */
import { requireList, requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Simulation, SystemEvent, SystemSample } from "../system/index.ts";
import type { Duration, GaugePressure } from "../units/index.ts";
import { InputError } from "../units/index.ts";
import { marksAt } from "./axis-marks.ts";
import { type Look, readOptions, stackedChart } from "./look.ts";
import { axisTitle, drawn, inWords, shownIn } from "./shown.ts";
import type { ChartOptions, ChartSpec, JsonObject } from "./spec.ts";

/** A run, and the pressures to mark. */
export interface DayChartInput {
  /** The run, from `simulate` with `sampleEvery`: 2 to 20 000 samples, at most 20 000 events kept. */
  readonly run: Pick<Simulation, "samples" | "events" | "end">;
  /** Pressure that starts the pump, marked where given. 0 to 100 MPa. */
  readonly cutIn?: GaugePressure;
  /** Pressure that stops it, marked where given. 0 to 100 MPa. */
  readonly cutOut?: GaugePressure;
}

/** Longest run drawn, s: 100 years. */
const LONGEST = 100 * 366 * 86400;
const MOST_PRESSURE = 1e9;
const MOST_DEPTH = 1e6;
const MOST = 20_000;
/** Moments left out lie nearer to the line drawn than this share of the range: under half a pixel. */
const UNSEEN = 0.002;
const KINDS = ["pump starts", "pump stops", "low level", "tank empty", "ran dry"];

/** How things stood at a time. */
interface Moment {
  readonly time: number;
  readonly pressure: number;
  readonly depth: number;
}

/**
 * Pressure at the switch, running pump and depth to the water, against time.
 *
 * @remarks
 * Drawn through the samples and the kept events together, so that every start and stop kept is met exactly; between
 * samples further apart than a cycle the pressure is not known from the run, only that it stays within the switch.
 *
 * @param input - the run, and pressures to mark
 * @param options - units, paper and size
 * @returns the chart, as a Vega-Lite specification
 * @throws {@link units.InputError} naming the first sample or event that cannot be drawn
 *
 * @example
 * ```ts
 * import { planSystem, readJob, sampleJob } from "risingmain/plan";
 * import { dayChart } from "risingmain/plot";
 * import { simulate } from "risingmain/system";
 * import { days, minutes } from "risingmain/units";
 *
 * const { running, stages } = planSystem(readJob(sampleJob));
 * if (running === null || stages.day === null) throw new Error("no pump");
 * const run = simulate({ system: running, demand: stages.day.demand, duration: days(1), sampleEvery: minutes(0.5) });
 * const { cutIn, cutOut } = stages.controls;
 * dayChart({ run, cutIn, cutOut }).title["subtitle"]; // => "12 starts; pressure 30 to 50 psi, water down to 71.1 ft. Dashes: the switch."
 * ```
 *
 * @source derived: the run's own samples and events
 */
export function dayChart(input: DayChartInput, options: ChartOptions = {}): ChartSpec {
  requireObject("input", input);
  const look = readOptions(options);
  const { run, cutIn, cutOut } = input;
  requireObject("run", run);
  requireList("run.samples", run.samples, 2, MOST);
  requireList("run.events", run.events, 0, MOST);
  if (cutIn !== undefined) requireWithin("cutIn", cutIn, 0, 1e8, "Pa gauge");
  if (cutOut !== undefined) requireWithin("cutOut", cutOut, 0, 1e8, "Pa gauge");
  run.samples.forEach((sample, i) => {
    requireMoment(`run.samples[${i}]`, sample);
  });
  run.events.forEach((event, i) => {
    requireMoment(`run.events[${i}]`, event);
    requireOneOf(`run.events[${i}].kind`, event.kind, KINDS);
  });
  requireMoment("run.end", run.end);
  const moments: readonly Moment[] = [...run.samples, ...run.events, run.end].sort((a, b) => a.time - b.time);
  const runs = runsOf(run.events, [...run.samples, run.end]);
  const { units, height, colours } = look;
  const time = (seconds: number): number => shownIn("time", seconds as Duration, units);
  const values = thinned(moments).map(({ time: at, pressure, depth }) => ({
    time: time(at),
    pressure: shownIn("pressure", pressure, units),
    depth: shownIn("length", depth, units),
  }));
  const first = time((moments[0] as Moment).time);
  const last = time((moments.at(-1) as Moment).time);
  const scale = { domain: [first, last], nice: false };
  const ticks = hourTicks(first, last, look);
  const x = (title: string | null): JsonObject => ({
    field: "time",
    type: "quantitative",
    scale,
    title,
    axis: title === null ? null : marksAt(ticks),
  });
  const marked = [cutIn, cutOut].every((pressure) => pressure === undefined) ? "" : " Dashes: the switch.";
  const starts = run.events.filter(({ kind }) => kind === "pump starts").length;
  const pressures = moments.map(({ pressure }) => pressure);
  const deepest = Math.max(...moments.map(({ depth }) => depth));
  const [low, high] = [Math.min(...pressures), Math.max(...pressures)].map((pressure) =>
    inWords("pressure", pressure, units),
  ) as [string, string];
  const subtitle = `${starts} ${starts === 1 ? "start" : "starts"}; pressure ${low.split(" ")[0]} to ${high}, water down to ${inWords("length", deepest, units)}.${marked}`;
  const marks = [cutIn, cutOut].flatMap((pressure) =>
    pressure === undefined ? [] : [{ pressure: shownIn("pressure", pressure, units) }],
  );
  const pressureAxis = {
    field: "pressure",
    type: "quantitative",
    title: axisTitle("Pressure at the switch", "pressure", units),
    scale: { domain: widened([...values, ...marks].map((value) => value.pressure)), nice: false },
  };
  return stackedChart(
    look,
    {
      title: "Pressure and level through the day",
      subtitle,
      description: `Pressure at the switch, the times the pump runs, and the depth to the water in the well, against hours. ${subtitle}`,
    },
    [
      {
        height: Math.round(height * 0.6),
        layer: [
          {
            data: { values: marks },
            mark: { type: "rule", strokeDash: [4, 3] },
            encoding: { y: pressureAxis },
          },
          {
            data: { values },
            mark: { type: "line", strokeWidth: 1.5, color: colours[0] as string },
            encoding: { x: x(null), y: pressureAxis },
          },
        ],
      },
      {
        height: 14,
        data: { values: runs.map(({ from, to }) => ({ from: time(from), to: time(to) })) },
        // A run shorter than a pixel still shows.
        mark: { type: "bar", stroke: look.ink, strokeWidth: 0.5, color: look.ink, height: 14 },
        encoding: {
          x: { ...x(null), field: "from" },
          x2: { field: "to" },
          y: { value: 7 },
        },
        title: { text: "Pump runs", anchor: "start", frame: "bounds", fontSize: 13, fontWeight: "normal", offset: 4 },
      },
      {
        height: Math.round(height * 0.45),
        data: { values },
        mark: { type: "line", strokeWidth: 1.5, color: colours[1] as string },
        encoding: {
          x: x("Hours"),
          y: {
            field: "depth",
            type: "quantitative",
            title: axisTitle("Depth to the water", "length", units),
            // Down is down.
            scale: { domain: widened(values.map(({ depth }) => depth)), nice: false, reverse: true },
          },
        },
      },
    ],
  );
}

/** A range with a little room at both ends. */
function widened(values: readonly number[]): readonly number[] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const room = 0.08 * (high - low) || 1;
  return [drawn(low - room), drawn(high + room)];
}

/** The moments that make the shape: one that lies on the line between its kept neighbours is left out. */
function thinned(moments: readonly Moment[]): readonly Moment[] {
  const spanOf = (read: (moment: Moment) => number): number => {
    const values = moments.map(read);
    return (Math.max(...values) - Math.min(...values)) * UNSEEN;
  };
  const series = [
    { read: ({ pressure }: Moment) => pressure, off: spanOf(({ pressure }) => pressure) },
    { read: ({ depth }: Moment) => depth, off: spanOf(({ depth }) => depth) },
  ];
  const kept: Moment[] = [];
  // Slopes from the last kept moment that pass every moment since within the tolerance.
  let open = series.map(() => ({ least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY }));
  let before: Moment | undefined;
  for (const moment of moments) {
    const from = kept.at(-1);
    if (from === undefined || before === undefined) {
      kept.push(moment);
      before = moment;
      continue;
    }
    const fits = (anchor: Moment): boolean => {
      const along = moment.time - anchor.time;
      return (
        along > 0 &&
        series.every(({ read }, i) => {
          const slope = (read(moment) - read(anchor)) / along;
          const { least, most } = open[i] as { least: number; most: number };
          return slope >= least && slope <= most;
        })
      );
    };
    let anchor = from;
    if (!fits(anchor)) {
      if (before !== from) kept.push(before);
      anchor = before;
      open = series.map(() => ({ least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY }));
    }
    const along = moment.time - anchor.time;
    if (along > 0) {
      open = open.map(({ least, most }, i) => {
        const { read, off } = series[i] as (typeof series)[number];
        const rise = read(moment) - read(anchor);
        return { least: Math.max(least, (rise - off) / along), most: Math.min(most, (rise + off) / along) };
      });
    } else if (moment !== before) {
      // A step: both its ends are the shape.
      kept.push(moment);
    }
    before = moment;
  }
  if (before !== undefined && kept.at(-1) !== before) kept.push(before);
  return kept;
}

/** Hours to mark: every third of a day, or as many as have room. */
function hourTicks(first: number, last: number, { width }: Look): readonly number[] {
  const most = Math.max(2, Math.floor(width / 60));
  const step = [1 / 60, 1 / 12, 1 / 4, 1 / 2, 1, 2, 3, 4, 6, 12, 24, 48, 168, 720, 8760].find(
    (hours) => (last - first) / hours <= most,
  );
  if (step === undefined) return [first, last];
  const from = Math.ceil(first / step);
  return Array.from({ length: Math.floor(last / step) - from + 1 }, (_, i) => (from + i) * step);
}

/** From each start to the next stop; where the kept events end, from the samples. */
function runsOf(
  events: readonly SystemEvent[],
  samples: readonly SystemSample[],
): readonly { readonly from: number; readonly to: number }[] {
  const turns = [
    ...events.flatMap(({ time, kind }) =>
      kind === "pump starts" ? [{ time, on: true }] : kind === "tank empty" ? [] : [{ time, on: false }],
    ),
    ...samples.map(({ time, pumpRunning }) => ({ time, on: pumpRunning })),
  ].sort((a, b) => a.time - b.time);
  const runs: { from: number; to: number }[] = [];
  let from: number | undefined;
  for (const { time, on } of turns) {
    if (on) from ??= time;
    else if (from !== undefined) {
      runs.push({ from, to: time });
      from = undefined;
    }
  }
  if (from !== undefined) runs.push({ from, to: turns.at(-1)?.time ?? from });
  return runs;
}

function requireMoment(at: string, moment: Moment & { readonly pumpRunning?: boolean }): void {
  requireObject(at, moment);
  requireWithin(`${at}.time`, moment.time, 0, LONGEST, "s");
  requireWithin(`${at}.pressure`, moment.pressure, -MOST_PRESSURE, MOST_PRESSURE, "Pa gauge");
  requireWithin(`${at}.depth`, moment.depth, -MOST_DEPTH, MOST_DEPTH, "m");
  if (moment.pumpRunning !== undefined && typeof moment.pumpRunning !== "boolean") {
    throw new InputError(`${at}.pumpRunning`, moment.pumpRunning, "true or false");
  }
}
