/** What the types of the network refuse: one wrong field in an otherwise good input. */
import type {
  CurveSource,
  DarcyRun,
  FixedDemand,
  HazenWilliamsRun,
  OpenOutlet,
  ReducingValve,
} from "risingmain/network";
import { gpm, metres, psi, psia } from "risingmain/units";

declare const run: DarcyRun;
declare const rule: HazenWilliamsRun;
declare const demand: FixedDemand;
declare const outlet: OpenOutlet;
declare const source: CurveSource;
declare const valve: ReducingValve;

export const good: readonly unknown[] = [
  { ...run, length: metres(3) } satisfies DarcyRun,
  { ...demand, flow: gpm(3) } satisfies FixedDemand,
];

// @ts-expect-error a flow is not a length
export const a: DarcyRun = { ...run, length: gpm(3) };
// @ts-expect-error the rule of Hazen and Williams has a coefficient and no roughness
export const b: HazenWilliamsRun = { ...rule, roughness: metres(0.001) };
// @ts-expect-error a pressure is not a flow
export const c: FixedDemand = { ...demand, flow: psi(3) };
// @ts-expect-error a bare number is no outlet coefficient: say how it was rated
export const d: OpenOutlet = { ...outlet, coefficient: 1e-4 };
// @ts-expect-error a source's curve gives a head, not a pressure
export const e: CurveSource = { ...source, headAtFlow: () => psi(40) };
// @ts-expect-error a valve is set to a gauge pressure, not an absolute one
export const f: ReducingValve = { ...valve, setPressure: psia(40) };
