/** How each published disinfection record is computed with the library. */
import {
  bleachConcentration,
  bleachDose,
  contactReached,
  type Dechlorinator,
  dechlorination,
  freeChlorine,
  giardiaContact,
  hypochloriteConcentration,
  hypochloriteDose,
  publishedDoses,
  stockSolution,
  treatedVolume,
  virusContact,
} from "risingmain/disinfection";
import type { Concentration, Duration, Length, Mass, Ratio, Temperature, Volume } from "risingmain/units";
import type { Computation, Given } from "./register.ts";

const FOOT = 0.3048;
const BLEACH_5 = 0.0525 as Ratio;
const BLEACH_12 = 0.12 as Ratio;
const GRANULES_70 = 0.7 as Ratio;
const HOUR = 3600;

/** Water in a bore of a depth with the static level at a depth, the way the worksheets have it. */
function standing(insideDiameter: Length, bottom: number, staticLevel: number): Volume {
  return treatedVolume({
    staticLevel: staticLevel as Length,
    bore: [{ insideDiameter, top: 0 as Length, bottom: bottom as Length }],
  }).total;
}

/** The bore whose volume a foot is the printed one, so that the printed figure goes through the library's geometry. */
function boreOf(perFoot: number): Length {
  return Math.sqrt((4 * perFoot) / Math.PI) as Length;
}

function amounts(volume: Volume, target: Concentration): { bleach5: number; bleach12: number; hypochlorite: number } {
  return {
    bleach5: bleachDose({ volume, target, strength: BLEACH_5 }).bleach,
    bleach12: bleachDose({ volume, target, strength: BLEACH_12 }).bleach,
    hypochlorite: hypochloriteDose({ volume, target, availableChlorine: GRANULES_70 }).granules,
  };
}

function perFoot(volume: Volume, target: Concentration) {
  const { bleach5, bleach12, hypochlorite } = amounts(volume, target);
  return {
    bleach5PerFoot: bleach5 / FOOT,
    bleach12PerFoot: bleach12 / FOOT,
    hypochloritePerFoot: hypochlorite / FOOT,
  };
}

function rule(source: string, use: string) {
  const row = publishedDoses.find((entry) => entry.source === source && entry.use === use);
  if (row === undefined) throw new Error(`no published dose of ${source} for ${use}`);
  return {
    dose: row.dose * 1e-3,
    mostDose: (row.mostDose ?? 0) * 1e-3,
    stand: (row.standHours ?? 0) * HOUR,
    preferred: (row.preferredHours ?? 0) * HOUR,
  };
}

function bleachGives(g: Given, volume: Volume): Concentration {
  return bleachConcentration({ volume, bleach: g.si<Volume>("bleach"), strength: g.si<Ratio>("strength") });
}

