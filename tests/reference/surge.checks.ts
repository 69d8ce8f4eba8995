/** How each published surge record is computed with the library. */
import {
  closureSurge,
  criticalTime,
  joukowsky,
  plasticWaveSpeed,
  rigidColumnSurge,
  type SurgeSimulation,
  type SurgeSimulationInput,
  simulateSurge,
  surgeAllowance,
  waveSpeed,
} from "risingmain/surge";
import type {
  AbsolutePressure,
  Density,
  Duration,
  Length,
  Modulus,
  PressureDifference,
  Velocity,
  VolumeFlow,
} from "risingmain/units";
import type { Computation, Given } from "./register.ts";

const STANDARD_GRAVITY = 9.80665;
const FOOT = 0.3048;
const PSI = (0.45359237 * STANDARD_GRAVITY) / 0.0254 ** 2;
const area = (diameter: number): number => (Math.PI / 4) * diameter ** 2;

/** Wave speed in the pipe of a record whose book takes c₁ = 1; rigid where it names no wall. */
function speed(g: Given, K: number, density: number, walled = g.has("E")): Velocity {
  const bulkModulus = K as Modulus;
  if (!walled) return waveSpeed({ bulkModulus, density: density as Density }).waveSpeed;
  const wall = {
    insideDiameter: g.si<Length>("diameter"),
    thickness: g.si<Length>("wallThickness"),
    elasticModulus: g.si<Modulus>("E"),
    poissonRatio: 0,
    support: "expansion joints",
    theory: "thin",
  } as const;
  return waveSpeed({ bulkModulus, density: density as Density, wall }).waveSpeed;
}

const relative = (g: Given): Density => (g.si("relativeDensity") * g.si("waterDensity")) as Density;
/** Mass density of a specific weight at the book's gravity. */
const heavy = (g: Given): Density => (g.si("specificWeight") / g.si("g")) as Density;

type Followed = Extract<SurgeSimulation, { state: "followed" }>;

/** A level frictionless line from a tank, in which the flow at the end falls evenly from one velocity to another. */
function evenClosure(
  line: { length: number; waveSpeed: number; density: number; from: number; to: number; time: number },
  reaches: number,
): Followed {
  const bore = 1 as Length;
  const flow = (velocity: number): VolumeFlow => (velocity * area(bore)) as VolumeFlow;
  const input: SurgeSimulationInput = {
    pipes: [
      {
        length: line.length as Length,
        insideDiameter: bore,
        waveSpeed: line.waveSpeed as Velocity,
        frictionFactor: 0,
        endElevation: 0 as Length,
      },
    ],
    startElevation: 0 as Length,
    // High enough that the wave coming back does not boil: the examples are about the rise.
    start: { kind: "fixed head", head: 2000 as Length },
    end: {
      kind: "flow",
      flows: [
        { time: 0 as Duration, flow: flow(line.from) },
        { time: line.time as Duration, flow: flow(line.to) },
      ],
    },
    density: line.density as Density,
    vapourPressure: 0 as AbsolutePressure,
    atmosphere: 101325 as AbsolutePressure,
    duration: (line.time + (2 * line.length) / line.waveSpeed) as Duration,
    reaches,
  };
  const surge = simulateSurge(input);
  if (surge.state !== "followed") throw new Error(surge.state);
  return surge;
}

/** Rise of pressure at the end of the line. */
function rise(surge: Followed): number {
  const at = surge.envelope.at(-1);
  if (at === undefined) throw new Error("no such point");
  return at.highestPressure - (at.startHead * at.highestPressure) / at.highestHead;
}

