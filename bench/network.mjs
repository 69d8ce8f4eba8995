// Networks: time, memory and growth with size in a tree, and looped grids beside scipy's sparse solver in the same session.
// Needs the build (npm run build); `node bench/network.mjs [most grid size, 300]`. DIST names another build.
// `node bench/network.mjs once tree 100000` or `once grid 300`: one call in a process of its own, for its memory.
import { execFileSync } from "node:child_process";
import { pathToFileURL } from "node:url";

const dist = process.env.DIST ? pathToFileURL(`${process.env.DIST}/`) : new URL("../dist/", import.meta.url);
const load = (file) => import(new URL(file, dist).href);
const { solveNetwork } = await load("network/index.js");
const { flowSolver } = await load("network/steady-flow.js");
const { runLaw } = await load("network/link-laws.js");

const water = { density: 999.7, kinematicViscosity: 1.307e-6 };
const HEAD = 100;

/** A congruential generator: the same numbers in network.py. */
function uniforms() {
  let seed = 12345;
  return () => {
    seed = Number((BigInt(seed) * 1103515245n + 12345n) % 2147483648n);
    return seed / 2147483648;
  };
}

function median(list) {
  return list.sort((a, b) => a - b)[Math.floor(list.length / 2)];
}

/** Processor milliseconds of this process so far, its compiling and collecting threads included: a busy machine does not show. */
function spent() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Median processor milliseconds of a call, first call apart; short calls by the batch, after as many to warm up. */
function time(call, times, batch = 1) {
  const first = spent();
  call();
  const cold = spent() - first;
  for (let i = 1; i < batch; i++) call();
  const taken = [];
  for (let i = 0; i < times; i++) {
    const start = spent();
    for (let k = 0; k < batch; k++) call();
    taken.push((spent() - start) / batch);
  }
  return { cold, warm: median(taken) };
}

/** Most memory of a process that solves one layout once, MB, and of that what came with the call. */
function memoryOf(kind, size) {
  const script = new URL(import.meta.url).pathname;
  return JSON.parse(execFileSync(process.execPath, [script, "once", kind, `${size}`], { encoding: "utf8" }));
}

/** A tree: each junction hangs on one of the ten before it; bores grow with what hangs on; an outlet at every second. */
function tree(count) {
  const uniform = uniforms();
  const parent = Array.from({ length: count }, (_, i) => Math.max(0, i - Math.floor(uniform() * 10)));
  const beyond = new Float64Array(count + 1).fill(1);
  for (let i = count; i > 0; i--) beyond[parent[i - 1]] += beyond[i];
  return {
    water,
    junctions: Array.from({ length: count + 1 }, (_, i) => ({ id: `${i}`, elevation: 10 * uniform() })),
    runs: parent.map((up, i) => ({
      id: `${i}`,
      from: `${up}`,
      to: `${i + 1}`,
      law: "darcy-weisbach",
      insideDiameter: 0.03 * Math.sqrt(beyond[i + 1]),
      length: 5 + 20 * uniform(),
      roughness: 1.5e-6,
    })),
    outlets: parent.flatMap((_, i) =>
      i % 2
        ? [{ id: `${i}`, junction: `${i + 1}`, kind: "pressure-dependent", coefficient: 1e-5 + 1e-4 * uniform() }]
        : [],
    ),
    sources: [{ id: "tank", junction: "0", kind: "fixed head", head: HEAD }],
  };
}

function grid(k) {
  const uniform = uniforms();
  const pairs = [];
  for (let i = 0; i < k; i++) {
    for (let j = 0; j < k; j++) {
      if (j + 1 < k) pairs.push([i * k + j, i * k + j + 1]);
      if (i + 1 < k) pairs.push([i * k + j, (i + 1) * k + j]);
    }
  }
  const bore = pairs.map(() => 0.1 + 0.2 * uniform());
  const length = pairs.map(() => 50 + 100 * uniform());
  const demand = Array.from({ length: k * k }, () => ((0.2 + 0.8 * uniform()) * 0.05) / (k * k));
  const junctions = demand.map((_, i) => ({ id: `${i}`, elevation: 0 }));
  const runs = pairs.map(([a, b], e) => ({
    id: `${e}`,
    from: `${a}`,
    to: `${b}`,
    law: "hazen-williams",
    insideDiameter: bore[e],
    length: length[e],
    coefficient: 130,
  }));
  const outlets = demand.map((flow, i) => ({ id: `${i}`, junction: `${i}`, kind: "fixed demand", flow }));
  const sources = [{ id: "tank", junction: "0", kind: "fixed head", head: HEAD }];
  return {
    network: { water, junctions, runs, outlets, sources },
    ends: Int32Array.from(pairs.flat()),
    demand: Float64Array.from(demand),
  };
}

