/** Both sides of every limit: what is accepted, what is refused and how, and where a method leaves its published range. */
import {
  checkValveLoss,
  constrictionFlow,
  copperTubeLengths,
  entranceCoefficient,
  type FittingsLossInput,
  fittingsLoss,
  fullyTurbulentFactor,
  gradualContraction,
  gradualExpansion,
  hoseFlow,
  insertFittingCoefficient,
  lengthOverDiameterCoefficient,
  minorLoss,
  nozzleFlow,
  printedLength,
  type RunFitting,
  ratedLoss,
  requiredKv,
  suddenExpansion,
  teeCoefficients,
} from "risingmain/fittings";
import {
  type AbsolutePressure,
  type Density,
  type GaugePressure,
  type KinematicViscosity,
  type Length,
  millimetres,
  type PressureDifference,
  type VolumeFlow,
} from "risingmain/units";
import { describe, expect, test } from "vitest";
import { refused, refusedWith } from "../refused.ts";

const GRAVITY = 9.80665;
/** Near 1e-6, and a power of two: the Reynolds number of `flowAt` is then met to the bit. */
const viscosity = (2 ** -20) as KinematicViscosity;
const density = 1000 as Density;
const bore = 0.05 as Length;
/** The flow of a Reynolds number in that bore. */
const flowAt = (reynolds: number): VolumeFlow => ((reynolds * Math.PI * bore * viscosity) / 4) as VolumeFlow;

const hose = {
  pressure: 2e5 as GaugePressure,
  insideDiameter: bore,
  length: 30 as Length,
  roughness: 0 as Length,
  viscosity,
  density,
};
const valve = {
  flow: 1e-3 as VolumeFlow,
  inletPressure: 5e5 as AbsolutePressure,
  outletPressure: 4e5 as AbsolutePressure,
  density,
  vapourPressure: 2339 as AbsolutePressure,
  recoveryFactor: 0.9,
};
const tip = {
  diameter: bore,
  pressure: 2e5 as GaugePressure,
  dischargeCoefficient: 0.9,
  density,
};
const meter = {
  boreDiameter: 0.02,
  pipeDiameter: bore,
  pressureDifference: 1e4,
  density,
  dischargeCoefficient: 0.6,
};
const run = (fittings: readonly RunFitting[], flow = flowAt(5e4)): FittingsLossInput => ({
  flow,
  insideDiameter: bore,
  roughness: 0 as Length,
  viscosity,
  fittings,
});

// What is changed in a good call; the last value accepted, one just beyond it, and what the refusal says.
test.each([
  [
    "a narrow side as wide as the wide one",
    suddenExpansion,
    { largeDiameter: bore },
    "smallDiameter",
    bore,
    0.0501,
    "at most the large diameter",
  ],
  ["0.99 of the pipe", constrictionFlow, meter, "boreDiameter", 0.99 * bore, 0.0496, "0.99 of the pipe"],
  ["a pipe a hundredth wider than the tip", nozzleFlow, tip, "pipeDiameter", 1.01 * bore, 0.0504, "wider than the tip"],
  ["a grain of half the hose", hoseFlow, hose, "roughness", bore / 2, 0.0251, "half the inside diameter"],
  ["a grain of half the bore", fittingsLoss, run([]), "roughness", bore / 2, 0.0251, "half the inside diameter"],
  [
    "a grain of half the bore, all rough",
    fullyTurbulentFactor,
    { insideDiameter: bore },
    "roughness",
    bore / 2,
    0.0251,
    "half the inside diameter",
  ],
  [
    "a Reynolds number of 1e12 in an insert",
    insertFittingCoefficient,
    { form: "coupling", insideDiameter: bore, bore, viscosity: 2 ** -29 },
    "flow",
    (1e12 * Math.PI * bore * 2 ** -29) / 4,
    74,
    "1e12",
  ],
  ["an outlet 1 Pa under the inlet", requiredKv, valve, "outletPressure", 499_999, 499_999.5, "at least 1 Pa under"],
  [
    "a vapour pressure just under the critical one",
    requiredKv,
    { ...valve, criticalPressure: 1e5 },
    "vapourPressure",
    99_999,
    1e5,
    "under the critical",
  ],
  [
    "a valve of the pipe's own size",
    requiredKv,
    { ...valve, pipeInsideDiameter: bore },
    "valveSize",
    bore,
    0.0501,
    "at most the inside diameter of the pipe",
  ],
] as const)("%s is the last accepted", (_, call, good, field, last, beyond, says) => {
  const given = (value: number) => () => (call as (input: object) => unknown)({ ...good, [field]: value });
  expect(refused(given(last))).toBeUndefined();
  expect(refusedWith(given(beyond))).toEqual([field, beyond]);
  expect(given(beyond)).toThrow(says);
});

