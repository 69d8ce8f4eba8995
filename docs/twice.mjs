// @ts-check
/**
 * Builds the site twice from nothing and compares every byte: the same commit gives the same site.
 */
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";

/** What the build makes. */
const MADE = ["docs/site", "docs/pages/made", "docs/assets/charts"];

/** @returns {Map<string, string>} the digest of every file made, by its path */
function build() {
  for (const folder of MADE) rmSync(folder, { recursive: true, force: true });
  execFileSync("npm", ["run", "-s", "docs"], { stdio: ["ignore", "ignore", "inherit"] });
  return new Map(
    MADE.flatMap((folder) => readdirSync(folder, { recursive: true }).map((name) => join(folder, String(name))))
      .filter((file) => statSync(file).isFile())
      .sort()
      .map((file) => [file, createHash("sha256").update(readFileSync(file)).digest("hex")]),
  );
}

const first = build();
const second = build();
const different = [...new Set([...first.keys(), ...second.keys()])].filter(
  (file) => first.get(file) !== second.get(file),
);
for (const file of different) console.error(`differs: ${file}`);
const digest = createHash("sha256")
  .update(JSON.stringify([...second]))
  .digest("hex");
console.log(`${second.size} files, ${different.length} differ, sha256 of all ${digest}`);
if (different.length > 0 || second.size === 0) process.exitCode = 1;
