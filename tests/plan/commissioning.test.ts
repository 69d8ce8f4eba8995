/** The commissioning sheet: each reading is the plan's number, its band as wide as the reading's own share. */
import type { ExpectedReading, Plan } from "risingmain/plan";
import { feet, gpm, psi } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { commissioningSheet } from "../../src/plan/commissioning.ts";
import { cabin, having, planOf, ranch } from "./jobs.ts";

type Sheet = readonly ExpectedReading[];

const of = (sheet: Sheet, code: string): ExpectedReading | undefined => sheet.find((reading) => reading.code === code);
const codes = (sheet: Sheet): readonly string[] => sheet.map(({ code }) => code);

/** Expected, low and high. */
function numbers(sheet: Sheet, code: string): readonly [number, number, number] {
  const { expected, low, high } = of(sheet, code) ?? expect.unreachable(code);
  expect([low.kind, high.kind]).toEqual([expected.kind, expected.kind]);
  return [expected.value, low.value, high.value];
}

function near(found: readonly number[], wanted: readonly number[]): void {
  found.forEach((value, i) => {
    const at = wanted[i] ?? Number.NaN;
    expect(Math.abs(value - at)).toBeLessThan(1e-9 * Math.max(Math.abs(at), 1));
  });
}

const around = (value: number, width: number) => [value, value - width, value + width];

test("the ranch's sheet, in the order of the work", () => {
  const { stages, commissioning } = planOf(ranch());
  const uses = stages.layout.uses.flatMap(({ name, outlets }) =>
    outlets.map((outlet) => `outlet-${name}-${outlet.name}`),
  );
  expect(codes(commissioning)).toEqual([
    "static-level",
    "precharge",
    "flow-at-cut-in",
    "bucket-time",
    "pumping-level",
    "cut-in",
    "cut-out",
    "held-house and trough",
    "held-both hydrants",
    "held-ridge hydrant alone",
    "held-trough alone",
    "tank-fill",
    "tank-draw",
    "pressure-fall",
    ...uses,
    "running-current",
    "running-voltage-generator",
    "running-voltage-utility service, next year",
  ]);
  for (const { reading, how } of commissioning) expect([reading.length > 0, how.length > 0]).toEqual([true, true]);
});

test("each reading is the plan's, with the band of its instrument", () => {
  const { stages, commissioning: sheet } = planOf(ranch());
  const { pump, tank, layout, power } = stages;
  const at = pump.chosen?.atCutIn?.flow ?? expect.unreachable("no flow");
  const band = pump.chosen?.flowBand ?? expect.unreachable("no band");
  near(numbers(sheet, "static-level"), around(feet(94), feet(9.4)));
  near(numbers(sheet, "precharge"), around(psi(50), psi(2)));
  // What the acceptance grade leaves open, and the bucket's 4 % on top.
  near(numbers(sheet, "flow-at-cut-in"), [at, band.low * 0.96, band.high * 1.04]);
  const fiveGallons = 5 * 231 * 0.0254 ** 3;
  near(numbers(sheet, "bucket-time"), [
    fiveGallons / at,
    fiveGallons / (band.high * 1.04),
    fiveGallons / (band.low * 0.96),
  ]);
  // 94 ft and 2 ft of drawdown a gpm.
  const level = feet(94) + feet(2) * (at / gpm(1));
  near(numbers(sheet, "pumping-level"), around(level, level * 0.1));
  near(numbers(sheet, "cut-in"), around(psi(52), psi(52) * 0.05));
  near(numbers(sheet, "cut-out"), around(psi(72), psi(72) * 0.05));
  near(numbers(sheet, "held-trough alone"), around(psi(62), psi(62) * 0.05));
  near(numbers(sheet, "tank-fill"), around(tank.fillTime ?? 0, (tank.fillTime ?? 0) * 0.15));
  near(numbers(sheet, "tank-draw"), around(tank.drawdown.usable, tank.drawdown.usable * 0.15));
  // A pound on the gauge either way.
  const [still, low, high] = numbers(sheet, "pressure-fall");
  expect([still, Math.round(low / psi(1)), Math.round(high / psi(1))]).toEqual([0, -1, 1]);
  const trough = layout.uses[3]?.outlets[0]?.pressureHeld ?? 0;
  near(numbers(sheet, "outlet-trough alone-north trough"), around(trough, trough * 0.05));
  near(numbers(sheet, "running-current"), [12, 0, 12 * 1.1]);
  near(numbers(sheet, "running-voltage-generator"), around(240, 12));
  expect(power?.fullLoadCurrent).toBe(12);
});

test("no band is finer than a foot of the sounder or a pound of the gauge", () => {
  const { commissioning: sheet } = planOf(
    cabin({ "well.staticLevel": "5 ft", "controls.cutIn": "15 psi", "controls.cutOut": "35 psi" }),
  );
  near(numbers(sheet, "static-level"), around(feet(5), feet(1)));
  const [, low, high] = numbers(sheet, "cut-in");
  expect((high - low) / 2 / psi(1)).toBeCloseTo(1, 3);
  near(numbers(sheet, "cut-out"), around(psi(35), psi(35) * 0.05));
});

