/**
 * What the property wants in a day and at once, against what the well gives.
 *
 * @module
 */
import { dailyDemand } from "../demand/index.ts";
import { days, type Volume } from "../units/index.ts";
import type { Finding } from "./finding.ts";
import { finding } from "./findings.ts";
import type { Job } from "./job.ts";
import type { DemandStage } from "./stages.ts";
import { usesOf } from "./uses.ts";

/** The day's water, and the use that takes most at once. */
export function demandStage(job: Job): DemandStage {
  const uses = usesOf(job);
  const governing = uses.reduce((most, use) => (use.flow > most.flow ? use : most));
  const { demand } = job;
  const daily =
    demand === undefined
      ? null
      : dailyDemand({
          ...(demand.people === undefined ? {} : { people: demand.people }),
          livestock: demand.livestock ?? [],
          other: demand.other ?? [],
        });
  return {
    daily,
    yieldPerDay: (job.well.yield * days(1)) as Volume,
    designFlow: governing.flow,
    governingUse: governing.name,
  };
}

/** The day against the well's day; the most used at once against its yield. */
export function demandFindings(
  { well }: Job,
  { daily, yieldPerDay, designFlow, governingUse }: DemandStage,
): readonly Finding[] {
  return [
    ...(daily === null
      ? []
      : finding({
          code: "well-gives-less-than-the-day",
          stage: "demand",
          kind: "volume",
          value: daily.volume,
          limit: yieldPerDay,
          wrong: "above",
          severity: "stop",
          message: "The property wants more water in a day than the well gives in a day.",
          remedy:
            "Cut the use, deepen or add a well, or bring water from elsewhere: storage cannot close a gap of every day.",
          basis: { kind: "given", locator: "yield of the well" },
        })),
    ...finding({
      code: "use-above-yield",
      stage: "demand",
      subject: governingUse,
      kind: "flow",
      value: designFlow,
      limit: well.yield,
      wrong: "above",
      severity: "fix",
      message: "The largest use takes more at once than the well gives: the water goes on falling while it lasts.",
      remedy: "Open fewer outlets at once, or fill a storage tank at the well's pace and pump from that.",
      basis: { kind: "given", locator: "yield of the well" },
    }),
  ];
}
