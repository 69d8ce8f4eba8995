/** A text as it stands in HTML, and in Markdown that holds HTML. */
export function escaped(text: string): string {
  return text.replace(/[&<>"*_`[\]{}@|\\]/g, (character) => `&#${character.codePointAt(0)};`);
}
