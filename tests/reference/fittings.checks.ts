/** How each published record of fittings is computed with the library. */
import {
  coefficientOfKv,
  coefficientOfLength,
  constrictionFlow,
  contractionByJet,
  copperTubeLengths,
  cvOfKv,
  dischargeCoefficient,
  type EquivalentLengthTable,
  entranceCoefficient,
  equivalentLength,
  exitCoefficient,
  hoseFlow,
  hydrantOutletCoefficients,
  kvOfCoefficient,
  kvOfCv,
  lengthForC,
  lengthsOverDiameter,
  minorLoss,
  namedFittings,
  nozzleFlow,
  orificeFlow,
  printedLength,
  pvcPipeLengths,
  reducedPortCoefficient,
  requiredKv,
  screwedFittingLengths,
  steelPipeLengths,
  suddenContraction,
  suddenExpansion,
  teeCoefficients,
  textbookCoefficients,
  threeKCoefficient,
  threeKFittings,
  twoKCoefficient,
  twoKFittings,
  valveFlow,
  velocityCoefficient,
} from "risingmain/fittings";
import type {
  AbsolutePressure,
  Density,
  GaugePressure,
  KinematicViscosity,
  Length,
  PressureDifference,
  VolumeFlow,
} from "risingmain/units";
import { lengthNames, printedLengthNames, textbookNames, threeKNames, twoKNames } from "./fittings.names.ts";
import type { Computation, Given } from "./register.ts";
import { toSi } from "./unit-table.ts";

const STANDARD_GRAVITY = 9.80665;
const metre = 1 as Length;
/** A book's head is energy per weight at the book's gravity; ours is at standard gravity. */
const head = (g: Given, metres: number): Length => ((metres * g.si("g")) / STANDARD_GRAVITY) as Length;
const bookHead = (g: Given, ours: number): number => (ours * STANDARD_GRAVITY) / g.si("g");
const area = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
const named = <T>(names: Readonly<Record<string, T>>, id: string): T => {
  const name = names[id];
  if (name === undefined) throw new Error(`no fitting is named for ${id}`);
  return name;
};
const PER_CV = toSi(1, "gpm/psi^0.5");
const PER_KV = toSi(1, "m3/h/bar^0.5");

/** One printed row of equivalent lengths: L_1_1_4_in is 1-1/4 in. */
function printedRow(table: EquivalentLengthTable): (g: Given) => Readonly<Record<string, number>> {
  return (g) => {
    const fitting = named(printedLengthNames, g.record.id);
    return Object.fromEntries(
      Object.keys(g.record.expected).map((key) => {
        const size = key.slice(2, -3);
        const nominal = size.replace(/^(\d)_(\d)_(\d)$/, "$1-$2/$3").replace(/^(\d)_(\d)$/, "$1/$2");
        return [key, printedLength({ table, fitting, nominal: `${nominal} in` })];
      }),
    );
  };
}

const kv = (g: Given) => {
  const reducers = g.si("valveSize") < g.si(g.has("pipeDiameter") ? "pipeDiameter" : "pipeInsideDiameter");
  const sized = requiredKv({
    flow: g.si("flow"),
    inletPressure: g.si<AbsolutePressure>("p1"),
    outletPressure: g.si<AbsolutePressure>("p2"),
    density: g.si("density"),
    vapourPressure: g.si<AbsolutePressure>("vapourPressure"),
    criticalPressure: g.si<AbsolutePressure>("criticalPressure"),
    recoveryFactor: g.si("FL"),
    ...(reducers && { valveSize: g.si("valveSize"), pipeInsideDiameter: g.si("pipeInsideDiameter") }),
  });
  if (sized.state !== "sized") throw new Error(sized.state);
  return sized.Kv;
};

/** Flow coefficient needed for a flow and a pressure drop: the flow over that of a valve of Cv 1. */
function cvFor(g: Given): number {
  const pressureLoss = g.si<PressureDifference>("pressureDrop");
  const one = valveFlow({ Kv: kvOfCv(1), pressureLoss, relativeDensity: g.si("specificGravity") });
  return g.si("flow") / one;
}

/** The density that a constant of so many gpm through 1 in at 1 psi implies. */
const implied = (constant: number): Density => {
  const velocity = toSi(constant, "gpm") / area(toSi(1, "in"));
  return ((2 * toSi(1, "psi")) / velocity ** 2) as Density;
};

