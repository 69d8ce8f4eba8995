/**
 * What the published rows do not ask for: whole jobs, solvers and dense grids.
 *
 * Inputs are made with + − × ÷ alone, so that every engine starts from the same bits. Quantities are SI numbers.
 */
import { type Network, outletOfRating, solveNetwork, tankSource, worstCombination } from "risingmain/network";
import {
  churchillFactor,
  darcyWeisbachLoss,
  diameterForHeadLoss,
  flowForHeadLoss,
  frictionFactor,
  haalandFactor,
  hazenWilliamsLoss,
  swameeJainFactor,
} from "risingmain/pipe";
import { planSystem, readJob, reportOf, sampleJob } from "risingmain/plan";
import { curveAtSpeed, operatingPoint, pumpCurve, wornCurve } from "risingmain/pump";
import { leastCostSizes, tornado } from "risingmain/selection";
import { asBibtex, bibliography } from "risingmain/sources";
import { type PumpEnd, simulateSurge } from "risingmain/surge";
import { type RunningSystem, simulate } from "risingmain/system";
import { bankDrawdown, tankCycle, tankDrawdown, tankSizeForRunTime, worstDemand } from "risingmain/tank";
import {
  type Density,
  feet,
  format,
  gpm,
  inches,
  inFeet,
  inGpm,
  inPsi,
  type KinematicViscosity,
  type Length,
  litres,
  millimetres,
  parseFlow,
  parseLength,
  parsePressure,
  psi,
  ratio,
  standardAtmospheres,
  type Temperature,
  usGallons,
  type VolumeFlow,
} from "risingmain/units";
import { atmosphereAt, waterAt } from "risingmain/water";
import { wellFunction } from "risingmain/well";
import ranch from "../../docs/jobs/ranch.json" with { type: "json" };
import looped from "../../docs/jobs/ranch-looped.json" with { type: "json" };

/** A calculation, and the module it belongs to. */
export interface Workload {
  readonly module: string;
  readonly name: string;
  /** Every operation in it is + − × ÷ √: the same bits in every engine, or a fault. */
  readonly exact?: true;
  /** Plain data. */
  readonly run: () => unknown;
}

const VISCOSITY = 1.3065e-6 as KinematicViscosity;
const DENSITY = 999.7 as Density;
const WATER = { density: DENSITY, kinematicViscosity: VISCOSITY };
const ATMOSPHERE = standardAtmospheres(1);

/** `count` numbers, each `step` times the one before. */
const geometric = (from: number, step: number, count: number): readonly number[] => {
  const numbers = [from];
  while (numbers.length < count) numbers.push((numbers.at(-1) as number) * step);
  return numbers;
};
const even = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

const pairs = <T>(a: readonly number[], b: readonly number[], of: (a: number, b: number) => T): readonly T[] =>
  a.flatMap((x) => b.map((y) => of(x, y)));

const pipe = (bore: number, roughness: number) => ({
  insideDiameter: bore as Length,
  roughness: roughness as Length,
  viscosity: VISCOSITY,
  length: 100 as Length,
});

const CURVE = pumpCurve({
  points: [
    { flow: gpm(0), head: feet(412) },
    { flow: gpm(5), head: feet(403), efficiency: ratio(0.34) },
    { flow: gpm(10), head: feet(377), efficiency: ratio(0.55) },
    { flow: gpm(15), head: feet(330), efficiency: ratio(0.64) },
    { flow: gpm(20), head: feet(262), efficiency: ratio(0.63) },
    { flow: gpm(25), head: feet(168), efficiency: ratio(0.5) },
  ],
});

/** A pump on two pipes in line, over a lift. */
function onPipes(curve: typeof CURVE, lift: number, bore: number) {
  const systemHead = (flow: VolumeFlow): Length =>
    (lift +
      darcyWeisbachLoss({ ...pipe(bore, 1.5e-6), flow }).headLoss +
      darcyWeisbachLoss({ ...pipe(1.3 * bore, 4.5e-5), flow }).headLoss) as Length;
  const { evaluations: _, ...point } = { evaluations: 0, ...operatingPoint({ curve, systemHead }) };
  return point;
}

