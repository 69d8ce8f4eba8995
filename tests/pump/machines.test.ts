import { readFileSync } from "node:fs";
import fc from "fast-check";
import {
  bestEfficiencyPoint,
  constantPressure,
  curveAtSpeed,
  curvesInParallel,
  curvesInSeries,
  curveTrimmed,
  dutyAtSpeed,
  fitPumpCurve,
  hydraulicPower,
  minimumFlow,
  npshRequiredAt,
  operatingPoint,
  type PumpCurve,
  pumpCurve,
  pumpDuty,
  pumpEfficiencyAt,
  pumpFlowAt,
  pumpHeadAt,
  pumpInputPowerAt,
  pumpingEnergy,
  pumpPower,
  pumpPowerAt,
  pumpTemperatureRise,
  runningCost,
  shutoffPressure,
  specificSpeed,
  speedFor,
  stagedCurve,
  wornCurve,
} from "risingmain/pump";
import type {
  Density,
  Duration,
  Frequency,
  Length,
  Power,
  Ratio,
  TemperatureDifference,
  Volume,
  VolumeFlow,
} from "risingmain/units";
import { describe, expect, test } from "vitest";
import { fallingCurves, number, systemOf, systems } from "./systems.ts";

interface Fit {
  readonly coefficients: readonly number[];
  readonly errors: readonly number[];
  readonly residuals: readonly number[];
}
const fixture = JSON.parse(readFileSync(new URL("../fixtures/pump.json", import.meta.url), "utf8")) as {
  readonly fits: readonly (Record<"level at shutoff" | "quadratic", Fit> & {
    readonly flow: readonly VolumeFlow[];
    readonly head: readonly Length[];
  })[];
};

const share = (a: number, b: number): number => Math.abs(a / b - 1);
const at = (curve: PumpCurve, part: number): VolumeFlow =>
  Math.min(part * curve.runoutFlow, curve.runoutFlow) as VolumeFlow;
const ratios = number(0.55, 1.8) as unknown as fc.Arbitrary<Ratio>;

describe("speed", () => {
  test("moves every point to its similar point, and back again", () => {
    fc.assert(
      fc.property(fallingCurves, ratios, number(0, 1), (curve, speedRatio, part) => {
        const flow = at(curve, part);
        const power = 1000 as Power;
        const duty = dutyAtSpeed({ flow, head: pumpHeadAt(curve, flow), power, speedRatio });
        const fast = curveAtSpeed(curve, speedRatio);
        const moved = Math.min(duty.flow, fast.runoutFlow) as VolumeFlow;
        expect(share(pumpHeadAt(fast, moved), duty.head)).toBeLessThan(1e-9);
        expect(duty.power).toBeCloseTo(1000 * speedRatio ** 3, 6);
        const back = curveAtSpeed(fast, (1 / speedRatio) as Ratio);
        expect(share(pumpHeadAt(back, at(back, part)), pumpHeadAt(curve, flow))).toBeLessThan(1e-9);
        expect(Math.abs((pumpEfficiencyAt(fast, moved) ?? 0) - (pumpEfficiencyAt(curve, flow) ?? 0))).toBeLessThan(
          1e-9,
        );
      }),
    );
  });

  test("found for a point puts the curve through it", () => {
    fc.assert(
      fc.property(fallingCurves, ratios, number(0, 1), (curve, speedRatio, part) => {
        const fast = curveAtSpeed(curve, speedRatio);
        const flow = at(fast, part);
        const found = speedFor({ curve, flow, head: pumpHeadAt(fast, flow), greatestSpeed: 2 as Ratio });
        expect(found.state).toBe("runs");
        if (found.state === "runs") expect(share(found.speed, speedRatio)).toBeLessThan(1e-9);
      }),
    );
  });

  test("too little, past the curve, and just right", () => {
    const curve = pumpCurve({
      points: [
        { flow: 0 as VolumeFlow, head: 40 as Length },
        { flow: 0.01 as VolumeFlow, head: 20 as Length },
      ],
    });
    const of = (flow: number, head: number) => speedFor({ curve, flow: flow as VolumeFlow, head: head as Length });
    expect(of(0.005, 31)).toMatchObject({ state: "too little", short: 1 });
    expect(of(0.011, 10)).toStrictEqual({ state: "too little", short: null });
    expect(of(0.009, 1).state).toBe("past the curve");
    expect(of(0, 10)).toMatchObject({ state: "runs", speed: 0.5 });
  });

  test("at constant pressure rises with flow, and so does power; the least is told apart", () => {
    fc.assert(
      fc.property(fallingCurves, number(0.3, 0.8), number(0, 0.5), (curve, lift, friction) => {
        const systemHead = systemOf(curve, { lift, friction, drawdown: 0, exponent: 1.85 });
        const flows = [0, 0.1, 0.2, 0.3].map((part) => at(curve, part));
        const { rows, speedAtNoFlow } = constantPressure({ curve, systemHead, flows, leastSpeed: 0.7 as Ratio });
        expect(share(speedAtNoFlow, Math.sqrt(lift))).toBeLessThan(1e-12);
        let before = 0;
        for (const { at: row, belowLeast } of rows) {
          if (row.state !== "runs") return;
          expect(row.speed).toBeGreaterThanOrEqual(before);
          expect(belowLeast).toBe(row.speed < 0.7);
          before = row.speed;
        }
      }),
    );
  });

  test("a trim follows the diameter, and says when it is too deep to trust", () => {
    const curve = pumpCurve({
      points: [
        { flow: 0 as VolumeFlow, head: 40 as Length },
        { flow: 0.01 as VolumeFlow, head: 20 as Length },
      ],
    });
    expect(curveTrimmed(curve, 0.8 as Ratio).insideRange).toBe(true);
    expect(curveTrimmed(curve, 0.79 as Ratio).insideRange).toBe(false);
    expect(curveTrimmed(curve, 0.9 as Ratio).curve.shutoffHead).toBeCloseTo(32.4, 12);
    expect(() => curveTrimmed(curve, 1.1 as Ratio)).toThrow(/diameterRatio/);
  });
});

