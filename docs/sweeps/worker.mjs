// @ts-check
/** What each thread runs: the choices and a part of the sweep come in, the figures of that part go out. */
import { parentPort, workerData } from "node:worker_threads";
import { sweep } from "risingmain/selection";

const { evaluate } = await import(workerData);

parentPort?.on("message", ({ axes, part }) => {
  const figures = new Float64Array(part.to - part.from);
  for (const { index, variant } of sweep(axes, part)) figures[index - part.from] = evaluate(variant);
  parentPort?.postMessage(figures, [figures.buffer]);
});
