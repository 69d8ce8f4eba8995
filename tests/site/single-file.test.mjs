// @ts-check
/**
 * The snippets of the guide to notebooks, in a real browser, against the single file of the built site.
 * Run by `npm run test:site` after `npm run docs`.
 */
import { strict as assert } from "node:assert";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { openBrowser, serveSite, watchedPage } from "./browser.mjs";

const GUIDE = readFileSync("docs/guides/notebooks.md", "utf8");

/** @param {string} kind @returns {{ code: string, shows: string }[]} its snippets, each with the text block after it */
const snippets = (kind) =>
  [
    ...GUIDE.matchAll(new RegExp(`^\`\`\`${kind}\\n([\\s\\S]*?)\`\`\`\\n\\n\`\`\`text\\n([\\s\\S]*?)\\n\`\`\``, "gm")),
  ].map(([, code = "", shows = ""]) => ({ code, shows }));

/** @param {string} kind @returns {number} its fences, with or without a text block */
const fences = (kind) => GUIDE.split(`\n\`\`\`${kind}\n`).length - 1;

/** @type {string} */
let folder;
/** @type {import("./browser.mjs").Served} */
let site;
/** @type {import("puppeteer-core").Browser} */
let browser;

before(async () => {
  folder = mkdtempSync(join(tmpdir(), "single-file-"));
  cpSync("docs/site/lib", join(folder, "lib"), { recursive: true });
  writeFileSync(join(folder, "empty.html"), "<!doctype html><title>A notebook</title>");
  writeFileSync(join(folder, "favicon.ico"), ""); // a browser asks for it
  site = await serveSite(folder);
  browser = await openBrowser("chrome");
});

after(async () => {
  await browser?.close();
  await site?.close();
  rmSync(folder, { recursive: true });
});

test("the single file holds every module of the package, whole", async () => {
  const library = await import(join(process.cwd(), "docs/site/lib/risingmain.js"));
  const { exports } = JSON.parse(readFileSync("package.json", "utf8"));
  const modules = Object.keys(exports).filter((key) => key.startsWith("./") && !key.endsWith(".json"));
  assert.deepEqual(
    Object.keys(library),
    modules.map((key) => key.slice(2)),
  );
  const { planSystem, readJob, reportOf, sampleJob } = library.plan;
  assert.match(reportOf(planSystem(readJob(sampleJob))), /^## Commissioning sheet$/m);
});

test("every cell of the guide, in order, shows what it says", async () => {
  const cells = snippets("js");
  assert.ok(cells.length >= 3 && cells.length === fences("js"), "each cell has its text");
  const { page, errors } = await watchedPage(browser);
  await page.goto(`${site.origin}/empty.html`);
  const session = await page.createCDPSession();
  for (const { code, shows } of cells) {
    // What one cell declares, the next one knows, and the last value is shown: as a notebook does.
    const { result, exceptionDetails } = await session.send("Runtime.evaluate", {
      expression: code,
      replMode: true,
      awaitPromise: true,
      returnByValue: true,
    });
    assert.equal(exceptionDetails, undefined, exceptionDetails?.exception?.description);
    assert.equal(result.value, shows);
  }
  assert.deepEqual(errors, []);
});

test("the page of the guide answers, and answers a wrong entry in words", async () => {
  const pages = snippets("html");
  assert.ok(pages.length >= 1 && pages.length === fences("html"), "each page has its text");
  for (const { code, shows } of pages) {
    writeFileSync(join(folder, "page.html"), code);
    const { page, errors, asked } = await watchedPage(browser);
    await page.goto(`${site.origin}/page.html`);
    const answer = () => page.$eval("output", (output) => output.textContent ?? "");
    assert.equal(await answer(), shows);
    await page.type("#flow", "x");
    assert.match(await answer(), /expected a volume flow/);
    assert.deepEqual(errors, []);
    assert.deepEqual(
      asked.filter((url) => !url.startsWith(site.origin)),
      [],
    );
  }
});
