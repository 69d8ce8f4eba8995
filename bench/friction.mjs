// Friction: speed and error of the exact factor and its inverses, beside explicit formulas, Clamond's method, Newton and the
// plain fixed point, all with the constants 3.7 and 2.51. One run, methods interleaved, medians of ratios.
// `node bench/friction.mjs [rounds, 31]`. Bundles src/pipe by itself; DIST names a build to take instead.
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

const ROUNDS = Number(process.argv[2] ?? 31);
const COUNT = 4096;
const LAPS = 20;

/** The modules under test: a build, or the sources bundled in memory. */
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
const { frictionFactor } = await load("pipe/index");
const { colebrookFactor } = await load("pipe/colebrook");
const { reynoldsForLoss } = await load("pipe/reynolds-for-loss");
const { colebrookDiameter } = await load("pipe/colebrook-diameter");

// The others, in our own words from their published formulas.
const LN10 = Math.log(10);
const swameeJain = (re, k) => 0.25 / Math.log10(k / 3.7 + 5.74 / re ** 0.9) ** 2;
const haaland = (re, k) => (-1.8 * Math.log10((k / 3.7) ** 1.11 + 6.9 / re)) ** -2;
function serghides(re, k) {
  const A = -2 * Math.log10(k / 3.7 + 12 / re);
  const B = -2 * Math.log10(k / 3.7 + (2.51 * A) / re);
  const C = -2 * Math.log10(k / 3.7 + (2.51 * B) / re);
  const bend = C - 2 * B + A;
  return (bend === 0 ? C : A - (B - A) ** 2 / bend) ** -2;
}
/** Clamond, Efficient resolution of the Colebrook equation, Ind. Eng. Chem. Res. 48 (2009) 3665: quartic steps on F = X2 - 0.2 with x = ln(X1 + F), two of them. */
function clamond(re, k) {
  const X1 = (k * re * LN10) / (2 * 2.51 * 3.7);
  const X2 = Math.log((re * LN10) / (2 * 2.51));
  let F = X2 - 0.2;
  for (let i = 0; i < 2; i++) {
    const E = (Math.log(X1 + F) + F - X2) / (1 + X1 + F);
    F -= ((1 + X1 + F + 0.5 * E) * E * (X1 + F)) / (1 + X1 + F + E * (1 + E / 3));
  }
  return ((0.5 * LN10) / F) ** 2;
}
function newton(re, k) {
  const a = k / 3.7;
  const b = (2 * 2.51) / (LN10 * re);
  let F = 8;
  for (let i = 0; i < 20; i++) {
    const g = a + b * F;
    const step = (F + Math.log(g)) / (1 + b / g);
    F -= step;
    if (Math.abs(step) < 1e-12) break;
  }
  return ((0.5 * LN10) / F) ** 2;
}
function fixedPoint(re, k) {
  let x = 8;
  for (let i = 0; i < 50; i++) {
    const next = -2 * Math.log10(k / 3.7 + (2.51 * x) / re);
    const done = Math.abs(next - x) < 1e-12 * next;
    x = next;
    if (done) break;
  }
  return 1 / (x * x);
}
/** Swamee and Jain's explicit diameter, within some 4 % (their 1976 paper). drop is g h / L. */
const swameeJainDiameter = (Q, drop, e, nu) =>
  0.66 * (e ** 1.25 * ((Q * Q) / drop) ** 4.75 + nu * Q ** 9.4 * (1 / drop) ** 5.2) ** 0.04;

// Inputs: the chart, even in the logarithms; a fifth of the walls smooth.
let seed = 12345;
function random() {
  seed = (seed * 1103515245 + 12345) % 2147483648;
  return seed / 2147483648;
}
const reynolds = Float64Array.from(
  { length: COUNT },
  () => 10 ** (Math.log10(4000) + random() * Math.log10(1e8 / 4000)),
);
const roughness = Float64Array.from({ length: COUNT }, () => (random() < 0.2 ? 0 : 10 ** (-6 + random() * 4.7)));
const loss = reynolds.map((re, i) => colebrookFactor(re, roughness[i]) * re * re);
// Pipes for the diameter: bore 1 cm to 1 m of water at 10 °C, with the Reynolds numbers and walls above.
const NU = 1.306e-6;
const bore = reynolds.map(() => 10 ** (-2 + 2 * random()));
const flow = reynolds.map((re, i) => (re * Math.PI * bore[i] * NU) / 4);
const wall = roughness.map((k, i) => k * bore[i]);
const drop = reynolds.map((re, i) => (colebrookFactor(re, roughness[i]) * (re * NU) ** 2) / (2 * bore[i] ** 3));

/** Each method gets loops of its own: shared feedback would slow the second and later ones. */
function loops(name, call, arrays) {
  const args = arrays.map((_, j) => `a${j}[i]`);
  const list = arrays.map((_, j) => `a${j}`);
  const make = (body) => new Function("f", ...list, `${body} // ${name}`).bind(null, call, ...arrays);
  return {
    name,
    throughput: make(
      `let s = 0; for (let r = 0; r < ${LAPS}; r++) for (let i = 0; i < ${COUNT}; i++) s += f(${args}); return s;`,
    ),
    chain: make(
      `let s = 0; for (let r = 0; r < ${LAPS}; r++) for (let i = 0; i < ${COUNT}; i++) s = f(${[`${args[0]} + s * 1e-9`, ...args.slice(1)]}); return s;`,
    ),
  };
}

