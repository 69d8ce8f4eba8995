/**
 * How often the pump starts, against the size of its tank.
 *
 * @module
 */
import { requireList, requireObject, requirePositive, requireWithin } from "../numeric/index.ts";
import type { WorstDemand } from "../tank/index.ts";
import type { Frequency, Volume } from "../units/index.ts";
import { requireDifferent, requireName } from "./guards.ts";
import { byName, readOptions, singleChart } from "./look.ts";
import { axisTitle, capital, inWords, shownIn } from "./shown.ts";
import type { ChartOptions, ChartSpec } from "./spec.ts";

/** A tank that was reckoned. */
export interface ChartedTank {
  /** What it is called in the key: "30/50 psi". 1 to 200 letters. */
  readonly name: string;
  /** Volume of its vessel. 1e-6 to 10 000 m³. */
  readonly volume: Volume;
  /** Its worst use, from `worstDemand` or `worstDemandOnCurve`. */
  readonly worst: Pick<WorstDemand, "starts">;
}

/** Tanks of the pumps and switches to compare, and the limit they are held against. */
export interface StartsChartInput {
  /** 1 to 5 tanks. */
  readonly tanks: readonly ChartedTank[];
  /** Most starts the motor is allowed, from `motorStartLimit`; not marked where left out. 1e-9 to 1 Hz. */
  readonly mostStarts?: Frequency;
}

/** Sizes drawn, as shares of the smallest and the largest tank given. */
const FROM = 0.25;
const TO = 4;
const STEPS = 60;

/**
 * Most starts in an hour against the volume of the tank: at the use that starts the pump most often.
 *
 * @remarks
 * N = N₁ V₁ / V: with pump, switch and precharge as they are, the usable water is a fixed share of the tank.
 *
 * @param input - tanks with their worst use, and the limit
 * @param options - units, paper and size
 * @returns the chart, as a Vega-Lite specification
 * @throws {@link units.InputError} naming the first tank or field that cannot be drawn
 *
 * @example
 * ```ts
 * import { startsChart } from "risingmain/plot";
 * import { motorStartLimit, tankDrawdown, worstDemand } from "risingmain/tank";
 * import { gpm, horsepower, psi, psia, usGallons } from "risingmain/units";
 *
 * const volume = usGallons(44);
 * const { usable } = tankDrawdown({ volume, precharge: psi(38), cutIn: psi(40), cutOut: psi(60), atmosphere: psia(14.7) });
 * const chart = startsChart({
 *   tanks: [{ name: "40/60 psi", volume, worst: worstDemand({ usable, pumpFlow: gpm(10) }) }],
 *   mostStarts: motorStartLimit(horsepower(1)).perHour,
 * });
 * chart.title["subtitle"]; // => "40/60 psi: 13.2 an hour with 44 gal; 7.5 an hour need 77.5 gal."
 * ```
 *
 * @source derived: usable water in proportion to the volume
 */
export function startsChart(input: StartsChartInput, options: ChartOptions = {}): ChartSpec {
  requireObject("input", input);
  const look = readOptions(options);
  const { mostStarts } = input;
  requireList("tanks", input.tanks, 1, 5);
  if (mostStarts !== undefined) requireWithin("mostStarts", mostStarts, 1e-9, 1, "Hz");
  const tanks = input.tanks.map((tank, i) => {
    const at = `tanks[${i}]`;
    requireObject(at, tank);
    requireName(`${at}.name`, tank.name);
    requireWithin(`${at}.volume`, tank.volume, 1e-6, 1e4, "m³");
    requireObject(`${at}.worst`, tank.worst);
    requirePositive(`${at}.worst.starts`, tank.worst.starts, 1e6, "Hz");
    return { name: tank.name, volume: tank.volume, starts: tank.worst.starts };
  });
  const names = tanks.map(({ name }) => name);
  requireDifferent("tanks", names);
  const { units } = look;
  const volumes = tanks.map(({ volume }) => volume);
  const smallest = FROM * Math.min(...volumes);
  const largest = TO * Math.max(...volumes);
  const row = (line: string, volume: number, starts: number) => ({
    line,
    volume: shownIn("volume", volume, units),
    starts: shownIn("starts", starts, units),
  });
  // The smallest tanks start without end; the paper ends at half more than the busiest given.
  const most = 1.5 * Math.max(...tanks.map(({ starts }) => starts), mostStarts ?? 0);
  const lines = tanks.flatMap(({ name, volume, starts }) => {
    const from = Math.max(smallest, (starts * volume) / most);
    return Array.from({ length: STEPS + 1 }, (_, i) => {
      const size = from * (largest / from) ** (i / STEPS);
      return row(name, size, (starts * volume) / size);
    });
  });
  const sentences = tanks
    .map(({ name, volume, starts }) => {
      const needed =
        mostStarts === undefined
          ? ""
          : `; ${inWords("starts", mostStarts, units)} need ${inWords("volume", (starts * volume) / mostStarts, units)}`;
      return `${name}: ${inWords("starts", starts, units)} with ${inWords("volume", volume, units)}${needed}`;
    })
    .join("; ");
  const subtitle = capital(`${sentences}.`);
  const x = {
    field: "volume",
    type: "quantitative",
    title: axisTitle("Volume of the tank", "volume", units),
    scale: { nice: false },
  };
  const y = {
    field: "starts",
    type: "quantitative",
    title: "Starts in an hour, at the worst use",
    scale: { domain: [0, shownIn("starts", most, units)], nice: true },
  };
  return singleChart(
    look,
    {
      title: "Starts against the size of the tank",
      subtitle,
      description: `Most starts of the pump in an hour against the volume of its tank, falling as one over the volume. ${subtitle}`,
    },
    [
      ...(mostStarts === undefined
        ? []
        : [
            {
              data: { values: [{ starts: shownIn("starts", mostStarts, units) }] },
              encoding: { y },
              layer: [
                { mark: { type: "rule", strokeDash: [4, 3] } },
                {
                  mark: { type: "text", align: "right", baseline: "bottom", dy: -3, x: "width", text: "most allowed" },
                },
              ],
            },
          ]),
      {
        data: { values: lines },
        mark: "line",
        encoding: { x, y, ...byName(look, names) },
      },
      {
        data: { values: tanks.map(({ name, volume, starts }) => row(name, volume, starts)) },
        mark: { type: "point", size: 90, tooltip: true },
        encoding: { x, y },
      },
    ],
  );
}
