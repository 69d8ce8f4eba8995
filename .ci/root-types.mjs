// @ts-check
/**
 * The root's types: a list of modules is its own declaration. The bundler of types would write the namespaces out, types as
 * values, which does not compile in a program that checks its libraries.
 */
import { readFileSync, writeFileSync } from "node:fs";

const root = readFileSync("src/index.ts", "utf8");
writeFileSync("dist/index.d.ts", root.replaceAll('.ts";', '.js";'));
writeFileSync("dist/index.d.cts", root.replaceAll('.ts";', '.cjs";'));