const nozzle = (g: Given, diameter: string, pressure: string, coefficient: number): VolumeFlow =>
  nozzleFlow({
    diameter: g.si(diameter),
    pressure: g.si(pressure),
    dischargeCoefficient: coefficient,
    density: implied(29.84),
  });

export const computations: readonly Computation[] = [
  {
    ids: /hooper-2k-(?!globe-package).*/,
    compute: (g) => {
      const constants = twoKFittings[named(twoKNames, g.record.id)];
      const K = twoKCoefficient({ constants, reynolds: g.si("reynolds"), insideDiameter: g.si("insideDiameter") });
      return { ...constants, K };
    },
  },
  {
    ids: /hooper-2k-globe-package-example/,
    compute: (g) => ({
      K: twoKCoefficient({
        constants: { K1: g.si("K1"), Kinf: g.si("Kinf") },
        reynolds: g.si("reynolds"),
        insideDiameter: g.si("insideDiameter"),
      }),
    }),
  },
  {
    ids: /darby-3k-(?!package).*/,
    compute: (g) => {
      const constants = threeKFittings[named(threeKNames, g.record.id)];
      const K = threeKCoefficient({ constants, reynolds: g.si("reynolds"), nominalSize: g.si("nominalSize") });
      return { K1: constants.K1, Ki: constants.Ki, Kd: toSi(constants.Kd, "in^0.3"), K };
    },
  },
  {
    ids: /darby-3k-package-example-.*/,
    compute: (g) => ({
      K: threeKCoefficient({
        constants: { K1: g.si("K1"), Ki: g.si("Ki"), Kd: g.si("Kd") / toSi(1, "in^0.3") },
        reynolds: g.si("reynolds"),
        nominalSize: g.si("nominalSize"),
      }),
    }),
  },
  {
    ids: /crane-ld-.*/,
    compute: (g) => ({ equivalentLengthOverDiameter: lengthsOverDiameter[named(lengthNames, g.record.id)] }),
  },
  {
    ids: /crane-k-(?!pipe-).*/,
    compute: (g) => {
      const multiplier = lengthsOverDiameter[named(lengthNames, g.record.id)];
      const length = multiplier as Length;
      return { multiplier, K: coefficientOfLength({ length, insideDiameter: metre, frictionFactor: g.si("fT") }) };
    },
  },
  { ids: /crane-k-pipe-entrance-inward/, compute: () => ({ K: entranceCoefficient({ mouth: "projecting" }) }) },
  { ids: /crane-k-pipe-entrance-flush/, compute: () => ({ K: entranceCoefficient({ mouth: "flush" }) }) },
  {
    ids: /crane-k-pipe-entrance-rounded-0p15/,
    compute: () => ({ K: entranceCoefficient({ mouth: "flush", rounding: 0.15 }) }),
  },
  { ids: /crane-k-pipe-exit/, compute: () => ({ K: exitCoefficient() }) },
  {
    ids: /nist-push-connect-(?:elbow|coupling)-k/,
    compute: (g) => {
      const how = namedFittings[g.record.id.includes("elbow") ? "push-connect elbow" : "push-connect coupling"];
      if (!("coefficient" in how)) throw new Error(g.record.id);
      return { K: how.coefficient };
    },
  },
  { ids: /textbook-k-.*/, compute: (g) => ({ K: textbookCoefficients[named(textbookNames, g.record.id)] }) },
  { ids: /eqlen-illinois-.*/, compute: printedRow(copperTubeLengths) },
  { ids: /eqlen-nfpa13-(?!c-factor).*/, compute: printedRow(steelPipeLengths) },
  {
    ids: /eqlen-nfpa13-c-factor-.*/,
    compute: (g) => ({ factor: lengthForC({ length: metre, printedC: 120, C: g.si("C") }) }),
  },
  { ids: /eqlen-irc-.*/, compute: printedRow(screwedFittingLengths) },
  { ids: /eqlen-pvc-.*/, compute: printedRow(pvcPipeLengths) },
  {
    ids: /borda-carnot-.*/,
    compute: (g) => {
      const bores = { smallDiameter: g.si<Length>("beta"), largeDiameter: metre };
      return { KExpansion: suddenExpansion(bores), KContraction: suddenContraction(bores) };
    },
  },
  {
    ids: /walshaw-ex-11-3-1/,
    compute: (g) => {
      const bores = { smallDiameter: g.si<Length>("diameter1"), largeDiameter: g.si<Length>("diameter2") };
      const flow = g.si<VolumeFlow>("flow");
      const at = { flow, insideDiameter: bores.smallDiameter };
      const [V1, V2] = [flow / area(bores.smallDiameter), flow / area(bores.largeDiameter)];
      const density = toSi(62.4, "lb/ft3");
      const widening = minorLoss({ ...at, coefficient: suddenExpansion(bores) });
      const narrowing = minorLoss({ ...at, coefficient: contractionByJet(g.si("contractionCoefficient")) });
      const dynamic = (density * (V1 * V1 - V2 * V2)) / 2;
      return {
        lossOfHead: bookHead(g, widening),
        pressureRise: dynamic - density * STANDARD_GRAVITY * widening,
        pressureDropReversed: dynamic + density * STANDARD_GRAVITY * narrowing,
      };
    },
  },
  {
    ids: /sarkar-ex-6-10/,
    compute: (g) => {
      const flow = g.si<VolumeFlow>("flow");
      const [V1, V2] = [flow / area(g.si("diameter1")), flow / area(g.si("diameter2"))];
      const coefficient = contractionByJet(g.si("contractionCoefficient"));
      const loss = minorLoss({ coefficient, flow, insideDiameter: g.si("diameter2") });
      return { pressureLoss: 1000 * ((V2 * V2 - V1 * V1) / 2 + STANDARD_GRAVITY * loss) };
    },
  },
  {
    ids: /crane-7-2/,
    compute: (g) => {
      const insideDiameter = g.si<Length>("insideDiameter");
      const coefficient = coefficientOfKv({ Kv: g.si("Kv") * 3600, insideDiameter });
      const length = equivalentLength({ coefficient, insideDiameter, frictionFactor: g.si("darcyFrictionFactor") });
      return { K: coefficient, equivalentLengthOverDiameter: length / insideDiameter, equivalentLength: length };
    },
  },
  {
    ids: /crane-7-3/,
    compute: (g) => {
      const insideDiameter = g.si<Length>("insideDiameter");
      const length = (g.si("equivalentDiameters") * insideDiameter) as Length;
      const frictionFactor = g.si("darcyFrictionFactor");
      const coefficient = coefficientOfLength({ length, insideDiameter, frictionFactor });
      return {
        K: coefficient,
        Kv: kvOfCoefficient({ coefficient, insideDiameter }) / 3600,
        equivalentLength: equivalentLength({ coefficient, insideDiameter, frictionFactor }),
      };
    },
  },
  {
    ids: /crane-7-4/,
    compute: (g) => {
      const insideDiameter = g.si<Length>("pipeDiameter");
      const frictionFactor = g.si("darcyFrictionFactor");
      const coefficient = reducedPortCoefficient({
        portCoefficient: lengthsOverDiameter["gate valve"] * frictionFactor,
        smallDiameter: g.si("seatDiameter"),
        largeDiameter: insideDiameter,
        angle: g.si("angle"),
      });
      const length = equivalentLength({ coefficient, insideDiameter, frictionFactor });
      return { K: coefficient, equivalentLengthOverDiameter: length / insideDiameter, equivalentLength: length };
    },
  },
  {
    ids: /crane-7-5/,
    compute: (g) => {
      // A lift check: 600 f_T at the seat, and the loss of narrowing and widening as in the printed formula.
      const bores = { smallDiameter: g.si<Length>("seatDiameter"), largeDiameter: g.si<Length>("pipeDiameter") };
      const port = 600 * g.si("darcyFrictionFactor");
      const beta = bores.smallDiameter / bores.largeDiameter;
      const coefficient = (port + beta * (suddenContraction(bores) + suddenExpansion(bores))) / beta ** 4;
      const loss = minorLoss({ coefficient, flow: g.si("flow"), insideDiameter: bores.largeDiameter });
      return { K: coefficient, pressureDrop: loss * STANDARD_GRAVITY * g.si("density") };
    },
  },
  { ids: /valve-kv-cv-ratio/, compute: () => ({ Kv: kvOfCv(1) * PER_KV }) },
  { ids: /valve-cv-\d.*/, compute: (g) => ({ Cv: cvFor(g) * PER_CV }) },
  { ids: /crane-7-27/, compute: (g) => ({ Cv: cvOfKv(kv(g)) * PER_CV }) },
  { ids: /iec-60534-annex-.*/, compute: (g) => ({ Kv: kv(g) * PER_KV }) },
  {
    ids: /crane-7-35/,
    compute: (g) => {
      const bore = g.si<Length>("insideDiameter");
      const branchFlow = g.si<VolumeFlow>("branchFlow");
      const combinedFlow = (g.si("runFlow") + branchFlow) as VolumeFlow;
      const bores = { runDiameter: bore, branchDiameter: bore };
      const tee = teeCoefficients({ flowPattern: "joining", combinedFlow, branchFlow, angle: 90, ...bores });
      return { KBranch: tee.branch, KRun: tee.run };
    },
  },
  {
    ids: /crane-7-36/,
    compute: (g) => {
      const bore = g.si<Length>("insideDiameter");
      const branchFlow = g.si<VolumeFlow>("branchFlow");
      const combinedFlow = (g.si("straightFlow") + branchFlow) as VolumeFlow;
      const bores = { runDiameter: bore, branchDiameter: bore };
      const wye = teeCoefficients({ flowPattern: "dividing", combinedFlow, branchFlow, angle: 45, ...bores });
      return { KBranch: wye.branch, KRun: wye.run };
    },
  },
  {
    ids: /subramanya-ex-13-1/,
    compute: (g) => {
      const diameter = g.si<Length>("diameter");
      // The loss of an orifice as a coefficient on its jet, which gives C_v, and C_d = C_c C_v.
      const left = ((g.si("head") - g.si("headLoss")) * g.si("g")) / STANDARD_GRAVITY;
      const jet = orificeFlow({ diameter, head: left as Length, dischargeCoefficient: 1 });
      const Cv = dischargeCoefficient({ flow: jet, diameter, head: head(g, g.si("head")) });
      const Cd = g.si("contractionCoefficient") * Cv;
      return { Cv, Cd, flow: orificeFlow({ diameter, head: head(g, g.si("head")), dischargeCoefficient: Cd }) };
    },
  },
  {
    ids: /subramanya-ex-13-2|sarkar-ex-4-2/,
    compute: (g) => {
      // A free fall does not know the gravity: the flight gives C_v whatever g is.
      const Cv = velocityCoefficient({ distance: g.si("x"), drop: g.si("y"), head: g.si("head") });
      const Cd = dischargeCoefficient({ flow: g.si("flow"), diameter: g.si("diameter"), head: head(g, g.si("head")) });
      return { Cv, Cd, Cc: Cd / Cv };
    },
  },
  {
    ids: /subramanya-ex-13-7/,
    compute: (g) => ({
      flow: orificeFlow({
        diameter: g.si("orificeDiameter"),
        head: head(g, g.si("differential")),
        dischargeCoefficient: g.si("flowCoefficient"),
      }),
    }),
  },
  {
    ids: /subramanya-ex-13-5/,
    compute: (g) => {
      const velocity = g.si("pipeVelocity");
      const total = head(g, g.si("pressure") / g.si("specificWeight") + velocity ** 2 / (2 * g.si("g")));
      const hole = { diameter: metre, head: total };
      const jetVelocity = orificeFlow({ ...hole, dischargeCoefficient: g.si("Cv") }) / area(1);
      const jetDiameter = Math.sqrt((velocity * g.si("pipeDiameter") ** 2) / jetVelocity);
      // The head lost: that of a coefficient 1/C_v² − 1 on the jet.
      const coefficient = 1 / g.si("Cv") ** 2 - 1;
      const flow = jetVelocity as VolumeFlow;
      const unitBore = Math.sqrt(4 / Math.PI) as Length;
      return {
        jetVelocity,
        jetDiameter,
        headLoss: bookHead(g, minorLoss({ coefficient, flow, insideDiameter: unitBore })),
      };
    },
  },
  {
    ids: /sarkar-ex-4-3/,
    compute: (g) => {
      const diameter = g.si<Length>("nozzleDiameter");
      const pipe = g.si("flow") / area(g.si("pipeDiameter"));
      const total = head(g, g.si("pressure") / (1000 * g.si("g")) + pipe ** 2 / (2 * g.si("g")));
      return { Cd: dischargeCoefficient({ flow: g.si("flow"), diameter, head: total }) };
    },
  },
  {
    ids: /lal-ex-5-23/,
    compute: (g) => {
      const insideDiameter = g.si<Length>("hoseDiameter");
      const frictionFactor = 4 * g.si("fanningFrictionFactor");
      const density = toSi(62.4, "lb/ft3") as Density;
      // The book's factor is given, so the hose is a coefficient and no length; its pressure is the total head (hence the 1)
      // and the entry loses half a velocity head, which the record's recomputed figure shows.
      const friction = coefficientOfLength({ length: g.si("length"), insideDiameter, frictionFactor });
      const hose = hoseFlow({
        pressure: g.si<GaugePressure>("pressure"),
        insideDiameter,
        length: 0 as Length,
        roughness: 0 as Length,
        nozzleDiameter: g.si("nozzleDiameter"),
        coefficient: friction + 0.5 + 1,
        viscosity: 1e-6 as KinematicViscosity,
        density,
      });
      if (hose.state !== "flowing") throw new Error(hose.state);
      return { flow: hose.flow };
    },
  },
  {
    ids: /crane-7-29/,
    compute: (g) => ({
      flow: constrictionFlow({
        boreDiameter: g.si("orificeDiameter"),
        pipeDiameter: g.si("pipeDiameter"),
        pressureDifference: g.si("pressureDrop"),
        density: g.si("density"),
        // ISO 5167 for these bores and D and D/2 taps, from the record's notes.
        dischargeCoefficient: 0.6153,
      }),
    }),
  },
  {
    ids: /schaschke-ex-5-6/,
    compute: (g) => {
      const pressureDifference = 1000 as PressureDifference;
      const flow = constrictionFlow({
        boreDiameter: g.si("throatDiameter"),
        pipeDiameter: g.si("pipeDiameter"),
        pressureDifference,
        density: g.si("density"),
        dischargeCoefficient: g.si("Cd"),
      });
      // Difference goes with the square of flow; the throat stands higher than the pipe.
      const static_ = g.si("density") * g.si("g") * g.si("rise");
      return { differentialPressure: pressureDifference * (g.si("flow") / flow) ** 2 + static_ };
    },
  },
  {
    ids: /schaschke-ex-5-7/,
    compute: (g) => ({
      flow: constrictionFlow({
        boreDiameter: g.si("orificeDiameter"),
        pipeDiameter: g.si("pipeDiameter"),
        pressureDifference: ((g.si("manometerDensity") - g.si("density")) *
          g.si("g") *
          g.si("deflection")) as PressureDifference,
        density: g.si("density"),
        dischargeCoefficient: g.si("Cd"),
      }),
    }),
  },
  {
    ids: /schaschke-ex-6-2/,
    compute: (g) => ({ Cv: velocityCoefficient({ distance: g.si("x"), drop: g.si("y"), head: g.si("head") }) }),
  },
  {
    ids: /nozzle-constant-29-84/,
    compute: (g) => {
      const flow = nozzleFlow({
        diameter: toSi(1, "in") as Length,
        pressure: toSi(1, "psi") as GaugePressure,
        dischargeCoefficient: g.si("Cd"),
        density: g.si("waterDensity"),
      });
      return { constant: flow / toSi(1, "gpm") };
    },
  },
  { ids: /hydrant-outlet-cd-0p9/, compute: () => ({ Cd: hydrantOutletCoefficients.smooth }) },
  { ids: /hydrant-outlet-cd-0p8/, compute: () => ({ Cd: hydrantOutletCoefficients.square }) },
  { ids: /hydrant-outlet-cd-0p7/, compute: () => ({ Cd: hydrantOutletCoefficients.projecting }) },
  { ids: /nozzle-discharge-.*/, compute: (g) => ({ flow: nozzle(g, "diameter", "pressure", g.si("Cd")) }) },
  { ids: /smooth-bore-.*/, compute: (g) => ({ flow: nozzle(g, "tipDiameter", "nozzlePressure", 0.995) }) },
];
