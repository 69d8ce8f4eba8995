/** The laying of an answer in whole pieces and with the loss of each change, by hand. */
import type { DarcyRun, Outlet, Run } from "risingmain/network";
import { type PartWayInput, type PartWaySize, partWaySizes } from "risingmain/selection";
import type { GaugePressure } from "risingmain/units";
import { describe, expect, test } from "vitest";
import { flow, lossOf, m } from "../network/layouts.ts";
import { oneRun, PER_HEAD } from "./layouts.ts";
import { grade, inPieces, type Line, laid, metres, narrow, Q, wide, wider } from "./lines.ts";
import { found } from "./solver.ts";

const G = 9.80665;

describe("laid in whole pieces of 6 m", () => {
  const none = { spare: [0] };
  const three = inPieces(narrow, wide, wider);
  test.each<[title: string, line: Line, parts: [string, number][]]>([
    [
      "each part but the last is rounded up",
      { ...none, sizes: [three], lengths: [[69, 21, 10]] },
      [
        ["wider", 12],
        ["wide", 24],
        ["narrow", 64],
      ],
    ],
    [
      "the last change is rounded down where the one before gains enough by rounding up",
      { ...none, sizes: [three], lengths: [[70, 20, 10]] },
      [
        ["wider", 12],
        ["wide", 18],
        ["narrow", 70],
      ],
    ],
    [
      "whole pieces stay",
      { ...none, sizes: [three], lengths: [[76, 24, 0]] },
      [
        ["wide", 24],
        ["narrow", 76],
      ],
    ],
    [
      "and so within rounding",
      { ...none, sizes: [three], lengths: [[76 - 1e-9, 24 + 1e-9, 0]] },
      [
        ["wide", 24],
        ["narrow", 76],
      ],
    ],
    [
      "what is sold in any length stays",
      { ...none, sizes: [[...inPieces(narrow), wide]], lengths: [[77, 23]] },
      [
        ["wide", 23],
        ["narrow", 77],
      ],
    ],
    ["the last piece fills the run", { ...none, sizes: [three], lengths: [[3, 97, 0]] }, [["wide", 100]]],
    ["and swallows two parts", { ...none, sizes: [three], lengths: [[1, 1, 98]] }, [["wider", 100]]],
    ["or less than a millimetre", { ...none, sizes: [three], lengths: [[0.5005, 29.5, 0]] }, [["wide", 30.0005]]],
    [
      "but not a millimetre",
      { ...none, sizes: [three], lengths: [[0.501, 29.5, 0]] },
      [
        ["wide", 30],
        ["narrow", 0.001],
      ],
    ],
    // Enough head for all narrow: one piece less than rounded up, not more.
    [
      "with head to spare the last change is rounded down",
      { sizes: [three], lengths: [[70, 20, 10]] },
      [
        ["wider", 12],
        ["wide", 18],
        ["narrow", 70],
      ],
    ],
    ["to nothing", { sizes: [three], lengths: [[95, 5, 0]] }, [["narrow", 100]]],
    [
      "to nothing of the middle size",
      { sizes: [three], lengths: [[85, 5, 10]] },
      [
        ["wider", 12],
        ["narrow", 88],
      ],
    ],
    [
      "whole pieces too",
      { sizes: [three], lengths: [[76, 24, 0]] },
      [
        ["wide", 18],
        ["narrow", 82],
      ],
    ],
    [
      "where the last piece filled the run",
      { sizes: [three], lengths: [[3, 97, 0]] },
      [
        ["wide", 96],
        ["narrow", 4],
      ],
    ],
    ["not so that a part is too short", { sizes: [three], lengths: [[0.5005, 29.5, 0]] }, [["wide", 30.0005]]],
    [
      "but to a millimetre",
      { sizes: [three], lengths: [[0.501, 29.5, 0]] },
      [
        ["wide", 24],
        ["narrow", 6.001],
      ],
    ],
    ["not where the wide part has gone into the wider", { sizes: [three], lengths: [[1, 1, 98]] }, [["wider", 100]]],
    [
      "not one sold in any length",
      { sizes: [[...inPieces(narrow, wide), wider]], lengths: [[0, 77, 23]] },
      [
        ["wider", 23],
        ["wide", 77],
      ],
    ],
    [
      "not where the narrow size costs more",
      { sizes: [inPieces({ ...narrow, costPerMetre: 3 }, wide)], lengths: [[80, 20]] },
      [
        ["wide", 24],
        ["narrow", 76],
      ],
    ],
    [
      "nor where it costs the same",
      { sizes: [inPieces({ ...narrow, costPerMetre: 2 }, wide)], lengths: [[80, 20]] },
      [
        ["wide", 24],
        ["narrow", 76],
      ],
    ],
    ["one size is laid as it is", { sizes: [three], lengths: [[100, 0, 0]] }, [["narrow", 100]]],
  ])("%s", (_, line, parts) => {
    expect(metres(laid(line))).toEqual(parts);
  });

  test("of two changes that could go back but not both, the one that saves more does", () => {
    // 22 m of the wide size in both: each goes up to 24 m, and back to 18 m where the head allows it.
    const dear = { ...wide, costPerMetre: 2.5 };
    const step = 6 * (grade(narrow) - grade(wide));
    // What both gain by rounding up is 4 m of widening; a piece back takes 6.
    const at = (first: PartWaySize, second: PartWaySize) => {
      const made = laid({
        sizes: [inPieces(narrow, first), inPieces(narrow, second)],
        lengths: [
          [78, 22],
          [78, 22],
        ],
        spare: [10, (3 / 6) * step],
      });
      return [metres(made, 0)[0]?.[1], metres(made, 1)[0]?.[1]];
    };
    expect(at(dear, wide)).toEqual([18, 24]);
    expect(at(wide, dear)).toEqual([24, 18]);
  });

  test("a size sold in any length keeps none of the others from going back", () => {
    const sizes = [[...inPieces(narrow), wide], inPieces(narrow, wide), [...inPieces(narrow), wide]];
    const lengths = sizes.map(() => [78, 22]);
    const made = laid({ sizes, lengths });
    expect([0, 1, 2].map((run) => metres(made, run)[0]?.[1])).toEqual([22, 18, 22]);
  });

  test("what just leaves enough is enough", () => {
    const step = 6 * (grade(narrow) - grade(wide));
    const at = (spare: number) => metres(laid({ sizes: [three], lengths: [[76, 24, 0]], spare: [spare] }))[0]?.[1];
    // A millionth of a metre of head may be missing.
    expect(at(step - 0.9e-6)).toBe(18);
    expect(at(step - 1.1e-6)).toBe(24);
  });
});

