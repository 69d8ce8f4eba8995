// Sweeps over worker threads: the recipe of docs/sweeps against one thread, from 1e3 to 1e6 variants; each variant is an
// operating point of a pump with the friction of two pipes. `node bench/sweep.mjs [rounds, 5] [threads, 2]` after the build.
// One run, interleaved: one thread; threads kept from sweep to sweep; threads started for the sweep and ended after it.
// The figures are compared bit for bit each time. The first call, before anything is compiled, is told apart.
// Other work on the machine takes processors away from the threads: beside the median stand the best and the load, and the
// time the processors were busy with both threads by that with one, which is 1 where threads cost nothing.
import { loadavg } from "node:os";
import { sweep } from "../dist/selection/index.js";
import { feet, inches, psi } from "../dist/units/index.js";
import { startThreads } from "../docs/sweeps/threads.mjs";
import { evaluate } from "../docs/sweeps/yard-line.mjs";

const ROUNDS = Number(process.argv[2] ?? 5);
const THREADS = Number(process.argv[3] ?? 2);
const model = new URL("../docs/sweeps/yard-line.mjs", import.meta.url);

/** 100 variants for each length of line. */
const axesOf = (count) => ({
  pump: ["A", "B", "C", "D"],
  bore: [0.824, 1.049, 1.38, 1.61, 2.067].map((bore) => inches(bore)),
  pressure: [20, 30, 40, 50, 60].map((pressure) => psi(pressure)),
  length: Array.from({ length: count / 100 }, (_, i) => feet(1 + (2500 * i) / (count / 100))),
});

/** Wall time and the processors' own time, ms. */
async function timed(work) {
  const processors = process.cpuUsage();
  const begin = performance.now();
  const figures = await work();
  const wall = performance.now() - begin;
  const { user, system } = process.cpuUsage(processors);
  return { figures, wall, processors: (user + system) / 1000 };
}
const alone = (axes) => timed(() => Float64Array.from(sweep(axes), ({ variant }) => evaluate(variant)));
const started = (axes) =>
  timed(async () => {
    const own = startThreads(model, THREADS);
    const figures = await own.sweep(axes);
    await own.stop();
    return figures;
  });
const kept = startThreads(model, THREADS);
const ready = (axes) => timed(() => kept.sweep(axes));

const median = (list) => [...list].sort((a, b) => a - b)[list.length >> 1];
const both = (list) => `${median(list).toFixed(2)} (${Math.max(...list).toFixed(2)})`.padStart(14);

const first = await alone(axesOf(1000));
for (let i = 0; i < 9; i++) await alone(axesOf(1000));
const warm = await alone(axesOf(1000));
console.log(`first call, 1000 variants on one thread: ${(first.wall / warm.wall).toFixed(0)} times the eleventh`);
await ready(axesOf(1e5)); // its first call, too
console.log(`times quicker on ${THREADS} threads than on one: median (best) of ${ROUNDS}`);
console.log("variants   one, µs each     threads kept   and started   processor time of kept   load");
for (const count of [1e3, 1e4, 2e4, 5e4, 1e5, 2e5, 5e5, 1e6]) {
  const axes = axesOf(count);
  const [keeping, starting, costs, each] = [[], [], [], []];
  for (let round = 0; round < ROUNDS; round++) {
    const one = await alone(axes);
    const many = await ready(axes);
    const fresh = await started(axes);
    for (const { figures } of [many, fresh])
      if (Buffer.compare(Buffer.from(one.figures.buffer), Buffer.from(figures.buffer)) !== 0)
        throw new Error(`${count} variants: other bits`);
    keeping.push(one.wall / many.wall);
    starting.push(one.wall / fresh.wall);
    costs.push(many.processors / one.processors);
    each.push((1000 * one.wall) / count);
  }
  console.log(
    `${String(count).padStart(8)}   ${median(each).toFixed(2).padStart(12)}   ${both(keeping)}${both(starting)}   ` +
      `${median(costs).toFixed(2).padStart(22)}   ${loadavg()[0].toFixed(1).padStart(4)}`,
  );
}
await kept.stop();
