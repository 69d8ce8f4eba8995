/** Programmes and answers small enough to be worked by hand, without a solver. */
import fc from "fast-check";
import type { DarcyRun, Network, Run } from "risingmain/network";
import { type PartWayInput, partWayProgramme, partWaySizes } from "risingmain/selection";
import type { GaugePressure } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { flow, lossOf, m, water } from "../network/layouts.ts";
import { refused } from "../refused.ts";
import { oneRun, PER_HEAD, small } from "./layouts.ts";
import { grade, type Line, laidOut, metres, narrow, pipe, Q, wide, wider } from "./lines.ts";
import { found } from "./solver.ts";

describe("the programme", () => {
  test("has a row for each junction and use that no junction beyond makes sure, and no more; variables rise", () => {
    fc.assert(
      fc.property(small, ({ network, sizes, scenarios }) => {
        const programme = partWayProgramme({
          network,
          choices: network.runs.map(({ id }) => ({ run: id, sizes })),
          scenarios,
        });
        if (programme.state !== "to be solved") return;
        const up = [-1, ...network.runs.map(({ from }) => Number(from))];
        const path = (i: number): number[] => (i === 0 ? [] : [...path(up[i] as number), i]);
        const expected = scenarios.reduce((sum, { open }) => {
          const isOpen = (i: number) => open.includes(`o${i - 1}`);
          const carried = up.map((_, i) =>
            up.reduce(
              (q, __, j) =>
                q + (path(j).includes(i) && isOpen(j) ? (network.outlets[j - 1] as { flow: number }).flow : 0),
              0,
            ),
          );
          const least = network.junctions.map(
            ({ elevation }, i) =>
              elevation + (isOpen(i) ? (network.outlets[i - 1]?.leastPressure as number) / PER_HEAD : 0),
          );
          const leastLoss = carried.map((q, i) =>
            i === 0
              ? 0
              : Math.min(
                  ...sizes.map(({ insideDiameter }) => lossOf({ ...network.runs[i - 1], insideDiameter } as Run, q)),
                ),
          );
          const sure = (i: number) =>
            up.some((_, j) => {
              const way = path(j);
              if (j === i || !way.includes(i)) return false;
              const between = way.slice(way.indexOf(i) + 1).reduce((h, l) => h + (leastLoss[l] as number), 0);
              return (least[j] as number) + between >= (least[i] as number);
            });
          return sum + up.filter((_, i) => path(i).some((l) => (carried[l] as number) > 0) && !sure(i)).length;
        }, 0);
        const heads = programme.rows.filter(({ name }) => name.startsWith("head"));
        expect(heads.length).toBe(expected);
        for (const { variables, coefficients } of programme.rows) {
          expect(variables).toEqual([...variables].sort((a, b) => a - b));
          expect(new Set(variables).size).toBe(variables.length);
          // What loses nothing is left out.
          expect(Math.min(...coefficients)).toBeGreaterThan(0);
        }
      }),
    );
  });

  test("of more than 2 000 000 terms is refused", () => {
    // A falling line: each of 1000 junctions is asked for its own pressure, through 4 sizes of each run before it.
    const count = 1000;
    const ids = Array.from({ length: count + 1 }, (_, i) => `${i}`);
    const runs = ids
      .slice(1)
      .map((to, i): Run => ({ ...pipe, law: "hazen-williams", coefficient: 150, id: to, from: `${i}`, to }));
    const falling: PartWayInput = {
      network: {
        water,
        junctions: ids.map((id, i) => ({ id, elevation: m(-9 * i) })),
        runs,
        outlets: [{ id: "o", junction: `${count}`, kind: "fixed demand", flow: flow(Q) }],
        sources: [{ id: "tank", junction: "0", kind: "fixed head", head: m(1000) }],
      },
      choices: runs.map(({ id }) => ({ run: id, sizes: [narrow, wide, wider, { ...wider, name: "widest" }] })),
      scenarios: [{ name: "use", open: ["o"] }],
    };
    // 4000 in the rows of the runs and 4 × (1 + 2 + … + 1000) in those of the heads.
    expect(4000 + (4 * 1000 * 1001) / 2).toBeGreaterThan(2e6);
    expect(refused(() => partWayProgramme(falling))).toBe("scenarios");
  }, 60_000);
});

