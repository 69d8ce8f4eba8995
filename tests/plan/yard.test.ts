/** The yard lines and the pipes: sizes, flows and pressures, by hydrostatics and the pipe and fittings modules alone. */
import { fittingsLoss } from "risingmain/fittings";
import { darcyWeisbachLoss, findPipe, type PipeSize, wallRoughness } from "risingmain/pipe";
import { type Job, type LayoutStage, readJob } from "risingmain/plan";
import { feet, feetPerSecond, gpm, type Length, psi, type VolumeFlow } from "risingmain/units";
import { type Water, waterAt } from "risingmain/water";
import { describe, expect, test } from "vitest";
import { highestVelocity } from "../../src/plan/choose-pipes.ts";
import { layoutStage, pressureWhileUsed } from "../../src/plan/layout-stage.ts";
import { familySizes, pipeNamed, ratingAt, runLoss } from "../../src/plan/pipes.ts";
import { usesOf } from "../../src/plan/uses.ts";
import { type Changes, cabin, ranch } from "./jobs.ts";

/** m/s², exact by definition (CGPM 1901). */
const STANDARD_GRAVITY = 9.80665;

interface Yard {
  readonly job: Job;
  readonly water: Water;
  readonly stage: LayoutStage;
}

function yard(document: unknown): Yard {
  const job = readJob(document);
  const water = waterAt({ temperature: job.site.waterTemperature });
  return { job, water, stage: layoutStage(job, water) };
}

const friction = (pipe: PipeSize, length: number, flow: number, { kinematicViscosity }: Water): number =>
  darcyWeisbachLoss({
    flow: flow as VolumeFlow,
    insideDiameter: pipe.insideDiameter,
    length: length as Length,
    roughness: wallRoughness(pipe.material).roughness,
    viscosity: kinematicViscosity,
  }).headLoss;

describe("pipes", () => {
  test("a family is all the sizes of one kind, by their bores", () => {
    const sizes = familySizes("PE SIDR 15");
    expect(sizes.length).toBeGreaterThan(3);
    const { standard, grade, series } = findPipe("1 in PE SIDR 15");
    for (const size of sizes) expect([size.standard, size.grade, size.series]).toEqual([standard, grade, series]);
    for (const family of ["PE SIDR 15", "PVC SCH 40", "PVC SCH 80", "PE100 SDR 11", "steel SCH 40"]) {
      const bores = familySizes(family).map(({ insideDiameter }) => insideDiameter);
      expect(bores).toEqual([...bores].sort((a, b) => a - b));
      expect(new Set(bores).size).toBe(bores.length);
    }
    expect(familySizes("bamboo")).toEqual([]);
    // A family without the first size looked for is found by another.
    expect(familySizes("PE100 SDR 11").length).toBeGreaterThan(3);
  });

  test("the bore reckoned with is the average one", () => {
    const [named, found] = [pipeNamed("32 mm PE100 SDR 11"), findPipe("32 mm PE100 SDR 11")];
    expect(named.insideDiameterBasis).toBe("average");
    expect(named.insideDiameter).toBeLessThan(found.insideDiameter);
    expect(familySizes("PE100 SDR 11").find(({ nominal }) => nominal === found.nominal)).toEqual(named);
  });

  test("a run loses its friction, and with fittings theirs beside it", () => {
    const { water } = yard(cabin());
    const pipe = pipeNamed("1 in PVC SCH 40");
    const flow = gpm(8);
    const fittings = [
      { kind: "elbow 90", count: 3 },
      { kind: "gate valve", count: 1 },
    ] as const;
    const alone = runLoss({ pipe, length: feet(100), fittings: [] }, flow, water.kinematicViscosity);
    expect(alone).toEqual({ pipe: friction(pipe, feet(100), flow, water), fittings: 0 });
    const both = runLoss({ pipe, length: feet(100), fittings }, flow, water.kinematicViscosity);
    expect(both.pipe).toBe(alone.pipe);
    const asked = {
      flow,
      insideDiameter: pipe.insideDiameter,
      nominalSize: 0.0254 as Length,
      roughness: wallRoughness(pipe.material).roughness,
      viscosity: water.kinematicViscosity,
      fittings: fittings.map(({ kind, count }) => ({ kind: "named", fitting: kind, count }) as const),
    };
    expect(both.fittings).toBeCloseTo(fittingsLoss(asked).headLoss, 12);
    expect(both.fittings).toBeGreaterThan(0);
  });

  test("a rating falls with the warmth of the water; none where the standard gives none", () => {
    const warm = (celsius: number) => (celsius + 273.15) as never;
    const pipe = pipeNamed("1 in PVC SCH 40");
    expect(ratingAt(pipe, warm(10))).toBe(pipe.pressureRating);
    expect(ratingAt(pipe, warm(40))).toBeLessThan(pipe.pressureRating ?? 0);
    expect(ratingAt(pipeNamed("1 in steel SCH 40"), warm(10))).toBeNull();
  });
});

