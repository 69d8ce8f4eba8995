/** How each published tank record is computed with the library. */
import {
  airEnergy,
  airOverWaterDrawdown,
  airOverWaterSize,
  bankDrawdown,
  motorStartLimit,
  peakStorage,
  prechargeAtTemperature,
  publicSystemTank,
  recommendedPrecharge,
  stockTank,
  storedWater,
  tankCycle,
  tankDrawdown,
  tankFillTime,
  tankSizeForRunTime,
  tankSizeForStarts,
  waterSeal,
  worstDemand,
  worstDemandOnCurve,
} from "risingmain/tank";
import {
  type AbsolutePressure,
  type Density,
  type Duration,
  type Frequency,
  type GaugePressure,
  horsepower,
  inUsGallons,
  type Length,
  psi,
  psia,
  type Temperature,
  usGallons,
  type Volume,
  type VolumeFlow,
} from "risingmain/units";
import type { Computation, Computed, Given } from "./register.ts";

const UNIT_TANK = usGallons(100);
/** The rounded atmosphere that trade sums are made with. */
const TRADE_ATMOSPHERE = psia(14.7);
/** The register's "70 F" is a bare number of degrees. */
const fahrenheitOf = (g: Given, name: string): Temperature => (g.si(name) + 459.67 / 1.8) as Temperature;
const air = (g: Given): AbsolutePressure => (g.has("atmosphere") ? g.si("atmosphere") : TRADE_ATMOSPHERE);
const drawdown = (g: Given, precharge: GaugePressure) =>
  tankDrawdown({
    volume: g.has("tankVolume") ? g.si("tankVolume") : UNIT_TANK,
    precharge,
    cutIn: g.si("cutIn"),
    cutOut: g.si("cutOut"),
    atmosphere: air(g),
  });
const size = (sized: ReturnType<typeof tankSizeForStarts>): { volume: number; usable: number } => {
  if (sized.state !== "sized") throw new Error(sized.state);
  return sized;
};

/** A pump whose flow falls as a parabola of pressure: Q = Q₀ √(1 − p/p₀). */
const parabolic = (g: Given) => {
  const most = g.si("flowAtNoPressure");
  const shutoff = g.si("shutoffPressure");
  return (pressure: GaugePressure): VolumeFlow => (most * Math.sqrt(Math.max(0, 1 - pressure / shutoff))) as VolumeFlow;
};
const onCurve = (g: Given) => ({
  volume: g.si<Volume>("tankVolume"),
  precharge: g.si<GaugePressure>("precharge"),
  cutIn: g.si<GaugePressure>("cutIn"),
  cutOut: g.si<GaugePressure>("cutOut"),
  atmosphere: air(g),
  ...(g.has("exponent") && { polytropicExponent: g.si("exponent") }),
  pumpFlowAt: parabolic(g),
});

