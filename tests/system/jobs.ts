/** A plain job in round SI numbers for the tests of the running system. */
import type { PumpCurve } from "risingmain/pump";
import type { SimulationInput } from "risingmain/system";

/** Head a − d Q − b Q² − c Q³ as a curve with knots, met exactly by its cubics; power P₀ + p Q where given. */
export interface Shape {
  readonly a: number;
  readonly d: number;
  readonly b: number;
  readonly c: number;
  readonly knots: readonly number[];
  readonly power?: readonly [atRest: number, perFlow: number];
}

/** Head of a shape at a flow. */
export const headOf = ({ a, d, b, c }: Shape, q: number): number => a - q * (d + q * (b + q * c));

/** The curve of a shape, as plain data. */
export function curveOf(shape: Shape): PumpCurve {
  const { d, b, c, knots, power } = shape;
  const y = knots.map((q) => headOf(shape, q));
  return {
    head: { x: knots, y, slope: knots.map((q) => -(d + q * (2 * b + q * 3 * c))) },
    ...(power && {
      inputPower: { x: knots, y: knots.map((q) => power[0] + power[1] * q), slope: knots.map(() => power[1]) },
    }),
    shutoffHead: y[0],
    shutoffBasis: "given",
    greatestHead: y[0],
    runoutFlow: knots.at(-1),
    runoutHead: y.at(-1),
    shape: "falling",
    rising: [],
  } as unknown as PumpCurve;
}

/** 120 m at no flow, 30 m at the end, 1.5 L/s; four unequal pieces of one cubic. */
export const SHAPE: Shape = {
  a: 120,
  d: 2e3,
  b: 2e7,
  c: 1.2e10,
  knots: [0, 3e-4, 7e-4, 1.2e-3, 1.5e-3],
  power: [700, 4e5],
};

/** A job: a switch at 280 and 410 kPa, a tank of 0.3 m³, a well 30 m down that falls 8 m a litre a second. */
export function plainJob(): SimulationInput {
  return {
    system: {
      pump: curveOf(SHAPE),
      well: { staticLevel: 30, law: { aquiferLoss: 8e3, wellLoss: 1e6 } },
      rise: 2,
      mainLoss: [{ flow: 1e-3, headLoss: 3 }],
      control: { kind: "switch", cutIn: 280e3, cutOut: 410e3 },
      tanks: [{ volume: 0.3, precharge: 265e3 }],
      atmosphere: 101_325,
      density: 1000,
    },
    demand: [{ duration: 3600, flow: 2e-4 }],
    duration: 7200,
  } as unknown as SimulationInput;
}
