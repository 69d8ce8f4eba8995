/** Laws that hold for every fitting: signs, limits, inverses, agreement of independent forms. */
import fc from "fast-check";
import {
  checkValveLoss,
  checkValveMinimumFlow,
  coefficientOfKv,
  coefficientOfLength,
  coefficientOfLoss,
  constrictionFlow,
  contractionByJet,
  cvOfKv,
  dischargeCoefficient,
  entranceCoefficient,
  equivalentLength,
  exitCoefficient,
  gradualContraction,
  gradualExpansion,
  hoseFlow,
  insertBores,
  insertFittingCoefficient,
  kvOfCoefficient,
  kvOfCv,
  lengthForC,
  minorLoss,
  nozzleFlow,
  orificeFlow,
  outletFlow,
  outletPressure,
  ratedLoss,
  reducedPortCoefficient,
  requiredKv,
  suddenContraction,
  suddenExpansion,
  teeCoefficients,
  threeKCoefficient,
  threeKFittings,
  trajectoryVelocity,
  twoKCoefficient,
  twoKFittings,
  valveFlow,
  valveLoss,
  velocityCoefficient,
} from "risingmain/fittings";
import { darcyWeisbachLoss } from "risingmain/pipe";
import type {
  AbsolutePressure,
  Density,
  GaugePressure,
  KinematicViscosity,
  Length,
  PressureDifference,
  VolumeFlow,
} from "risingmain/units";
import { describe, expect, test } from "vitest";

const GRAVITY = 9.80665;
const within = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const flow = within(1e-5, 0.01) as fc.Arbitrary<VolumeFlow>;
const bore = within(0.01, 0.5) as fc.Arbitrary<Length>;
const viscosity = 1.3e-6 as KinematicViscosity;
const density = 999.1 as Density;
const near = (got: number, want: number, relative = 1e-12): void => {
  expect(Math.abs(got - want), `${got} for ${want}`).toBeLessThanOrEqual(relative * Math.abs(want));
};

describe("coefficients", () => {
  test("of the two-K and three-K methods are positive and fall with Reynolds number and size", () => {
    const two = fc.constantFrom(...Object.values(twoKFittings));
    const three = fc.constantFrom(...Object.values(threeKFittings));
    fc.assert(
      fc.property(two, three, within(1, 1e7), within(1.01, 10), bore, (k2, k3, reynolds, more, insideDiameter) => {
        const a = twoKCoefficient({ constants: k2, reynolds, insideDiameter });
        const faster = twoKCoefficient({ constants: k2, reynolds: reynolds * more, insideDiameter });
        const wider = twoKCoefficient({ constants: k2, reynolds, insideDiameter: (insideDiameter * more) as Length });
        expect(a).toBeGreaterThan(0);
        expect(faster).toBeLessThan(a);
        expect(wider).toBeLessThanOrEqual(a);
        const b = threeKCoefficient({ constants: k3, reynolds, nominalSize: insideDiameter });
        const larger = threeKCoefficient({ constants: k3, reynolds, nominalSize: (insideDiameter * more) as Length });
        expect(b).toBeGreaterThan(0);
        expect(larger).toBeLessThanOrEqual(b);
      }),
    );
  });

  test("in slow flow lose head in proportion to flow, as laminar flow must", () => {
    const constants = twoKFittings["elbow 90 standard screwed"];
    const loss = (reynolds: number): number =>
      twoKCoefficient({ constants, reynolds, insideDiameter: 0.025 as Length }) * reynolds ** 2;
    near(loss(2e-3) / loss(1e-3), 2, 1e-5);
  });

  test("from a loss and back, from a length and back, from Kv and back", () => {
    fc.assert(
      fc.property(
        within(0.01, 100),
        flow,
        bore,
        within(0.008, 0.1),
        (coefficient, q, insideDiameter, frictionFactor) => {
          const headLoss = minorLoss({ coefficient, flow: q, insideDiameter });
          near(coefficientOfLoss({ headLoss, flow: q, insideDiameter }), coefficient);
          const length = equivalentLength({ coefficient, insideDiameter, frictionFactor });
          near(coefficientOfLength({ length, insideDiameter, frictionFactor }), coefficient);
          const Kv = kvOfCoefficient({ coefficient, insideDiameter });
          near(coefficientOfKv({ Kv, insideDiameter }), coefficient);
          // The same loss by either road.
          const pressure = valveLoss({ Kv, flow: q });
          near(pressure / (999.1 * GRAVITY), headLoss, 1e-12);
        },
      ),
    );
  });

  test("a loss is odd in flow, bit for bit, and quadratic", () => {
    fc.assert(
      fc.property(within(1e-3, 100), flow, bore, (coefficient, q, insideDiameter) => {
        const h = minorLoss({ coefficient, flow: q, insideDiameter });
        expect(minorLoss({ coefficient, flow: -q as VolumeFlow, insideDiameter })).toBe(-h);
        near(minorLoss({ coefficient, flow: (2 * q) as VolumeFlow, insideDiameter }), 4 * h);
      }),
    );
  });
});

