/**
 * Plans every well of a county, once in this process and once over several worker processes, of which one is killed and
 * one is held up until its batch has been given to another. Fails unless the two answers are the same, bit for bit.
 *
 *   node county.mjs [--wells 10000] [--workers 3] [--seed 1]
 */
import { fork } from "node:child_process";
import { EventEmitter, once } from "node:events";
import { availableParallelism } from "node:os";
import { setTimeout as wait } from "node:timers/promises";
import { isDeepStrictEqual, parseArgs } from "node:util";
import { Queue } from "bullmq";
import { sweepParts } from "risingmain/selection";
import { planWells } from "./plan-wells.mjs";
import { QUEUE } from "./queue.mjs";
import { startRedis } from "./redis.mjs";
import { printed, summaryOf } from "./summary.mjs";

const { values: options } = parseArgs({
  options: { wells: { type: "string" }, workers: { type: "string" }, seed: { type: "string" } },
});
const WELLS = whole("wells", options.wells ?? "10000", 32, 1_000_000);
const WORKERS = whole("workers", options.workers ?? String(Math.max(3, availableParallelism())), 2, 64);
const SEED = whole("seed", options.seed ?? "1", 0, 2 ** 31);
/** Small enough that a batch lost is little lost, large enough that the queue's own work does not count. */
const BATCH = Math.min(25, Math.floor(WELLS / 16));

/** The queue's codes for an answer it refuses: the worker's lease on the batch is gone, or another worker has it. */
const [LEASE_GONE, LEASE_OF_ANOTHER] = [-2, -6];

const staff = new Set();
/** Word from the workers: `started` a batch; `refused` an answer, with the number of the process. */
const news = new EventEmitter();
const complaints = new Set();

const parts = [...sweepParts({ well: Array.from({ length: WELLS }, (_, number) => number) }, BATCH)];
/** What a batch is called: by its wells, so that the same batch has the same name however often it is handed in. */
const nameOf = ({ from, to }) => `${from}-${to - 1}`;

// However this process ends, its workers and its Redis end with it.
process.once("SIGINT", () => process.exit(130));
process.once("SIGTERM", () => process.exit(143));
process.once("exit", () => {
  for (const worker of staff) worker.kill("SIGKILL");
});

const started = performance.now();
const alone = [...planWells({ seed: SEED, from: 0, to: WELLS })];
console.log(`one process: ${seconds(started)}`);

const connection = await startRedis();
const queue = new Queue(QUEUE, { connection });
const begun = performance.now();
const batches = parts.map((part) => ({ name: "plan", data: { seed: SEED, ...part }, opts: { jobId: nameOf(part) } }));
await queue.addBulk(batches);
await queue.addBulk(batches); // as a script would that was started again: a name already there adds nothing

for (let i = 0; i < WORKERS; i++) hire();

setInterval(async () => {
  const [failed] = await queue.getFailed(0, 0);
  if (failed) throw new Error(`wells ${failed.id}: ${failed.failedReason}`);
}, 500);

const killed = await strike("SIGKILL");
console.log(`worker killed while it held wells ${killed.batch}`);

const held = await strike("SIGSTOP");
console.log(`worker held up while it had wells ${held.batch}`);
while (!(await (await queue.getJob(held.batch)).isCompleted())) await wait(50);
const refused = once(news, `refused ${held.worker.pid}`, { signal: AbortSignal.timeout(60_000) });
held.worker.kill("SIGCONT");
await refused;
console.log("its batch done by another, it went on: its late answer was refused");

for (;;) {
  const { completed } = await queue.getJobCounts("completed");
  if (completed === parts.length) break;
  await wait(50);
}
const done = await Promise.all(parts.map((part) => queue.getJob(nameOf(part))));
console.log(`${WORKERS} processes: ${seconds(begun)}`);

const rows = done.flatMap((job) => job.returnvalue);
const starts = done.reduce((sum, job) => sum + job.attemptsStarted, 0);
const twice = done.filter((job) => job.attemptsStarted > 1).map((job) => job.id);
console.log(`${parts.length} batches, ${starts} starts, ${rows.length} wells`);

const summary = summaryOf(rows);
console.log(`\n${printed(summary)}\n`);

const checks = {
  "the batch of the worker killed was started again": twice.includes(killed.batch),
  "the batch of the worker held up was started again": twice.includes(held.batch),
  "every well was counted, and once": isDeepStrictEqual(
    rows.map(({ number }) => number),
    alone.map(({ number }) => number),
  ),
  "every well has the figures of one process, bit for bit": isDeepStrictEqual(rows, alone),
  "the county's totals are those of one process, bit for bit": isDeepStrictEqual(summary, summaryOf(alone)),
};
for (const complaint of complaints) console.log(`said by a worker: ${complaint}`);
for (const [check, holds] of Object.entries(checks)) console.log(`${holds ? "holds" : "FAILS"}: ${check}`);
process.exit(Object.values(checks).every(Boolean) ? 0 : 1);

/** Starts a worker, and another in its place where it is killed, as whatever keeps a county's workers running would. */
function hire() {
  const worker = fork(new URL("worker.mjs", import.meta.url), {
    env: { ...process.env, COUNTY_REDIS: JSON.stringify(connection) },
  });
  staff.add(worker);
  worker.on("message", ({ started: batch, error, code }) => {
    if (batch !== undefined) news.emit("started", { worker, batch });
    else if (code === LEASE_GONE || code === LEASE_OF_ANOTHER) news.emit(`refused ${worker.pid}`);
    else complaints.add(error);
  });
  worker.once("exit", (code, signal) => {
    staff.delete(worker);
    if (signal === null) throw new Error(`a worker ended with code ${code}`);
    hire();
  });
}

/** Sends a signal to a worker as it starts a batch, and makes sure that it still held the batch then. */
async function strike(signal) {
  for (;;) {
    const [{ worker, batch }] = await once(news, "started", { signal: AbortSignal.timeout(60_000) });
    worker.kill(signal);
    if (signal === "SIGKILL") await once(worker, "exit");
    if (await (await queue.getJob(batch)).isActive()) return { worker, batch };
    worker.kill("SIGCONT"); // it was done before the signal came: that proves nothing
  }
}

function whole(name, text, least, most) {
  const value = Number(text);
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  console.error(`--${name} takes a whole number from ${least} to ${most}, not ${text}`);
  process.exit(2);
}

function seconds(since) {
  return `${((performance.now() - since) / 1000).toFixed(1)} s`;
}
