/**
 * The demo worked by hand: the page, the recorded arithmetic behind it (general-purpose packages, no library code) and
 * `planSystem` agree to the last digit the page prints.
 */
import { readFileSync } from "node:fs";
import { headOfPressure } from "risingmain/head";
import { frictionFactor } from "risingmain/pipe";
import { type Plan, planSystem, readJobText } from "risingmain/plan";
import { storedWater } from "risingmain/tank";
import {
  inFeet,
  inFeetPerSecond,
  inGpm,
  inGpmPerFoot,
  inInches,
  inPsi,
  inSquareMillimetresPerSecond,
  inUsFluidOunces,
  inUsGallons,
  psi,
} from "risingmain/units";
import { describe, expect, test } from "vitest";

const read = (path: string): string => readFileSync(new URL(path, import.meta.url), "utf8");
const page = read("../../docs/examples/ranch-by-hand.md");
const { rows } = JSON.parse(read("../fixtures/ranch-by-hand.json")) as {
  rows: { id: string; value: number; printed: string; unit: string }[];
};

type Stages = Plan["stages"];

const run = ({ layout }: Stages, to: string) => layout.runs.find((r) => r.to === to) ?? expect.unreachable(to);
const outlet = ({ layout }: Stages, name: string) =>
  layout.uses.find(({ name: use }) => use === "both hydrants")?.outlets.find((o) => o.name === name) ??
  expect.unreachable(name);
const chosen = ({ pump }: Stages) => pump.chosen ?? expect.unreachable("no pump");

/** What the plan says at each step, in the unit of the page. */
const FROM_PLAN: Readonly<Record<string, (stages: Stages) => number>> = {
  density: ({ site }) => site.water.density,
  viscosity: ({ site }) => inSquareMillimetresPerSecond(site.water.kinematicViscosity),
  atmosphere: ({ site }) => site.atmosphere / psi(1),
  "feet-per-psi": ({ site }) => inFeet(headOfPressure({ pressure: psi(1), density: site.water.density })),
  day: ({ demand }) => inUsGallons(demand.daily?.volume ?? (0 as never)),
  "yield-day": ({ demand }) => inUsGallons(demand.yieldPerDay),
  "design-flow": ({ demand }) => inGpm(demand.designFlow),
  "specific-capacity": ({ well }) => inGpmPerFoot(well.specificCapacity),
  drawdown: ({ well }) => inFeet(well.drawdown),
  "pumping-level": ({ well }) => inFeet(well.pumpingLevel),
  "standing-water": ({ well }) => inUsGallons(well.standingWater),
  "fork-velocity": (stages) => inFeetPerSecond(run(stages, "fork").velocity),
  "fork-reynolds": (stages) =>
    (run(stages, "fork").velocity * run(stages, "fork").pipe.insideDiameter) / stages.site.water.kinematicViscosity,
  "fork-factor": (stages) => {
    const { velocity, pipe } = run(stages, "fork");
    const reynolds = (velocity * pipe.insideDiameter) / stages.site.water.kinematicViscosity;
    return frictionFactor({ reynolds, relativeRoughness: (0.000005 * 0.3048) / pipe.insideDiameter }).value;
  },
  "fork-loss": (stages) => inFeet(run(stages, "fork").headLoss),
  "ridge-loss": (stages) => inFeet(run(stages, "ridge").headLoss),
  "ridge-pressure": (stages) => inPsi(outlet(stages, "ridge hydrant").pressureHeld),
  "barn-loss": (stages) => inFeet(run(stages, "barn").headLoss),
  "barn-pressure": (stages) => inPsi(outlet(stages, "barn hydrant").pressureHeld),
  "flow-cut-in": (stages) => inGpm(chosen(stages).atCutIn?.flow ?? (0 as never)),
  setting: ({ pump }) => inFeet(pump.setting),
  "flow-cut-out": (stages) => inGpm(chosen(stages).atCutOut?.flow ?? (0 as never)),
  "tank-head": ({ pump }) => inFeet(pump.duty.parts.dischargePressure),
  "drop-loss": ({ dropPipe }) => inFeet(dropPipe.headLoss),
  "valve-loss": ({ pump }) =>
    inFeet(pump.duty.losses.find(({ name }) => name === "regulating valve")?.headLoss ?? (0 as never)),
  tdh: ({ pump }) => inFeet(pump.duty.totalDynamicHead),
  shutoff: (stages) => inPsi(chosen(stages).shutoffPressure),
  "drop-pressure": ({ dropPipe }) => inPsi(dropPipe.highestPressure),
  cooling: (stages) => inFeetPerSecond(chosen(stages).cooling.velocity),
  sleeve: (stages) => inInches(chosen(stages).cooling.greatestSleeve),
  "tank-draw": ({ tank }) => inUsGallons(tank.drawdown.usable),
  "above-valve": ({ site, tank }) => {
    const at = (pressure: number) =>
      storedWater({
        volume: tank.volume,
        precharge: tank.precharge,
        atmosphere: site.atmosphere,
        pressure: psi(pressure),
      }).stored;
    return inUsGallons((at(72) - at(62)) as never);
  },
  "tank-fill": ({ tank }) => tank.fillTime ?? 0,
  "full-load": ({ power }) => power?.fullLoadCurrent ?? 0,
  ampacity: ({ power }) => power?.conductorAmpacity ?? 0,
  breaker: ({ power }) => power?.highestBreaker ?? 0,
  "locked-rotor": ({ power }) => power?.lockedRotorCurrent ?? 0,
  treated: ({ disinfection }) => inUsGallons(disinfection.treated.total),
  bleach: ({ disinfection }) => inUsFluidOunces(disinfection.dose.bleach),
};

describe("the demo by hand", () => {
  test("every step of the arithmetic is held against the plan", () => {
    expect(Object.keys(FROM_PLAN).sort()).toEqual(rows.map(({ id }) => id).sort());
  });

  test("to the last digit the page prints", () => {
    const { stages } = planSystem(readJobText(read("../../docs/jobs/ranch.json")));
    const computed = rows.map(({ id, printed }) => {
      const decimals = (printed.split(".")[1] ?? "").length;
      return [id, (FROM_PLAN[id]?.(stages) ?? Number.NaN).toFixed(decimals)];
    });
    expect(computed).toEqual(rows.map(({ id, printed }) => [id, printed]));
  });

  test.each(rows.map((row) => [row.id, row] as const))("the page prints %s", (id, { printed, unit }) => {
    expect(page).toContain(`| ${printed} ${unit} |`);
    expect(page).toMatch(new RegExp(`^\\| ${id} \\|.*\\| ${printed.replace(".", "\\.")} `, "m"));
  });
});