const kept = new Array(COUNT);
const pair = [reynolds, roughness];
const pipes = [flow, drop, wall];
const methods = [
  loops("Math.log", (re) => Math.log(re), pair),
  loops("Swamee-Jain", swameeJain, pair),
  loops("Haaland", haaland, pair),
  loops("Serghides", serghides, pair),
  loops("Clamond, 2 steps", clamond, pair),
  loops("Newton to 1e-12", newton, pair),
  loops("fixed point to 1e-12", fixedPoint, pair),
  loops("exact, inner", colebrookFactor, pair),
  loops("Reynolds for a loss", reynoldsForLoss, [loss, roughness]),
  loops("Swamee-Jain diameter", (Q, d, e) => swameeJainDiameter(Q, d, e, NU), pipes),
  loops("exact diameter", (Q, d, e) => colebrookDiameter(Q, d, e, NU), pipes),
];
// Aim 2 keeps its results, as a caller would; the inner function keeps the same number of plain ones.
const numbers = new Float64Array(COUNT);
const keepers = [
  {
    name: "exact, public, kept",
    throughput: () => {
      for (let r = 0; r < LAPS; r++)
        for (let i = 0; i < COUNT; i++)
          kept[i] = frictionFactor({ reynolds: reynolds[i], relativeRoughness: roughness[i] });
    },
  },
  {
    name: "exact, inner, kept",
    throughput: () => {
      for (let r = 0; r < LAPS; r++)
        for (let i = 0; i < COUNT; i++) numbers[i] = colebrookFactor(reynolds[i], roughness[i]);
    },
  },
];

const start = performance.now();
colebrookFactor(1e5, 1e-3);
const first = performance.now() - start;

const times = new Map();
for (let round = 0; round < ROUNDS; round++) {
  for (const { name, throughput, chain } of [...methods, ...keepers]) {
    for (const [kind, run] of Object.entries({ throughput, chain })) {
      if (run === undefined) continue;
      // Processor time, not the clock's: other work on the machine counts for little.
      const from = process.cpuUsage();
      run();
      const { user, system } = process.cpuUsage(from);
      const taken = ((user + system) * 1e3) / (LAPS * COUNT);
      const key = `${name}|${kind}`;
      times.set(key, [...(times.get(key) ?? []), taken]);
    }
  }
}
const median = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)];
const ratio = (of, to, kind = "throughput") =>
  median(times.get(`${of}|${kind}`).map((t, i) => t / times.get(`${to}|${kind}`)[i]));

// Errors against the 50-digit fixture, relative.
const { rows } = JSON.parse(readFileSync(new URL("../tests/fixtures/colebrook.json", import.meta.url), "utf8"));
const chart = rows.filter(([re, k]) => re <= 1e8 && k <= 0.05);
const ulp = (x) => 2 ** (Math.floor(Math.log2(x)) - 52);
function error(f) {
  const errors = chart.map(([re, k, exact, tail]) => Math.abs(f(re, k) - exact - tail * ulp(exact)) / exact);
  return `worst ${Math.max(...errors).toExponential(1)}, rms ${Math.sqrt(errors.reduce((s, e) => s + e * e, 0) / errors.length).toExponential(1)}`;
}
/** A root's error by feeding the exact factor's own loss back: the factor's error counts in. */
const roundTrip = (got, want) =>
  `worst ${Math.max(...want.map((x, i) => Math.abs(got(i) / x - 1))).toExponential(1)} back and forth`;
const accuracy = {
  "Swamee-Jain": error(swameeJain),
  Haaland: error(haaland),
  Serghides: error(serghides),
  "Clamond, 2 steps": error(clamond),
  "Newton to 1e-12": error(newton),
  "fixed point to 1e-12": error(fixedPoint),
  "exact, inner": error(colebrookFactor),
  "Reynolds for a loss": roundTrip((i) => reynoldsForLoss(loss[i], roughness[i]), reynolds),
  "Swamee-Jain diameter": roundTrip((i) => swameeJainDiameter(flow[i], drop[i], wall[i], NU), bore),
  "exact diameter": roundTrip((i) => colebrookDiameter(flow[i], drop[i], wall[i], NU), bore),
};

console.log(`Node ${process.version}, ${chart.length} points for errors, first call ${(first * 1e3).toFixed(0)} us`);
console.log("method                     ns  x Swamee-Jain  dependent  error");
for (const { name } of [...methods, ...keepers]) {
  const chained = times.has(`${name}|chain`) ? ratio(name, "Swamee-Jain", "chain").toFixed(2) : "";
  console.log(
    `${name.padEnd(22)} ${median(times.get(`${name}|throughput`))
      .toFixed(1)
      .padStart(
        6,
      )} ${ratio(name, "Swamee-Jain").toFixed(3).padStart(14)} ${chained.padStart(10)}  ${accuracy[name] ?? ""}`,
  );
}
const aims = [
  ["1  exact factor over Swamee-Jain", ratio("exact, inner", "Swamee-Jain"), 0.3],
  ["1  exact factor over Math.log", ratio("exact, inner", "Math.log"), 4],
  ["2  public call over inner, results kept", ratio("exact, public, kept", "exact, inner, kept"), 1.35],
  ["3  flow for a loss over Swamee-Jain", ratio("Reynolds for a loss", "Swamee-Jain"), 0.17],
  ["4  diameter over the explicit diameter", ratio("exact diameter", "Swamee-Jain diameter"), 0.6],
];
console.log("\naim                                      reached   at most");
for (const [name, got, most] of aims) console.log(`${name.padEnd(40)} ${got.toFixed(3)}   ${most}`);
