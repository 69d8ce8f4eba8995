/** Lines of runs laid by a given answer, small enough to be worked by hand without a solver. */
import type { DarcyRun, Outlet, Run } from "risingmain/network";
import { type PartWayInput, type PartWayLayout, type PartWaySize, partWaySizes } from "risingmain/selection";
import type { GaugePressure } from "risingmain/units";
import { flow, lossOf, m, water } from "../network/layouts.ts";
import { PER_HEAD } from "./layouts.ts";
import { found } from "./solver.ts";

/** What the end of a line draws, m³/s. */
export const Q = 4e-4;
/** Three sizes: name, bore and price. */
export const [narrow, wide, wider] = [
  { name: "narrow", insideDiameter: m(0.0209), costPerMetre: 1 },
  { name: "wide", insideDiameter: m(0.0266), costPerMetre: 2 },
  { name: "wider", insideDiameter: m(0.0351), costPerMetre: 4 },
] as const satisfies readonly PartWaySize[];
export const pipe = { law: "darcy-weisbach", insideDiameter: m(0.02), length: m(100), roughness: m(0) } as const;

/** Head lost in a metre of a size at 0.4 L/s. */
export const grade = ({ insideDiameter }: PartWaySize): number =>
  lossOf({ ...pipe, id: "r", from: "0", to: "1", insideDiameter, length: m(1) }, Q);

/** A line of runs of so many metres, with the answer that lays so many metres of each size in each of them. */
export interface Line {
  readonly sizes: readonly (readonly PartWaySize[])[];
  readonly lengths: readonly (readonly number[])[];
  /** Head to spare at the end of each run beyond what this answer leaves, m; no end asks for any where left out. */
  readonly spare?: readonly number[];
  readonly changeCoefficient?: number;
  /** Of each run but its bore and length. */
  readonly run?: Partial<DarcyRun>;
}

/** 1000 m of head at the source, 0.4 L/s drawn at the end. */
export function laidOut({ sizes, lengths, spare, changeCoefficient = 0, run = {} }: Line) {
  const totals = lengths.map((list) => list.reduce((sum, length) => sum + length, 0));
  let head = 1000;
  const outlets = sizes.map((list, i): Outlet => {
    head -= list.reduce((sum, size, k) => sum + grade(size) * (lengths[i]?.[k] as number), 0);
    return {
      id: `${i + 1}`,
      junction: `${i + 1}`,
      kind: "fixed demand",
      flow: flow(i === sizes.length - 1 ? Q : 0),
      leastPressure: (spare === undefined ? 0 : (head - (spare[i] as number)) * PER_HEAD) as GaugePressure,
    };
  });
  const input: PartWayInput = {
    network: {
      water,
      junctions: ["0", ...outlets.map(({ id }) => id)].map((id) => ({ id, elevation: m(0) })),
      runs: totals.map(
        (length, i): Run => ({ ...pipe, ...run, id: `r${i}`, from: `${i}`, to: `${i + 1}`, length: m(length) }),
      ),
      outlets,
      sources: [{ id: "tank", junction: "0", kind: "fixed head", head: m(1000) }],
    },
    choices: sizes.map((list, i) => ({ run: `r${i}`, sizes: list })),
    scenarios: [{ name: "use", open: outlets.map(({ id }) => id) }],
    changeCoefficient,
  };
  const values = lengths.flatMap((list, i) => list.map((length) => length / (totals[i] as number)));
  return found(partWaySizes({ ...input, answer: { values } }));
}

/** Metres of each size, part by part. */
export const metres = ({ runs }: PartWayLayout, run = 0): [size: string, length: number][] =>
  (runs[run]?.parts ?? []).map(({ size, length }) => [size, Number((length as number).toFixed(7))]);

export function laid(line: Line): PartWayLayout {
  const result = laidOut(line).laid;
  if (result?.state !== "laid") throw new Error(`not laid: ${JSON.stringify(result)}`);
  return result;
}

/** Sold in pieces of 6 m. */
export const inPieces = (...sizes: readonly PartWaySize[]): PartWaySize[] =>
  sizes.map((size) => ({ ...size, pieceLength: m(6) }));
