/**
 * The grade line over the ground the pipe runs through.
 *
 * @module
 */
import type { GradeStation } from "../head/index.ts";
import type { GradePoint } from "../network/index.ts";
import { requireList, requireObject, requireWithin } from "../numeric/index.ts";
import type { Length } from "../units/index.ts";
import { InputError } from "../units/index.ts";
import { byName, readOptions, singleChart } from "./look.ts";
import { axisTitle, inWords, shownIn } from "./shown.ts";
import type { ChartOptions, ChartSpec } from "./spec.ts";

/** A line with its grade. */
export interface GradeLineChartInput {
  /**
   * 2 to 10 000 stations in their order: the `stations` of `gradeLines`, or the points of a network's `gradeLine`.
   * Distances 0 to 1 000 000 m, never falling; elevations and grades ±1 000 000 m.
   */
  readonly stations: readonly (GradeStation | GradePoint)[];
}

interface Station {
  readonly name: string;
  readonly distance: Length;
  readonly elevation: Length;
  readonly grade: Length;
}

const GRADE = "grade line";
const PIPE = "pipe";
const LONGEST = 1e6;

/**
 * The hydraulic grade line over the pipe's profile: the height between the two is pressure; where the pipe comes out
 * above the line, the water in it is under less than the air's pressure.
 *
 * @param input - the stations with their elevation and grade
 * @param options - units, paper and size
 * @returns the chart, as a Vega-Lite specification
 * @throws {@link units.InputError} naming the first station or field that cannot be drawn
 *
 * @example
 * ```ts
 * import { gradeLines, lineStations } from "risingmain/head";
 * import { gradeLineChart } from "risingmain/plot";
 * import { celsius, feet, gpm, inches, psi } from "risingmain/units";
 * import { atmosphereAt, waterAt } from "risingmain/water";
 *
 * const { density, kinematicViscosity: viscosity, vapourPressure } = waterAt({ temperature: celsius(10) });
 * const pipe = { insideDiameter: inches(1.38), roughness: feet(0.000005) };
 * const { stations } = lineStations({
 *   startName: "well head", startElevation: feet(0), flow: gpm(8), viscosity,
 *   runs: [
 *     { name: "gate", length: feet(300), endElevation: feet(12), ...pipe },
 *     { name: "trough", length: feet(800), endElevation: feet(-90), ...pipe },
 *   ],
 * });
 * const lines = gradeLines({ stations, startPressure: psi(55), atmosphere: atmosphereAt(feet(3000)), vapourPressure, density });
 * gradeLineChart(lines).title["subtitle"]; // => "Grade 127 ft at well head, 114 ft at trough; pipe 204 ft below it there."
 * ```
 *
 * @source derived: the stations' own figures
 */
