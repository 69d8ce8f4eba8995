/** How each published freezing record is computed with the library. */
import {
  berggrenCoefficient,
  berggrenFrostDepth,
  burialDepth,
  buriedPipe,
  type GroundSurface,
  stefanFrostDepth,
  surfaceFreezingIndex,
  timeToFreeze,
} from "risingmain/freeze";
import type { DegreeTime, Density, Duration, Length, Ratio, Temperature, ThermalConductivity } from "risingmain/units";
import type { Computation, Given } from "./register.ts";

/** The records' "F" is a Fahrenheit reading, which the unit table takes for a difference. */
function fahrenheitScale(g: Given, name: string): Temperature {
  return (g.si(name) + 459.67 / 1.8) as Temperature;
}

function soil(g: Given) {
  return {
    conductivity: g.si<ThermalConductivity>("conductivity"),
    dryDensity: g.si<Density>("dryDensity"),
    moisture: g.si<Ratio>("moisture"),
    surfaceIndex: g.si<DegreeTime>("surfaceFreezingIndex"),
  };
}

function pipe(g: Given) {
  const result = timeToFreeze({
    insideDiameter: g.si<Length>("pipeId"),
    insulationInside: g.si<Length>("insulationId"),
    insulationOutside: g.si<Length>("insulationOd"),
    conductivity: g.si<ThermalConductivity>("conductivity"),
    water: fahrenheitScale(g, "initial"),
    air: fahrenheitScale(g, "ambient"),
  });
  if (result.state !== "freezes") throw new Error("the pipe of the record does not freeze");
  return result;
}

/** The record gives the ratio of temperatures; any pair with that ratio will do. */
function warmPipe(g: Given, temperatureRatio: number) {
  return buriedPipe({
    axisDepth: g.si<Length>("depthToCentre"),
    outsideDiameter: (2 * g.si("pipeRadius")) as Length,
    pipe: (273.15 + 10 * (1 - temperatureRatio)) as Temperature,
    ground: (273.15 - 10 * temperatureRatio) as Temperature,
    conductivity: 1 as ThermalConductivity,
  });
}

export const computations: readonly Computation[] = [
  { ids: /time-to-freeze-.*/, compute: (g) => ({ time: pipe(g).toFreezing }) },
  {
    ids: /latent-ratio/,
    compute: (g) => {
      const result = timeToFreeze({
        insideDiameter: 0.05 as Length,
        insulationInside: 0.06 as Length,
        insulationOutside: 0.1 as Length,
        conductivity: 0.04 as ThermalConductivity,
        water: (273.15 + g.si("cooling")) as Temperature,
        air: 263.15 as Temperature,
      });
      if (result.state !== "freezes") throw new Error("it does not freeze");
      return { ratio: result.freezingHeat / result.coolingHeat };
    },
  },
  {
    ids: /n-factor-.*/,
    compute: (g) => {
      const surface = g.record.id.replace("n-factor-", "").replaceAll("-", " ") as GroundSurface;
      const { surfaceIndex, thawing } = surfaceFreezingIndex({ airIndex: 1 as DegreeTime, surface });
      return { freezing: surfaceIndex, ...(thawing === undefined ? {} : { thawing }) };
    },
  },
  {
    ids: /stefan-silt/,
    compute: (g) => ({ ...stefanFrostDepth(soil(g)) }),
  },
  {
    ids: /berggren-lambda-.*/,
    compute: (g) => ({
      lambda: berggrenCoefficient({
        thermalRatio: g.si<Ratio>("thermalRatio"),
        fusionParameter: g.si<Ratio>("fusionParameter"),
      }),
    }),
  },
  {
    ids: /berggren-depth-silt|berggren-tm5852-6-sandy-silt/,
    compute: (g) => {
      const frost = berggrenFrostDepth({
        ...soil(g),
        season: g.si<Duration>("season"),
        meanAnnual: fahrenheitScale(g, "meanAnnual"),
      });
      if (frost.state !== "seasonal frost") throw new Error("frozen all year");
      return { ...frost };
    },
  },
  {
    ids: /tm5852-5-buried-pipe-thaw/,
    compute: (g) => {
      const { thawed } = warmPipe(g, g.si("temperatureRatio"));
      return {
        A: thawed?.argument ?? 0,
        axisDepth: thawed?.axisDepth ?? 0,
        axisBelowPipeBottom: thawed?.axisBelowPipe ?? 0,
      };
    },
  },
  {
    ids: /tm5852-5-thaw-radius-(corrected|printed)/,
    compute: (g) => {
      const { thawed } = warmPipe(g, g.si("temperatureRatio"));
      const c = Math.sqrt(g.si("depthToCentre") ** 2 - g.si("pipeRadius") ** 2);
      return { thawRadius: thawed?.radius ?? 0, csch: (thawed?.radius ?? 0) / c };
    },
  },
  {
    ids: /shape-factor-arccosh/,
    compute: (g) => {
      const { shape, approximateShape } = warmPipe(g, 0.5);
      return { arccosh: shape, lnForm: approximateShape };
    },
  },
  {
    // Water alone, as a "soil" that is all moisture.
    ids: /latent-water-volumetric/,
    compute: (g) => ({
      latentHeat: stefanFrostDepth({
        conductivity: 1 as ThermalConductivity,
        dryDensity: g.si<Density>("specificWeight"),
        moisture: 1 as Ratio,
        surfaceIndex: 0 as DegreeTime,
      }).latentHeat,
    }),
  },
  {
    ids: /burial-below-frost/,
    compute: (g) => {
      const frostDepth = g.si<Length>("frostDepth");
      const six = burialDepth({ frostDepth, margin: (6 * 0.0254) as Length });
      const usual = burialDepth({ frostDepth });
      return {
        marginLow: six.cover - frostDepth,
        marginHigh: usual.cover - frostDepth,
        coverLow: six.cover,
        coverHigh: usual.cover,
      };
    },
  },
];