describe("lengths as printed", () => {
  const asked = (fitting: string, nominal: string) => () =>
    printedLength({ table: copperTubeLengths, fitting, nominal });

  test("a fitting that is not in the table is refused with those that are", () => {
    expect(refusedWith(asked("elbow 91", "1 in"))).toEqual(["fitting", "elbow 91"]);
    expect(asked("elbow 91", "1 in")).toThrow(/one of "elbow 45 wrought", .*, "gate valve", got/);
  });

  test("a size without a figure is refused with those that have one", () => {
    for (const nominal of ["1/2 in", "7 in"]) {
      expect(refusedWith(asked("globe valve", nominal))).toEqual(["nominal", nominal]);
      expect(asked("globe valve", nominal)).toThrow(/one of "1-1\/4 in", "1-1\/2 in", "2 in", got/);
    }
  });
});

describe("a check valve", () => {
  test("is open from the flow that holds it open", () => {
    const given = { insideDiameter: bore, coefficient: 2, crackingPressure: 0 as PressureDifference, density };
    const at = (flow: number) =>
      checkValveLoss({ ...given, flow: flow as VolumeFlow, minimumFlow: 1e-3 as VolumeFlow }).state;
    expect([at(0), at(0.999e-3), at(1e-3)]).toEqual(["shut", "part open", "open"]);
  });

  test("in a run that rests is no backflow", () => {
    const check: RunFitting = { kind: "check valve", coefficient: 2, crackingPressure: 0 as PressureDifference };
    expect(fittingsLoss(run([check], 0 as VolumeFlow)).headLoss).toBe(0);
  });
});

describe("ranges", () => {
  test("a rated point reaches from a quarter of its flow up to it", () => {
    const inside = (share: number) =>
      ratedLoss({ ratedFlow: 1 as VolumeFlow, ratedLoss: 1e4 as PressureDifference, flow: share as VolumeFlow })
        .insideRange;
    expect([0.249, 0.25, 1, 1.001].map(inside)).toEqual([false, true, true, false]);
  });

  test("usual insert bores are for pipe of 0.48 to 2.1 in; a measured one is for any", () => {
    const inside = (inches: number, measured = false) =>
      insertFittingCoefficient({
        form: "coupling",
        flow: 1e-4 as VolumeFlow,
        insideDiameter: (inches * 0.0254) as Length,
        viscosity,
        ...(measured && { bore: (inches * 0.02) as Length }),
      }).insideRange;
    expect([0.479, 0.48, 2.1, 2.101].map((inches) => inside(inches))).toEqual([false, true, true, false]);
    expect([0.4, 3].map((inches) => inside(inches, true))).toEqual([true, true]);
  });

  test("beyond the table of insert bores the share of its end holds", () => {
    const share = (insideDiameter: number) => {
      const flow = 1e-4 as VolumeFlow;
      const usual = { form: "coupling", flow, insideDiameter: insideDiameter as Length, viscosity } as const;
      return insertFittingCoefficient(usual).bore / insideDiameter;
    };
    // 0.46 in of 0.622 in, and 1.8 in of 2.067 in.
    expect(share(0.01)).toBeCloseTo(0.46 / 0.622, 12);
    expect(share(0.06)).toBeCloseTo(1.8 / 2.067, 12);
  });

  test("an insert rests below a Reynolds number of 1e-9 in its bore", () => {
    const at = (reynolds: number) =>
      insertFittingCoefficient({ form: "coupling", flow: flowAt(reynolds), insideDiameter: bore, bore, viscosity });
    expect(at(0.999e-9)).toMatchObject({ coefficient: null, friction: null, turn: null });
    // Laminar: 64/Re over three bores, and no step.
    expect(at(1e-9).coefficient).toBeCloseTo((3 * 64) / 1e-9, 0);
  });

  test("a foot valve's figure is for Re 10 000 and more, and for rest", () => {
    const inside = (reynolds: number) =>
      fittingsLoss(run([{ kind: "named", fitting: "foot valve" }], flowAt(reynolds))).insideRange;
    expect([0, 0.999e-6, 1e-6, 9999, 10_000].map(inside)).toEqual([true, true, false, false, true]);
  });

  test("a branch of a tee over twice as fast as the whole is beyond the source's constants", () => {
    const inside = (branchFlow: number, angle: 60 | 90, flowPattern: "dividing" | "joining") =>
      teeCoefficients({
        flowPattern,
        angle,
        combinedFlow: 1 as VolumeFlow,
        branchFlow: branchFlow as VolumeFlow,
        runDiameter: 1 as Length,
        // A quarter of the area: half the flow is twice as fast.
        branchDiameter: 0.5 as Length,
      }).insideRange;
    expect([0.5, 0.501].map((flow) => inside(flow, 90, "dividing"))).toEqual([true, false]);
    expect([inside(0.9, 60, "dividing"), inside(0.9, 90, "joining")]).toEqual([true, true]);
  });

  test("a run is inside only if all of its parts are", () => {
    const good: RunFitting = { kind: "coefficient", coefficient: 1 };
    const bad: RunFitting = { kind: "rated loss", ratedFlow: 1 as VolumeFlow, ratedLoss: 1e4 as PressureDifference };
    expect(fittingsLoss(run([good])).insideRange).toBe(true);
    expect(fittingsLoss(run([good, bad])).insideRange).toBe(false);
  });
});

