// @ts-check
/**
 * Every local link and asset of the built site exists, anchors included; no page asks another host for anything; every
 * published basis of a name leads to its record.
 */
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, resolve } from "node:path";

const SITE = resolve("docs/site");
const pages = readdirSync(SITE, { recursive: true })
  .map(String)
  .filter((file) => file.endsWith(".html"));

/** @type {Map<string, Set<string>>} */
const anchors = new Map(
  pages.map((page) => {
    const html = readFileSync(join(SITE, page), "utf8");
    return [join(SITE, page), new Set([...html.matchAll(/\s(?:id|name)="([^"]+)"/g)].map(([, id = ""]) => id))];
  }),
);

const faults = [];
let links = 0;
let bases = 0;
for (const page of pages) {
  const html = readFileSync(join(SITE, page), "utf8");
  for (const [, block = ""] of html.matchAll(/<div class="tsd-tag-source">([\s\S]*?)<\/div>/g))
    for (const [, basis = ""] of block.matchAll(/<p>([\s\S]*?)<\/p>/g)) {
      if (/^(?:derived|common practice)/.test(basis)) continue;
      bases++;
      if (!/^<a href="[^"]*documents\/Sources\.html#/.test(basis)) faults.push(`${page}: no link from "${basis}"`);
    }
  for (const [, kind = "", rawTarget = ""] of html.matchAll(/\s(href|src)="([^"]*)"/g)) {
    const target = rawTarget.replaceAll("&amp;", "&");
    if (/^(data:|mailto:|#$)/.test(target)) continue;
    if (/^[a-z]+:\/\//.test(target)) {
      if (kind === "src") faults.push(`${page}: loads ${target}`);
      continue;
    }
    links++;
    const [path = "", anchor] = target.split("#");
    let file =
      path === "" ? join(SITE, page) : resolve(dirname(join(SITE, page)), decodeURIComponent(path.split("?")[0] ?? ""));
    if (existsSync(file) && statSync(file).isDirectory()) file = join(file, "index.html");
    if (!existsSync(file)) faults.push(`${page}: no ${target}`);
    else if (anchor && anchors.get(file)?.has(decodeURIComponent(anchor)) === false)
      faults.push(`${page}: no anchor ${target}`);
  }
}
for (const fault of faults) console.error(fault);
console.log(`${pages.length} pages, ${links} local links, ${bases} published bases, ${faults.length} faults`);
if (faults.length > 0 || pages.length === 0 || bases === 0) process.exitCode = 1;
