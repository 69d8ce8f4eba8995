/**
 * Writes the pages that are made of the library itself, before typedoc reads them: its sources, its cautions,
 * its names, and what uses what.
 * They cannot fall behind the code, and are not kept.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { asBibtex, asCslJson, bibliography } from "risingmain/sources";
import { cautionsPage } from "./cautions.ts";
import { modelsPage } from "./models.ts";
import { nomenclaturePage } from "./nomenclature.ts";
import { sourcesPage } from "./sources.ts";

const OUT = "docs/pages/made";

mkdirSync(OUT, { recursive: true });
for (const [name, content] of Object.entries({
  "sources.md": sourcesPage(),
  "bibliography.bib": asBibtex(bibliography()),
  "bibliography.json": asCslJson(bibliography()),
  "cautions.md": cautionsPage(),
  "models.md": modelsPage(),
  "nomenclature.md": nomenclaturePage(),
}))
  writeFileSync(`${OUT}/${name}`, content);
