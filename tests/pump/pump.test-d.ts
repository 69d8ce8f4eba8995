import { operatingPoint, type PumpPoint, pumpCurve, pumpHeadAt, pumpPower } from "risingmain/pump";
import { feet, gpm, kilogramsPerCubicMetre, percent, psi, ratio } from "risingmain/units";

const good: PumpPoint = { flow: gpm(10), head: feet(300) };
const curve = pumpCurve({ points: [good, { flow: gpm(0), head: feet(400) }] });

// @ts-expect-error a length is not a flow
export const flow: PumpPoint = { ...good, flow: feet(10) };
// @ts-expect-error a bare number has no unit
export const head: PumpPoint = { ...good, head: 300 };
// @ts-expect-error a pressure is not a head
export const pressure: PumpPoint = { ...good, head: psi(130) };
// @ts-expect-error an efficiency is a ratio, not a bare number
export const efficiency: PumpPoint = { ...good, efficiency: 0.6 };
// @ts-expect-error a head is not a flow
pumpHeadAt(curve, feet(10));
// @ts-expect-error a system gives a length, not a pressure
operatingPoint({ curve, systemHead: () => psi(50) });
// @ts-expect-error the caller must look at the state before there is a flow
export const unseen = operatingPoint({ curve, systemHead: () => feet(200) }).flow;
// @ts-expect-error the density is not to be left out
pumpPower({ flow: gpm(10), head: feet(300), pumpEfficiency: percent(60), motorEfficiency: percent(75) });
pumpPower({
  flow: gpm(10),
  head: feet(300),
  density: kilogramsPerCubicMetre(1000),
  pumpEfficiency: ratio(0.6),
  // @ts-expect-error an efficiency is a ratio, not a flow
  motorEfficiency: gpm(75),
});
