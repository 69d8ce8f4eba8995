/** The claim "the same bits in every engine", held at its root: only operations that IEEE 754 and the language fix. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

/** Exact or correctly rounded by the language's own rules; the rest of Math, and powers, are left to the engine. */
const FIXED = ["Math.PI", "Math.abs", "Math.clz32", "Math.fround", "Math.max", "Math.sqrt"];

test.each([
  "bridge",
  "colebrook",
  "colebrook-diameter",
  "darcy-weisbach",
  "diameter-for-head-loss",
  "fifth-root",
  "flow-for-head-loss",
  "friction-factor",
  "minus-log",
  "reynolds-for-loss",
])("%s.ts uses + − × ÷ √ and whole numbers alone", (file) => {
  const source = readFileSync(new URL(`../../src/pipe/${file}.ts`, import.meta.url), "utf8");
  const code = source.replace(/\/\*[\s\S]*?\*\//g, "").replace(/\/\/.*/g, "");
  const others = [...code.matchAll(/Math\.\w+/g)].map(([name]) => name).filter((name) => !FIXED.includes(name));
  expect(others).toEqual([]);
  expect(code).not.toContain("**");
});
