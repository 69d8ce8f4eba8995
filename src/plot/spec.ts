/**
 * What a chart is: a Vega-Lite specification as plain data, with its numbers inside.
 *
 * @module
 */
import type { UnitSystem } from "../plan/index.ts";

/** What JSON carries. */
export type JsonValue = string | number | boolean | null | readonly JsonValue[] | JsonObject;

/** An object that JSON carries. */
export interface JsonObject {
  /** A part of it. */
  readonly [part: string]: JsonValue;
}

/** A Vega-Lite specification, version 6: plain data for any program that reads the open standard. */
export interface ChartSpec extends JsonObject {
  /** The name of the standard and its version. */
  readonly $schema: string;
  /** What the chart shows, with the figures a reader looks for first. */
  readonly title: JsonObject;
  /** The chart in words, for those who cannot see it. */
  readonly description: string;
  /** Colour of the paper. Set it to null for none. */
  readonly background: string;
}

/** How a chart is drawn. */
export interface ChartOptions {
  /** US customary or metric; US where left out. */
  readonly units?: UnitSystem;
  /** What it is shown on: dark ink on light paper where left out, or light ink on dark. */
  readonly paper?: "light" | "dark";
  /** Width of the whole chart in pixels, 240 to 4000; 560 where left out. */
  readonly width?: number;
  /** Height of the plot, its title and key not counted, in pixels, 60 to 4000; 260 where left out. */
  readonly height?: number;
}
