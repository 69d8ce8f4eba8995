/** Both sides of every limit in the docstrings, and what is refused. */
import {
  airLoss,
  airOverWaterDrawdown,
  airOverWaterSize,
  bankDrawdown,
  motorStartLimit,
  stockTank,
  storedWater,
  tankDrawdown,
  tankFillTime,
  tankSizeForRunTime,
  worstDemandOnCurve,
} from "risingmain/tank";
import {
  type AbsolutePressure,
  type Density,
  type Duration,
  type GaugePressure,
  gpm,
  inUsGallons,
  type Power,
  psi,
  psia,
  usGallons,
  type Volume,
  type VolumeFlow,
} from "risingmain/units";
import { describe, expect, test } from "vitest";
import { refused } from "../refused.ts";

const tank = { volume: usGallons(85), precharge: psi(38), cutIn: psi(40), cutOut: psi(60), atmosphere: psia(14.7) };
const level = () => gpm(10);

describe("refused", () => {
  test("a switch that does not open above where it closes, wherever it is asked for", () => {
    const same = { ...tank, cutOut: tank.cutIn };
    expect(refused(() => tankDrawdown(same))).toBe("cutOut");
    expect(refused(() => tankFillTime({ ...same, pumpFlowAt: level, demand: gpm(0) }))).toBe("cutOut");
    expect(refused(() => stockTank({ pumpFlow: gpm(10), cutIn: psi(40), cutOut: psi(39) }))).toBe("cutOut");
    expect(refused(() => tankDrawdown({ ...tank, cutIn: -1 as GaugePressure }))).toBe("cutIn");
  });

  test("air under 100 Pa absolute, not air at it", () => {
    const atmosphere = 1e5 as AbsolutePressure;
    const drawn = (precharge: number) => tankDrawdown({ ...tank, atmosphere, precharge: precharge as GaugePressure });
    expect(refused(() => drawn(100 - 1e5))).toBeUndefined();
    expect(refused(() => drawn(99 - 1e5))).toBe("precharge");
  });

  test("a charge, a bank and a tank of one by their own names", () => {
    expect(refused(() => tankDrawdown(undefined as never))).toBe("input");
    const bank = { atmosphere: psia(14.7), density: 1000 as Density, cutIn: psi(40), cutOut: psi(60) };
    expect(refused(() => bankDrawdown(undefined as never))).toBe("input");
    expect(refused(() => bankDrawdown({ ...bank, tanks: [undefined as never] }))).toBe("tanks[0]");
    expect(refused(() => bankDrawdown({ ...bank, tanks: [{ ...tank, volume: 0 as Volume }] }))).toBe("tanks[0].volume");
    const empty = { ...tank, precharge: psi(-14.7) };
    expect(refused(() => bankDrawdown({ ...bank, tanks: [empty] }))).toBe("tanks[0].precharge");
  });

  test("readings of an air charge that do not fall, or that cannot be told apart", () => {
    const readings = { ...tank, before: psi(60), drawn: usGallons(5) };
    expect(refused(() => airLoss({ ...readings, after: psi(60) }))).toBe("after");
    expect(refused(() => airLoss({ ...readings, after: psi(61) }))).toBe("after");
    // Lost in the last place of the absolute pressure.
    const alike = { ...readings, before: psi(1), after: (psi(1) - 1e-12) as GaugePressure };
    expect(alike.after).toBeLessThan(alike.before);
    expect(refused(() => airLoss(alike))).toBe("after");
  });

  test("a pump flow that is no function, or that rises", () => {
    expect(refused(() => worstDemandOnCurve({ ...tank, pumpFlowAt: 3 as never }))).toBe("pumpFlowAt");
    // Enough at the cut-out, not on the way there.
    const rising = (p: number) => (p < psi(55) ? gpm(1) : gpm(20));
    expect(refused(() => tankFillTime({ ...tank, pumpFlowAt: rising, demand: gpm(5) }))).toBe("pumpFlowAt");
    expect(refused(() => tankFillTime({ ...tank, pumpFlowAt: rising, demand: gpm(1) }))).toBe("pumpFlowAt");
  });

  test("a differential under a pascal for a conventional tank's size", () => {
    const size = (cutOut: number) =>
      airOverWaterSize({
        usable: usGallons(10),
        cutIn: 1e5 as GaugePressure,
        cutOut: cutOut as GaugePressure,
        atmosphere: 1e5 as AbsolutePressure,
        seal: usGallons(5),
      });
    expect(refused(() => size(1e5 + 0.5))).toBe("cutOut - cutIn");
    expect(refused(() => size(1e5 + 1))).toBeUndefined();
  });
});

