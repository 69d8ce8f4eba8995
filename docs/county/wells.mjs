/**
 * Quillet County: 10,000 private wells of our own invention, the same ones for the same seed.
 *
 * Any process can write down any well by its number, so a unit of work is a seed and two numbers. A real county would read
 * its job documents from where it keeps them.
 */

/** The pumps the county's installers stock, smallest first: flow of the curve's end, stages, motor. Invented. */
const STOCK = [
  { flow: 12, stages: 8, motor: "0.5 hp" },
  { flow: 12, stages: 11, motor: "0.75 hp" },
  { flow: 12, stages: 15, motor: "1 hp" },
  { flow: 12, stages: 21, motor: "1.5 hp" },
  { flow: 24, stages: 11, motor: "1.5 hp" },
  { flow: 24, stages: 15, motor: "2 hp" },
  { flow: 24, stages: 22, motor: "3 hp" },
  { flow: 24, stages: 34, motor: "5 hp" },
];

const pumps = STOCK.map(({ flow, stages, motor }) => ({
  name: `${flow / 2} gpm, ${motor}`,
  curve: [
    [0, 1, 0],
    [0.25, 0.97, 38],
    [0.5, 0.87, 57],
    [0.75, 0.68, 60],
    [1, 0.4, 44],
  ].map(([share, head, efficiency]) => ({
    flow: `${flow * share} gpm`,
    head: `${(27 * stages * head).toFixed(1)} ft`,
    efficiency: `${efficiency} %`,
  })),
  diameter: "3.8 in",
  length: `${24 + 1.2 * stages} in`,
  mass: `${25 + stages} lb`,
  motor: { power: motor, voltage: "230 V", phase: "single-phase", serviceFactor: "1.15" },
}));

/** What the ground gives: ranges of depth, share of it that is dry, yield and drop of level for each gpm. Invented. */
const GROUNDS = [
  { name: "river gravel", depth: [70, 150], dry: [0.15, 0.35], yield: [12, 35], drop: [0.3, 1.2] },
  { name: "sandstone", depth: [160, 380], dry: [0.2, 0.45], yield: [7, 20], drop: [1.5, 5] },
  { name: "upland granite", depth: [280, 560], dry: [0.2, 0.5], yield: [2, 9], drop: [6, 16] },
];

/** The job document of one well. */
export function wellJob(seed, number) {
  const random = randomFrom(Math.imul(seed, 0x9e3779b1) ^ Math.imul(number + 1, 0x85ebca6b));
  const between = ([low, high]) => low + (high - low) * random();
  const pick = (list) => list[Math.floor(list.length * random())];
  const chance = (share) => random() < share;

  const ground = pick(GROUNDS);
  const depth = Math.round(between(ground.depth));
  const staticLevel = Math.round(depth * between(ground.dry));
  const wellYield = between(ground.yield);
  // A test that would draw the level too far down is run at a lower flow.
  const drop = between(ground.drop);
  const testFlow = Math.min(wellYield, (0.7 * (depth - staticLevel)) / drop);
  const cutIn = pick([30, 40]);
  const hydrant = chance(0.6);
  const herd = hydrant && chance(0.4);
  return {
    version: 1,
    name: `well ${number}, ${ground.name}`,
    site: {
      elevation: `${Math.round(between([400, 3800]))} ft`,
      waterTemperature: `${Math.round(between([46, 56]))} °F`,
    },
    well: {
      casingInsideDiameter: pick(["4.5 in", "5 in", "6 in"]),
      depth: `${depth} ft`,
      staticLevel: `${staticLevel} ft`,
      yield: `${wellYield.toFixed(1)} gpm`,
      test: [{ flow: `${testFlow.toFixed(1)} gpm`, pumpingLevel: `${(staticLevel + drop * testFlow).toFixed(1)} ft` }],
    },
    pump: { candidates: pumps },
    controls: {
      cutIn: `${cutIn} psi`,
      cutOut: `${cutIn + 20} psi`,
      ...(chance(0.8) ? { reliefPressure: `${cutIn + 45} psi` } : {}),
      dryRunCutOff: chance(0.5),
    },
    tank: { maximumPressure: "125 psi" },
    places: [
      { name: "house", elevation: `${Math.round(between([-10, 25]))} ft` },
      ...(hydrant ? [{ name: "yard", elevation: `${Math.round(between([-15, 30]))} ft` }] : []),
    ],
    runs: [
      { from: "wellhead", to: "house", length: `${Math.round(between([40, 400]))} ft` },
      ...(hydrant ? [{ from: "house", to: "yard", length: `${Math.round(between([50, 700]))} ft` }] : []),
    ],
    outlets: [
      { name: "house", at: "house", flow: `${between([4, 7]).toFixed(1)} gpm`, pressure: "25 psi" },
      ...(hydrant
        ? [{ name: "hydrant", at: "yard", flow: `${between([3, 12]).toFixed(1)} gpm`, pressure: "20 psi" }]
        : []),
    ],
    uses: [{ name: "house", outlets: ["house"] }, ...(hydrant ? [{ name: "hydrant", outlets: ["hydrant"] }] : [])],
    demand: {
      people: 1 + Math.floor(6 * random()),
      ...(herd ? { livestock: [{ kind: "beef cow", head: 5 + Math.floor(40 * random()) }] } : {}),
    },
    power: {
      sources: [
        chance(0.1)
          ? {
              name: "generator",
              kind: "generator",
              voltage: "240 V",
              phase: "single-phase",
              runningPower: "7,500 W",
              surgePower: "9,500 W",
            }
          : { name: "utility", kind: "utility", voltage: "240 V", phase: "single-phase" },
      ],
      circuit: [
        { name: "service to wellhead", length: `${Math.round(between([30, 300]))} ft` },
        { name: "drop cable" },
      ],
    },
  };
}

/** Even numbers from 0 to 1, in whole-number arithmetic: the same in every process. */
function randomFrom(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
