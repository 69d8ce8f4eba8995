/** Whatever is sent: a finite result, or an InputError. */
import fc from "fast-check";
import * as control from "risingmain/control";
import { pumpCurve } from "risingmain/pump";
import * as system from "risingmain/system";
import * as tank from "risingmain/tank";
import {
  type Density,
  feet,
  type GaugePressure,
  gpm,
  horsepower,
  hours,
  inches,
  inGpm,
  inPsi,
  kelvins,
  kilogramsPerCubicMetre,
  minutes,
  perHour,
  psi,
  psia,
  seconds,
  squareMetres,
  squareMetresPerSecond,
  usGallons,
  type VolumeFlow,
  watts,
} from "risingmain/units";
import { expect, test } from "vitest";
import { allFinite, odd, spoiled } from "./hostile.ts";

const density: Density = kilogramsPerCubicMetre(999.7);
const air = { volume: usGallons(85), precharge: psi(38), atmosphere: psia(14.7), polytropicExponent: 1.1 };
const onSwitch = { cutIn: psi(40), cutOut: psi(60) };
const pumpFlowAt = (p: GaugePressure): VolumeFlow => gpm(Math.max(0, 20 - inPsi(p) / 5));
const pressureAt = (q: VolumeFlow): GaugePressure => psi(100 - inGpm(q));
const valve = {
  setPressure: psi(50),
  minimumFlow: gpm(1),
  droop: psi(4) as never,
  droopFlow: gpm(9),
  openLoss: psi(3) as never,
  openLossFlow: gpm(10),
  maximumInlet: psi(150),
};
const pump = pumpCurve({
  points: [
    { flow: gpm(0), head: feet(400), inputPower: watts(700) },
    { flow: gpm(10), head: feet(300), inputPower: watts(1100) },
    { flow: gpm(20), head: feet(0), inputPower: watts(1300) },
  ],
});
const running = (control: object, freeArea: number) => ({
  system: {
    pump,
    motorEfficiency: 0.7,
    well: {
      staticLevel: feet(100),
      law: { aquiferLoss: 9000, wellLoss: 1e6 },
      freeArea: squareMetres(freeArea),
      intake: feet(190),
    },
    rise: feet(5),
    mainLoss: [{ flow: gpm(10), headLoss: feet(6) }],
    flowLimit: gpm(15),
    control,
    tanks: [{ volume: usGallons(20), precharge: psi(38), elevation: feet(3) }],
    polytropicExponent: 1,
    lowLevel: { stopLevel: feet(170), restartLevel: feet(120), restartDelay: minutes(10) },
    atmosphere: psia(14.7),
    density,
  },
  demand: [
    { duration: hours(1), flow: gpm(3) },
    { duration: hours(1), flow: gpm(0.2) },
    { duration: hours(1), flow: gpm(14) },
  ],
  duration: hours(5),
  start: { pressure: psi(50), pumpRunning: true, drawdown: feet(2) },
  keepEvents: 10,
  sampleEvery: hours(1),
  keepDays: 2,
  // Bounds the work of the odd cases, not the result of the good one.
  mostSteps: 20_000,
});
const plain = { kind: "switch", ...onSwitch };
const speed = {
  kind: "variable speed",
  startPressure: psi(45),
  setPressure: psi(50),
  stopPressure: psi(56),
  minimumFlow: gpm(1.5),
};
const parts = [
  { name: "tank", rating: psi(100) },
  { name: "pipe", rating: psi(160) },
];

