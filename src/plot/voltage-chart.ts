/**
 * The voltage along a circuit, from its source to the motor.
 *
 * @module
 */
import type { CarriedDrop, CollapsedDrop } from "../conductor/index.ts";
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import { InputError, type Length, type Voltage } from "../units/index.ts";
import { requireDifferent, requireName } from "./guards.ts";
import { byName, readOptions, singleChart } from "./look.ts";
import { axisTitle, capital, inWords, shownIn } from "./shown.ts";
import type { ChartOptions, ChartSpec } from "./spec.ts";

/** One cable of the circuit. */
export interface ChartedCable {
  /** What it is called: "service to wellhead, 10 AWG". 1 to 200 letters. */
  readonly name: string;
  /** Its length, one way. 0 to 100 000 m. */
  readonly length: Length;
}

/** One state of the circuit. */
export interface ChartedCircuit {
  /** What it is called in the key: "running", "starting". 1 to 200 letters. */
  readonly name: string;
  /** Voltage of its source. 0.1 to 1000 V. */
  readonly sourceVoltage: Voltage;
  /** What `voltageDrop` made of it; it must carry its current. */
  readonly drop: Pick<CarriedDrop, "state" | "sourceDrop" | "segments"> | CollapsedDrop;
}

/** A circuit. */
export interface VoltageChartInput {
  /** The cables from source to motor, in order, 1 to 100. */
  readonly cables: readonly ChartedCable[];
  /** 1 to 4 states, each with a drop for each cable. */
  readonly circuits: readonly ChartedCircuit[];
  /** Least voltage wanted at the motor, marked where given. 0 to 1000 V. */
  readonly leastVoltage?: Voltage;
}

/**
 * Voltage against distance along the cables, from source to motor.
 *
 * @param input - source, cables and states of the circuit
 * @param options - units, paper and size
 * @returns the chart, as a Vega-Lite specification
 * @throws {@link units.InputError} naming the first field that cannot be drawn, a collapsed circuit among them
 *
 * @example
 * ```ts
 * import { conductorResistance, voltageDrop } from "risingmain/conductor";
 * import { voltageChart } from "risingmain/plot";
 * import { amperes, feet, ratio, volts } from "risingmain/units";
 *
 * const cables = [{ name: "10 AWG", length: feet(150) }, { name: "12 AWG", length: feet(300) }] as const;
 * const sourceVoltage = volts(230);
 * const drop = voltageDrop({
 *   system: "single-phase", sourceVoltage, current: amperes(10), powerFactor: ratio(0.8),
 *   segments: cables.map(({ name, length }) => ({ length, ...conductorResistance({ size: name }) })),
 * });
 * const chart = voltageChart({ cables, circuits: [{ name: "running", sourceVoltage, drop }], leastVoltage: volts(218.5) });
 * chart.title["subtitle"]; // => "Running: 217 V at the motor, 5.51 % less than at the source."
 * ```
 *
 * @source derived: the drops of the cables, one after the other
 */
export function voltageChart(input: VoltageChartInput, options: ChartOptions = {}): ChartSpec {
  requireObject("input", input);
  const look = readOptions(options);
  const { leastVoltage } = input;
  if (leastVoltage !== undefined) requireWithin("leastVoltage", leastVoltage, 0, 1000, "V");
  requireList("cables", input.cables, 1, 100);
  const cables = input.cables.map((cable, i) => {
    requireObject(`cables[${i}]`, cable);
    requireName(`cables[${i}].name`, cable.name);
    requireWithin(`cables[${i}].length`, cable.length, 0, 1e5, "m");
    return cable;
  });
  requireList("circuits", input.circuits, 1, 4);
  const circuits = input.circuits.map((circuit, i) => readCircuit(circuit, `circuits[${i}]`, cables.length));
  const names = circuits.map(({ name }) => name);
  requireDifferent("circuits", names);

  const { units } = look;
  const ends = [0];
  for (const { length } of cables) ends.push((ends.at(-1) ?? 0) + length);
  const highest = Math.max(...circuits.map(({ sourceVoltage }) => sourceVoltage));
  // A tenth at least is on the paper, so that a small drop looks small.
  const lowest = Math.min(0.9 * highest, leastVoltage ?? highest, ...circuits.flatMap(({ voltages }) => voltages));
  const lines = circuits.flatMap(({ name, voltages }) =>
    voltages.map((voltage, i) => ({
      line: name,
      place: i === 0 ? "source" : (cables[i - 1] as ChartedCable).name,
      distance: shownIn("length", ends[i] ?? 0, units),
      voltage: shownIn("voltage", voltage, units),
    })),
  );
  const x = {
    field: "distance",
    type: "quantitative",
    title: axisTitle("Distance along the cables", "length", units),
    scale: { nice: false },
  };
  const y = {
    field: "voltage",
    type: "quantitative",
    title: axisTitle("Voltage", "voltage", units),
    scale: { zero: false, nice: true, domain: [shownIn("voltage", lowest, units), shownIn("voltage", highest, units)] },
  };
  const sentences = circuits.map(({ name, sourceVoltage, voltages }) => {
    const last = voltages.at(-1) as number;
    const share = Number(((100 * (sourceVoltage - last)) / sourceVoltage).toPrecision(3));
    return `${capital(name)}: ${inWords("voltage", last, units)} at the motor, ${share} % less than at the source.`;
  });
  return singleChart(
    look,
    {
      title: "Voltage along the circuit",
      subtitle: sentences.join(" "),
      description: `Voltage against distance over ${cables.map(({ name }) => name).join(", ")}. ${sentences.join(" ")}`,
    },
    [
      ...(leastVoltage === undefined
        ? []
        : [
            {
              data: { values: [{ voltage: shownIn("voltage", leastVoltage, units) }] },
              encoding: { y },
              layer: [
                { mark: { type: "rule", strokeDash: [4, 3] } },
                {
                  mark: {
                    type: "text",
                    align: "left",
                    baseline: "top",
                    dy: 4,
                    x: 4,
                    text: `least wanted: ${inWords("voltage", leastVoltage, units)}`,
                  },
                },
              ],
            },
          ]),
      {
        data: { values: lines },
        encoding: { x, y, ...byName(look, names) },
        layer: [{ mark: "line" }, { mark: { type: "point", size: 60, tooltip: true } }],
      },
    ],
  );
}

/** The voltages at the source's terminals and at the end of each cable. */
function readCircuit(
  circuit: ChartedCircuit,
  at: string,
  cables: number,
): { readonly name: string; readonly sourceVoltage: number; readonly voltages: readonly number[] } {
  requireObject(at, circuit);
  const { name, sourceVoltage, drop } = circuit;
  requireWithin(`${at}.sourceVoltage`, sourceVoltage, 0.1, 1000, "V");
  requireName(`${at}.name`, name);
  requireObject(`${at}.drop`, drop);
  if (drop.state !== "carried") {
    throw new InputError(`${at}.drop.state`, drop.state, `"carried": a circuit that feeds its load`);
  }
  requireWithin(`${at}.drop.sourceDrop`, drop.sourceDrop, 0, 1000, "V");
  requireList(`${at}.drop.segments`, drop.segments, cables, cables);
  const ends = drop.segments.map((segment, i) => {
    requireObject(`${at}.drop.segments[${i}]`, segment);
    requireWithin(`${at}.drop.segments[${i}].voltage`, segment.voltage, 0, 1000, "V");
    return segment.voltage;
  });
  return { name, sourceVoltage, voltages: [sourceVoltage - drop.sourceDrop, ...ends] };
}
