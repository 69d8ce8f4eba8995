/**
 * The shape of a profile: its high points, its sections, and the stretches that lie above the hydraulic grade line.
 *
 * @module
 */
import type { GaugePressure, Length } from "../units/index.ts";
import type { GradeSection, GradeStation, SiphonReach } from "./grade-line-types.ts";

/** For each station, whether the pipe comes up to it (or to its level stretch) and goes down after. */
export function highPoints(stations: readonly { readonly elevation: number }[]): readonly boolean[] {
  const level = (i: number): number => (stations[i] as { elevation: number }).elevation;
  const cameUp: boolean[] = [];
  let up = false;
  for (let i = 0; i < stations.length; i++) {
    if (i > 0 && level(i) !== level(i - 1)) up = level(i) > level(i - 1);
    cameUp.push(up);
  }
  const crests: boolean[] = [];
  let down = false;
  for (let i = stations.length - 1; i >= 0; i--) {
    if (i < stations.length - 1 && level(i) !== level(i + 1)) down = level(i) > level(i + 1);
    crests.push(down && cameUp[i] === true);
  }
  return crests.reverse();
}

/** The pieces between neighbouring stations. Pressure runs straight between them, so its extremes are at the ends. */
export function sectionsOf(stations: readonly GradeStation[]): readonly GradeSection[] {
  return pairs(stations).map(([a, b], i) => ({
    from: i,
    to: i + 1,
    length: (b.distance - a.distance) as Length,
    highestPressure: Math.max(a.pressure, b.pressure, a.staticPressure, b.staticPressure) as GaugePressure,
    lowestPressure: Math.min(a.pressure, b.pressure) as GaugePressure,
  }));
}

/** The stretches where the pipe lies above the hydraulic grade line. */
export function siphonsOf(stations: readonly GradeStation[]): readonly SiphonReach[] {
  const above = ({ state }: GradeStation): boolean => state === "siphon" || state === "column separation";
  const reaches: SiphonReach[] = [];
  const first = stations[0] as GradeStation;
  let start: number | undefined = above(first) ? first.distance : undefined;
  for (const [a, b] of pairs(stations)) {
    if (above(a) === above(b)) continue;
    // The gauge pressure passes 0 in this section.
    const crossing =
      a.distance + (b.distance - a.distance) * Math.min(1, Math.abs(a.pressure / (a.pressure - b.pressure)));
    if (start === undefined) {
      start = crossing;
    } else {
      reaches.push({ start: start as Length, end: crossing as Length });
      start = undefined;
    }
  }
  if (start !== undefined) reaches.push({ start: start as Length, end: stations.at(-1)?.distance as Length });
  return reaches;
}

function pairs(stations: readonly GradeStation[]): readonly (readonly [GradeStation, GradeStation])[] {
  return stations.slice(1).map((station, i) => [stations[i] as GradeStation, station]);
}