export const computations: readonly Computation[] = [
  {
    ids: /alberta-shock-[468]in/,
    compute: (g) => perFoot((g.si("treatedWaterPerFoot") * FOOT) as Volume, g.si<Concentration>("target")),
  },
  {
    ids: /alberta-shock-(24|36)in/,
    compute: (g) => perFoot(standing(g.si<Length>("diameter"), FOOT, 0), g.si<Concentration>("target")),
  },
  { ids: /alberta-200gal-batch/, compute: (g) => amounts(g.si<Volume>("volume"), g.si<Concentration>("target")) },
  {
    ids: /alberta-example-volume/,
    compute: (g) => ({ volume: standing(boreOf(g.si("perFoot")), g.si("casingLength"), g.si("staticLevel")) }),
  },
  {
    ids: /hickory-example-volume/,
    compute: (g) => ({ volume: standing(boreOf(g.si("perFoot")), g.si("wellDepth"), g.si("waterLevel")) }),
  },
  {
    // The leaflet multiplies by the whole depth; the library takes the water column of the corrected copy, 20 ft down.
    ids: /alabama-well-volume/,
    compute: (g) => ({ volume: standing(boreOf(g.si("gallonsPerFoot")), g.si("depth"), 20 * FOOT) }),
  },
  {
    ids: /mil-hypochlorite-100mgl|hickory-2oz-70|mesa-hth-dose/,
    compute: (g) => ({
      dose: hypochloriteConcentration({
        volume: g.si<Volume>("volume"),
        granules: g.si<Mass>("mass"),
        availableChlorine: g.si<Ratio>("strength"),
      }),
    }),
  },
  {
    ids: /mil-bleach-quart-(trap|printed)|hickory-3-cups|mesa-bleach-dose/,
    compute: (g) => ({ dose: bleachGives(g, g.si<Volume>("volume")) }),
  },
  {
    ids: /mesa-linear-rows/,
    compute: (g) => {
      const volumes = g.list<Volume>("volume");
      const first = g.record.expected["bleach"]?.value as readonly number[];
      const strength = BLEACH_5;
      // The dose of the first printed row, then the amount for the others.
      const target = bleachConcentration({
        volume: volumes[0] as Volume,
        bleach: ((first[0] as number) * (231 / 128) * 0.0254 ** 3) as Volume,
        strength,
      });
      return { bleach: volumes.map((volume) => bleachDose({ volume, target, strength }).bleach) };
    },
  },
  {
    ids: /davis-disinfection-practice/,
    compute: () => {
      const { dose, stand, preferred } = rule("davis-2010", "well");
      return { dose, minContact: stand, preferredContact: preferred };
    },
  },
  {
    ids: /mil-disinfection-contact/,
    compute: () => ({ contact: rule("navfac-mil-hdbk-1164", "well").stand }),
  },
  {
    ids: /bleach-strength-.*/,
    compute: (g) => ({
      bleach: bleachDose({
        volume: g.si<Volume>("volume"),
        target: g.si<Concentration>("target"),
        strength: g.si<Ratio>("strength"),
      }).bleach,
    }),
  },
  {
    ids: /lb-per-mgal-8-34/,
    compute: (g) => ({
      chlorine: bleachDose({
        volume: g.si<Volume>("volume"),
        target: g.si<Concentration>("dose"),
        strength: BLEACH_5,
      }).chlorine,
    }),
  },
  {
    ids: /ct-definition/,
    compute: (g) => ({
      ct: contactReached({ residual: g.si<Concentration>("residual"), time: g.si<Duration>("time") }),
    }),
  },
  {
    ids: /ct-giardia-.*/,
    compute: (g) => ({
      ct: many(g, "log").map(
        (logInactivation) =>
          giardiaContact({
            pH: g.si("pH"),
            temperature: celsiusScale(g.si("temperature")),
            residual: g.si<Concentration>("chlorine"),
            logInactivation,
          }).contact,
      ),
    }),
  },
  {
    ids: /ct-temperature-halving/,
    compute: (g) => {
      const at = (name: string) =>
        giardiaContact({
          pH: 7,
          temperature: celsiusScale(g.si(name)),
          residual: 1e-3 as Concentration,
          logInactivation: 3,
        }).contact;
      return { ratio: at("t2") / at("t1") };
    },
  },
  {
    ids: /ct-virus-4log(-ph10)?/,
    compute: (g) => ({
      ct: g
        .list("temperature")
        .map((t) => virusContact({ pH: g.record.id.endsWith("ph10") ? 10 : 7, temperature: celsiusScale(t) }).contact),
    }),
  },
  {
    ids: /dechlorination-ascorbic/,
    compute: (g) => ({
      ascorbicAcid: dechlorination({
        volume: g.si<Volume>("volume"),
        residual: g.si<Concentration>("residual"),
        dechlorinator: "ascorbic acid",
      }).mass,
    }),
  },
  {
    ids: /c651-dechlorination-.*/,
    compute: (g) => ({
      mass: g.list<Concentration>("residual").map(
        (residual) =>
          dechlorination({
            volume: g.si<Volume>("volume"),
            residual,
            dechlorinator: g.text("substance") as Dechlorinator,
          }).mass,
      ),
    }),
  },
  {
    ids: /cdc-bored-well-5ft-dose/,
    compute: (g) => ({
      dose: bleachConcentration({
        volume: standing(g.si<Length>("diameter"), FOOT, 0),
        bleach: (g.si("cupsPerFoot") * FOOT) as Volume,
        strength: g.si<Ratio>("strength"),
      }),
    }),
  },
  {
    // The table's own amounts come out at about 100 mg/L, to the half cup and the ounce it rounds to.
    ids: /king-bored-well-doses/,
    compute: (g) => ({
      dose: g.list<Length>("diameter").map((diameter, i) =>
        bleachConcentration({
          volume: standing(diameter, FOOT, 0),
          bleach: ((g.list("bleach525")[i] as number) * FOOT) as Volume,
          strength: BLEACH_5,
        }),
      ),
    }),
  },
  {
    ids: /st-clair-500ppm-(claim|printed)/,
    compute: (g) => ({ dose: bleachGives(g, standing(g.si<Length>("diameter"), g.si("depth"), 0)) }),
  },
  {
    ids: /state-routine-dose-5-50ppm/,
    compute: () => {
      const routine = rule("state-disinfecting-fact-sheet", "routine");
      const contaminated = rule("state-disinfecting-fact-sheet", "contaminated well");
      return { routine: routine.dose, contaminated: contaminated.dose, minimumContact: routine.stand };
    },
  },
  {
    ids: /disinfect-maryland/,
    compute: () => {
      const { dose, mostDose } = rule("maryland-well-disinfection", "well");
      const stock = stockSolution({ volume: 1 as Volume, target: dose as Concentration, strength: BLEACH_5 });
      if (stock.state !== "made") throw new Error("the least stock solution is too small");
      return { minimum: dose, maximum: mostDose, topSolutionMinimum: stock.bleach + stock.water };
    },
  },
  {
    ids: /disinfect-san-bernardino/,
    compute: () => {
      const { dose, stand } = rule("san-bernardino-13-24", "well and gravel pack");
      return { dose, contact: stand };
    },
  },
  {
    ids: /disinfect-oklahoma/,
    compute: () => {
      const { dose, stand } = rule("water-systems-council-disinfection", "new well, Oklahoma");
      const repair = rule("water-systems-council-disinfection", "repaired well, Oklahoma");
      return { newWellDose: dose, contact: stand, repairDose: repair.dose };
    },
  },
  {
    // The table prints the constant in units of 1e-8: 10^(8 − pK).
    ids: /hocl-ionisation-morris/,
    compute: (g) => ({
      constant: g
        .list<Temperature>("temperature")
        .map((temperature) => 10 ** (8 - freeChlorine({ pH: 7, temperature }).pK)),
    }),
  },
  {
    ids: /hocl-share-ph7-20c/,
    compute: (g) => ({
      share: freeChlorine({ pH: g.si("pH"), temperature: g.si<Temperature>("temperature") }).hypochlorousShare,
    }),
  },
];

/** The record's "C" is a Celsius reading, which the unit table takes for a difference. */
function celsiusScale(reading: number): Temperature {
  return (reading + 273.15) as Temperature;
}

/** One value or a list of them. */
function many(g: Given, name: string): readonly number[] {
  return Array.isArray(g.record.inputs[name]?.value) ? g.list(name) : [g.si(name)];
}
