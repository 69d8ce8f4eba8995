// @ts-check
/**
 * Writes what each public name rests on, as its docstring says it (`@source`), into `src/sources/function-bases.ts`.
 * With --check it writes nothing, and fails where that file is behind, where a public name or a table says no basis,
 * where an id is unknown, or where a record of the bibliography is named by nothing.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { globSync } from "tinyglobby";
import ts from "typescript";

const OUT = "src/sources/function-bases.ts";
/** A literal with this many numbers of two digits or more is a table, and says where it is from. */
const TABLE = 8;

const { exports } = JSON.parse(readFileSync("package.json", "utf8"));
const modules = Object.keys(exports)
  .filter((key) => key.startsWith("./") && !key.endsWith(".json"))
  .map((key) => key.slice(2));
const { options } = ts.parseJsonConfigFileContent(
  ts.readConfigFile("tsconfig.json", ts.sys.readFile).config,
  ts.sys,
  ".",
);
const program = ts.createProgram(
  modules.map((name) => `src/${name}/index.ts`),
  options,
);
const checker = program.getTypeChecker();

/** @type {string[]} */
const faults = [];
/** Ids of the bibliography, and the file of each. @type {Map<string, string>} */
const known = new Map();
for (const file of globSync("src/sources/records/*.ts"))
  for (const [, id = ""] of readFileSync(file, "utf8").matchAll(/^ {4}id: "([^"]+)"/gm)) known.set(id, file);

/** @type {Record<string, string[]>} */
const bases = {};
for (const name of modules) {
  const file = program.getSourceFile(`src/${name}/index.ts`);
  const symbol = file && checker.getSymbolAtLocation(file);
  if (symbol === undefined) throw new Error(`src/${name}/index.ts exports nothing`);
  for (const exported of checker.getExportsOfModule(symbol)) {
    const own = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
    if (!(own.flags & ts.SymbolFlags.Value)) continue;
    const tags = own
      .getJsDocTags(checker)
      .filter((tag) => tag.name === "source")
      .map((tag) => ts.displayPartsToString(tag.text).replace(/\s+/g, " ").trim());
    const key = `${name}.${exported.name}`;
    if (tags.length === 0) faults.push(`${key}: its docstring has no @source`);
    for (const tag of tags) {
      const [head = ""] = /^(?:derived|common practice|[^\s,:;]+)/.exec(tag) ?? [];
      if (head !== "derived" && head !== "common practice" && !known.has(head))
        faults.push(`${key}: "${head}" is no id of the bibliography`);
    }
    bases[key] = tags;
  }
}

/** Everything the repository writes about its sources, but for the records themselves. */
const named = [...globSync("src/**/*.ts"), ...globSync("tests/reference/*.records.json")]
  .filter((file) => !file.startsWith("src/sources/records/") && file !== OUT)
  .map((file) => readFileSync(file, "utf8"))
  .join("\n");
for (const [id, file] of known)
  if (!new RegExp(`(?<![\\w-])${id.replaceAll(".", "\\.")}(?![\\w-])`).test(named))
    faults.push(`${file}: ${id} is named by nothing`);

for (const file of program.getSourceFiles()) {
  if (!/\/src\//.test(`/${file.fileName}`) || file.isDeclarationFile || /\/src\/sources\//.test(`/${file.fileName}`))
    continue;
  for (const statement of file.statements) {
    if (!ts.isVariableStatement(statement)) continue;
    let numbers = 0;
    const count = (/** @type {ts.Node} */ node) => {
      if (ts.isNumericLiteral(node) && node.text.replace(/\D/g, "").length > 1) numbers++;
      ts.forEachChild(node, count);
    };
    for (const { initializer } of statement.declarationList.declarations) {
      let literal = initializer;
      while (literal && (ts.isAsExpression(literal) || ts.isSatisfiesExpression(literal))) literal = literal.expression;
      if (literal && (ts.isArrayLiteralExpression(literal) || ts.isObjectLiteralExpression(literal))) count(literal);
    }
    if (numbers < TABLE) continue;
    // The header of the file, the comment of the table, or its rows.
    const comments = file.text.slice(0, statement.getStart(file)).match(/\/\*\*[\s\S]*?\*\//g) ?? [];
    const words = `${comments[0] ?? ""}${comments.at(-1) ?? ""}${statement.getText(file)}`;
    const ids = words.match(/[a-z0-9]+(?:[-.][a-z0-9]+)*/gi) ?? [];
    if (!/common practice|derived/.test(words) && !ids.some((id) => known.has(id))) {
      const name = statement.declarationList.declarations[0]?.name.getText(file);
      faults.push(`${file.fileName.replace(/^.*\/src\//, "src/")}: the table ${name} says no source and no basis`);
    }
  }
}

const wanted = `/**
 * What each public name rests on, as its docstring says. Written by \`npm run bases\`.
 *
 * @module
 */

/** The \`@source\` lines of each public name. */
export const functionBases: Readonly<Record<string, readonly string[]>> = ${JSON.stringify(bases, null, 2)};
`;

if (process.argv.includes("--check")) {
  if (!existsSync(OUT) || readFileSync(OUT, "utf8") !== wanted)
    faults.push(`${OUT} is behind the docstrings: run \`npm run bases\``);
} else {
  writeFileSync(OUT, wanted);
}
for (const fault of faults) console.error(fault);
if (faults.length > 0) process.exitCode = 1;
