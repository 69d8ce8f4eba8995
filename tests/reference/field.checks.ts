/** How each published field-test record is computed with the library. */
import {
  type AirGapRule,
  airLineLevel,
  bucketFlow,
  drawdownLog,
  echoDepth,
  leaningTape,
  leastAirGap,
  measuredCurve,
  monteCarlo,
  pressureHold,
  propagateUncertainty,
  type RuleSubject,
  testAllowance,
  trajectoryFlow,
  wellheadRules,
} from "risingmain/field";
import type {
  AbsolutePressure,
  Density,
  Duration,
  GaugePressure,
  Length,
  Modulus,
  Temperature,
  Volume,
  VolumeFlow,
} from "risingmain/units";
import type { Computation, Given } from "./register.ts";

const GRAVITY = 9.80665;
const WATER = 999.7 as Density;

/** The density that makes a record's feet per psi what it says. */
function densityOf(g: Given): Density {
  return (1 / (GRAVITY * g.si("feetPerPsi"))) as Density;
}

function level(g: Given, pressure: string) {
  const read = airLineLevel({
    lineLength: g.si<Length>("lineLength"),
    pressure: g.si<GaugePressure>(pressure),
    density: densityOf(g),
  });
  if (read.state !== "read") throw new Error("the record's pressure is more than its line");
  return read;
}

function thrown(g: Given, reach: number): VolumeFlow {
  return trajectoryFlow({
    insideDiameter: g.si<Length>("diameter"),
    throw: reach as Length,
    drop: g.si<Length>("drop"),
  }).flow;
}

/** The end gauge of the guide, as readings in the order of the model. */
function endGauge(g: Given) {
  const names = ["standard", "difference", "expansion", "deviation", "expansionDifference", "temperatureDifference"];
  return {
    inputs: names.map((name) => ({ name, value: g.si(name), standardUncertainty: g.si(`${name}U`) })),
    model: ([s = 0, d = 0, alpha = 0, theta = 0, dAlpha = 0, dTheta = 0]: readonly number[]) =>
      s + d - s * (dAlpha * theta + alpha * dTheta),
  };
}

/** A rule of a place, as the record names both: each expected value has a subject beside it. */
function ruled(g: Given) {
  return Object.fromEntries(
    Object.keys(g.record.expected).map((name) => {
      const { rules } = wellheadRules(g.text(`${name}Subject`) as RuleSubject);
      const [rule, ...others] = rules.filter(
        ({ place, source }) => place === g.text("place") && source === g.record.source,
      );
      if (rule === undefined || others.length > 0) throw new Error(`${g.record.id}: not one rule for ${name}`);
      return [name, rule.value];
    }),
  );
}

