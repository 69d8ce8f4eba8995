/** Power: the motor's currents, the cables sized and checked, the grounding conductor and each source, by their modules. */
import {
  type ConductorSize,
  conductorChoices,
  conductorGeometry,
  conductorImpedance,
  groundingConductor,
  leastMetal,
  lockedRotorDrop,
  parseConductorSize,
  smallestConductor,
  voltageDrop,
} from "risingmain/conductor";
import { generatorCheck } from "risingmain/generator";
import { motorBranchCircuit, typicalMotor } from "risingmain/motor";
import { type JobMotor, type PowerStage, readJob } from "risingmain/plan";
import { feet, horsepower, type Voltage } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { powerStage } from "../../src/plan/power-stage.ts";
import { type Changes, ranch } from "./jobs.ts";

const WIRE = { insulation: "75 °C", terminals: "60 °C", bundled: 3 } as const;
const SETTING = feet(160);

/** The power of the ranch's pump B, hung at 160 ft. */
function powerOf(changes: Changes = {}): PowerStage & { readonly motor: JobMotor } {
  const job = readJob(ranch(changes));
  const pump = job.pump?.candidates?.[1] ?? expect.unreachable("no pump");
  return { ...powerStage(job, pump, SETTING), motor: pump.motor };
}

const MOTOR = "pump.candidates[1].motor";
const circuit = (...cables: readonly object[]): Changes => ({ "power.circuit": cables });
const area = (size: string) => conductorGeometry(parseConductorSize(size)).area;
const segments = ({ cables }: PowerStage) =>
  cables.map(({ length, size, material }) => {
    const { resistance, reactance } = conductorImpedance({ size: parseConductorSize(size), material });
    return { length, resistance, reactance };
  });
/** The drop of the circuit as the conductor module has it, the motor at its full-load current. */
const dropOf = (stage: PowerStage & { readonly motor: JobMotor }, of = segments(stage)) => {
  const { power, phase, powerFactor = typicalMotor({ power, system: phase }).powerFactor } = stage.motor;
  return voltageDrop({
    system: phase,
    sourceVoltage: 240 as Voltage,
    current: stage.fullLoadCurrent,
    powerFactor,
    nominalVoltage: 240 as Voltage,
    segments: of,
  });
};

describe("the motor", () => {
  // NEC 430.248, from memory: 12 A for 2 hp at 230 V, single-phase.
  test("draws what the code's table says, and starts by its code letter", () => {
    const stage = powerOf();
    expect(stage.fullLoadCurrent).toBe(12);
    // Letter G ends below 6.29 kVA a horsepower.
    expect(stage.lockedRotorCurrent).toBeCloseTo((6.29 * 2 * 1000) / 230, 0);
    const branch = motorBranchCircuit({ fullLoadCurrent: 12 as never, serviceFactor: 1.15 as never });
    expect([stage.conductorAmpacity, stage.highestBreaker]).toEqual([
      branch.conductorAmpacity,
      branch.protectionRating,
    ]);
    const { powerFactor, efficiency } = typicalMotor({ power: horsepower(2), system: "single-phase" });
    expect(stage.inputPower).toBeCloseTo(230 * 12 * powerFactor, 6);
    expect(stage.motorEfficiency).toBe(efficiency);
    // Without a letter the typical one serves; the last letter has no upper end, and its lower serves.
    const typical = powerOf({ [`${MOTOR}.codeLetter`]: undefined });
    const { codeLetter } = typicalMotor({ power: horsepower(2), system: "single-phase" });
    expect(typical.lockedRotorCurrent).toBe(powerOf({ [`${MOTOR}.codeLetter`]: codeLetter }).lockedRotorCurrent);
    expect(powerOf({ [`${MOTOR}.codeLetter`]: "V" }).lockedRotorCurrent).toBeCloseTo((22.4 * 2 * 1000) / 230, 0);
  });

  test("draws what its plate says before all", () => {
    const plate = { fullLoadCurrent: "13.2 A", lockedRotorCurrent: "60 A", efficiency: "72 %", powerFactor: "0.9" };
    const stage = powerOf(Object.fromEntries(Object.entries(plate).map(([key, value]) => [`${MOTOR}.${key}`, value])));
    expect(stage).toMatchObject({ fullLoadCurrent: 13.2, lockedRotorCurrent: 60, motorEfficiency: 0.72 });
    expect(stage.inputPower).toBeCloseTo(230 * 13.2 * 0.9, 6);
    // The code sizes by its table, and overloads by the plate.
    const branch = motorBranchCircuit({
      fullLoadCurrent: 12 as never,
      nameplateCurrent: 13.2 as never,
      serviceFactor: 1.15 as never,
    });
    expect([stage.conductorAmpacity, stage.highestBreaker]).toEqual([
      branch.conductorAmpacity,
      branch.protectionRating,
    ]);
    // Of a voltage the table has not, the plate's current is all there is.
    const odd = powerOf({ [`${MOTOR}.voltage`]: "300 V", [`${MOTOR}.fullLoadCurrent`]: "9 A" });
    const alone = motorBranchCircuit({ fullLoadCurrent: 9 as never });
    expect([odd.fullLoadCurrent, odd.conductorAmpacity]).toEqual([9, alone.conductorAmpacity]);
  });

  test("of three phases draws √3 of the voltage times the current", () => {
    const source = { name: "shop", kind: "utility", voltage: "240 V", phase: "three-phase" };
    const stage = powerOf({ [`${MOTOR}.phase`]: "three-phase", "power.sources": [source] });
    const { powerFactor } = typicalMotor({ power: horsepower(2), system: "three-phase" });
    // NEC 430.250, from memory: 6.8 A for 2 hp at 230 V, three-phase.
    expect(stage.fullLoadCurrent).toBe(6.8);
    expect(stage.inputPower).toBeCloseTo(Math.sqrt(3) * 230 * 6.8 * powerFactor, 6);
    const drop = dropOf(stage);
    expect(stage.drop).toBeCloseTo(drop.state === "carried" ? drop.drop : 0, 9);
  });
});

