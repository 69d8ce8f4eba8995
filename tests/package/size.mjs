// @ts-check
/**
 * What one import costs an app: each named export bundled alone from the built package, minified and gzipped.
 */
import { bytesOf } from "../../bench/bytes-of.mjs";

/** An app that imports nothing: what gzip and the bundle's own frame weigh is no cost of the library. */
const EMPTY_APP = "globalThis.x = 0;";

/** What is promised: the import, and the most it may add to an app. */
const BUDGETS = [
  { module: "units", name: "feet", most: 300 },
  { module: "head", name: "velocityHead", most: 300 },
  { module: "pipe", name: "frictionFactor", most: 1500 },
  { module: "pipe", name: "darcyWeisbachLoss", most: 1500 },
];

const empty = await bytesOf(EMPTY_APP);
for (const { module, name, most } of BUDGETS) {
  const bytes = (await bytesOf(`import { ${name} } from "risingmain/${module}"; globalThis.x = ${name};`)) - empty;
  console.log(`${module}.${name}: ${bytes} B of ${most}`);
  if (bytes > most) process.exitCode = 1;
}