test("power, required suction and efficiency go along with speed, stages, sets and wear", () => {
  const curve = pumpCurve({
    points: [
      { flow: 0 as VolumeFlow, head: 40 as Length, inputPower: 300 as Power, npshRequired: 2 as Length },
      {
        flow: 0.004 as VolumeFlow,
        head: 20 as Length,
        inputPower: 900 as Power,
        npshRequired: 3 as Length,
        efficiency: 0.6 as Ratio,
      },
    ],
  });
  const end = (of: PumpCurve) =>
    [pumpInputPowerAt(of, of.runoutFlow), npshRequiredAt(of, of.runoutFlow), pumpEfficiencyAt(of, of.runoutFlow)].map(
      (value) => (value === null ? null : Number(value.toPrecision(12))),
    );
  expect(end(curve)).toStrictEqual([900, 3, 0.6]);
  expect(end(curveAtSpeed(curve, 0.5 as Ratio))).toStrictEqual([112.5, 0.75, 0.6]);
  expect(end(stagedCurve(curve, 3))).toStrictEqual([2700, 3, 0.6]);
  expect(end(curvesInParallel([curve, curve]))).toStrictEqual([1800, 3, 0.6]);
  expect(end(curvesInSeries([curve, curve]))).toStrictEqual([1800, 3, null]);
  expect(end(wornCurve(curve, { headLost: 0.1 as Ratio, flowLost: 0.2 as Ratio }))).toStrictEqual([900, 3, 0.432]);
});