describe("a tee by the table of its source", () => {
  const tee = (flowPattern: "dividing" | "joining", share: number, angle: 30 | 90, branch = 1) =>
    teeCoefficients({
      flowPattern,
      angle,
      combinedFlow: 1 as VolumeFlow,
      branchFlow: share as VolumeFlow,
      runDiameter: 1 as Length,
      branchDiameter: branch as Length,
    });
  /** Its own form for a branch that leaves at an angle, but for the constant. */
  const leaving = (v: number) => 1 + v * v - 2 * v * Math.cos(Math.PI / 6);

  // Constants of crane-410, from memory, each on the last flow of its line and the first of the next.
  test.each([
    [1, 0.6, 1 - 0.6 * 0.6],
    [1, 0.601, 0.6],
    [0.5, 0.4, 1.1 - 0.7 * 0.4],
    [0.5, 0.401, 0.85],
  ])("dividing at 30°, branch %f of the run's bore, share %f of the flow: G = %f", (branch, share, G) => {
    expect(tee("dividing", share, 30, branch).branch).toBeCloseTo(G * leaving(share / branch ** 2), 12);
  });

  test.each([
    [1, 0.4, 0.9 * (1 - 0.4)],
    [1, 0.401, 0.55],
    [0.5, 0.4, 1],
  ])("joining at 90°, branch %f, share %f: C = %f", (branch, share, C) => {
    const v = share / branch ** 2;
    expect(tee("joining", share, 90, branch).branch).toBeCloseTo(C * (1 + v * v - 2 * (1 - share) ** 2), 12);
  });

  test.each([
    [1, 0.4, 2 * (2 * 0.4 - 1)],
    [1, 0.6, 0.3 * (2 * 0.6 - 1)],
    [0.5, 0.4, 0.4],
  ])("the run past a branch %f, share %f: M = %f", (branch, share, M) => {
    expect(tee("dividing", share, 90, branch).run).toBeCloseTo(M * share * share, 12);
  });

  test("a square branch up to two thirds of the run's bore loses its velocity head, a wider one three tenths", () => {
    // H of 1 + H v²; v is the share over the area.
    const H = (branch: number) => (tee("dividing", 0.1, 90, branch).branch - 1) / (0.1 / branch ** 2) ** 2;
    expect([H(0.5), H(2 / 3), H(0.67), H(1)].map((h) => Number(h.toFixed(9)))).toEqual([1, 1, 0.3, 0.3]);
  });
});