describe("an answer", () => {
  const answered = (values: readonly number[], duals?: readonly number[], input = oneRun(1000)) =>
    partWaySizes({ ...input, answer: { values, ...(duals && { duals }) } });

  test("may be off by a millionth in its shares, and no more", () => {
    for (const values of [
      [0.5, 0.5 + 0.99e-6],
      [0.5, 0.5 - 0.99e-6],
      [1 + 0.9e-6, -0.9e-6],
    ]) {
      expect(answered(values).state).toBe("found");
    }
    for (const values of [
      [0.5, 0.5 + 1.01e-6],
      [0.5, 0.5 - 1.01e-6],
      [1 + 1.01e-6, -1.01e-6],
    ]) {
      const result = answered(values);
      expect(result).toMatchObject({ because: "shares", run: "r" });
      if (result.state === "answer fails" && result.because === "shares") expect(result.off).toBeCloseTo(1.01e-6, 12);
    }
  });

  test("that fails in two runs is said to fail in the one that is further off", () => {
    const line = { ...oneRun(1000).network.runs[0], id: "far", from: "1", to: "2" } as Run;
    const { network, choices, scenarios } = oneRun(1000);
    const both: PartWayInput = {
      network: {
        ...network,
        runs: [...network.runs, line],
        junctions: [...network.junctions, { id: "2", elevation: m(0) }],
      },
      choices: [...choices, { run: "far", sizes: choices[0]?.sizes ?? [] }],
      scenarios,
    };
    expect(answered([0.5, 0.4, 0.5, 0.3], undefined, both)).toMatchObject({ run: "far" });
    expect(answered([0.5, 0.3, 0.5, 0.4], undefined, both)).toMatchObject({ run: "r" });
  });

  test("fills its runs though its shares do not quite", () => {
    const result = found(answered([0.5 - 4e-7, 0.5 - 4e-7]));
    expect(metres(result.least)).toEqual([
      ["wide", 50],
      ["narrow", 50],
    ]);
  });

  test("is proven where it costs a millionth more than the bound, and no more; where nothing costs, too", () => {
    const [n, w] = [100 * grade(narrow), 100 * grade(wide)];
    // Half of each; a metre of head is worth what it saves.
    const input = oneRun((n + w) / 2);
    const price = (200 - 100) / (n - w);
    const proven = (more: number) => {
      const result = found(answered([0.5 - more, 0.5 + more], [0, price], input));
      expect(result.bound).toBeCloseTo(150, 9);
      return result.proven;
    };
    // Each share is 100 dearer in the wide size: 0.75e-6 and 1.2e-6 of 150.
    expect(proven(1.125e-6)).toBe(true);
    expect(proven(1.8e-6)).toBe(false);
    const free = input.choices.map((choice) => ({
      ...choice,
      sizes: choice.sizes.map((size) => ({ ...size, costPerMetre: 0 })),
    }));
    expect(found(answered([0, 1], [0, 0], { ...input, choices: free })).proven).toBe(true);
  });

  test("takes into account what a run of its own bore loses", () => {
    const { network, choices, scenarios } = oneRun(1000);
    const own = { ...pipe, id: "own", from: "0", to: "2" } as const;
    const main = { ...pipe, id: "r", from: "2", to: "1" } as const;
    const at = (head: number): PartWayInput => ({
      network: {
        ...network,
        junctions: ["0", "1", "2"].map((id) => ({ id, elevation: m(0) })),
        runs: [own, main],
        sources: [{ id: "tank", junction: "0", kind: "fixed head", head: m(head) }],
      },
      choices,
      scenarios,
    });
    const lost = lossOf(own, Q) + 100 * grade(wide);
    const { least, proven } = found(answered([0, 1], [0, 0], at(lost + 1)));
    expect(least.tightest.margin / PER_HEAD).toBeCloseTo(1, 9);
    expect(least.network.runs[0]).toEqual(own);
    // Proven only at the price of head: the narrow size costs less and does not serve.
    expect(proven).toBe(false);
    // A pressure that no size can change has no row.
    const asked = {
      id: "p",
      junction: "2",
      kind: "fixed demand",
      flow: flow(0),
      leastPressure: 9e6 as GaugePressure,
    } as const;
    const high = partWayProgramme({
      ...at(1000),
      network: { ...at(1000).network, outlets: [...network.outlets, asked] },
      scenarios: [{ name: "use", open: ["o", "p"] }],
    });
    expect(high.state === "to be solved" && high.rows.map(({ variables }) => variables)).toEqual([
      [0, 1],
      [0, 1],
    ]);
    const tight = at(lost);
    const programme = partWayProgramme(tight);
    expect(programme.state === "to be solved" && programme.rows.at(-1)?.bound).toBeCloseTo(100 * grade(wide), 9);
    expect(found(answered([0, 1], [0, 1e3], tight)).proven).toBe(true);
  });
});

