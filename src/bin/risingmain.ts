#!/usr/bin/env node
/**
 * The command: plans the job of a file, or of standard input, and prints the report.
 *
 * @module
 */
import { readFileSync } from "node:fs";
import { command } from "./command.ts";

/** Descriptor of standard input. */
const STDIN = 0;

process.exitCode = command(process.argv.slice(2), {
  read: (file) => readFileSync(file === "-" ? STDIN : file, "utf8"),
  print: (text) => process.stdout.write(text),
  complain: (line) => console.error(line),
});