describe("uses", () => {
  test("the job's; else every outlet alone and, of more than one, all at once", () => {
    const flows = (changes: Changes) =>
      usesOf(readJob(cabin(changes))).map(({ name, flow, outlets }) => [
        name,
        Math.round(flow / gpm(1)),
        outlets.length,
      ]);
    expect(flows({})).toEqual([
      ["cabin", 5, 1],
      ["garden tap", 3, 1],
      ["all outlets", 8, 2],
    ]);
    expect(flows({ outlets: [{ name: "tap", at: "cabin", flow: "4 gpm", pressure: "20 psi" }] })).toEqual([
      ["tap", 4, 1],
    ]);
    expect(flows({ uses: [{ name: "watering", outlets: ["garden tap"] }] })).toEqual([["watering", 3, 1]]);
  });

  test("the pressure held is the valve's while it is below cut-out; else cut-in", () => {
    const held = (controls: Changes) => pressureWhileUsed(readJob(cabin(controls)));
    const valve = (setPressure: string) => ({ "controls.regulatingValve": { setPressure, minimumFlow: "1 gpm" } });
    expect(held({})).toBe(psi(30));
    expect(held(valve("40 psi"))).toBe(psi(40));
    expect(held(valve("49.9 psi"))).toBe(psi(49.9));
    expect(held(valve("50 psi"))).toBe(psi(30));
    expect(held(valve("60 psi"))).toBe(psi(30));
  });
});

describe("a branched yard", () => {
  const CHANGES: Changes = {
    "tank.elevation": "5 ft",
    "runs[0].fittings": [{ kind: "elbow 90", count: 6 }],
    "runs[0].pipe": "1 in PVC SCH 40",
    // Laid from the garden to the well: the flow runs against it.
    "runs[1]": { from: "garden", to: "wellhead", length: "60 ft" },
    "controls.regulatingValve": { setPressure: "40 psi", minimumFlow: "1 gpm" },
  };

  test("has the tank's pressure less rise, friction and fittings at each outlet", () => {
    const { job, water, stage } = yard(cabin(CHANGES));
    const weight = water.density * STANDARD_GRAVITY;
    const [toCabin, toGarden] = stage.runs;
    if (toCabin === undefined || toGarden === undefined) return expect.unreachable("no runs");
    const fittings = runLoss(
      { pipe: toCabin.pipe, length: feet(120), fittings: [{ kind: "elbow 90", count: 6 }] },
      gpm(5),
      water.kinematicViscosity,
    );
    const lost = {
      cabin: fittings.pipe + fittings.fittings,
      "garden tap": friction(toGarden.pipe, feet(60), gpm(3), water),
    };
    const rise = { cabin: feet(8 - 5), "garden tap": feet(-3 - 5) };
    for (const { outlets, name } of stage.uses)
      for (const outlet of outlets) {
        const place = outlet.name as keyof typeof rise;
        const head = rise[place] + lost[place];
        // The coefficient of the fittings is that of the flow of all the outlets together: nearly alike.
        const near = 0.05 * fittings.fittings * weight;
        expect(Math.abs(outlet.pressureAtCutIn - (psi(30) - weight * head)), name).toBeLessThan(near);
        expect(Math.abs(outlet.pressureHeld - (psi(40) - weight * head)), name).toBeLessThan(near);
      }
    expect(stage.uses.map(({ name, flow }) => [name, flow])).toEqual(usesOf(job).map(({ name, flow }) => [name, flow]));
    expect(stage.uses[2]?.outlets.map(({ name, flow, wanted }) => [name, flow, wanted])).toEqual([
      ["cabin", gpm(5), psi(20)],
      ["garden tap", gpm(3), psi(15)],
    ]);
    expect(fittings.fittings).toBeGreaterThan(feet(0.2));
    expect(Math.abs(toCabin.headLoss - lost.cabin)).toBeLessThan(0.05 * fittings.fittings);
  });

  test("tells each run: ends, flow, velocity, loss, the pressure at its lower end", () => {
    const { water, stage } = yard(cabin(CHANGES));
    const weight = water.density * STANDARD_GRAVITY;
    const [toCabin, toGarden] = stage.runs;
    expect(toCabin).toMatchObject({
      name: "wellhead – cabin",
      from: "wellhead",
      to: "cabin",
      length: feet(120),
      pipeBy: "job",
    });
    expect(toGarden).toMatchObject({ name: "garden – wellhead", pipeBy: "plan" });
    for (const [run, flow, lowest] of [
      [toCabin, gpm(5), feet(5)],
      [toGarden, gpm(3), feet(-3)],
    ] as const) {
      if (run === undefined) return expect.unreachable("no run");
      const { insideDiameter } = run.pipe;
      expect(run.flow).toBeCloseTo(flow, 12);
      expect(run.velocity).toBeCloseTo(flow / ((Math.PI / 4) * insideDiameter ** 2), 9);
      // At rest at cut-out: the tank stands at 5 ft.
      expect(run.highestPressure).toBeCloseTo(psi(50) + weight * (feet(5) - lowest), 3);
      expect(run.pressureRating).toBe(ratingAt(run.pipe, water.temperature));
    }
    expect(toGarden?.headLoss).toBeCloseTo(friction(pipeNamed(toGarden?.pipe.name ?? ""), feet(60), gpm(3), water), 9);
    // Without a tank's elevation its connection is at the ground.
    const flat = yard(cabin());
    expect(flat.stage.runs.map(({ highestPressure }) => Math.round(highestPressure))).toEqual(
      [0, -3].map((lowest) => Math.round(psi(50) - flat.water.density * STANDARD_GRAVITY * feet(lowest))),
    );
  });

  test("needs at the tank what the outlet with the least to spare lacks", () => {
    for (const document of [cabin(CHANGES), ranch()]) {
      const { job, stage } = yard(document);
      for (const { outlets, tankPressureNeeded } of stage.uses) {
        const spare = Math.min(...outlets.map(({ pressureAtCutIn, wanted }) => pressureAtCutIn - wanted));
        expect(tankPressureNeeded).toBeCloseTo(job.controls.cutIn - spare, 6);
      }
      expect(stage.tankPressureNeeded).toBe(Math.max(...stage.uses.map((use) => use.tankPressureNeeded)));
    }
  });

  test("with a run used in several uses tells its busiest", () => {
    const { stage } = yard(
      ranch({
        uses: [
          { name: "trough", outlets: ["north trough"] },
          { name: "both", outlets: ["north trough", "ridge hydrant"] },
          { name: "ridge", outlets: ["ridge hydrant"] },
        ],
      }),
    );
    expect(stage.runs.map(({ flow }) => Math.round(flow / gpm(1)))).toEqual([0, 0, 11, 4, 7]);
  });
});

