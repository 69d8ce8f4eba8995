/**
 * The histories that a simulation keeps at its probes.
 *
 * @module
 */
import type { GaugePressure, Length, VolumeFlow } from "../units/index.ts";
import type { LineGrid } from "./line-grid.ts";
import type { LineState } from "./line-state.ts";
import type { SurgeHistory } from "./simulation-types.ts";

/** A history being written. */
export interface Keeper {
  /** Adds the line's present state. */
  readonly note: (line: LineState) => void;
  /** What was written. */
  readonly history: SurgeHistory;
}

/** Starts a history at the node nearest to a distance, in water of the given specific weight, N/m³. */
export function keepHistory(grid: LineGrid, distance: number, weight: number): Keeper {
  const node = nearest(grid.distance, distance);
  const heads: Length[] = [];
  const pressures: GaugePressure[] = [];
  const flows: VolumeFlow[] = [];
  return {
    history: { distance: grid.distance[node] as Length, heads, pressures, flows },
    note: ({ now }) => {
      const head = now.head[node] as number;
      heads.push(head as Length);
      pressures.push((weight * (head - (grid.elevation[node] as number))) as GaugePressure);
      flows.push(now.leaving[node] as VolumeFlow);
    },
  };
}

function nearest(distances: Float64Array, distance: number): number {
  let best = 0;
  for (let i = 1; i < distances.length; i++) {
    const off = Math.abs((distances[i] as number) - distance);
    if (off < Math.abs((distances[best] as number) - distance)) best = i;
  }
  return best;
}
