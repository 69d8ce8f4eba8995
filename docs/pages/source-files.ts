/**
 * The library as text, for the pages that are made of it.
 */
import { readFileSync } from "node:fs";
import { globSync } from "tinyglobby";
import ts from "typescript";

/** A file of the library, and the module it belongs to. */
interface ParsedFile {
  readonly module: string;
  readonly file: ts.SourceFile;
}

let parsed: readonly ParsedFile[] | undefined;

/** Every file of the library, parsed once, in the order of its name. */
export function sourceFiles(): readonly ParsedFile[] {
  parsed ??= globSync("src/*/**/*.ts")
    .sort()
    .map((path) => ({
      module: path.split("/")[1] ?? "",
      file: ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest, true),
    }));
  return parsed;
}

/** The first sentence of the comment above something, without line breaks. */
export function meaningOf(node: ts.Node): string {
  const [comment] = ts.getJSDocCommentsAndTags(node);
  const text = comment && ts.isJSDoc(comment) ? (ts.getTextOfJSDocComment(comment.comment) ?? "") : "";
  return text.replace(/\s+/g, " ").trim();
}
