/** How each published motor record is computed with the library. */
import { type ConductorChoice, conductorChoices, parseConductorSize, smallestConductor } from "risingmain/conductor";
import {
  type CodeLetter,
  capacitorMotorEfficiency,
  codeLetterOf,
  codeLetterRanges,
  enclosedMotorEfficiency,
  fullLoadCurrent,
  insulationAtTemperature,
  insulationLife,
  insulationReading,
  type LeastEfficiencyRow,
  leastPolarizationIndex,
  lockedRotorCurrent,
  type MotorSystem,
  motorBranchCircuit,
  motorCurrent,
  motorFeederAmpacity,
  polyphaseMotorEfficiency,
  powerReading,
  protectionRules,
  reducedSupplyStart,
  supplyTolerance,
  voltageUnbalance,
} from "risingmain/motor";
import {
  amperes,
  type Current,
  celsius,
  electricHorsepower,
  type Frequency,
  feet,
  type Power,
  percent,
  type Ratio,
  type Resistance,
  ratio,
  type Temperature,
  type Torque,
  type Voltage,
  volts,
} from "risingmain/units";
import type { Computation, Computed, Given } from "./register.ts";

/** The register reads "lb ft" as mass times length; a torque is standard gravity times that. */
const GRAVITY = 9.80665;
const torque = (g: Given, name: string): Torque => (g.si(name) * GRAVITY) as Torque;

/** Size of the thinnest copper conductor with the ampacity, at terminals of the rating, over a run too short for a drop. */
const sizeFor = (ampacityNeeded: number, terminals: "60 °C" | "75 °C"): number => {
  const found = smallestConductor({
    system: "single-phase",
    sourceVoltage: volts(230),
    current: amperes(1),
    powerFactor: ratio(1),
    length: feet(1),
    dropLimit: percent(5),
    ampacityNeeded: amperes(ampacityNeeded),
    choices: conductorChoices({ insulation: "75 °C", terminals }) as readonly ConductorChoice[],
  });
  return Number.parseInt(parseConductorSize(found.choice.size), 10);
};

const lockedRotor = (g: Given, codeLetter: CodeLetter, system: MotorSystem = "three-phase") =>
  lockedRotorCurrent({ power: g.si<Power>("power"), voltage: g.si<Voltage>("voltage"), system, codeLetter });

const reduced = (g: Given, over: { torque?: number; voltage: number; rated: number; from?: number; to?: number }) =>
  reducedSupplyStart({
    lockedRotorCurrent: (g.has("current") ? g.si("current") : g.has("current1") ? g.si("current1") : 0) as Current,
    lockedRotorTorque: (over.torque ?? 0) as Torque,
    ratedVoltage: over.rated as Voltage,
    voltage: over.voltage as Voltage,
    ratedFrequency: (over.from ?? 60) as Frequency,
    frequency: (over.to ?? over.from ?? 60) as Frequency,
  });
/** Torque of a motor at its rated speed, times a ratio: the book's lb·ft = 5252 hp / (r/min), with its rounded constant. */
const ratedTorque = (g: Given, share: string): number =>
  ((5252 * Number(g.text("power"))) / Number(g.text("speed"))) * g.si(share) * 0.45359237 * 0.3048 * GRAVITY;

/** Three voltages with an average of 100 V and an unbalance. */
const unbalanced = (unbalance: number) =>
  voltageUnbalance([volts(100 * (1 + unbalance)), volts(100 * (1 - unbalance / 2)), volts(100 * (1 - unbalance / 2))]);

const efficiencies = (rows: readonly LeastEfficiencyRow[], horsepower: string): Computed => {
  const row = rows.find((one) => one.horsepower === Number(horsepower));
  const share = (value: number | null | undefined): number => (value ?? 0) / 100;
  return { twoPole: share(row?.twoPole), fourPole: share(row?.fourPole) };
};

