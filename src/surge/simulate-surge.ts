/**
 * A surge followed in time along a line of pipes: the method of characteristics.
 *
 * @module
 */
import { STANDARD_GRAVITY } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Duration, GaugePressure, Length, Velocity, Volume, VolumeFlow } from "../units/index.ts";
import { type EndNode, settledEnd, tankSwing } from "./end-node.ts";
import { keepHistory } from "./history.ts";
import { type LineGrid, lineGrid } from "./line-grid.ts";
import { type LineState, settledLine, stepLine } from "./line-state.ts";
import { checkSimulation, stepsWithin, USUAL_REACHES } from "./simulation-input.ts";
import type {
  CheckValveMotion,
  ColumnSeparation,
  SurgeEnvelopePoint,
  SurgeSimulation,
  SurgeSimulationInput,
} from "./simulation-types.ts";
import { steadyStart } from "./steady-start.ts";

/** A cavity is taken as small against its reach up to this share (`wylie-streeter-1993`, chapter 8). */
const LARGEST_CAVITY_SHARE = 0.1;
/** Wave speeds are known no better than this, so the grid may move them so far (`wylie-streeter-1993`, chapter 3). */
const LARGEST_WAVE_SPEED_SHIFT = 0.15;

/** What to show beside a simulated surge. */
const SIMULATION_CAUTIONS: readonly Caution[] = [
  {
    code: "surge-simulation",
    text: "A simulated surge shows what governs and what helps. A long or high-pressure line, or one whose water column parts, needs an engineer who does such lines.",
    basis: "common practice",
  },
];

/**
 * Follows a surge along a line: a pump that stops, a check valve, a valve that opens or shuts, an air-charged tank.
 *
 * @remarks
 * C⁺: H_P = H_A + B Q_A − Q_P (B + R |Q_A|);  C⁻: H_P = H_B − B Q_B + Q_P (B + R |Q_B|)
 *
 * with B = a/(g A), R = f Δx/(2 g D A²), on reaches of Δx = a Δt (Courant number 1), where the equations hold exactly but
 * for friction. The line starts from its steady flow. Where the head falls to the vapour pressure it stays there and a
 * cavity opens (discrete vapour cavities); when one closes, the rise that follows is a fair estimate while cavities stay
 * below a tenth of a reach. Left out: friction beyond its steady value (real surges die out faster), free air, the
 * pipe's own movement, and the slow yield of plastic. Peaks of a first wave are good to the wave speed, some 5 to 10 %.
 *
 * Caution: use it to see what governs and what helps. A long or high-pressure line, or one whose column parts, is work
 * for an engineer who does such lines.
 *
 * @param input - pipes, ends, water and air, and how long and how finely to look
 * @returns extremes along the line, histories at the probes, cavities, check valve and tanks, and the cautions to show with
 * them; or where the steady flow before the event would already boil
 * @throws {@link units.InputError} naming the first field that is not in its range, ends that contradict one another, or
 * a run of more than 200 000 steps, 20 million points or 2 million kept values
 *
 * @example A well pump loses power: the swing at its check valve
 * ```ts
 * import { simulateSurge } from "risingmain/surge";
 * import { cubicMetresPerSecond, inMetres, kilogramsPerCubicMetre, metres, metresPerSecond } from "risingmain/units";
 * import { millimetres, pascalsAbsolute, seconds } from "risingmain/units";
 *
 * const surge = simulateSurge({
 *   pipes: [{
 *     length: metres(300), insideDiameter: millimetres(35), waveSpeed: metresPerSecond(330),
 *     frictionFactor: 0.02, endElevation: metres(60),
 *   }],
 *   startElevation: metres(0),
 *   start: {
 *     kind: "pump", sourceHead: metres(5), shutoffHead: metres(130), ratedFlow: cubicMetresPerSecond(0.001),
 *     ratedHead: metres(100), stopTime: seconds(0.5), halfSpeedTime: seconds(0.05), checkValveDelay: seconds(0),
 *   },
 *   end: { kind: "fixed head", head: metres(90) },
 *   density: kilogramsPerCubicMetre(999.7), vapourPressure: pascalsAbsolute(1228), atmosphere: pascalsAbsolute(101325),
 *   duration: seconds(6),
 * });
 * const atValve = surge.state === "followed" ? surge.envelope[0] : undefined;
 * inMetres(atValve?.lowestHead ?? metres(0)); // ≈ 52.74
 * inMetres(atValve?.highestHead ?? metres(0)); // ≈ 120.45
 * ```
 *
 * @example A hydrant shut in half a second, with a small air-charged tank beside it
 * ```ts
 * import { simulateSurge } from "risingmain/surge";
 * import { cubicMetresPerSecond, inKilopascals, kilogramsPerCubicMetre, kilopascals, litres } from "risingmain/units";
 * import { metres, metresPerSecond, millimetres, pascalsAbsolute, seconds } from "risingmain/units";
 *
 * const line = {
 *   pipes: [{
 *     length: metres(200), insideDiameter: millimetres(38), waveSpeed: metresPerSecond(330),
 *     frictionFactor: 0.021, endElevation: metres(-5),
 *   }],
 *   startElevation: metres(0), start: { kind: "fixed head", head: metres(42) },
 *   density: kilogramsPerCubicMetre(999.7), vapourPressure: pascalsAbsolute(1228), atmosphere: pascalsAbsolute(101325),
 *   duration: seconds(8),
 * } as const;
 * const hydrant = {
 *   kind: "valve", outletHead: metres(-4), ratedFlow: cubicMetresPerSecond(0.0012), ratedHeadLoss: metres(30),
 *   openings: [{ time: seconds(0), opening: 1 }, { time: seconds(0.5), opening: 0 }],
 * } as const;
 * const airTank = {
 *   volume: litres(20), precharge: kilopascals(150), exponent: 1.2, connectionDiameter: millimetres(25), connectionLoss: 3,
 * };
 * const bare = simulateSurge({ ...line, end: hydrant });
 * const tamed = simulateSurge({ ...line, end: { ...hydrant, airTank } });
 * bare.state === "followed" ? inKilopascals(bare.highestPressure) : Number.NaN; // ≈ 839.4
 * tamed.state === "followed" ? inKilopascals(tamed.highestPressure) : Number.NaN; // ≈ 568.8
 * ```
 *
 * @source wylie-streeter-1993, chapters 3 and 8 (from memory)
 */
