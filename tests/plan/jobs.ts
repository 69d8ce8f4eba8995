/** The demo job and the small one, changed part by part. */
import { readFileSync } from "node:fs";
import { type Job, type Plan, planSystem, readJob, sampleJob } from "risingmain/plan";
import { waterAt } from "risingmain/water";
import { demandStage } from "../../src/plan/demand-stage.ts";
import { chooseDropPipe } from "../../src/plan/drop-pipe-stage.ts";
import { type PumpWork, pumpStage } from "../../src/plan/pump-stage.ts";
import { wellStage } from "../../src/plan/well-stage.ts";

/** New values by path, such as `well.test[0].flow`; `undefined` takes the part out. */
export type Changes = Readonly<Record<string, unknown>>;

/** The document of the demo, a ranch with three pumps, a regulating valve, five runs of pipe and a generator. */
export function ranch(changes: Changes = {}): unknown {
  return changed(JSON.parse(readFileSync(new URL("../../docs/jobs/ranch.json", import.meta.url), "utf8")), changes);
}

/** The document of the cabin, as `sampleJob` has it: one pump, two runs, no valve. */
export function cabin(changes: Changes = {}): unknown {
  return changed(sampleJob, changes);
}

/** The plan of a document. */
export const planOf = (document: unknown): Plan => planSystem(readJob(document));

/** A document's job, and its pumps tried in its well. */
export function workOf(document: unknown): { readonly job: Job; readonly work: PumpWork } {
  const job = readJob(document);
  const water = waterAt({ temperature: job.site.waterTemperature });
  const dutyFlow = demandStage(job).designFlow;
  const { law } = wellStage(job, dutyFlow);
  const dropPipe = chooseDropPipe(job, water, dutyFlow);
  return { job, work: pumpStage({ job, water, law, dropPipe, dutyFlow }) };
}

/** A copy of a document with parts of it replaced. */
export function changed(document: unknown, changes: Changes): unknown {
  const copy = structuredClone(document) as Record<string, unknown>;
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split(/[.[\]]+/).filter((key) => key !== "");
    const last = keys.pop() as string;
    const parent = keys.reduce<Record<string, unknown>>((node, key) => {
      node[key] ??= {};
      return node[key] as Record<string, unknown>;
    }, copy);
    if (value === undefined) delete parent[last];
    else parent[last] = structuredClone(value);
  }
  return copy;
}

/** A part of a plan or a job with some of its fields replaced, whatever their brands. */
export const having = <T extends object>(part: T, changes: { readonly [K in keyof T]?: unknown }): T => ({
  ...part,
  ...(changes as Partial<T>),
});
