/**
 * Friction against flow, one line a size of pipe.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import { darcyWeisbachLoss } from "../pipe/index.ts";
import { InputError, type KinematicViscosity, type Length, type Velocity, type VolumeFlow } from "../units/index.ts";
import { logMarks } from "./axis-marks.ts";
import { requireDifferent, requireName } from "./guards.ts";
import { byName, pointLayer, readOptions, singleChart } from "./look.ts";
import { axisTitle, drawn, inWords, shownIn } from "./shown.ts";
import type { ChartOptions, ChartSpec } from "./spec.ts";

/** A pipe by its bore and wall. */
export interface ChartedPipe {
  /** What it is called in the key: "1-1/4 in". 1 to 200 letters. */
  readonly name: string;
  /** Inside diameter. 0.001 to 10 m. */
  readonly insideDiameter: Length;
  /** Equivalent sand-grain height of its wall. 0 to half the diameter, m. */
  readonly roughness: Length;
}

/** A flow in one of the pipes, to be marked. */
export interface ChartedFlow {
  /** Name of the pipe. */
  readonly pipe: string;
  /** The flow. Above 0, in the range drawn. */
  readonly flow: VolumeFlow;
}

/** The pipes and the flows. */
export interface FrictionChartInput {
  /** 1 to 10 pipes, in the order of the key. */
  readonly pipes: readonly ChartedPipe[];
  /** Kinematic viscosity of the water. 1e-9 to 1 m²/s. */
  readonly viscosity: KinematicViscosity;
  /** Least flow drawn. 1e-8 to 100 m³/s. */
  readonly lowestFlow: VolumeFlow;
  /** Greatest flow drawn, above the least. Up to 100 m³/s. */
  readonly highestFlow: VolumeFlow;
  /** Velocity marked on each line; none where left out. 0.01 to 100 m/s. */
  readonly velocity?: Velocity;
  /** Flows marked: what runs in the pipes. At most 100. */
  readonly marks?: readonly ChartedFlow[];
}

const STEPS = 60;

/**
 * Head lost over a length of pipe against flow, both logarithmic, for each size.
 *
 * @remarks
 * The slope of Darcy–Weisbach with Colebrook's friction factor. Feet for 100 ft and metres for 100 m are one number.
 *
 * @param input - the pipes, the water and the flows
 * @param options - units, paper and size
 * @returns the chart, as a Vega-Lite specification
 * @throws {@link units.InputError} naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { astmD2239, pipesOf, wallRoughness } from "risingmain/pipe";
 * import { frictionChart } from "risingmain/plot";
 * import { celsius, feetPerSecond, gpm } from "risingmain/units";
 * import { waterKinematicViscosity } from "risingmain/water";
 *
 * const sizes = pipesOf(astmD2239).filter(({ series, grade }) => series === "SIDR 15" && grade === "PE3408");
 * const chart = frictionChart({
 *   pipes: sizes.map(({ nominal, insideDiameter, material }) => ({
 *     name: nominal, insideDiameter, roughness: wallRoughness(material).roughness,
 *   })),
 *   viscosity: waterKinematicViscosity(celsius(10)),
 *   lowestFlow: gpm(2),
 *   highestFlow: gpm(50),
 *   velocity: feetPerSecond(5),
 * });
 * chart.title["subtitle"]; // => "Dots: 5 ft/s. Water of 1.306 mm²/s."
 * ```
 *
 * @source colebrook-1939
 * @source derived: Darcy–Weisbach for 100 lengths of pipe
 */
