// @ts-check
/** The built types compile in a program that checks its libraries too, in both module systems. */
import { strict as assert } from "node:assert";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import ts from "typescript";

const PROGRAM = `import * as library from "risingmain";
import { planSystem, readJob, sampleJob } from "risingmain/plan";
import { feet, type Length } from "risingmain/units";
const lift: Length = feet(240);
const name: string = planSystem(readJob(sampleJob)).name;
const flow: library.units.VolumeFlow = library.units.gpm(5);
// @ts-expect-error: a length is no flow
const wrong: library.units.VolumeFlow = lift;
export { flow, lift, name, wrong };
`;

for (const extension of ["mts", "cts"]) {
  test(`a strict program, .${extension}`, () => {
    // Inside the package, so that its own name resolves through its exports.
    const folder = mkdtempSync("tests/package/types-");
    try {
      const file = join(folder, `program.${extension}`);
      writeFileSync(file, PROGRAM);
      const program = ts.createProgram([file], {
        strict: true,
        skipLibCheck: false,
        noEmit: true,
        module: ts.ModuleKind.NodeNext,
        moduleResolution: ts.ModuleResolutionKind.NodeNext,
        target: ts.ScriptTarget.ES2022,
        lib: ["lib.es2022.d.ts"],
        types: [],
      });
      const faults = ts.getPreEmitDiagnostics(program);
      assert.deepEqual(
        faults.map(
          ({ messageText, file: at }) => `${at?.fileName}: ${ts.flattenDiagnosticMessageText(messageText, " ")}`,
        ),
        [],
      );
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
}