/** A square mesh of Darcy pipes from one tank, with an open outlet at every third junction and a fixed use at the others. */
function mesh(side: number): Network {
  const id = (i: number, j: number): string => `${i}-${j}`;
  const places = Array.from({ length: side * side }, (_, n) => [Math.floor(n / side), n % side] as const);
  const run = (from: string, to: string, n: number) =>
    ({
      id: `${from} ${to}`,
      from,
      to,
      law: "darcy-weisbach",
      insideDiameter: millimetres(20 + ((7 * n) % 30)),
      length: (12 + ((5 * n) % 41)) as Length,
      roughness: 1.5e-6 as Length,
      lossCoefficient: n % 3,
    }) as const;
  return {
    water: WATER,
    junctions: places.map(([i, j], n) => ({ id: id(i, j), elevation: ((3 * n) % 8) as Length })),
    runs: places.flatMap(([i, j], n) => [
      ...(j + 1 < side ? [run(id(i, j), id(i, j + 1), n)] : []),
      ...(i + 1 < side ? [run(id(i, j), id(i + 1, j), n + 17)] : []),
    ]),
    outlets: places.slice(1).map(([i, j], n) =>
      n % 3 === 0
        ? {
            id: `outlet ${n}`,
            junction: id(i, j),
            kind: "pressure-dependent",
            coefficient: outletOfRating({ flow: gpm(3 + (n % 4)), pressure: psi(30), density: DENSITY }),
          }
        : { id: `outlet ${n}`, junction: id(i, j), kind: "fixed demand", flow: gpm(0.05 + (n % 5) / 20) },
    ),
    sources: [tankSource({ id: "tank", junction: "0-0", elevation: feet(0), pressure: psi(60), density: DENSITY })],
  };
}

const STOCK = [0.824, 1.049, 1.38, 1.61].map((bore, i) => ({
  name: `size ${i}`,
  insideDiameter: inches(bore),
  costPerMetre: 1 + i * i,
  pressureRating: psi(160),
}));

const DAY_SYSTEM: RunningSystem = {
  pump: CURVE,
  motorEfficiency: ratio(0.75),
  well: { staticLevel: feet(100), freeArea: 0.0167 as never, law: { aquiferLoss: 8000, wellLoss: 1e6 } as never },
  rise: feet(5),
  mainLoss: [{ flow: gpm(10), headLoss: feet(6) }],
  control: { kind: "switch", cutIn: psi(40), cutOut: psi(60) },
  tanks: [{ volume: usGallons(44), precharge: psi(38) }],
  atmosphere: ATMOSPHERE,
  density: DENSITY,
};

const SURGE_START: PumpEnd = {
  kind: "pump",
  sourceHead: 5 as Length,
  shutoffHead: 130 as Length,
  ratedFlow: 0.001 as VolumeFlow,
  ratedHead: 100 as Length,
  stopTime: 0.5 as never,
  halfSpeedTime: 0.05 as never,
  checkValveDelay: 0.2 as never,
};

const SWITCH = { cutIn: psi(40), cutOut: psi(60), atmosphere: ATMOSPHERE };

