/** What a mutation run leaves behind: counts, and the mutants no test noticed, beside what was judged of them. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";

/** One module's run. */
export interface MutationResult {
  readonly module: string;
  readonly date: string;
  /** Of the library, and of the tool. */
  readonly version: string;
  readonly stryker: string;
  readonly killed: number;
  /** Made the tests run on without end: noticed too. */
  readonly timeout: number;
  readonly survived: number;
  readonly uncovered: number;
  /** Left out, for the reasons in `stryker.config.mjs`. */
  readonly ignored: number;
  /** By file: the line, and what was changed into what, shortened. */
  readonly survivors: Readonly<Record<string, readonly string[]>>;
}

type Counts = Pick<MutationResult, "killed" | "timeout" | "survived" | "uncovered">;

/** Why some survivors of one file may live. */
export interface Judgement {
  readonly file: string;
  readonly changes: readonly string[];
  /** No input can tell. Otherwise a test is missing, or only time tells. */
  readonly equivalent: boolean;
  readonly why: string;
}

const here = new URL("./", import.meta.url);

const resultFile = (module: string): URL => new URL(`results/${module}.json`, here);

export function readResult(module: string): MutationResult | undefined {
  const file = resultFile(module);
  return existsSync(file) ? (JSON.parse(readFileSync(file, "utf8")) as MutationResult) : undefined;
}

export function writeResult(result: MutationResult): void {
  writeFileSync(resultFile(result.module), `${JSON.stringify(result, undefined, 1)}\n`);
}

/** Noticed mutants among those that were run; `equivalent` ones, which nothing could notice, set aside if given. */
export function score({ killed, timeout, survived, uncovered }: Counts, equivalent = 0): number {
  const noticed = killed + timeout;
  return noticed / (noticed + survived + uncovered - equivalent);
}

/** A survivor without its line, by which it is judged: lines move. */
export const changeOf = (survivor: string): string => survivor.replace(/^\d+: /, "");

/** What was judged of a module's survivors. */
export function judgements(module: string): readonly Judgement[] {
  const file = new URL(`judged/${module}.json`, here);
  return existsSync(file) ? (JSON.parse(readFileSync(file, "utf8")) as Judgement[]) : [];
}

/** The folders of the library. */
export const modules = (): readonly string[] =>
  readdirSync(new URL("../../src/", here), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();
