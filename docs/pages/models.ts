/**
 * The page of what feeds what: read from the imports of the library.
 */
import ts from "typescript";
import { meaningOf, sourceFiles } from "./source-files.ts";

/** What every module stands on; said once. */
const GROUND = ["units", "sources", "numeric"];
/** Names on one line of the diagram, so that a phone shows it whole. */
const ON_A_LINE = 3;

/** The modules each module takes results, shapes or functions from, but for those every module stands on. */
export function feedsOfTheLibrary(): ReadonlyMap<string, readonly string[]> {
  const feeds = new Map<string, Set<string>>();
  for (const { module, file } of sourceFiles()) {
    const own = feeds.get(module) ?? new Set();
    feeds.set(module, own);
    for (const statement of file.statements) {
      if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) continue;
      const other = /^(?:\.\.\/)+([a-z]+)\//.exec(statement.moduleSpecifier.text)?.[1];
      if (other !== undefined && other !== module && !GROUND.includes(other)) own.add(other);
    }
  }
  return new Map([...feeds].map(([module, own]) => [module, [...own].sort()]));
}

/** The page, as Markdown. */
export function modelsPage(): string {
  const feeds = feedsOfTheLibrary();
  const meanings = new Map(
    sourceFiles().flatMap(({ module, file }) =>
      file.fileName.endsWith(`src/${module}/index.ts`) && file.statements[0]
        ? [[module, meaningOf(file.statements[0]).split(/(?<=\.) /)[0] ?? ""] as const]
        : [],
    ),
  );
  const floors = floorsOf(feeds);
  const rows = floors.flat().map((module) => {
    const users = [...feeds].filter(([name, own]) => name !== "bin" && own.includes(module)).map(([name]) => name);
    return `| {@link ${module}} | ${meanings.get(module) ?? ""} | ${links(feeds.get(module) ?? [])} | ${links(users)} |`;
  });
  return `---
title: How the models fit together
---

# Which module feeds which?

A module takes results only from modules that stand below it here. The whole job stands near the top; each part works alone as
well, with numbers of your own.

\`\`\`text
${floors.map(diagramFloor).join("\n   ^\n")}
\`\`\`

In a plan the water and the air of the place come first. The uses wanted give the flow; well test and pipes give the head that
flow takes; curve and head give the point where a pump runs; tank and switch make starts of it; motor and lengths give the wire
and, where there is one, the generator. The findings compare each with its limit.

## Module by module

Read from the imports of the code. Every module also stands on {@link units} and {@link sources}.

| module | what it is | takes from | gives to |
| --- | --- | --- | --- |
${rows.join("\n")}
`;
}

/** Modules by the longest chain that feeds them, the top first. */
function floorsOf(feeds: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const floors: string[][] = [];
  const floorOf = (module: string): number => 1 + Math.max(-1, ...(feeds.get(module) ?? []).map(floorOf));
  for (const module of feeds.keys()) {
    if (GROUND.includes(module) || module === "bin") continue;
    const floor = floorOf(module);
    for (let i = floors.length; i <= floor; i++) floors.push([]);
    floors[floor]?.push(module);
  }
  return floors.reverse();
}

function diagramFloor(modules: readonly string[]): string {
  const lines: string[] = [];
  for (let i = 0; i < modules.length; i += ON_A_LINE) lines.push(modules.slice(i, i + ON_A_LINE).join("  "));
  return lines.join("\n");
}

function links(modules: readonly string[]): string {
  return modules.map((module) => `{@link ${module}}`).join(", ");
}
