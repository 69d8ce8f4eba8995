/** What the types of fittings refuse: one wrong field in an otherwise good input. */
import {
  checkValveLoss,
  fittingsLoss,
  minorLoss,
  outletFlow,
  type RunFitting,
  teeCoefficients,
} from "risingmain/fittings";
import { gpm, inches, millimetres, psi, psiDifference, squareMetresPerSecond } from "risingmain/units";

const run = {
  flow: gpm(10),
  insideDiameter: inches(1.049),
  roughness: millimetres(0.0015),
  viscosity: squareMetresPerSecond(1.3e-6),
};

// @ts-expect-error a length is not a flow
minorLoss({ coefficient: 1, flow: inches(1), insideDiameter: inches(1) });
// @ts-expect-error no such fitting
const unknownFitting: RunFitting = { kind: "named", fitting: "elbow 91" };
// @ts-expect-error a rated loss is a difference of pressures, not a gauge pressure
const gaugeLoss: RunFitting = { kind: "rated loss", ratedFlow: gpm(10), ratedLoss: psi(3) };
// @ts-expect-error an outlet's pressure is a gauge pressure, not a difference
outletFlow({ ratedFlow: gpm(10), ratedPressure: psiDifference(40), pressure: psi(20) });
// @ts-expect-error a density is missing
checkValveLoss({ flow: gpm(10), insideDiameter: inches(1), coefficient: 2, crackingPressure: psiDifference(0.5) });
teeCoefficients({
  flowPattern: "dividing",
  combinedFlow: gpm(9),
  branchFlow: gpm(3),
  runDiameter: inches(1),
  branchDiameter: inches(1),
  // @ts-expect-error no such angle
  angle: 50,
});
// @ts-expect-error the list of fittings is missing
fittingsLoss(run);

fittingsLoss({ ...run, fittings: [unknownFitting, gaugeLoss] });
