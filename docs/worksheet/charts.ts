/**
 * The charts of a plan, drawn: a script of its own, loaded after the page.
 *
 * @module
 */
import { parse, View } from "vega";
import { compile, type TopLevelSpec } from "vega-lite";
import type { Plan, UnitSystem } from "../../src/plan/index.ts";
import { chartsOf } from "../../src/plot/index.ts";
import { h } from "./dom.ts";

/** How charts are drawn. */
export interface ChartLook {
  readonly units: UnitSystem;
  readonly paper: "light" | "dark";
  /** Width they have, px. */
  readonly width: number;
}

/** The charts of the plan, each with its words for those who cannot see it. */
export type DrawCharts = (plan: Plan, look: ChartLook) => Promise<readonly HTMLElement[]>;

const drawCharts: DrawCharts = async (plan, look) => {
  const figures: HTMLElement[] = [];
  for (const chart of Object.values(chartsOf(plan, look))) {
    if (chart === null) continue;
    const figure = h("figure", { role: "img", "aria-label": chart.description });
    // The page's own paper shows through.
    const spec = compile({ ...chart, background: null } as unknown as TopLevelSpec).spec;
    const view = new View(parse(spec), { renderer: "svg", container: figure, hover: false });
    await view.runAsync();
    // A picture from here on: nothing in it moves.
    view.finalize();
    figures.push(figure);
  }
  return figures;
};

Object.assign(globalThis, { drawCharts });
