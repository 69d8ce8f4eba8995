/** How each published friction record is computed with the library. */
import { pressureOfHead } from "risingmain/head";
import {
  type CoefficientInput,
  churchillFactor,
  darcyWeisbachLoss,
  diameterForHeadLoss,
  type ExplicitFactor,
  type FrictionFactorInput,
  flowForHeadLoss,
  frictionFactor,
  haalandFactor,
  hazenWilliamsCoefficient,
  hazenWilliamsFlow,
  hazenWilliamsLoss,
  serghidesFactor,
  swameeJainFactor,
  type WallMaterial,
  wallRoughness,
} from "risingmain/pipe";
import {
  type Density,
  type Duration,
  fahrenheit,
  type KinematicViscosity,
  type Length,
  type Temperature,
  type VolumeFlow,
} from "risingmain/units";
import { waterAt } from "risingmain/water";
import type { Computation, Given } from "./register.ts";

const SMOOTH = 0 as Length;
/** Water of the tables, which state no temperature: 60 °F. */
const TABLE_DENSITY = waterAt({ temperature: fahrenheit(60) }).density;
/** Loss tables are per 100 ft; a length cancels. */
const HUNDRED_FEET = 30.48 as Length;

function factorRow(g: Given): FrictionFactorInput {
  return {
    reynolds: g.si("reynolds"),
    relativeRoughness: g.has("relativeRoughness") ? g.si("relativeRoughness") : 0,
  };
}

/** Largest departure of a formula from Colebrook over the record's range: 120 Reynolds numbers by 101 roughnesses. */
function largestDeparture(g: Given, formula: (input: FrictionFactorInput) => ExplicitFactor): number {
  const [reFrom, reTo, kFrom, kTo] = ["reynoldsMin", "reynoldsMax", "relativeRoughnessMin", "relativeRoughnessMax"].map(
    (name) => Math.log(Math.max(g.si(name), 1e-8)),
  ) as [number, number, number, number];
  let largest = 0;
  for (let i = 0; i < 120; i++) {
    for (let j = 0; j <= 100; j++) {
      const reynolds = Math.min(1e8, Math.max(4000, Math.exp(reFrom + ((reTo - reFrom) * i) / 119)));
      const input = { reynolds, relativeRoughness: Math.exp(kFrom + ((kTo - kFrom) * j) / 100) };
      largest = Math.max(largest, Math.abs(formula(input).value / frictionFactor(input).value - 1));
    }
  }
  return largest;
}

function explicit(name: string, formula: (input: FrictionFactorInput) => ExplicitFactor): readonly Computation[] {
  return [
    {
      ids: new RegExp(`explicit-${name}-re-.*`),
      compute: (g) => ({ darcyFrictionFactor: formula(factorRow(g)).value }),
    },
    {
      ids: new RegExp(`explicit-${name}-max-error`),
      compute: (g) => ({ maxErrorPercent: largestDeparture(g, formula) }),
    },
  ];
}

/** Kinematic viscosity from whichever properties the record gives. */
function viscosity(g: Given): KinematicViscosity {
  if (g.has("kinematicViscosity")) return g.si("kinematicViscosity");
  return (g.si(g.has("viscosity") ? "viscosity" : "dynamicViscosity") / density(g)) as KinematicViscosity;
}

/** Density from the record, or from its specific gravity, against water of 1000 kg/m³. */
function density(g: Given): Density {
  if (g.has("specificGravity")) return (1000 * g.si("specificGravity")) as Density;
  return g.si(g.has("density") ? "density" : "massDensity");
}

/** The pipe of a worked example and what flows in it. */
function example(g: Given) {
  const insideDiameter = g.si<Length>(g.has("insideDiameter") ? "insideDiameter" : "diameter");
  const flow = g.has("flow")
    ? g.si<VolumeFlow>("flow")
    : (((g.si("velocity") * Math.PI * insideDiameter ** 2) / 4) as VolumeFlow);
  return {
    flow,
    insideDiameter,
    length: g.has("length") ? g.si<Length>("length") : HUNDRED_FEET,
    roughness: g.has("roughness") ? g.si<Length>("roughness") : SMOOTH,
    viscosity: viscosity(g),
  };
}

