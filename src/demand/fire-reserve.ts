/**
 * Water kept for a fire, as published for farms and as asked of small stations.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Duration, Volume, VolumeFlow } from "../units/index.ts";

/** A fire stream and its time. */
export interface FireReserveInput {
  /** Flow of the stream. 0 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** How long it must run. 0 to 24 h; 2 h where left out. */
  readonly time?: Duration;
  /** What the well gives meanwhile, if the power can be counted on. 0 to 1000 m³/s; 0 where left out. */
  readonly wellFlow?: VolumeFlow;
}

/** The reserve. */
export interface FireReserve {
  /** Water to keep in store, m³. */
  readonly volume: Volume;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

const CAUTIONS: readonly Caution[] = [
  {
    code: "fire-authority",
    text: "A private well is no fire service. Ask the fire authority what it needs, at what fitting, and keep a supply that does not depend on mains power.",
    basis: "common practice",
  },
];

/**
 * Storage for a fire stream.
 *
 * @remarks
 * V = (q − q_well) t, not under 0. Published criteria lie far apart: 10 gpm for 2 h (1200 gal), or 20 gpm at 60 psi for useful
 * control of a farm fire, both on one page; 1000 gpm for 2 h for a small wooden building at a military station.
 *
 * @param input - flow, time and the well's part; each field says its unit and range
 * @returns the reserve and the caution
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { fireReserve } from "risingmain/demand";
 * import { gpm, hours, inUsGallons } from "risingmain/units";
 *
 * inUsGallons(fireReserve({ flow: gpm(10), time: hours(2) }).volume); // ≈ 1200.0
 * ```
 *
 * @source broz-g1801, first page and table 1
 * @source tm-5-813-7, 1-3
 */
export function fireReserve(input: FireReserveInput): FireReserve {
  requireObject("input", input);
  const { flow, time = 7200, wellFlow = 0 } = input;
  requireWithin("flow", flow, 0, 1000, "m³/s");
  requireWithin("time", time, 0, 86_400, "s");
  requireWithin("wellFlow", wellFlow, 0, 1000, "m³/s");
  return { volume: (Math.max(flow - wellFlow, 0) * time) as Volume, cautions: CAUTIONS };
}
