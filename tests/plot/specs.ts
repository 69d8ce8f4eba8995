/**
 * One of each chart, from jobs of our own invention, for the tests that hold for all of them.
 */
import { conductorResistance, voltageDrop } from "risingmain/conductor";
import { gradeLines, lineStations } from "risingmain/head";
import { astmD2239, pipesOf, wallRoughness } from "risingmain/pipe";
import { planSystem, readJob, sampleJob } from "risingmain/plan";
import {
  type ChartOptions,
  type ChartSpec,
  chartsOf,
  dayChart,
  frictionChart,
  frictionFactorChart,
  gradeLineChart,
  pumpChart,
  sensitivityChart,
  startsChart,
  voltageChart,
} from "risingmain/plot";
import { pumpCurve } from "risingmain/pump";
import { tornado } from "risingmain/selection";
import { simulate } from "risingmain/system";
import { motorStartLimit, tankDrawdown, worstDemand } from "risingmain/tank";
import {
  amperes,
  celsius,
  days,
  feet,
  feetPerSecond,
  gpm,
  horsepower,
  inches,
  type Length,
  minutes,
  percent,
  psi,
  psia,
  ratio,
  usGallons,
  type VolumeFlow,
  volts,
} from "risingmain/units";
import { atmosphereAt, waterAt } from "risingmain/water";

export const { density, kinematicViscosity: viscosity, vapourPressure } = waterAt({ temperature: celsius(10) });

export const curve = pumpCurve({
  points: [
    { flow: gpm(0), head: feet(365) },
    { flow: gpm(8), head: feet(322), efficiency: percent(54) },
    { flow: gpm(12), head: feet(275), efficiency: percent(62) },
    { flow: gpm(16), head: feet(206), efficiency: percent(58) },
  ],
});
const against = (lift: number) => (flow: VolumeFlow) => (feet(lift) + 3e4 * flow) as Length;

export const systems = [
  { name: "at cut-in", systemHead: against(170) },
  { name: "at cut-out", systemHead: against(216) },
];

const pipe = { insideDiameter: inches(1.38), roughness: feet(0.000005) };
const { stations } = lineStations({
  startName: "well head",
  startElevation: feet(0),
  flow: gpm(8),
  viscosity,
  runs: [
    { name: "gate", length: feet(300), endElevation: feet(12), ...pipe },
    { name: "trough", length: feet(800), endElevation: feet(-90), ...pipe },
  ],
});
export const lines = gradeLines({
  stations,
  startPressure: psi(55),
  atmosphere: atmosphereAt(feet(3000)),
  vapourPressure,
  density,
});

export const plan = planSystem(readJob(sampleJob));
export const { running } = plan;
export const { day } = plan.stages;
if (running === null || day === null) throw new Error("the sample job has lost its pump");
export const run = simulate({ system: running, demand: day.demand, duration: days(1), sampleEvery: minutes(1) });

export const tank = {
  name: "40/60 psi",
  volume: usGallons(44),
  worst: worstDemand({
    usable: tankDrawdown({
      volume: usGallons(44),
      precharge: psi(38),
      cutIn: psi(40),
      cutOut: psi(60),
      atmosphere: psia(14.7),
    }).usable,
    pumpFlow: gpm(10),
  }),
};

export const pipes = pipesOf(astmD2239)
  .filter(({ series, grade }) => series === "SIDR 15" && grade === "PE3408")
  .map(({ nominal, insideDiameter, material }) => ({
    name: nominal,
    insideDiameter,
    roughness: wallRoughness(material).roughness,
  }));

export const cables = [
  { name: "10 AWG", length: feet(150) },
  { name: "12 AWG", length: feet(300) },
] as const;
export const sourceVoltage = volts(230);
export const dropAt = (current: number, powerFactor: number) =>
  voltageDrop({
    system: "single-phase",
    sourceVoltage,
    current: amperes(current),
    powerFactor: ratio(powerFactor),
    segments: cables.map(({ name, length }) => ({ length, ...conductorResistance({ size: name }) })),
  });

export const swings = tornado({
  inputs: { lift: 60, friction: 12, drawdown: 6 },
  ranges: { friction: [10, 18], lift: [55, 75], drawdown: [6, 9] },
  evaluate: ({ lift = 0, friction = 0, drawdown = 0 }) => ({ head: lift + friction + drawdown }),
  output: "head",
});

/** The charts, with how many marks of each kind belong on them. */
export interface Sample {
  readonly name: string;
  readonly draw: (options?: ChartOptions) => ChartSpec;
  readonly marks: Readonly<Record<string, number>>;
}

export const samples: readonly Sample[] = [
  {
    name: "pumpChart",
    draw: (options) => pumpChart({ curve, systems }, options),
    // The pump, two systems, the band; where it runs at each; the flows it is best run at.
    marks: { line: 4, point: 2, rect: 1 },
  },
  {
    name: "gradeLineChart",
    draw: (options) => gradeLineChart(lines, options),
    marks: { line: 2, point: 3, area: 1 },
  },
  {
    name: "dayChart",
    draw: (options) => dayChart({ run, cutIn: psi(30), cutOut: psi(50) }, options),
    marks: { line: 2, rule: 2, bar: run.starts },
  },
  {
    name: "startsChart",
    draw: (options) => startsChart({ tanks: [tank], mostStarts: motorStartLimit(horsepower(1)).perHour }, options),
    marks: { line: 1, point: 1, rule: 1 },
  },
  {
    name: "frictionChart",
    draw: (options) =>
      frictionChart(
        { pipes, viscosity, lowestFlow: gpm(2), highestFlow: gpm(50), velocity: feetPerSecond(5) },
        options,
      ),
    // 5 ft/s are reached below 50 gpm in bores to 2.02 in: the sizes to 1-1/2 in.
    marks: { line: 10, point: 5 },
  },
  {
    name: "frictionFactorChart",
    draw: (options) =>
      frictionFactorChart({ marks: [{ name: "drop pipe", reynolds: 6e4, relativeRoughness: 1e-4 }] }, options),
    // Six curves, six bridges, the laminar line.
    marks: { line: 13, point: 1, rect: 1 },
  },
  {
    name: "voltageChart",
    draw: (options) =>
      voltageChart(
        {
          cables,
          circuits: [
            { name: "running", sourceVoltage, drop: dropAt(10, 0.8) },
            { name: "starting", sourceVoltage, drop: dropAt(40, 0.5) },
          ],
          leastVoltage: volts(207),
        },
        options,
      ),
    marks: { line: 2, point: 6, rule: 1 },
  },
  {
    name: "sensitivityChart",
    draw: (options) => sensitivityChart({ tornado: swings, result: "Head", quantity: "head" }, options),
    marks: { bar: 6, rule: 1 },
  },
  ...Object.keys(chartsOf(plan)).map((name) => ({
    name: `chartsOf, ${name}`,
    draw: (options?: ChartOptions) => chartsOf(plan, options)[name as keyof ReturnType<typeof chartsOf>] as ChartSpec,
    marks: {},
  })),
];
