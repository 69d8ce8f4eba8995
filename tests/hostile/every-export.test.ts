/**
 * Every public function against input it was never meant for, driven from the export list, so that a new function cannot
 * be forgotten: the result is finite and typed, or an InputError; never NaN, never another error, never endless.
 *
 * Good arguments come from the functions' own docstring examples, run with recorders in place of the functions; each is
 * then spoiled one part at a time. A function without an example gets garbage alone, and is listed.
 */
import { readdirSync, readFileSync } from "node:fs";
import { transformSync } from "esbuild";
import { describe, expect, test } from "vitest";
import * as library from "../../src/index.ts";
import { garbage, notFinite } from "./garbage.ts";

type Callable = (...args: readonly unknown[]) => unknown;

/** ONLY_MODULE limits the run to one module. */
const only = process.env["ONLY_MODULE"];
const chosen = Object.entries(library as Record<string, Record<string, unknown>>).filter(
  ([module]) => only === undefined || module === only,
);
const functions = chosen.flatMap(([module, exports]) =>
  Object.entries(exports).flatMap(([name, value]) =>
    typeof value === "function" && !/^class\b/.test(Function.prototype.toString.call(value))
      ? [{ module, name, call: value as Callable }]
      : [],
  ),
);

/** What a call did that no call may do; undefined where it behaved. */
function misbehaviour(call: Callable, args: readonly unknown[]): string | undefined {
  try {
    const result = call(...args);
    // A sweep is lazy: its first items are looked at.
    if (typeof result === "object" && result !== null && Symbol.iterator in result && !Array.isArray(result)) {
      let taken = 0;
      for (const item of result as Iterable<unknown>) {
        const found = notFinite(item);
        if (found !== undefined) return `${found} is not finite`;
        if (++taken >= 3) break;
      }
      return undefined;
    }
    if (result === undefined) return "returned nothing";
    const found = notFinite(result);
    return found === undefined ? undefined : `${found} is not finite`;
  } catch (error) {
    if ((error as Error).name === "InputError") return undefined;
    // What the caller's own callback throws is the caller's.
    if ((error as Error).message === "a callback that throws") return undefined;
    return `threw ${String(error)}`;
  }
}

function shown(args: readonly unknown[]): string {
  try {
    return written(args);
  } catch {
    return "<too deep to be written>";
  }
}

function written(args: readonly unknown[]): string {
  const seen = new Set<unknown>();
  return JSON.stringify(args, (_, value: unknown) => {
    if (typeof value === "number" && !Number.isFinite(value)) return `<${value}>`;
    if (Object.is(value, -0)) return "<-0>";
    if (typeof value === "bigint" || typeof value === "symbol" || typeof value === "function")
      return `<${typeof value}>`;
    if (value === undefined) return "<undefined>";
    if (typeof value === "string" && value.length > 60) return `<text of ${value.length}>`;
    if (typeof value === "object" && value !== null) {
      if (seen.has(value)) return "<again>";
      seen.add(value);
    }
    return value;
  }).slice(0, 400);
}

/** Calls kept of each function. */
const MOST_RECORDED = 2;
/** The whole job is spoiled some thousand times: longer than a unit test may take. */
const TIME_LIMIT = 120_000;

/** Good arguments of each function, as the docstring examples call it. */
const recorded = new Map<string, (readonly unknown[])[]>();
recordExamples();

function recordExamples(): void {
  const depth = { now: 0 };
  const scope: Record<string, unknown> = {};
  for (const exports of Object.values(library as Record<string, Record<string, unknown>>))
    Object.assign(scope, exports);
  for (const { module, name, call } of functions) {
    scope[name] = (...args: readonly unknown[]) => {
      const key = `${module}.${name}`;
      const list = recorded.get(key) ?? [];
      if (list.length < MOST_RECORDED) recorded.set(key, [...list, args]);
      depth.now++;
      return call(...args);
    };
  }
  const root = new URL(only === undefined ? "../../src/" : `../../src/${only}/`, import.meta.url);
  for (const file of readdirSync(root, { recursive: true })
    .map(String)
    .filter((f) => f.endsWith(".ts"))) {
    const text = readFileSync(new URL(file.replaceAll("\\", "/"), root), "utf8");
    for (const [, block = ""] of text.matchAll(/^ \* ```ts\n([\s\S]*?)^ \* ```/gm)) {
      const code = block.replace(/^ \* ?/gm, "").replace(/import[\s\S]*?from "[^"]+";/g, "");
      try {
        // In a block, so that an example may use a name for itself that some other module exports.
        new Function(...Object.keys(scope), `{${transformSync(code, { loader: "ts" }).code}}`)(...Object.values(scope));
      } catch {
        // Examples that show a throw have recorded their call by now.
      }
    }
  }
}

/** The argument list with one part replaced, for every part down to a depth. */
function* spoiled(args: readonly unknown[]): Generator<readonly unknown[]> {
  for (const path of paths(args, 4)) for (const bad of garbage()) yield withPart(args, path, bad) as readonly unknown[];
}

function* paths(value: unknown, depth: number): Generator<readonly string[]> {
  if (depth === 0 || typeof value !== "object" || value === null) return;
  // The first two items of a list stand for the rest.
  const keys = Array.isArray(value) ? Object.keys(value).slice(0, 2) : Object.keys(value);
  for (const key of keys) {
    yield [key];
    for (const rest of paths((value as Record<string, unknown>)[key], depth - 1)) yield [key, ...rest];
  }
}

function withPart(value: unknown, [key, ...rest]: readonly string[], part: unknown): unknown {
  if (key === undefined) return part;
  const copy: Record<string, unknown> = Array.isArray(value) ? ([...value] as never) : { ...(value as object) };
  copy[key] = withPart(copy[key], rest, part);
  return copy;
}

/** Faults shown for one function; one is enough to mend it, a few show the pattern. */
const MOST_SHOWN = 5;

describe("every public function", () => {
  test.each(functions.map((f) => [`${f.module}.${f.name}`, f] as const))(
    "%s",
    (key, { call }) => {
      const faults: string[] = [];
      const attempt = (args: readonly unknown[]): void => {
        const fault = misbehaviour(call, args);
        if (fault !== undefined && faults.length < MOST_SHOWN) faults.push(`${shown(args)}: ${fault}`);
      };
      attempt([]);
      for (const bad of garbage()) attempt(Array.from({ length: Math.max(call.length, 1) }, () => bad));
      for (const args of recorded.get(key) ?? []) for (const bad of spoiled(args)) attempt(bad);
      expect(faults).toEqual([]);
    },
    TIME_LIMIT,
  );

  test("has an example whose arguments could be recorded", () => {
    expect(functions.map(({ module, name }) => `${module}.${name}`).filter((key) => !recorded.has(key))).toEqual([]);
  });
});
