// Circuits: time of each calculation, and of the one that iterates beside the one it inverts. One run, methods interleaved.
// `node bench/circuits.mjs [rounds, 21]`. Bundles the sources by itself; DIST names a build to take instead.
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

const ROUNDS = Number(process.argv[2] ?? 21);
const LAPS = 2000;

/** The module under test: a build, or the sources bundled in memory. */
async function load(file) {
  if (process.env.DIST) return import(pathToFileURL(`${process.env.DIST}/${file}.js`).href);
  const { outputFiles } = await build({
    entryPoints: [new URL(`../src/${file}.ts`, import.meta.url).pathname],
    bundle: true,
    format: "esm",
    write: false,
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString("base64")}`);
}
const conductor = await load("conductor/index");
const { generatorCheck } = await load("generator/index");

const segment = { length: 60, resistance: 0.00407, reactance: 1e-4 };
const circuit = { system: "single-phase", sourceVoltage: 230, current: 10, powerFactor: 0.8 };
const run = {
  system: "single-phase",
  segments: [segment, segment, segment],
  loads: [4, 3, 3].map((current) => ({ current, powerFactor: 0.8 })),
};
const choices = conductor.conductorChoices({ insulation: "75 °C" });
const start = { lockedRotorCurrent: 55, lockedRotorPowerFactor: 0.5 };
const motor = { system: "single-phase", ratedVoltage: 230, current: 10, powerFactor: 0.8, ...start };
const generator = { runningPower: 8000, surgePower: 10_000, voltage: 240, system: "single-phase" };

const methods = {
  voltageDrop: () => conductor.voltageDrop({ ...circuit, segments: [segment, segment] }),
  sendingVoltage: () => conductor.sendingVoltage({ ...run, farVoltage: 220 }),
  runVoltages: () => conductor.runVoltages({ ...run, sourceVoltage: 230 }),
  lockedRotorDrop: () =>
    conductor.lockedRotorDrop({
      ...start,
      system: "single-phase",
      sourceVoltage: 230,
      ratedVoltage: 230,
      segments: [segment],
    }),
  smallestConductor: () => conductor.smallestConductor({ ...circuit, length: 120, dropLimit: 0.05, choices }),
  leastMetal: () =>
    conductor.leastMetal({
      ...circuit,
      dropLimit: 0.05,
      runs: [
        { length: 50, choices },
        { length: 90, choices },
      ],
    }),
  generatorCheck: () => generatorCheck({ generator, motor, segments: [segment] }),
};

const times = Object.fromEntries(Object.keys(methods).map((name) => [name, []]));
for (let round = 0; round < ROUNDS; round++) {
  for (const [name, method] of Object.entries(methods)) {
    const laps = name === "leastMetal" ? LAPS / 20 : LAPS;
    const from = process.hrtime.bigint();
    for (let lap = 0; lap < laps; lap++) method();
    times[name].push(Number(process.hrtime.bigint() - from) / laps);
  }
}
const median = (list) => list.toSorted((a, b) => a - b)[Math.floor(list.length / 2)];
for (const [name, list] of Object.entries(times))
  console.log(name.padEnd(20), `${(median(list) / 1000).toFixed(2)} µs`);
const ratios = times.runVoltages.map((time, i) => time / times.sendingVoltage[i]);
console.log(`runVoltages / sendingVoltage: ${median(ratios).toFixed(1)}`);