export const computations: readonly Computation[] = [
  {
    ids: /setback-.*|grout-depth-army|casing-height-.*|seal-above-flood-davis|min-pressure-public|fixture-min-pressure-upc/,
    compute: ruled,
  },
  {
    ids: /max-static-80|upc-regulator-rules|burial-.*|hydrotest-.*|pe-test-nashua|chlorine-most-.*/,
    compute: ruled,
  },
  {
    ids: /backflow-air-gap|airgap-.*/,
    compute: (g) => ({ airGap: leastAirGap({ bore: g.si<Length>("bore"), rule: g.text("rule") as AirGapRule }).gap }),
  },
  {
    ids: /electric-tape-accuracy/,
    // What a log takes where nobody says otherwise: two tapes' doubts are in a drawdown.
    compute: () => ({
      accuracy:
        drawdownLog({
          staticLevel: 10 as Length,
          flow: 1e-3 as VolumeFlow,
          readings: [{ time: 60 as Duration, level: 12 as Length }],
        }).drawdownUncertainty / Math.SQRT2,
    }),
  },
  {
    ids: /tdh-mil1164-field-head/,
    compute: (g) => {
      const lost = g.si("frictionPer1000ft") * (g.si("columnLength") + g.si("elbowEquivalentLength"));
      const [point] = measuredCurve({
        readings: [
          {
            flow: g.si<VolumeFlow>("flow"),
            pressure: g.si<GaugePressure>("dischargePressure"),
            pumpingLevel: g.si<Length>("pumpingLevelBelowGauge"),
          },
        ],
        gaugeElevation: 0 as Length,
        density: densityOf(g),
        friction: () => lost as Length,
      }).points;
      return { columnFriction: point?.friction ?? 0, pressureHead: point?.gauge ?? 0, totalHead: point?.head ?? 0 };
    },
  },
  {
    ids: /airline-gauge-error/,
    compute: (g) => {
      const read = airLineLevel({
        lineLength: 50 as Length,
        pressure: 1e5 as GaugePressure,
        density: WATER,
        pressureUncertainty: g.si<GaugePressure>("gaugeError"),
      });
      return { levelError: read.state === "read" ? read.standardUncertainty : 0 };
    },
  },
  {
    ids: /trajectory-nmsu-.*/,
    compute: (g) => ({ flow: g.list("throw").map((reach) => thrown(g, reach)) }),
  },
  { ids: /trajectory-vccs-6in/, compute: (g) => ({ flow: thrown(g, g.si("throw")) }) },
  {
    ids: /trajectory-constant-1[23]in/,
    compute: (g) => {
      const d = 0.1;
      const { flow } = trajectoryFlow({
        insideDiameter: d as Length,
        throw: 0.4 as Length,
        drop: g.si<Length>("drop"),
      });
      return { constant: flow / ((Math.PI / 4) * d * d * 0.4) };
    },
  },
  {
    ids: /bucket-5gal-30s/,
    compute: (g) => ({ flow: bucketFlow({ volume: g.si<Volume>("volume"), times: [g.si<Duration>("time")] }).flow }),
  },
  {
    ids: /bucket-uncertainty/,
    compute: (g) => ({
      uncertainty: bucketFlow({
        volume: g.si<Volume>("volume"),
        times: [g.si<Duration>("time")],
        volumeUncertainty: g.si<Volume>("volumeError"),
        timeUncertainty: g.si<Duration>("timeError"),
      }).relativeUncertainty,
    }),
  },
  {
    ids: /pump-rate-by-tank-refill/,
    compute: (g) => ({ flow: bucketFlow({ volume: g.si<Volume>("drawn"), times: [g.si<Duration>("refill")] }).flow }),
  },
  {
    ids: /sprinkler-bucket-nsw/,
    compute: (g) => {
      const { flow, runs } = bucketFlow({ volume: g.si<Volume>("bucket"), times: g.list<Duration>("times") });
      return { flows: runs, average: flow, systemFlow: g.si("sprinklers") * flow };
    },
  },
  {
    ids: /spell-specific-capacity/,
    compute: (g) => ({
      specificCapacity:
        drawdownLog({
          staticLevel: 10 as Length,
          flow: g.si<VolumeFlow>("flow"),
          readings: [{ time: 3600 as Duration, level: (10 + g.si("drawdown")) as Length }],
        }).specificCapacity ?? 0,
    }),
  },
  {
    ids: /leakage-c605-.*|leakage-small-yard-line/,
    compute: (g) => ({
      makeup: testAllowance({
        length: g.si<Length>("length"),
        diameter: g.si<Length>("diameter"),
        pressure: g.si<GaugePressure>("pressure"),
      }).allowed,
    }),
  },
  {
    ids: /leakage-older-133200/,
    compute: (g) => {
      const main = {
        length: g.si<Length>("length"),
        diameter: g.si<Length>("diameter"),
        pressure: g.si<GaugePressure>("pressure"),
      };
      return { old: testAllowance({ ...main, edition: "older" }).allowed, new: testAllowance(main).allowed };
    },
  },
  {
    ids: /pressure-decay-volume/,
    compute: (g) => ({
      loss: pressureHold({
        pipeVolume: g.si<Volume>("pipeVolume"),
        startPressure: 4e5 as GaugePressure,
        endPressure: (4e5 - g.si("drop")) as GaugePressure,
        time: 3600 as Duration,
        bulkModulus: g.si<Modulus>("bulkModulus"),
      }).lost,
    }),
  },
  {
    ids: /pressure-decay-with-tank/,
    compute: (g) => ({
      loss: pressureHold({
        pipeVolume: 0 as Volume,
        startPressure: g.si<GaugePressure>("pressure"),
        endPressure: (g.si("pressure") - g.si("drop")) as GaugePressure,
        time: 3600 as Duration,
        tank: {
          volume: g.si<Volume>("tankVolume"),
          precharge: g.si<GaugePressure>("precharge"),
          atmosphere: 101_325 as AbsolutePressure,
        },
      }).fromTank,
    }),
  },
  {
    ids: /sonic-echo-not-needed/,
    compute: (g) => ({
      depth: echoDepth({
        echoTime: g.si<Duration>("echoTime"),
        // "F" in the record is a reading, which the unit table takes for a difference.
        airTemperature: (g.si("airTemperature") + 459.67 / 1.8) as Temperature,
      }).depth,
    }),
  },
  {
    ids: /sounding-line-drawdown/,
    compute: (g) => {
      const { level: pumping, submergence } = level(g, "airPressure");
      const log = drawdownLog({
        staticLevel: g.si<Length>("staticLevel"),
        flow: 1e-3 as VolumeFlow,
        readings: [{ time: 3600 as Duration, level: pumping }],
      });
      return { waterAboveLineEnd: submergence, pumpingLevel: pumping, drawdown: log.finalDrawdown };
    },
  },
  {
    ids: /airline-mil1164-drawdown/,
    compute: (g) => {
      const rest = level(g, "staticPressure");
      const pumping = level(g, "pumpingPressure");
      return {
        staticWater: rest.submergence,
        staticLevel: rest.level,
        pumpingWater: pumping.submergence,
        pumpingLevel: pumping.level,
        drawdown: pumping.level - rest.level,
      };
    },
  },
  {
    ids: /tape-plumbness-usgs/,
    compute: (g) => ({
      indicated: leaningTape({ trueDepth: g.si<Length>("trueDepth"), offset: g.si<Length>("offset") }),
    }),
  },
  {
    ids: /gum-h1-end-gauge/,
    compute: (g) => {
      const { value, standardUncertainty } = propagateUncertainty(endGauge(g));
      return { length: value, uncertainty: standardUncertainty };
    },
  },
  {
    ids: /gum-h1-second-order/,
    compute: (g) => ({ uncertainty: monteCarlo({ ...endGauge(g), seed: 7, trials: 200_000 }).standardUncertainty }),
  },
  {
    ids: /gum-h2-impedance/,
    compute: (g) => {
      const of = (model: (values: readonly number[]) => number) =>
        propagateUncertainty({
          inputs: ["voltage", "current", "phase"].map((name) => ({
            name,
            value: g.si(name),
            standardUncertainty: g.si(`${name}U`),
          })),
          correlations: [
            { first: 0, second: 1, coefficient: g.si("rVI") },
            { first: 0, second: 2, coefficient: g.si("rVPhase") },
            { first: 1, second: 2, coefficient: g.si("rIPhase") },
          ],
          model,
        });
      const r = of(([v = 0, i = 1, phase = 0]) => (v / i) * Math.cos(phase));
      const x = of(([v = 0, i = 1, phase = 0]) => (v / i) * Math.sin(phase));
      const z = of(([v = 0, i = 1]) => v / i);
      return {
        resistance: r.value,
        resistanceU: r.standardUncertainty,
        reactance: x.value,
        reactanceU: x.standardUncertainty,
        impedance: z.value,
        impedanceU: z.standardUncertainty,
      };
    },
  },
];
