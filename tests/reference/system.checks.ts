/** How each record of the running system is computed with the library. */
import { pumpCurve } from "risingmain/pump";
import { type RunningSystem, type Simulation, simulate } from "risingmain/system";
import {
  type AbsolutePressure,
  type Area,
  type Density,
  type Duration,
  days,
  feet,
  gpm,
  type Length,
  type Power,
  psi,
  type Transmissivity,
  usGallons,
  type VolumeFlow,
} from "risingmain/units";
import type { Computation, Computed, Given } from "./register.ts";

/** A parabola of head and a straight line of power, which the curve through its points meets exactly. */
const pump = (g: Given) =>
  pumpCurve({
    points: [0, 5, 10, 15, 20].map((q) => ({
      flow: gpm(q),
      head: (g.si("shutoffHead") - g.si("curveLossAt10gpm") * (q / 10) ** 2) as Length,
      inputPower: (g.si("powerAtNoFlow") + (g.si("powerAt20gpm") - g.si("powerAtNoFlow")) * (q / 20)) as Power,
    })),
  });

const timeOf = (run: Simulation, index: number): number => {
  const event = run.events[index];
  if (event === undefined) throw new Error(`no event ${index}`);
  return event.time;
};

export const computations: readonly Computation[] = [
  {
    ids: /scipy-cycle-.*/,
    compute: (g): Computed => {
      const system: RunningSystem = {
        pump: pump(g),
        well: {
          staticLevel: g.si("lift"),
          law: { aquiferLoss: 1 / g.si<Transmissivity>("specificCapacity"), wellLoss: 0 },
        },
        rise: 0 as Length,
        mainLoss: [{ flow: gpm(10), headLoss: g.si("mainLossAt10gpm") }],
        control: { kind: "switch", cutIn: g.si("cutIn"), cutOut: g.si("cutOut") },
        tanks: [{ volume: g.si("tankVolume"), precharge: g.si("precharge") }],
        atmosphere: g.si<AbsolutePressure>("atmosphere"),
        density: g.si<Density>("density"),
      };
      const flow = g.si<VolumeFlow>("demand");
      const day = simulate({ system, demand: [{ duration: days(1), flow }], duration: days(1) });
      const [rest, stop, start] = [timeOf(day, 0), timeOf(day, 1), timeOf(day, 2)];
      const cycle = simulate({ system, demand: [{ duration: days(1), flow }], duration: stop as Duration });
      return {
        runTime: stop - rest,
        restTime: start - stop,
        energyPerCycle: cycle.energy ?? Number.NaN,
        startsInADay: day.starts,
      };
    },
  },
  {
    ids: /scipy-storing-well-.*/,
    compute: (g): Computed => {
      const flow = g.si<VolumeFlow>("flow");
      const run = simulate({
        system: {
          pump: pumpCurve({
            points: [
              { flow: gpm(0), head: feet(1000) },
              { flow: gpm(100), head: feet(900) },
            ],
          }),
          well: {
            staticLevel: feet(50),
            law: { aquiferLoss: 1 / g.si<Transmissivity>("specificCapacity"), wellLoss: 0 },
            freeArea: ((Math.PI / 4) * g.si("bore") ** 2) as Area,
          },
          rise: 0 as Length,
          mainLoss: [{ flow: gpm(10), headLoss: feet(1) }],
          // Used as it is pumped, so that the pump runs on at its limit.
          flowLimit: flow,
          control: { kind: "switch", cutIn: psi(40), cutOut: psi(60) },
          tanks: [{ volume: usGallons(85), precharge: psi(38) }],
          atmosphere: 101325 as AbsolutePressure,
          density: 999.7 as Density,
        },
        demand: [{ duration: days(1), flow }],
        duration: g.si("time"),
        start: { pressure: psi(50), pumpRunning: true },
      });
      return { drawdown: run.end.depth - feet(50) };
    },
  },
];