export function gradeLineChart(input: GradeLineChartInput, options: ChartOptions = {}): ChartSpec {
  requireObject("input", input);
  const look = readOptions(options);
  requireList("stations", input.stations, 2, 10_000);
  const stations = input.stations.map(readStation);
  stations.forEach(({ distance }, i) => {
    if (distance < (stations[i - 1]?.distance ?? 0)) {
      throw new InputError(`stations[${i}].distance`, distance, "distances that never fall");
    }
  });
  const { units, faint } = look;
  const lowest = Math.min(...stations.flatMap(({ elevation, grade }) => [elevation, grade]));
  const highest = Math.max(...stations.flatMap(({ elevation, grade }) => [elevation, grade]));
  // Ground below the lowest point of the line, so that it does not lie on the edge.
  const floor = lowest - 0.2 * (highest - lowest);
  const profile = stations.map(({ name, distance, elevation, grade }) => ({
    name,
    distance: shownIn("length", distance, units),
    pipe: shownIn("length", elevation, units),
    grade: shownIn("length", grade, units),
    floor: shownIn("length", floor, units),
  }));
  const lines = [
    ...profile.map(({ distance, grade }) => ({ line: GRADE, distance, elevation: grade })),
    ...profile.map(({ distance, pipe }) => ({ line: PIPE, distance, elevation: pipe })),
  ];
  const x = {
    field: "distance",
    type: "quantitative",
    title: axisTitle("Distance along the pipe", "length", units),
    scale: { nice: false },
  };
  const scale = {
    zero: false,
    nice: false,
    domain: [shownIn("length", floor, units), shownIn("length", highest + 0.12 * (highest - lowest), units)],
  };
  const y = { field: "elevation", type: "quantitative", title: axisTitle("Elevation", "length", units), scale };
  const first = stations[0] as Station;
  const last = stations.at(-1) as Station;
  const above = stations.filter(({ elevation, grade }) => elevation > grade);
  const short =
    above.length === 0
      ? ""
      : ` Pipe above the line at ${above.map(({ name }) => name).join(", ")}: air and dirt are drawn in there.`;
  const between = last.grade >= last.elevation ? "below" : "above";
  const subtitle = `Grade ${inWords("length", first.grade, units)} at ${first.name}, ${inWords("length", last.grade, units)} at ${last.name}; pipe ${inWords("length", Math.abs(last.grade - last.elevation), units)} ${between} it there.${short}`;
  return singleChart(
    look,
    {
      title: "Grade line over the pipe",
      subtitle,
      description: `Profile of a pipe of ${inWords("length", last.distance - first.distance, units)} and the grade line over it. ${subtitle}`,
    },
    [
      {
        data: { values: profile },
        mark: { type: "area", color: faint, opacity: 0.25 },
        encoding: { x, y: { ...y, field: "pipe" }, y2: { field: "floor" } },
      },
      { data: { values: lines }, mark: "line", encoding: { x, y, ...byName(look, [GRADE, PIPE]) } },
      {
        data: { values: profile },
        encoding: { x, y: { ...y, field: "pipe" } },
        layer: [
          { mark: { type: "point", size: 50, tooltip: true } },
          ...labels(profile, look.width).map(({ align, rows }) => ({
            data: { values: rows },
            mark: { type: "text", align, baseline: "top", dy: 7 },
            encoding: { text: { field: "name" } },
          })),
        ],
      },
    ],
  );
}

/** Mean width of a letter, px. */
const LETTER = 7;

/** The names that have room: from the left, none over another; those at the left and right edges turned inwards. */
function labels<T extends { readonly name: string; readonly distance: number }>(
  profile: readonly T[],
  width: number,
): readonly { readonly align: string; readonly rows: readonly T[] }[] {
  const start = profile[0]?.distance ?? 0;
  const span = (profile.at(-1)?.distance ?? 0) - start || 1;
  const rows: Record<"left" | "center" | "right", T[]> = { left: [], center: [], right: [] };
  let taken = Number.NEGATIVE_INFINITY;
  for (const station of profile) {
    const wide = station.name.length * LETTER;
    const at = ((station.distance - start) / span) * width;
    const align = at < wide / 2 ? "left" : at > width - wide / 2 ? "right" : "center";
    const left = at - (align === "left" ? 0 : align === "right" ? wide : wide / 2);
    if (wide === 0 || left < taken) continue;
    rows[align].push(station);
    taken = left + wide + LETTER;
  }
  return Object.entries(rows).flatMap(([align, of]) => (of.length === 0 ? [] : [{ align, rows: of }]));
}

function readStation(station: GradeStation | GradePoint, i: number): Station {
  const at = `stations[${i}]`;
  requireObject(at, station);
  const [name, grade] = "head" in station ? [station.junction, station.head] : [station.name, station.hydraulicGrade];
  if (typeof name !== "string" || name.length > 200)
    throw new InputError(`${at}.name`, name, "a name of at most 200 letters");
  requireWithin(`${at}.distance`, station.distance, 0, LONGEST, "m");
  requireWithin(`${at}.elevation`, station.elevation, -LONGEST, LONGEST, "m");
  requireWithin(`${at}.grade`, grade, -2 * LONGEST, 2 * LONGEST, "m");
  return { name, grade, distance: station.distance, elevation: station.elevation };
}
