// @ts-check
import { readFileSync } from "node:fs";
import { PageEvent } from "typedoc";

/** An id of the bibliography as it stands in a text: words, joined by hyphens or points. */
const ID = /[a-z0-9]+(?:[-.][a-z0-9]+)*/g;
/** A tag, or the text up to the next one. */
const TAG_OR_TEXT = /<[^>]*>|[^<]+/g;
/** What a link does not go into. */
const CLOSED_TO_LINKS = /^(?:a|pre|code|h[1-6]|script|title|dt|math|button)$/;

/**
 * What the pages need beyond what typedoc writes:
 *
 * - links written `site:path` point into the built site from any depth; typedoc leaves links to pages it did not make as
 *   they were written, which is wrong below the top folder;
 * - ids of the bibliography lead to their record;
 * - for keyboard and screen reader: a way past the menu, the text as the main part of the page, headings without a level
 *   left out, no link inside a fold's title, and tables that can be scrolled by key.
 *
 * @param {import("typedoc").Application} app
 */
export function load(app) {
  /** @type {Set<string>} */
  const ids = new Set(
    JSON.parse(readFileSync(new URL("pages/made/bibliography.json", import.meta.url), "utf8")).map(
      (/** @type {{ id: string }} */ { id }) => id,
    ),
  );
  app.renderer.on(PageEvent.END, (page) => {
    if (page.contents === undefined) return;
    const base = /data-base="([^"]*)"/.exec(page.contents)?.[1]?.replace(/\/$/, "") ?? ".";
    const [head = "", rest = ""] = split(page.contents, '<div class="col-content">');
    const [text = "", tail = ""] = split(rest, '</div>\n<div class="col-sidebar">');
    if (tail === "") throw new Error(`${page.url}: not the layout of typedoc that this plugin knows`);
    // The README brings its own title.
    const own = page.url === "index.html" ? text.replace(/<div class="tsd-page-title">[\s\S]*?<\/div>/, "") : text;
    const main = scrollable(sourcesTogether(own));
    page.contents = headingsInOrder(
      [
        head.replace("<header", '<a class="past-menu" href="#text">To the text</a><header'),
        '<main class="col-content" id="text" tabindex="-1">',
        page.url === "documents/Sources.html" ? main : linked(main, ids, `${base}/documents/Sources.html`),
        '</main>\n<div class="col-sidebar">',
        tail
          .replace('<nav id="tsd-sidebar-links"', '<nav id="tsd-sidebar-links" aria-label="Apart from the reference"')
          .replace('<nav class="tsd-navigation">', '<nav class="tsd-navigation" aria-label="Guides and reference">')
          .replace('<div class="page-menu">', '<div class="page-menu" role="region" aria-label="This page">'),
      ].join(""),
    )
      .replace(/<summary\b[\s\S]*?<\/summary>/g, (summary) =>
        summary.replace(/<a [^>]*class="tsd-anchor-icon"[\s\S]*?<\/a>/g, ""),
      )
      .replaceAll('"site:', `"${base}/`);
  });
}

/** @param {string} text @param {string} at @returns {readonly string[]} what stands before and after the first of it */
function split(text, at) {
  const place = text.indexOf(at);
  return place < 0 ? [text] : [text.slice(0, place), text.slice(place + at.length)];
}

/** Several bases of one function stand under one heading. @param {string} html @returns {string} */
function sourcesTogether(html) {
  return html.replace(/<\/div>\s*<div class="tsd-tag-source">\s*<h4[^>]*>Source[\s\S]*?<\/h4>/g, (found, place) => {
    const before = html.lastIndexOf("<h4", place);
    return /^<h4[^>]*id="source/.test(html.slice(before)) ? "" : found;
  });
}

/** @param {string} html @param {ReadonlySet<string>} ids @param {string} target @returns {string} */
function linked(html, ids, target) {
  let closed = 0;
  return html.replace(TAG_OR_TEXT, (part) => {
    const [, slash, name = ""] = /^<(\/?)([a-z0-9]+)/.exec(part) ?? [];
    if (name !== "") {
      if (CLOSED_TO_LINKS.test(name) && !part.endsWith("/>")) closed += slash ? -1 : 1;
      return part;
    }
    return closed > 0 ? part : part.replace(ID, (id) => (ids.has(id) ? `<a href="${target}#${id}">${id}</a>` : id));
  });
}

/** @param {string} html @returns {string} */
function scrollable(html) {
  return html
    .replaceAll("<table>", '<div class="wide" tabindex="0" role="group" aria-label="Table"><table>')
    .replaceAll("</table>", "</table></div>")
    .replaceAll("<pre>", '<pre tabindex="0">');
}

/** Typedoc goes from a first heading to a fourth; the level told to a reader goes down by ones. @param {string} html */
function headingsInOrder(html) {
  /** @type {number[]} */
  const open = [];
  return html.replace(/<h([1-6])/g, (found, digit) => {
    const own = Number(digit);
    while ((open.at(-1) ?? 0) >= own) open.pop();
    open.push(own);
    return open.length === own ? found : `${found} aria-level="${open.length}"`;
  });
}
