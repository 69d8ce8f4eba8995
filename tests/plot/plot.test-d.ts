import { type ChartSpec, chartsOf, dayChart, frictionChart, type PlanCharts, startsChart } from "risingmain/plot";
import { gpm, psi, squareMetresPerSecond, usGallons } from "risingmain/units";
import { pipes, plan, run, tank } from "./specs.ts";

// @ts-expect-error imperial is no unit system
chartsOf(plan, { units: "imperial" });
// @ts-expect-error a chart may be missing; the caller must look
export const certain: ChartSpec = chartsOf(plan).pump;
export const charts: PlanCharts = chartsOf(plan);
// @ts-expect-error a flow is no pressure
dayChart({ run, cutIn: gpm(5) });
dayChart({ run, cutIn: psi(30) });
// @ts-expect-error a volume is no starts per time
startsChart({ tanks: [tank], mostStarts: usGallons(4) });
// @ts-expect-error a bare number has no unit
frictionChart({ pipes, viscosity: squareMetresPerSecond(1e-6), lowestFlow: 1, highestFlow: gpm(50) });
// @ts-expect-error a chart is plain data, not to be written to
chartsOf(plan).pump = null;