export const computations: readonly Computation[] = [
  {
    ids: /tank-pelikan-30-50-sea|tank-ratio-30-50-quoted/,
    compute: (g) => {
      const { acceptance, usable } = drawdown(g, g.si("precharge"));
      return { factor: acceptance, drawdown: usable };
    },
  },
  {
    ids: /acceptance-\d\d-\d\d/,
    compute: (g) => ({
      factorPrecharge2Below: drawdown(g, g.si("precharge")).acceptance,
      factorPrechargeEqualsCutIn: drawdown(g, g.si("cutIn")).acceptance,
    }),
  },
  { ids: /acceptance-40-60-7000ft/, compute: (g) => ({ factor: drawdown(g, g.si("precharge")).acceptance }) },
  { ids: /wsc-precharge-2psi/, compute: (g) => ({ precharge: recommendedPrecharge(g.si("cutIn")) }) },
  {
    ids: /tank-wrong-gauge-boyle/,
    compute: (g) => ({
      // The trap is reproduced by calling gauge pressures absolute: each lowered by the air outside.
      wrongFactorGauge: tankDrawdown({
        volume: UNIT_TANK,
        precharge: (g.si("cutIn") - TRADE_ATMOSPHERE) as GaugePressure,
        cutIn: (g.si("cutIn") - TRADE_ATMOSPHERE) as GaugePressure,
        cutOut: (g.si("cutOut") - TRADE_ATMOSPHERE) as GaugePressure,
        atmosphere: TRADE_ATMOSPHERE,
      }).acceptance,
      rightFactorAbsolute: drawdown(g, g.si("cutIn")).acceptance,
    }),
  },
  {
    ids: /salvato-volume/,
    compute: (g) => ({
      tankVolume: airOverWaterSize({
        usable: g.si("peakStorage"),
        cutIn: g.si("minPressure"),
        cutOut: g.si("maxPressure"),
        atmosphere: g.si("atmosphere"),
        seal: 0 as Volume,
      }),
    }),
  },
  {
    ids: /wadoh-11-2-vertical/,
    compute: (g) => {
      const starts = g.si<Frequency>("cyclesPerHour");
      const cutIn = g.si<GaugePressure>("pumpOn");
      const cutOut = g.si<GaugePressure>("pumpOff");
      const sized = size(
        tankSizeForStarts({
          pumpFlow: g.si("flow"),
          cutIn,
          cutOut,
          precharge: cutIn,
          atmosphere: TRADE_ATMOSPHERE,
          starts,
        }),
      );
      const seal = waterSeal({ diameter: g.si("diameter"), depth: (6 * 0.0254) as Length });
      const usable = sized.usable as Volume;
      return { tankVolume: airOverWaterSize({ usable, cutIn, cutOut, atmosphere: TRADE_ATMOSPHERE, seal }) };
    },
  },
  {
    ids: /wadoh-seal-volume/,
    compute: (g) => ({ volume: waterSeal({ diameter: g.si("diameter"), depth: g.si("depth") }) }),
  },
  {
    ids: /cycle-worst-case-half/,
    compute: (g) => {
      const worst = worstDemand({ usable: g.si("drawdown"), pumpFlow: g.si("flow") });
      return { minCycle: worst.cycleTime, maxStartsPerHour: worst.starts };
    },
  },
  {
    ids: /cycle-at-20-percent-demand/,
    compute: (g) => {
      const cycle = tankCycle({ usable: g.si("drawdown"), pumpFlow: g.si("flow"), demand: g.si("demand") });
      if (cycle.state !== "cycling") throw new Error(cycle.state);
      return { cycle: cycle.cycleTime, startsPerHour: cycle.starts };
    },
  },
  {
    ids: /one-minute-run-worst-starts/,
    compute: () => {
      const pumpFlow = 1e-3 as VolumeFlow;
      const { starts } = worstDemand({ usable: (60 * pumpFlow) as Volume, pumpFlow });
      return { maxStartsPerHour: starts, maxStartsPerDay: starts };
    },
  },
  {
    ids: /epa-tank-chart-\d+gpm/,
    compute: (g) => {
      const cutOuts = g.list<GaugePressure>("cutOut");
      const sizes = g.list<GaugePressure>("cutIn").map((cutIn, i) => {
        const tank = stockTank({ pumpFlow: g.si("flow"), cutIn, cutOut: cutOuts[i] as GaugePressure });
        return tank.state === "listed" ? tank.volume : Number.NaN;
      });
      return { tankSize: sizes };
    },
  },
  { ids: /tenstates-10x-rule/, compute: (g) => ({ tankVolume: publicSystemTank(g.si("flow")) }) },
  {
    ids: /tank-size-rule-compare/,
    compute: (g) => ({
      tenTimesRule: publicSystemTank(g.si("flow")),
      cycleFormulaCaptiveAir: size(
        tankSizeForStarts({
          pumpFlow: g.si("flow"),
          cutIn: g.si("cutIn"),
          cutOut: g.si("cutOut"),
          atmosphere: TRADE_ATMOSPHERE,
          starts: g.si("cyclesPerHour"),
        }),
      ).volume,
    }),
  },
  {
    ids: /air-over-water-no-precharge/,
    compute: (g) => {
      const given = airOverWaterDrawdown({
        volume: g.si("tankVolume"),
        precharge: psi(0),
        cutIn: g.si("cutIn"),
        cutOut: g.si("cutOut"),
        atmosphere: g.si("atmosphere"),
        seal: 0 as Volume,
      });
      return { factor: given.acceptance, drawdown: given.usable };
    },
  },
  {
    ids: /peak-7-min-extra-storage/,
    compute: (g) => {
      const peak = peakStorage({
        peakDemand: g.si("peakDemand"),
        pumpFlow: g.si("pumpFlow"),
        peakDuration: g.si("peakDuration"),
        runTime: g.si("runTime"),
      });
      return { extra: peak.extra, totalDrawdown: peak.usable };
    },
  },
  {
    ids: /gage-vs-absolute-prechrg-empty/,
    compute: (g) => ({
      precharge2: prechargeAtTemperature({
        precharge: g.si("precharge"),
        setAt: fahrenheitOf(g, "t1"),
        temperature: fahrenheitOf(g, "t2"),
        atmosphere: g.si("atmosphere"),
      }),
    }),
  },
  {
    ids: /idaho-cycle-tank-20gpm/,
    compute: (g) => ({
      drawdown: size(
        tankSizeForStarts({
          pumpFlow: g.si("flow"),
          cutIn: psi(40),
          cutOut: psi(60),
          atmosphere: TRADE_ATMOSPHERE,
          starts: g.si("maxCyclesPerHour"),
        }),
      ).usable,
    }),
  },
  {
    ids: /run-time-(1-minute-tank|2-minutes-larger)/,
    compute: (g) => ({
      drawdown: size(
        tankSizeForRunTime({
          pumpFlow: g.si("flow"),
          cutIn: psi(40),
          cutOut: psi(60),
          atmosphere: TRADE_ATMOSPHERE,
          runTime: g.si("runTime"),
        }),
      ).usable,
    }),
  },
  {
    ids: /wsc-starts-per-day/,
    compute: (g) => ({
      maxStartsPerDay: motorStartLimit(g.si("horsepowerSmallMax")).perDay,
      maxStartsPerHourUpTo0_75hp: motorStartLimit(g.si("horsepowerSmallMax")).perHour,
      maxStartsPerHourOver0_75hp: motorStartLimit(horsepower(1)).perHour,
    }),
  },
  {
    ids: /pressure-decay-with-tank/,
    compute: (g) => {
      const tank = { volume: g.si<Volume>("tankVolume"), precharge: g.si<GaugePressure>("precharge") };
      const at = (pressure: number) =>
        storedWater({ ...tank, atmosphere: TRADE_ATMOSPHERE, pressure: pressure as GaugePressure }).stored;
      return { loss: at(g.si("pressure")) - at(g.si("pressure") - g.si("drop")) };
    },
  },
  {
    ids: /stored-energy-air-cushion/,
    compute: (g) => ({
      energy: airEnergy({
        air: usGallons(inUsGallons(g.si("tankVolume")) * g.si("airFraction")),
        pressure: g.si("pressure"),
        atmosphere: g.si("atmosphere"),
      }).energy,
    }),
  },
  {
    ids: /acceptance-table-.*/,
    compute: (g) => {
      const cutOuts = g.list<GaugePressure>("cutOut");
      const factors = g.list<GaugePressure>("cutIn").map(
        (cutIn, i) =>
          tankDrawdown({
            volume: UNIT_TANK,
            precharge: cutIn,
            cutIn,
            cutOut: cutOuts[i] as GaugePressure,
            atmosphere: TRADE_ATMOSPHERE,
          }).acceptance,
      );
      return { factor: factors };
    },
  },
  {
    ids: /scipy-worst-demand-.*/,
    compute: (g): Computed => {
      const worst = worstDemandOnCurve(onCurve(g));
      if (worst.state !== "cycles") throw new Error(worst.state);
      return { demand: worst.demand, cycleTime: worst.cycleTime, starts: worst.starts };
    },
  },
  {
    ids: /scipy-fill-time-.*/,
    compute: (g): Computed => {
      const fill = tankFillTime({ ...onCurve(g), demand: g.si("demand") });
      if (fill.state !== "fills") throw new Error(fill.state);
      return { time: fill.time as Duration };
    },
  },
  {
    ids: /scipy-bank-.*/,
    compute: (g): Computed => {
      const precharges = g.list<GaugePressure>("precharge");
      const elevations = g.list<Length>("elevation");
      const bank = bankDrawdown({
        tanks: g.list<Volume>("tankVolume").map((volume, i) => ({
          volume,
          precharge: precharges[i] as GaugePressure,
          elevation: elevations[i] as Length,
        })),
        cutIn: g.si("cutIn"),
        cutOut: g.si("cutOut"),
        atmosphere: air(g),
        density: g.si<Density>("density"),
        polytropicExponent: g.si("exponent"),
      });
      return { usable: bank.usable };
    },
  },
];
