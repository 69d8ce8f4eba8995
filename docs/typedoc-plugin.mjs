// @ts-check
import { existsSync, readFileSync } from "node:fs";
import { PageEvent } from "typedoc";

/** Where `npm run charts` writes the pictures of the guides. */
const CHARTS = "docs/assets/charts";

/**
 * Charts stand in the page itself, where they take its colours, light or dark, and its readers' size of letters.
 *
 * Links written `site:path` point into the built site from any depth: typedoc leaves links to pages it did not make as
 * they were written, which is wrong below the top folder.
 *
 * @param {import("typedoc").Application} app
 */
export function load(app) {
  app.renderer.on(PageEvent.END, (page) => {
    if (page.contents === undefined) return;
    const base = /data-base="([^"]*)"/.exec(page.contents)?.[1]?.replace(/\/$/, "") ?? ".";
    page.contents = page.contents
      .replaceAll('"site:', `"${base}/`)
      .replace(/<img src="[^"]*media\/([\w-]+)\.svg" alt="([^"]*)"[^>]*>/g, (image, name, alt) =>
        existsSync(`${CHARTS}/${name}.svg`)
          ? readFileSync(`${CHARTS}/${name}.svg`, "utf8").replace("<svg ", `<svg role="img" aria-label="${alt}" `)
          : image,
      );
  });
}