describe("a part shorter than a millimetre gives its length away, or takes what it lacks", () => {
  const all = [narrow, wide, wider];
  test.each<[title: string, lengths: readonly number[], parts: [string, number][]]>([
    ["the narrow end", [0.0005, 99.9995, 0], [["wide", 100]]],
    [
      "the first part",
      [99.9995, 0.0005, 0],
      [
        ["wide", 0.001],
        ["narrow", 99.999],
      ],
    ],
    [
      "the first of three",
      [50, 49.9995, 0.0005],
      [
        ["wider", 0.001],
        ["wide", 49.999],
        ["narrow", 50],
      ],
    ],
    [
      "the middle one",
      [49.9995, 0.0005, 50],
      [
        ["wider", 50.0005],
        ["narrow", 49.9995],
      ],
    ],
    [
      "the first, and the second is too short to give",
      [99.9983, 0.0012, 0.0005],
      [
        ["wider", 0.0017],
        ["narrow", 99.9983],
      ],
    ],
    ["both of a run of less than two", [0.0009, 0.0009, 0], [["wide", 0.0018]]],
    [
      "none: a millimetre is enough",
      [0.001, 98.999, 1],
      [
        ["wider", 1],
        ["wide", 98.999],
        ["narrow", 0.001],
      ],
    ],
  ])("%s", (_, lengths, parts) => {
    expect(metres(laidOut({ sizes: [all], lengths: [lengths] }).least)).toEqual(parts);
  });
});

describe("the layout told", () => {
  const twice = {
    sizes: [
      [narrow, wide],
      [narrow, wide],
    ],
    lengths: [
      [70, 30],
      [60, 40],
    ],
  };

  test("runs outwards, part by part; a run of one part keeps its name; changes lie on the line between the ends", () => {
    const input = {
      ...twice,
      lengths: [
        [70, 30],
        [100, 0],
      ],
    };
    const { least } = laidOut(input);
    expect(least.network.runs.map(({ id, from, to }) => `${id}: ${from} > ${to}`)).toEqual([
      "r0, part 1: 0 > r0, change 1",
      "r0, part 2: r0, change 1 > 1",
      "r1: 1 > 2",
    ]);
    expect(least.runs.map(({ parts }) => parts.map(({ id }) => id))).toEqual([["r0, part 1", "r0, part 2"], ["r1"]]);
    const sloping = oneRun(1000);
    const network: Network = {
      ...sloping.network,
      junctions: [10, -10].map((z, i) => ({ id: `${i}`, elevation: m(z) })),
    };
    const { least: down } = found(partWaySizes({ ...sloping, network, answer: { values: [0.7, 0.3] } }));
    // Of 20 m, 30 % from the top.
    expect(down.network.junctions[2]?.elevation).toBeCloseTo(10 - 0.3 * 20, 12);
  });

  test("in the order of the choices, with its tightest junction", () => {
    const { least } = laidOut({ ...twice, spare: [1, 3] });
    expect(least.tightest).toMatchObject({ junction: "1", scenario: "use" });
    expect(least.tightest.margin / PER_HEAD).toBeCloseTo(1, 9);
    const input = oneRun(1000);
    const whole = input.network.runs[0] as Run;
    const network: Network = {
      ...input.network,
      junctions: ["0", "1", "2"].map((id) => ({ id, elevation: m(0) })),
      runs: [whole, { ...whole, id: "side", from: "0", to: "2" }],
    };
    const choices = ["side", "r"].map((run) => ({ run, sizes: [narrow] }));
    const back = found(partWaySizes({ ...input, network, choices, answer: { values: [1, 1] } }));
    expect(back.least.runs.map(({ run }) => run)).toEqual(["side", "r"]);
  });

  test("under names that nothing else has, of 200 characters at most", () => {
    const input = oneRun(1000);
    const whole = input.network.runs[0] as Run;
    const taken = ["r, part 1", "r, part 1 (2)", "r, change 1"];
    const network: Network = {
      ...input.network,
      junctions: [...input.network.junctions, ...taken.map((id) => ({ id, elevation: m(0) }))],
      runs: [whole, ...taken.map((id, i): Run => ({ ...whole, id: `tail ${i}`, from: "1", to: id }))],
    };
    const { least } = found(partWaySizes({ ...input, network, answer: { values: [0.5, 0.5] } }));
    expect(least.runs[0]?.parts.map(({ id }) => id)).toEqual(["r, part 1 (3)", "r, part 2"]);
    expect(least.network.junctions.at(-1)?.id).toBe("r, change 1 (2)");
    const long = {
      ...input,
      network: { ...input.network, runs: [{ ...whole, id: "r".repeat(200) }] },
      choices: input.choices.map((choice) => ({ ...choice, run: "r".repeat(200) })),
    };
    const told = found(partWaySizes({ ...long, answer: { values: [0.5, 0.5] } })).least;
    expect(told.network.runs[0]?.id).toBe(`${"r".repeat(170)}, part 1`);
  });

  test("a run's fittings are spread along it; without any, none are written", () => {
    const fittings = (line: Partial<Line>) =>
      laidOut({ ...twice, ...line }).least.network.runs.map((run) => (run as DarcyRun).lossCoefficient);
    expect(fittings({ run: { lossCoefficient: 10 } }).map((k) => Number(k?.toFixed(9)))).toEqual([3, 7, 4, 6]);
    expect(fittings({})).toEqual([undefined, undefined, undefined, undefined]);
    expect(Object.keys(laidOut(twice).least.network.runs[0] as Run)).not.toContain("lossCoefficient");
  });
});
