/**
 * The ends of a simulated line, each reduced to what it asks of the node beside it.
 *
 * Every end is either a source of some head behind a square-law loss (a tank, a valve, a pump) or a flow laid down.
 * With q the flow into the line: H = head − k q |q|, or q = flow. So one closed form serves them all.
 *
 * @module
 */
import type { LineEnd, PumpEnd } from "./line-end-types.ts";

/** What an end asks at one moment. */
export type EndLaw = { readonly head: number; readonly k: number } | { readonly flow: number };

/** The law of an end at a time; the start of the line feeds it, so a flow along the line is into it there. */
export function endLaw(end: LineEnd | PumpEnd, at: "start" | "end", time: number): EndLaw {
  switch (end.kind) {
    case "fixed head":
      return { head: end.head, k: 0 };
    case "closed":
      return { flow: 0 };
    case "flow": {
      const flow = scheduled(end.flows, time, (row) => row.flow);
      return { flow: at === "start" ? flow : 0 - flow };
    }
    case "valve": {
      const passed = end.ratedFlow * scheduled(end.openings, time, (row) => row.opening);
      const k = end.ratedHeadLoss / (passed * passed);
      return k <= Number.MAX_VALUE ? { head: end.outletHead, k } : { flow: 0 };
    }
    case "pump": {
      const speed = pumpSpeed(end, time);
      const k = (end.shutoffHead - end.ratedHead) / (end.ratedFlow * end.ratedFlow);
      return { head: end.sourceHead + speed * speed * end.shutoffHead, k };
    }
  }
}

/**
 * Speed of the pump over its running speed.
 *
 * Torque goes as speed squared, so I dω/dt = −c ω² and ω = ω₀ / (1 + t/T), with T the time to half speed.
 */
function pumpSpeed({ stopTime, halfSpeedTime }: PumpEnd, time: number): number {
  const since = time - stopTime;
  return since <= 0 ? 1 : halfSpeedTime / (halfSpeedTime + since);
}

/** The flow q into a line whose node obeys H = C + B q, B > 0: the root of k q |q| + B q = head − C, without cancellation. */
export function flowInto(law: EndLaw, C: number, B: number): number {
  if ("flow" in law) return law.flow;
  const drive = law.head - C;
  const size = Math.abs(drive);
  return (Math.sign(drive) * 2 * size) / (B + Math.sqrt(B * B + 4 * law.k * size));
}

/** The flow an end passes when its node is held at a head: the same law with no line to push back. */
export function flowAtHead(law: EndLaw, head: number): number {
  if ("flow" in law) return law.flow;
  const drive = law.head - head;
  return Math.sign(drive) * Math.sqrt(Math.abs(drive) / law.k);
}

/** The value of a schedule at a time: straight between rows; the first row before them and at time 0, the last after. */
function scheduled<Row extends { readonly time: number }>(
  rows: readonly Row[],
  time: number,
  value: (row: Row) => number,
): number {
  const first = rows[0] as Row;
  if (time <= 0) return value(first);
  const next = rows.findIndex((row) => row.time > time);
  if (next === 0) return value(first);
  if (next < 0) return value(rows.at(-1) as Row);
  const a = rows[next - 1] as Row;
  const b = rows[next] as Row;
  return value(a) + ((value(b) - value(a)) * (time - a.time)) / (b.time - a.time);
}
