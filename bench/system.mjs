/**
 * The running system against Euler steps of one second, and how its cost grows.
 *
 * Run after `npm run build`: node bench/system.mjs. Ratios in one run; medians of several. Times drift with the machine.
 * The Euler loop is the same model, written plainly: the flow from the closed form of the parabola and the square law
 * (and, for the general curve, from a search on the same monotone cubic), a volume, two comparisons; it counts starts.
 */
import { pumpCurve } from "../dist/pump/index.js";
import { simulate } from "../dist/system/index.js";
import { feet, gpm, psi, usGallons } from "../dist/units/index.js";

const DENSITY = 999.7;
const WEIGHT = DENSITY * 9.80665;
const ATMOSPHERE = 101325;
const DAY = 86400;
const VOLUME = usGallons(44);
const PRECHARGE = psi(38);
const [CUT_IN, CUT_OUT] = [psi(40), psi(60)];

const curve = (count) =>
  pumpCurve({
    points: Array.from({ length: count }, (_, i) => {
      const q = (19 * i) / (count - 1);
      return { flow: gpm(q), head: feet(400 - q * q) };
    }),
  });
const system = (changes = {}) => ({
  pump: curve(5),
  well: { staticLevel: feet(100), law: { aquiferLoss: feet(40) / gpm(20), wellLoss: 0 } },
  rise: feet(5),
  mainLoss: [{ flow: gpm(10), headLoss: feet(6) }],
  control: { kind: "switch", cutIn: CUT_IN, cutOut: CUT_OUT },
  tanks: [{ volume: VOLUME, precharge: PRECHARGE }],
  atmosphere: ATMOSPHERE,
  density: DENSITY,
  ...changes,
});
/** Uses that change `count` times a day, the same ones every time. */
const pattern = (count) =>
  Array.from({ length: count }, (_, i) => ({ duration: DAY / count, flow: gpm(0.2 + ((i * 7919) % 97) / 11) }));

const K = (feet(100) + feet(6)) / gpm(10) ** 2;
const B = feet(40) / gpm(20);
const HEAD = feet(400 - 105);
const parabolaFlow = (p) => (-B + Math.sqrt(B * B + 4 * K * (HEAD - p / WEIGHT))) / (2 * K);

/** The same flow from the cubic curve, by Newton from the last one, as a step-by-step program would have it. */
function curveFlow(pump) {
  const line = pump.head;
  let q = gpm(10);
  return (p) => {
    for (let n = 0; n < 20; n++) {
      let i = 0;
      while (i < line.x.length - 2 && q >= line.x[i + 1]) i++;
      const h = line.x[i + 1] - line.x[i];
      const chord = (line.y[i + 1] - line.y[i]) / h;
      const [d0, d1] = [line.slope[i], line.slope[i + 1]];
      const c2 = (3 * chord - 2 * d0 - d1) / h;
      const c3 = (d0 + d1 - 2 * chord) / (h * h);
      const t = q - line.x[i];
      const k = feet(6) / gpm(10) ** 2;
      const excess = line.y[i] + t * (d0 + t * (c2 + t * c3)) - (k * q * q + B * q) - feet(105) - p / WEIGHT;
      const slope = d0 + t * (2 * c2 + t * 3 * c3) - 2 * k * q - B;
      const step = excess / slope;
      q = Math.min(Math.max(q - step, 0), pump.runoutFlow);
      if (Math.abs(step) < 1e-9) break;
    }
    return q;
  };
}

function euler(demand, days, flowAt) {
  const amount = VOLUME * (PRECHARGE + ATMOSPHERE);
  let water = VOLUME - amount / (CUT_OUT + ATMOSPHERE);
  let on = false;
  let starts = 0;
  for (let day = 0; day < days; day++) {
    for (const { duration, flow } of demand) {
      const steps = Math.round(duration);
      for (let i = 0; i < steps; i++) {
        const p = amount / (VOLUME - water) - ATMOSPHERE;
        if (on) {
          if (p >= CUT_OUT) on = false;
        } else if (p <= CUT_IN) {
          on = true;
          starts++;
        }
        water += (on ? flowAt(p) : 0) - flow;
        if (water < 0) water = 0;
      }
    }
  }
  return starts;
}

