/**
 * Writes the published JSON Schema of a job document from the schema that reads it. With --check it writes nothing and
 * fails where the published one is behind.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { toJsonSchema } from "@valibot/to-json-schema";
import { jobSchema } from "../src/plan/job-schema.ts";

const FILE = "src/plan/job.schema.json";

const schema = toJsonSchema(jobSchema("text"), {
  // The document's side of each text: what an editor checks while one types.
  typeMode: "input",
  // Reading a text with its unit is more than JSON Schema can say; its description says the rest.
  errorMode: "ignore",
});
const wanted = `${JSON.stringify({ $schema: "http://json-schema.org/draft-07/schema#", title: "risingmain job", ...schema }, null, 2)}\n`;

if (process.argv.includes("--check")) {
  if (readFileSync(FILE, "utf8") !== wanted) {
    console.error(`${FILE} is behind src/plan/job-schema.ts: run \`npm run schema\``);
    process.exitCode = 1;
  }
} else {
  writeFileSync(FILE, wanted);
}
