// @ts-check
// What one import costs an app beside the same code in a file of its own: each public name bundled alone from the package's
// module and straight from the file that holds it. Needs the build.
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { bytesOf, MODULES } from "./bytes-of.mjs";

/** @type {{ name: string, through: number, alone: number }[]} */
const costs = [];
for (const module of MODULES) {
  const index = readFileSync(`dist/${module}/index.js`, "utf8");
  const names = Object.keys(await import(pathToFileURL(`dist/${module}/index.js`).href));
  /** @type {Map<string, string>} */
  const files = new Map();
  for (const [, list = "", file = ""] of index.matchAll(/import \{([^}]*)\} from "([^"]*)"/g))
    for (const name of list.split(",")) files.set(name.trim(), file);
  for (const name of names) {
    const file = files.get(name);
    if (file === undefined) continue;
    const [through, alone] = await Promise.all([
      bytesOf(`import { ${name} } from "./dist/${module}/index.js"; globalThis.x = ${name};`),
      bytesOf(`import { ${name} } from "./dist/${module}/${file.replace(/^\.\//, "")}"; globalThis.x = ${name};`),
    ]);
    costs.push({ name: `${module}.${name}`, through, alone });
  }
}
costs.sort((a, b) => b.through / b.alone - a.through / a.alone);
console.log(`${costs.length} names; the dearest beside a file of its own:`);
for (const { name, through, alone } of costs.slice(0, 5))
  console.log(`  ${name}: ${through} B, ${alone} B alone, ${(through / alone).toFixed(3)}`);
console.log(`over 1.15: ${costs.filter(({ through, alone }) => through / alone > 1.15).length}`);
for (const module of MODULES)
  console.log(
    `all of ${module}: ${await bytesOf(`import * as m from "./dist/${module}/index.js"; globalThis.x = m;`)} B`,
  );
