// @ts-check
/**
 * Do the checks see a defect? Plants five by hand, one at a time, each of a kind that has got into print or into a library
 * before, runs the module's tests and its published rows, puts the file back, and prints which checks went red. Fails where
 * none did.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const DEFECTS = [
  {
    kind: "wrong constant: gravity 9.81",
    file: "src/numeric/gravity.ts",
    from: "STANDARD_GRAVITY = 9.80665;",
    to: "STANDARD_GRAVITY = 9.81;",
    module: "head",
  },
  {
    kind: "wrong sign: no water over the intake taken for plenty",
    file: "src/well/pump-setting.ts",
    from: "const submergence = intake - pumpingLevel;",
    to: "const submergence = intake + pumpingLevel;",
    module: "well",
  },
  {
    kind: "gauge for absolute: the tank's air charge",
    file: "src/tank/air-charge.ts",
    from: "waterShare(precharge + atmosphere, pressure + atmosphere,",
    to: "waterShare(precharge, pressure,",
    module: "tank",
  },
  {
    kind: "table row off by one: 10 AWG with the resistance of 12 AWG",
    file: "src/conductor/nec-chapter-9-table-8.ts",
    from: 'size: "10 AWG", circularMils: 10380, strands: 7, copper: 1.24,',
    to: 'size: "10 AWG", circularMils: 10380, strands: 7, copper: 1.98,',
    module: "conductor",
  },
  {
    kind: "swapped units: imperial for US gallons",
    file: "src/units/volume-flow.ts",
    from: 'scaled("gpm", value, 6.30901964e-5)',
    to: 'scaled("gpm", value, 7.576816666666667e-5)',
    module: "units",
  },
];

const folder = mkdtempSync(join(tmpdir(), "planted-"));
const report = join(folder, "results.json");
for (const { kind, file, from, to, module } of DEFECTS) {
  const sound = readFileSync(file, "utf8");
  if (sound.split(from).length !== 2) throw new Error(`${file} has no single "${from}"`);
  /** @type {string[]} */
  const red = [];
  try {
    writeFileSync(file, sound.replace(from, to));
    for (const which of [[`tests/${module}`], ["tests/reference", "-t", `^${module}: `]]) {
      rmSync(report, { force: true });
      spawnSync("npx", ["vitest", "run", "--project", "tests", ...which, "--reporter=json", `--outputFile=${report}`]);
      for (const { name, assertionResults } of JSON.parse(readFileSync(report, "utf8")).testResults)
        for (const { status, fullName } of assertionResults)
          if (status === "failed") red.push(`${name.split("/tests/").at(-1)}: ${fullName}`);
    }
  } finally {
    writeFileSync(file, sound);
  }
  console.log(`${kind} (${file}): ${red.length} checks red`);
  for (const check of red.slice(0, 4)) console.log(`  ${check}`);
  if (red.length === 0) process.exitCode = 1;
}
rmSync(folder, { recursive: true });
