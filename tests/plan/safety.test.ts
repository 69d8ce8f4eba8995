/** What every paper that leaves the house must say: hazards, and who has the last word. */
import { asBuiltRecord, diagnoseRecord, planSystem, readJob, recordReport, reportOf, sampleJob } from "risingmain/plan";
import { feet } from "risingmain/units";
import { expect, test } from "vitest";

const job = readJob(sampleJob);
const plan = planSystem(job);
const record = asBuiltRecord({ plan, readings: { "static-level": feet(40) } });
const papers = { plan: reportOf(plan, { units: "us" }), record: recordReport(record, { units: "us" }) };

test.each([
  ["chlorine with acid or ammonia", /chlorine meet acid, ammonia/],
  ["ventilation", /open air.*never enter a well pit/s],
  ["pressure", /compressed air/],
  ["mains", /lock out the power/],
  ["lifting", /hoist and a clamp/],
  ["drinking before a clean sample", /before a sample has come back clean/],
  ["local code", /[Ll]ocal code/],
  ["the health department", /health department/],
  ["licensed trades", /licensed trades have the last word/],
])("plan and record warn of %s", (_, words) => {
  expect(papers.plan).toMatch(words);
  expect(papers.record).toMatch(words);
});

test("a diagnosis of a record defers as well, and warns of pressure and mains", () => {
  const answer = diagnoseRecord({ job, record });
  if (answer.state !== "diagnosed") throw new Error(answer.reason);
  const said = answer.diagnosis.cautions.map(({ text }) => text).join(" ");
  expect(said).toMatch(/health department.*compressed air.*locked out/s);
});
