/**
 * Where the charts stand: emptied with every answer, filled again when the typing pauses.
 *
 * @module
 */
import type { Plan, UnitSystem } from "../../src/plan/index.ts";
import type { ChartLook, DrawCharts } from "./charts.ts";
import { byId, h } from "./dom.ts";

declare global {
  /** Set by the script of the charts once it has run. */
  var drawCharts: DrawCharts | undefined;
}

/** Charts take longer than a keystroke; they wait for a pause. */
const DRAW_AFTER = 350;
/** Widths the charts are made for, px. */
const NARROWEST = 280;
const WIDEST = 720;

let waiting: ReturnType<typeof setTimeout> | undefined;
/** Counts the plans, so that charts of an older one are never put on the page. */
let turn = 0;
let loading: Promise<DrawCharts> | undefined;

/** Takes the charts away at once, and draws those of the plan when nothing else has been typed for a moment. */
export function chartsFor(plan: Plan | null, units: UnitSystem): void {
  const mine = ++turn;
  clearTimeout(waiting);
  const place = byId("charts");
  // The room stays while a plan follows, so that the page does not jump.
  place.style.minHeight = plan === null ? "" : `${place.offsetHeight}px`;
  place.replaceChildren();
  if (plan === null) return;
  waiting = setTimeout(() => {
    void drawn(plan, units, isDark() ? "dark" : "light").then((charts) => {
      if (mine !== turn) return;
      place.replaceChildren(...charts);
      place.style.minHeight = "";
    });
  }, DRAW_AFTER);
}

/** Draws the charts of the plan in dark ink for paper, now. */
export async function chartsForPaper(plan: Plan, units: UnitSystem): Promise<void> {
  const mine = ++turn;
  clearTimeout(waiting);
  const charts = await drawn(plan, units, "light");
  if (mine === turn) byId("charts").replaceChildren(...charts);
}

async function drawn(plan: Plan, units: UnitSystem, paper: ChartLook["paper"]): Promise<readonly HTMLElement[]> {
  try {
    loading ??= load();
    const draw = await loading;
    const width = Math.min(WIDEST, Math.max(NARROWEST, byId("charts").clientWidth));
    return [h("h3", {}, "Charts"), ...(await draw(plan, { units, paper, width }))];
  } catch (error) {
    loading = undefined;
    return [h("p", { class: "hint" }, `The charts could not be drawn: ${(error as Error).message}`)];
  }
}

/** Runs the script of the charts: from the page itself where it holds it, else from beside it. */
function load(): Promise<DrawCharts> {
  const held = document.getElementById("charts-script");
  const script = document.createElement("script");
  return new Promise((resolve, reject) => {
    const done = (): void => {
      if (globalThis.drawCharts === undefined) reject(new Error("their script did not run"));
      else resolve(globalThis.drawCharts);
    };
    if (held !== null) {
      script.textContent = held.textContent;
      document.head.append(script);
      done();
      return;
    }
    script.addEventListener("load", done);
    script.addEventListener("error", () => reject(new Error("their script could not be loaded")));
    script.src = "worksheet-charts.js";
    document.head.append(script);
  });
}

function isDark(): boolean {
  return getComputedStyle(document.documentElement).colorScheme === "dark";
}
