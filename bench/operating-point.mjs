// Operating point: calls of the system, error and time beside Brent's method on the same bracket, for shape-preserving
// curves and two pipes in a row (Colebrook–White, a C1 bridge through transition, minor losses), with and without drawdown.
// One run, methods interleaved, medians of ratios. Also: how time grows with the points of the curve and with the pipes.
// `node bench/operating-point.mjs [rounds, 21]`. Bundles src by itself; DIST names a build to take instead.
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

const ROUNDS = Number(process.argv[2] ?? 21);
const COUNT = 400;

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
const { operatingPoint, pumpCurve } = await load("pump/index");
const { frictionFactor } = await load("pipe/index");
const { cubicValue, findRoot } = await load("numeric/index");

let seed = 7;
function random() {
  seed = (seed + 0x6d2b79f5) | 0;
  let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
}
const between = (low, high) => low + (high - low) * random();

/** A falling curve of n points about H₀ (1 − (1 − left) xᵉ), with the scatter of a digitised sheet. */
function makeCurve(n) {
  const shutoff = between(30, 180);
  const end = between(5, 45) * 6.309e-5;
  const exponent = between(1.6, 2.8);
  const left = between(0.1, 0.5);
  const points = [];
  for (let i = 0; i < n; i++) {
    const x = i / (n - 1);
    let head = shutoff * (1 - (1 - left) * x ** exponent) * (i ? 1 + 0.004 * (random() - 0.5) : 1);
    if (i) head = Math.min(head, points[i - 1].head - 1e-3 * shutoff);
    points.push({ flow: end * x, head });
  }
  return pumpCurve({ points });
}

function makeSystem(curve, pipes, drawdown) {
  const lift = curve.shutoffHead * between(0.2, 0.8);
  const B = drawdown ? between(0, 10) / curve.runoutFlow : 0;
  const C = drawdown ? between(0, 5) / curve.runoutFlow ** 2 : 0;
  const runs = Array.from({ length: pipes }, () => {
    const D = between(0.02, 0.05);
    const area = (Math.PI / 4) * D * D;
    const roughness = random() < 0.6 ? 1.5e-6 : between(4.6e-5, 1.5e-4);
    return {
      toRe: D / area / 1.3e-6,
      k: roughness / D,
      c: between(20, 300) / D / (2 * 9.80665 * area * area),
      minor: between(0, 20) / (2 * 9.80665 * area * area),
    };
  });
  return (flow) => {
    let head = lift + flow * (B + C * flow);
    for (const { toRe, k, c, minor } of runs) {
      if (flow > 0)
        head += flow * flow * (c * frictionFactor({ reynolds: flow * toRe, relativeRoughness: k }).value + minor);
    }
    return head;
  };
}

/** Brent's method on the same difference, both ends asked, to the same accuracy. */
function byBrent(curve, system) {
  const line = curve.head;
  const end = curve.runoutFlow;
  const excess = (flow) => cubicValue(line, flow) - system(flow);
  if (excess(0) <= 0 || excess(end) > 0) return { flow: 0, evaluations: 2 };
  const { x, evaluations } = findRoot(excess, 0, end, 1e-12 * end);
  return { flow: x, evaluations: evaluations + 2 };
}

const median = (list) => [...list].sort((a, b) => a - b)[list.length >> 1];
function cases(n, pipes, drawdown) {
  const made = [];
  while (made.length < COUNT) {
    const curve = makeCurve(n);
    const systemHead = makeSystem(curve, pipes, drawdown);
    if (operatingPoint({ curve, systemHead }).state === "running") made.push({ curve, systemHead });
  }
  return made;
}
function time(run, made) {
  const start = process.hrtime.bigint();
  let sum = 0;
  for (const each of made) sum += run(each);
  if (!(sum > 0)) throw new Error("nothing computed");
  return Number(process.hrtime.bigint() - start) / made.length;
}
const ours = ({ curve, systemHead }) => operatingPoint({ curve, systemHead }).flow;
const brent = ({ curve, systemHead }) => byBrent(curve, systemHead).flow;

for (const drawdown of [false, true]) {
  const made = cases(8, 2, drawdown);
  const calls = made.map((each) => operatingPoint(each).evaluations);
  const theirs = made.map(({ curve, systemHead }) => byBrent(curve, systemHead).evaluations);
  const errors = made.map(({ curve, systemHead }) => {
    let [low, high] = [0, curve.runoutFlow];
    for (let i = 0; i < 100; i++) {
      const middle = (low + high) / 2;
      if (cubicValue(curve.head, middle) > systemHead(middle)) low = middle;
      else high = middle;
    }
    return Math.abs(operatingPoint({ curve, systemHead }).flow / ((low + high) / 2) - 1);
  });
  const ratios = [];
  const own = [];
  for (let i = 0; i < ROUNDS + 5; i++) {
    const [a, b] = i % 2 ? [time(ours, made), time(brent, made)] : [time(brent, made), time(ours, made)].reverse();
    if (i >= 5) {
      ratios.push(a / b);
      own.push(a);
    }
  }
  const mean = (list) => list.reduce((so, value) => so + value, 0) / list.length;
  console.log(
    `8 points, 2 pipes${drawdown ? ", drawdown" : ""}: calls mean ${mean(calls).toFixed(2)} (without the one at no flow ` +
      `${(mean(calls) - 1).toFixed(2)}), worst ${Math.max(...calls)}; Brent ${mean(theirs).toFixed(2)}, worst ${Math.max(...theirs)}; ` +
      `time ${median(ratios).toFixed(2)} of Brent's, ${(median(own) / 1000).toFixed(2)} µs; worst error ${Math.max(...errors).toExponential(1)}`,
  );
}
for (const [points, pipes] of [
  [4, 2],
  [8, 2],
  [16, 2],
  [64, 2],
  [256, 2],
  [8, 1],
  [8, 4],
  [8, 16],
]) {
  const made = cases(points, pipes, false);
  for (let i = 0; i < 5; i++) time(ours, made);
  console.log(
    `${points} points, ${pipes} pipes: ${(median(Array.from({ length: 9 }, () => time(ours, made))) / 1000).toFixed(2)} µs`,
  );
}
