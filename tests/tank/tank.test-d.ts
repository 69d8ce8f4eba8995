/** What the types refuse. */
import { type TankDrawdownInput, tankDrawdown, tankSizeForRunTime, worstDemand } from "risingmain/tank";
import { gpm, metres, minutes, psi, psia, usGallons } from "risingmain/units";

const good: TankDrawdownInput = {
  volume: usGallons(85),
  precharge: psi(38),
  cutIn: psi(40),
  cutOut: psi(60),
  atmosphere: psia(14.7),
};
tankDrawdown(good);
// @ts-expect-error a gauge pressure is not the air outside
tankDrawdown({ ...good, atmosphere: psi(14.7) });
// @ts-expect-error an absolute pressure is not a precharge
tankDrawdown({ ...good, precharge: psia(38) });
// @ts-expect-error a length is not a volume
tankDrawdown({ ...good, volume: metres(1) });
// @ts-expect-error a bare number is not a pressure
tankDrawdown({ ...good, cutIn: 40 });
// @ts-expect-error a volume is not a flow
worstDemand({ usable: usGallons(10), pumpFlow: usGallons(10) });
// @ts-expect-error a run time is needed
tankSizeForRunTime({ ...good, pumpFlow: gpm(10) });
tankSizeForRunTime({ ...good, pumpFlow: gpm(10), runTime: minutes(1) });
