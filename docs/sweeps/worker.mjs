// @ts-check
/** What each thread runs: a part comes in, its figures go out. */
import { parentPort, workerData } from "node:worker_threads";
import { sweep } from "risingmain/selection";

const { axes, model } = workerData;
const { evaluate } = await import(model);

parentPort?.on("message", (/** @type {import("risingmain/selection").SweepPart} */ part) => {
  const figures = new Float64Array(part.to - part.from);
  for (const { index, variant } of sweep(axes, part)) figures[index - part.from] = evaluate(variant);
  parentPort?.postMessage(figures, [figures.buffer]);
});
