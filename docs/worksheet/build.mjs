// @ts-check
/**
 * Builds the worksheet: a page with its script and style beside it, the charts apart, and the whole of it once more in
 * one file. The same sources give the same bytes.
 */
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { build, transform } from "esbuild";

const HERE = "docs/worksheet";
const SITE = "docs/site";

/** @param {string} entry @returns {Promise<string>} the entry and all it imports, as one classic script */
async function bundle(entry) {
  const { outputFiles } = await build({
    entryPoints: [`${HERE}/${entry}`],
    bundle: true,
    minify: true,
    format: "iife",
    target: "es2022",
    charset: "utf8",
    legalComments: "none",
    write: false,
    logLevel: "warning",
  });
  return /** @type {{ text: string }} */ (outputFiles[0]).text;
}

/** @param {string} text @param {Record<string, string>} parts @returns {string} the text with its gaps filled */
function filled(text, parts) {
  return text.replace(/\{\{([a-z-]+)\}\}/g, (_, name) => {
    const part = parts[name];
    if (part === undefined) throw new Error(`nothing to put in {{${name}}}`);
    return part;
  });
}

/** @param {string} name @returns {string} */
const source = (name) => readFileSync(`${HERE}/${name}`, "utf8");

/**
 * Nothing is asked of another host, by script, style or picture. The chart library makes functions of its expressions.
 *
 * @param {string} own where the page's own parts are
 */
const policy = (own) =>
  `default-src 'none'; script-src ${own} 'unsafe-eval'; style-src ${own} 'unsafe-inline'; img-src data: blob:; connect-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'`;

/** @param {string} script @returns {string} a script that may stand inside a page */
const inline = (script) => script.replace(/<\/(script)|<!--/gi, (found) => found.replace("<", "\\x3C"));

const script = await bundle("main.ts");
const charts = await bundle("charts.ts");
const { code: style } = await transform(source("worksheet.css"), { loader: "css", minify: true });
const template = source("worksheet.html");

const files = {
  "worksheet.html": filled(template, {
    policy: policy("'self'"),
    styles: '<link rel="stylesheet" href="worksheet.css">',
    scripts: '<script src="worksheet.js"></script>',
    up: '<a href="index.html">risingmain</a>',
    copy: "site",
    "one-file":
      '<a href="worksheet-one-file.html" download>Download this page as one file</a>, to keep, to pass on, and to use without a network.',
  }),
  "worksheet.css": style,
  "worksheet.js": script,
  "worksheet-charts.js": charts,
};
const version = createHash("sha256").update(JSON.stringify(files)).digest("hex").slice(0, 16);

const all = {
  ...files,
  "worksheet-offline.js": filled(source("offline.js"), { version, files: Object.keys(files).join(" ") }),
  "worksheet-one-file.html": filled(template, {
    policy: policy("'unsafe-inline'"),
    styles: `<style>${style}</style>`,
    // The charts are held as text, and run when they are wanted.
    scripts: `<script type="text/plain" id="charts-script">${inline(charts)}</script>\n<script>${inline(script)}</script>`,
    up: "risingmain",
    copy: "one file",
    "one-file": "This copy of the page is one file and needs no network.",
  }),
};
mkdirSync(SITE, { recursive: true });
for (const [name, content] of Object.entries(all)) {
  writeFileSync(`${SITE}/${name}`, content);
  console.log(`${name}: ${content.length} letters, ${gzipSync(content, { level: 9 }).length} bytes compressed`);
}
