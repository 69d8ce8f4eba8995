// @ts-check
/**
 * Turns every TypeScript block of the docs, the README and the docstrings into a test of its own, as a reader pastes it.
 *
 *   expr; // => value         equal, strictly
 *   expr; // ≈ 46.98          within half a unit of the last digit written
 *   expr; // throws InputError
 *   const x = expr; // ≈ 3.1  the same, for the variable; a note may also stand alone on the next line
 *
 * ```ts no-run is type-checked and not run; ```ts ignore is left alone.
 */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { globSync } from "tinyglobby";
import ts from "typescript";

const OUT = "tests/examples/generated";
const FENCE = /^([ \t]*(?:\*[ \t]?)?)(`{3,})[ \t]*(?:ts|typescript)\b([^\n]*)\n([\s\S]*?)^\1\2[ \t]*$/gm;
const NOTE = /^\/\/\s*(=>|≈|throws)\s*(.+?)\s*$/u;

rmSync(OUT, { recursive: true, force: true });
mkdirSync(OUT, { recursive: true });

let count = 0;
for (const file of globSync(["src/**/*.ts", "docs/**/*.md", "README.md", "DEVELOPERS.md"], {
  ignore: ["docs/site/**", "**/node_modules/**"],
}).sort()) {
  const text = readFileSync(file, "utf8");
  for (const match of text.matchAll(FENCE)) {
    const [, prefix = "", , info = "", raw = ""] = match;
    if (/\bignore\b/.test(info)) continue;
    const place = `${file}:${text.slice(0, match.index).split("\n").length + 1}`;
    const code = raw
      .split("\n")
      .map((line) => (line.startsWith(prefix) ? line.slice(prefix.length) : line.replace(/^\s*\*?\s?/, "")))
      .join("\n");
    writeFileSync(`${OUT}/${place.replace(/\W+/g, "-")}.test.ts`, asTest(place, code, !/\bno-run\b/.test(info)));
    count++;
  }
}
console.log(`${count} examples`);

/** @param {string} place @param {string} code @param {boolean} runs */
function asTest(place, code, runs) {
  const source = ts.createSourceFile("example.ts", code, ts.ScriptTarget.Latest, true);
  let imports = "";
  let body = "";
  for (const statement of source.statements) {
    if (ts.isImportDeclaration(statement)) {
      imports += `${statement.getText(source)}\n`;
      continue;
    }
    const note = noteAfter(code, statement);
    // `if (result.state === "running") result.flow; // ≈ 3.1` narrows the type; the test fails where the state is another.
    if (note !== undefined && ts.isIfStatement(statement) && ts.isExpressionStatement(statement.thenStatement)) {
      const subject = statement.thenStatement.expression.getText(source);
      body += `if (${statement.expression.getText(source)}) {\n${assertion(note, subject)}} else expect.unreachable("another state");\n`;
      continue;
    }
    const expression = ts.isExpressionStatement(statement) ? statement.expression.getText(source) : undefined;
    if (note === undefined || expression === undefined) body += `${statement.getText(source)}\n`;
    if (note === undefined) continue;
    const subject = expression ?? declaredName(statement, source);
    if (subject === undefined) throw new Error(`${place}: a note beside neither an expression nor a variable`);
    body += assertion(note, subject);
  }
  return [
    'import { expect, test } from "vitest";',
    'import { near } from "../near.ts";',
    imports,
    "void [expect, near];",
    `${runs ? "test" : "test.skip"}(${JSON.stringify(place)}, async () => {`,
    `${body}});`,
    "",
  ].join("\n");
}

/** @param {string} code @param {ts.Statement} statement */
function noteAfter(code, statement) {
  const ranges = [
    ...(ts.getTrailingCommentRanges(code, statement.end) ?? []),
    // A note too long for the line stands on the next.
    ...(ts.getLeadingCommentRanges(code, statement.end) ?? []).slice(0, 1),
  ];
  return (
    ranges.map((range) => NOTE.exec(code.slice(range.pos, range.end))).find((found) => found !== null) ?? undefined
  );
}

/** @param {ts.Statement} statement @param {ts.SourceFile} source */
function declaredName(statement, source) {
  return ts.isVariableStatement(statement)
    ? statement.declarationList.declarations[0]?.name.getText(source)
    : undefined;
}

/** @param {RegExpExecArray} note @param {string} subject */
function assertion([, kind, wanted = ""], subject) {
  const first = (wanted.split(/\s/)[0] ?? "").replace("−", "-");
  if (kind === "=>") return `expect(${subject}).toStrictEqual(${wanted});\n`;
  if (kind === "throws")
    return `await expect((async () => (${subject}))()).rejects.toHaveProperty("name", ${JSON.stringify(first)});\n`;
  const decimals = (/\.(\d+)/.exec(first)?.[1] ?? "").length;
  const exponent = Number(/e(.+)/i.exec(first)?.[1] ?? 0);
  return `near(${subject}, ${first.replace(/,/g, "")}, ${10 ** (exponent - decimals) / 2});\n`;
}
