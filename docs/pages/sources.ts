/**
 * The page of the bibliography: every source, and what rests on it.
 */
import { basesOf, bibliography, citeAsText, type Source } from "risingmain/sources";
import { functionBases } from "../../src/sources/function-bases.ts";
import { escaped } from "./html.ts";

/** A source behind more names than this is told by modules. */
const MOST_NAMES = 12;

/** The page, as Markdown. */
export function sourcesPage(): string {
  const users = usersOfSources();
  const records = bibliography();
  return `---
title: Sources
---

# What do the numbers come from?

${records.length} published sources, as the library's own bibliography holds them. To cite them elsewhere:
[bibliography.bib](bibliography.bib) (BibTeX) and [bibliography.json](bibliography.json) (CSL-JSON).
In a program: \`bibliography\`, \`basesOf\` and \`citationsOf\`; see [how to cite a number](../../guides/citing.md).
A record says what was seen of the work and what was recalled.

<dl class="sources">
${records.map((record) => entry(record, users.get(record.id) ?? [])).join("\n")}
</dl>
`;
}

/** The public names that rest on each source, by its id. */
function usersOfSources(): Map<string, string[]> {
  const users = new Map<string, string[]>();
  for (const name of Object.keys(functionBases))
    for (const id of new Set(basesOf(name).flatMap(({ source }) => source ?? [])))
      users.set(id, [...(users.get(id) ?? []), name]);
  return users;
}

function entry(record: Source, names: readonly string[]): string {
  const address = record.DOI === undefined ? record.URL : `https://doi.org/${record.DOI}`;
  const parts = [
    escaped(citeAsText(record)),
    address === undefined ? "" : `<a href="${escaped(address)}">${escaped(address)}</a>`,
    record.note === undefined ? "" : escaped(record.note),
    names.length === 0
      ? "Behind a table, a constant or a check."
      : names.length <= MOST_NAMES
        ? `Behind ${names.map((name) => `{@link ${name}}`).join(", ")}.`
        : `Behind ${names.length} names of ${[...new Set(names.map((name) => name.split(".")[0] ?? ""))]
            .map((module) => `{@link ${module}}`)
            .join(", ")}.`,
  ].filter((part) => part !== "");
  return `<dt id="${record.id}">${record.id}</dt>\n<dd>${parts.join("<br>\n")}</dd>`;
}
