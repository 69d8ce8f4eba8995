/** One unit of work: plans the wells from `from` up to but not including `to`. Plain data in, plain data out, and pure. */
import { planSystem, readJob } from "risingmain/plan";
import { wellJob } from "./wells.mjs";

/** What the county wants to know of a well; quantities in SI. */
export function planWell(seed, number) {
  const { stages, findings } = planSystem(readJob(wellJob(seed, number)));
  return {
    number,
    pump: stages.pump.chosen?.name ?? null,
    power: stages.power?.inputPower ?? 0,
    energyPerDay: stages.day?.energy ?? 0,
    waterPerDay: stages.day?.delivered ?? 0,
    findings: [...new Set(findings.map(({ severity, code }) => `${severity}: ${code}`))],
  };
}

/** The wells of a unit one by one, so that a process can look up between two of them. */
export function* planWells({ seed, from, to }) {
  for (let number = from; number < to; number++) yield planWell(seed, number);
}