describe("the cables", () => {
  const LONG = { name: "supply", length: "400 ft" };
  const DROP = { name: "drop cable" };
  /** The choices of a metal, thin to thick. */
  const choices = (material: "copper" | "aluminium") => conductorChoices({ material, ...WIRE });
  const sizes = (stage: PowerStage) => stage.cables.map(({ size }) => size);

  test("lose what the conductor module says, each its part", () => {
    const stage = powerOf(circuit({ ...LONG, size: "10 AWG", material: "aluminium" }, { ...DROP, size: "12 AWG" }));
    const drop = dropOf(stage);
    if (drop.state !== "carried") return expect.unreachable(drop.state);
    expect(stage.drop).toBe(drop.drop);
    expect(stage.dropShare).toBe(drop.share);
    expect(stage.cables.map((cable) => cable.drop)).toEqual(drop.segments.map((segment) => segment.drop));
    expect(stage.cables).toMatchObject([
      { name: "supply", length: feet(400), size: "10 AWG", sizeBy: "job", material: "aluminium" },
      { name: "drop cable", length: SETTING, size: "12 AWG", sizeBy: "job", material: "copper" },
    ]);
    expect(stage.method).toBe("nfpa-70");
  });

  test("two left open: the least metal that keeps drop and ampacity", () => {
    for (const mostVoltageDrop of [undefined, "3 %"]) {
      const stage = powerOf({
        ...circuit({ ...LONG, material: "aluminium" }, DROP),
        "power.mostVoltageDrop": mostVoltageDrop,
      });
      const { power, phase } = stage.motor;
      const run = (length: number, material: "copper" | "aluminium") => ({
        length: length as never,
        choices: choices(material),
        ampacityNeeded: stage.conductorAmpacity,
      });
      const least = leastMetal({
        system: phase,
        sourceVoltage: 240 as Voltage,
        nominalVoltage: 240 as Voltage,
        current: stage.fullLoadCurrent,
        powerFactor: typicalMotor({ power, system: phase }).powerFactor,
        dropLimit: (mostVoltageDrop === undefined ? 0.05 : 0.03) as never,
        runs: [run(feet(400), "aluminium"), run(SETTING, "copper")],
      });
      if (least.state !== "found") return expect.unreachable(least.state);
      expect(sizes(stage)).toEqual(least.choices.map(({ size }) => size));
      expect(stage.cables.map(({ sizeBy }) => sizeBy)).toEqual(["plan", "plan"]);
      expect(stage.dropShare).toBeLessThanOrEqual(mostVoltageDrop === undefined ? 0.05 : 0.03);
    }
  });

  test("two too long for any: the thickest of each metal", () => {
    const stage = powerOf(
      circuit({ name: "line", length: "20 km", material: "aluminium" }, { name: "drop cable", length: "20 km" }),
    );
    expect(sizes(stage)).toEqual([choices("aluminium").at(-1)?.size, choices("copper").at(-1)?.size]);
  });

  test("one left open: the thinnest that keeps ampacity and what drop the others leave", () => {
    for (const [given, limit] of [
      [{ ...LONG, size: "8 AWG" }, "5 %"],
      [{ ...LONG, size: "8 AWG" }, "4 %"],
      // Short and easy: the ampacity governs, 15 A of it.
      [{ ...LONG, length: "10 ft", size: "8 AWG" }, "15 %"],
    ] as const) {
      const stage = powerOf({ ...circuit(given, DROP), "power.mostVoltageDrop": limit });
      const allowed = Number.parseFloat(limit) / 100;
      expect(stage.cables.map(({ sizeBy }) => sizeBy)).toEqual(["job", "plan"]);
      expect(stage.dropShare).toBeLessThanOrEqual(allowed);
      const at = choices("copper").findIndex(({ size }) => size === stage.cables[1]?.size);
      const thinner = choices("copper")[at - 1];
      if (thinner === undefined) {
        expect(at).toBe(0);
        continue;
      }
      const [first, second] = segments(stage);
      if (first === undefined || second === undefined) return expect.unreachable("no segments");
      const { resistance, reactance } = conductorImpedance({ size: thinner.size as ConductorSize, material: "copper" });
      const drop = dropOf(stage, [first, { ...second, resistance, reactance }]);
      const tooMuch = drop.state !== "carried" || drop.share > allowed * 0.98;
      expect(tooMuch || (thinner.ampacity ?? 0) < stage.conductorAmpacity).toBe(true);
    }
    const alone = powerOf(circuit(DROP));
    expect(alone.cables).toHaveLength(1);
    expect(alone.dropShare).toBeLessThanOrEqual(0.05);
  });

  test("three left open: each the share of the drop that its length has of them all", () => {
    const stage = powerOf({
      ...circuit(
        { name: "a", length: "300 ft" },
        { name: "b", length: "100 ft", material: "aluminium" },
        { name: "c" },
      ),
      "power.mostVoltageDrop": undefined,
    });
    const { power, phase } = stage.motor;
    const lengths = [300, 100, 160];
    stage.cables.forEach(({ size, material }, i) => {
      const { choice } = smallestConductor({
        system: phase,
        sourceVoltage: 240 as Voltage,
        nominalVoltage: 240 as Voltage,
        current: stage.fullLoadCurrent,
        powerFactor: typicalMotor({ power, system: phase }).powerFactor,
        length: feet(lengths[i] as number),
        choices: choices(material),
        ampacityNeeded: stage.conductorAmpacity,
        dropLimit: ((0.05 * (lengths[i] as number)) / 560) as never,
      });
      expect(size).toBe(choice.size);
    });
    // The given one in the middle keeps its place.
    const mixed = powerOf(
      circuit({ name: "a", length: "300 ft" }, { name: "b", length: "100 ft", size: "2 AWG" }, { name: "c" }),
    );
    expect(mixed.cables.map(({ sizeBy }) => sizeBy)).toEqual(["plan", "job", "plan"]);
    expect(sizes(mixed)[1]).toBe("2 AWG");
    expect(mixed.dropShare).toBeLessThanOrEqual(0.05);
    // What the given one takes is gone before the others share what is left.
    const middle = dropOf(mixed, segments(mixed).slice(1, 2));
    const left = 0.05 - (middle.state === "carried" ? middle.share : 0.05);
    [300, 160].forEach((length, i) => {
      const { choice } = smallestConductor({
        system: phase,
        sourceVoltage: 240 as Voltage,
        nominalVoltage: 240 as Voltage,
        current: mixed.fullLoadCurrent,
        powerFactor: typicalMotor({ power, system: phase }).powerFactor,
        length: feet(length),
        choices: choices("copper"),
        ampacityNeeded: mixed.conductorAmpacity,
        dropLimit: ((left * length) / 460) as never,
      });
      expect(sizes(mixed)[2 * i]).toBe(choice.size);
    });
  });

  test("nothing left of the drop: the thickest; nothing to lose it in: the thinnest that carries the current", () => {
    for (const length of ["2000 ft", "20 km"]) {
      const spent = powerOf(circuit({ name: "line", length, size: "14 AWG" }, DROP));
      expect(sizes(spent)[1]).toBe(choices("copper").at(-1)?.size);
    }
    const short = powerOf(
      circuit({ name: "a", length: "0 ft" }, { name: "b", length: "0 ft" }, { name: "c", length: "0 ft" }),
    );
    const thinnest = choices("copper").find(({ ampacity = 0 }) => ampacity >= short.conductorAmpacity);
    expect(sizes(short)).toEqual([thinnest?.size, thinnest?.size, thinnest?.size]);
    expect([short.drop, short.dropShare]).toEqual([0, 0]);
  });

  test("a circuit that cannot carry the motor gives it nothing", () => {
    const stage = powerOf(circuit({ name: "line", length: "20 km", size: "14 AWG" }));
    expect(stage.dropShare).toBe(1);
    expect(stage.cables.map(({ drop }) => drop)).toEqual([0]);
    expect(stage.sources.map(({ runningVoltage }) => runningVoltage)).toEqual([0, 0]);
    const collapsed = dropOf(stage);
    expect(collapsed.state).not.toBe("carried");
    if (collapsed.state !== "carried") expect(stage.drop).toBe(collapsed.available);
  });

  test("are sized for a source the motor runs on, else for the first", () => {
    const single = { name: "house", kind: "utility", voltage: "240 V", phase: "single-phase" };
    const low = { ...single, name: "low", voltage: "208 V" };
    const three = { ...single, name: "shop", phase: "three-phase" };
    const drops = (...sources: readonly object[]) =>
      powerOf({ ...circuit({ ...DROP, size: "12 AWG" }), "power.sources": sources }).dropShare;
    expect(drops(three, low, single)).toBe(drops(low));
    expect(drops(three)).not.toBe(drops(single));
    expect(drops(low)).toBeGreaterThan(drops(single));
  });
});