describe("pumps together", () => {
  test("in series add their heads at every flow", () => {
    fc.assert(
      fc.property(fallingCurves, fallingCurves, number(0, 1), (a, b, part) => {
        const set = curvesInSeries([a, b]);
        const flow = at(set, part);
        expect(share(pumpHeadAt(set, flow), pumpHeadAt(a, flow) + pumpHeadAt(b, flow))).toBeLessThan(1e-9);
        expect(set.runoutFlow).toBe(Math.min(a.runoutFlow, b.runoutFlow));
      }),
    );
  });

  test("in series take a flow that two sheets give in different units as one", () => {
    const a = pumpCurve({
      points: [0, 0.001, 0.002].map((q) => ({ flow: q as VolumeFlow, head: (50 - 1e4 * q) as Length })),
    });
    const b = pumpCurve({
      points: [0, 0.001 * (1 + 2 ** -52), 0.002].map((q) => ({
        flow: q as VolumeFlow,
        head: (40 - 1e4 * q) as Length,
      })),
    });
    expect(curvesInSeries([a, b]).head.x).toStrictEqual([0, 0.001, 0.002]);
  });

  test("in parallel add their flows at every head, the weaker only below its shutoff", () => {
    fc.assert(
      fc.property(fallingCurves, number(0.7, 1), number(0.5, 2), number(0.02, 0.98), (a, weaker, larger, part) => {
        const b = wornCurve(a, { headLost: (1 - weaker) as Ratio });
        const wide = curvesInParallel([a, scaledFlow(b, larger)]);
        const head = (wide.runoutHead + part * (a.shutoffHead - wide.runoutHead)) as Length;
        const flowOf = (curve: PumpCurve): number => {
          const found = pumpFlowAt(curve, head);
          return found.state === "delivers" ? found.flow : 0;
        };
        // The accuracy its docstring states.
        expect(Math.abs(flowOf(wide) - flowOf(a) - flowOf(scaledFlow(b, larger)))).toBeLessThanOrEqual(
          1e-3 * wide.runoutFlow * (1 + 1e-9),
        );
      }),
    );
  });

  test("equal ones in parallel are exact, and deliver less than twice as much into a pipe", () => {
    fc.assert(
      fc.property(fallingCurves, systems, (curve, shares) => {
        const two = curvesInParallel([curve, curve]);
        expect(two.runoutFlow).toBe(2 * curve.runoutFlow);
        const systemHead = systemOf(curve, shares);
        const one = operatingPoint({ curve, systemHead });
        const both = operatingPoint({ curve: two, systemHead });
        if (one.state !== "running" || both.state !== "running") return;
        expect(both.flow).toBeGreaterThanOrEqual(one.flow * (1 - 1e-9));
        expect(both.flow).toBeLessThanOrEqual(2 * one.flow * (1 + 1e-9));
      }),
    );
  });

  test("stages are pumps in series", () => {
    fc.assert(
      fc.property(fallingCurves, fc.integer({ min: 1, max: 8 }), number(0, 1), (stage, stages, part) => {
        const pump = stagedCurve(stage, stages);
        const set = curvesInSeries(Array.from({ length: stages }, () => stage));
        expect(share(pumpHeadAt(pump, at(pump, part)), pumpHeadAt(set, at(set, part)))).toBeLessThan(1e-9);
      }),
    );
  });
});

function scaledFlow(curve: PumpCurve, times: number): PumpCurve {
  return pumpCurve({
    points: curve.head.x.map((x, i) => ({ flow: (x * times) as VolumeFlow, head: curve.head.y[i] as Length })),
  });
}

describe("a fitted curve", () => {
  test.each(fixture.fits.map((each, i) => [i, each] as const))("case %i: as a general least squares", (_, each) => {
    const points = each.flow.map((flow, i) => ({ flow, head: each.head[i] as Length }));
    for (const form of ["level at shutoff", "quadratic"] as const) {
      const wanted = each[form];
      const fit = fitPumpCurve({ points, form });
      const got = form === "quadratic" ? [fit.constant, fit.linear, fit.quadratic] : [fit.constant, fit.quadratic];
      const errors = fit.standardErrors ?? [];
      const gotErrors = form === "quadratic" ? errors : [errors[0], errors[2]];
      got.forEach((value, i) => {
        expect(share(value, wanted.coefficients[i] as number)).toBeLessThan(1e-9);
        expect(share(gotErrors[i] as number, wanted.errors[i] as number)).toBeLessThan(1e-8);
      });
      fit.residuals.forEach((residual, i) => {
        expect(Math.abs(residual - (wanted.residuals[i] as number))).toBeLessThan(1e-9);
        const flow = Math.min(points[i]?.flow ?? 0, fit.curve.runoutFlow) as VolumeFlow;
        expect(Math.abs((points[i]?.head ?? 0) - residual - pumpHeadAt(fit.curve, flow))).toBeLessThan(1e-9);
      });
    }
  });

  test("shows a part that rises", () => {
    const points = [0, 1, 2, 3, 4].map((q) => ({
      flow: (q / 1000) as VolumeFlow,
      head: (30 + 4 * q - 2 * q * q) as Length,
    }));
    const fit = fitPumpCurve({ points, form: "quadratic" });
    expect(fit.curve.shape).toBe("rising in part");
    expect(fit.curve.rising[0]?.toFlow).toBeCloseTo(0.001, 9);
    expect(fit.curve.rising[0]?.rise).toBeCloseTo(2, 9);
  });
});

