/** The blind test as two tables: truth down, best answer across; and what the readings asked for make of it. */
import { type CauseName, type Diagnosis, type DiagnosisReading, diagnose, type ReadingKind } from "risingmain/field";
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
      const answer = answerOf({ state, explanations });
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

/** "As planned" is an answer of its own: the sum of small departures is not a fault. */
function answerOf({ state, explanations: [first] }: Pick<Diagnosis, "state" | "explanations">): CauseName {
  return state === "as planned" ? "as planned" : (first?.cause ?? "as planned");
}

/** What a commissioning sheet has of a plant behind a valve: one point of the pump's curve. */
const SHEET: readonly ReadingKind[] = [
  "static level",
  "pumping level",
  "flow",
  "far flow",
  "cut-in",
  "cut-out",
  "precharge",
  "regulated pressure",
  "pressure fall",
  "voltage",
];
/** Readings an installer will take before he gives up. */
const PATIENCE = 4;

/** Right answers before and after the readings asked for. */
export interface Asked {
  readonly rows: readonly {
    readonly truth: string;
    readonly atFirst: number;
    readonly after: number;
    /** Readings asked for, by kind. */
    readonly asked: Readonly<Record<string, number>>;
  }[];
  readonly wells: number;
}

/** Starts from the sheet alone and takes what is asked for until the answer stands. */
export function askedFor(wells: number): Asked {
  const rows = CAUSES.map((truth, row) => {
    const asked: Record<string, number> = {};
    let [atFirst, after] = [0, 0];
    for (let i = 1; i <= wells; i++) {
      const { plant, readings, take } = makeCase(truth, i * 13 + row);
      const taken: DiagnosisReading[] = readings.filter(
        ({ kind, at }) => SHEET.includes(kind) && (kind !== "flow" || at === plant.cutIn),
      );
      let answer = diagnose({ plant, readings: taken });
      if (answerOf(answer) === truth) atFirst++;
      for (let k = 0; k < PATIENCE && answer.state === "cannot tell" && answer.next !== null; k++) {
        const { kind, at, over } = answer.next;
        asked[kind] = (asked[kind] ?? 0) + 1;
        taken.push(take({ kind, ...(at === undefined ? {} : { at }), ...(over === undefined ? {} : { over }) }));
        answer = diagnose({ plant, readings: taken });
      }
      if (answerOf(answer) === truth) after++;
    }
    return { truth, atFirst, after, asked };
  });
  return { rows, wells };
}

/** The table as Markdown, as the guide prints it. */
export function askedTable({ rows, wells }: Asked): string {
  const sum = (of: "atFirst" | "after"): number => rows.reduce((total, row) => total + row[of], 0);
  return [
    "| what was wrong | right from the sheet | right after what was asked for | asked for, times |",
    "| --- | ---: | ---: | --- |",
    ...rows.map(({ truth, atFirst, after, asked }) => {
      const list = Object.entries(asked).map(([kind, times]) => `${kind} ${times}`);
      return `| ${truth} | ${atFirst} | ${after} | ${list.join(", ")} |`;
    }),
    "",
    `Right from the sheet alone: ${sum("atFirst")} of ${wells * rows.length}. After the readings asked for: ${sum("after")} of ${wells * rows.length}.`,
  ].join("\n");
}
