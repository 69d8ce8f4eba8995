/** How each published conductor record is computed with the library. */
import {
  bs7671Table4E4B,
  type ConductorSize,
  circularMilArea,
  circularMilDrop,
  conductorAmpacity,
  conductorGeometry,
  conductorImpedance,
  conductorMass,
  conductorMetals,
  conductorResistance,
  effectiveImpedance,
  gaugeDiameter,
  groundingConductor,
  iec60228Class2,
  lockedRotorDrop,
  longestLength,
  necBundlingAdjustment,
  necTable310_17,
  parseConductorSize,
  recommendedDropLimits,
  resistanceAtTemperature,
  runVoltages,
  sendingVoltage,
  smallConductorLimit,
  type TemperatureRating,
  tabulatedDrop,
  temperatureFromResistance,
  type VoltageDropInput,
  voltageDrop,
  wireResistance,
} from "risingmain/conductor";
import { motorCurrent } from "risingmain/motor";
import {
  type Area,
  type Current,
  celsius,
  electricHorsepower,
  type Frequency,
  hertz,
  inSquareMillimetres,
  type Length,
  type Ratio,
  type Resistance,
  type ResistancePerLength,
  ratio,
  type Temperature,
  type Voltage,
  volts,
} from "risingmain/units";
import type { Computation, Computed, Given } from "./register.ts";

/** 1/0 to 4/0 stand in the records as 0 to −3. */
const sizeOf = (gauge: number): ConductorSize =>
  parseConductorSize(gauge <= 0 ? `${1 - gauge}/0 AWG` : gauge >= 250 ? `${gauge} kcmil` : `${gauge} AWG`);
const gaugeOf = (size: string): number => {
  const [, aught] = /^(\d)\/0/.exec(size) ?? [];
  return aught === undefined ? Number.parseInt(size, 10) : 1 - Number(aught);
};
const areaOfSize = (size: ConductorSize): Area => conductorGeometry(size).area;
const kelvin20 = celsius(20);

/** A circuit of one segment at unity power factor, as most records mean it. */
const drop = (g: Given, over: Partial<VoltageDropInput> & { resistance?: number; length?: number } = {}) => {
  const resistance = (
    over.segments ? 0 : (over.resistance ?? g.si(g.has("resistance") ? "resistance" : "impedance"))
  ) as ResistancePerLength;
  const result = voltageDrop({
    system: "single-phase",
    sourceVoltage: g.has("systemVoltage") ? g.si<Voltage>("systemVoltage") : volts(480),
    current: over.current ?? g.si<Current>("current"),
    powerFactor: ratio(1),
    segments: [{ length: (over.segments ? 0 : (over.length ?? g.si("oneWayLength"))) as Length, resistance }],
    ...over,
  });
  if (result.state !== "carried") throw new Error("the circuit collapsed");
  return result;
};
const reach = (
  g: Given,
  resistance: number,
  share: number,
  system: "single-phase" | "three-phase",
  voltage: number,
) => {
  const found = longestLength({
    system,
    sourceVoltage: voltage as Voltage,
    current: g.si<Current>("current"),
    powerFactor: ratio(1),
    dropLimit: share as Ratio,
    conductor: { resistance: resistance as ResistancePerLength },
  });
  if (found.state !== "limited") throw new Error(found.state);
  return found.length;
};
const twoRuns = (g: Given) =>
  drop(g, {
    segments: [1, 2].map((i) => ({
      length: g.si<Length>(`length${i}`),
      resistance: g.si<ResistancePerLength>(`resistance${i}`),
    })),
  });
/** A metal of the record's resistivity. */
const ohmsOf = (g: Given, area: number, length: number, resistivity = "resistivity"): number =>
  wireResistance({
    material: "copper",
    area: area as Area,
    length: length as Length,
    resistivityAt20: g.si(resistivity),
  });
const disc = (diameter: number): Area => ((Math.PI / 4) * diameter ** 2) as Area;