describe("tapers", () => {
  test("the rule for slim ones reaches to 45°, which is slim", () => {
    const change = { smallDiameter: bore, largeDiameter: (2 * bore) as Length, angle: Math.PI / 4 };
    // Areas are 1 to 4; the sine is that of half the angle.
    expect(gradualExpansion(change)).toBeCloseTo(2.6 * Math.sin(Math.PI / 8) * 0.75 ** 2, 12);
    expect(gradualContraction(change)).toBeCloseTo(0.8 * Math.sin(Math.PI / 8) * 0.75, 12);
  });
});

test("a poppet foot valve of 420 diameters: K is 420 times the printed factor of each size", () => {
  // Fully turbulent factors of clean steel, crane-410, from memory: 0.023 in 1 in, 0.019 in 2 in, 0.017 in 4 in pipe.
  for (const [inches, factor] of [
    [1.049, 0.023],
    [2.067, 0.019],
    [4.026, 0.017],
  ] as const) {
    const insideDiameter = (inches * 0.0254) as Length;
    const K = lengthOverDiameterCoefficient({ lengthOverDiameter: 420, insideDiameter });
    // One in the last place printed.
    expect(Math.abs(K / 420 - factor)).toBeLessThan(0.001);
  }
});

describe("a hose", () => {
  test("that starts too low for its rise says how much is missing; just enough lifts it to the end, no more", () => {
    // 30 m of rise ask for 30 ρ g.
    const short = (given: object) => {
      const result = hoseFlow({ ...hose, ...given });
      return result.state === "no flow" ? result.short : result.state;
    };
    expect(short({ pressure: 2e5, rise: 30 })).toBeCloseTo(30 * 1000 * GRAVITY - 2e5, 6);
    expect(short({ pressure: 0 })).toBe(0);
    expect(short({ pressure: 1 })).toBe("flowing");
  });

  test("ends in its nozzle: the nozzle alone, at the pressure before it, passes the same", () => {
    for (const dischargeCoefficient of [0.9, 1]) {
      const nozzle = { nozzleDiameter: 0.02 as Length, dischargeCoefficient };
      const result = hoseFlow({ ...hose, ...nozzle });
      if (result.state !== "flowing") expect.unreachable();
      const { nozzlePressure: pressure } = result;
      const alone = { diameter: nozzle.nozzleDiameter, dischargeCoefficient, density, pipeDiameter: bore };
      expect(nozzleFlow({ ...alone, pressure }) / result.flow).toBeCloseTo(1, 12);
    }
  });

  test("without length, fitting or nozzle holds nothing back, and is refused", () => {
    expect(refused(() => hoseFlow({ ...hose, length: 0 as Length }))).toBe("length");
    expect(refused(() => hoseFlow({ ...hose, length: 0 as Length, coefficient: 1 }))).toBeUndefined();
  });
});

describe("a valve to size", () => {
  test("is choked from its choking difference on", () => {
    const choked = (outletPressure: number) => {
      // Without vapour and recovery the difference is the inlet pressure itself.
      const perfect = { ...valve, vapourPressure: 0 as AbsolutePressure, recoveryFactor: 1 };
      const sized = requiredKv({ ...perfect, outletPressure: outletPressure as AbsolutePressure });
      return sized.state === "sized" && [sized.chokingDifference, sized.choked];
    };
    expect(choked(0)).toEqual([5e5, true]);
    expect(choked(1)).toEqual([5e5, false]);
  });

  test("in water that boils before it has no size", () => {
    expect(refused(() => requiredKv({ ...valve, vapourPressure: 6e5 as AbsolutePressure }))).toBe("vapourPressure");
  });

  test("between reducers needs both sizes, and one as wide as the pipe no more than the valve alone", () => {
    const sizes = (given: object) => requiredKv({ ...valve, ...given });
    expect(refused(() => sizes({ valveSize: 0.04 }))).toBe("pipeInsideDiameter");
    expect(refused(() => sizes({ pipeInsideDiameter: 0.04 }))).toBe("valveSize");
    expect(sizes({ valveSize: 0.04, pipeInsideDiameter: 0.04 })).toEqual(requiredKv(valve));
  });

  test("whose reducers alone lose the difference is too narrow", () => {
    // 1 L/s over 1 bar asks for a Kv of 3.6; ΣK = 1.5 (1 − (d/D)²)² near 1.5, lost = ΣK/0.0016 (Kv/d²)², d in mm.
    const state = (millimetre: number) =>
      requiredKv({ ...valve, valveSize: millimetres(millimetre), pipeInsideDiameter: 1 as Length }).state;
    const narrowest = Math.sqrt(3.6 * Math.sqrt(1.5 / 0.0016));
    expect([state(0.98 * narrowest), state(1.02 * narrowest)]).toEqual(["reducers too narrow", "sized"]);
  });
});

