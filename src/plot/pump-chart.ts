/**
 * Pump and system curves, and where they meet.
 *
 * @module
 */
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
// The limits that `pumpDuty` judges by.
import { LOW_FROM, UPTHRUST_FROM } from "../pump/duty.ts";
import { bestEfficiencyPoint, type OperatingPoint, operatingPoint, type PumpCurve, pumpHeadAt } from "../pump/index.ts";
import type { Length, VolumeFlow } from "../units/index.ts";
import { requireDifferent, requireName } from "./guards.ts";
import { byName, type Look, pointLayer, readOptions, singleChart } from "./look.ts";
import { axisTitle, capital, inWords, shownIn } from "./shown.ts";
import type { ChartOptions, ChartSpec, JsonObject } from "./spec.ts";

/** A system the pump may meet: one level of the water, one pressure of the switch. */
export interface ChartedSystem {
  /** What it is called in the key: "at cut-in". 1 to 200 letters, not "pump". */
  readonly name: string;
  /** Head it takes at a flow, as for `operatingPoint`. −100 000 to 1e12 m, never falling. */
  readonly systemHead: (flow: VolumeFlow) => Length;
}

/** A pump, and the systems it meets. */
export interface PumpChartInput {
  /** The pump, from `pumpCurve`. */
  readonly curve: PumpCurve;
  /** 1 to 4 systems: those at both pressures of a switch, or at both levels of a well, bound the pump's working band. */
  readonly systems: readonly ChartedSystem[];
}

const PUMP = "pump";
/** Steps of a line from no flow to the end of the curve. */
const STEPS = 60;
/** A system that climbs far above the pump is cut, so that the pump's curve keeps its place on the paper. */
const CUT_ABOVE = 1.15;

/**
 * The pump's curve, the curves of the systems it meets, the points where it runs, the band between them, and the flows
 * it is best run at.
 *
 * @param input - the pump and its systems
 * @param options - units, paper and size
 * @returns the chart, as a Vega-Lite specification
 * @throws {@link units.InputError} where the curve is not one, a system gives no usable head, or two share a name
 *
 * @example
 * ```ts
 * import { pumpChart } from "risingmain/plot";
 * import { pumpCurve } from "risingmain/pump";
 * import { feet, gpm, type Length, percent, type VolumeFlow } from "risingmain/units";
 *
 * const curve = pumpCurve({
 *   points: [
 *     { flow: gpm(0), head: feet(365) },
 *     { flow: gpm(8), head: feet(322), efficiency: percent(54) },
 *     { flow: gpm(12), head: feet(275), efficiency: percent(62) },
 *     { flow: gpm(16), head: feet(206), efficiency: percent(58) },
 *   ],
 * });
 * const against = (lift: number) => (flow: VolumeFlow) => (feet(lift) + 3e4 * flow) as Length;
 * const chart = pumpChart({
 *   curve,
 *   systems: [
 *     { name: "at cut-in", systemHead: against(170) },
 *     { name: "at cut-out", systemHead: against(216) },
 *   ],
 * });
 * chart.title["subtitle"]; // => "At cut-in 13.4 gpm at 253 ft; at cut-out 11.2 gpm at 286 ft."
 * ```
 *
 * @source derived: the points of `operatingPoint` on both curves
 * @source ansi-hi-9.6.3: the flows a pump is best run at, 70 to 120 % of its best
 */
