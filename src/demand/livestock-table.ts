/**
 * Water drunk by livestock, US gallons a head a day.
 *
 * Low and high: University of New Hampshire Cooperative Extension, *Water Conservation and Use on Dairy and Livestock
 * Farms*, livestock table (credited there to MWPS-14), read in a re-posted copy (`unh-livestock-water`). Where two of its
 * editions disagree (poultry) the larger, safe figure stands. Pasture: Alberta Agriculture, Agdex 716 (C44), table 1. Bull: federal figures repeated by a secondary site
 * (`federal-livestock-figures`). Horse: low from Kansas State (`kstate-livestock-water`), high from the federal figures.
 *
 * @module
 */

/** Kinds of livestock with a published daily use. */
export type LivestockKind =
  | "milking cow"
  | "dry cow"
  | "heifer"
  | "calf"
  | "beef cow"
  | "nursing beef cow"
  | "bull"
  | "cow and calf, on pasture"
  | "yearling, on pasture"
  | "horse"
  | "nursing mare"
  | "finishing pig"
  | "nursery pig"
  | "gestating sow"
  | "sow and litter"
  | "sheep"
  | "goat"
  | "llama"
  | "broiler"
  | "layer"
  | "turkey";

/** A row: cool-weather and hot-weather use. */
export interface LivestockUse {
  /** Printed low end, US gal a head a day. */
  readonly low: number;
  /** Printed high end, US gal a head a day. */
  readonly high: number;
  /** Source id. */
  readonly source: string;
  /** True where the two figures are Imperial gallons. */
  readonly imperial?: true;
}

/** Printed ranges, US gal a head a day unless said otherwise. */
export const LIVESTOCK: Readonly<Record<LivestockKind, LivestockUse>> = {
  "milking cow": { low: 35, high: 45, source: "unh-livestock-water" },
  "dry cow": { low: 20, high: 30, source: "unh-livestock-water" },
  heifer: { low: 10, high: 15, source: "unh-livestock-water" },
  calf: { low: 6, high: 10, source: "unh-livestock-water" },
  "beef cow": { low: 6, high: 15, source: "kstate-livestock-water" },
  "nursing beef cow": { low: 11, high: 18, source: "kstate-livestock-water" },
  bull: { low: 7, high: 19, source: "federal-livestock-figures" },
  "cow and calf, on pasture": { low: 15, high: 15, source: "alberta-pasture-pipeline", imperial: true },
  "yearling, on pasture": { low: 10, high: 10, source: "alberta-pasture-pipeline", imperial: true },
  horse: { low: 10, high: 20, source: "federal-livestock-figures" },
  "nursing mare": { low: 20, high: 25, source: "federal-livestock-figures" },
  "finishing pig": { low: 3, high: 5, source: "unh-livestock-water" },
  "nursery pig": { low: 1, high: 1, source: "unh-livestock-water" },
  "gestating sow": { low: 6, high: 6, source: "unh-livestock-water" },
  "sow and litter": { low: 8, high: 8, source: "unh-livestock-water" },
  sheep: { low: 2, high: 2, source: "unh-livestock-water" },
  goat: { low: 2, high: 4, source: "unh-livestock-water" },
  llama: { low: 3, high: 5, source: "unh-livestock-water" },
  broiler: { low: 0.15, high: 0.2, source: "unh-livestock-water" },
  layer: { low: 0.15, high: 0.15, source: "unh-livestock-water" },
  turkey: { low: 0.2, high: 0.2, source: "unh-livestock-water" },
};
