import { feet, gpm, gpmPerFoot, hours, inches, psi } from "risingmain/units";
import {
  casingVolume,
  drawOnStorage,
  type PumpingTest,
  singleTestLaw,
  specificCapacity,
  theisDrawdown,
} from "risingmain/well";

const good: PumpingTest = { flow: gpm(20), drawdown: feet(40) };
singleTestLaw(good);

// @ts-expect-error a flow is not a drawdown
export const drawdown: PumpingTest = { ...good, drawdown: gpm(40) };
// @ts-expect-error a pressure is not a drawdown
specificCapacity({ ...good, drawdown: psi(17) });
// @ts-expect-error a volume is not a diameter
casingVolume({ insideDiameter: casingVolume({ insideDiameter: inches(6), length: feet(1) }), length: feet(100) });
const pumped = { flow: gpm(20), transmissivity: gpmPerFoot(1), storativity: 1e-4, radius: inches(3), time: hours(4) };
theisDrawdown(pumped);
// @ts-expect-error a time is not a length
theisDrawdown({ ...pumped, time: feet(4) });
// @ts-expect-error a specific capacity is not a flow
theisDrawdown({ ...pumped, flow: gpmPerFoot(1) });
const drawn = drawOnStorage({
  // @ts-expect-error a diameter is not an area
  area: inches(6),
  specificCapacity: gpmPerFoot(0.01),
  flow: gpm(8),
  startDrawdown: feet(0),
  lowestDrawdown: feet(150),
});
// @ts-expect-error the caller must look at the state before there is a time
export const unseen = drawn.time;
