// @ts-check
/** Sweeps spread over worker threads: the same figures, bit for bit, as on one thread. */
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { countVariants, sweepParts } from "risingmain/selection";

/** @typedef {import("risingmain/selection").SweepAxes} SweepAxes */
/** @typedef {import("risingmain/selection").SweepPart} SweepPart */

/** A thread may die of something that passes, such as want of memory; a part that keeps killing threads is given up. */
const MOST_TRIES = 3;
/** A thread lost costs a part at most. */
const MOST_IN_PART = 10_000;
/** What Node calls a thread that has ended. */
const DEAD = -1;
/** What each thread died of, where it said. */
const causes = new WeakMap();

/**
 * Threads that keep ready for one sweep after another: starting them takes about 0.16 s.
 *
 * @param {string | URL} model a module that exports `evaluate(variant)`, a pure function that returns a number
 * @param {number} [count] how many
 */
export function startThreads(model, count = availableParallelism()) {
  function start() {
    const thread = new Worker(new URL("worker.mjs", import.meta.url), { workerData: String(model) });
    thread.once("error", (error) => causes.set(thread, error)); // its exit follows
    return thread;
  }
  const threads = Array.from({ length: count }, start);

  /** @param {SweepAxes} axes @param {number} [partSize] */
  async function run(axes, partSize) {
    const figures = new Float64Array(countVariants(axes));
    // Several parts for each thread, so that none waits long for the last.
    const parts = sweepParts(axes, partSize ?? Math.min(MOST_IN_PART, Math.ceil(figures.length / (8 * count))));

    /** Keeps one thread at work: hands it the next part whenever it is free, and replaces it where it died. */
    async function lane(/** @type {number} */ place) {
      for (const part of parts) {
        for (let tries = 1; ; tries++) {
          if (threads[place].threadId === DEAD) threads[place] = start();
          try {
            // By its place in the sweep: which thread did a part, and which was done first, leaves no trace.
            figures.set(await answer(threads[place], axes, part), part.from);
            break;
          } catch (cause) {
            // Giving up leaves the loop, which closes the parts: the other lanes end after the one in hand.
            if (tries === MOST_TRIES)
              throw new Error(`variants ${part.from} to ${part.to - 1}: the thread died ${tries} times`, { cause });
          }
        }
      }
    }
    const lanes = await Promise.allSettled(threads.map((_, place) => lane(place)));
    for (const ended of lanes) if (ended.status === "rejected") throw ended.reason;
    return figures;
  }

  /** @type {Promise<unknown>} */
  let before = Promise.resolve();
  return {
    /**
     * One figure for each variant, in the order of the sweep. A sweep asked for during another waits for it.
     *
     * @param {SweepAxes} axes the choices: plain data
     * @param {number} [partSize] variants handed to a thread at a time
     * @returns {Promise<Float64Array>}
     */
    sweep(axes, partSize) {
      const mine = before.then(() => run(axes, partSize));
      before = mine.catch(() => {});
      return mine;
    },
    /** Ends the threads after the last sweep asked for; while they are kept the program does not end. */
    stop: () => before.then(() => Promise.all(threads.map((thread) => thread.terminate()))),
  };
}

/**
 * The figures of one part, or the reason why its thread is no more.
 *
 * @param {Worker} thread
 * @param {SweepAxes} axes
 * @param {SweepPart} part
 * @returns {Promise<Float64Array>}
 */
function answer(thread, axes, part) {
  return new Promise((resolve, reject) => {
    for (const event of ["message", "exit"]) thread.removeAllListeners(event);
    thread.once("message", resolve);
    thread.once("exit", (code) => reject(causes.get(thread) ?? new Error(`it ended with code ${code}`)));
    thread.postMessage({ axes, part });
  });
}