describe("efficiency and heat", () => {
  const peaked = (best: number, shares = [0, 0.5, 0.8, 1, 1.2, 1.5]) =>
    pumpCurve({
      points: shares.map((share_) => ({
        flow: (share_ * best) as VolumeFlow,
        head: (60 - 20 * share_ * share_) as Length,
        efficiency: (share_ === 0 ? 0 : 0.65 * (2 * share_ - share_ * share_)) as Ratio,
      })),
    });

  test("the best point is the vertex its points lie about", () => {
    fc.assert(
      fc.property(number(1e-4, 0.01), (best) => {
        // No point lies at the top itself.
        const found = bestEfficiencyPoint(peaked(best, [0, 0.5, 0.9, 1.3, 1.5]));
        expect(share(found?.flow ?? 0, best)).toBeLessThan(1e-9);
        expect(share(found?.efficiency ?? 0, 0.65)).toBeLessThan(1e-9);
      }),
    );
  });

  test("a duty is low, preferred or on the upthrust side, each side of its limits", () => {
    const curve = peaked(0.002);
    const region = (share_: number) => pumpDuty({ curve, flow: (share_ * 0.002) as VolumeFlow }).region;
    expect([0.69, 0.71, 1.19, 1.21].map(region)).toStrictEqual(["low", "preferred", "preferred", "upthrust side"]);
    const plain = pumpCurve({
      points: [
        { flow: 0 as VolumeFlow, head: 9 as Length },
        { flow: 0.1 as VolumeFlow, head: 1 as Length },
      ],
    });
    expect(pumpDuty({ curve: plain, flow: 0.01 as VolumeFlow }).region).toBe("unknown");
  });

  test("the least flow is where the rise of temperature is the allowed one", () => {
    fc.assert(
      fc.property(number(0.1, 20), (rise) => {
        const curve = peaked(0.002);
        const least = minimumFlow({ curve, riseAllowed: rise as TemperatureDifference });
        expect(least.state).toBe("known");
        if (least.state !== "known") return;
        const efficiency = pumpEfficiencyAt(curve, least.flow) ?? (1 as Ratio);
        const got = pumpTemperatureRise({ head: pumpHeadAt(curve, least.flow), efficiency });
        expect(share(got, rise)).toBeLessThan(1e-9);
      }),
    );
  });

  test("there is no least flow where even the best one warms the water too much", () => {
    const least = minimumFlow({ curve: peaked(0.002), riseAllowed: 0.05 as TemperatureDifference });
    expect(least.state).toBe("too warm at any flow");
    expect(minimumFlow({ curve: peaked(0.002), riseAllowed: 0.06 as TemperatureDifference }).state).toBe("known");
  });

  test("power and its losses add up: lost power warms the water by the rise", () => {
    fc.assert(
      fc.property(number(1e-5, 0.1), number(1, 300), number(0.05, 0.99), (flow, head, eta) => {
        const density = 1000 as Density;
        const input = { flow: flow as VolumeFlow, head: head as Length, density };
        const power = pumpPower({ ...input, pumpEfficiency: eta as Ratio, motorEfficiency: 0.8 as Ratio });
        expect(power.hydraulicPower).toBe(hydraulicPower(input));
        expect(share(power.wireToWater, power.hydraulicPower / power.electricalPower)).toBeLessThan(1e-12);
        const heat = power.shaftPower - power.hydraulicPower;
        const rise = pumpTemperatureRise({ head: head as Length, efficiency: eta as Ratio });
        expect(share(rise * 4186 * density * flow, heat)).toBeLessThan(1e-9);
      }),
    );
  });

  test("power on the curve comes from input power first, and is unknown without either", () => {
    const curve = peaked(0.002);
    const given = { flow: 0.002 as VolumeFlow, density: 1000 as Density, motorEfficiency: 0.8 as Ratio };
    const power = pumpPowerAt({ curve, ...given });
    expect(power.state === "known" && power.from).toBe("efficiency");
    expect(power.state === "known" && power.shaftPower).toBeCloseTo((1000 * 9.80665 * 0.002 * 40) / 0.65, 6);
    const measured = pumpCurve({
      points: [
        { flow: 0 as VolumeFlow, head: 50 as Length, inputPower: 500 as Power },
        { flow: 0.004 as VolumeFlow, head: 20 as Length, inputPower: 900 as Power },
      ],
    });
    const read = pumpPowerAt({ curve: measured, ...given });
    expect(read).toMatchObject({ state: "known", from: "input power", shaftPower: 700, electricalPower: 875 });
    const plain = pumpCurve({
      points: [
        { flow: 0 as VolumeFlow, head: 9 as Length },
        { flow: 0.1 as VolumeFlow, head: 1 as Length },
      ],
    });
    expect(pumpPowerAt({ curve: plain, ...given })).toStrictEqual({ state: "unknown" });
  });

  test("energy of a volume is power times the time it takes", () => {
    fc.assert(
      fc.property(number(1e-4, 0.01), number(5, 200), number(60, 1e5), (flow, head, time) => {
        const density = 999 as Density;
        const eta = 0.5 as Ratio;
        const power = pumpPower({
          flow: flow as VolumeFlow,
          head: head as Length,
          density,
          pumpEfficiency: eta,
          motorEfficiency: 1 as Ratio,
        });
        const energy = pumpingEnergy({
          volume: (flow * time) as Volume,
          head: head as Length,
          density,
          wireToWater: eta,
        });
        const cost = runningCost({
          electricalPower: power.electricalPower,
          runTime: time as Duration,
          pricePerKilowattHour: 0.2,
          volume: (flow * time) as Volume,
        });
        expect(share(cost.energy, energy)).toBeLessThan(1e-12);
        expect(share(cost.cost, (energy / 3.6e6) * 0.2)).toBeLessThan(1e-12);
        expect(share(cost.costPerCubicMetre ?? 0, cost.cost / flow / time)).toBeLessThan(1e-12);
      }),
    );
  });
});