describe("without a valve", () => {
  test("an outlet's pressure swings with the switch", () => {
    const swing = (document: unknown) => {
      const { commissioning: sheet, stages } = planOf(document);
      const pressure = stages.layout.uses[0]?.outlets[0]?.pressureHeld ?? 0;
      const [value, low, high] = numbers(sheet, "outlet-cabin-cabin");
      near([value, low], [pressure, pressure * 0.95]);
      return (high - pressure * 1.05) / psi(1);
    };
    const valve = (setPressure: string) => cabin({ "controls.regulatingValve": { setPressure, minimumFlow: "1 gpm" } });
    expect(swing(cabin())).toBeCloseTo(50 - 30, 6);
    expect(swing(valve("40 psi"))).toBeCloseTo(0, 6);
    // A valve that never holds is none.
    expect(swing(valve("50 psi"))).toBeCloseTo(20, 6);
  });

  test("the shutoff pressure is read where every part can stand it", () => {
    const { stages } = planOf(cabin());
    const { chosen } = stages.pump;
    if (chosen === null) return expect.unreachable("no pump");
    const most = chosen.shutoffPressure * 1.05;
    const strong = 2 * most;
    /** The sheet with every rating far above, but for one. */
    const rated = (changes: {
      relief?: number | null;
      tank?: number | null;
      pipe?: number | null;
      run?: number | null;
      set?: number;
    }) => {
      const { relief = null, tank = strong, pipe = strong, run = strong } = changes;
      const [first, ...others] = stages.layout.runs.map((each) => having(each, { pressureRating: strong }));
      return codes(
        commissioningSheet({
          ...stages,
          controls: having(stages.controls, { reliefPressure: relief, setPressure: changes.set ?? null }),
          tank: having(stages.tank, { maximumPressure: tank }),
          dropPipe: having(stages.dropPipe, { pressureRating: pipe }),
          layout: {
            ...stages.layout,
            runs: first === undefined ? [] : [having(first, { pressureRating: run }), ...others],
          },
        }),
      ).includes("shutoff-pressure");
    };
    expect(rated({})).toBe(true);
    expect(rated({ relief: null, tank: null, pipe: null, run: null })).toBe(true);
    for (const part of ["relief", "tank", "pipe", "run"] as const) {
      expect(rated({ [part]: most * (1 + 1e-9) }), part).toBe(true);
      expect(rated({ [part]: most }), part).toBe(false);
    }
    // Behind a valve the gauge never sees it.
    expect(rated({ set: psi(40) })).toBe(false);
    // Read with the water as it usually stands, not at its highest.
    const high = planOf(cabin({ "well.highestStaticLevel": "30 ft" })).stages;
    const { usualShutoff, shutoffPressure } = high.pump.chosen ?? expect.unreachable("no pump");
    expect(shutoffPressure).toBeGreaterThan(usualShutoff);
    const commissioning = commissioningSheet({
      ...high,
      controls: having(high.controls, { reliefPressure: null }),
      tank: having(high.tank, { maximumPressure: null }),
      layout: { ...high.layout, runs: [] },
    });
    near(numbers(commissioning, "shutoff-pressure"), around(usualShutoff, usualShutoff * 0.05));
  });
});

describe("what cannot be read is not asked", () => {
  test("without a pump: levels, pressures and outlets alone", () => {
    const { commissioning } = planOf(cabin({ pump: undefined }));
    expect(codes(commissioning)).toEqual([
      "static-level",
      "precharge",
      "cut-in",
      "cut-out",
      "pressure-fall",
      "outlet-cabin-cabin",
      "outlet-garden tap-garden tap",
      "outlet-all outlets-cabin",
      "outlet-all outlets-garden tap",
    ]);
  });

  test("a pump that gives nothing at cut-in, a tank that does not fill, a use that holds nothing", () => {
    const { stages } = planOf(ranch());
    const { chosen } = stages.pump;
    if (chosen === null) return expect.unreachable("no pump");
    const sheet = (changes: Partial<Plan["stages"]>) => codes(commissioningSheet({ ...stages, ...changes }));
    const without = (gone: readonly string[]) =>
      codes(commissioningSheet(stages)).filter((code) => !gone.includes(code));
    expect(sheet({ pump: { ...stages.pump, chosen: { ...chosen, atCutIn: null } } })).toEqual(
      without(["flow-at-cut-in", "bucket-time", "pumping-level"]),
    );
    expect(sheet({ tank: { ...stages.tank, fillTime: null } })).toEqual(without(["tank-fill", "tank-draw"]));
    const held = stages.controls.held.map((each, i) =>
      i === 0 ? having(each, { held: { state: "switch opens" } }) : each,
    );
    expect(sheet({ controls: { ...stages.controls, held } })).toEqual(without(["held-house and trough"]));
    expect(sheet({ power: null })).toEqual(
      without(codes(commissioningSheet(stages)).filter((code) => code.startsWith("running-"))),
    );
    // Without the acceptance grade's band the bucket's alone is left.
    const bare = commissioningSheet({ ...stages, pump: { ...stages.pump, chosen: { ...chosen, flowBand: null } } });
    const flow = chosen.atCutIn?.flow ?? 0;
    near(numbers(bare, "flow-at-cut-in"), [flow, flow * 0.96, flow * 1.04]);
  });
});
