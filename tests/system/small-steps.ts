/**
 * The running system once more, by small steps of time: the head balance solved at every step, pressure and drawdown
 * carried by the classical Runge–Kutta method, each event found by halving the step that passes it. Calls nothing of the
 * library.
 */
import type { RunningSystem, SimulationInput, SystemEventKind } from "risingmain/system";
import { headOf, type Shape } from "./jobs.ts";

/** What came of it. */
export interface Stepped {
  readonly events: readonly { kind: SystemEventKind; time: number; pressure: number; depth: number }[];
  readonly pumped: number;
  readonly refused: number;
  readonly energy: number;
  readonly runTime: number;
  readonly pressure: number;
  readonly water: number;
  readonly depth: number;
}

/** Pressure, drawdown, volume pumped, energy. */
type State = [pressure: number, drawdown: number, pumped: number, energy: number];

const GRAVITY = 9.80665;
/** Length of a step, s: the fastest change of the jobs takes a hundred. */
const STEP = 1;

/** Runs a job whose pump has this shape and whose main's loss goes as the square of the flow. */
export function bySmallSteps(shape: Shape, { system, demand, duration, start = {} }: SimulationInput): Stepped {
  const {
    well,
    control,
    tanks,
    density,
    atmosphere,
    lowLevel,
    motorEfficiency = 1,
    polytropicExponent: n = 1,
  } = system;
  const { aquiferLoss: B, wellLoss: C } = well.law;
  const weight = density * GRAVITY;
  const area = well.freeArea ?? 0;
  const stores = area > 0;
  const lift = well.staticLevel + system.rise;
  const { cutIn, cutOut, set, least, droop, open } = settings(control, weight);
  const [{ flow: at, headLoss }] = system.mainLoss as unknown as [{ flow: number; headLoss: number }];
  const k = headLoss / at ** 2;
  const most = Math.min(shape.knots.at(-1) as number, system.flowLimit ?? Infinity);
  const trip = (lowLevel?.stopLevel ?? Infinity) - well.staticLevel;
  const restart = (lowLevel?.restartLevel ?? 0) - well.staticLevel;
  const dry = (well.intake ?? Infinity) - well.staticLevel;

  const airs = tanks.map(({ volume, precharge, elevation = 0 }) => {
    const column = weight * elevation;
    return { volume, full: precharge + atmosphere, opens: precharge + column, absolute: atmosphere - column };
  });
  const opening = Math.max(0, Math.min(...airs.map(({ opens }) => opens)));
  const held = (p: number): number =>
    airs.reduce((sum, { volume, full, opens, absolute }) => {
      return p > opens ? sum + volume * (1 - (full / (p + absolute)) ** (1 / n)) : sum;
    }, 0);
  /** Water taken up per rise of pressure by the tanks that stand open, by one law to either side of a mark. */
  const give = (p: number, opened: typeof airs): number =>
    opened.reduce((sum, { volume, full, absolute }) => {
      const air = p + absolute;
      return sum + ((volume / n) * (full / air) ** (1 / n)) / air;
    }, 0);

  const inflow = (s: number): number => {
    if (!(s > 0)) return 0;
    return C === 0 ? s / B : (Math.sqrt(B * B + 4 * C * s) - B) / (2 * C);
  };
  const fallAt = (q: number): number => q * (B + C * q);
  /** The pump's flow with nothing but main and open valve in its way: Newton from the right, the curve being concave. */
  const base = (p: number, s: number): number => {
    const { d, b, c } = shape;
    const asked = lift + p / weight + (stores ? s : 0);
    const [b1, c1] = stores ? [0, 0] : [B, C];
    let q = most;
    for (let i = 0; i < 40; i++) {
      const spare = headOf(shape, q) - asked - q * (b1 + q * (k + open + c1));
      if (spare >= 0) break;
      const next = q + spare / (d + b1 + q * (2 * (b + k + open + c1) + 3 * c * q));
      if (next <= 0) return 0;
      if (q - next < 1e-17) break;
      q = next;
    }
    return q;
  };
  const flow = (p: number, s: number, above: boolean): number => {
    if (p > set || (p === set && above)) return Math.min(least, base(p, s));
    return droop > 0 ? Math.min(least + (set - p) / droop, base(p, s)) : base(p, s);
  };
  /** Whether a drooping valve, and not the pump, says what flows. */
  const throttled = ([p, s]: State): boolean => p > set || least + (set - p) / droop < base(p, s);
  const power = (q: number, p: number, s: number): number => {
    const [p0, p1] = shape.power ?? [0, 0];
    const full = (x: number): number => (p0 + p1 * x) / motorEfficiency;
    if (control.kind === "switch") return full(q);
    const head = lift + p / weight + (stores ? s : fallAt(q)) + k * q * q;
    if (q === 0) return Math.min(1, head / shape.a) ** 1.5 * full(0);
    // The flow x at full speed that the affinity laws carry to q: H(x)/x² falls.
    let [low, high] = [q, shape.knots.at(-1) as number];
    for (let i = 0; i < 60; i++) {
      const x = (low + high) / 2;
      if (headOf(shape, x) * (q / x) ** 2 > head) low = x;
      else high = x;
    }
    return (q / low) ** 3 * full(low);
  };

  const events: Stepped["events"][number][] = [];
  let y: State = [start.pressure ?? cutOut, start.drawdown ?? 0, 0, 0];
  if (!stores) y[1] = 0;
  let empty = !(held(y[0]) - held(opening) > 0);
  let on = start.pumpRunning === true && y[0] < cutOut;
  let [time, runTime, refused, heldUntil] = [0, 0, 0, -Infinity];
  let waits = false;
  let q = 0;

  /** The pump's flow now, the tanks empty or full. */
  const flowNow = (): number => {
    if (!on) return 0;
    const [p, s] = y;
    if (empty) return Math.min(q, flow(0, s, false));
    if (p !== set || droop > 0) return flow(p, s, false);
    if (flow(p, s, false) < q) return flow(p, s, false);
    return Math.max(flow(p, s, true), q);
  };
  const depth = (): number => well.staticLevel + (stores ? y[1] : fallAt(flowNow()));
  const note = (kind: SystemEventKind): void => {
    events.push({ kind, time, pressure: y[0], depth: depth() });
  };
  const down = (): number => (stores ? y[1] : fallAt(flowNow()));
  const tripIfLow = (): void => {
    if (down() < trip * (1 - 1e-12)) return;
    note("low level");
    on = false;
    // What a tank held just as the pump began to fill it was nothing.
    empty ||= !(y[0] > opening);
    waits = true;
    heldUntil = time + (lowLevel?.restartDelay ?? 0);
  };

  /** Where the running pump fills empty tanks, they begin to; otherwise the pressure is the one that gives what is used. */
  const fillOrStayEmpty = (): void => {
    if (!(empty && on)) return;
    empty = !(flow(opening, y[1], false) > q);
    y[0] = empty ? pressureFor() : opening;
  };
  /** Settles what changes at once: empty tanks, starts, trips. */
  const settle = (): void => {
    fillOrStayEmpty();
    const risen = !stores || y[1] <= restart + 1e-12;
    if (waits && time >= heldUntil && risen) waits = false;
    const starts = (): boolean => !on && !waits && y[0] <= cutIn;
    // With the precharge at the cut-in the pump starts as the last water leaves, and no pressure is lost.
    if (empty && !on && q > 0 && !starts()) y[0] = 0;
    if (!starts()) return;
    note("pump starts");
    on = true;
    fillOrStayEmpty();
    tripIfLow();
  };
  /** The pressure under the tanks' opening at which a running pump gives just what is used. */
  const pressureFor = (): number => {
    if (flow(0, y[1], false) <= q) return 0;
    let [low, high] = [0, opening];
    for (let i = 0; i < 60; i++) {
      const p = (low + high) / 2;
      if (flow(p, y[1], false) > q) low = p;
      else high = p;
    }
    return low;
  };

  const marks = [cutIn, cutOut, set, opening, ...airs.map(({ opens }) => opens)];
  let over = false;
  for (let segment = 0, begun = 0; time < duration && !over; segment++) {
    const use = demand[segment % demand.length] as { duration: number; flow: number };
    q = use.flow;
    const until = Math.min(duration, begun + use.duration);
    begun += use.duration;
    while (time < until && !over) {
      settle();
      const from: State = [...y];
      const net = flowNow() - q;
      const holds = on && !empty && from[0] === set && net === 0;
      // On a mark the side is the one it moves to.
      const above = from[0] > set || (from[0] === set && net > 0);
      const opened = airs.filter(({ opens }) => (net > 0 ? from[0] >= opens : from[0] > opens));
      const givenAt = ([p, s]: State): number => {
        if (!on) return 0;
        if (empty) return Math.min(q, flow(0, s, false));
        if (holds) return q;
        return p > set === above || droop > 0 ? flow(p, s, above) : flow(set, s, above);
      };
      const rate = (state: State): State => {
        const [p, s] = state;
        const given = givenAt(state);
        const still = empty || holds || (!on && q === 0);
        return [
          still ? 0 : (given - q) / give(p, opened),
          stores ? (given - inflow(s)) / area : 0,
          given,
          on ? power(given, p, s) : 0,
        ];
      };
      const step = (h: number): State => {
        const moved = (slope: State, share: number): State =>
          from.map((v, i) => v + share * h * (slope[i] as number)) as State;
        const k1 = rate(from);
        const k2 = rate(moved(k1, 0.5));
        const k3 = rate(moved(k2, 0.5));
        const k4 = rate(moved(k3, 1));
        return from.map(
          (v, i) =>
            v + (h / 6) * ((k1[i] as number) + 2 * (k2[i] as number) + 2 * (k3[i] as number) + (k4[i] as number)),
        ) as State;
      };
      /** Why the step must end before its time: a mark of pressure, a level, or a regime that no longer holds. */
      const passed = (to: State): boolean => {
        if (!empty && marks.some((m) => (from[0] < m && to[0] > m) || (from[0] > m && to[0] < m))) return true;
        const fall = stores ? to[1] : on ? fallAt(givenAt(to)) : 0;
        if (on && (fall > trip || fall > dry)) return true;
        if (waits && stores && from[1] > restart && to[1] < restart) return true;
        if (droop > 0 && on && throttled(from) !== throttled(to)) return true;
        if (holds && flow(set, to[1], false) < q) return true;
        if (empty && on && flow(opening, to[1], false) > q) return true;
        return false;
      };
      let h = Math.min(STEP, until - time);
      if (waits && heldUntil > time) h = Math.min(h, heldUntil - time);
      let to = step(h);
      let landed: number | undefined;
      if (passed(to)) {
        let [low, high] = [0, h];
        for (let i = 0; i < 60; i++) {
          const middle = (low + high) / 2;
          if (passed(step(middle))) high = middle;
          else low = middle;
        }
        h = high;
        to = step(h);
        landed = empty ? undefined : marks.find((m) => (from[0] - m) * (to[0] - m) < 0);
        if (landed !== undefined) to[0] = landed;
      }
      if (empty) refused += q * h - (to[2] - from[2]);
      if (on) runTime += h;
      time = h === until - time ? until : time + h;
      y = to;
      if (on && down() >= trip * (1 - 1e-12)) tripIfLow();
      else if (on && down() >= dry * (1 - 1e-12)) {
        note("ran dry");
        over = true;
      } else if (on && landed === cutOut && to[0] > from[0]) {
        on = false;
        note("pump stops");
      } else if (!empty && landed === opening && to[0] < from[0]) {
        if (on || waits || opening !== cutIn) note("tank empty");
        empty = true;
      }
    }
  }
  settle();
  return {
    events,
    pumped: y[2],
    refused,
    energy: y[3],
    runTime,
    pressure: y[0],
    water: empty ? 0 : held(y[0]) - held(opening),
    depth: depth(),
  };
}

/** The switch and what stands in the pump's way, for either control. */
function settings(control: RunningSystem["control"], weight: number) {
  if (control.kind === "variable speed") {
    const { startPressure: cutIn, stopPressure: cutOut, setPressure: set, minimumFlow: least } = control;
    return { cutIn, cutOut, set, least, droop: 0, open: 0 };
  }
  const { cutIn, cutOut, valve } = control;
  if (valve === undefined) return { cutIn, cutOut, set: Infinity, least: 0, droop: 0, open: 0 };
  const { setPressure: set, minimumFlow: least, droop = 0, droopFlow = 0, openLoss = 0, openLossFlow = 1 } = valve;
  return {
    cutIn,
    cutOut,
    set,
    least,
    droop: droop > 0 ? droop / (droopFlow - least) : 0,
    open: openLoss / weight / openLossFlow ** 2,
  };
}