test("shutoff pressure rises with the water, and is none where the water is not reached", () => {
  const curve = pumpCurve({
    points: [
      { flow: 0 as VolumeFlow, head: 100 as Length },
      { flow: 0.01 as VolumeFlow, head: 10 as Length },
    ],
  });
  const of = (staticLevel: number) =>
    shutoffPressure({ curve, staticLevel: staticLevel as Length, density: 1000 as Density });
  expect(of(20).pressure).toBeCloseTo(80 * 9806.65, 6);
  expect(of(10).pressure).toBeGreaterThan(of(20).pressure);
  expect(of(100)).toMatchObject({ pressure: 0, reaches: false });
  expect(of(20).cautions[0]?.code).toBe("shutoff-pressure");
});

test("specific speed does not change with speed along similar points, nor with equal stages", () => {
  fc.assert(
    fc.property(
      number(10, 60),
      number(1e-4, 0.1),
      number(5, 100),
      ratios,
      fc.integer({ min: 1, max: 20 }),
      (n, q, h, r, stages) => {
        const of = (speed: number, flow: number, head: number, count: number) =>
          specificSpeed({ speed: speed as Frequency, flow: flow as VolumeFlow, head: head as Length, stages: count })
            .us;
        const one = of(n, q, h, 1);
        expect(share(of(n * r, q * r, h * r * r, 1), one)).toBeLessThan(1e-12);
        expect(share(of(n, q, h * stages, stages), one)).toBeLessThan(1e-12);
      },
    ),
  );
});
