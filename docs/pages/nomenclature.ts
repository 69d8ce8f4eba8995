/**
 * The page of names: every field that holds a quantity, and every letter of the formulas.
 */
import ts from "typescript";
import { type Letter, letters } from "./letters.ts";
import { meaningOf, sourceFiles } from "./source-files.ts";

/** A field of the library that holds a quantity. */
export interface FoundField {
  readonly module: string;
  readonly field: string;
  readonly quantity: string;
}

/** The quantities of the library with the SI unit each is held in, by the name of its type. */
export function quantitiesOfTheLibrary(): ReadonlyMap<string, string> {
  const quantities = new Map<string, string>();
  for (const { module, file } of sourceFiles())
    for (const statement of module === "units" ? file.statements : [])
      if (ts.isTypeAliasDeclaration(statement) && /^Quantity</.test(statement.type.getText(file)))
        quantities.set(
          statement.name.text,
          (/a number in ([^,;]+), told/.exec(meaningOf(statement))?.[1] ?? "1")
            .replace("plain units", "1")
            .replace("kelvins", "K"),
        );
  return quantities;
}

/** Every field of a public shape that holds a quantity, alone, in a list, or null. */
export function fieldsOfTheLibrary(): readonly FoundField[] {
  const quantities = quantitiesOfTheLibrary();
  return sourceFiles().flatMap(({ module, file }) => {
    const found: FoundField[] = [];
    // The "fields" of the module of units are the texts it reads.
    if (module === "units") return found;
    const visit = (node: ts.Node): void => {
      if (ts.isPropertySignature(node) && node.type !== undefined) {
        const [word = ""] = node.type.getText(file).match(/[A-Z]\w+/) ?? [];
        if (quantities.has(word)) found.push({ module, field: node.name.getText(file), quantity: word });
      }
      ts.forEachChild(node, visit);
    };
    for (const statement of file.statements)
      if (ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement)) visit(statement);
    return found;
  });
}

/** The modules with a formula that uses a letter, and with the field that holds what it stands for. */
export function modulesOfLetter({ letter, field, modules }: Letter): readonly string[] {
  const alone = new RegExp(`(?<![\\p{L}\\d])${letter}[₀-₉ₐ-ₜ]?(?![\\p{L}\\d'’])`, "u");
  const inFormulas = new Set(
    sourceFiles().flatMap(({ module, file }) =>
      (file.text.match(/\/\*\*[\s\S]*?\*\//g) ?? []).some((comment) =>
        comment
          .replace(/@example[\s\S]*/, "")
          .split("\n")
          .some((line) => alone.test(line) && /=|∝|≤/.test(line)),
      )
        ? [module]
        : [],
    ),
  );
  if (modules !== undefined) return modules.filter((module) => inFormulas.has(module));
  const holders = new Set(fieldsOfTheLibrary().flatMap((found) => (found.field === field ? [found.module] : [])));
  return [...holders].filter((module) => inFormulas.has(module)).sort();
}

/** The page, as Markdown. */
export function nomenclaturePage(): string {
  const fields = fieldsOfTheLibrary();
  const tables = [...quantitiesOfTheLibrary()]
    .filter(([quantity]) => fields.some((field) => field.quantity === quantity))
    .map(([quantity, unit]) => {
      const own = fields.filter((field) => field.quantity === quantity);
      const names = [...new Set(own.map(({ field }) => field))].sort();
      const rows = names.map((name) => {
        const modules = [...new Set(own.filter(({ field }) => field === name).map(({ module }) => module))].sort();
        const marks = letters.filter(({ field }) => field === name).map(({ letter }) => letter);
        return `| \`${name}\` | ${[...new Set(marks)].join(", ")} | ${links(modules)} |`;
      });
      return `### ${words(quantity)}, ${unit}

| field | letter | modules |
| --- | --- | --- |
${rows.join("\n")}
`;
    });
  return `---
title: Nomenclature
---

# What is it called, and in which unit?

One name per quantity, in the words of the trade; letters stand inside formulas alone. Every quantity is held in its SI unit,
and {@link units} turns texts and the trade's units into it and back. Depths count down from the ground at the well, elevations up.

## Letters

A letter is its source's own, so one letter may stand for several quantities; the page of a function says what it stands for
there. Modules: those with the field, and with a formula that uses the letter.

| letter | quantity | field | unit | modules |
| --- | --- | --- | --- | --- |
${letters
  .map(
    (letter) =>
      `| ${letter.letter} | ${letter.quantity} | ${letter.field === undefined ? "" : `\`${letter.field}\``} | ${letter.unit} | ${links(modulesOfLetter(letter))} |`,
  )
  .join("\n")}

## Fields

${tables.join("\n")}`;
}

function links(modules: readonly string[]): string {
  return modules.map((module) => `{@link ${module}}`).join(", ");
}

/** "GaugePressure" as a reader writes it. */
function words(name: string): string {
  const text = name.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();
  return text.charAt(0).toUpperCase() + text.slice(1);
}
