/** How each published head record is computed with the library. */
import {
  type Bernoulli,
  bernoulli,
  greatestSuctionLift,
  headOfPressure,
  headOfPressureDifference,
  npshAvailable,
  pressureDifferenceOfHead,
  pressureOfHead,
  totalDynamicHead,
  velocityHead,
  velocityOfHead,
} from "risingmain/head";
import {
  type AbsolutePressure,
  type Density,
  type GaugePressure,
  gaugeOfAbsolute,
  type Length,
  type PressureDifference,
  type Temperature,
  type Velocity,
} from "risingmain/units";
import { waterAt } from "risingmain/water";
import type { Computation, Given } from "./register.ts";

const STANDARD_GRAVITY = 9.80665;
const FOOT = 0.3048;
const PSI = (0.45359237 * STANDARD_GRAVITY) / 0.0254 ** 2;
/** A book's head is energy per weight at the book's gravity; ours is at standard gravity. */
const book = (g: Given, name: string): Length => ((g.si(name) * g.si("g")) / STANDARD_GRAVITY) as Length;
const head = (g: Given, metres: number): Length => ((metres * g.si("g")) / STANDARD_GRAVITY) as Length;
/** A specific weight is a density at standard gravity: a pressure and a head then agree as the book's do. */
const heavy = (g: Given): Density => (g.si("specificWeight") / STANDARD_GRAVITY) as Density;
/** The density that a rule of so many feet to the psi implies. */
const rule = (feetPerPsi: number): Density => (PSI / (feetPerPsi * FOOT * STANDARD_GRAVITY)) as Density;
const ruled = (g: Given): Density => (1 / (g.si("feetPerPsi") * STANDARD_GRAVITY)) as Density;
const area = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
const water = 1000 as Density;

type Balanced = Extract<Bernoulli, { state: "balanced" }>;

function balanced(result: Bernoulli): Balanced {
  if (result.state !== "balanced") throw new Error(`${result.short} m of head missing`);
  return result;
}

/** Velocity under a fall of the book's, with so many velocity heads lost, and one kept or lost at the end. */
function fallVelocity(g: Given, fall: number, lossCoefficient: number): Velocity {
  const from = { elevation: head(g, fall) };
  return balanced(bernoulli({ from, to: {}, lossCoefficient, density: water, solveFor: "to.velocity" })).to.velocity;
}

/** Length of a pipe over its bore times the Darcy factor: velocity heads lost in it. */
const friction = (g: Given, length: number): number => (4 * g.si("fanningFrictionFactor") * length) / g.si("diameter");

/** Gauge pressure at a crest of the book's height above the water. */
function crestPressure(g: Given, height: number, velocity: Velocity, lossCoefficient: number, density: Density) {
  const to = { elevation: head(g, height), velocity };
  return balanced(bernoulli({ from: {}, to, lossCoefficient, density, solveFor: "to.pressure" })).to.pressure;
}

/** A head at the book's gravity, from ours. */
const printed = (g: Given, metres: number): number => (metres * STANDARD_GRAVITY) / g.si("g");