function exampleLoss(g: Given) {
  const pipe = example(g);
  const { headLoss, reynolds, frictionFactor: darcyFrictionFactor } = darcyWeisbachLoss(pipe);
  const pressureDrop =
    g.has("density") || g.has("specificGravity") ? pressureOfHead({ head: headLoss, density: density(g) }) : 0;
  return { headLoss, reynolds, darcyFrictionFactor, pressureDrop, power: pressureDrop * pipe.flow };
}

function tableRow(g: Given) {
  const insideDiameter = g.si<Length>(g.has("insideDiameter") ? "insideDiameter" : "insideDiameterAssumed");
  const loss = hazenWilliamsLoss({ flow: g.si("flow"), insideDiameter, length: HUNDRED_FEET, coefficient: g.si("C") });
  return {
    velocity: loss.velocity,
    headLossPer100ft: loss.headLoss / HUNDRED_FEET,
    pressureLossPer100ft: pressureOfHead({ head: loss.headLoss, density: TABLE_DENSITY }) / HUNDRED_FEET,
  };
}

function coefficientRow(id: string, input: CoefficientInput): Computation {
  return { ids: new RegExp(`hw-c-${id}`), compute: () => ({ C: hazenWilliamsCoefficient(input).coefficient }) };
}

function roughnessRow(id: string, material: WallMaterial): Computation {
  return {
    ids: new RegExp(`moody-roughness-${id}`),
    compute: () => ({ roughness: wallRoughness(material).roughness }),
  };
}

const YEAR = 365.25 * 86400;