const at = (g: Given, cold: string, from: number, to: string, alpha: string, reference: number): Resistance =>
  resistanceAtTemperature({
    resistance: g.si<Resistance>(cold),
    from: from as Temperature,
    to: g.si<Temperature>(to),
    coefficient: { perKelvin: g.si(alpha), at: reference as Temperature },
  });
const ICE = 273.15;

const solid = (size: ConductorSize): number => conductorResistance({ size, stranding: "solid" }).resistance;
const stranded = (size: ConductorSize, material: "copper" | "aluminium" = "copper"): number =>
  conductorResistance({ size, material }).resistance;
const ampacities = (g: Given, material: "copper" | "aluminium", table?: typeof necTable310_17): Computed => {
  const size = sizeOf(Number(g.text("awg")));
  const column = (insulation: TemperatureRating): number =>
    conductorAmpacity({ size, material, insulation, ...(table ? { table } : {}) }).ampacity;
  return { at60C: column("60 °C"), at75C: column("75 °C"), at90C: column("90 °C") };
};
/** Grounding records give the area of the grounding conductor before enlargement: a rating that leads to it. */
const RATING_FOR_GROUND: Readonly<Record<string, number>> = { "6530": 20, "10380": 60, "26240": 200, "41740": 300 };
const SIZE_OF_AREA: Readonly<Record<string, ConductorSize>> = {
  "6530": "12 AWG",
  "10380": "10 AWG",
  "16510": "8 AWG",
  "26240": "6 AWG",
  "41740": "4 AWG",
  "83690": "1 AWG",
  "167800": "3/0 AWG",
  "250000": "250 kcmil",
  "350000": "350 kcmil",
  "500000": "500 kcmil",
};

