/** What the types refuse. */
import { type RunningSystem, type SimulationInput, simulate } from "risingmain/system";
import { days, gpm, metres, psi, psia, usGallons } from "risingmain/units";

declare const system: RunningSystem;
const good: SimulationInput = { system, demand: [{ duration: days(1), flow: gpm(3) }], duration: days(1) };
export const run = () => simulate(good);
// @ts-expect-error a volume is not a flow
export const a: SimulationInput = { ...good, demand: [{ duration: days(1), flow: usGallons(3) }] };
// @ts-expect-error a bare number is not a duration
export const b: SimulationInput = { ...good, duration: 86400 };
// @ts-expect-error an absolute pressure is not a start
export const c: SimulationInput = { ...good, start: { pressure: psia(50) } };
// @ts-expect-error a switch has no set pressure
export const d: RunningSystem = { ...system, control: { kind: "switch", cutIn: psi(40), setPressure: psi(50) } };
// @ts-expect-error a length is not a tank
export const e: RunningSystem = { ...system, tanks: [metres(1)] };
