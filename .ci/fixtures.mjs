// @ts-check
/**
 * Runs the scripts that recorded the fixtures again, in a copy, and compares: another version of a package may differ in
 * a last digit, nothing else may. Needs python3 with mpmath, scipy, iapws and fluids; PYTHON names another interpreter.
 */
import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const HERE = "tests/fixtures";
/** Relative difference that a last digit makes in what the scripts print. */
const LAST_DIGITS = 1e-9;
const python = process.env["PYTHON"] ?? "/usr/bin/python3";

const copy = mkdtempSync(join(tmpdir(), "fixtures-"));
cpSync("tests/fixtures", join(copy, HERE), { recursive: true });
cpSync("tests/reference", join(copy, "tests/reference"), { recursive: true });

/** @param {unknown} a @param {unknown} b @returns {boolean} */
function alike(a, b) {
  if (typeof a === "number" && typeof b === "number")
    return a === b || Math.abs(a - b) <= LAST_DIGITS * Math.max(Math.abs(a), Math.abs(b));
  if (typeof a !== "object" || a === null || typeof b !== "object" || b === null) return a === b;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => alike(/** @type {any} */ (a)[key], /** @type {any} */ (b)[key]))
  );
}

/** What a fixture says of its own making. */
const MAKING = ["about", "made", "madeBy", "made_by", "madeWith", "versions", "python", "mpmath", "numpy", "scipy"];

/** Versions are recorded, not compared. @param {Record<string, unknown>} fixture */
const numbers = (fixture) => Object.fromEntries(Object.entries(fixture).filter(([key]) => !MAKING.includes(key)));

let faults = 0;
let compared = 0;
for (const script of readdirSync(HERE).filter((file) => file.endsWith(".py"))) {
  const fixture = script.replace(/\.py$/, ".json");
  if (!existsSync(join(HERE, fixture))) continue;
  rmSync(join(copy, HERE, fixture));
  const printed = execFileSync(python, [script], {
    cwd: join(copy, HERE),
    encoding: "utf8",
    maxBuffer: 1 << 28,
    stdio: ["ignore", "pipe", "ignore"],
  });
  const written = join(copy, HERE, fixture);
  // A script writes its fixture beside itself, or prints it.
  const again = JSON.parse(existsSync(written) ? readFileSync(written, "utf8") : printed);
  const same = alike(numbers(again), numbers(JSON.parse(readFileSync(join(HERE, fixture), "utf8"))));
  console.log(`${same ? "same" : "DIFFERS"} ${fixture}`);
  compared++;
  if (!same) faults++;
}
rmSync(copy, { recursive: true });
if (faults > 0 || compared === 0) process.exitCode = 1;