export const computations: readonly Computation[] = [
  {
    ids: /colebrook-re-.*|laminar-re-.*|prandtl-smooth-.*|smooth-pipe-.*|moody-chart-.*/,
    compute: (g) => ({ darcyFrictionFactor: frictionFactor(factorRow(g)).value }),
  },
  ...explicit("swamee-jain-1976", swameeJainFactor),
  ...explicit("haaland-1983", haalandFactor),
  ...explicit("churchill-1977", churchillFactor),
  ...explicit("serghides-1984-a", serghidesFactor),
  roughnessRow("cast-iron", "cast iron"),
  roughnessRow("galvanized-iron", "galvanised steel"),
  roughnessRow("asphalted-cast-iron", "asphalted cast iron"),
  roughnessRow("commercial-steel-or-wrought-iron", "steel"),
  roughnessRow("drawn-tubing", "drawn tubing"),
  {
    ids: /moody-roughness-concrete/,
    compute: () => ({
      roughnessLow: wallRoughness("concrete, smooth").roughness,
      roughnessHigh: wallRoughness("concrete, rough").roughness,
    }),
  },
  {
    ids: /vennard-ex-9-4|cengel-.*|douglas-ex-10-3a|geankoplis-ex-2-5-1|maurer-ex-4-1|edm44-ex-20-inch/,
    compute: exampleLoss,
  },
  {
    // Water of part a of the same example: 1000 kg/m³ and 0.00114 Pa·s.
    ids: /douglas-ex-10-3b/,
    compute: (g) => {
      const flow = g.si<VolumeFlow>("flow");
      const { headLoss } = darcyWeisbachLoss({
        flow,
        insideDiameter: g.si("diameter"),
        length: g.si("length"),
        roughness: g.si("roughness"),
        viscosity: 1.14e-6 as KinematicViscosity,
      });
      return { headLoss, power: pressureOfHead({ head: headLoss, density: 1000 as Density }) * flow };
    },
  },
  {
    // The gradient of a laminar pressure does not depend on the density; any will do.
    ids: /denevers-ex-6-1/,
    compute: (g) => {
      const density = 1000 as Density;
      const { headLoss } = darcyWeisbachLoss({
        flow: g.si("flow"),
        insideDiameter: g.si("diameter"),
        length: HUNDRED_FEET,
        roughness: SMOOTH,
        viscosity: (g.si("viscosity") / density) as KinematicViscosity,
      });
      return { pressureGradient: pressureOfHead({ head: headLoss, density }) / HUNDRED_FEET };
    },
  },
  {
    ids: /massey-ex-7-2|maurer-ex-4-4/,
    compute: (g) => ({
      flow: flowForHeadLoss({
        headLoss: g.si("headLoss"),
        insideDiameter: g.si("diameter"),
        length: g.si("length"),
        roughness: g.si("roughness"),
        viscosity: viscosity(g),
      }).flow,
    }),
  },
  {
    ids: /maurer-ex-4-type-3|edm44-ex-type-3/,
    compute: (g) => {
      const nu = g.has("kinematicViscosity")
        ? viscosity(g)
        : waterAt({ temperature: g.si<Temperature>("temperature") }).kinematicViscosity;
      const pipe = {
        flow: g.si<VolumeFlow>("flow"),
        length: g.si<Length>("length"),
        roughness: g.si<Length>("roughness"),
        viscosity: nu,
      };
      const bore = diameterForHeadLoss({ ...pipe, headLoss: g.si("headLoss") });
      if (bore.state !== "found") return {};
      const { frictionFactor: darcyFrictionFactor } = darcyWeisbachLoss({
        ...pipe,
        insideDiameter: bore.insideDiameter,
      });
      return { diameter: bore.insideDiameter, darcyFrictionFactor };
    },
  },
  {
    ids: /crane-7-1/,
    compute: (g) => {
      const { reynolds, frictionFactor: darcyFrictionFactor } = darcyWeisbachLoss({
        flow: g.si("flow"),
        // Schedule 40 of nominal 50 mm, as the notes of the record say; a smooth tube.
        insideDiameter: 0.0525 as Length,
        length: g.si("length"),
        roughness: SMOOTH,
        viscosity: waterAt({ temperature: g.si<Temperature>("temperature") }).kinematicViscosity,
      });
      return { reynolds, darcyFrictionFactor };
    },
  },
  {
    ids: /fluids-18-gpm-.*/,
    compute: (g) => {
      const water = waterAt({ temperature: g.si<Temperature>("temperature") });
      const { headLoss } = darcyWeisbachLoss({
        flow: g.si("flow"),
        insideDiameter: g.si("insideDiameter"),
        length: g.si("length"),
        roughness: g.si("roughness"),
        viscosity: water.kinematicViscosity,
      });
      return { headLoss, pressureLoss: pressureOfHead({ head: headLoss, density: water.density }) };
    },
  },
  { ids: /hw-computed-.*|hw-steel-sch40-.*|hw-course-class160-.*|hw-illinois-sch40-.*/, compute: tableRow },
  {
    // K is the speed at C = 1, a hydraulic radius of 1 m (a bore of 4 m) and a slope of 1; read at C = 100 here.
    ids: /hw-constant-velocity-si/,
    compute: () => {
      const flow = hazenWilliamsFlow({
        headLoss: 1 as Length,
        length: 1 as Length,
        insideDiameter: 4 as Length,
        coefficient: 100,
      });
      return { metreConstant: flow / (4 * Math.PI) / 100 };
    },
  },
  {
    ids: /nmsu-b810-chart-three-quarter-inch/,
    compute: (g) => ({
      flow: hazenWilliamsFlow({
        headLoss: (g.si("gradient") * 100) as Length,
        length: 100 as Length,
        insideDiameter: g.si("insideDiameterAssumed"),
        coefficient: 140,
      }),
    }),
  },
  coefficientRow("ncees-plastic|hw-c-nfpa-plastic-listed", { material: "plastic" }),
  coefficientRow("ncees-concrete", { material: "concrete" }),
  coefficientRow("ncees-ductile-iron", { material: "ductile iron" }),
  coefficientRow("ncees-welded-steel-new", { material: "welded steel" }),
  coefficientRow("ncees-cast-iron-new", { material: "cast iron" }),
  coefficientRow("ncees-cast-iron-5-yr", { material: "cast iron", age: (5 * YEAR) as Duration }),
  coefficientRow("ncees-cast-iron-20-yr", { material: "cast iron", age: (20 * YEAR) as Duration }),
  coefficientRow("nfpa-black-steel-wet", { material: "black steel" }),
  coefficientRow("nfpa-galvanized-wet", { material: "galvanised steel" }),
  coefficientRow("nfpa-cement-lined-iron", { material: "cement-lined iron" }),
  coefficientRow("nfpa-copper-stainless", { material: "copper" }),
];
