/**
 * Writes the published JSON Schema of an as-built record from the schema that reads it. With --check it writes nothing and
 * fails where the published one is behind.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { toJsonSchema } from "@valibot/to-json-schema";
import { recordSchema } from "../src/plan/record-schema.ts";

const FILE = "src/plan/record.schema.json";

const schema = toJsonSchema(recordSchema(), { errorMode: "throw" });
const wanted = `${JSON.stringify({ $schema: "http://json-schema.org/draft-07/schema#", title: "risingmain as-built record", ...schema }, null, 2)}\n`;

if (process.argv.includes("--check")) {
  if (readFileSync(FILE, "utf8") !== wanted) {
    console.error(`${FILE} is behind src/plan/record-schema.ts: run \`npm run schema:record\``);
    process.exitCode = 1;
  }
} else {
  writeFileSync(FILE, wanted);
}