const median = (list) => [...list].sort((a, b) => a - b)[list.length >> 1];
const timed = (f) => {
  const begin = performance.now();
  const result = f();
  return [performance.now() - begin, result];
};

/** Aim 8: one day, 200 changes of use. */
function aim8() {
  const demand = pattern(200);
  const job = { system: system(), demand, duration: DAY, keepEvents: 0 };
  const plain = curveFlow(job.system.pump);
  const ratios = { parabola: [], curve: [] };
  let counts;
  const runs = 200;
  for (let round = 0; round < 15; round++) {
    const [ours, run] = timed(() => {
      let last;
      for (let i = 0; i < runs; i++) last = simulate(job);
      return last;
    });
    const [closed, a] = timed(() => euler(demand, 2, parabolaFlow));
    const [searched, b] = timed(() => euler(demand, 2, plain));
    if (round < 5) continue;
    ratios.parabola.push(closed / 2 / (ours / runs));
    ratios.curve.push(searched / 2 / (ours / runs));
    counts = { ours: run.starts, euler: a / 2, eulerOnCurve: b / 2, msADay: ours / runs };
  }
  console.log("one day, 200 changes of use: times quicker than Euler at 1 s");
  console.log(`  Euler with the parabola's closed form ${median(ratios.parabola).toFixed(1)}`);
  console.log(`  Euler on the same cubic curve         ${median(ratios.curve).toFixed(1)}`);
  console.log(`  a day ${counts.msADay.toFixed(3)} ms; starts ${counts.ours}, by Euler ${counts.euler}`);
}

/** A table of what one thing does to the cost. */
function growth(title, cases) {
  console.log(title);
  for (const [name, job] of cases) {
    simulate(job);
    const samples = Array.from({ length: 7 }, () => timed(() => simulate(job)));
    const ms = median(samples.map(([time]) => time));
    const run = samples[0][1];
    const each = run.eventCount > 0 ? ((ms * 1000) / run.eventCount).toFixed(2) : "-";
    console.log(
      `  ${name.padEnd(28)} ${ms.toFixed(2).padStart(9)} ms  ${String(run.eventCount).padStart(8)} events  ${each} µs each`,
    );
  }
}

aim8();
const day = { demand: pattern(24), keepEvents: 0 };
growth(
  "points of the pump's curve, 30 days",
  [3, 5, 10, 30, 100].map((n) => [`${n} points`, { ...day, system: system({ pump: curve(n) }), duration: 30 * DAY }]),
);
growth(
  "events within one steady use of 30 days, by tank",
  [400, 40, 4, 0.4].map((gallons) => [
    `${gallons} gal`,
    {
      system: system({ tanks: [{ volume: usGallons(gallons), precharge: PRECHARGE }] }),
      demand: [{ duration: 30 * DAY, flow: gpm(4) }],
      duration: 30 * DAY,
      keepEvents: 0,
    },
  ]),
);
growth(
  "days",
  [1, 10, 100, 365].map((days) => [`${days} days`, { ...day, system: system(), duration: days * DAY }]),
);
const valve = { setPressure: psi(50), minimumFlow: gpm(1) };
const BORE = 0.0168;
const well = { ...system().well, freeArea: BORE };
growth("a year of 300 changes of use a day, every event worked through and kept", [
  ["level follows at once", { ...day, demand: pattern(300), system: system(), duration: 365 * DAY, keepEvents: 1e6 }],
  [
    "regulating valve",
    {
      ...day,
      demand: pattern(300),
      system: system({ control: { ...system().control, valve } }),
      duration: 365 * DAY,
      keepEvents: 1e6,
    },
  ],
  ["storing well", { ...day, demand: pattern(300), system: system({ well }), duration: 365 * DAY, keepEvents: 1e6 }],
]);
