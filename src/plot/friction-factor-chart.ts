/**
 * The friction factor of round pipes against Reynolds number, from the library's own friction factor.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import { frictionFactor } from "../pipe/index.ts";
import { logMarks } from "./axis-marks.ts";
import { requireName } from "./guards.ts";
import { byName, pointLayer, readOptions, singleChart } from "./look.ts";
import { drawn } from "./shown.ts";
import type { ChartOptions, ChartSpec } from "./spec.ts";

/** A pipe at work, to be marked. */
export interface ChartedFriction {
  /** What it is called: "drop pipe". 1 to 200 letters. */
  readonly name: string;
  /** Its Reynolds number. 600 to 1e8. */
  readonly reynolds: number;
  /** Its relative roughness. 0 to 0.05. */
  readonly relativeRoughness: number;
}

/** What the chart holds. */
export interface FrictionFactorChartInput {
  /** Relative roughnesses drawn, 1 to 8, each 0 to 0.05; 0, 1e-5, 1e-4, 1e-3, 0.01 and 0.05 where left out. */
  readonly relativeRoughnesses?: readonly number[];
  /** Pipes at work, at most 20. */
  readonly marks?: readonly ChartedFriction[];
}

/** The chart of Colebrook's equation has these bounds (`moody-1944`). */
const LOWEST = 600;
const HIGHEST = 1e8;
const MOST_ROUGH = 0.05;
const LAMINAR_END = 2000;
const TURBULENT_START = 4000;
const STEPS_A_DECADE = 24;
const LAMINAR = "laminar";

/**
 * The friction factor against Reynolds number, both logarithmic: the laminar line, the curves of one relative roughness
 * each, and the stretch between the two where no law is published.
 *
 * @param input - roughnesses, and pipes to mark
 * @param options - paper and size; the axes have no units
 * @returns the chart, as a Vega-Lite specification
 * @throws {@link units.InputError} naming the first field that is not in its range
 *
 * @example
 * ```ts
 * import { frictionFactorChart } from "risingmain/plot";
 *
 * const chart = frictionFactorChart({ marks: [{ name: "drop pipe", reynolds: 60_000, relativeRoughness: 1e-4 }] });
 * chart.title["subtitle"]; // => "drop pipe: f = 0.0205 at Re = 60000. Shaded: no law is published."
 * ```
 *
 * @source moody-1944: the form of the chart and its bounds
 * @source colebrook-1939: the curves
 * @source poiseuille-1840: the laminar line
 */
export function frictionFactorChart(input: FrictionFactorChartInput = {}, options: ChartOptions = {}): ChartSpec {
  requireObject("input", input);
  const look = readOptions(options);
  const { relativeRoughnesses = [0, 1e-5, 1e-4, 1e-3, 0.01, 0.05], marks = [] } = input;
  requireList("relativeRoughnesses", relativeRoughnesses, 1, 8);
  relativeRoughnesses.forEach((k, i) => {
    requireWithin(`relativeRoughnesses[${i}]`, k, 0, MOST_ROUGH, "");
  });
  requireList("marks", marks, 0, 20);
  const row = (line: string, reynolds: number, relativeRoughness: number) => ({
    line,
    reynolds: drawn(reynolds),
    factor: drawn(frictionFactor({ reynolds, relativeRoughness }).value),
  });
  const between = (low: number, high: number): readonly number[] => {
    const steps = Math.ceil(STEPS_A_DECADE * Math.log10(high / low));
    return Array.from({ length: steps + 1 }, (_, i) => (i === steps ? high : low * (high / low) ** (i / steps)));
  };
  // Roughest first, as they lie on the paper.
  const rough = [...new Set(relativeRoughnesses)].sort((a, b) => b - a);
  const nameOf = (k: number): string => (k === 0 ? "smooth" : `roughness ${k}`);
  const names = [LAMINAR, ...rough.map(nameOf)];
  const lines = [
    ...rough.flatMap((k) => between(TURBULENT_START, HIGHEST).map((reynolds) => row(nameOf(k), reynolds, k))),
    ...between(LOWEST, LAMINAR_END).map((reynolds) => row(LAMINAR, reynolds, 0)),
  ];
  const bridges = rough.flatMap((k) =>
    between(LAMINAR_END, TURBULENT_START).map((reynolds) => row(nameOf(k), reynolds, k)),
  );
  const points = marks.map((mark, i) => {
    requireObject(`marks[${i}]`, mark);
    requireName(`marks[${i}].name`, mark.name);
    requireWithin(`marks[${i}].reynolds`, mark.reynolds, LOWEST, HIGHEST, "");
    requireWithin(`marks[${i}].relativeRoughness`, mark.relativeRoughness, 0, MOST_ROUGH, "");
    return row(mark.name, mark.reynolds, mark.relativeRoughness);
  });
  const factors = [...lines, ...bridges].map(({ factor }) => factor);
  const x = {
    field: "reynolds",
    type: "quantitative",
    title: "Reynolds number",
    scale: { type: "log", nice: false },
    axis: {
      grid: true,
      ...logMarks([LOWEST, HIGHEST]),
      labelExpr: "'10' + ['\u00b3','\u2074','\u2075','\u2076','\u2077','\u2078'][round(log(datum.value) / LN10) - 3]",
    },
  };
  const y = {
    field: "factor",
    type: "quantitative",
    title: "Darcy friction factor",
    scale: { type: "log", nice: false },
    axis: { ...logMarks(factors), format: "~g" },
  };
  const subtitle = `${points.map(({ line, reynolds, factor }) => `${line}: f = ${Number(factor.toPrecision(3))} at Re = ${reynolds}. `).join("")}Shaded: no law is published.`;
  return singleChart(
    look,
    {
      title: "Friction factor of round pipes",
      subtitle,
      description: `Darcy friction factor against Reynolds number, logarithmic: it falls as 64 over Reynolds number to ${LAMINAR_END}, and from ${TURBULENT_START} on each relative roughness has a curve that falls and levels off, the rougher the higher. ${subtitle}`,
    },
    [
      {
        data: { values: [{ from: LAMINAR_END, to: TURBULENT_START }] },
        mark: { type: "rect", color: look.faint, opacity: 0.25 },
        encoding: { x: { ...x, field: "from" }, x2: { field: "to" } },
      },
      {
        data: { values: bridges },
        mark: { type: "line", strokeWidth: 1, strokeDash: [2, 3], color: look.ink },
        encoding: { x, y, detail: { field: "line" } },
      },
      { data: { values: lines }, mark: "line", encoding: { x, y, ...byName(look, names) } },
      ...pointLayer(points, { x, y }, { shape: "diamond", size: 110 }),
    ],
  );
}
