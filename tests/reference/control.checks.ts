/** How each published control record is computed with the library. */
import { checkReliefValve, pressureHeld, reliefOrificeFlow } from "risingmain/control";
import { pumpCurve, shutoffPressure } from "risingmain/pump";
import { type Density, feet, type GaugePressure, gpm, type Length, psi, type VolumeFlow } from "risingmain/units";
import type { Computation, Computed, Given } from "./register.ts";

/** The density that the rule of 2.31 ft to the psi implies. */
const RULE_DENSITY = (psi(1) / (2.31 * feet(1) * 9.80665)) as Density;
/** Water that weighs 62.4 lb/ft³, which the hydrant formula's constant holds. */
const HYDRANT_DENSITY = 999.5 as Density;

/** A pump whose flow falls as the root of the pressure left: Q = Q₀ √(1 − p/p₀). */
const parabolic = (g: Given) => {
  const most = g.si("flowAtNoPressure");
  const shutoff = g.si("shutoffPressure");
  return (pressure: GaugePressure): VolumeFlow => (most * Math.sqrt(Math.max(0, 1 - pressure / shutoff))) as VolumeFlow;
};

export const computations: readonly Computation[] = [
  {
    ids: /relief-capacity-equals-pump/,
    compute: (g) => ({
      minCapacity: checkReliefValve({
        setPressure: psi(75),
        cutOut: psi(60),
        pumpFlowAt: () => g.si("flowAtReliefPressure"),
        parts: [{ name: "tank", rating: psi(100) }],
      }).requiredCapacity,
    }),
  },
  {
    ids: /shutoff-head-overpressure/,
    compute: (g) => {
      const head = g.si<Length>("shutoffHead");
      const curve = pumpCurve({
        points: [
          { flow: gpm(0), head },
          { flow: gpm(10), head: (head / 2) as Length },
        ],
      });
      return {
        pressure: shutoffPressure({ curve, staticLevel: g.si("pumpingLevel"), density: RULE_DENSITY }).pressure,
      };
    },
  },
  {
    ids: /relief-orifice-check|hydrant-formula-.*/,
    compute: (g) => ({
      flow: reliefOrificeFlow({
        diameter: g.si("diameter"),
        pressure: g.si("pressure"),
        dischargeCoefficient: g.si("dischargeCoefficient"),
        density: HYDRANT_DENSITY,
      }),
    }),
  },
  {
    ids: /scipy-pressure-held-.*/,
    compute: (g): Computed => {
      const held = pressureHeld({
        valve: {
          setPressure: g.si("setPressure"),
          minimumFlow: g.si("minimumFlow"),
          ...(g.has("droop") && { droop: g.si("droop"), droopFlow: g.si("droopFlow") }),
        },
        cutIn: g.si("cutIn"),
        cutOut: g.si("cutOut"),
        demand: g.si("demand"),
        openFlowAt: parabolic(g),
      });
      if (held.state !== "holds") throw new Error(held.state);
      return { pressure: held.pressure };
    },
  },
  {
    ids: /scipy-relief-.*/,
    compute: (g): Computed => {
      const relief = checkReliefValve({
        setPressure: g.si("setPressure"),
        ratedCapacity: g.si("ratedCapacity"),
        cutOut: psi(60),
        pumpFlowAt: parabolic(g),
        parts: [{ name: "tank", rating: psi(150) }],
      });
      return {
        requiredCapacity: relief.requiredCapacity,
        relievingPressure: relief.relievingPressure ?? Number.NaN,
      };
    },
  },
];
