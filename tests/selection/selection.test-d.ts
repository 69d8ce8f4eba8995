/** What the types of the selection refuse, and what they infer. */
import { type LeastCostSizesInput, type PumpCandidate, sweep } from "risingmain/selection";
import { gpm, kilowatts, metres, metresPerSecond } from "risingmain/units";

declare const sizes: LeastCostSizesInput;
declare const candidate: PumpCandidate;

export const good: readonly unknown[] = [
  { ...sizes, greatestVelocity: metresPerSecond(2) } satisfies LeastCostSizesInput,
  { ...candidate, motorPower: kilowatts(1.1) } satisfies PumpCandidate,
];

// @ts-expect-error a length is not a velocity
export const a: LeastCostSizesInput = { ...sizes, greatestVelocity: metres(2) };
// @ts-expect-error a flow is not a power
export const b: PumpCandidate = { ...candidate, motorPower: gpm(2) };

for (const { variant } of sweep({ pump: ["a", "b"], setting: [40, 60] })) {
  const setting: 40 | 60 = variant.setting;
  // @ts-expect-error a setting is a number
  const pump: string = variant.setting;
  void [setting, pump];
}
