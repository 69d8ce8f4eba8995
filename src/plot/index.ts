/**
 * Charts of results: plain Vega-Lite specifications, an open standard, with their numbers inside.
 *
 * @module
 */
export { chartsOf, type PlanCharts } from "./charts-of-plan.ts";
export { type DayChartInput, dayChart } from "./day-chart.ts";
export { type ChartedFlow, type ChartedPipe, type FrictionChartInput, frictionChart } from "./friction-chart.ts";
export { type ChartedFriction, type FrictionFactorChartInput, frictionFactorChart } from "./friction-factor-chart.ts";
export { type GradeLineChartInput, gradeLineChart } from "./grade-line-chart.ts";
export { type ChartedSystem, type PumpChartInput, pumpChart } from "./pump-chart.ts";
export { type SensitivityChartInput, sensitivityChart } from "./sensitivity-chart.ts";
export type { ShownQuantity } from "./shown.ts";
export type { ChartOptions, ChartSpec, JsonObject, JsonValue } from "./spec.ts";
export { type ChartedTank, type StartsChartInput, startsChart } from "./starts-chart.ts";
export { type ChartedCable, type ChartedCircuit, type VoltageChartInput, voltageChart } from "./voltage-chart.ts";
