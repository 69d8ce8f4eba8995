// @ts-check
/** A sweep spread over worker threads: the same figures, bit for bit, as on one thread. */
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { countVariants, sweepParts } from "risingmain/selection";

/** A thread may die of something that passes, such as want of memory; a part that keeps killing threads is given up. */
const MOST_TRIES = 3;

/**
 * One figure for each variant, in the order of the sweep.
 *
 * @param {object} input
 * @param {import("risingmain/selection").SweepAxes} input.axes the choices: plain data
 * @param {string | URL} input.model a module that exports `evaluate(variant)`, a pure function that returns a number
 * @param {number} [input.partSize] variants handed to a thread at a time
 * @param {number} [input.threads]
 * @returns {Promise<Float64Array>}
 */
export async function sweepOverThreads({ axes, model, partSize = 10_000, threads = availableParallelism() }) {
  const figures = new Float64Array(countVariants(axes));
  const parts = sweepParts(axes, partSize);
  const start = () =>
    new Worker(new URL("worker.mjs", import.meta.url), { workerData: { axes, model: String(model) } });

  /** Keeps one thread at work: hands it the next part whenever it is free, and replaces it when it dies. */
  async function lane() {
    let worker = start();
    try {
      for (const part of parts) {
        for (let tries = 1; ; tries++) {
          try {
            // By its place: which thread did a part, and which was done first, leaves no trace.
            figures.set(await answer(worker, part), part.from);
            break;
          } catch (cause) {
            if (tries === MOST_TRIES)
              throw new Error(`variants ${part.from} to ${part.to - 1}: the thread died ${tries} times`, { cause });
            worker = start();
          }
        }
      }
    } finally {
      // A lane that gives up leaves the loop, which closes the parts: the others end after the part in hand.
      await worker.terminate();
    }
  }
  const lanes = await Promise.allSettled(Array.from({ length: threads }, lane));
  for (const ended of lanes) if (ended.status === "rejected") throw ended.reason;
  return figures;
}

/**
 * The figures of one part, or the reason why its thread is no more.
 *
 * @param {Worker} worker
 * @param {import("risingmain/selection").SweepPart} part
 * @returns {Promise<Float64Array>}
 */
function answer(worker, part) {
  return new Promise((resolve, reject) => {
    worker.removeAllListeners();
    worker.once("message", resolve);
    worker.once("error", reject);
    worker.once("exit", (code) => reject(new Error(`it ended with code ${code}`)));
    worker.postMessage(part);
  });
}
