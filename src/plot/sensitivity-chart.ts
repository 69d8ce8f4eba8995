/**
 * What matters most: how far a result moves with each input, the widest swing on top.
 *
 * @module
 */
import { requireList, requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { Tornado } from "../selection/index.ts";
import { requireDifferent, requireName } from "./guards.ts";
import { readOptions, singleChart } from "./look.ts";
import { axisTitle, inWords, type ShownQuantity, shownIn } from "./shown.ts";
import type { ChartOptions, ChartSpec } from "./spec.ts";

/** The swings of a result, and what it is. */
export interface SensitivityChartInput {
  /** The swings, from `tornado`: 1 to 50 bars. */
  readonly tornado: Tornado;
  /** What the result is called: "Head lost". 1 to 200 letters. */
  readonly result: string;
  /** What kind of quantity it is, for its unit. */
  readonly quantity: ShownQuantity;
}

const QUANTITIES = ["head", "length", "flow", "velocity", "pressure", "volume", "voltage", "time", "starts"];
const FURTHEST = 1e12;
/** Room for one bar, px. */
const BAR = 34;

/**
 * Bars of how far a result moves as each input goes to its lowest and to its highest, the widest on top.
 *
 * @remarks
 * Hollow where the input is at its lowest, filled at its highest: told apart without colour.
 *
 * @param input - the swings, the name of the result and its quantity
 * @param options - units, paper and size; the height grows with the bars where left out
 * @returns the chart, as a Vega-Lite specification
 * @throws {@link units.InputError} naming the first field that cannot be drawn
 *
 * @example
 * ```ts
 * import { sensitivityChart } from "risingmain/plot";
 * import { tornado } from "risingmain/selection";
 *
 * const swings = tornado({
 *   inputs: { lift: 60, friction: 12 },
 *   ranges: { friction: [10, 18], lift: [55, 75] },
 *   evaluate: ({ lift = 0, friction = 0 }) => ({ head: lift + friction }),
 *   output: "head",
 * });
 * const chart = sensitivityChart({ tornado: swings, result: "Head", quantity: "head" }, { units: "metric" });
 * chart.title["subtitle"]; // => "72 m at the best guess; lift moves it most, 67 m to 87 m."
 * ```
 *
 * @source derived: the bars' own figures
 */
export function sensitivityChart(input: SensitivityChartInput, options: ChartOptions = {}): ChartSpec {
  requireObject("input", input);
  requireObject("options", options);
  const { tornado, result, quantity } = input;
  requireObject("tornado", tornado);
  requireWithin("tornado.base", tornado.base, -FURTHEST, FURTHEST, "");
  requireList("tornado.bars", tornado.bars, 1, 50);
  const look = readOptions({ height: Math.max(60, BAR * tornado.bars.length), ...options });
  requireName("result", result);
  requireOneOf("quantity", quantity, QUANTITIES);
  const bars = tornado.bars.map((bar, i) => {
    requireObject(`tornado.bars[${i}]`, bar);
    requireName(`tornado.bars[${i}].input`, bar.input);
    requireWithin(`tornado.bars[${i}].atLow`, bar.atLow, -FURTHEST, FURTHEST, "");
    requireWithin(`tornado.bars[${i}].atHigh`, bar.atHigh, -FURTHEST, FURTHEST, "");
    return bar;
  });
  const names = bars.map(({ input: name }) => name);
  requireDifferent("tornado.bars", names);
  const { units, ink, colours } = look;
  const [first] = bars as [(typeof bars)[number]];
  const base = shownIn(quantity, tornado.base, units);
  const ends = ["input at its lowest", "input at its highest"] as const;
  const values = bars.flatMap(({ input: name, atLow, atHigh }) => [
    { input: name, end: ends[0], from: base, to: shownIn(quantity, atLow, units) },
    { input: name, end: ends[1], from: base, to: shownIn(quantity, atHigh, units) },
  ]);
  const x = { field: "from", type: "quantitative", title: axisTitle(result, quantity, units), scale: { zero: false } };
  const colour = colours[0] as string;
  const subtitle = `${inWords(quantity, tornado.base, units)} at the best guess; ${first.input} moves it most, ${inWords(quantity, Math.min(first.atLow, first.atHigh), units)} to ${inWords(quantity, Math.max(first.atLow, first.atHigh), units)}.`;
  return singleChart(
    look,
    {
      title: "What matters most",
      subtitle,
      description: `${result} as one input at a time goes to its lowest and its highest, widest first: ${names.join(", ")}. ${subtitle}`,
    },
    [
      {
        data: { values },
        mark: { type: "bar", stroke: colour, strokeWidth: 1.5, tooltip: true, height: { band: 0.6 } },
        encoding: {
          x,
          x2: { field: "to" },
          y: {
            field: "input",
            type: "nominal",
            sort: names,
            title: null,
            axis: { domain: false, ticks: false, labelLimit: Math.round(look.width / 3) },
          },
          fill: {
            field: "end",
            type: "nominal",
            scale: { domain: ends, range: [look.paper, colour] },
            legend: {
              symbolType: "square",
              symbolSize: 160,
              symbolStrokeColor: colour,
              columns: look.width < 440 ? 1 : 2,
            },
          },
        },
      },
      { data: { values: [{ from: base }] }, mark: { type: "rule", color: ink, strokeWidth: 1.5 }, encoding: { x } },
    ],
  );
}
