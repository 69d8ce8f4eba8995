// @ts-check
/**
 * The pages of the site but for the worksheet, as a reader meets them: built site, real browser.
 * Run by `npm run test:site` after `npm run docs`.
 */
import { strict as assert } from "node:assert";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import axe from "axe-core";
import { openBrowser, serveSite, watchedPage } from "./browser.mjs";

/** One of every kind of page. */
const PAGES = {
  home: "index.html",
  guide: "documents/How_much_head_does_the_line_to_the_barn_lose_.html",
  "guide with pictures": "documents/What_will_the_system_do_over_a_day,_and_over_a_year_.html",
  module: "modules/sources.html",
  function: "functions/pipe.frictionFactor.html",
  interface: "interfaces/pipe.DarcyWeisbachLoss.html",
  class: "classes/units.InputError.html",
  type: "types/units.Length.html",
  table: "variables/pipe.hazenWilliamsCoefficients.html",
  example: "documents/The_demo_property_by_hand.html",
  verification: "documents/Verification.html",
  sources: "documents/Sources.html",
  nomenclature: "documents/Nomenclature.html",
  cautions: "documents/Cautions.html",
  models: "documents/How_the_models_fit_together.html",
};

/** @type {import("./browser.mjs").Served} */
let site;
/** @type {import("puppeteer-core").Browser} */
let chrome;

before(async () => {
  site = await serveSite();
  chrome = await openBrowser("chrome");
});

after(async () => {
  await chrome.close();
  await site.close();
});

/**
 * A page of the site, which is closed when the test is over; it may show no error and ask no other host.
 *
 * @param {import("node:test").TestContext} t
 * @param {string} path
 * @param {{ width?: number, scheme?: "light" | "dark" }} [how]
 */
async function open(t, path, { width = 1280, scheme = "light" } = {}) {
  const { page, errors, asked } = await watchedPage(chrome);
  await page.setViewport({ width, height: 800 });
  await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
  await page.goto(`${site.origin}/${path}`);
  // The menu is filled in by script.
  await page.waitForSelector("#tsd-nav-container a");
  t.after(async () => {
    await page.close();
    assert.deepEqual(errors, [], "errors on the page");
    assert.deepEqual([...new Set(asked.map((url) => new URL(url).origin))], [site.origin], "hosts asked");
  });
  return page;
}

/** @param {import("puppeteer-core").Page} page @returns {Promise<string[]>} rule and place of each violation */
async function violations(page) {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    // Passes are not told: on a long page they take longer to put together than to find.
    const { violations } = await /** @type {any} */ (window).axe.run({ resultTypes: ["violations"] });
    return violations.flatMap((/** @type {any} */ { id, nodes }) =>
      nodes.slice(0, 3).map((/** @type {any} */ { html }) => `${id}: ${html.slice(0, 160)}`),
    );
  });
}

for (const [kind, path] of Object.entries(PAGES)) {
  test(`${kind}: sound for a screen reader in light and dark, and no wider than a phone`, async (t) => {
    const page = await open(t, path);
    assert.deepEqual(await violations(page), [], "light");
    await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: "dark" }]);
    assert.deepEqual(await violations(page), [], "dark");
    await page.setViewport({ width: 360, height: 740 });
    const { wide, screen } = await page.evaluate(() => ({
      wide: document.documentElement.scrollWidth,
      screen: window.innerWidth,
    }));
    assert.ok(wide <= screen, `${wide} px wide on a screen of ${screen}`);
  });
}

test("a long table and a long line of code scroll inside themselves", async (t) => {
  for (const [path, selector] of /** @type {const} */ ([
    [PAGES.verification, ".wide"],
    [PAGES.guide, "pre"],
  ])) {
    const page = await open(t, path, { width: 360 });
    const scrolls = await page.$$eval(selector, (elements) =>
      elements.some((element) => element.scrollWidth > element.clientWidth && element.tabIndex === 0),
    );
    assert.ok(scrolls, `no ${selector} of ${path} scrolls`);
  }
});

test("dark follows the system, as it changes", async (t) => {
  const page = await open(t, PAGES.home);
  const ground = () =>
    page.evaluate(() => (getComputedStyle(document.body).backgroundColor.match(/\d+/g) ?? []).map(Number));
  assert.ok((await ground()).every((part) => part > 200));
  await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: "dark" }]);
  assert.ok((await ground()).slice(0, 3).every((part) => part < 60));
});

test("what is searched for is found and followed, by key alone", async (t) => {
  for (const [query, target] of /** @type {const} */ ([
    ["frictionFactor", /functions\/pipe\.frictionFactor\.html/],
    ["bleach", /bleach/i],
  ])) {
    const page = await open(t, PAGES.home);
    await page.focus("#tsd-search-trigger");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#tsd-search[open]");
    await page.type("#tsd-search-input", query);
    await page.waitForFunction(
      (sought) =>
        document.querySelector('#tsd-search-results [role="option"]')?.textContent?.toLowerCase().includes(sought) ===
        true,
      {},
      query.toLowerCase(),
    );
    await page.keyboard.press("ArrowDown");
    await Promise.all([page.waitForNavigation(), page.keyboard.press("Enter")]);
    assert.match(decodeURIComponent(page.url()), target);
  }
});

test("every step of the key is seen, and the first leads past the menu", async (t) => {
  const page = await open(t, PAGES.function);
  await page.keyboard.press("Tab");
  const first = await page.evaluate(() => ({
    text: document.activeElement?.textContent,
    top: document.activeElement?.getBoundingClientRect().top ?? -1,
  }));
  assert.equal(first.text, "To the text");
  assert.ok(first.top >= 0, "on the screen");
  for (let step = 0; step < 25; step++) {
    await page.keyboard.press("Tab");
    const { seen, html } = await page.evaluate(() => {
      const element = document.activeElement ?? document.body;
      const marked = [element, ...element.querySelectorAll("svg")].some((part) => {
        const { outlineStyle, outlineWidth } = getComputedStyle(part);
        return outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 1;
      });
      return { seen: marked, html: element.outerHTML.slice(0, 120) };
    });
    assert.ok(seen, `no mark on ${html}`);
  }
  await page.keyboard.down("Shift");
  for (let step = 0; step < 25; step++) await page.keyboard.press("Tab");
  await page.keyboard.up("Shift");
  await page.keyboard.press("Enter");
  assert.equal(await page.evaluate(() => document.activeElement?.id), "text");
});

test("a basis leads to its record, and the bibliography can be taken along", async (t) => {
  const page = await open(t, PAGES.function);
  await Promise.all([page.waitForNavigation(), page.click('.tsd-tag-source a[href*="Sources.html"]')]);
  assert.match(page.url(), /Sources\.html#colebrook-1939$/);
  assert.match(
    await page.$eval("dt:target + dd", (element) => element.textContent ?? ""),
    /^Colebrook, C\. F\. \(1939\)/,
  );
  const files = await page.$$eval('a[href*="bibliography."]', (links) =>
    links.map((link) => link.getAttribute("href")),
  );
  assert.equal(files.length, 2);
  for (const file of files) assert.match(readFileSync(`docs/site/documents/${file}`, "utf8"), /colebrook-1939/);
});
