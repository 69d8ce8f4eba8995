/**
 * Hydraulic and energy grade lines along a pipe, and what they say at each station: residual and static pressure, and
 * where the pipe rises so near the grade line, or above it, that air, siphoning or a parted column must be reckoned with.
 *
 * @module
 */
import { requireList, requireObject, requireWithin, STANDARD_GRAVITY } from "../numeric/index.ts";
import { type GaugePressure, InputError, type Length } from "../units/index.ts";
import type { GradeLines, GradeLinesInput, GradeState, GradeStation, GradeStationInput } from "./grade-line-types.ts";
import { highPoints, sectionsOf, siphonsOf } from "./profile.ts";
import { requireDensity, requireHead, requireName, requirePressure } from "./ranges.ts";

/**
 * Draws the hydraulic and the energy grade line along a profile.
 *
 * @remarks
 * E₀ = z₀ + p₀/(ρ g) + V₀²/(2 g);  Eᵢ = Eᵢ₋₁ − hᵢ + Hᵢ;  Gᵢ = Eᵢ − Vᵢ²/(2 g);  pᵢ = ρ g (Gᵢ − zᵢ)
 *
 * with E the energy grade, G the hydraulic grade, h `headLoss`, H `pumpHead`, V `velocity`, z `elevation`. Between
 * stations the pipe and both lines run straight, so the extremes of pressure lie at stations: give one at each high and
 * low point of the ground. At rest the line is level from `staticGrade`, raised by each pump's `shutoffHead`.
 *
 * Caution: at a station in the state "siphon" or "column separation" the flow supposed will not last; a line must be
 * laid lower, fed at a higher pressure, or made larger.
 *
 * @param input - the stations, the pressure at the start, the limits and the density, each with its range
 * @returns both lines, residual and static pressure and state at each station; sections; stretches above the line
 * @throws {@link units.InputError} naming the first field that is not a number in its range
 *
 * @example A line from a tank over a ridge that lies above the grade line
 * ```ts
 * import { gradeLines } from "risingmain/head";
 * import { feet, inPsi, kilogramsPerCubicMetre, psi, psia } from "risingmain/units";
 *
 * const lines = gradeLines({
 *   stations: [
 *     { name: "tank", distance: feet(0), elevation: feet(100) },
 *     { name: "ridge", distance: feet(400), elevation: feet(98), headLoss: feet(6) },
 *     { name: "trough", distance: feet(900), elevation: feet(40), headLoss: feet(8) },
 *   ],
 *   startPressure: psi(1), atmosphere: psia(13.2), vapourPressure: psia(0.18),
 *   density: kilogramsPerCubicMetre(999.7),
 * });
 * lines.stations[1]?.state; // => "siphon"
 * inPsi(lines.stations[2]?.pressure ?? psi(0)); // ≈ 20.94
 * ```
 *
 * @source derived: Bernoulli's equation from station to station
 */
export function gradeLines(input: GradeLinesInput): GradeLines {
  requireObject("input", input);
  const { startPressure, staticGrade, leastPressure = 0, atmosphere, vapourPressure, density } = input;
  requireList("stations", input.stations, 2, 10_000);
  requirePressure("startPressure", startPressure);
  if (staticGrade !== undefined) requireHead("staticGrade", staticGrade);
  requirePressure("leastPressure", leastPressure);
  requireWithin("atmosphere", atmosphere, 0, 1e6, "Pa");
  requireWithin("vapourPressure", vapourPressure, 0, 1e6, "Pa");
  requireDensity(density);
  const given = Array.from(input.stations, checked);
  given.forEach(refuseBackwards);

  const weight = density * STANDARD_GRAVITY;
  const first = given[0] as Station;
  const crests = highPoints(given);
  let energy = first.elevation + startPressure / weight + velocityHead(first);
  let still: number = staticGrade ?? energy;
  let tallest = Math.abs(energy);
  const stations = given.map((station, i): GradeStation => {
    energy += station.pumpHead - station.headLoss;
    still += station.shutoffHead;
    const grade = energy - velocityHead(station);
    const pressure = weight * (grade - station.elevation);
    tallest = Math.max(tallest, Math.abs(energy), Math.abs(station.elevation));
    return {
      name: station.name,
      distance: station.distance as Length,
      elevation: station.elevation as Length,
      hydraulicGrade: grade as Length,
      energyGrade: energy as Length,
      pressure: pressure as GaugePressure,
      staticPressure: (weight * (still - station.elevation)) as GaugePressure,
      highPoint: crests[i] === true,
      state: stateAt(pressure + ROUNDING * weight * tallest, leastPressure, vapourPressure - atmosphere),
    };
  });

  return {
    stations,
    sections: sectionsOf(stations),
    siphons: siphonsOf(stations),
    state: STATES[Math.max(...stations.map(({ state }) => STATES.indexOf(state)))] as GradeState,
  };
}

/** From good to bad. */
const STATES: readonly GradeState[] = ["full", "below limit", "siphon", "column separation"];

/** Share of the tallest height so far that rounding may take: an open end computed as −1e-12 Pa is not a siphon. */
const ROUNDING = 1e-9;

function stateAt(pressure: number, leastPressure: number, vapourGauge: number): GradeState {
  if (pressure <= vapourGauge) return "column separation";
  if (pressure < 0) return "siphon";
  return pressure < leastPressure ? "below limit" : "full";
}

type Station = { readonly [Field in keyof GradeStationInput]-?: Field extends "name" ? string : number };

function velocityHead({ velocity }: Station): number {
  return (velocity * velocity) / (2 * STANDARD_GRAVITY);
}

function checked(station: GradeStationInput, i: number): Station {
  const at = `stations[${i}]`;
  requireObject(at, station);
  const { name = "", distance, elevation, velocity = 0, headLoss = 0, pumpHead = 0 } = station;
  const { shutoffHead = pumpHead } = station;
  requireName(`${at}.name`, name);
  requireWithin(`${at}.distance`, distance, 0, 1e6, "m");
  requireHead(`${at}.elevation`, elevation);
  requireWithin(`${at}.velocity`, velocity, 0, 1000, "m/s");
  // Nothing lies before the first station that could lose or add head.
  const most = i === 0 ? 0 : 1e6;
  requireWithin(`${at}.headLoss`, headLoss, 0, most, "m");
  requireWithin(`${at}.pumpHead`, pumpHead, 0, most, "m");
  requireWithin(`${at}.shutoffHead`, shutoffHead, 0, most, "m");
  return { name, distance, elevation, velocity, headLoss, pumpHead, shutoffHead };
}

function refuseBackwards({ distance }: Station, i: number, stations: readonly Station[]): void {
  const before = stations[i - 1]?.distance ?? 0;
  if (distance < before)
    throw new InputError(`stations[${i}].distance`, distance, `at least ${before} m, as before it`);
}
