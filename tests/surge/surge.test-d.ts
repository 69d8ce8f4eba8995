/** What the types of the surge module refuse: one wrong field in otherwise good input. */
import {
  closureSurge,
  joukowsky,
  plasticWaveSpeed,
  type SurgeSimulationInput,
  simulateSurge,
  surgeAllowance,
  type ValveEnd,
  waveSpeed,
} from "risingmain/surge";
import {
  cubicMetresPerSecond,
  feet,
  feetPerSecond,
  gigapascals,
  kilogramsPerCubicMetre,
  kilopascals,
  litres,
  metres,
  metresPerSecond,
  millimetres,
  pascalsAbsolute,
  psi,
  psiDifference,
  seconds,
} from "risingmain/units";

const density = kilogramsPerCubicMetre(999.7);

// @ts-expect-error a stiffness is not a pressure
waveSpeed({ bulkModulus: psi(300_000), density });
// @ts-expect-error the support is one of three
waveSpeed({ bulkModulus: gigapascals(2), density, wall: { support: "buried" } });
// @ts-expect-error a modulus has its unit
plasticWaveSpeed({ dimensionRatio: 26, elasticModulus: 400_000 });
// @ts-expect-error a flow is not a velocity
joukowsky({ velocityChange: cubicMetresPerSecond(1), waveSpeed: feetPerSecond(1000), density });
const closing = { length: feet(100), waveSpeed: feetPerSecond(1000), velocityChange: feetPerSecond(5), density };
closureSurge({ ...closing, closureTime: seconds(1) });
// @ts-expect-error a length is not a time
closureSurge({ ...closing, closureTime: feet(1) });

const pressures = { pressureClass: psi(160), workingPressure: psi(100), recurringSurge: psiDifference(20) };
surgeAllowance({ material: "pe", ...pressures, occasionalSurge: psiDifference(60) });
// @ts-expect-error a surge is a difference of pressures
surgeAllowance({ material: "pe", ...pressures, occasionalSurge: psi(60) });
// @ts-expect-error no allowance is kept for copper
surgeAllowance({ material: "copper", ...pressures, occasionalSurge: psiDifference(60) });

const good: SurgeSimulationInput = {
  pipes: [
    {
      length: metres(100),
      insideDiameter: millimetres(38),
      waveSpeed: metresPerSecond(330),
      frictionFactor: 0.02,
      endElevation: metres(0),
    },
  ],
  startElevation: metres(0),
  start: { kind: "fixed head", head: metres(40) },
  end: { kind: "closed" },
  density,
  vapourPressure: pascalsAbsolute(1228),
  atmosphere: pascalsAbsolute(101_325),
  duration: seconds(5),
};
// @ts-expect-error a pump stands at the start of a line
simulateSurge({ ...good, end: { kind: "pump" } });
// @ts-expect-error a main of fixed head has no use for a tank
simulateSurge({ ...good, start: { kind: "fixed head", head: metres(40), airTank: { volume: litres(20) } } });
const rated = { ratedFlow: cubicMetresPerSecond(1), ratedHeadLoss: metres(1) };
// @ts-expect-error a valve has a schedule
const valve: ValveEnd = { kind: "valve", outletHead: metres(0), ...rated };
void valve;
// @ts-expect-error the vapour pressure is absolute
simulateSurge({ ...good, vapourPressure: kilopascals(1.2) });
// @ts-expect-error a line that cannot start has no envelope
simulateSurge(good).envelope;