export function pumpChart(input: PumpChartInput, options: ChartOptions = {}): ChartSpec {
  requireObject("input", input);
  const look = readOptions(options);
  const { curve } = input;
  requireList("systems", input.systems, 1, 4);
  const systems = input.systems.map((system, i) => {
    requireObject(`systems[${i}]`, system);
    requireName(`systems[${i}].name`, system.name);
    return { name: system.name, systemHead: system.systemHead, point: operatingPoint({ ...system, curve }) };
  });
  const names = [PUMP, ...systems.map(({ name }) => name)];
  requireDifferent("systems", names);

  const flows = Array.from({ length: STEPS + 1 }, (_, i) => ((curve.runoutFlow * i) / STEPS) as VolumeFlow);
  const row = rowIn(look);
  const pumpLine = flows.map((flow) => ({ flow, head: pumpHeadAt(curve, flow) }));
  const highest = Math.max(
    ...pumpLine.map(({ head }) => CUT_ABOVE * head),
    ...systems.map(({ point }) => (point.state === "cannot lift" ? CUT_ABOVE * point.systemHead : 0)),
  );
  const lines = [
    ...pumpLine.map(({ flow, head }) => row(PUMP, flow, head)),
    ...systems.flatMap(({ name, systemHead }) =>
      flows.flatMap((flow) => {
        const head = systemHead(flow);
        requireWithin("systemHead", head, -1e5, 1e12, "m from the function");
        return head <= highest ? [row(name, flow, head)] : [];
      }),
    ),
  ];
  const points = systems.flatMap(({ name, point }) =>
    point.state === "running" ? [row(name, point.flow, point.head)] : [],
  );
  const band = bandOf(systems.map(({ point }) => point));
  const bestFlows = bestFlowsOf(curve);
  const { units, faint } = look;
  const x = { field: "flow", type: "quantitative", title: axisTitle("Flow", "flow", units), scale: { nice: false } };
  const y = { field: "head", type: "quantitative", title: axisTitle("Head", "head", units) };

  return singleChart(
    look,
    {
      title: "Where the pump runs",
      subtitle: sentence(systems, look),
      description:
        `Pump and system curves, head against flow. ${sentence(systems, look)}` +
        (bestFlows === null
          ? ""
          : ` Best run between ${inWords("flow", bestFlows.low, units)} and ${inWords("flow", bestFlows.high, units)}.`),
    },
    [
      ...(bestFlows === null
        ? []
        : [
            {
              data: {
                values: [{ from: shownIn("flow", bestFlows.low, units), to: shownIn("flow", bestFlows.high, units) }],
              },
              encoding: { x: { ...x, field: "from" } },
              layer: [
                { mark: { type: "rect", color: faint, opacity: 0.18 }, encoding: { x2: { field: "to" } } },
                {
                  mark: { type: "text", align: "left", baseline: "bottom", dx: 4, dy: -5, y: "height" },
                  encoding: { text: { value: "best flows" } },
                },
              ],
            },
          ]),
      ...(band === null
        ? []
        : [
            {
              data: {
                values: flows
                  .filter((flow) => flow > band.low && flow < band.high)
                  .concat(band.low, band.high)
                  .sort((a, b) => a - b)
                  .map((flow) => row(PUMP, flow, pumpHeadAt(curve, flow))),
              },
              mark: { type: "line", strokeWidth: 11, opacity: 0.35, color: look.colours[0] as string },
              encoding: { x, y },
            },
          ]),
      { data: { values: lines }, mark: "line", encoding: { x, y, ...byName(look, names) } },
      ...pointLayer(points, { x, y }, { size: 90 }),
    ],
  );
}

function rowIn({ units }: Look): (line: string, flow: number, head: number) => JsonObject {
  return (line, flow, head) => ({ line, flow: shownIn("flow", flow, units), head: shownIn("head", head, units) });
}

/** From the least to the greatest flow of the points; null with fewer than two. */
function bandOf(points: readonly OperatingPoint[]): { readonly low: VolumeFlow; readonly high: VolumeFlow } | null {
  const flows = points.flatMap((point) => (point.state === "running" ? [point.flow] : []));
  if (flows.length < 2) return null;
  return { low: Math.min(...flows) as VolumeFlow, high: Math.max(...flows) as VolumeFlow };
}

/** Flows a pump is best run at, as far as its curve goes; null without efficiency. */
function bestFlowsOf(curve: PumpCurve): { readonly low: number; readonly high: number } | null {
  const best = bestEfficiencyPoint(curve);
  if (best === null || !(best.flow > 0)) return null;
  return { low: LOW_FROM * best.flow, high: Math.min(UPTHRUST_FROM * best.flow, curve.runoutFlow) };
}

/** "At cut-in 13.2 gpm at 256 ft; at cut-out nothing: 12 ft short." */
function sentence(
  systems: readonly { readonly name: string; readonly point: OperatingPoint }[],
  { units }: Look,
): string {
  const parts = systems.map(({ name, point }) => {
    if (point.state === "running") {
      return `${name} ${inWords("flow", point.flow, units)} at ${inWords("head", point.head, units)}`;
    }
    return point.state === "cannot lift"
      ? `${name} nothing, ${inWords("head", point.short, units)} short`
      : `${name} more than ${inWords("flow", point.moreThan, units)}, past the end of its curve`;
  });
  return capital(`${parts.join("; ")}.`);
}
