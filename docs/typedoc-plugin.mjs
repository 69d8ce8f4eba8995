// @ts-check
import { PageEvent } from "typedoc";

/**
 * Links written `site:path` point into the built site from any depth: typedoc leaves links to pages it did not make as
 * they were written, which is wrong below the top folder.
 *
 * @param {import("typedoc").Application} app
 */
export function load(app) {
  app.renderer.on(PageEvent.END, (page) => {
    if (page.contents === undefined) return;
    const base = /data-base="([^"]*)"/.exec(page.contents)?.[1]?.replace(/\/$/, "") ?? ".";
    page.contents = page.contents.replaceAll('"site:', `"${base}/`);
  });
}