export function frictionChart(input: FrictionChartInput, options: ChartOptions = {}): ChartSpec {
  requireObject("input", input);
  const look = readOptions(options);
  const { viscosity, lowestFlow, highestFlow, velocity, marks = [] } = input;
  requireWithin("viscosity", viscosity, 1e-9, 1, "m²/s");
  requireWithin("lowestFlow", lowestFlow, 1e-8, 100, "m³/s");
  // A flow drawn over less than a hundredth of itself is a point.
  requireWithin("highestFlow", highestFlow, 1.01 * lowestFlow, 100, "m³/s");
  requireList("pipes", input.pipes, 1, 10);
  if (velocity !== undefined) requireWithin("velocity", velocity, 0.01, 100, "m/s");
  const pipes = input.pipes.map(readPipe);
  const names = pipes.map(({ name }) => name);
  requireDifferent("pipes", names);
  requireList("marks", marks, 0, 100);

  const { units } = look;
  const row = ({ name, ...pipe }: ChartedPipe, flow: number) => {
    const { headLoss } = darcyWeisbachLoss({ ...pipe, flow: flow as VolumeFlow, viscosity, length: 100 as Length });
    return { line: name, flow: shownIn("flow", flow, units), loss: drawn(headLoss) };
  };
  const lines = pipes.flatMap((pipe) =>
    Array.from({ length: STEPS + 1 }, (_, i) => row(pipe, lowestFlow * (highestFlow / lowestFlow) ** (i / STEPS))),
  );
  const fast = pipes.flatMap((pipe) => {
    const flow = ((velocity ?? 0) * Math.PI * pipe.insideDiameter ** 2) / 4;
    return flow >= lowestFlow && flow <= highestFlow ? [row(pipe, flow)] : [];
  });
  const running = marks.map((mark, i) => {
    requireObject(`marks[${i}]`, mark);
    const pipe = pipes.find(({ name }) => name === mark.pipe);
    if (pipe === undefined) throw new InputError(`marks[${i}].pipe`, mark.pipe, "the name of one of the pipes");
    requireWithin(`marks[${i}].flow`, mark.flow, lowestFlow, highestFlow, "m³/s, the range drawn");
    return row(pipe, mark.flow);
  });
  const losses = [...lines, ...running].map(({ loss }) => loss);
  const flows = lines.map(({ flow }) => flow);
  const per100 = units === "us" ? "feet in 100 feet" : "metres in 100 metres";
  const x = {
    field: "flow",
    type: "quantitative",
    title: axisTitle("Flow", "flow", units),
    scale: { type: "log", nice: false },
    axis: { grid: true, ...logMarks(flows), format: "~g" },
  };
  const y = {
    field: "loss",
    type: "quantitative",
    title: `Head lost, ${per100}`,
    scale: { type: "log", nice: false },
    axis: { ...logMarks(losses), format: "~g" },
  };
  const subtitle = [
    velocity === undefined ? "" : `Dots: ${inWords("velocity", velocity, units)}.`,
    marks.length === 0 ? "" : "Diamonds: the flows of the job.",
    `Water of ${Number((viscosity * 1e6).toPrecision(4))} mm²/s.`,
  ]
    .filter((text) => text !== "")
    .join(" ");
  return singleChart(
    look,
    {
      title: "Friction by size of pipe",
      subtitle,
      description: `Head lost over 100 lengths of pipe against flow, logarithmic, for ${names.join(", ")}: the wider the pipe, the lower its line. ${subtitle}`,
    },
    [
      { data: { values: lines }, mark: "line", encoding: { x, y, ...byName(look, names) } },
      ...pointLayer(fast, { x, y }, { size: 45 }),
      ...pointLayer(running, { x, y }, { shape: "diamond", size: 100 }),
    ],
  );
}

function readPipe(pipe: ChartedPipe, i: number): ChartedPipe {
  const at = `pipes[${i}]`;
  requireObject(at, pipe);
  const { name, insideDiameter, roughness } = pipe;
  requireName(`${at}.name`, name);
  requireWithin(`${at}.insideDiameter`, insideDiameter, 1e-3, 10, "m");
  requireWithin(`${at}.roughness`, roughness, 0, insideDiameter / 2, "m");
  return { name, insideDiameter, roughness };
}
