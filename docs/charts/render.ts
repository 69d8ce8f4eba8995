/**
 * Charts as SVG, without a browser: the same bytes on every machine.
 */
import type { ChartSpec } from "risingmain/plot";
import * as vega from "vega";
import { compile, type TopLevelSpec } from "vega-lite";

/** A chart drawn, and what compiler and view had to say against it. */
export interface Drawn {
  readonly svg: string;
  readonly warnings: readonly string[];
}

/** What measures letters; vega exports it, its types do not. Without a canvas it is a rough guess. */
const { textMetrics } = vega as unknown as {
  textMetrics: {
    width: (item: { readonly fontSize?: number; readonly fontWeight?: unknown }, text: unknown) => number;
  };
};

/** Draws a specification. */
export async function draw(spec: ChartSpec | (Omit<ChartSpec, "background"> & { background: null })): Promise<Drawn> {
  const warnings: string[] = [];
  const logger = loggerTo(warnings);
  const { width } = textMetrics;
  textMetrics.width = (item, text) => widthOf(text, item.fontSize ?? 11, item.fontWeight === "bold");
  try {
    const compiled = compile(spec as unknown as TopLevelSpec, { logger }).spec;
    const view = new vega.View(vega.parse(compiled), { renderer: "none", logger });
    const svg = await view.toSVG();
    view.finalize();
    return { svg: `${svg}\n`, warnings };
  } finally {
    textMetrics.width = width;
  }
}

function loggerTo(warnings: string[]): vega.LoggerInterface {
  const note = (...texts: readonly unknown[]): vega.LoggerInterface => {
    warnings.push(texts.map(String).join(" "));
    return logger;
  };
  const quiet = (): vega.LoggerInterface => logger;
  const logger = {
    level: quiet,
    error: note,
    warn: note,
    info: quiet,
    debug: quiet,
  } as unknown as vega.LoggerInterface;
  return logger;
}

/** Widths of the letters of Helvetica from the space to "~", thousandths of their height (Adobe's metrics, from memory). */
const WIDTHS = [
  [278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278],
  [556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556],
  [1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778],
  [667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556],
  [333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556],
  [556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584],
].flat();
const OTHER = 556;
/** Bold letters are wider by about this. */
const BOLD = 1.06;

function widthOf(text: unknown, size: number, bold: boolean): number {
  const thousandths = [...String(text)].reduce((sum, letter) => sum + (WIDTHS[letter.charCodeAt(0) - 32] ?? OTHER), 0);
  return Math.round((thousandths * size * (bold ? BOLD : 1)) / 1000);
}
