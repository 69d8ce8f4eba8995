/**
 * The page of every caution the library gives.
 */
import ts from "typescript";
import { escaped } from "./html.ts";
import { sourceFiles } from "./source-files.ts";

/** A caution as it is written in the library. */
export interface FoundCaution {
  readonly module: string;
  readonly code: string;
  readonly text: string;
  readonly basis: string;
}

/** Every caution in the code of the library: an object with a code, or an id, and a text, where cautions are declared. */
export function cautionsOfTheLibrary(): readonly FoundCaution[] {
  return sourceFiles().flatMap(({ module, file }) => {
    const found: FoundCaution[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isObjectLiteralExpression(node)) {
        const fields = new Map(
          node.properties.flatMap((property) =>
            ts.isPropertyAssignment(property) && ts.isStringLiteralLike(property.initializer)
              ? [[property.name.getText(file), property.initializer.text] as const]
              : [],
          ),
        );
        const code = fields.get("code") ?? fields.get("id");
        const text = fields.get("text");
        if (code !== undefined && text !== undefined)
          found.push({ module, code, text, basis: fields.get("basis") ?? "common practice" });
      }
      ts.forEachChild(node, visit);
    };
    for (const statement of file.statements)
      if (/caution/i.test(statement.getText(file).slice(0, 200))) visit(statement);
    return found;
  });
}

/** The page, as Markdown. */
export function cautionsPage(): string {
  const cautions = cautionsOfTheLibrary();
  const modules = [...new Set(cautions.map(({ module }) => module))];
  return `---
title: Cautions
---

# What can hurt people here?

**Local code and the licensed trades have the last word.** Pressure, mains electricity, lifting, chlorine, engine exhaust and
drinking water hurt people. No figure of this library makes work safe that the inspector, the electrician or the health
department would refuse.

These are the warnings that travel with the results, ${cautions.length} in all, so that an app can show them beside the number. What a
warning rests on stands behind it.

${modules
  .map(
    (module) => `## ${module}

${cautions
  .filter((caution) => caution.module === module)
  .map(({ code, text, basis }) => `- **${code}**: ${escaped(text)} (${basis})`)
  .join("\n")}
`,
  )
  .join("\n")}`;
}