/** Each public function with one good argument list. */
const CALLS: Readonly<Record<string, readonly [call: (...given: never[]) => unknown, ...good: unknown[]][]>> = {
  storedWater: [[tank.storedWater, { ...air, pressure: psi(60) }]],
  tankDrawdown: [[tank.tankDrawdown, { ...air, ...onSwitch, largestShare: 0.4 }]],
  airOverWaterDrawdown: [[tank.airOverWaterDrawdown, { ...air, ...onSwitch, seal: usGallons(5) }]],
  airOverWaterSize: [
    [tank.airOverWaterSize, { ...onSwitch, usable: usGallons(9), atmosphere: psia(14.7), seal: usGallons(5) }],
  ],
  waterSeal: [[tank.waterSeal, { diameter: inches(36), depth: inches(6) }]],
  airLoss: [[tank.airLoss, { ...air, before: psi(60), after: psi(45), drawn: usGallons(9) }]],
  airEnergy: [[tank.airEnergy, { air: usGallons(40), pressure: psi(70), atmosphere: psia(14.7) }]],
  bankDrawdown: [
    [
      tank.bankDrawdown,
      {
        ...onSwitch,
        tanks: [
          { volume: usGallons(40), precharge: psi(38), elevation: feet(10) },
          { volume: usGallons(40), precharge: psi(28) },
        ],
        atmosphere: psia(14.7),
        density,
        polytropicExponent: 1.2,
      },
    ],
  ],
  tankCycle: [[tank.tankCycle, { usable: usGallons(10), pumpFlow: gpm(10), demand: gpm(2) }]],
  worstDemand: [[tank.worstDemand, { usable: usGallons(10), pumpFlow: gpm(10) }]],
  tankFillTime: [[tank.tankFillTime, { ...air, ...onSwitch, pumpFlowAt, demand: gpm(2) }]],
  worstDemandOnCurve: [[tank.worstDemandOnCurve, { ...air, ...onSwitch, pumpFlowAt }]],
  recommendedPrecharge: [[tank.recommendedPrecharge, psi(40)]],
  prechargeAtTemperature: [
    [
      tank.prechargeAtTemperature,
      { precharge: psi(38), setAt: kelvins(294), temperature: kelvins(277), atmosphere: psia(14.7) },
    ],
  ],
  tankSizeForRunTime: [[tank.tankSizeForRunTime, { ...air, ...onSwitch, pumpFlow: gpm(10), runTime: minutes(1) }]],
  tankSizeForStarts: [[tank.tankSizeForStarts, { ...air, ...onSwitch, pumpFlow: gpm(10), starts: perHour(6) }]],
  peakStorage: [
    [tank.peakStorage, { peakDemand: gpm(13), pumpFlow: gpm(10), peakDuration: minutes(7), runTime: minutes(1) }],
  ],
  publicSystemTank: [[tank.publicSystemTank, gpm(250)]],
  motorStartLimit: [[tank.motorStartLimit, horsepower(1)]],
  stockTank: [[tank.stockTank, { ...onSwitch, pumpFlow: gpm(10) }]],
  checkPressureSwitch: [
    [
      control.checkPressureSwitch,
      {
        ...onSwitch,
        shutoffPressure: psi(58),
        weakestRating: psi(50),
        usable: usGallons(3),
        pumpFlow: gpm(10),
        leastRunTime: seconds(60),
        mostStarts: perHour(10),
      },
    ],
  ],
  regulatedFlow: [[control.regulatedFlow, { valve, outletPressure: psi(48), openFlow: gpm(12), demand: gpm(3) }]],
  pressureHeld: [[control.pressureHeld, { valve, ...onSwitch, demand: gpm(3), openFlowAt: pumpFlowAt }]],
  checkRegulatingValve: [[control.checkRegulatingValve, { valve, ...onSwitch, pumpPressureAt: pressureAt }]],
  checkSpeedSetPoint: [
    [
      control.checkSpeedSetPoint,
      { ...speed, peakDemand: gpm(12), fullSpeedPressureAt: pressureAt, weakestRating: psi(90) },
    ],
  ],
  weakestPart: [[control.weakestPart, parts]],
  checkReliefValve: [
    [control.checkReliefValve, { setPressure: psi(75), ratedCapacity: gpm(2), cutOut: psi(60), pumpFlowAt, parts }],
  ],
  reliefOrificeFlow: [
    [control.reliefOrificeFlow, { diameter: inches(0.5), pressure: psi(75), dischargeCoefficient: 0.62, density }],
  ],
  checkLevelCutOff: [
    [
      control.checkLevelCutOff,
      {
        stopLevel: feet(185),
        restartLevel: feet(120),
        staticLevel: feet(80),
        pumpIntake: feet(200),
        leastSubmergence: feet(10),
      },
    ],
  ],
  pipeMainLoss: [
    [
      system.pipeMainLoss,
      {
        insideDiameter: inches(1.38),
        length: feet(300),
        roughness: feet(0.000005),
        viscosity: squareMetresPerSecond(1.3e-6),
        resistance: 5,
        upTo: gpm(20),
      },
    ],
  ],
  simulate: [
    [system.simulate, running(plain, 0)],
    [system.simulate, running({ ...plain, valve }, 0)],
    [system.simulate, running(speed, 0)],
    [system.simulate, running(plain, 0.015)],
    [system.simulate, running({ ...plain, valve: { ...valve, droop: 0 } }, 0.015)],
    [system.simulate, running(speed, 0.015)],
  ],
};

test("every public function is in the list", () => {
  const functions = Object.entries({ ...tank, ...control, ...system })
    .filter(([, value]) => typeof value === "function")
    .map(([name]) => name);
  expect(functions.filter((name) => !(name in CALLS))).toEqual([]);
});

for (const [name, calls] of Object.entries(CALLS)) {
  calls.forEach(([call, ...good], i) => {
    const attempt = (given: readonly unknown[]): void => {
      try {
        const result = call(...(given as never[]));
        expect(allFinite(result)).toBe(true);
      } catch (error) {
        if ((error as Error).name !== "InputError") throw error;
      }
    };
    test(`${name} ${i}: the good case is finite`, () => {
      expect(allFinite(call(...(good as never[])))).toBe(true);
    });
    test(`${name} ${i}: anything instead of an argument`, () => {
      fc.assert(
        fc.property(odd, (bad) => attempt([bad])),
        { numRuns: 30 },
      );
    });
    test(`${name} ${i}: up to three fields made odd`, () => {
      fc.assert(fc.property(spoiled(good), attempt), { numRuns: name === "simulate" ? 200 : 500 });
    });
  });
}