describe("laid with the loss of each change", () => {
  /** Loss of a fitting of coefficient 0.5 on the velocity in the narrow size. */
  const change = (coefficient: number) =>
    (coefficient * (Q / ((Math.PI / 4) * narrow.insideDiameter ** 2)) ** 2) / (2 * G);
  const gain = grade(narrow) - grade(wide);

  test("the narrow end is widened by what the change takes; a part at least a millimetre, a run at most all", () => {
    const at = (coefficient: number, lengths: readonly number[], spare = 0) =>
      metres(laid({ sizes: [[narrow, wide]], lengths: [lengths], spare: [spare], changeCoefficient: coefficient }));
    const more = change(0.5) / gain;
    expect(at(0.5, [70, 30])).toEqual([
      ["wide", Number((30 + more).toFixed(7))],
      ["narrow", Number((70 - more).toFixed(7))],
    ]);
    // All but a thousandth of the loss is there already.
    expect(at(0.5, [70, 30], change(0.5) - 5e-4 * gain)).toEqual([
      ["wide", 30.001],
      ["narrow", 69.999],
    ]);
    expect(at(0.5, [70, 30], change(0.5) - 2e-3 * gain)).toEqual([
      ["wide", 30.002],
      ["narrow", 69.998],
    ]);
    expect(at(0.5, [more / 2, 100 - more / 2])).toEqual([["wide", 100]]);
    // Narrow left of less than a millimetre goes too.
    expect(at(0.5, [more + 5e-4, 100 - more - 5e-4])).toEqual([["wide", 100]]);
  });

  test("in whole pieces: by as many as it takes", () => {
    const sizes = [inPieces(narrow, wide)];
    const at = (coefficient: number) =>
      metres(laid({ sizes, lengths: [[70, 30]], spare: [0], changeCoefficient: coefficient }))[0];
    for (const coefficient of [0.1, 0.5, 1, 2, 5, 10]) {
      expect(at(coefficient)).toEqual(["wide", 6 * Math.ceil((30 + change(coefficient) / gain) / 6)]);
    }
  });

  test("of the runs on the way and their wider sizes, the one that costs least for the head it gains", () => {
    const cost = (name: string, wideCost: number, widerCost: number) =>
      [narrow, { ...wide, costPerMetre: wideCost }, { ...wider, costPerMetre: widerCost }].map((size) => ({
        ...size,
        name: `${name} ${size.name}`,
      }));
    const changed = (near: readonly PartWaySize[], far: readonly PartWaySize[], spare: readonly number[]) => {
      const made = laid({
        sizes: [near, far],
        lengths: [
          [70, 30, 0],
          [70, 30, 0],
        ],
        spare,
        changeCoefficient: 0.5,
      });
      return [0, 1].flatMap((run) =>
        metres(made, run)
          .filter(([, length]) => length !== 30 && length < 60)
          .map(([size]) => size),
      );
    };
    // Two changes to pay at the far end. The wider size gains more a metre; at these prices it is not worth its cost.
    const two = change(0.5) * 2;
    expect(changed(cost("near", 2, 4), cost("far", 2.1, 4.2), [5, 0])).toEqual(["near wide"]);
    expect(changed(cost("near", 2.1, 4.2), cost("far", 2, 4), [5, 0])).toEqual(["far wide"]);
    // So dear is the wide size, and so cheap the wider.
    expect(changed(cost("near", 4, 4), cost("far", 4, 3.9), [5, 0])).toEqual(["far wider"]);
    // Short at the near end alone: what the far run gains is of no use there.
    expect(changed(cost("near", 4, 8), cost("far", 2, 4), [0, two + 5])).toEqual(["near wide"]);
  });

  test("by price for head, whatever the lengths and the prices of the narrow sizes", () => {
    const priced = (...costs: readonly number[]) =>
      [narrow, wide].map((size, k) => ({ ...size, costPerMetre: costs[k] as number }));
    const widened = (near: readonly number[], far: readonly number[], lengths: readonly (readonly number[])[]) => {
      const made = laid({ sizes: [priced(...near), priced(...far)], lengths, spare: [5, 0], changeCoefficient: 0.5 });
      return [0, 1].filter((run) => (metres(made, run)[0]?.[1] as number) > (lengths[run]?.[1] as number) + 1e-3);
    };
    const [short, long] = [
      [70, 30],
      [170, 30],
    ];
    expect(widened([1, 2], [1, 2.1], [long, short])).toEqual([0]);
    expect(widened([1, 2.1], [1, 2], [short, long])).toEqual([1]);
    expect(widened([1, 2], [5, 5.5], [short, short])).toEqual([1]);
    expect(widened([5, 5.5], [1, 2], [short, short])).toEqual([0]);
  });

  test("by hand: in a run of three sizes, and in one that had a single size", () => {
    const three = laid({ sizes: [[narrow, wide, wider]], lengths: [[40, 25, 35]], spare: [0], changeCoefficient: 0.5 });
    // Two changes: one in the narrow size, one in the wide.
    const lost = change(0.5) * (1 + (narrow.insideDiameter / wide.insideDiameter) ** 4);
    // The wide size costs 1 more for what it gains over the narrow, the wider 3 for little more.
    const more = lost / gain;
    expect(metres(three)).toEqual([
      ["wider", 35],
      ["wide", Number((25 + more).toFixed(7))],
      ["narrow", Number((40 - more).toFixed(7))],
    ]);
    // What the far run's change takes, the cheap near run gives, and pays for a change of its own.
    const near = [narrow, { ...wide, costPerMetre: 1.5 }];
    const single = laid({
      sizes: [near, [narrow, wide]],
      lengths: [
        [100, 0],
        [70, 30],
      ],
      spare: [5, 0],
      changeCoefficient: 0.5,
    });
    const parts = metres(single);
    expect(parts.map(([size]) => size)).toEqual(["wide", "narrow"]);
    expect(parts[0]?.[1]).toBeCloseTo((2 * change(0.5)) / gain, 5);
    expect(parts.reduce((sum, [, length]) => sum + length, 0)).toBeCloseTo(100, 6);
    // Or all of it, where it is shorter than that.
    const shorter = laid({
      sizes: [near, [narrow, wide]],
      lengths: [
        [0.5, 0],
        [70, 30],
      ],
      spare: [5, 0],
      changeCoefficient: 0.5,
    });
    expect(metres(shorter)).toEqual([["wide", 0.5]]);
    expect(metres(shorter, 1)[0]?.[1]).toBeCloseTo(30 + change(0.5) / gain - 0.5, 5);
  });

  test("past a run that keeps its own bore", () => {
    const { network, choices, scenarios } = oneRun(1000);
    const own = { ...(network.runs[0] as Run), id: "own", from: "0", to: "2" } as Run;
    const lost = lossOf(own, Q) + 30 * grade(wide) + 70 * grade(narrow);
    const input: PartWayInput = {
      network: {
        ...network,
        junctions: ["0", "1", "2"].map((id) => ({ id, elevation: m(0) })),
        runs: [own, { ...(network.runs[0] as Run), from: "2" }],
        sources: [{ id: "tank", junction: "0", kind: "fixed head", head: m(lost) }],
      },
      choices,
      scenarios,
      changeCoefficient: 0.5,
    };
    const { laid: made } = found(partWaySizes({ ...input, answer: { values: [0.7, 0.3] } }));
    expect(made?.state === "laid" && metres(made)[0]?.[1]).toBeCloseTo(30 + change(0.5) / gain, 5);
  });

  test("a size that loses more in another use is not widened to; one that loses the same there is", () => {
    const { network, choices } = oneRun(1000);
    const line = network.runs[0] as Run;
    const lost = (30 * grade(wide) + 70 * grade(narrow)) as number;
    const outlets: Outlet[] = [
      {
        id: "o",
        junction: "1",
        kind: "fixed demand",
        flow: flow(Q),
        leastPressure: ((1000 - lost) * PER_HEAD) as GaugePressure,
      },
    ];
    const input: PartWayInput = {
      network: { ...network, runs: [line], outlets },
      choices,
      // At night nothing is drawn, and nothing lost in any size.
      scenarios: [
        { name: "day", open: ["o"] },
        { name: "night", open: [] },
      ],
      changeCoefficient: 0.5,
    };
    const { laid: made } = found(partWaySizes({ ...input, answer: { values: [0.7, 0.3] } }));
    expect(made?.state === "laid" && metres(made)[0]).toEqual(["wide", Number((30 + change(0.5) / gain).toFixed(7))]);
  });

  test("a change between two of one bore counts once", () => {
    const rough = { ...wide, name: "rough", roughness: m(1e-4), costPerMetre: 1 };
    const made = laid({ sizes: [[rough, wide]], lengths: [[50, 50]], changeCoefficient: 0.5 });
    expect(made.network.runs.map((run) => (run as DarcyRun).lossCoefficient)).toEqual([undefined, 0.5]);
  });

  test("a change belongs to the narrower part", () => {
    const made = laid({ sizes: [[narrow, wide, wider]], lengths: [[40, 30, 30]], changeCoefficient: 0.5 });
    expect(made.network.runs.map((run) => (run as DarcyRun).lossCoefficient)).toEqual([undefined, 0.5, 0.5]);
  });
});