/** Largest resident size of this process so far, MB. */
function most() {
  return process.resourceUsage().maxRSS / 1024;
}

if (process.argv[2] === "once") {
  const size = Number(process.argv[4]);
  const network = process.argv[3] === "tree" ? tree(size) : grid(size).network;
  const before = most();
  const start = spent();
  solveNetwork(network);
  console.log(JSON.stringify({ milliseconds: spent() - start, megabytes: most(), ofCall: most() - before }));
  process.exit();
}

console.log("tree, half the junctions with a pressure-dependent outlet (whole public call)");
const perRun = [];
for (const count of [100, 1000, 10_000, 100_000]) {
  const network = tree(count);
  let iterations = 0;
  let residual = 0;
  const { cold, warm } = time(
    () => {
      const result = solveNetwork(network);
      iterations = result.iterations;
      residual = result.residuals.energy;
    },
    count >= 100_000 ? 5 : 15,
    Math.ceil(10_000 / count),
  );
  perRun.push((warm / count) * 1000);
  const { megabytes, ofCall } = memoryOf("tree", count);
  console.log(
    `  ${count} runs: ${warm.toFixed(2)} ms (first ${cold.toFixed(1)}), ${perRun.at(-1).toFixed(3)} µs a run, ${iterations} iterations, ` +
      `energy ${residual.toExponential(1)} m; ${megabytes.toFixed(0)} MB at most, ${ofCall.toFixed(0)} of them for the call`,
  );
}
console.log(
  `  time a run at 1e5 over 1e4: ${(perRun[3] / perRun[2]).toFixed(2)}; growth exponent 1e3 to 1e5: ${(1 + Math.log10(perRun[3] / perRun[1]) / 2).toFixed(2)}`,
);

const largest = Number(process.argv[2] ?? 300);
/** Rounds of both, one after the other, so that a busy minute strikes both; the largest grid is solved once. */
const ROUNDS = 3;
/** One BLAS thread: the others would spin, and their time be counted against scipy. */
const env = { ...process.env, OPENBLAS_NUM_THREADS: "1", OMP_NUM_THREADS: "1" };
const script = new URL("network.py", import.meta.url).pathname;
console.log(
  "looped grids beside scipy (spsolve, same method, start and end; both with their coefficients, without the layout)",
);
for (const size of [10, 30, 100, 300].filter((k) => k <= largest)) {
  const { network, ends, demand } = grid(size);
  const forced = new Float64Array(size * size).fill(Number.NaN);
  forced[0] = HEAD;
  const condition = { demand, forced, shut: new Uint8Array(network.runs.length) };
  const nodes = { free: size * size, held: new Float64Array(0), ends };
  const batch = Math.ceil(3000 / size ** 2);
  const once = size >= 300;
  const rounds = [];
  let own;
  for (let round = 0; round < (once ? 1 : ROUNDS); round++) {
    const python = JSON.parse(execFileSync("/usr/bin/python3", [script, `${size}`], { encoding: "utf8", env }));
    const times = once ? 1 : Math.ceil(500 / size);
    const solver = time(
      () => {
        const laws = network.runs.map((run) => runLaw(run, water));
        own = flowSolver({ ...nodes, laws })(condition);
      },
      times,
      batch,
    );
    const whole = time(() => solveNetwork(network), times, batch);
    rounds.push({ ...python.results[0], scipy: 1000 * python.results[0].seconds, solver, whole });
  }
  const by = (pick) => median(rounds.map(pick));
  const sum = own.head.reduce((a, b) => a + b, 0);
  console.log(
    `  ${size} x ${size}: solver ${by((r) => r.solver.warm).toFixed(3)} ms (first ${rounds[0].solver.cold.toFixed(1)}), ${own.iterations} iterations; ` +
      `public call ${by((r) => r.whole.warm).toFixed(3)} ms; scipy ${by((r) => r.scipy).toFixed(2)} ms, ${rounds[0].iterations} iterations; ` +
      `ratio ${by((r) => r.scipy / r.solver.warm).toFixed(1)} (public call ${by((r) => r.scipy / r.whole.warm).toFixed(1)}); ` +
      `mean heads differ by ${(Math.abs(sum - rounds[0].sumOfHeads) / size ** 2).toExponential(1)} m`,
  );
  if (once) {
    const { megabytes, ofCall } = memoryOf("grid", size);
    console.log(
      `    ${megabytes.toFixed(0)} MB at most, ${ofCall.toFixed(0)} of them for the call; scipy's process ${rounds[0].megabytes.toFixed(0)} MB`,
    );
  }
}
