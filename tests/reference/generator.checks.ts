/** How each published generator record is computed with the library. */
import {
  generatorCheck,
  generatorDerating,
  generatorForDip,
  generatorRules,
  pumpingFuel,
  receptacleCheck,
  shaftWorkPerGallon,
  startingDip,
} from "risingmain/generator";
import {
  type ApparentPower,
  amperes,
  type Length,
  type Power,
  type Ratio,
  ratio,
  type Voltage,
  type VolumeFlow,
  volts,
  watts,
} from "risingmain/units";
import type { Computation, Given } from "./register.ts";

const HORSEPOWER = 745.69987158227022;

const outlet = (g: Given) =>
  receptacleCheck({ receptacle: "L14-30", voltage: g.si<Voltage>("voltage"), current: amperes(0) });

export const computations: readonly Computation[] = [
  {
    ids: /generator-dip-7p5kw-code-k/,
    compute: (g) => ({
      dipPercent: startingDip({
        generatorPower: g.si<ApparentPower>("generatorKva"),
        transientReactance: g.si<Ratio>("transientReactance"),
        startingPower: g.si<ApparentPower>("startingKva"),
      }),
    }),
  },
  {
    ids: /generator-size-for-30-percent-dip/,
    compute: (g) => ({
      generatorKva: generatorForDip({
        dip: g.si<Ratio>("dipPercent"),
        transientReactance: g.si<Ratio>("transientReactance"),
        startingPower: g.si<ApparentPower>("startingKva"),
      }),
    }),
  },
  { ids: /ufgs-default-dip-limit/, compute: () => ({ dipPercent: generatorRules.dipLimit }) },
  {
    ids: /l14-30-(nominal-va|240v-va)/,
    compute: (g) => ({ apparentPower: outlet(g).ratedApparentPower }),
  },
  { ids: /l14-30-continuous-va/, compute: (g) => ({ apparentPower: outlet(g).continuousApparentPower }) },
  {
    ids: /motor-start-ratio-range/,
    compute: () => ({ low: generatorRules.startingRatio[0], high: generatorRules.startingRatio[1] }),
  },
  {
    ids: /engine-hp-per-kw/,
    compute: () => ({
      low: (generatorRules.enginePerKilowatt[0] * HORSEPOWER) / 1000,
      high: (generatorRules.enginePerKilowatt[1] * HORSEPOWER) / 1000,
    }),
  },
  {
    ids: /altitude-derating-225hp-4500ft/,
    compute: (g) => ({
      usablePower: g.si("power") * generatorDerating({ altitude: g.si<Length>("elevation") }).factor,
    }),
  },
  { ids: /generator-conductor-115-percent/, compute: () => ({ percent: generatorRules.conductorShare }) },
  { ids: /(cpsc|cdc)-generator-distance/, compute: () => ({ distance: generatorRules.leastDistance }) },
  { ids: /nist-generator-distance/, compute: () => ({ distance: generatorRules.carefulDistance }) },
  {
    ids: /nppc-(diesel|gasoline|propane)/,
    compute: (g) => {
      const fuel = g.record.id.slice("nppc-".length) as "diesel" | "gasoline" | "propane";
      const { criterion } = pumpingFuel({ waterPower: watts(1), fuel, use: 1e-6 as VolumeFlow });
      return { shaftWork: (shaftWorkPerGallon[fuel] * HORSEPOWER * 3600) / 3.785411784e-3, waterWork: criterion };
    },
  },
  {
    ids: /generator-continuous-80-percent/,
    compute: (g) => {
      const rating = g.si<Power>("rating");
      const checked = generatorCheck({
        generator: { runningPower: rating, surgePower: rating, voltage: volts(240), system: "single-phase" },
        motor: {
          system: "single-phase",
          ratedVoltage: volts(240),
          current: amperes(1),
          powerFactor: ratio(1),
          lockedRotorCurrent: amperes(5),
          lockedRotorPowerFactor: ratio(0.5),
        },
        segments: [{ length: 0 as Length, resistance: 0 as never }],
      });
      if (!("margins" in checked)) throw new Error(checked.state);
      return { continuousLoad: checked.margins.find(({ check }) => check === "running power")?.limit ?? 0 };
    },
  },
];
