/**
 * The charts a plan has the numbers for.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import { wallRoughness } from "../pipe/index.ts";
import type { DayStage, Plan, PlanStages, PowerStage, SourcePlan, TankStage } from "../plan/index.ts";
// Past the module's index, which brings the reader of job documents with it.
import { readPlan } from "../plan/read-plan.ts";
// Private to the floors above: a function, where public results are plain data.
import { headTakenBy } from "../system/head-taken.ts";
import { type RunningSystem, simulate } from "../system/index.ts";
import { days, type GaugePressure, minutes, type Voltage, type VolumeFlow } from "../units/index.ts";
import { dayChart } from "./day-chart.ts";
import { frictionChart } from "./friction-chart.ts";
import { gradeLineChart } from "./grade-line-chart.ts";
import { readOptions } from "./look.ts";
import { pumpChart } from "./pump-chart.ts";
import type { ChartOptions, ChartSpec } from "./spec.ts";
import { startsChart } from "./starts-chart.ts";
import { voltageChart } from "./voltage-chart.ts";

/** Starts and stops of a day drawn; far more than a motor stands. */
const MOST_EVENTS = 4000;
/** Flows up to this are none, m³/s: a tenth of a litre an hour; a third of more can be drawn. */
const LEAST_FLOW = 3e-8;
const MOST_PIPES = 10;
const MOST_MARKS = 100;

/** The charts of a plan; null where the plan has no numbers for one. */
export interface PlanCharts {
  /** The chosen pump on its well, at cut-in and at cut-out. */
  readonly pump: ChartSpec | null;
  /** The way to the outlet with the least pressure to spare. */
  readonly gradeLine: ChartSpec | null;
  /** The day that was run through. */
  readonly day: ChartSpec | null;
  /** Starts against the size of the tank. */
  readonly starts: ChartSpec | null;
  /** Friction in the pipes of drop and yard, with their flows. */
  readonly friction: ChartSpec | null;
  /** Voltage from the source to the running motor. */
  readonly voltage: ChartSpec | null;
}

/**
 * Every chart a plan has the numbers for, in one call.
 *
 * @param plan - a plan from `planSystem`
 * @param options - units, paper and size of them all
 * @returns the charts by name
 * @throws {@link units.InputError} where it is no plan, or holds figures that cannot be drawn
 *
 * @example
 * ```ts
 * import { planSystem, readJob, sampleJob } from "risingmain/plan";
 * import { chartsOf } from "risingmain/plot";
 *
 * const charts = chartsOf(planSystem(readJob(sampleJob)), { units: "metric" });
 * Object.keys(charts); // => ["pump", "gradeLine", "day", "starts", "friction", "voltage"]
 * charts.pump?.title["text"]; // => "Where the pump runs"
 * ```
 *
 * @source derived: the plan's own figures
 */
export function chartsOf(plan: Plan, options: ChartOptions = {}): PlanCharts {
  readOptions(options);
  return readPlan(plan, ({ stages, running }) => {
    const { layout, day, tank, power } = stages;
    return {
      pump: running === null ? null : pumpOf(running, options),
      gradeLine: layout.gradeLine === null ? null : gradeLineChart({ stations: layout.gradeLine.points }, options),
      day: day === null || running === null ? null : dayOf(running, day, options),
      starts: startsOf(tank, options),
      friction: frictionOf(stages, options),
      voltage: power === null ? null : voltageOf(power, options),
    };
  });
}

function pumpOf(running: RunningSystem, options: ChartOptions): ChartSpec {
  const { cutIn, cutOut } = pressuresOf(running);
  return pumpChart(
    {
      curve: running.pump,
      systems: [
        { name: "at cut-in", systemHead: headTakenBy(running, cutIn) },
        { name: "at cut-out", systemHead: headTakenBy(running, cutOut) },
      ],
    },
    options,
  );
}

/** The pressures that start and stop the pump. */
function pressuresOf({ control }: RunningSystem): { readonly cutIn: GaugePressure; readonly cutOut: GaugePressure } {
  requireObject("plan.running.control", control);
  return control.kind === "switch"
    ? { cutIn: control.cutIn, cutOut: control.cutOut }
    : { cutIn: control.startPressure, cutOut: control.stopPressure };
}

function dayOf(system: RunningSystem, { demand }: DayStage, options: ChartOptions): ChartSpec {
  const run = simulate({ system, demand, duration: days(1), sampleEvery: minutes(0.5), keepEvents: MOST_EVENTS });
  return dayChart({ run, ...pressuresOf(system) }, options);
}

function startsOf({ volume, worst, mostStarts }: TankStage, options: ChartOptions): ChartSpec | null {
  if (worst === null) return null;
  const tank = { name: "this pump and switch", volume, worst };
  return startsChart({ tanks: [tank], ...(mostStarts === null ? {} : { mostStarts }) }, options);
}

/** The sizes in use, with what runs in each. */
function frictionOf({ site, layout, dropPipe, pump }: PlanStages, options: ChartOptions): ChartSpec | null {
  const { water } = site;
  requireObject("plan.stages.site.water", water);
  requireList("plan.stages.layout.runs", layout.runs, 0, 10_000);
  const inUse = [{ pipe: dropPipe.pipe, flow: pump.dutyFlow }, ...layout.runs].filter(({ flow }, i) => {
    requireWithin(
      i === 0 ? "plan.stages.pump.dutyFlow" : `plan.stages.layout.runs[${i - 1}].flow`,
      flow,
      0,
      100,
      "m³/s",
    );
    return flow > LEAST_FLOW;
  });
  const pipes = [...new Map(inUse.map(({ pipe }) => [pipe.name, pipe])).values()]
    .sort((a, b) => a.insideDiameter - b.insideDiameter)
    .slice(0, MOST_PIPES);
  if (pipes.length === 0) return null;
  const drawn = new Set(pipes.map(({ name }) => name));
  const marks = inUse
    .filter(({ pipe }) => drawn.has(pipe.name))
    .slice(0, MOST_MARKS)
    .map(({ pipe, flow }) => ({ pipe: pipe.name, flow }));
  const flows = marks.map(({ flow }) => flow);
  return frictionChart(
    {
      pipes: pipes.map(({ name, insideDiameter, material }) => ({
        name,
        insideDiameter,
        roughness: wallRoughness(material).roughness,
      })),
      viscosity: water.kinematicViscosity,
      lowestFlow: (Math.min(...flows) / 3) as VolumeFlow,
      highestFlow: (Math.max(...flows) * 3) as VolumeFlow,
      marks,
    },
    options,
  );
}

/** The cables as the first source feeds them. */
function voltageOf({ cables, sources }: PowerStage, options: ChartOptions): ChartSpec | null {
  requireList("plan.stages.power.cables", cables, 0, 100);
  requireList("plan.stages.power.sources", sources, 1, 1000);
  const [source] = sources as readonly [SourcePlan];
  requireObject("plan.stages.power.sources[0]", source);
  // Collapsed: the circuit cannot carry the motor, and its findings say so.
  if (cables.length === 0 || source.runningVoltage === 0) return null;
  let voltage = source.voltage as number;
  const segments = cables.map(({ drop }) => {
    voltage -= drop;
    return { drop, voltage: voltage as Voltage };
  });
  return voltageChart(
    {
      cables: cables.map(({ name, size, length }) => ({ name: `${name}, ${size}`, length })),
      circuits: [
        {
          name: "running",
          sourceVoltage: source.voltage,
          drop: { state: "carried", sourceDrop: 0 as Voltage, segments },
        },
      ],
    },
    options,
  );
}