describe("changes of bore", () => {
  const change = fc.tuple(bore, within(0.01, 1)).map(([largeDiameter, share]) => ({
    smallDiameter: Math.max(1e-4, share * largeDiameter) as Length,
    largeDiameter,
  }));

  test("widening into a tank is an exit, narrowing out of one a sharp entrance, no change no loss", () => {
    const tank = { smallDiameter: 0.01 as Length, largeDiameter: 100 as Length };
    near(suddenExpansion(tank), exitCoefficient(), 1e-7);
    near(suddenContraction(tank), entranceCoefficient({ mouth: "flush" }), 1e-7);
    const none = { smallDiameter: 0.01 as Length, largeDiameter: 0.01 as Length };
    expect([suddenExpansion(none), suddenContraction(none), contractionByJet(1)]).toEqual([0, 0, 0]);
  });

  test("widening loses what momentum leaves: (V₁ − V₂)² / (2 g)", () => {
    fc.assert(
      fc.property(change, flow, (bores, q) => {
        const area = (d: number): number => (Math.PI / 4) * d * d;
        const [v1, v2] = [q / area(bores.smallDiameter), q / area(bores.largeDiameter)];
        const coefficient = suddenExpansion(bores);
        const loss = minorLoss({ coefficient, flow: q, insideDiameter: bores.smallDiameter });
        expect(Math.abs(loss - (v1 - v2) ** 2 / (2 * GRAVITY))).toBeLessThanOrEqual((1e-12 * v1 ** 2) / (2 * GRAVITY));
      }),
    );
  });

  test("a taper never loses more than a sudden change, and less the slimmer it is", () => {
    fc.assert(
      fc.property(change, within(0, Math.PI), within(0, 1), (bores, angle, share) => {
        const wide = { ...bores, angle };
        const slim = { ...bores, angle: share * angle };
        const eps = 1e-15;
        expect(gradualExpansion(wide)).toBeLessThanOrEqual(suddenExpansion(bores) + eps);
        expect(gradualContraction(wide)).toBeLessThanOrEqual(suddenContraction(bores) + eps);
        expect(gradualExpansion(slim)).toBeLessThanOrEqual(gradualExpansion(wide) + eps);
        // The two laws of a narrowing meet at 45° within 1 %.
        expect(gradualContraction(slim)).toBeLessThanOrEqual(1.01 * gradualContraction(wide) + eps);
        expect(reducedPortCoefficient({ ...wide, portCoefficient: 0 })).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test("a narrow port loses the same head reckoned in the pipe as in the port", () => {
    fc.assert(
      fc.property(change, within(0, Math.PI), within(0.01, 10), flow, (bores, angle, portCoefficient, q) => {
        const taper = { ...bores, angle };
        const inPort = portCoefficient + gradualContraction(taper) + gradualExpansion(taper);
        const inPipe = reducedPortCoefficient({ ...taper, portCoefficient });
        fc.pre(inPipe < 1e9);
        const port = minorLoss({ coefficient: inPort, flow: q, insideDiameter: bores.smallDiameter });
        near(minorLoss({ coefficient: inPipe, flow: q, insideDiameter: bores.largeDiameter }), port);
      }),
    );
  });

  // The printed table of the handbook, recalled; halfway between two of its lines the mean of them.
  test.each([
    [0, 0.5],
    [0.02, 0.28],
    [0.03, 0.26],
    [0.04, 0.24],
    [0.06, 0.15],
    [0.1, 0.09],
    [0.15, 0.04],
    [3, 0.04],
  ])("a mouth rounded to %f of the bore has %f", (rounding, coefficient) => {
    expect(entranceCoefficient({ mouth: "flush", rounding })).toBeCloseTo(coefficient, 12);
  });

  test("a rounder mouth loses less", () => {
    fc.assert(
      fc.property(within(0, 0.3), within(0, 0.3), (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(entranceCoefficient({ mouth: "flush", rounding: more })).toBeLessThanOrEqual(
          entranceCoefficient({ mouth: "flush", rounding: less }),
        );
      }),
    );
  });
});

describe("insert fittings", () => {
  test("a narrower bore loses more, one of the pipe's own bore only friction, an elbow more than a coupling", () => {
    fc.assert(
      fc.property(within(0.012, 0.06), within(0.3, 0.99), within(0.3, 0.99), flow, (D, a, b, q) => {
        const of = (share: number, form: "coupling" | "elbow 90" = "coupling") => {
          const bore = (share * D) as Length;
          return insertFittingCoefficient({ form, flow: q, insideDiameter: D as Length, bore, viscosity });
        };
        const [narrow, wide] = [of(Math.min(a, b)), of(Math.max(a, b))];
        expect(wide.coefficient).toBeLessThanOrEqual(narrow.coefficient ?? Infinity);
        const full = of(1);
        expect(full.coefficient).toBe(full.friction);
        expect(of(a, "elbow 90").coefficient).toBeGreaterThan(of(a).coefficient ?? Infinity);
        const parts = (narrow.contraction + (narrow.friction ?? 0) + (narrow.turn ?? 0) + narrow.expansion) as number;
        near(parts, narrow.coefficient ?? Number.NaN);
      }),
    );
  });

  test("a coupling loses what its narrowing, its bore and its widening lose one after another", () => {
    fc.assert(
      fc.property(within(0.012, 0.06), within(0.3, 0.99), flow, (D, share, q) => {
        const insideDiameter = D as Length;
        const bore = (share * D) as Length;
        const insert = insertFittingCoefficient({ form: "coupling", flow: q, insideDiameter, bore, viscosity });
        const bores = { smallDiameter: bore, largeDiameter: insideDiameter };
        const ends = minorLoss({
          coefficient: suddenContraction(bores) + suddenExpansion(bores),
          flow: q,
          insideDiameter: bore,
        });
        const along = darcyWeisbachLoss({
          flow: q,
          insideDiameter: bore,
          length: (3 * bore) as Length,
          roughness: 0 as Length,
          viscosity,
        });
        const loss = minorLoss({ coefficient: insert.coefficient ?? Number.NaN, flow: q, insideDiameter });
        near(loss, ends + along.headLoss, 1e-11);
      }),
    );
  });

  test("the usual bore is that of the table at its sizes, and the mean share halfway between two", () => {
    const usual = (inches: number): number =>
      insertFittingCoefficient({
        form: "coupling",
        flow: 1e-4 as VolumeFlow,
        insideDiameter: (inches * 0.0254) as Length,
        viscosity,
      }).bore / 0.0254;
    for (const [i, [nominal, pipe, insert]] of insertBores.entries()) {
      expect(usual(pipe), nominal).toBeCloseTo(insert, 12);
      const next = insertBores[i + 1];
      if (next === undefined) continue;
      const middle = (pipe + next[1]) / 2;
      expect(usual(middle), nominal).toBeCloseTo((middle * (insert / pipe + next[2] / next[1])) / 2, 12);
    }
  });

  test("the usual bore lies within the pipe, grows with it, and is said to be common practice", () => {
    let before = 0;
    for (let D = 0.011; D < 0.07; D += 0.0003) {
      const insert = insertFittingCoefficient({
        form: "coupling",
        flow: 1e-4 as VolumeFlow,
        insideDiameter: D as Length,
        viscosity,
      });
      expect(insert.bore).toBeLessThan(D);
      expect(insert.bore).toBeGreaterThan(before);
      expect(insert.boreBasis).toBe("common practice");
      before = insert.bore;
    }
  });
});

describe("valves", () => {
  test("Cv and Kv, loss and flow, are each other's inverse", () => {
    fc.assert(
      fc.property(within(1, 1e4), flow, within(0.5, 2), (Kv, q, relativeDensity) => {
        near(kvOfCv(cvOfKv(Kv)), Kv, 1e-15 * 4);
        const pressureLoss = valveLoss({ Kv, flow: q, relativeDensity });
        near(valveFlow({ Kv, pressureLoss, relativeDensity }), q);
        const back = -pressureLoss as PressureDifference;
        near(valveFlow({ Kv, pressureLoss: back, relativeDensity }), -q);
      }),
    );
  });

  test("a valve of the Kv required passes the flow; a choked one needs more; so does one between reducers", () => {
    const pressures = fc.tuple(within(2e5, 2e6), within(0.01, 0.9), within(0.3, 0.95));
    fc.assert(
      fc.property(flow, pressures, within(0.3, 1), (q, [p1, share, recoveryFactor], narrow) => {
        const input = {
          flow: q,
          inletPressure: p1 as AbsolutePressure,
          outletPressure: (share * p1) as AbsolutePressure,
          density,
          vapourPressure: 2339 as AbsolutePressure,
          recoveryFactor,
        };
        const sized = requiredKv(input);
        if (sized.state !== "sized") throw new Error(sized.state);
        const pressureLoss = ((1 - share) * p1) as PressureDifference;
        const through = valveFlow({ Kv: sized.Kv, pressureLoss });
        if (sized.choked) expect(through).toBeGreaterThanOrEqual(q * (1 - 1e-12));
        else near(through, q, 1e-11);
        const small = requiredKv({ ...input, valveSize: (narrow * 0.1) as Length, pipeInsideDiameter: 0.1 as Length });
        if (small.state === "sized") expect(small.Kv).toBeGreaterThanOrEqual(sized.Kv);
      }),
    );
  });

  test("liquid at a quarter of its critical pressure chokes at F_L² (P₁ − 0.82 P_v)", () => {
    const sized = requiredKv({
      flow: 1e-3 as VolumeFlow,
      inletPressure: 9e6 as AbsolutePressure,
      outletPressure: 1e6 as AbsolutePressure,
      density,
      vapourPressure: 5e6 as AbsolutePressure,
      criticalPressure: 20e6 as AbsolutePressure,
      recoveryFactor: 0.9,
    });
    if (sized.state !== "sized") throw new Error(sized.state);
    near(sized.chokingDifference, 0.81 * (9e6 - 0.82 * 5e6), 1e-12);
    expect(sized.choked).toBe(true);
  });

  test("a check valve is shut, then part open at its cracking head, then open; its loss never falls with flow", () => {
    const valve = fc.record({
      insideDiameter: bore,
      coefficient: within(0.5, 20),
      crackingPressure: within(0, 2e4) as fc.Arbitrary<PressureDifference>,
      density: fc.constant(density),
      minimumFlow: within(0, 0.01) as fc.Arbitrary<VolumeFlow>,
    });
    fc.assert(
      fc.property(valve, flow, flow, (given, a, b) => {
        const at = (q: number) => checkValveLoss({ ...given, flow: q as VolumeFlow });
        const [less, more] = [at(Math.min(a, b)), at(Math.max(a, b))];
        expect(more.headLoss).toBeGreaterThanOrEqual(less.headLoss * (1 - 1e-15));
        expect(less.headLoss).toBeGreaterThanOrEqual(less.crackingHead * (1 - 1e-12));
        expect(at(-a)).toMatchObject({ state: "shut", headLoss: 0 });
        expect(at(0).state).toBe("shut");
        // No jump where it comes fully open; at half that flow a quarter of the way from the cracking head.
        const q = less.minimumFlow;
        if (q <= 1e-9) return;
        near(at(q * (1 - 1e-9)).headLoss, at(q).headLoss, 1e-7);
        const rise = at(q).headLoss - less.crackingHead;
        const scale = at(q).headLoss;
        expect(Math.abs(at(q / 2).headLoss - less.crackingHead - rise / 4)).toBeLessThanOrEqual(1e-12 * scale);
      }),
    );
  });

  test("a check valve of a wider bore wants more flow to stay open", () => {
    fc.assert(
      fc.property(bore, (insideDiameter) => {
        const small = checkValveMinimumFlow({ kind: "swing", insideDiameter, density });
        const large = checkValveMinimumFlow({ kind: "swing", insideDiameter: (2 * insideDiameter) as Length, density });
        near(large, 4 * small);
      }),
    );
  });

  test("a rated loss goes through its rated point, is odd, and linear or quadratic as asked", () => {
    fc.assert(
      fc.property(flow, within(1, 1e5), within(0.1, 3), (ratedFlow, rated, share) => {
        const at = (q: number, exponent: number): number =>
          ratedLoss({ ratedFlow, ratedLoss: rated as PressureDifference, flow: q as VolumeFlow, exponent })
            .pressureLoss;
        expect(at(ratedFlow, 2)).toBe(rated);
        near(at(share * ratedFlow, 1), share * rated, 1e-12);
        near(at(share * ratedFlow, 2), share * share * rated, 1e-12);
        expect(at(-share * ratedFlow, 2)).toBe(-at(share * ratedFlow, 2));
      }),
    );
  });
});

describe("tees", () => {
  test("nothing in the branch leaves the run without loss; the energy lost in all is never negative when flow joins or divides evenly", () => {
    for (const flowPattern of ["dividing", "joining"] as const) {
      for (const angle of [30, 45, 60, 90] as const) {
        const tee = { flowPattern, angle, combinedFlow: 0.01 as VolumeFlow, runDiameter: 0.1 as Length };
        const straight = teeCoefficients({ ...tee, branchDiameter: 0.1 as Length, branchFlow: 0 as VolumeFlow });
        expect(straight.run).toBeCloseTo(0, 12);
        for (const share of [0.3, 0.5, 0.7]) {
          const branchFlow = (share * tee.combinedFlow) as VolumeFlow;
          const { branch, run } = teeCoefficients({ ...tee, branchDiameter: 0.1 as Length, branchFlow });
          expect(share * branch + (1 - share) * run, `${flowPattern} ${angle} ${share}`).toBeGreaterThan(0);
        }
      }
    }
  });
});

describe("outlets", () => {
  test("an orifice, its coefficient and its jet agree", () => {
    fc.assert(
      fc.property(bore, within(0.1, 100), within(0.1, 1), within(0.1, 5), (diameter, h, coefficient, drop) => {
        const head = h as Length;
        const q = orificeFlow({ diameter, head, dischargeCoefficient: coefficient });
        near(dischargeCoefficient({ flow: q, diameter, head }), coefficient);
        // A jet of velocity coefficient 1 flies 2 √(y H) while it falls y.
        const distance = (2 * Math.sqrt(drop * h)) as Length;
        near(velocityCoefficient({ distance, drop: drop as Length, head }), 1);
        near(trajectoryVelocity({ distance, drop: drop as Length }), Math.sqrt(2 * GRAVITY * h));
      }),
    );
  });

  test("a nozzle is an orifice under the same head; on a wide pipe the approach does not count", () => {
    fc.assert(
      fc.property(within(0.002, 0.05), within(1e3, 1e6), within(0.5, 1), (d, p, coefficient) => {
        const diameter = d as Length;
        const tip = { diameter, pressure: p as GaugePressure, dischargeCoefficient: coefficient, density };
        const head = (p / (density * GRAVITY)) as Length;
        near(nozzleFlow(tip), orificeFlow({ diameter, head, dischargeCoefficient: coefficient }));
        near(nozzleFlow({ ...tip, pipeDiameter: 10 as Length }), nozzleFlow(tip), 1e-8);
        expect(nozzleFlow({ ...tip, pipeDiameter: (1.2 * d) as Length })).toBeGreaterThan(nozzleFlow(tip));
        const meter = {
          boreDiameter: diameter,
          pipeDiameter: 10 as Length,
          density,
          dischargeCoefficient: coefficient,
        };
        near(constrictionFlow({ ...meter, pressureDifference: p as PressureDifference }), nozzleFlow(tip), 1e-8);
      }),
    );
  });

  test("the flow of a hose balances its pressure", () => {
    const hose = fc.record({
      pressure: within(1e3, 1e6) as fc.Arbitrary<GaugePressure>,
      insideDiameter: within(0.01, 0.05) as fc.Arbitrary<Length>,
      length: within(1, 200) as fc.Arbitrary<Length>,
      roughness: within(0, 1e-4) as fc.Arbitrary<Length>,
      rise: within(-10, 20) as fc.Arbitrary<Length>,
      coefficient: within(0, 20),
      viscosity: fc.constant(viscosity),
      density: fc.constant(density),
    });
    fc.assert(
      fc.property(hose, within(0.2, 1), (given, share) => {
        const nozzleDiameter = (share * given.insideDiameter) as Length;
        const result = hoseFlow({ ...given, nozzleDiameter });
        const head = given.pressure / (density * GRAVITY) - given.rise;
        if (result.state === "no flow") {
          expect(head).toBeLessThanOrEqual(1e-9);
          return;
        }
        const friction = darcyWeisbachLoss({ ...given, flow: result.flow }).headLoss;
        const velocityHead = (result.flow / ((Math.PI / 4) * given.insideDiameter ** 2)) ** 2 / (2 * GRAVITY);
        near(friction + (given.coefficient + share ** -4 - 1) * velocityHead, head, 1e-9);
        near(result.headLoss, friction + given.coefficient * velocityHead, 1e-12);
      }),
    );
  });

  test("an outlet gives its rated flow at its rated pressure, twice it at four times", () => {
    fc.assert(
      fc.property(flow, within(1e3, 1e6), within(0.01, 100), (ratedFlow, p, share) => {
        const rated = { ratedFlow, ratedPressure: p as GaugePressure };
        near(outletFlow({ ...rated, pressure: (4 * p) as GaugePressure }), 2 * ratedFlow);
        const pressure = (share * p) as GaugePressure;
        near(outletPressure({ ...rated, flow: outletFlow({ ...rated, pressure }) }), pressure);
      }),
    );
  });

  test("a printed length goes to another C and back", () => {
    fc.assert(
      fc.property(within(0.1, 100), within(60, 160), within(60, 160), (length, printedC, C) => {
        const other = lengthForC({ length: length as Length, printedC, C });
        near(lengthForC({ length: other, printedC: C, C: printedC }), length);
      }),
    );
  });
});