describe("the grounding conductor", () => {
  const grounding = (changes: Changes) => {
    const stage = powerOf(changes);
    return { each: stage.cables.map(({ groundingSize }) => groundingSize), least: stage.groundingSize, stage };
  };
  const cable = (size: string, material = "copper") => ({
    name: `${size} ${material}`,
    length: "20 ft",
    size,
    material,
  });

  test("is that of the breaker, never thicker than its cable", () => {
    // NEC 250.122, from memory: 14 AWG copper to 15 A, 12 to 20, 10 to 60; aluminium two sizes thicker.
    const thin = {
      "power.breaker": "30 A",
      ...circuit(cable("14 AWG"), cable("12 AWG"), cable("12 AWG", "aluminium")),
    };
    const plain = grounding(thin);
    expect(plain.each.slice(0, 1)).toEqual(["14 AWG"]);
    // Twelve gauge is enlarged from fourteen, which carries the 15 A; so is its grounding, to no more than itself.
    expect(plain.each[1]).toBe("12 AWG");
    expect(plain.each[2]).toBe("12 AWG");
    const small = grounding({ "power.breaker": "15 A", ...circuit(cable("14 AWG")) });
    expect(small.least).toBe("14 AWG");
    // No breaker given: the largest the code permits, 30 A.
    const free = grounding(circuit(cable("14 AWG")));
    expect(free.least).toBe("14 AWG");
  });

  test("grows with a cable that drop enlarged, as its module says", () => {
    for (const [rating, size, material] of [
      [15, "8 AWG", "copper"],
      [30, "6 AWG", "copper"],
      [20, "4 AWG", "aluminium"],
    ] as const) {
      const { each, stage } = grounding({ "power.breaker": `${rating} A`, ...circuit(cable(size, material)) });
      const enough =
        conductorChoices({ material, ...WIRE }).find(({ ampacity = 0 }) => ampacity >= stage.conductorAmpacity)?.size ??
        "";
      const least = groundingConductor({
        overcurrentRating: rating as never,
        material,
        enlarged: { from: parseConductorSize(enough), to: parseConductorSize(size) },
      }).size;
      expect(each[0]).toBe(area(least) > area(size) ? size : least);
      expect(area(size)).toBeGreaterThan(area(enough));
    }
  });

  test("of a cable that drop did not enlarge is that of the breaker, or the cable where that is thinner", () => {
    // 5 hp at 230 V: 28 A by the table, 35 A to carry, 8 AWG copper by the 60 °C column.
    const large = (size: string, rating: number) =>
      grounding({ [`${MOTOR}.power`]: "5 hp", "power.breaker": `${rating} A`, ...circuit(cable(size)) }).each[0];
    const plain = (rating: number) =>
      groundingConductor({ overcurrentRating: rating as never, material: "copper" }).size;
    expect([large("8 AWG", 30), plain(30)]).toEqual(["10 AWG", "10 AWG"]);
    expect(large("12 AWG", 30)).toBe("12 AWG");
    expect(large("10 AWG", 15)).toBe("14 AWG");
    expect(plain(15)).toBe("14 AWG");
    // Enlarged from 8 AWG, and so in proportion.
    const least = groundingConductor({
      overcurrentRating: 30 as never,
      material: "copper",
      enlarged: { from: parseConductorSize("8 AWG"), to: parseConductorSize("4 AWG") },
    }).size;
    expect(large("4 AWG", 30)).toBe(least);
  });

  test("of the circuit is the thickest of its cables', wherever it stands", () => {
    for (const cables of [
      [cable("14 AWG"), cable("8 AWG"), cable("12 AWG")],
      [cable("8 AWG"), cable("14 AWG"), cable("12 AWG")],
      [cable("14 AWG"), cable("12 AWG"), cable("8 AWG")],
    ]) {
      const { each, least } = grounding({ "power.breaker": "15 A", ...circuit(...cables) });
      expect(area(least)).toBe(Math.max(...each.map(area)));
      expect(new Set(each).size).toBe(3);
    }
  });
});

