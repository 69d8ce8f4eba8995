/**
 * Pumping chlorinated water out of a well and its lines: volumes and times at a flow.
 *
 * @module
 */
import { requireObject, requireWithin } from "../numeric/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Concentration, Duration, Volume, VolumeFlow } from "../units/index.ts";

/** Chlorinated water to be pumped out. */
export interface FlushInput {
  /** Chlorinated water. 0 to 100 000 m³. */
  readonly volume: Volume;
  /** Flow to waste. 1e-6 to 1000 m³/s. */
  readonly flow: VolumeFlow;
  /** Chlorine in it. 1e-6 to 10 kg/m³. */
  readonly from: Concentration;
  /** Chlorine to come down to. 1e-9 kg/m³ to `from`. */
  readonly to: Concentration;
  /** What the well can give without drawing down too far, 0 to 1000 m³/s; not judged where left out. */
  readonly wellYield?: VolumeFlow;
}

/** How much to pump, and how long. */
export interface Flush {
  /** Least: the water itself, pushed out as a plug, m³. */
  readonly leastVolume: Volume;
  /** Time for it, s. */
  readonly leastTime: Duration;
  /** Most: the water as a stirred tank, thinned down by what flows in, m³. Never less than the least. */
  readonly mostVolume: Volume;
  /** Time for it, s. */
  readonly mostTime: Duration;
  /** True where the flow is more than the well's yield: flush more slowly. False where no yield was given. */
  readonly overYield: boolean;
  /** What to say with it. */
  readonly cautions: readonly Caution[];
}

const FLUSH_CAUTIONS: readonly Caution[] = [
  {
    code: "flush-away",
    text: "Send strong chlorine to waste where the local rule allows, through an outside hose first, away from septic system, stream, pond and garden. Dechlorinate it where it could reach them.",
    basis: "common practice",
  },
  {
    code: "over-pumping",
    text: "Watch the water level: do not draw a weak well down to the pump to be done sooner.",
    basis: "common practice",
  },
  {
    code: "no-drinking",
    text: "Do not drink, cook with or bathe in the water until chlorine is gone, a sample is clean and the health department's rule is met.",
    basis: "common practice",
  },
];

/**
 * Water and time to flush chlorine out of a well and its lines.
 *
 * @remarks
 * Between two bounds: a plug, V, and a stirred tank, V ln(C₀/C), with V `volume`, C₀ `from`, C `to`. A well behaves as
 * something between, and chlorine drawn into the rock comes back for days. Go by a test strip at the hose.
 *
 * @param input - the water, the flow and the concentrations; each field says its unit and range
 * @returns least and most volume and time, whether the flow is over the yield, and the cautions
 * @throws {@link units.InputError} naming the first field outside its range
 *
 * @example
 * ```ts
 * import { flush } from "risingmain/disinfection";
 * import { gpm, inMinutes, mgPerLitre, usGallons } from "risingmain/units";
 *
 * const out = flush({ volume: usGallons(200), flow: gpm(8), from: mgPerLitre(100), to: mgPerLitre(0.5) });
 * inMinutes(out.leastTime); // ≈ 25.0
 * inMinutes(out.mostTime); // ≈ 132.5
 * ```
 *
 * @source derived: plug flow and first-order wash-out of a stirred volume
 */
export function flush(input: FlushInput): Flush {
  requireObject("input", input);
  const { volume, flow, from, to, wellYield = flow } = input;
  requireWithin("volume", volume, 0, 1e5, "m³");
  requireWithin("flow", flow, 1e-6, 1000, "m³/s");
  requireWithin("from", from, 1e-6, 10, "kg/m³");
  requireWithin("to", to, 1e-9, from, "kg/m³ (at most the concentration it starts from)");
  requireWithin("wellYield", wellYield, 0, 1000, "m³/s");
  const most = volume * Math.max(1, Math.log(from / to));
  return {
    leastVolume: volume,
    leastTime: (volume / flow) as Duration,
    mostVolume: most as Volume,
    mostTime: (most / flow) as Duration,
    overYield: flow > wellYield,
    cautions: FLUSH_CAUTIONS,
  };
}