describe("the grade line", () => {
  test("leads to the outlet with the least to spare, by the fewest runs, from the pressure held", () => {
    const { stage, job } = yard(ranch());
    const line = stage.gradeLine ?? expect.unreachable("no line");
    const spare = stage.uses.flatMap(({ name, outlets }) =>
      outlets.map((outlet) => ({ use: name, outlet: outlet.name, spare: outlet.pressureHeld - outlet.wanted })),
    );
    const least = Math.min(...spare.map((each) => each.spare));
    expect(spare.find(({ use, outlet }) => use === line.use && outlet === line.outlet)?.spare).toBe(least);
    expect(line.outlet).toBe("house");
    expect(line.points.map(({ junction }) => junction)).toEqual(["wellhead", "house"]);
    const [start, end] = line.points;
    expect(start?.pressure).toBeCloseTo(psi(62), 3);
    expect(end?.pressure).toBeCloseTo(job.outlets[0] === undefined ? 0 : psi(40) + least, 3);
  });

  test("leads elsewhere where less is to spare", () => {
    // A pipe too thin to the ridge: its hydrant is short.
    const line = yard(ranch({ "runs[4].pipe": "3/4 in PE SIDR 15" })).stage.gradeLine;
    expect([line?.use, line?.outlet]).toEqual(["both hydrants", "ridge hydrant"]);
    expect(line?.points.map(({ junction }) => junction)).toEqual(["wellhead", "fork", "ridge"]);
  });

  test("goes round a loop the shorter way, and against the way a run was laid", () => {
    const runs = [
      { from: "house", to: "wellhead", length: "100 ft" },
      { from: "house", to: "barn", length: "100 ft" },
      { from: "barn", to: "ridge", length: "100 ft" },
      { from: "wellhead", to: "fork", length: "100 ft" },
      { from: "ridge", to: "fork", length: "100 ft" },
    ].map((run) => ({ ...run, pipe: "1 in PE SIDR 15" }));
    const outlets = [{ name: "ridge", at: "ridge", flow: "6 gpm", pressure: "20 psi" }];
    const { stage } = yard(ranch({ runs, outlets, uses: undefined }));
    expect(stage.gradeLine?.points.map(({ junction }) => junction)).toEqual(["wellhead", "fork", "ridge"]);
    expect(stage.gradeLine?.points.at(-1)?.pressure).toBeCloseTo(stage.uses[0]?.outlets[0]?.pressureHeld ?? 0, 3);
  });

  test("is none where the tightest outlet is at the wellhead", () => {
    const tap = { name: "tap", at: "wellhead", flow: "2 gpm", pressure: "29 psi" };
    expect(
      yard(cabin({ outlets: [tap, { name: "cabin", at: "cabin", flow: "1 gpm", pressure: "5 psi" }] })).stage.gradeLine,
    ).toBeNull();
  });
});