export const computations: readonly Computation[] = [
  {
    ids: /subramanya-ex-14-11/,
    compute: (g) => {
      const density = g.si("density");
      return {
        waveSpeedWater: speed(g, g.si("bulkModulusWater"), density),
        waveSpeedCrude: speed(g, g.si("bulkModulusCrude"), density * g.si("relativeDensityCrude")),
        waveSpeedGasoline: speed(g, g.si("bulkModulusGasoline"), density * g.si("relativeDensityGasoline")),
      };
    },
  },
  { ids: /subramanya-ex-14-12/, compute: (g) => ({ waveSpeed: speed(g, g.si("K"), relative(g)) }) },
  {
    ids: /subramanya-ex-14-13/,
    compute: (g) => {
      const density = g.si<Density>("density");
      const surge = joukowsky({
        velocityChange: g.si("velocityChange"),
        waveSpeed: speed(g, g.si("K"), density),
        density,
      });
      return { pressureRise: surge.pressure };
    },
  },
  {
    ids: /subramanya-ex-14-14/,
    compute: (g) => {
      const density = g.si<Density>("density");
      const surge = joukowsky({ velocityChange: g.si("velocity"), waveSpeed: speed(g, g.si("K"), density), density });
      return { head: (surge.head * STANDARD_GRAVITY) / g.si("g") };
    },
  },
  {
    ids: /subramanya-ex-14-15/,
    compute: (g) => {
      const density = g.si<Density>("density");
      const rises = [false, true].map(
        (walled) =>
          joukowsky({ velocityChange: g.si("velocity"), waveSpeed: speed(g, g.si("K"), density, walled), density })
            .pressure,
      );
      return { pressureRiseRigid: rises[0] as number, pressureRiseElastic: rises[1] as number };
    },
  },
  {
    ids: /subramanya-ex-14-16/,
    compute: (g) => ({ criticalTime: criticalTime(g.si("length"), speed(g, g.si("K"), relative(g))) }),
  },
  {
    ids: /subramanya-ex-14-18/,
    compute: (g) => {
      const density = g.si<Density>("density");
      const line = { length: g.si<Length>("length"), waveSpeed: speed(g, g.si("K"), density), density };
      const velocityChange = g.si<Velocity>("velocityChange");
      return {
        pressureRiseRapid: closureSurge({ ...line, velocityChange, closureTime: 0 as Duration }).pressure,
        pressureRiseSlow: closureSurge({ ...line, velocityChange, closureTime: g.si("closureTime") }).pressure,
      };
    },
  },
  {
    ids: /subramanya-ex-14-18-followed/,
    compute: (g) => {
      const density = g.si("density");
      const line = { length: g.si("length"), waveSpeed: speed(g, g.si("K"), density), density };
      const stop = { from: g.si("velocityChange"), to: 0 };
      return {
        pressureRiseRapid: rise(evenClosure({ ...line, ...stop, time: 0 }, 50)),
        pressureRiseSlow: rise(evenClosure({ ...line, ...stop, time: g.si("closureTime") }, 400)),
      };
    },
  },
  {
    ids: /subramanya-ex-14-19/,
    compute: (g) => {
      const density = g.si<Density>("density");
      const surge = closureSurge({
        length: g.si("length"),
        waveSpeed: speed(g, g.si("K"), density),
        velocityChange: (g.si("velocityInitial") - g.si("velocityFinal")) as Velocity,
        closureTime: g.si("closureTime"),
        density,
      });
      return { pressure: g.si("staticHead") * g.si("specificWeight") + surge.pressure };
    },
  },
  {
    ids: /subramanya-ex-14-20/,
    compute: (g) => {
      const density = g.si<Density>("density");
      const surge = closureSurge({
        length: g.si("length"),
        waveSpeed: speed(g, g.si("K"), density),
        velocityChange: g.si("velocity"),
        closureTime: g.si("closureTime"),
        density,
      });
      return { pressureRise: surge.pressure, affectedLength: surge.fullSurgeLength };
    },
  },
  {
    ids: /subramanya-ex-14-20-followed/,
    compute: (g) => {
      const density = g.si("density");
      const length = g.si("length");
      const line = { length, waveSpeed: speed(g, g.si("K"), density), density, from: g.si("velocity"), to: 0 };
      const surge = evenClosure({ ...line, time: g.si("closureTime") }, 1000);
      return { pressureRise: rise(surge) };
    },
  },
  {
    ids: /daugherty-ex-13-4/,
    compute: (g) => {
      const V = g.si("flow") / area(g.si("diameter"));
      const line = {
        length: g.si<Length>("length"),
        waveSpeed: g.si<Velocity>("waveSpeed"),
        density: g.si<Density>("density"),
      };
      const close = (velocityChange: number, closureTime: number): number =>
        closureSurge({ ...line, velocityChange: velocityChange as Velocity, closureTime: closureTime as Duration })
          .pressure;
      return {
        pressureSudden: close(V, 0),
        pressureSlow: close(V, g.si("closureTime")),
        pressurePartial: close((V * 2) / 3, 0),
        pressureRemaining: close(V / 3, 0),
      };
    },
  },
  {
    ids: /daugherty-ex-13-4-followed/,
    compute: (g) => {
      const V = g.si("flow") / area(g.si("diameter"));
      const line = { length: g.si("length"), waveSpeed: g.si("waveSpeed"), density: g.si("density") };
      const close = (from: number, to: number, time: number): number =>
        rise(evenClosure({ ...line, from, to, time }, 100));
      return {
        pressureSudden: close(V, 0, 0),
        pressureSlow: close(V, 0, g.si("closureTime")),
        pressurePartial: close(V, V / 3, 0),
        pressureRemaining: close(V / 3, 0, 0),
      };
    },
  },
  {
    ids: /paradise-ex-6-6/,
    compute: (g) => {
      // The book's 62.4 lbf/ft³, a weight, at its own gravity.
      const density = ((62.4 * 0.45359237 * STANDARD_GRAVITY) / FOOT ** 3 / g.si("g")) as Density;
      const surge = joukowsky({
        velocityChange: g.si("velocity"),
        waveSpeed: speed(g, g.si("bulkModulus"), density),
        density,
      });
      return { hoopStress: (surge.pressure * g.si("diameter")) / (2 * g.si("wallThickness")) };
    },
  },
  {
    ids: /lal-ex-5-25/,
    compute: (g) => {
      // The book's gallon is 10 lb at 62.4 lb/ft³, 6.24 to the cubic foot.
      const gallon = FOOT ** 3 / 6.24 / 4.54609e-3;
      const velocityChange = ((g.si("flow") * gallon) / area(g.si("diameter"))) as Velocity;
      const surge = rigidColumnSurge({
        length: g.si("length"),
        velocityChange,
        time: g.si("time"),
        density: 1000 as Density,
      });
      return { head: (surge.head * STANDARD_GRAVITY) / g.si("g") };
    },
  },
  {
    ids: /walshaw-ex-11-13-1/,
    compute: (g) => {
      const { pressure } = rigidColumnSurge({
        length: g.si("length"),
        velocityChange: g.si("velocity"),
        time: g.si("time"),
        density: heavy(g),
      });
      return { pressureRise: pressure };
    },
  },
  {
    ids: /walshaw-ex-11-14-1/,
    compute: (g) => {
      const density = heavy(g);
      const surge = joukowsky({
        velocityChange: g.si("velocity"),
        waveSpeed: speed(g, g.si("bulkModulus"), density),
        density,
      });
      return { pressureRise: surge.pressure };
    },
  },
  { ids: /walshaw-ex-11-14-2/, compute: (g) => ({ waveSpeed: speed(g, g.si("bulkModulus"), heavy(g)) }) },
  {
    ids: /moser-ex-4-2/,
    compute: (g) => {
      // The manual's 0.43 psi to the foot, over the book's gravity, is the density of its surge.
      const density = ((0.43 * PSI) / (FOOT * g.si("g"))) as Density;
      const surge = joukowsky({ velocityChange: g.si("velocityChange"), waveSpeed: g.si("waveSpeed"), density });
      const check = surgeAllowance({
        material: "pvc",
        pressureClass: g.si("pressureClass"),
        workingPressure: g.si("workingPressure"),
        recurringSurge: 0 as PressureDifference,
        occasionalSurge: surge.pressure,
      });
      const occasional = check.checks[2];
      return {
        surge: surge.pressure,
        total: occasional?.pressure ?? 0,
        allowable: occasional?.allowed ?? 0,
      };
    },
  },
  {
    ids: /(pvc|hdpe)-surge-1-fps-dr-.*|wave-speed-(pvc|hdpe)-dr-.*/,
    compute: (g) => {
      const speedInPipe = plasticWaveSpeed({ dimensionRatio: g.si("dimensionRatio"), elasticModulus: g.si("E") });
      // The manuals take P = a ΔV / (2.31 g) with g = 32.2 ft/s²: this density.
      const density = (PSI / (2.31 * FOOT * 32.2 * FOOT)) as Density;
      const surge = joukowsky({ velocityChange: FOOT as Velocity, waveSpeed: speedInPipe, density });
      return { waveSpeed: speedInPipe, surge: surge.pressure };
    },
  },
  {
    ids: /schaschke-ex-2-3/,
    compute: (g) => ({
      pressure: rigidColumnSurge({
        length: g.si("length"),
        velocityChange: g.si("velocity"),
        time: g.si("time"),
        density: g.si("density"),
      }).pressure,
    }),
  },
  {
    ids: /wylie-streeter-valve-start/,
    compute: (g) => {
      const scale = Math.sqrt(g.si("g") / STANDARD_GRAVITY);
      // At standard gravity the same heads drive √(g₀/g) of the flow: time is measured in another unit, no more.
      const ratedFlow = (g.si("valveArea") * Math.sqrt(2 * STANDARD_GRAVITY)) as VolumeFlow;
      const surge = simulateSurge({
        pipes: [
          {
            length: g.si("length"),
            insideDiameter: g.si("diameter"),
            waveSpeed: g.si("waveSpeed"),
            frictionFactor: g.si("darcyFrictionFactor"),
            endElevation: 0 as Length,
          },
        ],
        startElevation: 0 as Length,
        start: { kind: "fixed head", head: g.si("reservoirHead") },
        end: {
          kind: "valve",
          outletHead: 0 as Length,
          ratedFlow,
          ratedHeadLoss: 1 as Length,
          openings: [{ time: 0 as Duration, opening: 1 }],
        },
        density: 1000 as Density,
        vapourPressure: 2339 as AbsolutePressure,
        atmosphere: 101325 as AbsolutePressure,
        duration: 1 as Duration,
        reaches: 5,
      });
      if (surge.state !== "followed") throw new Error(surge.state);
      return {
        flow: surge.startFlow * scale,
        heads: surge.envelope.map(({ startHead }) => startHead),
      };
    },
  },
];
