/** Times of events against a general-purpose ODE integrator: `../fixtures/system-events.py`. */
import { readFileSync } from "node:fs";
import type { PumpCurve } from "risingmain/pump";
import { type RunningSystem, simulate } from "risingmain/system";
import { expect, test } from "vitest";

interface Case {
  readonly name: string;
  readonly system: {
    readonly head: { readonly x: number[]; readonly y: number[]; readonly slope: number[] };
    readonly staticLevel: number;
    readonly aquiferLoss: number;
    readonly wellLoss: number;
    readonly freeArea: number;
    readonly rise: number;
    readonly mainLoss: { readonly flow: number; readonly headLoss: number };
    readonly flowLimit: number | null;
    readonly control: RunningSystem["control"];
    readonly tanks: RunningSystem["tanks"];
    readonly exponent: number;
    readonly lowLevel: NonNullable<RunningSystem["lowLevel"]> | null;
    readonly demand: readonly { readonly duration: number; readonly flow: number }[];
    readonly start: { readonly pressure: number };
  };
  readonly events: readonly { readonly kind: string; readonly time: number }[];
}

const fixture = JSON.parse(readFileSync(new URL("../fixtures/system-events.json", import.meta.url), "utf8")) as {
  readonly atmosphere: number;
  readonly density: number;
  readonly cases: readonly Case[];
};

/** A curve with just these points and slopes, as plain data. */
function curveOf({ x, y, slope }: Case["system"]["head"]): PumpCurve {
  return {
    head: { x, y, slope },
    shutoffHead: y[0],
    shutoffBasis: "given",
    greatestHead: y[0],
    runoutFlow: x.at(-1),
    runoutHead: y.at(-1),
    shape: "falling",
    rising: [],
  } as unknown as PumpCurve;
}

for (const { name, system: s, events } of fixture.cases) {
  test(`first 20 events within a millionth of their times: ${name}`, () => {
    const system = {
      pump: curveOf(s.head),
      well: {
        staticLevel: s.staticLevel,
        law: { aquiferLoss: s.aquiferLoss, wellLoss: s.wellLoss },
        freeArea: s.freeArea,
      },
      rise: s.rise,
      mainLoss: [s.mainLoss],
      ...(s.flowLimit !== null && { flowLimit: s.flowLimit }),
      control: s.control,
      tanks: s.tanks,
      polytropicExponent: s.exponent,
      ...(s.lowLevel !== null && { lowLevel: s.lowLevel }),
      atmosphere: fixture.atmosphere,
      density: fixture.density,
    } as unknown as RunningSystem;
    const run = simulate({
      system,
      demand: s.demand as never,
      duration: ((events.at(-1) as { time: number }).time + 1) as never,
      start: s.start as never,
      keepEvents: 100,
    });
    expect(run.events.slice(0, events.length).map(({ kind }) => kind)).toEqual(events.map(({ kind }) => kind));
    const worst = Math.max(...events.map(({ time }, i) => Math.abs((run.events[i]?.time ?? 0) / time - 1)));
    expect(worst).toBeLessThan(1e-6);
    expect(Math.abs(run.balanceError)).toBeLessThan(1e-9);
  });
}