describe("sizes left open", () => {
  const sizesOf = (stage: LayoutStage) => stage.runs.map(({ pipe }) => pipe.nominal);
  /** Whether every outlet has what it wants at cut-in and no run is too fast. */
  const serves = ({ job, stage }: Yard): boolean =>
    stage.uses.every(({ outlets }) => outlets.every(({ pressureAtCutIn, wanted }) => pressureAtCutIn >= wanted)) &&
    stage.runs.every(({ velocity }) => velocity <= highestVelocity(job) * (1 + 1e-9));
  /** The yard with the pipes of a stage, one of them a size thinner. */
  const thinner = (document: (changes: Changes) => unknown, { stage }: Yard, thin: number): Yard | null => {
    const sizes = familySizes("PE SIDR 15");
    const names = stage.runs.map(
      ({ pipe }, i) => sizes[sizes.findIndex(({ name }) => name === pipe.name) - (i === thin ? 1 : 0)]?.name,
    );
    if (names.includes(undefined)) return null;
    return yard(document(Object.fromEntries(names.map((name, i) => [`runs[${i}].pipe`, name]))));
  };

  test("a tree: proven least pipe, so that no run can be a size thinner", () => {
    for (const document of [ranch, cabin]) {
      const found = yard(document({}));
      expect(found.stage.choice).toBe("least pipe");
      expect(serves(found)).toBe(true);
      expect(found.stage.runs.map(({ pipeBy }) => pipeBy)).not.toContain("job");
      found.stage.runs.forEach((_, i) => {
        const less = thinner(document, found, i);
        if (less !== null) expect(serves(less), `run ${i}`).toBe(false);
      });
    }
  });

  test("what the job gives stays, and what is left open makes up for it", () => {
    const found = yard(ranch({ "runs[2].pipe": "1 in PE SIDR 15" }));
    expect(found.stage.choice).toBe("least pipe");
    expect(found.stage.runs.map(({ pipeBy }) => pipeBy)).toEqual(["plan", "plan", "job", "plan", "plan"]);
    expect(found.stage.runs[2]?.pipe).toEqual(pipeNamed("1 in PE SIDR 15"));
    expect(serves(found)).toBe(true);
    const all = yard(ranch(Object.fromEntries([0, 1, 2, 3, 4].map((i) => [`runs[${i}].pipe`, "1 in PE SIDR 15"]))));
    expect(all.stage.choice).toBe("all given");
    expect(new Set(sizesOf(all.stage))).toEqual(new Set(["1 in"]));
  });

  test("from the family and for the velocity the job names", () => {
    const family = yard(cabin({ pipeChoice: { family: "PVC SCH 40" } }));
    for (const { pipe } of family.stage.runs) expect(pipe.name).toMatch(/PVC.*SCH 40/);
    for (const { pipe } of yard(cabin()).stage.runs) expect(pipe.name).toMatch(/PE.*SIDR 15/);
    // Steel has no rating by its standard; it is chosen all the same.
    const [steel] = yard(cabin({ pipeChoice: { family: "steel SCH 40" } })).stage.runs;
    expect([steel?.pipe.material, steel?.pressureRating]).toEqual(["steel", null]);
    // 5 gpm through 1 in (1.049 in bore) runs at 1.86 ft/s, through 1-1/4 in (1.380 in) at 1.07.
    expect(sizesOf(yard(cabin({ "pipeChoice.highestVelocity": "1.5 ft/s" })).stage)[0]).toBe("1-1/4 in");
    expect(highestVelocity(readJob(cabin()))).toBe(feetPerSecond(5));
  });

  const LOOP: Changes = { "runs[5]": { from: "barn", to: "house", length: "200 ft" } };

  test("a loop: step by step, every outlet served and no run too fast", () => {
    const found = yard(ranch(LOOP));
    expect(found.stage.choice).toBe("step by step");
    expect(serves(found)).toBe(true);
    // Good: at most one run could be thinner, and not the trunk.
    const spared = found.stage.runs.flatMap((_, i) => {
      const less = thinner((changes) => ranch({ ...LOOP, ...changes }), found, i);
      return less !== null && serves(less) ? [i] : [];
    });
    expect(spared.length).toBeLessThanOrEqual(1);
    expect(spared).not.toContain(2);
  });

  test("a loop with pressure to spare: no run too fast, and none wider than that asks", () => {
    const easy = { ...LOOP, ...Object.fromEntries([0, 1, 2, 3].map((i) => [`outlets[${i}].pressure`, "0 psi"])) };
    const found = yard(ranch(easy));
    expect(serves(found)).toBe(true);
    for (const i of [2, 3, 4]) {
      const less = thinner((changes) => ranch({ ...easy, ...changes }), found, i);
      if (less !== null) expect(serves(less), `run ${i}`).toBe(false);
    }
  });

  test("short runs side by side: wide enough for the velocity, though pressure asks for less", () => {
    const sideBySide = (flow: string) =>
      yard(
        cabin({
          "runs[0].length": "5 ft",
          "runs[2]": { from: "wellhead", to: "cabin", length: "5 ft" },
          "outlets[0].flow": flow,
          "outlets[0].pressure": "0 psi",
        }),
      ).stage;
    // 10 gpm in each: 0.4085 × 10 / d² is 6.0 ft/s in 3/4 in (0.824 in bore), 3.7 in 1 in (1.049 in).
    expect(sizesOf(sideBySide("20 gpm"))).toEqual(["1 in", "1/2 in", "1 in"]);
    // Too fast in the widest there is: the widest.
    const widest = familySizes("PE SIDR 15").at(-1)?.nominal;
    const [first, , second] = sizesOf(sideBySide("5000 gpm"));
    expect([first, second]).toEqual([widest, widest]);
  });

  test("more than the widest can serve: step by step, as wide as it mends anything", () => {
    const found = yard(cabin({ "outlets[0].pressure": "29 psi" }));
    expect(found.stage.choice).toBe("step by step");
    const widest = familySizes("PE SIDR 15").at(-1);
    // Eight feet up to the cabin alone take 3.5 psi of the 30: no pipe gives 29. The garden needs nothing.
    expect(found.stage.runs[0]?.pipe.name).toBe(widest?.name);
    expect(found.stage.runs[1]?.pipe.nominal).toBe(yard(cabin()).stage.runs[1]?.pipe.nominal);
  });

  test("places no run reaches, and runs joined to nothing, leave the others as they are", () => {
    const alone = yard(cabin()).stage;
    const shed = { "places[2]": { name: "shed", elevation: "1 ft" } };
    const ring = {
      "places[3]": { name: "barn", elevation: "0 ft" },
      "places[4]": { name: "pond", elevation: "0 ft" },
      "runs[2]": { from: "shed", to: "barn", length: "50 ft" },
      "runs[3]": { from: "barn", to: "pond", length: "50 ft" },
      "runs[4]": { from: "pond", to: "shed", length: "50 ft" },
    };
    for (const changes of [shed, { ...shed, ...ring }]) {
      const { stage } = yard(cabin(changes));
      expect(stage.choice).toBe("step by step");
      expect(sizesOf(stage).slice(0, 2)).toEqual(sizesOf(alone));
      expect(stage.uses).toEqual(alone.uses);
      for (const { flow, velocity, headLoss } of stage.runs.slice(2))
        expect([flow, velocity, headLoss]).toEqual([0, 0, 0]);
    }
  });

  test("two runs between the same places share the flow", () => {
    const twin = yard(cabin({ "runs[2]": { from: "wellhead", to: "cabin", length: "120 ft" } }));
    expect(twin.stage.choice).toBe("step by step");
    const [one, , two] = twin.stage.runs;
    expect((one?.flow ?? 0) + (two?.flow ?? 0)).toBeCloseTo(gpm(5), 9);
  });
});

test("flows beyond all reach are refused, and say so of the runs", () => {
  const huge = ranch({
    "outlets[0].flow": "1 m³/s",
    "runs[0].length": "50 km",
    "runs[0].pipe": "1/2 in PE SIDR 15",
    uses: undefined,
  });
  expect(() => yard(huge)).toThrow(/^runs: .*within reach/);
});