export const computations: readonly Computation[] = [
  {
    ids: /awg-(36|4-0)-diameter/,
    compute: (g) => ({ diameter: gaugeDiameter(Number(g.text("awg"))) }),
  },
  { ids: /awg-step-ratio/, compute: () => ({ ratio: gaugeDiameter(11) / gaugeDiameter(12) }) },
  {
    ids: /awg-.*-solid-copper-geometry/,
    compute: (g) => {
      const { area, solidDiameter } = conductorGeometry(sizeOf(Number(g.text("awg"))));
      return { diameter: solidDiameter, area, massPerLength: conductorMass({ area }) };
    },
  },
  {
    ids: /awg-12-diameter-mm-gnu-units|awg-.*-area-mm2/,
    compute: (g) => {
      const { area, solidDiameter } = conductorGeometry(sizeOf(Number(g.text("awg"))));
      return { area, diameter: solidDiameter };
    },
  },
  {
    ids: /beiser-5-5-.*/,
    compute: (g) => {
      const ohms = (area: string): number =>
        wireResistance({ material: "copper", area: g.si<Area>(area), length: 1 as Length });
      return { ratio: ohms("areaNo14") / ohms("areaNo10") };
    },
  },
  {
    ids: /iacs-copper-(resistivity|cmil-foot)/,
    compute: () => ({
      resistivity: wireResistance({ material: "copper", area: 1e-6 as Area, length: 1 as Length }) * 1e-6,
    }),
  },
  { ids: /iacs-copper-temperature-coefficient/, compute: () => ({ alpha20: conductorMetals.copper.coefficientAt20 }) },
  {
    ids: /nec-alpha-75-(copper|aluminium)/,
    compute: (g) => {
      const material = g.record.id.endsWith("copper") ? "copper" : "aluminium";
      const from = g.si<Temperature>("referenceTemperature");
      const warmer = resistanceAtTemperature({
        resistance: 1 as Resistance,
        from,
        to: (from + 1) as Temperature,
        material,
        coefficient: { perKelvin: g.si("alpha20"), at: kelvin20 },
      });
      return { alpha75: warmer - 1 };
    },
  },
  {
    ids: /nec-t8-12-solid-from-iacs/,
    compute: (g) => ({
      resistance: wireResistance({
        material: "copper",
        area: g.si<Area>("area"),
        length: 1 as Length,
        temperature: g.si<Temperature>("temperature"),
        resistivityAt20: g.si("resistivity20"),
      }),
    }),
  },
  {
    ids: /nec-t8-.*-awg-75c/,
    compute: (g) => {
      const [, aught, gauge] = /t8-(?:(\d)-0|(\d+))-awg/.exec(g.record.id) ?? [];
      const size = sizeOf(aught ? 1 - Number(aught) : Number(gauge));
      return {
        copperSolidUncoated: solid(size),
        copperStrandedUncoated: stranded(size),
        aluminiumStranded: stranded(size, "aluminium"),
      };
    },
  },
  {
    ids: /nec-t8-12-stranded-at-60c/,
    compute: (g) => ({
      resistance: resistanceAtTemperature({
        resistance: g.si<ResistancePerLength>("resistance75"),
        from: celsius(75),
        to: g.si<Temperature>("temperature"),
        coefficient: { perKelvin: g.si("alpha75"), at: celsius(75) },
      }),
    }),
  },
  {
    ids: /drop-cable-loop-resistance-cold/,
    compute: (g) => {
      const cold = resistanceAtTemperature({
        resistance: g.si<ResistancePerLength>("resistance75"),
        from: celsius(75),
        to: g.si<Temperature>("temperature"),
        coefficient: { perKelvin: g.si("alpha75"), at: celsius(75) },
      });
      // One ampere through the loop drops as many volts as it has ohms.
      return {
        loopResistance: drop(g, {
          current: 1 as Current,
          sourceVoltage: volts(240),
          segments: [{ length: g.si<Length>("length"), resistance: cold }],
        }).drop,
      };
    },
  },
  {
    ids: /copper-solid-.*-20c/,
    compute: (g) => ({
      resistance: ohmsOf(g, areaOfSize(sizeOf(Number(g.text("awg")))), 1, "resistivity20"),
    }),
  },
  {
    ids: /beiser-5-6-round-wire|bird-3-7-large-cable|robertson-1-17-fine-wire/,
    compute: (g) => ({ resistance: ohmsOf(g, disc(g.si("diameter")), g.si("length")) }),
  },
  {
    ids: /beiser-5-8-minimum-diameter/,
    compute: (g) => {
      // One ampere over half the wire's length, go and return: volts are ohms.
      const area = circularMilArea({
        system: "single-phase",
        current: 1 as Current,
        length: (g.si("length") / 2) as Length,
        drop: g.si<Voltage>("resistance"),
        constant: 10.4,
      });
      return { diameter: Math.sqrt((4 * area) / Math.PI) };
    },
  },
  {
    ids: /beiser-5-15-metric-resistance/,
    compute: (g) => ({ resistance: ohmsOf(g, g.si("area"), g.si("length")) }),
  },
  {
    ids: /bird-3-8-r-at-70|robertson-1-19-copper-60c/,
    compute: (g) => ({ resistance: at(g, "r0", ICE, "temperature", "alpha0", ICE) }),
  },
  {
    ids: /bird-3-11-copper-20-to-100/,
    compute: (g) => ({ resistance: at(g, "r20", 293.15, "temperature", "alpha20", 293.15) }),
  },
  {
    ids: /bird-3-12-temperature-from-resistance/,
    compute: (g) => ({
      temperature: temperatureFromResistance({
        coldResistance: g.si<Resistance>("r18"),
        coldTemperature: g.si<Temperature>("coldTemperature"),
        hotResistance: g.si<Resistance>("hotResistance"),
        coefficient: { perKelvin: g.si("alpha18"), at: celsius(18) },
      }),
    }),
  },
  {
    ids: /bird-3-13-copper-20-to-90/,
    compute: (g) => ({ resistance: at(g, "r20", 293.15, "temperature", "alpha0", ICE) }),
  },
  {
    ids: /robertson-1-18-motor-field-coil/,
    compute: (g) => ({
      hotResistance: at(g, "coldResistance", g.si("coldTemperature"), "hotTemperature", "alpha0", ICE),
    }),
  },
  {
    ids: /muthu-1-7-shunt-motor-temperature/,
    compute: (g) => ({
      hotTemperature: temperatureFromResistance({
        coldResistance: g.si<Resistance>("coldResistance"),
        coldTemperature: g.si<Temperature>("coldTemperature"),
        hotResistance: g.si<Resistance>("hotResistance"),
        coefficient: { perKelvin: g.si("alpha0"), at: celsius(0) },
      }),
    }),
  },
  {
    ids: /muthu-1-8-coil-temperature-rise/,
    compute: (g) => {
      const hot = temperatureFromResistance({
        coldResistance: (g.si("voltage") / g.si("coldCurrent")) as Resistance,
        coldTemperature: g.si<Temperature>("coldTemperature"),
        hotResistance: (g.si("voltage") / g.si("hotCurrent")) as Resistance,
        coefficient: { perKelvin: g.si("alpha0"), at: celsius(0) },
      });
      // A difference, which the record states in the unit of a temperature.
      return { temperatureRise: hot - g.si("coldTemperature") + ICE };
    },
  },
  {
    ids: /winding-correction-234-5/,
    compute: (g) => ({
      resistanceCorrected: resistanceAtTemperature({
        resistance: g.si<Resistance>("resistance"),
        from: g.si<Temperature>("testTemperature"),
        to: g.si<Temperature>("targetTemperature"),
        coefficient: { perKelvin: 1 / (g.si("k") - ICE), at: celsius(0) },
      }),
    }),
  },
  {
    ids: /kuphaldt-wire-drop-20-to-35/,
    compute: (g) => {
      const wire = at(g, "wireResistance20", 293.15, "temperature", "alpha20", 293.15);
      const source = g.si<Voltage>("sourceVoltage");
      const circuit = lockedRotorDrop({
        system: "single-phase",
        sourceVoltage: source,
        segments: [{ length: 0 as Length, resistance: 0 as ResistancePerLength, joints: wire }],
        lockedRotorCurrent: (source / g.si("loadResistance")) as Current,
        lockedRotorPowerFactor: ratio(1),
        ratedVoltage: source,
      });
      return { loadVoltage: circuit.motorVoltage, dropPerWire: (source - circuit.motorVoltage) / 2 };
    },
  },
  {
    ids: /kuphaldt-2300ft-minimum-area/,
    compute: (g) => {
      const area = circularMilArea({
        system: "single-phase",
        current: g.si<Current>("current"),
        length: g.si<Length>("oneWayLength"),
        drop: (g.si("sourceVoltage") - g.si("minimumLoadVoltage")) as Voltage,
        constant: 10.09,
      });
      return { minimumArea: area, maxResistancePerWire: ohmsOf(g, area, g.si("oneWayLength")) };
    },
  },
  {
    ids: /beiser-5-14-maximum-length/,
    compute: (g) => {
      const perMetre = ohmsOf(g, g.si("area"), 1);
      return { conductorLength: 2 * reach(g, perMetre, g.si("drop") / 120, "single-phase", 120) };
    },
  },
  {
    ids: /ecm-ex1-.*/,
    compute: (g) => ({ drop: drop(g, { system: "three-phase" }).drop }),
  },
  {
    ids: /ecm-ex2-minimum-circular-mils/,
    compute: (g) => ({
      minimumArea: circularMilArea({
        system: "three-phase",
        current: g.si<Current>("current"),
        length: g.si<Length>("oneWayLength"),
        drop: g.si<Voltage>("allowedDrop"),
      }),
    }),
  },
  {
    ids: /ecm-ex3-.*/,
    compute: (g) => ({
      oneWayLength: reach(g, g.si("impedance"), g.si("allowedDrop") / 480, "three-phase", 480),
    }),
  },
  {
    ids: /electrician2-16awg-24v|vk3-controller-4200ft/,
    compute: (g) => {
      const found = drop(g);
      return { drop: found.drop, dropPercent: found.share };
    },
  },
  {
    ids: /txdot-lighting-branch-run/,
    compute: (g) => ({ drop: drop(g, { resistance: g.si("loopResistancePerFoot") / 2 }).drop }),
  },
  {
    ids: /mullin-36r-.*/,
    compute: (g) => {
      const by = (size: ConductorSize): number =>
        circularMilDrop({
          system: "single-phase",
          current: g.si<Current>("current"),
          length: g.si<Length>("oneWayLength"),
          area: ((({ "8 AWG": 16510, "10 AWG": 10380, "12 AWG": 6530, "14 AWG": 4110 } as Record<string, number>)[
            size
          ] ?? 0) *
            (Math.PI / 4) *
            0.0000254 ** 2) as Area,
        });
      return {
        drop8Awg: by("8 AWG"),
        drop10Awg: by("10 AWG"),
        drop12Awg: by("12 AWG"),
        drop14Awg: by("14 AWG"),
      };
    },
  },
  {
    ids: /nec-recommended-drop-limits/,
    compute: () => ({
      branch: recommendedDropLimits[0]?.other ?? 0,
      total: recommendedDropLimits[1]?.other ?? 0,
    }),
  },
  {
    ids: /mehta-13-4-three-segments/,
    compute: (g) => {
      const branch = [1, 2, 3].map((i) => g.si(`current${i}`));
      const run = runVoltages({
        system: "direct current",
        sourceVoltage: g.si<Voltage>("sourceVoltage"),
        segments: [1, 2, 3].map((i) => ({
          length: g.si<Length>(`length${i}`),
          resistance: (g.si("conductorResistancePer100m") / 100) as ResistancePerLength,
        })),
        loads: branch.map((current, i) => ({
          current: (current - (branch[i + 1] ?? 0)) as Current,
          powerFactor: ratio(1),
        })),
      });
      if (run.state !== "carried") throw new Error(run.state);
      const [voltage1 = 0, voltage2 = 0, voltage3 = 0] = run.voltages;
      return { voltage1, voltage2, voltage3 };
    },
  },
  {
    ids: /mehta-13-3-two-trams/,
    compute: (g) => {
      const run = runVoltages({
        system: "direct current",
        sourceVoltage: g.si<Voltage>("sourceVoltage"),
        segments: [1, 2].map((i) => ({
          length: g.si<Length>(`length${i}`),
          resistance: (g.si("loopResistancePerKm") / 2) as ResistancePerLength,
        })),
        loads: [
          { current: (g.si("current1") - g.si("current2")) as Current, powerFactor: ratio(1) },
          { current: g.si<Current>("current2"), powerFactor: ratio(1) },
        ],
      });
      if (run.state !== "carried") throw new Error(run.state);
      const [voltage1 = 0, voltage2 = 0] = run.voltages;
      return { voltage1, voltage2 };
    },
  },
  {
    ids: /mehta-14-1-ac-two-loads/,
    compute: (g) => {
      const run = runVoltages({
        system: "single-phase",
        // The phasor that the conductors take does not depend on the voltage, which the example leaves open.
        sourceVoltage: volts(230),
        segments: [1, 2].map((i) => ({
          length: g.si<Length>(`length${i}`),
          resistance: (g.si("loopResistancePerKm") / 2) as ResistancePerLength,
          reactance: (g.si("loopReactancePerKm") / 2) as ResistancePerLength,
        })),
        loads: [
          { current: g.si<Current>("loadNear"), powerFactor: g.si<Ratio>("powerFactorNear") },
          { current: g.si<Current>("loadFar"), powerFactor: g.si<Ratio>("powerFactorFar") },
        ],
        reference: "far end",
      });
      if (run.state !== "carried") throw new Error(run.state);
      return { drop: run.difference };
    },
  },
  {
    ids: /mehta-14-3-local-power-factor/,
    compute: (g) => {
      const section = {
        length: 1 as Length,
        resistance: (g.si("sectionResistance") / 2) as ResistancePerLength,
        reactance: (g.si("sectionReactance") / 2) as ResistancePerLength,
      };
      const run = sendingVoltage({
        system: "single-phase",
        farVoltage: g.si<Voltage>("farVoltage"),
        segments: [section, section],
        loads: [
          { current: g.si<Current>("loadNear"), powerFactor: g.si<Ratio>("powerFactorNear") },
          { current: g.si<Current>("loadFar"), powerFactor: g.si<Ratio>("powerFactorFar") },
        ],
      });
      const middle = sendingVoltage({
        system: "single-phase",
        farVoltage: g.si<Voltage>("farVoltage"),
        segments: [section],
        loads: [{ current: g.si<Current>("loadFar"), powerFactor: g.si<Ratio>("powerFactorFar") }],
      });
      return { midVoltage: middle.sourceVoltage, sendingVoltage: run.sourceVoltage, angle: run.angle };
    },
  },
  {
    ids: /mehta-14-5-motor-at-line-end/,
    compute: (g) => {
      const motor = motorCurrent({
        power: electricHorsepower(10),
        efficiency: g.si<Ratio>("motorEfficiency"),
        powerFactor: g.si<Ratio>("motorPowerFactor"),
        voltage: g.si<Voltage>("farVoltage"),
        system: "three-phase",
      });
      const run = sendingVoltage({
        system: "three-phase",
        farVoltage: g.si<Voltage>("farVoltage"),
        segments: [1, 2].map((i) => ({
          length: g.si<Length>(`length${i}`),
          resistance: g.si<ResistancePerLength>("resistancePerKm"),
          reactance: g.si<ResistancePerLength>("reactancePerKm"),
        })),
        loads: [
          { current: g.si<Current>("nearLoad"), powerFactor: g.si<Ratio>("nearPowerFactor") },
          { current: motor.current, powerFactor: g.si<Ratio>("motorPowerFactor") },
        ],
        reference: "far end",
      });
      return { motorCurrent: motor.current, sendingVoltage: run.sourceVoltage };
    },
  },
  {
    ids: /service-run-plus-drop-cable(-10awg)?/,
    compute: (g) => {
      const found = twoRuns(g);
      return {
        drop: found.drop,
        dropPercent: found.share,
        terminalVoltage: found.loadVoltage,
        conductorLoss: found.loss,
      };
    },
  },
  {
    ids: /fraction-of-maximum-length-rule/,
    compute: (g) => {
      const share = (i: number): number =>
        g.si(`length${i}`) /
        reach(g, g.si(`resistance${i}`), g.si("allowedPercent"), "single-phase", g.si("systemVoltage"));
      return { sumOfFractions: share(1) + share(2) };
    },
  },
  {
    ids: /max-length-1p5hp-230v-.*/,
    compute: (g) => {
      const length = (share: number): number =>
        reach(g, g.si("resistance"), share, "single-phase", g.si("systemVoltage"));
      return { length3Percent: length(0.03), length5Percent: length(0.05) };
    },
  },
  {
    ids: /three-phase-versus-single-phase-drop/,
    compute: (g) => {
      const by = (system: "single-phase" | "three-phase"): number =>
        drop(g, { system, current: 10 as Current, length: 100, resistance: 0.001 }).drop;
      return { ratio: by("three-phase") / by("single-phase") };
    },
  },
  {
    ids: /nec-effective-z-definition-250/,
    compute: (g) => ({
      effectiveImpedance: effectiveImpedance({
        resistance: g.si<ResistancePerLength>("resistance"),
        reactance: g.si<ResistancePerLength>("reactance"),
        powerFactor: g.si<Ratio>("powerFactor"),
      }),
    }),
  },
  {
    ids: /nec-effective-z-\d+-awg-pvc/,
    compute: (g) => {
      const [, gauge] = /z-(\d+)-awg/.exec(g.record.id) ?? [];
      return {
        effectiveImpedance: effectiveImpedance({
          ...conductorImpedance({ size: sizeOf(Number(gauge)), raceway: "plastic" }),
          powerFactor: g.si<Ratio>("powerFactor"),
        }),
      };
    },
  },
  {
    ids: /start-dip-cable-1p5hp/,
    compute: (g) => {
      const found = drop(g, {
        segments: [
          {
            length: 0 as Length,
            resistance: 0 as ResistancePerLength,
            joints: (g.si("loopResistance") / 2) as Resistance,
          },
        ],
      });
      return { drop: found.drop, dropPercent: found.share };
    },
  },
  {
    ids: /start-dip-cable-constant-impedance/,
    compute: (g) => {
      const start = lockedRotorDrop({
        system: "single-phase",
        sourceVoltage: g.si<Voltage>("systemVoltage"),
        segments: [
          {
            length: 0 as Length,
            resistance: 0 as ResistancePerLength,
            joints: (g.si("loopResistance") / 2) as Resistance,
          },
        ],
        lockedRotorCurrent: g.si<Current>("lockedRotorCurrent"),
        lockedRotorPowerFactor: g.si<Ratio>("lockedRotorPowerFactor"),
        ratedVoltage: g.si<Voltage>("systemVoltage"),
      });
      return { current: start.current, motorVoltage: start.motorVoltage, dipPercent: start.motorDip };
    },
  },
  { ids: /ampacity-copper-.*/, compute: (g) => ampacities(g, "copper") },
  { ids: /ampacity-aluminium-.*/, compute: (g) => ampacities(g, "aluminium") },
  { ids: /ampacity-free-air-copper-12-awg/, compute: (g) => ampacities(g, "copper", necTable310_17) },
  {
    ids: /ambient-correction-.*/,
    compute: (g) => ({
      factor: conductorAmpacity({
        size: "12 AWG",
        insulation: `${Math.round(g.si("insulationRating") - ICE)} °C` as TemperatureRating,
        ambient: g.si<Temperature>("ambient"),
      }).ambientFactor,
    }),
  },
  {
    ids: /bundling-factors/,
    compute: () => {
      const factor = (bundled: number): number =>
        conductorAmpacity({ size: "12 AWG", insulation: "90 °C", bundled }).bundlingFactor;
      return {
        n4to6: factor(4),
        n7to9: factor(9),
        n10to20: factor(10),
        n21to30: factor(21),
        n31to40: factor(40),
        n41plus: necBundlingAdjustment.at(-1)?.factor ?? 0,
      };
    },
  },
  {
    ids: /thhn-12-four-conductors/,
    compute: () => ({ ampacity: conductorAmpacity({ size: "12 AWG", insulation: "90 °C", bundled: 4 }).ampacity }),
  },
  {
    ids: /thhn-12-at-55c/,
    compute: () => ({
      ampacity: conductorAmpacity({ size: "12 AWG", insulation: "90 °C", ambient: celsius(55) }).ampacity,
    }),
  },
  {
    ids: /small-conductor-limits/,
    compute: () => ({
      copper14: smallConductorLimit("14 AWG") ?? 0,
      copper12: smallConductorLimit("12 AWG") ?? 0,
      copper10: smallConductorLimit("10 AWG") ?? 0,
      aluminium12: smallConductorLimit("12 AWG", "aluminium") ?? 0,
      aluminium10: smallConductorLimit("10 AWG", "aluminium") ?? 0,
    }),
  },
  {
    ids: /egc-(copper|aluminium)-\d+a/,
    compute: (g) => ({
      conductorSize: gaugeOf(
        groundingConductor({
          overcurrentRating: g.si<Current>("overcurrentRating"),
          material: g.record.id.includes("copper") ? "copper" : "aluminium",
        }).size,
      ),
    }),
  },
  {
    ids: /inw-egc-.*|mepa-egc-.*|ecmag-egc-.*|egc-8-to-6-rounding-trap|egc-pump-circuit-12-to-8/,
    compute: (g) => {
      const from = SIZE_OF_AREA[g.text("baseConductor")] as ConductorSize;
      const to = SIZE_OF_AREA[g.text("increasedConductor")] as ConductorSize;
      const rating = RATING_FOR_GROUND[g.text("baseEgc")] as number;
      const ground = groundingConductor({ overcurrentRating: rating as Current, enlarged: { from, to } });
      const before = groundingConductor({ overcurrentRating: rating as Current });
      return {
        egcArea: ground.area,
        conductorSize: gaugeOf(ground.size),
        ratio: ground.area / before.area,
      };
    },
  },
  {
    ids: /iec60228-(copper|aluminium)-.*/,
    compute: (g) => {
      const size = `${inSquareMillimetres(g.si<Area>("area"))} mm²` as const;
      const material = g.record.id.includes("copper") ? "copper" : "aluminium";
      const by = (stranding: "stranded" | "flexible"): number =>
        conductorResistance({ size: parseConductorSize(size), material, stranding, temperature: kelvin20 }).resistance;
      return { class2: by("stranded"), ...(material === "copper" ? { class5: by("flexible") } : {}) };
    },
  },
  {
    ids: /iec60228-kt-.*/,
    compute: (g) => ({
      kt: resistanceAtTemperature({
        resistance: 1 as Resistance,
        from: g.si<Temperature>("temperature"),
        to: kelvin20,
        // The standard's practical table is a coefficient of 0.0040 at 20 °C.
        coefficient: { perKelvin: 0.004, at: kelvin20 },
      }),
    }),
  },
  {
    ids: /bs7671-4e4b-.*/,
    compute: (g) => {
      const row = bs7671Table4E4B.find(({ area }) => area === inSquareMillimetres(g.si<Area>("area")));
      const per = (millivolts: number): number =>
        tabulatedDrop({
          dropPerAmpereMetre: (millivolts / 1000) as ResistancePerLength,
          current: 1 as Current,
          length: 1 as Length,
        });
      return { singlePhase: per(row?.singlePhase ?? 0), threePhase: per(row?.threePhase ?? 0) };
    },
  },
  {
    ids: /bs7671-2p5mm2-from-iec60228/,
    compute: (g) => {
      const cold = (iec60228Class2.find(({ area }) => area === 2.5)?.copper ?? 0) / 1000;
      const hot = resistanceAtTemperature({
        resistance: cold as ResistancePerLength,
        from: kelvin20,
        to: g.si<Temperature>("temperature"),
        coefficient: { perKelvin: g.si("alpha20"), at: kelvin20 },
      });
      return { drop: drop(g, { current: 1 as Current, length: 1, resistance: hot, sourceVoltage: volts(230) }).drop };
    },
  },
  {
    ids: /izapp-.*|iee-35mm2-.*/,
    compute: (g) => ({
      drop: tabulatedDrop({
        dropPerAmpereMetre: g.si<ResistancePerLength>("dropPerAmpMetre"),
        current: g.si<Current>("current"),
        length: g.si<Length>("length"),
      }),
    }),
  },
  {
    ids: /iec60364-drop-limits-(public|private)/,
    compute: (g) => {
      const limit = recommendedDropLimits[g.record.id.endsWith("public") ? 2 : 3];
      return { lighting: limit?.lighting ?? 0, other: limit?.other ?? 0 };
    },
  },
  {
    ids: /metric-drop-4mm2-60m-8a/,
    compute: (g) => {
      const { resistance } = conductorResistance({
        size: "4 mm²",
        stranding: "flexible",
        temperature: g.si<Temperature>("temperature"),
      });
      const { reactance } = conductorImpedance({ size: "4 mm²", frequency: hertz(50) as Frequency });
      // The record is the usual formula, which the library returns as the in-phase part of the exact drop.
      const { inPhase } = drop(g, {
        powerFactor: g.si<Ratio>("powerFactor"),
        segments: [{ length: g.si<Length>("length"), resistance, reactance }],
      });
      return { drop: inPhase, dropPercent: inPhase / g.si("systemVoltage") };
    },
  },
];
