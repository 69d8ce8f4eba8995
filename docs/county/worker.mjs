/** A worker process: takes one batch of wells after another from the queue. Started by county.mjs, as many as are wanted. */
import { setImmediate as turn } from "node:timers/promises";
import { Worker } from "bullmq";
import { planWells } from "./plan-wells.mjs";
import { LEASE, QUEUE } from "./queue.mjs";

const connection = { ...JSON.parse(process.env.COUNTY_REDIS), maxRetriesPerRequest: null };

const worker = new Worker(
  QUEUE,
  async ({ id, data }) => {
    process.send({ started: id });
    const rows = [];
    for (const row of planWells(data)) {
      rows.push(row);
      await turn(); // lets the queue's timer renew the lease on the batch
    }
    return rows;
  },
  { connection, ...LEASE },
);
worker.on("error", ({ code, message }) => process.send({ error: message, code }));
process.once("disconnect", () => process.exit());
