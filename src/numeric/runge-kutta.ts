/**
 * One step of the Dormand–Prince pair of orders 5 and 4 (`dormand-prince-1980`): the step, and an estimate of its error.
 *
 * @module
 */

/** Rates of change of a state, written into `out`. */
export type Rates = (state: readonly number[], out: number[]) => void;

/** Room for the stages, made once and used for every step. */
export interface StepRoom {
  readonly stages: readonly number[][];
  readonly state: number[];
  readonly next: number[];
  readonly error: number[];
}

/** Room for states of a size. */
export function stepRoom(size: number): StepRoom {
  const row = (): number[] => new Array<number>(size).fill(0);
  return { stages: [row(), row(), row(), row(), row(), row(), row()], state: row(), next: row(), error: row() };
}

/** The pair's table, row by row: what of each earlier stage goes into the next. */
const A: readonly (readonly number[])[] = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
];

/** Weights of the fifth order less those of the fourth. */
const E: readonly number[] = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40];

/** Takes a step from `from`; the result is in `room.next`, the error in `room.error`. Rates must not depend on time. */
export function dormandPrince(rates: Rates, from: readonly number[], step: number, room: StepRoom): void {
  const { stages, state, next, error } = room;
  const size = from.length;
  rates(from, stages[0] as number[]);
  for (let s = 1; s < 7; s++) {
    const row = A[s] as readonly number[];
    // The last row is the fifth-order result itself.
    const into = s === 6 ? next : state;
    for (let i = 0; i < size; i++) {
      let sum = 0;
      for (let k = 0; k < s; k++) sum += (row[k] as number) * ((stages[k] as number[])[i] as number);
      into[i] = (from[i] as number) + step * sum;
    }
    rates(into, stages[s] as number[]);
  }
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let k = 0; k < 7; k++) sum += (E[k] as number) * ((stages[k] as number[])[i] as number);
    error[i] = step * sum;
  }
}
