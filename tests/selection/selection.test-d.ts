/** What the types of the selection refuse, and what they infer. */
import {
  type LeastCostSizesInput,
  type PartWayInput,
  type PartWaySize,
  type PumpCandidate,
  partWayProgramme,
  partWaySizes,
  sweep,
} from "risingmain/selection";
import { gpm, kilowatts, metres, metresPerSecond } from "risingmain/units";

declare const sizes: LeastCostSizesInput;
declare const partWay: PartWayInput;
declare const size: PartWaySize;
declare const candidate: PumpCandidate;

export const good: readonly unknown[] = [
  { ...sizes, greatestVelocity: metresPerSecond(2) } satisfies LeastCostSizesInput,
  { ...candidate, motorPower: kilowatts(1.1) } satisfies PumpCandidate,
  sizes satisfies PartWayInput,
  { ...size, pieceLength: metres(6) } satisfies PartWaySize,
];

// @ts-expect-error a length is not a velocity
export const a: LeastCostSizesInput = { ...sizes, greatestVelocity: metres(2) };
// @ts-expect-error a flow is not a power
export const b: PumpCandidate = { ...candidate, motorPower: gpm(2) };
// @ts-expect-error a power is not a length
export const c: PartWaySize = { ...size, pieceLength: kilowatts(6) };

const programme = partWayProgramme(partWay);
// @ts-expect-error there may be no programme: look at the state first
void programme.rows;
if (programme.state === "to be solved") void programme.rows;
const laid = partWaySizes({ ...partWay, answer: { values: [] } });
// @ts-expect-error the answer may fail
void laid.least;
if (laid.state === "answer fails" && laid.because === "shares") void laid.run;
// @ts-expect-error it may not be possible to lay it
if (laid.state === "found") void laid.laid.runs;

for (const { variant } of sweep({ pump: ["a", "b"], setting: [40, 60] })) {
  const setting: 40 | 60 = variant.setting;
  // @ts-expect-error a setting is a number
  const pump: string = variant.setting;
  void [setting, pump];
}
