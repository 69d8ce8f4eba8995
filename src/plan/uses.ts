/**
 * Which outlets run together.
 *
 * @module
 */
import type { VolumeFlow } from "../units/index.ts";
import type { Job, JobOutlet } from "./job.ts";

/** Outlets that run together. */
export interface Use {
  /** Its name. */
  readonly name: string;
  /** The outlets open. */
  readonly outlets: readonly JobOutlet[];
  /** Their flow together. */
  readonly flow: VolumeFlow;
}

/** The uses the job names; where it names none, every outlet alone and all of them at once. */
export function usesOf(job: Job): readonly Use[] {
  const named = job.uses?.map(({ name, outlets }) => ({
    name,
    outlets: job.outlets.filter((outlet) => outlets.includes(outlet.name)),
  })) ?? [
    ...job.outlets.map((outlet) => ({ name: outlet.name, outlets: [outlet] })),
    ...(job.outlets.length > 1 ? [{ name: "all outlets", outlets: job.outlets }] : []),
  ];
  return named.map((use) => ({ ...use, flow: use.outlets.reduce((sum, { flow }) => sum + flow, 0) as VolumeFlow }));
}