describe("the parts of a run", () => {
  const one = (fitting: RunFitting, flow?: VolumeFlow) => {
    const [part] = fittingsLoss(run([fitting], flow)).parts;
    if (part === undefined) expect.unreachable();
    return part;
  };

  test("have the name given, or that of their kind, the source of their method, and are inside their range", () => {
    const kinds: readonly (readonly [fitting: RunFitting, label: string, method: string])[] = [
      [{ kind: "named", fitting: "elbow 90" }, "elbow 90", "darby-1999"],
      [{ kind: "named", fitting: "foot valve" }, "foot valve", "crane-410"],
      [{ kind: "coefficient", coefficient: 1 }, "fitting", "given"],
      [{ kind: "equivalent length", length: 1 as Length }, "equivalent length", "given"],
      [{ kind: "insert", form: "coupling" }, "insert coupling", "common practice"],
      [{ kind: "insert", form: "coupling", bore: 0.04 as Length }, "insert coupling", "derived"],
      [{ kind: "bore change", to: 0.04 as Length }, "narrowing", "crane-410"],
      [{ kind: "bore change", to: 0.06 as Length }, "widening", "crane-410"],
      [{ kind: "flow coefficient", Kv: 10 }, "valve", "iec-60534-2-1"],
      [{ kind: "check valve", coefficient: 2, crackingPressure: 0 as PressureDifference }, "check valve", "derived"],
    ];
    for (const [fitting, label, method] of kinds) {
      expect(one(fitting)).toMatchObject({ label, method, insideRange: true });
      expect(one({ ...fitting, label: "by the gate" }).label).toBe("by the gate");
    }
  });

  test("have each the coefficient of one, whatever their count", () => {
    expect(one({ kind: "coefficient", coefficient: 3, count: 4 }).coefficient).toBeCloseTo(3, 12);
  });

  test("a valve of Kv 1 m³/h loses 1 bar to 1 m³/h, in head of cold water", () => {
    // 1e5 Pa of water of 999.1 kg/m³.
    const loss = one({ kind: "flow coefficient", Kv: 1 }, (1 / 3600) as VolumeFlow).headLoss;
    expect(loss).toBeCloseTo(1e5 / (999.1 * GRAVITY), 9);
  });

  test("an insert loses what its own coefficient says, of the bore measured or the usual one", () => {
    for (const given of [{ bore: 0.04 as Length }, {}]) {
      const insert = { form: "elbow 90", ...given } as const;
      const { coefficient } = insertFittingCoefficient({
        ...insert,
        flow: flowAt(5e4),
        insideDiameter: bore,
        viscosity,
      });
      if (coefficient === null) expect.unreachable();
      const alone = minorLoss({ coefficient, flow: flowAt(5e4), insideDiameter: bore });
      expect(one({ kind: "insert", ...insert }).headLoss).toBe(alone);
    }
  });
});

test("water rests below a Reynolds number of 1e-6", () => {
  const coefficient = (reynolds: number) =>
    fittingsLoss(run([{ kind: "coefficient", coefficient: 2 }], flowAt(reynolds))).coefficient;
  expect(coefficient(0.999e-6)).toBeNull();
  expect(coefficient(1e-6)).toBeCloseTo(2, 12);
});

test("a mouth rounded beyond the table has its last figure", () => {
  expect(entranceCoefficient({ mouth: "flush", rounding: 0.16 })).toBe(0.04);
});
