/**
 * Markdown that names and notes from outside cannot break.
 *
 * @module
 */

/** A table. A bar or a line break in a cell must not break it. */
export function markdownTable(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const row = (cells: readonly string[]): string => `| ${cells.map(oneLine).join(" | ")} |`;
  return [row(heads), row(heads.map(() => "---")), ...rows.map(row)].join("\n");
}

/** A text on one line, without what would end a cell or open a tag. */
export function oneLine(text: string): string {
  return text.replace(/[|\r\n]/g, " ").replace(/</g, "&lt;");
}

/** A text of several lines, quoted: it can start no heading of its own. */
export function quoted(text: string): string {
  return text
    .split(/\r\n|\r|\n/)
    .map((line) => `> ${oneLine(line)}`.trimEnd())
    .join("\n");
}