export const workloads: readonly Workload[] = [
  {
    module: "pipe",
    name: "friction factor, a few",
    exact: true,
    run: () =>
      pairs([500, 2500, 4000, 3e4, 1e6, 1e8], [0, 1e-6, 1e-3, 0.05], (reynolds, relativeRoughness) =>
        frictionFactor({ reynolds, relativeRoughness }),
      ),
  },
  {
    module: "pipe",
    name: "friction factor, 40,000",
    exact: true,
    run: () =>
      digestOf(
        pairs(
          geometric(100, 1.035, 400),
          [0, ...geometric(1e-8, 1.168, 99)],
          (reynolds, relativeRoughness) => frictionFactor({ reynolds, relativeRoughness }).value,
        ),
      ),
  },
  {
    module: "pipe",
    name: "Darcy–Weisbach loss, flow and diameter, 6,000",
    exact: true,
    run: () =>
      digestOf(
        numbersOf(
          pairs(geometric(0.008, 1.08, 40), geometric(1e-6, 1.12, 50), (bore, flow) => {
            const run = pipe(bore, bore / 1000);
            const { headLoss } = darcyWeisbachLoss({ ...run, flow: flow as VolumeFlow });
            const { insideDiameter: _, ...line } = run;
            return [
              headLoss,
              flowForHeadLoss({ ...run, headLoss }),
              diameterForHeadLoss({ ...line, flow: flow as VolumeFlow, headLoss }),
            ];
          }),
        ),
      ),
  },
  {
    module: "pipe",
    name: "explicit and empirical formulas",
    run: () =>
      pairs(geometric(5000, 9, 5), [0, 1e-4, 0.01], (reynolds, relativeRoughness) => {
        const input = { reynolds, relativeRoughness };
        return [swameeJainFactor(input).value, haalandFactor(input).value, churchillFactor(input).value];
      }).concat(
        pairs([0.02, 0.1], [0.0005, 0.003], (bore, flow) => [
          hazenWilliamsLoss({
            insideDiameter: bore as Length,
            flow: flow as VolumeFlow,
            length: 100 as Length,
            coefficient: 145,
          }).headLoss,
        ]),
      ),
  },
  { module: "network", name: "mesh of 5 by 5, Darcy", exact: true, run: () => solveNetwork(mesh(5)) },
  {
    module: "network",
    name: "mesh of 30 by 30, Darcy",
    exact: true,
    run: () => digestOf(numbersOf(solveNetwork(mesh(30)))),
  },
  {
    module: "network",
    name: "worst combination of outlets",
    exact: true,
    run: () => worstCombination({ network: mesh(3), openAtOnce: 2 }),
  },
  {
    module: "tank",
    name: "drawdown, bank, cycle, size (air at one temperature)",
    exact: true,
    run: () =>
      [28, 38, 40].map((precharge) => {
        const tank = { volume: usGallons(85), precharge: psi(precharge) };
        const { usable } = tankDrawdown({ ...SWITCH, ...tank });
        return {
          usable,
          bank: bankDrawdown({ ...SWITCH, tanks: [tank, { ...tank, elevation: feet(20) }], density: DENSITY }),
          cycles: even(0.5, 9.5, 7).map((demand) => tankCycle({ usable, pumpFlow: gpm(10), demand: gpm(demand) })),
          worst: worstDemand({ usable, pumpFlow: gpm(10) }),
          size: tankSizeForRunTime({ ...SWITCH, pumpFlow: gpm(10), runTime: 120 as never }),
        };
      }),
  },
  {
    module: "pump",
    name: "operating points on two pipes, a few",
    exact: true,
    run: () => pairs([30, 60, 90], [0.02, 0.03], (lift, bore) => onPipes(CURVE, lift, bore)),
  },
  {
    module: "pump",
    name: "operating points on two pipes, 2,000",
    exact: true,
    run: () =>
      digestOf(
        numbersOf(pairs(even(5, 120, 50), geometric(0.015, 1.03, 40), (lift, bore) => onPipes(CURVE, lift, bore))),
      ),
  },
  {
    module: "pump",
    name: "speeds and wear",
    run: () =>
      [0.7, 0.85, 1].map((speed) =>
        onPipes(wornCurve(curveAtSpeed(CURVE, ratio(speed)), { headLost: ratio(0.08) }), 40, 0.03),
      ),
  },
  {
    module: "system",
    name: "a day with three rates of use",
    run: () =>
      simulate({
        system: DAY_SYSTEM,
        demand: [0.2, 5, 1].map((flow, i) => ({ duration: [21600, 7200, 57600][i] as never, flow: gpm(flow) })),
        duration: 86400 as never,
        keepEvents: 20,
      }),
  },
  {
    module: "surge",
    name: "a pump that stops, with and without an air tank",
    run: () =>
      [
        undefined,
        {
          volume: litres(60),
          precharge: 6e5 as never,
          exponent: 1.2,
          connectionDiameter: millimetres(32),
          connectionLoss: 2,
        },
      ].map((airTank) => {
        const result = simulateSurge({
          pipes: [
            {
              length: 300 as Length,
              insideDiameter: millimetres(35),
              waveSpeed: 330 as never,
              frictionFactor: 0.02,
              endElevation: 60 as Length,
            },
          ],
          startElevation: 0 as Length,
          start: airTank === undefined ? SURGE_START : { ...SURGE_START, airTank },
          end: { kind: "fixed head", head: 90 as Length },
          density: DENSITY,
          vapourPressure: 1228 as never,
          atmosphere: 101_325 as never,
          duration: 20 as never,
        });
        return result.state === "followed"
          ? [result.highestPressure, result.lowestPressure, result.checkValve]
          : result.state;
      }),
  },
  {
    module: "selection",
    name: "least-cost sizes",
    run: () => {
      const loop = mesh(2);
      const runs = loop.runs.slice(0, 3);
      const outlets = loop.outlets.map(({ id, junction }) => ({
        id,
        junction,
        kind: "fixed demand" as const,
        flow: gpm(6),
        leastPressure: psi(40),
      }));
      return leastCostSizes({
        network: { ...loop, runs, outlets },
        choices: runs.map(({ id }) => ({ run: id, sizes: STOCK })),
        scenarios: [{ name: "all", open: outlets.map(({ id }) => id) }],
        greatestVelocity: 1.5 as never,
      });
    },
  },
  {
    module: "selection",
    name: "what matters most",
    run: () =>
      tornado({
        inputs: { bore: 0.035, length: 300, flow: 0.001 },
        ranges: { length: [280, 320], bore: [0.0335, 0.0365] },
        output: "loss",
        evaluate: ({ bore = 0, length = 0, flow = 0 }) => ({
          loss: darcyWeisbachLoss({ ...pipe(bore, 1.5e-6), length: length as Length, flow: flow as VolumeFlow })
            .headLoss,
        }),
      }),
  },
  {
    module: "water",
    name: "water and air",
    run: () => [
      even(273.2, 373, 12).map((temperature) => waterAt({ temperature: temperature as Temperature })),
      even(0, 4000, 5).map((elevation) => atmosphereAt(elevation as Length)),
    ],
  },
  { module: "well", name: "well function", run: () => geometric(1e-6, 4, 14).map((u) => wellFunction(u)) },
  {
    module: "units",
    name: "text to quantity and back",
    exact: true,
    run: () => [
      ["240 ft", "1-1/4 in", "3.5 km", "12 cm"].map((text) => [parseLength(text), inFeet(parseLength(text))]),
      ["18 gpm", "4.5 m³/h"].map((text) => [parseFlow(text), inGpm(parseFlow(text))]),
      ["60 psi", "4 bar"].map((text) => [
        parsePressure(text),
        inPsi(parsePressure(text)),
        format(parsePressure(text), "psi"),
      ]),
    ],
  },
  { module: "sources", name: "bibliography", exact: true, run: () => asBibtex(bibliography()) },
  ...[
    ["the demo property", ranch],
    ["the demo property, in a loop", looped],
    ["the sample job", sampleJob],
  ].map(
    ([name, job]): Workload => ({
      module: "plan",
      name: name as string,
      run: () => {
        const plan = planSystem(readJob(job));
        return { plan, report: reportOf(plan, { units: "metric" }) };
      },
    }),
  ),
];

/** All the numbers of plain data, in order. */
function numbersOf(value: unknown): readonly number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersOf) : [];
}

/** The bits of many numbers in 16 digits, so that a grid is one line. */
export function digestOf(numbers: readonly number[]): string {
  return digestOfText(numbers.map((number) => (Object.is(number, -0) ? "-0" : String(number))).join());
}

/** Two 32-bit FNV-1a sums of a text. */
export function digestOfText(text: string): string {
  return [0x811c9dc5, 0x9e3779b1]
    .map((start) => {
      let sum = start;
      for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
      return (sum >>> 0).toString(16).padStart(8, "0");
    })
    .join("");
}
