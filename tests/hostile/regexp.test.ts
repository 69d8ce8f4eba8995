/**
 * Every regular expression of the sources runs in time linear in its text: judged by recheck, which searches the automaton of
 * each for a text that makes it blow up.
 */
import { readFileSync } from "node:fs";
import { check } from "recheck";
import { globSync } from "tinyglobby";
import ts from "typescript";
import { expect, test } from "vitest";

/** Milliseconds the judge may take over one expression on a busy machine. */
const PATIENCE = 120_000;

const root = new URL("../../", import.meta.url);

/** Where each expression stands, and what it is. */
const expressions = globSync(["src/**/*.ts"], { cwd: root.pathname }).flatMap((file) => {
  const source = ts.createSourceFile(file, readFileSync(new URL(file, root), "utf8"), ts.ScriptTarget.Latest, true);
  const found: { at: string; pattern: string; flags: string }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isRegularExpressionLiteral(node)) {
      const end = node.text.lastIndexOf("/");
      const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      found.push({ at: `${file}:${line}`, pattern: node.text.slice(1, end), flags: node.text.slice(end + 1) });
    }
    // An expression put together at run time could not be judged here: there is none.
    if (ts.isNewExpression(node) && node.expression.getText() === "RegExp")
      found.push({ at: file, pattern: "", flags: "?" });
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
});

test("there are expressions to judge", () => {
  expect(expressions.length).toBeGreaterThan(10);
});

test.each(expressions.map((e) => [`${e.at} /${e.pattern}/${e.flags}`, e] as const))(
  "%s",
  async (_, { pattern, flags }) => {
    expect(flags).not.toBe("?");
    const found = await check(pattern, flags, { timeout: PATIENCE });
    expect({ status: found.status, growth: found.status === "unknown" ? found.error : found.complexity.type }).toEqual({
      status: "safe",
      growth: expect.stringMatching(/^(?:linear|safe)$/),
    });
  },
  2 * PATIENCE,
);

test("the judge knows a bad one", async () => {
  expect((await check("^(a+)+$", "")).status).toBe("vulnerable");
});