describe("limits", () => {
  test("water enters only above the precharge", () => {
    const at = (pressure: number) => storedWater({ ...tank, pressure: pressure as GaugePressure });
    expect(at(tank.precharge)).toMatchObject({ state: "empty", stored: 0, share: 0 });
    expect(at(tank.precharge * 1.001).state).toBe("holding water");
  });

  test("a precharge 4 psi below the cut-in is the lowest right one", () => {
    const charged = (precharge: number) => tankDrawdown({ ...tank, precharge: precharge as GaugePressure }).precharge;
    expect(charged(tank.cutIn - psi(4))).toBe("right");
    expect(charged(tank.cutIn - psi(4.001))).toBe("too low");
  });

  test("what the recommended precharge gives is what that precharge gives", () => {
    for (const largestShare of [1, 0.15]) {
      const low = tankDrawdown({ ...tank, precharge: psi(20), largestShare });
      const { usable } = tankDrawdown({ ...tank, precharge: low.recommendedPrecharge, largestShare });
      expect(low.usableAtRecommended).toBeCloseTo(usable, 15);
    }
    // A membrane that stops the filling below the cut-in leaves nothing to use.
    expect(tankDrawdown({ ...tank, largestShare: 0.01 }).usableAtRecommended).toBe(0);
  });

  test("a membrane's limit met to the bit limits nothing", () => {
    const { storedAtCutOut } = tankDrawdown({ ...tank, volume: 1 as Volume });
    expect(tankDrawdown({ ...tank, volume: 1 as Volume, largestShare: storedAtCutOut }).limitedByMembrane).toBe(false);
  });

  test("a tank charged up to the cut-out, or just under it, has no size that does it", () => {
    const size = (precharge: number) =>
      tankSizeForRunTime({
        ...tank,
        precharge: precharge as GaugePressure,
        pumpFlow: gpm(10),
        runTime: 60 as Duration,
      });
    expect(size(tank.cutOut)).toEqual({ state: "no water enters", precharge: tank.cutOut });
    expect(size(psi(70))).toEqual({ state: "no water enters", precharge: psi(70) });
    expect(size(psi(59)).state).toBe("sized");
  });

  test("air lost is told by 2 psi either side of the precharge", () => {
    // The drawdown that a charge of so many psi gives between the readings, by Boyle's law.
    const [before, after] = [psi(60), psi(45)];
    const state = (charge: number, precharge = tank.precharge) => {
      const air = (p: number) => (charge * 6894.757293168 + tank.atmosphere) / (p + tank.atmosphere);
      const drawn = (tank.volume * (air(after) - air(before))) as Volume;
      return airLoss({ ...tank, precharge, before, after, drawn }).state;
    };
    expect([36.01, 35.99, 0.01, -0.01].map((charge) => state(charge))).toEqual([
      "sound",
      "air lost",
      "air lost",
      "waterlogged",
    ]);
    // No tank reads more air than its lower reading would hold, or than it was charged with, and 2 psi.
    expect([46.99, 47.01].map((charge) => state(charge))).toEqual(["sound", "readings disagree"]);
    expect([51.99, 52.01].map((charge) => state(charge, psi(50)))).toEqual(["sound", "readings disagree"]);
  });

  test("as much air as an open tank holds is no charge", () => {
    // Powers of 2, exact: from 4 to 2 atmospheres the air of 1 would grow by 1/2 − 1/4 of the tank.
    const atmosphere = 2 ** 16;
    const readings = { before: 3 * atmosphere, after: atmosphere, drawn: 0.25, atmosphere };
    expect(airLoss({ ...tank, volume: 1, ...readings } as never)).toMatchObject({
      state: "waterlogged",
      equivalentPrecharge: 0,
    });
  });

  test("a conventional tank keeps its seal while it covers the outlet and the air does not escape", () => {
    const plain = { ...tank, precharge: psi(0) };
    const { remaining } = airOverWaterDrawdown({ ...plain, seal: 0 as Volume });
    const state = (seal: number, precharge = plain.precharge) =>
      airOverWaterDrawdown({ ...plain, precharge, seal: seal as Volume }).state;
    expect([state(remaining), state(remaining * 1.000001)]).toEqual(["sealed", "air escapes"]);
    expect([state(0, tank.cutIn), state(0, psi(40.1))]).toEqual(["sealed", "air escapes"]);
  });

  test("the chart's settings are met within half a psi, both of them", () => {
    const state = (cutIn: number, cutOut: number, flow = 10) =>
      stockTank({ pumpFlow: gpm(flow), cutIn: psi(cutIn), cutOut: psi(cutOut) }).state;
    expect(state(40.4, 60)).toBe("listed");
    expect([state(40.6, 60), state(40, 60.6), state(39.4, 60), state(40, 59.4), state(20, 60)]).toEqual(
      Array(5).fill("not listed"),
    );
  });

  test("three quarters of a horsepower typed in watts is a small motor", () => {
    const hourly = (watts: number) => motorStartLimit(watts as Power).perHour * 3600;
    expect(hourly(0.75 * 745.6998715822702)).toBeCloseTo(15, 9);
    expect(hourly(560)).toBeCloseTo(7.5, 9);
  });

  test("a pump that gives just the use at the cut-out never stops, short of nothing; one over it fills", () => {
    const fill = (demand: VolumeFlow) => tankFillTime({ ...tank, pumpFlowAt: level, demand });
    expect(fill(gpm(10))).toEqual({ state: "never stops", short: 0 });
    const short = fill(gpm(12));
    expect(short.state === "never stops" && Math.abs(short.short / gpm(2) - 1) < 1e-12).toBe(true);
    expect(fill(gpm(9.99)).state).toBe("fills");
    // A surplus of 1e-15 m³/s is none.
    const surplus = (flow: number) =>
      tankFillTime({ ...tank, pumpFlowAt: () => flow as VolumeFlow, demand: gpm(0) }).state;
    expect([surplus(1e-15), surplus(1.1e-15)]).toEqual(["never stops", "fills"]);
  });

  test("a tank that holds no water between the switch's pressures has no cycle", () => {
    expect(worstDemandOnCurve({ ...tank, precharge: psi(60), pumpFlowAt: level }).state).toBe("no cycle");
    expect(worstDemandOnCurve({ ...tank, precharge: psi(59), pumpFlowAt: level }).state).toBe("cycles");
    const cycle = (flow: number) => worstDemandOnCurve({ ...tank, pumpFlowAt: () => flow as VolumeFlow }).state;
    expect([cycle(1e-10), cycle(1e-9), cycle(1.1e-9)]).toEqual(["no cycle", "no cycle", "cycles"]);
  });

  test("85 gal at 38 psi give the 22.9 gal of Boyle's law between 40 and 60 psi", () => {
    // 85 · (52.7/54.7 − 52.7/74.7).
    expect(inUsGallons(tankDrawdown(tank).usable)).toBeCloseTo(85 * (52.7 / 54.7 - 52.7 / 74.7), 9);
  });
});
