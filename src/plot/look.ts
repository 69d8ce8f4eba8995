/**
 * The look all charts share: a plain document's.
 *
 * @module
 */
import { requireObject, requireOneOf, requireWithin } from "../numeric/index.ts";
import type { UnitSystem } from "../plan/index.ts";
import { DASHES, LINE_COLOURS } from "./palette.ts";
import type { ChartOptions, ChartSpec, JsonObject, JsonValue } from "./spec.ts";

/** Options with everything settled. */
export interface Look {
  readonly units: UnitSystem;
  readonly width: number;
  readonly height: number;
  /** Colour of texts, axes and marks without a name. */
  readonly ink: string;
  /** Colour of what lies behind: grids and shaded parts. */
  readonly faint: string;
  readonly paper: string;
  /** Colours of lines, in turn. */
  readonly colours: readonly string[];
}

const PAPERS = {
  light: { ink: "#1A1A1A", faint: "#8C8C8C", paper: "#FFFFFF" },
  dark: { ink: "#E8E8E8", faint: "#808080", paper: "#1E1E1E" },
} as const;

/** Letters of axes and keys, px: legible on a phone. */
const LETTERS = 13;
const TITLE_LETTERS = 16;
/** Mean width of a letter as a share of its height, for breaking lines. */
const LETTER_WIDTH = 0.5;
/** Room left of the plot for the numbers of its axis, px. */
const AXIS_ROOM = 48;
/** Where the title of a vertical axis ends, px above the plot. */
const AXIS_TITLE_RISE = 9;

/** Reads the options of a chart, and refuses what is none. */
export function readOptions(options: ChartOptions): Look {
  requireObject("options", options);
  const { units = "us", paper = "light", width = 560, height = 260 } = options;
  requireOneOf("options.units", units, ["us", "metric"]);
  requireOneOf("options.paper", paper, ["light", "dark"]);
  requireWithin("options.width", width, 240, 4000, "px");
  requireWithin("options.height", height, 60, 4000, "px");
  return { units, width, height, ...PAPERS[paper], colours: LINE_COLOURS[paper] };
}

/** Words of a chart. */
export interface ChartWords {
  /** What it shows. */
  readonly title: string;
  /** The figures a reader looks for first. */
  readonly subtitle: string;
  /** The chart in words. */
  readonly description: string;
}

/** One chart: its layers in one frame. */
export function singleChart(look: Look, words: ChartWords, layer: readonly JsonValue[]): ChartSpec {
  return {
    ...head(look, words),
    width: look.width,
    height: look.height,
    autosize: { type: "fit-x", contains: "padding" },
    layer,
    config: config(look),
  };
}

/** Several frames, one above the other, with one horizontal axis. */
export function stackedChart(look: Look, words: ChartWords, frames: readonly JsonObject[]): ChartSpec {
  const width = look.width - AXIS_ROOM - 2 * PADDING - RIGHT_ROOM;
  return {
    ...head(look, words),
    vconcat: frames.map((frame) => ({ width, ...frame })),
    spacing: 34,
    config: config(look),
  };
}

const PADDING = 8;
/** Half a number of the horizontal axis reaches past the frame. */
const RIGHT_ROOM = 14;

function head({ paper, width }: Look, { title, subtitle, description }: ChartWords) {
  return {
    $schema: "https://vega.github.io/schema/vega-lite/v6.json",
    title: {
      text: wrapped(title, width / (TITLE_LETTERS * LETTER_WIDTH)),
      subtitle: wrapped(subtitle, width / (LETTERS * LETTER_WIDTH)),
    },
    description,
    background: paper,
    padding: PADDING,
  };
}

function config({ ink, faint }: Look): JsonObject {
  return {
    font: "Helvetica, Arial, sans-serif",
    view: { stroke: null },
    title: {
      anchor: "start",
      frame: "bounds",
      color: ink,
      fontSize: TITLE_LETTERS,
      fontWeight: "bold",
      subtitleColor: ink,
      subtitleFontSize: LETTERS,
      subtitlePadding: 5,
      lineHeight: TITLE_LETTERS + 4,
      subtitleLineHeight: LETTERS + 4,
      offset: 12,
    },
    axis: {
      domainColor: ink,
      tickColor: ink,
      labelColor: ink,
      titleColor: ink,
      gridColor: faint,
      gridOpacity: 0.35,
      labelFontSize: LETTERS,
      titleFontSize: LETTERS,
      titleFontWeight: "normal",
      labelOverlap: true,
      labelFlush: false,
    },
    axisX: { grid: false, tickCount: 6, titlePadding: 8 },
    axisY: {
      domain: false,
      tickCount: 6,
      minExtent: AXIS_ROOM,
      // Read without turning the head: above the axis, from its left.
      titleAngle: 0,
      titleAlign: "left",
      titleBaseline: "bottom",
      titleX: -AXIS_ROOM,
      titleY: -AXIS_TITLE_RISE,
    },
    legend: {
      orient: "bottom",
      title: null,
      labelColor: ink,
      labelFontSize: LETTERS,
      labelLimit: 300,
      symbolSize: 900,
      symbolStrokeWidth: 2.5,
      rowPadding: 4,
      columnPadding: 18,
    },
    text: { fontSize: LETTERS, color: ink },
    line: { strokeWidth: 2.5, strokeCap: "butt", color: ink },
    rule: { color: ink },
    point: { size: 70, filled: true, opacity: 1, color: ink },
  };
}

/** A text in lines of about so many letters, broken between words; one text where it fits. */
function wrapped(text: string, letters: number): string | readonly string[] {
  const lines: string[] = [];
  // A number stays with its unit.
  for (const word of text.split(/(?<!\d) /)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines.length > 1 ? lines : (lines[0] ?? "");
}

/** Named lines: colour and dash by name, in the order given, and the key to them. */
export function byName(
  { width, colours }: Look,
  names: readonly string[],
  field = "line",
): { readonly color: JsonObject; readonly strokeDash: JsonObject } {
  const longest = Math.max(...names.map((name) => name.length));
  const columns = Math.max(1, Math.min(names.length, Math.floor(width / ((longest + 6) * LETTERS * LETTER_WIDTH))));
  // A single line is named by the title.
  const legend = names.length === 1 ? null : { columns, symbolType: "stroke" };
  const take = <T>(list: readonly T[]): readonly T[] => names.map((_, i) => list[i % list.length] as T);
  return {
    color: { field, type: "nominal", scale: { domain: names, range: take(colours) }, legend },
    strokeDash: { field, type: "nominal", scale: { domain: names, range: take(DASHES) }, legend },
  };
}

/** A layer of points at `x` and `y`; none where there are none, which a renderer would warn of. */
export function pointLayer(
  values: readonly JsonObject[],
  { x, y }: { readonly x: JsonObject; readonly y: JsonObject },
  mark: JsonObject = {},
): readonly JsonObject[] {
  if (values.length === 0) return [];
  return [{ data: { values }, mark: { type: "point", tooltip: true, ...mark }, encoding: { x, y } }];
}
