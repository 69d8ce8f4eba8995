/** What the types of the head module refuse: one wrong field in otherwise good input. */
import {
  bernoulli,
  type GradeStationInput,
  gradeLines,
  greatestSuctionLift,
  headOfPressure,
  headOfPressureDifference,
  npshAvailable,
  pressureClassNeeded,
  pressureOfHead,
  totalDynamicHead,
  velocityHead,
} from "risingmain/head";
import { feet, gpm, kilogramsPerCubicMetre, type PressureDifference, psi, psia, psiDifference } from "risingmain/units";

const density = kilogramsPerCubicMetre(999.7);

headOfPressure({ pressure: psi(50), density });
// @ts-expect-error an absolute pressure stands against vacuum, not against the air
headOfPressure({ pressure: psia(50), density });
// @ts-expect-error a difference of pressures has its own function
headOfPressure({ pressure: psiDifference(50), density });
// @ts-expect-error a gauge pressure is not a difference
headOfPressureDifference({ pressureDifference: psi(10), density });
// @ts-expect-error a gauge pressure comes out, not a difference
const lost: PressureDifference = pressureOfHead({ head: feet(10), density });
void lost;
// @ts-expect-error a flow has no velocity head
velocityHead(gpm(10));

totalDynamicHead({ staticLevel: feet(60), density });
// @ts-expect-error a pressure is not yet a head
totalDynamicHead({ staticLevel: feet(60), density, losses: [{ name: "filter", headLoss: psi(5) }] });
// @ts-expect-error a loss has a name
totalDynamicHead({ staticLevel: feet(60), density, losses: [{ headLoss: feet(5) }] });

const balance = bernoulli({ from: { elevation: feet(10) }, to: {}, density, solveFor: "to.velocity" });
// @ts-expect-error the velocity is there only where the energy suffices
balance.to;
// @ts-expect-error nothing of the kind in the equation
bernoulli({ from: {}, to: {}, density, solveFor: "to.density" });

const station: GradeStationInput = { distance: feet(0), elevation: feet(0) };
const profile = {
  stations: [station, station],
  startPressure: psi(40),
  atmosphere: psia(14.7),
  vapourPressure: psia(0.18),
};
gradeLines({ ...profile, density });
// @ts-expect-error the air's pressure is absolute
gradeLines({ ...profile, density, atmosphere: psi(14.7) });
// @ts-expect-error a station has an elevation
gradeLines({ ...profile, density, stations: [station, { distance: feet(9) }] });

const suction = { atmosphere: psia(14.7), vapourPressure: psia(0.18), density, suctionLoss: feet(2) };
npshAvailable({ ...suction, waterAbovePump: feet(-10) });
// @ts-expect-error without the height of the water there is no NPSH
npshAvailable(suction);
const lift = greatestSuctionLift({ ...suction, npshRequired: feet(6), margin: feet(3) });
// @ts-expect-error a pump that must be flooded has no lift
lift.greatestLift;
// @ts-expect-error classes are gauge pressures
pressureClassNeeded({ highestPressure: psi(80), classes: [100, 160] });