export const computations: readonly Computation[] = [
  {
    ids: /munson-ex-3-10-siphon/,
    compute: (g) => {
      const density = heavy(g);
      const surface = g.si<Length>("surfaceAboveOutletHorizontal");
      const outlet = { elevation: (surface - g.si("outletDrop")) as Length };
      const flow = balanced(bernoulli({ from: { elevation: surface }, to: outlet, density, solveFor: "to.velocity" }));
      const boiling = gaugeOfAbsolute(g.si<AbsolutePressure>("vapourPressure"), g.si<AbsolutePressure>("atmosphere"));
      const crest = { pressure: boiling, velocity: flow.to.velocity };
      return {
        height: balanced(bernoulli({ from: { elevation: surface }, to: crest, density, solveFor: "to.elevation" })).to
          .elevation,
      };
    },
  },
  {
    ids: /cengel-ex-5-7-siphon/,
    compute: (g) => {
      const velocity = fallVelocity(g, g.si("drop"), 0);
      const crest = g.si("crestAboveOutlet") - g.si("drop");
      return {
        time: g.si("volume") / (area(g.si("diameter")) * velocity),
        crestPressure: g.si("atmosphere") + crestPressure(g, crest, velocity, 0, g.si("density")),
      };
    },
  },
  {
    ids: /lal-ex-5-12-siphon/,
    compute: (g) => {
      const suctionLimit = {
        elevation: g.si<Length>("crestHeight"),
        pressure: pressureOfHead({ head: (-34 * FOOT) as Length, density: water }),
      };
      const spare = balanced(bernoulli({ from: {}, to: suctionLimit, density: water, solveFor: "headLoss" })).headLoss;
      return {
        discharge: area(g.si("diameter")) * fallVelocity(g, g.si("head"), friction(g, g.si("length")) + 0.5),
        inletLength: (spare * g.si("length")) / g.si("head"),
      };
    },
  },
  {
    ids: /natarajan-ex-5-7-siphon/,
    compute: (g) => {
      const velocity = fallVelocity(g, g.si("dropSurfaceToOutlet"), 0);
      const crest = g.si("crestAboveOutlet") - g.si("dropSurfaceToOutlet");
      return {
        discharge: area(g.si("diameter")) * velocity,
        crestPressure: crestPressure(g, crest, velocity, 0, g.si("density")),
      };
    },
  },
  {
    ids: /choudhary-ex-7-21-siphon/,
    compute: (g) => {
      // Friction alone takes the whole head: the velocity head at the outlet is left out, so one less is lost.
      const velocity = fallVelocity(g, g.si("head"), friction(g, g.si("length")) - 1);
      const summit = crestPressure(g, g.si("crestHeight"), velocity, friction(g, g.si("inletLength")), water);
      return {
        discharge: area(g.si("diameter")) * velocity,
        summitHeadAbsolute: g.si("atmosphericHead") + printed(g, headOfPressure({ pressure: summit, density: water })),
      };
    },
  },
  {
    ids: /douglas-ex-14-1-siphon/,
    compute: (g) => {
      const up = friction(g, g.si("lengthUp"));
      const velocity = fallVelocity(g, g.si("head"), up + friction(g, g.si("lengthDown")) + 0.5);
      return {
        velocity,
        crestPressure: crestPressure(g, g.si("crestAboveSurface"), velocity, up + 0.5, g.si("density")),
      };
    },
  },
  {
    ids: /dighe-ex-6-16-siphon/,
    compute: (g) => {
      const velocity = fallVelocity(g, g.si("head"), friction(g, g.si("length")) + 0.5);
      const lost = friction(g, g.si("lengthToVertex")) + 0.5;
      const vertex = crestPressure(g, g.si("vertexHeight"), velocity, lost, water);
      const vertexHead = printed(g, headOfPressure({ pressure: vertex, density: water }));
      return { vertexHead, vertexHeadAbsolute: g.si("atmosphericHead") + vertexHead };
    },
  },
  {
    ids: /dighe-ex-6-15-siphon/,
    compute: (g) => {
      const velocity = fallVelocity(g, g.si("head"), friction(g, g.si("length")) + 0.5);
      const pressure = pressureOfHead({ head: head(g, g.si("limitHead") - g.si("atmosphericHead")), density: water });
      const crest = { elevation: book(g, "crestHeight"), pressure };
      const lossAt = (V: Velocity): number =>
        balanced(bernoulli({ from: {}, to: { ...crest, velocity: V }, density: water, solveFor: "headLoss" })).headLoss;
      const perVelocityHead = friction(g, 1);
      return {
        velocity,
        inletLength: (lossAt(velocity) / velocityHead(velocity) - 0.5) / perVelocityHead,
        inletLengthApproximate: (printed(g, lossAt(0 as Velocity)) * g.si("length")) / g.si("head"),
      };
    },
  },
  {
    ids: /pao-ex-4-5/,
    compute: (g) => {
      const foot = (headLoss: Length): GaugePressure =>
        balanced(
          bernoulli({
            from: { elevation: g.si("rise"), pressure: g.si("upperPressure") },
            to: {},
            headLoss,
            density: heavy(g),
            solveFor: "to.pressure",
          }),
        ).to.pressure;
      return { lowerPressureNoLoss: foot(0 as Length), lowerPressureWithLoss: foot(g.si("loss")) };
    },
  },
  {
    ids: /cengel-ex-5-5/,
    compute: (g) => ({ height: headOfPressure({ pressure: g.si("pressure"), density: g.si("density") }) }),
  },
  { ids: /cengel-ex-5-6/, compute: (g) => ({ velocity: velocityOfHead(g.si("head")) }) },
  {
    ids: /geankoplis-ex-2-7-4/,
    compute: (g) => {
      const balance = bernoulli({
        from: { pressure: g.si("p1") },
        to: { pressure: g.si("p2"), elevation: book(g, "rise") },
        pumpHead: (g.si("work") / STANDARD_GRAVITY) as Length,
        density: g.si("density"),
        solveFor: "headLoss",
      });
      return { friction: balanced(balance).headLoss * STANDARD_GRAVITY };
    },
  },
  {
    ids: /douglas-ex-6-1/,
    compute: (g) => {
      const nozzle = g.si("nozzleDiameter");
      const share = (name: string): number => (nozzle / g.si(name)) ** 4;
      const balance = bernoulli({
        from: {},
        to: { elevation: book(g, "nozzleHeight") },
        pumpHead: book(g, "pumpEnergyHead"),
        lossCoefficient: 5 * share("suctionDiameter") + 12 * share("deliveryDiameter"),
        density: water,
        solveFor: "to.velocity",
      });
      return { jetVelocity: balanced(balance).to.velocity };
    },
  },
  {
    ids: /schaschke-ex-2-4-siphon/,
    compute: (g) => {
      const velocity = fallVelocity(g, g.si("fall"), 0);
      const at = (name: string): number => crestPressure(g, -g.si(name), velocity, 0, g.si("density"));
      return { velocity, pA: at("depthA"), pB: at("depthB"), pC: at("depthC") };
    },
  },
  {
    ids: /natarajan-ex-5-9/,
    compute: (g) => {
      const velocity = (g.si("flow") / area(g.si("diameter"))) as Velocity;
      const to = { elevation: book(g, "lift"), velocity };
      const density = g.si<Density>("density");
      const { pumpHead } = balanced(bernoulli({ from: {}, to, density, solveFor: "pumpHead" }));
      return { power: g.si("flow") * pressureDifferenceOfHead({ head: pumpHead, density }) };
    },
  },
  {
    ids: /pao-ex-4-11/,
    compute: (g) => {
      const velocity = (name: string): Velocity => (g.si("flow") / area(g.si(name))) as Velocity;
      const density = heavy(g);
      const { pumpHead } = balanced(
        bernoulli({
          from: { pressure: g.si("suctionPressure"), velocity: velocity("suctionDiameter") },
          to: {
            pressure: g.si("dischargePressure"),
            velocity: velocity("dischargeDiameter"),
            elevation: g.si("gaugeDifference"),
          },
          density,
          solveFor: "pumpHead",
        }),
      );
      return { power: g.si("flow") * pressureDifferenceOfHead({ head: pumpHead, density }) };
    },
  },
  {
    ids: /geankoplis-ex-2-7-5/,
    compute: (g) => {
      const flow = g.si("flow");
      const density = g.si<Density>("density");
      const suction = { velocity: (flow / g.si("suctionArea")) as Velocity };
      const discharge = { velocity: (flow / g.si("dischargeArea")) as Velocity };
      const to = { ...discharge, elevation: g.si<Length>("lift") };
      const line = balanced(bernoulli({ from: {}, to, headLoss: g.si("friction"), density, solveFor: "pumpHead" }));
      const pump = balanced(
        bernoulli({ from: suction, to: discharge, pumpHead: line.pumpHead, density, solveFor: "to.pressure" }),
      );
      return {
        power: (flow * pressureDifferenceOfHead({ head: line.pumpHead, density })) / g.si("efficiency"),
        pressureDeveloped: pump.to.pressure,
      };
    },
  },
  {
    ids: /cengel-ex-5-15/,
    compute: (g) => {
      const density = g.si<Density>("density");
      const balance = bernoulli({
        from: {},
        to: { elevation: book(g, "lift") },
        headLoss: book(g, "headLoss"),
        density,
        solveFor: "pumpHead",
      });
      const pressureRise = pressureDifferenceOfHead({ head: balanced(balance).pumpHead, density });
      return { pressureRise, flow: (g.si("shaftPower") * g.si("efficiency")) / pressureRise };
    },
  },
  {
    ids: /munson-ex-12-3/,
    compute: (g) => {
      const velocity = (g.si("flow") / area(g.si("diameter"))) as Velocity;
      const lift = greatestSuctionLift({
        atmosphere: g.si("atmosphere"),
        vapourPressure: g.si("vapourPressure"),
        density: heavy(g),
        suctionLoss: (g.si("lossCoefficient") * printed(g, velocityHead(velocity))) as Length,
        npshRequired: g.si("npshRequired"),
        margin: 0 as Length,
      });
      if (lift.state !== "can lift") throw new Error(lift.state);
      return { height: lift.greatestLift };
    },
  },
  {
    ids: /crane-7-32/,
    compute: (g) => ({
      npsha: npshAvailable({
        atmosphere: g.si("tankPressureAbs"),
        vapourPressure: g.si("vapourPressure"),
        density: g.si("density"),
        waterAbovePump: -g.si("staticLift") as Length,
        suctionLoss: g.si("headLoss"),
      }).npshAvailable,
    }),
  },
  {
    ids: /tdh-mil1164-field-head/,
    compute: (g) => {
      const run = g.si("columnLength") + g.si("elbowEquivalentLength");
      const headLoss = (g.si("frictionPer1000ft") * run) as Length;
      const total = totalDynamicHead({
        staticLevel: g.si("pumpingLevelBelowGauge"),
        dischargePressure: g.si("dischargePressure"),
        losses: [{ name: "column and elbow", headLoss }],
        density: ruled(g),
      });
      return {
        columnFriction: total.parts.losses,
        pressureHead: total.parts.dischargePressure,
        totalHead: total.totalDynamicHead,
      };
    },
  },
  {
    ids: /tdh-driller-three-part/,
    compute: (g) => ({
      totalDynamicHead: totalDynamicHead({
        staticLevel: g.si("lift"),
        dischargePressure: g.si("pressureAtCutOut"),
        losses: [{ name: "friction", headLoss: g.si("friction") }],
        density: ruled(g),
      }).totalDynamicHead,
    }),
  },
  {
    ids: /tdh-ti814-equation/,
    compute: (g) => ({
      totalDynamicHead: totalDynamicHead({
        staticLevel: g.si("suctionLift"),
        dischargePressure: pressureOfHead({ head: g.si("dischargeHead"), density: water }),
        losses: [{ name: "friction", headLoss: g.si("friction") }],
        dischargeVelocity: g.si("velocity"),
        density: water,
      }).totalDynamicHead,
    }),
  },
  {
    ids: /tdh-uga-lift-plus-pressure/,
    compute: (g) => ({
      totalHead: totalDynamicHead({
        staticLevel: g.si("lift"),
        dischargePressure: g.si("dischargePressure"),
        density: ruled(g),
      }).totalDynamicHead,
    }),
  },
  {
    ids: /tdh-handout-pressure-head-50psi/,
    compute: (g) => ({ pressureHead: headOfPressure({ pressure: g.si("cutOut"), density: ruled(g) }) }),
  },
  {
    ids: /tdh-handout-(softener|iron-filter|water-heater)-loss/,
    compute: (g) => ({
      head: headOfPressureDifference({
        pressureDifference: g.si<PressureDifference>("pressureLoss"),
        density: ruled(g),
      }),
    }),
  },
  {
    ids: /tdh-opmath-30psi/,
    compute: (g) => ({ head: headOfPressure({ pressure: g.si("pressure"), density: rule(2.31) }) }),
  },
  {
    ids: /tdh-opmath-115ft|psi-per-foot-rule/,
    compute: (g) => ({ pressure: pressureOfHead({ head: g.si("head"), density: rule(2.31) }) }),
  },
  {
    ids: /feet-per-psi-.*/,
    compute: (g) => {
      // The records write °F as "F", which the unit table reads as a difference.
      const temperature = (g.si("temperature") + 459.67 / 1.8) as Temperature;
      const { density } = waterAt({ temperature });
      const pressure = g.si<GaugePressure>("pressure");
      return { specificWeight: density, feetPerPsi: headOfPressure({ pressure, density }) / pressure };
    },
  },
  {
    ids: /tdh-fittings-static-vs-pumping/,
    compute: (g) => {
      const losses = [{ name: "friction", headLoss: g.si<Length>("friction") }];
      const rest = { losses, dischargePressure: g.si<GaugePressure>("pressure"), density: rule(2.31) };
      const staticLevel = g.si<Length>("staticLevel");
      const drawdown = (g.si("pumpingLevel") - staticLevel) as Length;
      return {
        tdhWithPumpingLevel: totalDynamicHead({ ...rest, staticLevel, drawdown }).totalDynamicHead,
        tdhWithStaticLevel: totalDynamicHead({ ...rest, staticLevel }).totalDynamicHead,
      };
    },
  },
  {
    ids: /psi-head-table-ndsu/,
    compute: (g) => ({
      head: g.list<GaugePressure>("pressure").map((pressure) => headOfPressure({ pressure, density: rule(2.31) })),
    }),
  },
  {
    ids: /npsh-page-.*/,
    compute: (g) => {
      const absolute = (name: string): AbsolutePressure =>
        pressureOfHead({ head: g.si(name), density: water }) as number as AbsolutePressure;
      return {
        npshAvailable: npshAvailable({
          atmosphere: absolute("atmosphericHead"),
          vapourPressure: absolute("vapourHead"),
          density: water,
          waterAbovePump: g.si("staticSuction"),
          suctionLoss: (g.si("friction") + g.si("inletLoss")) as Length,
        }).npshAvailable,
      };
    },
  },
  {
    ids: /npsh-schaschke-9-6/,
    compute: (g) => {
      const lift = greatestSuctionLift({
        atmosphere: g.si("surfacePressure"),
        vapourPressure: g.si("vapourPressure"),
        density: g.si("density"),
        suctionLoss: g.si("suctionLoss"),
        npshRequired: g.si("npshRequired"),
        margin: 0 as Length,
      });
      if (lift.state !== "can lift") throw new Error(lift.state);
      const lowest = g.si("suctionStatic") - lift.greatestLift;
      const volume = area(g.si("tankDiameter")) * (g.si("initialLevel") - lowest);
      return { volume, time: volume / g.si("flow") };
    },
  },
  {
    ids: /barometric-head-by-altitude/,
    compute: (g) => ({
      head: g
        .list<GaugePressure>("barometricPressure")
        .map((pressure) => headOfPressure({ pressure, density: g.si("density") })),
    }),
  },
];