export function simulateSurge(input: SurgeSimulationInput): SurgeSimulation {
  checkSimulation(input);
  const { pipes, startElevation, reaches = USUAL_REACHES, probes = [], duration, atmosphere } = input;
  const grid = lineGrid(pipes, startElevation, Math.max(reaches, pipes.length));
  const nodes = grid.distance.length;
  const steps = stepsWithin(duration, grid.timeStep, nodes, probes.length);
  const steady = steadyStart(input, grid);

  const weight = input.density * STANDARD_GRAVITY;
  const boilingHeads = grid.elevation.map((z) => z + (input.vapourPressure - atmosphere) / weight);
  const worst = mostShort(steady.heads, boilingHeads);
  if (worst.short > 0) {
    return { state: "cannot start", distance: grid.distance[worst.node] as Length, short: worst.short as Length };
  }

  const settled = (at: "start" | "end", i: number, into: number): EndNode =>
    settledEnd(
      {
        end: input[at],
        at,
        site: { elevation: grid.elevation[i] as number, weight, atmosphere },
        boilingHead: boilingHeads[i] as number,
      },
      { head: steady.heads[i] as number, into },
    );
  const ends = [settled("start", 0, steady.flow), settled("end", nodes - 1, 0 - steady.flow)] as const;
  const line = settledLine(steady, boilingHeads);
  const keepers = Array.from(probes, (probe) => keepHistory(grid, probe, weight));

  for (const { note } of keepers) note(line);
  for (let step = 1; step <= steps; step++) {
    stepLine(line, grid, ends, step * grid.timeStep);
    for (const { note } of keepers) note(line);
  }

  const envelope = envelopeOf(line, grid, steady.heads, weight);
  return {
    state: "followed",
    startFlow: steady.flow as VolumeFlow,
    timeStep: grid.timeStep as Duration,
    steps,
    envelope,
    histories: keepers.map(({ history }) => history),
    highestPressure: Math.max(...envelope.map((point) => point.highestPressure)) as GaugePressure,
    lowestPressure: Math.min(...envelope.map((point) => point.lowestPressure)) as GaugePressure,
    ...separationOf(line, grid),
    ...checkValveOf(ends[0], grid),
    airTanks: ends.flatMap(tankSwing),
    waveSpeedShift: grid.waveSpeedShift,
    method: "wylie-streeter-1993",
    insideRange: line.largestShare <= LARGEST_CAVITY_SHARE && grid.waveSpeedShift <= LARGEST_WAVE_SPEED_SHIFT,
    cautions: SIMULATION_CAUTIONS,
  };
}

/** The node whose steady head lies lowest against its boiling head. */
function mostShort(heads: Float64Array, boilingHeads: Float64Array): { readonly node: number; readonly short: number } {
  let node = 0;
  let short = -Infinity;
  for (const [i, boiling] of boilingHeads.entries()) {
    const lacks = boiling - (heads[i] as number);
    if (lacks > short) [node, short] = [i, lacks];
  }
  return { node, short };
}

function envelopeOf(
  line: LineState,
  grid: LineGrid,
  startHeads: Float64Array,
  weight: number,
): readonly SurgeEnvelopePoint[] {
  return Array.from(grid.distance, (distance, i) => {
    const elevation = grid.elevation[i] as number;
    const highest = line.highest[i] as number;
    const lowest = line.lowest[i] as number;
    return {
      distance: distance as Length,
      elevation: elevation as Length,
      startHead: startHeads[i] as Length,
      highestHead: highest as Length,
      lowestHead: lowest as Length,
      highestPressure: (weight * (highest - elevation)) as GaugePressure,
      lowestPressure: (weight * (lowest - elevation)) as GaugePressure,
    };
  });
}

function separationOf(line: LineState, grid: LineGrid): { readonly columnSeparation?: ColumnSeparation } {
  if (line.firstCavity === undefined) return {};
  const { node, time } = line.firstCavity;
  return {
    columnSeparation: {
      time: time as Duration,
      distance: grid.distance[node] as Length,
      largestCavity: line.largestCavity as Volume,
    },
  };
}

function checkValveOf({ shut }: EndNode, { firstArea }: LineGrid): { readonly checkValve?: CheckValveMotion } {
  if (shut === undefined) return {};
  return {
    checkValve: { time: shut.time as Duration, reverseVelocity: (Math.abs(shut.flow) / firstArea) as Velocity },
  };
}
