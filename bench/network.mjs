// Networks: growth with size in a tree, and looped grids beside scipy's sparse solver in the same session.
// Needs the build (npm run build); `node bench/network.mjs [most grid size, 100]`. DIST names another build.
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

/** Median processor milliseconds of a call, first call apart. */
function time(call, times) {
  const first = spent();
  call();
  const cold = spent() - first;
  const taken = [];
  for (let i = 0; i < times; i++) {
    const start = spent();
    call();
    taken.push(spent() - start);
  }
  return { cold, warm: median(taken) };
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
  );
  perRun.push((warm / count) * 1000);
  console.log(
    `  ${count} runs: ${warm.toFixed(2)} ms (first ${cold.toFixed(1)}), ${perRun.at(-1).toFixed(3)} µs a run, ${iterations} iterations, energy ${residual.toExponential(1)} m`,
  );
}
console.log(
  `  time a run at 1e5 over 1e4: ${(perRun[3] / perRun[2]).toFixed(2)}; growth exponent 1e3 to 1e5: ${(1 + Math.log10(perRun[3] / perRun[1]) / 2).toFixed(2)}`,
);

const most = Number(process.argv[2] ?? 100);
const sizes = [10, 30, 100, 300].filter((k) => k <= most);
const python = JSON.parse(
  execFileSync("/usr/bin/python3", [new URL("network.py", import.meta.url).pathname, ...sizes.map(String)], {
    encoding: "utf8",
  }),
);
console.log(`looped grids beside scipy ${python.scipy} (spsolve, same method, start and end)`);
const solverTimes = [];
for (const { size, seconds, iterations, sumOfHeads } of python.results) {
  const { network, ends, demand } = grid(size);
  const forced = new Float64Array(size * size).fill(Number.NaN);
  forced[0] = HEAD;
  const laws = network.runs.map((run) => runLaw(run, water));
  const condition = { demand, forced, shut: new Uint8Array(laws.length) };
  const times = Math.max(3, Math.min(101, Math.floor(2000 / size)));
  let own;
  const solver = time(() => {
    own = flowSolver({ free: size * size, held: new Float64Array(0), ends, laws })(condition);
  }, times);
  const whole = time(() => solveNetwork(network), times);
  const sum = own.head.reduce((a, b) => a + b, 0);
  solverTimes.push(solver.warm);
  console.log(
    `  ${size} x ${size}: solver ${solver.warm.toFixed(2)} ms (first ${solver.cold.toFixed(1)}), ${own.iterations} iterations; public call ${whole.warm.toFixed(2)} ms; ` +
      `scipy ${(1000 * seconds).toFixed(2)} ms, ${iterations} iterations; ratio ${((1000 * seconds) / solver.warm).toFixed(1)} (public call ${((1000 * seconds) / whole.warm).toFixed(1)}); ` +
      `mean heads differ by ${(Math.abs(sum - sumOfHeads) / size ** 2).toExponential(1)} m`,
  );
}
console.log(`memory: ${(process.memoryUsage().rss / 2 ** 20).toFixed(0)} MB resident at the end`);