describe("each source", () => {
  test("gives the motor its voltage less the circuit's drop, running and starting", () => {
    const stage = powerOf({ "power.sources[1].voltage": "230 V" });
    const { power, phase, voltage } = stage.motor;
    const typical = typicalMotor({ power, system: phase });
    stage.sources.forEach((source, i) => {
      const sourceVoltage = [240, 230][i] as Voltage;
      const running = voltageDrop({
        system: phase,
        sourceVoltage,
        nominalVoltage: sourceVoltage,
        current: stage.fullLoadCurrent,
        powerFactor: typical.powerFactor,
        segments: segments(stage),
      });
      expect(source.runningVoltage).toBe(running.state === "carried" ? running.loadVoltage : Number.NaN);
      const start = lockedRotorDrop({
        system: phase,
        sourceVoltage,
        segments: segments(stage),
        lockedRotorCurrent: stage.lockedRotorCurrent,
        lockedRotorPowerFactor: typical.lockedRotorPowerFactor,
        ratedVoltage: voltage,
      });
      expect(source.startingVoltage).toBe(start.motorVoltage);
      expect(source.voltage).toBe(sourceVoltage);
    });
    expect(stage.sources.map(({ name, kind, phase, receptacle }) => [name, kind, phase, receptacle])).toEqual([
      ["generator", "generator", "single-phase", "L14-30"],
      ["utility service, next year", "utility", "single-phase", null],
    ]);
  });

  test("that is a generator is checked by its module; a utility is not", () => {
    for (const [changes, surgePower, otherLoads] of [
      [{}, 11_500, []],
      [
        {
          "power.sources[0].surgePower": undefined,
          "power.sources[0].receptacle": undefined,
          "power.sources[0].otherLoad": "1,200 W",
        },
        9000,
        [{ power: 1200 as never }],
      ],
    ] as const) {
      const stage = powerOf(changes as Changes);
      const { power, phase, voltage } = stage.motor;
      const typical = typicalMotor({ power, system: phase });
      expect(stage.sources[0]?.generator).toEqual(
        generatorCheck({
          generator: {
            runningPower: 9000 as never,
            surgePower: surgePower as never,
            voltage: 240 as Voltage,
            system: phase,
          },
          motor: {
            system: phase,
            ratedVoltage: voltage,
            current: stage.fullLoadCurrent,
            powerFactor: typical.powerFactor,
            lockedRotorCurrent: stage.lockedRotorCurrent,
            lockedRotorPowerFactor: typical.lockedRotorPowerFactor,
          },
          segments: segments(stage),
          otherLoads,
          ...(surgePower === 9000 ? {} : { receptacle: "L14-30" }),
        }),
      );
      expect(stage.sources[1]?.generator).toBeNull();
    }
    // A utility that says its power stays a utility.
    expect(powerOf({ "power.sources[1].runningPower": "9,000 W" }).sources[1]?.generator).toBeNull();
  });
});