export const computations: readonly Computation[] = [
  {
    ids: /nec-430-(248|250)-.*/,
    compute: (g) => ({
      fullLoadCurrent: fullLoadCurrent({
        power: g.si<Power>("power"),
        voltage: g.si<Voltage>("voltage"),
        system: g.record.id.includes("-248-") ? "single-phase" : "three-phase",
      }).current,
    }),
  },
  {
    ids: /implied-efficiency-times-pf-1p5hp/,
    compute: (g) => ({
      product: powerReading({
        inputPower: electricHorsepower(1.5),
        voltage: g.si<Voltage>("voltage"),
        current: g.si<Current>("current"),
        system: "single-phase",
      }).powerFactor,
    }),
  },
  {
    ids: /nec-430-22-conductor-percent/,
    compute: () => ({ percent: motorBranchCircuit({ fullLoadCurrent: amperes(1) }).conductorAmpacity }),
  },
  {
    ids: /nec-430-52-percent-table/,
    compute: () => ({
      nonTimeDelayFuse: protectionRules["non-time-delay fuse"].share,
      dualElementFuse: protectionRules["dual-element fuse"].share,
      instantaneousTripBreaker: protectionRules["instantaneous-trip breaker"].share,
      inverseTimeBreaker: protectionRules["inverse-time breaker"].share,
    }),
  },
  {
    ids: /mikeholt-7p5hp-230v-3ph|electricianmath-5hp-230v-1ph|motor-.*-protection|elect4all-5hp-415v/,
    compute: (g) => {
      const current = g.si<Current>("fullLoadCurrent");
      const breaker = motorBranchCircuit({ fullLoadCurrent: current });
      const rating = (device: "dual-element fuse" | "non-time-delay fuse" | "instantaneous-trip breaker"): number =>
        motorBranchCircuit({ fullLoadCurrent: current, device }).protectionRating;
      return {
        conductorAmpacity: breaker.conductorAmpacity,
        breakerMaximum: breaker.protectionByShare,
        breakerStandard: breaker.protectionRating,
        inverseTimeBreaker: breaker.protectionRating,
        dualElementFuse: rating("dual-element fuse"),
        nonTimeDelayFuse: rating("non-time-delay fuse"),
        instantaneousTripSetting: rating("instantaneous-trip breaker"),
        conductorSize: sizeFor(breaker.conductorAmpacity, g.record.id.startsWith("mikeholt") ? "60 °C" : "75 °C"),
      };
    },
  },
  {
    ids: /feeder-four-identical-motors/,
    compute: () => ({ percent: motorFeederAmpacity([amperes(1), amperes(1), amperes(1), amperes(1)]) }),
  },
  {
    ids: /kosow-13-1-life-125c/,
    compute: (g) => ({
      life:
        g.si("ratedLife") *
        insulationLife({
          temperature: g.si<Temperature>("temperature"),
          ratedTemperature: g.si<Temperature>("classLimit"),
        }),
    }),
  },
  {
    ids: /nec-430-32-overload-percent|nec-430-32-c-maximum/,
    compute: (g) => {
      const one = motorBranchCircuit({ fullLoadCurrent: amperes(1) });
      const robust = motorBranchCircuit({ fullLoadCurrent: amperes(1), serviceFactor: ratio(1.15) });
      const first = g.record.id.endsWith("overload-percent");
      return {
        serviceFactor115OrRise40C: first ? robust.overloadSetting : robust.overloadLargest,
        allOtherMotors: first ? one.overloadSetting : one.overloadLargest,
      };
    },
  },
  {
    ids: /nec-430-32-thermal-protector/,
    compute: () => {
      const share = (current: number): number =>
        motorBranchCircuit({ fullLoadCurrent: amperes(current) }).thermalProtector / current;
      return { to9A: share(9), from9p1To20A: share(20), over20A: share(21) };
    },
  },
  {
    ids: /overload-nameplate-10p4a/,
    compute: (g) => ({
      maximumTrip: motorBranchCircuit({
        fullLoadCurrent: amperes(10),
        nameplateCurrent: g.si<Current>("nameplateCurrent"),
        serviceFactor: ratio(1.15),
      }).overloadSetting,
    }),
  },
  {
    ids: /hubert-5-13-150hp-inrush/,
    compute: (g) => ({
      currentLow: lockedRotor(g, "G").low,
      // The book runs the band of letter G to where that of H begins.
      currentHigh: lockedRotor(g, "H").low,
    }),
  },
  {
    ids: /hubert-5-18-125hp-inrush/,
    compute: (g) => ({
      current: lockedRotor(g, "H").middle,
      lockedRotorTorque:
        reduced(g, { torque: ratedTorque(g, "lockedRotorTorqueRatio"), rated: 460, voltage: 460 }).torque / GRAVITY,
    }),
  },
  {
    ids: /hubert-5-18-reduced-voltage-torque/,
    compute: (g) => ({
      torque:
        reduced(g, { torque: torque(g, "fullVoltageTorque"), rated: 460, voltage: 460 * g.si("voltageFraction") })
          .torque / GRAVITY,
    }),
  },
  {
    ids: /hubert-5-19-code-letter/,
    compute: (g) => {
      // In delta the line current is √3 times that of a phase, which has the whole voltage across it.
      const lineCurrent = (Math.sqrt(3) * g.si("voltage")) / g.si("phaseImpedance");
      const { kvaPerHorsepower } = codeLetterOf({
        power: g.si<Power>("power"),
        voltage: g.si<Voltage>("voltage"),
        lockedRotorCurrent: lineCurrent as Current,
        system: "three-phase",
      });
      return { lineCurrent, kvaPerHp: (kvaPerHorsepower * 1000) / 745.69987158227022 };
    },
  },
  { ids: /hubert-5-21-7p5hp-inrush/, compute: (g) => ({ current: lockedRotor(g, "H").middle }) },
  {
    ids: /hubert-5-7-frequency-change/,
    compute: (g) => ({
      current2: reduced(g, {
        rated: g.si("voltage1"),
        voltage: g.si("voltage2"),
        from: g.si("frequency1"),
        to: g.si("frequency2"),
      }).current,
    }),
  },
  {
    ids: /hubert-5-8-torque-voltage-frequency/,
    compute: (g) => {
      const by = (voltage: number, to: number): number =>
        reduced(g, {
          torque: ratedTorque(g, "torqueRatio"),
          rated: g.si("voltage1"),
          voltage,
          from: g.si("frequency1"),
          to,
        }).torque / GRAVITY;
      return {
        torque1: by(g.si("voltage1"), g.si("frequency1")),
        torque2: by(g.si("voltage2"), g.si("frequency2")),
      };
    },
  },
  {
    ids: /kosow-9-4-reduced-voltage/,
    compute: (g) => {
      const start = reduced(g, {
        torque: torque(g, "torque"),
        rated: g.si("ratedVoltage"),
        voltage: g.si("startVoltage"),
      });
      return { torqueReduced: start.torque / GRAVITY, currentReduced: start.current };
    },
  },
  {
    ids: /kosow-12-17-7p5hp-code-j|three-phase-3hp-code-k-lra/,
    compute: (g) => {
      const band = lockedRotor(g, g.record.id.includes("code-j") ? "J" : "K");
      return { currentLow: band.low, currentHigh: band.high ?? 0 };
    },
  },
  {
    ids: /code-letter-[a-z]/,
    compute: (g) => {
      const band = codeLetterRanges[g.record.id.slice(-1).toUpperCase() as CodeLetter];
      const si = (value: number): number => (value * 1000) / 745.69987158227022;
      return { low: si(band.low), high: si(band.high ?? 0), midRange: si(band.middle) };
    },
  },
  {
    ids: /single-phase-1p5hp-code-k-lra/,
    compute: (g) => {
      const band = lockedRotor(g, "K", "single-phase");
      return { startingKva: band.apparentPower, current: band.middle };
    },
  },
  {
    ids: /nema-mg1-running-variation/,
    compute: () => {
      const limits = supplyTolerance({ ratedVoltage: volts(100), voltage: volts(100) });
      return {
        voltage: limits.highest / 100 - 1,
        frequency: limits.frequencyLimit,
        combined: limits.combinedLimit,
      };
    },
  },
  {
    ids: /easa-230v-limits/,
    compute: (g) => {
      const limits = supplyTolerance({ ratedVoltage: g.si<Voltage>("ratedVoltage"), voltage: volts(230) });
      return { low: limits.lowest, high: limits.highest };
    },
  },
  {
    ids: /hubert-5-14-unbalance-percent|nema-unbalance-462-463-455/,
    compute: (g) => {
      const { average, unbalance } = voltageUnbalance([g.si<Voltage>("v1"), g.si<Voltage>("v2"), g.si<Voltage>("v3")]);
      return { average, unbalance };
    },
  },
  {
    ids: /hubert-5-14-temperature/,
    compute: (g) => {
      // The book applies the percentage to the temperature in degrees Celsius itself.
      const rated = g.si("ratedTemperature") - 273.15;
      return { temperature: celsius(rated * (1 + unbalanced(g.si("unbalance")).addedTemperatureRise)) };
    },
  },
  {
    ids: /hubert-5-14-insulation-life/,
    compute: (g) => ({
      life:
        g.si("ratedLife") *
        insulationLife({
          temperature: (celsius(110) + g.si("temperatureExcess") - 273.15) as Temperature,
          ratedTemperature: celsius(110),
        }),
    }),
  },
  {
    ids: /unbalance-derating-.*/,
    compute: (g) => ({ deratingFactor: unbalanced(g.si("unbalance")).deratingFactor }),
  },
  {
    ids: /cfr-.*/,
    compute: (g) => {
      const [, horsepower = ""] = /-([\dp]+)hp$/.exec(g.record.id) ?? [];
      const rows = g.record.id.includes("capacitor")
        ? capacitorMotorEfficiency
        : g.record.id.includes("small")
          ? polyphaseMotorEfficiency
          : enclosedMotorEfficiency;
      return efficiencies(rows, horsepower.replace("p", "."));
    },
  },
  {
    ids: /bird-19-9-power-factor/,
    compute: (g) => ({
      powerFactor: powerReading({
        inputPower: g.si<Power>("power"),
        voltage: g.si<Voltage>("voltage"),
        current: g.si<Current>("current"),
        system: "three-phase",
      }).powerFactor,
    }),
  },
  {
    ids: /kosow-10-4-third-hp/,
    compute: (g) => {
      const found = powerReading({
        inputPower: g.si<Power>("inputPower"),
        voltage: g.si<Voltage>("voltage"),
        current: g.si<Current>("current"),
        system: "single-phase",
        shaftPower: electricHorsepower(1 / 3),
      });
      return { efficiency: found.efficiency ?? 0, powerFactor: found.powerFactor };
    },
  },
  {
    ids: /dhogal-4-8-5hp-dc/,
    compute: (g) => ({
      current: motorCurrent({
        power: electricHorsepower(5),
        efficiency: g.si<Ratio>("efficiency"),
        powerFactor: ratio(1),
        voltage: g.si<Voltage>("voltage"),
        system: "direct current",
      }).current,
    }),
  },
  {
    ids: /single-phase-1p5hp-input-watts/,
    compute: (g) => {
      const { inputPower, current } = motorCurrent({
        power: electricHorsepower(1.5),
        efficiency: g.si<Ratio>("efficiency"),
        powerFactor: g.si<Ratio>("powerFactor"),
        voltage: g.si<Voltage>("voltage"),
        system: "single-phase",
      });
      return { inputPower, current };
    },
  },
  {
    ids: /ir-minimum-(230v|460v)/,
    compute: (g) => ({
      minimum: insulationReading({
        reading: 0 as Resistance,
        temperature: celsius(40),
        ratedVoltage: g.si<Voltage>("ratedVoltage"),
        beforeAbout1970: true,
      }).minimum,
    }),
  },
  {
    ids: /ir-minimum-modern-windings|ir-minimum-armature-2013/,
    compute: () => {
      const least = (winding: "random-wound" | "form-wound", ratedVoltage: number): number =>
        insulationReading({
          reading: 0 as Resistance,
          temperature: celsius(40),
          ratedVoltage: volts(ratedVoltage),
          winding,
        }).minimum;
      return {
        formWound: least("form-wound", 4160),
        randomWoundOrBelow1kV: least("random-wound", 230),
        minimum: least("random-wound", 230),
      };
    },
  },
  {
    ids: /ir-test-voltage-below-1kv/,
    compute: () => ({
      testVoltage: insulationReading({ reading: 0 as Resistance, temperature: celsius(40), ratedVoltage: volts(999) })
        .testVoltage,
    }),
  },
  {
    ids: /ir-correction-.*/,
    compute: (g) => ({
      corrected: insulationAtTemperature({
        reading: g.si<Resistance>("measured"),
        from: g.si<Temperature>("temperature"),
        to: g.si<Temperature>("reference"),
      }),
    }),
  },
  {
    ids: /ir-polarization-index-minimum/,
    compute: () => ({
      classA: leastPolarizationIndex.A,
      classB: leastPolarizationIndex.B,
      classF: leastPolarizationIndex.F,
      classH: leastPolarizationIndex.H,
    }),
  },
];
