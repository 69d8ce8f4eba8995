/**
 * One step of the Dormand–Prince pair of orders 5 and 4 (`dormand-prince-1980`): the step, an estimate of its error, and
 * the states on the way.
 *
 * @module
 */

/** Rates of change of a state, written into `out`. */
export type Rates = (state: Float64Array, out: Float64Array) => void;

/** Room for the stages, made once and used for every step. */
export interface StepRoom {
  /** Rates at the beginning, at the four places between, and twice at the end: the last are those of `next`. */
  readonly stages: Float64Array[];
  /** How many of the state's numbers the rates depend on, the first ones; the others are integrals carried along. */
  readonly moving: number;
  readonly state: Float64Array;
  readonly next: Float64Array;
  readonly error: Float64Array;
}

/** Room for states of a size, the rates depending on the first `moving` of its numbers. */
export function stepRoom(size: number, moving: number): StepRoom {
  const row = (): Float64Array => new Float64Array(size);
  return { stages: [row(), row(), row(), row(), row(), row(), row()], moving, state: row(), next: row(), error: row() };
}

/**
 * Takes a step from `from`, whose rates the caller has put into the first stage; the result is in `room.next`, the error
 * of its moving part in `room.error`. Rates must not depend on time.
 *
 * The pair's table is written out: loops over its rows take half of the time of a step.
 */
export function dormandPrince(rates: Rates, from: Float64Array, step: number, room: StepRoom): void {
  const { stages, moving, state, next, error } = room;
  const [k1, k2, k3, k4, k5, k6, k7] = stages as unknown as Stages;
  const size = from.length;
  for (let i = 0; i < moving; i++) state[i] = at(from, i) + step * ((1 / 5) * at(k1, i));
  rates(state, k2);
  for (let i = 0; i < moving; i++) state[i] = at(from, i) + step * ((3 / 40) * at(k1, i) + (9 / 40) * at(k2, i));
  rates(state, k3);
  for (let i = 0; i < moving; i++) {
    state[i] = at(from, i) + step * ((44 / 45) * at(k1, i) - (56 / 15) * at(k2, i) + (32 / 9) * at(k3, i));
  }
  rates(state, k4);
  for (let i = 0; i < moving; i++) {
    const early = (19372 / 6561) * at(k1, i) - (25360 / 2187) * at(k2, i);
    state[i] = at(from, i) + step * (early + (64448 / 6561) * at(k3, i) - (212 / 729) * at(k4, i));
  }
  rates(state, k5);
  for (let i = 0; i < moving; i++) {
    const early = (9017 / 3168) * at(k1, i) - (355 / 33) * at(k2, i) + (46732 / 5247) * at(k3, i);
    state[i] = at(from, i) + step * (early + (49 / 176) * at(k4, i) - (5103 / 18656) * at(k5, i));
  }
  rates(state, k6);
  for (let i = 0; i < size; i++) {
    const early = (35 / 384) * at(k1, i) + (500 / 1113) * at(k3, i) + (125 / 192) * at(k4, i);
    next[i] = at(from, i) + step * (early - (2187 / 6784) * at(k5, i) + (11 / 84) * at(k6, i));
  }
  rates(next, k7);
  // Weights of the fifth order less those of the fourth.
  for (let i = 0; i < moving; i++) {
    const early = (71 / 57600) * at(k1, i) - (71 / 16695) * at(k3, i) + (71 / 1920) * at(k4, i);
    error[i] = step * (early - (17253 / 339200) * at(k5, i) + (22 / 525) * at(k6, i) - (1 / 40) * at(k7, i));
  }
}

/** Makes the rates at the end of a step those at the beginning of the next. */
export function stepOn({ stages }: StepRoom): void {
  const last = stages[6] as Float64Array;
  stages[6] = stages[0] as Float64Array;
  stages[0] = last;
}

/**
 * The moving part of the state within the step just taken, at a share of it, into `room.state`. Of the fourth order, as
 * the error estimate is: Shampine, "Some practical Runge–Kutta formulas", Mathematics of Computation 46 (1986).
 */
export function within(from: Float64Array, step: number, share: number, room: StepRoom): Float64Array {
  const { stages, moving, state } = room;
  const [k1, , k3, k4, k5, k6, k7] = stages as unknown as Stages;
  const t = share;
  const w1 = t * (1 + t * (-8048581381 / 2820520608 + t * (8663915743 / 2820520608 - t * (12715105075 / 11282082432))));
  const w3 = t * t * (131558114200 / 32700410799 + t * (-68118460800 / 10900136933 + t * (87487479700 / 32700410799)));
  const w4 = t * t * (-1754552775 / 470086768 + t * (14199869525 / 1410260304 - t * (10690763975 / 1880347072)));
  const w5 =
    t * t * (127303824393 / 49829197408 + t * (-318862633887 / 49829197408 + t * (701980252875 / 199316789632)));
  const w6 = t * t * (-282668133 / 205662961 + t * (2019193451 / 616988883 - t * (1453857185 / 822651844)));
  const w7 = t * t * (40617522 / 29380423 + t * (-110615467 / 29380423 + t * (69997945 / 29380423)));
  for (let i = 0; i < moving; i++) {
    const early = w1 * at(k1, i) + w3 * at(k3, i) + w4 * at(k4, i);
    state[i] = at(from, i) + step * (early + w5 * at(k5, i) + w6 * at(k6, i) + w7 * at(k7, i));
  }
  return state;
}

type Stages = readonly [
  Float64Array,
  Float64Array,
  Float64Array,
  Float64Array,
  Float64Array,
  Float64Array,
  Float64Array,
];

function at(row: Float64Array, i: number): number {
  return row[i] as number;
}
