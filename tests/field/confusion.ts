/** The blind test as a table: truth down, best answer across. */
import { diagnose } from "risingmain/field";
import { CAUSES, makeCase } from "./diagnosis-cases.ts";

/** Wells for each cause. */
export const WELLS = 20;

/** Counts of the blind test. */
export interface Confusion {
  readonly rows: readonly {
    readonly truth: string;
    readonly best: readonly number[];
    readonly topTwo: number;
    readonly states: Readonly<Record<string, number>>;
  }[];
  readonly topOne: number;
  readonly topTwo: number;
  readonly total: number;
}

/** Runs the blind test on the given number of wells for each cause. */
export function confusion(wells: number): Confusion {
  const rows = CAUSES.map((truth, row) => {
    const best = CAUSES.map(() => 0);
    const states: Record<string, number> = {};
    let topTwo = 0;
    for (let i = 1; i <= wells; i++) {
      const { plant, readings } = makeCase(truth, i * 13 + row);
      const { state, explanations } = diagnose({ plant, readings });
      const [first, second] = explanations;
      // "As planned" is an answer of its own: the sum of small departures is not a fault.
      const answer = state === "as planned" ? "as planned" : (first?.cause ?? "as planned");
      const column = CAUSES.indexOf(answer);
      best[column] = (best[column] ?? 0) + 1;
      if (answer === truth || first?.cause === truth || second?.cause === truth) topTwo++;
      states[state] = (states[state] ?? 0) + 1;
    }
    return { truth, best, topTwo, states };
  });
  return {
    rows,
    topOne: rows.reduce((sum, { best }, i) => sum + (best[i] ?? 0), 0),
    topTwo: rows.reduce((sum, { topTwo }) => sum + topTwo, 0),
    total: wells * CAUSES.length,
  };
}

/** The table as Markdown, as the guide prints it. */
export function confusionTable({ rows, topOne, topTwo, total }: Confusion): string {
  const head = [
    "what was wrong",
    ...CAUSES.map((_, i) => String(i + 1)),
    "right in two",
    "told",
    "cannot tell",
    "none fits",
  ];
  const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  return [
    line(head),
    line(head.map((_, i) => (i === 0 ? "---" : "---:"))),
    ...rows.map(({ truth, best, topTwo: two, states }, i) =>
      line([
        `${i + 1} ${truth}`,
        ...best.map((count) => (count === 0 ? "" : String(count))),
        String(two),
        String((states["told"] ?? 0) + (states["as planned"] ?? 0)),
        String(states["cannot tell"] ?? 0),
        String(states["none fits"] ?? 0),
      ]),
    ),
    "",
    `Best answer right: ${topOne} of ${total}. Right in the best two: ${topTwo} of ${total}.`,
  ].join("\n");
}
