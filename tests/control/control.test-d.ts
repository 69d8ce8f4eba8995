/** What the types refuse. */
import { checkPressureSwitch, pressureHeld, reliefOrificeFlow } from "risingmain/control";
import { gpm, inches, kilogramsPerCubicMetre, psi, psia, psiDifference } from "risingmain/units";

checkPressureSwitch({ cutIn: psi(40), cutOut: psi(60) });
// @ts-expect-error an absolute pressure is not a setting
checkPressureSwitch({ cutIn: psia(40), cutOut: psi(60) });
// @ts-expect-error a difference is not a setting
checkPressureSwitch({ cutIn: psi(40), cutOut: psiDifference(20) });
const job = { cutIn: psi(40), cutOut: psi(60), demand: gpm(3), openFlowAt: () => gpm(9) };
pressureHeld({ ...job, valve: { setPressure: psi(50), minimumFlow: gpm(1) } });
// @ts-expect-error a gauge pressure is not a droop
pressureHeld({ ...job, valve: { setPressure: psi(50), minimumFlow: gpm(1), droop: psi(4) } });
// @ts-expect-error a curve of pressure is not a curve of flow
pressureHeld({ ...job, openFlowAt: () => psi(50), valve: { setPressure: psi(50), minimumFlow: gpm(1) } });
const hole = { diameter: inches(0.5), pressure: psi(75), dischargeCoefficient: 0.6 };
reliefOrificeFlow({ ...hole, density: kilogramsPerCubicMetre(999) });
// @ts-expect-error a bare number is not a density
reliefOrificeFlow({ ...hole, density: 999 });
