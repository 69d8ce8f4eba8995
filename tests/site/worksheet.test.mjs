// @ts-check
/**
 * The worksheet as a reader meets it: built site, real browser. Run by `npm run test:site` after `npm run docs`.
 */
import { strict as assert } from "node:assert";
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { after, before, test } from "node:test";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import axe from "axe-core";
import { openBrowser, serveSite, watchedPage } from "./browser.mjs";

/** @typedef {import("puppeteer-core").Page} Page */

const SITE = "docs/site";
const ONE_FILE = pathToFileURL(resolve(SITE, "worksheet-one-file.html")).href;
const RANCH = JSON.parse(readFileSync("docs/jobs/ranch.json", "utf8"));

/** @type {import("./browser.mjs").Served} */
let site;
/** @type {{ chrome: import("puppeteer-core").Browser, firefox: import("puppeteer-core").Browser }} */
let browsers;
/** @type {string} */
let folder;

before(async () => {
  site = await serveSite(SITE);
  browsers = { chrome: await openBrowser("chrome"), firefox: await openBrowser("firefox") };
  folder = mkdtempSync(join(tmpdir(), "worksheet-"));
});

after(async () => {
  await browsers.chrome.close();
  await browsers.firefox.close();
  await site.close();
  rmSync(folder, { recursive: true });
});

/**
 * A sheet nobody has typed into, in a context of its own, which is closed when the test is over.
 *
 * @param {import("node:test").TestContext} t
 * @param {{ address?: string, width?: number, height?: number, scheme?: "light" | "dark", name?: "chrome" | "firefox" }} [how]
 */
async function sheet(
  t,
  { address = `${site.origin}/worksheet.html`, width = 1280, height = 900, scheme = "light", name = "chrome" } = {},
) {
  const context = await browsers[name].createBrowserContext();
  const watched = await watchedPage(context);
  const { page, errors, asked } = watched;
  await page.setViewport({ width, height });
  if (name === "chrome") await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
  await page.goto(address);
  t.after(async () => {
    await context.close();
    assert.deepEqual(errors, [], "errors on the page");
    const hosts = new Set(asked.map((url) => new URL(url).origin).filter((origin) => origin !== "null"));
    assert.deepEqual([...hosts], address.startsWith("file:") ? [] : [site.origin], "hosts asked");
  });
  return watched;
}

/** @param {string} path */
const at = (path) => `[id="${path}"]`;

/** @param {Page} page @param {string} selector @returns {Promise<string>} */
// biome-ignore lint/performance/useDomNodeTextContent: what the reader sees, and no more
const textOf = (page, selector) => page.$eval(selector, (element) => /** @type {HTMLElement} */ (element).innerText);

/**
 * Replaces what stands in a field, key by key.
 *
 * @param {Page} page @param {string} path @param {string} text
 */
async function type(page, path, text) {
  await page.$eval(at(path), (element) => {
    for (let fold = element.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null)
      fold.open = true;
  });
  await page.focus(at(path));
  await page.$eval(at(path), (element) => /** @type {HTMLInputElement} */ (element).select());
  await page.keyboard.press("Backspace");
  await page.type(at(path), text);
}

/** Takes the documents that a page hands out for saving, in place of a download. @param {Page} page */
async function catchSaves(page) {
  await page.evaluate(() => {
    const saves = /** @type {{ name: string, blob: Blob | undefined }[]} */ ([]);
    Object.assign(window, { saves });
    /** @type {Blob | undefined} */
    let blob;
    const make = URL.createObjectURL;
    URL.createObjectURL = (made) => {
      blob = /** @type {Blob} */ (made);
      return make.call(URL, made);
    };
    HTMLAnchorElement.prototype.click = function () {
      saves.push({ name: this.download, blob });
    };
  });
}

/** @param {Page} page @returns {Promise<{ name: string, document: any }>} */
async function lastSave(page) {
  const { name, text } = await page.evaluate(async () => {
    const { name, blob } = /** @type {any} */ (window).saves.at(-1);
    return { name: String(name), text: String(await blob.text()) };
  });
  return { name, document: JSON.parse(text) };
}

/** @param {Page} page @param {string} name @param {unknown} content */
async function openFile(page, name, content) {
  const path = join(folder, name);
  writeFileSync(path, typeof content === "string" ? content : JSON.stringify(content));
  const input = /** @type {import("puppeteer-core").ElementHandle<HTMLInputElement>} */ (await page.$("#open"));
  await input.uploadFile(path);
  await page.waitForFunction(() => document.querySelector("#told")?.textContent !== "");
}

/** What no part of the page may show while there is no plan: a number of a plan with its unit. */
const NUMBER = /\d (ft|gpm|psi|gal|V|A|W|lbf|m|kPa|L\/s)\b/;

/** The answers of a small job, in the order they are asked; what the page starts with is left alone. */
const CABIN = {
  name: "Alder Spring cabin",
  "well.depth": "180 ft",
  "well.casingInsideDiameter": "5 in",
  "well.staticLevel": "40 ft",
  "well.yield": "12 gpm",
  "well.test[0].flow": "12 gpm",
  "well.test[0].pumpingLevel": "76 ft",
  "site.elevation": "1,150 ft",
  "places[0].elevation": "8 ft",
  "runs[0].length": "120 ft",
  "outlets[0].flow": "5 gpm",
  "outlets[0].pressure": "20 psi",
  "controls.cutIn": "30 psi",
  "controls.cutOut": "50 psi",
  "power.sources[0].voltage": "240 V",
  "power.circuit[0].length": "80 ft",
  "site.waterTemperature": "10 °C",
};

/** Waits for the charts, and counts them. @param {Page} page @returns {Promise<number>} */
async function charts(page) {
  await page.waitForSelector("#charts svg");
  return (await page.$$("#charts svg")).length;
}

test("an empty sheet says what is missing, and shows no number", async (t) => {
  const { page } = await sheet(t);
  const answer = await textOf(page, "#answer");
  assert.match(answer, /No plan yet/);
  assert.match(answer, /Depth of the hole/);
  assert.doesNotMatch(answer, NUMBER);
  assert.equal(await textOf(page, "#numbers"), "");
  assert.equal(await textOf(page, "#readings"), "");
  assert.match(await textOf(page, "#verdict"), /^No plan yet: \d+ answers missing\.$/);
});

test("typing the answers one by one leads to a plan", async (t) => {
  const { page } = await sheet(t);
  for (const [path, text] of Object.entries(CABIN)) {
    assert.equal(await page.$("#numbers *"), null, `a plan before ${path} was answered`);
    await type(page, path, text);
  }
  assert.match(await textOf(page, "#answer"), /Alder Spring cabin: water system plan/);
  assert.match(await textOf(page, "#verdict"), /Buy a pump for the duty below/);
  assert.match(await textOf(page, `${at("well.depth-note")}`), /180\.0 ft = 54\.9 m/);
});

test("the example gives the plan of the command, number for number", async (t) => {
  const { page } = await sheet(t);
  await page.click("#example");
  const report = execFileSync("npm", ["run", "-s", "plan"], { encoding: "utf8" });
  const shown = (await page.$eval("#plan", (element) => element.textContent ?? "")).replace(/\s+/g, " ");
  const cells = report
    .split("\n")
    .filter(
      (line, i, lines) => line.startsWith("| ") && !line.startsWith("| ---") && !lines[i + 1]?.startsWith("| ---"),
    )
    .flatMap((line) => line.slice(2, -2).split(" | "))
    .map((cell) => cell.trim())
    .filter((cell) => cell !== "");
  assert.ok(cells.length > 200);
  for (const cell of cells) assert.ok(shown.includes(cell), `the page lacks "${cell}"`);
});

test("a wrong answer is told at its field and takes every number away", async (t) => {
  const { page } = await sheet(t);
  await page.click("#example");
  for (const [path, wrong, said] of /** @type {const} */ ([
    ["well.depth", "312", /unit is missing/],
    ["well.staticLevel", "94 gpm", /gpm/],
    ["well.yield", "lots", /flow/],
    ["controls.cutOut", "40 psi", /above the cut-in/],
    ["well.test[0].pumpingLevel", "20 ft", /below the water at rest/],
    ["tank.mostStartsPerDay", "many", /whole number/],
    ["dropPipe.pipe", "bamboo", /pipe/],
    ["runs[0].length", "-5 ft", /from/],
    ["power.circuit[0].size", "thick", /conductor size/],
  ])) {
    const before = await page.$eval(at(path), (element) => /** @type {HTMLInputElement} */ (element).value);
    await type(page, path, wrong);
    assert.match(await textOf(page, `${at(`${path}-note`)}`), said);
    assert.equal(await page.$eval(at(path), (element) => element.getAttribute("aria-invalid")), "true");
    const described = await page.$eval(at(path), (element) => element.getAttribute("aria-describedby"));
    assert.equal(described, `${path}-note`);
    for (const part of ["#numbers", "#readings", "#charts"])
      assert.equal(await textOf(page, part), "", `${part} at ${path}`);
    assert.match(await textOf(page, "#answer"), /No plan yet/);
    assert.match(await textOf(page, "#verdict"), /1 answer to put right/);
    await type(page, path, before);
    assert.match(await textOf(page, "#verdict"), /It will run/, `no plan again at ${path}`);
    assert.equal(await page.$eval(at(path), (element) => element.getAttribute("aria-invalid")), null);
  }
});

test("the charts come after the page, go with the first wrong key and come back", async (t) => {
  const { page, asked } = await sheet(t);
  const ofCharts = () => asked.filter((url) => url.endsWith("worksheet-charts.js") && !url.includes("blob"));
  await type(page, "name", "Cold Creek");
  assert.deepEqual(ofCharts(), []);
  await page.click("#example");
  assert.equal(await charts(page), 6);
  assert.equal(ofCharts().length, 1);
  const said = await page.$eval("#charts figure", (figure) => figure.getAttribute("aria-label"));
  assert.match(said ?? "", /pump/i);
  await page.focus(at("well.depth"));
  await page.keyboard.press("End");
  await page.keyboard.press("Backspace");
  assert.equal(await page.$("#charts *"), null);
  await page.keyboard.type("t");
  assert.equal(await page.$("#charts *"), null, "charts of the plan before");
  assert.equal(await charts(page), 6);
});

test("what keeps the plan back is a way to its question, folded or not", async (t) => {
  const { page } = await sheet(t);
  await page.click("#example");
  await type(page, "power.mostVoltageDrop", "5");
  await page.$$eval("#questions details", (folds) => {
    for (const fold of folds) fold.open = false;
  });
  await page.click("#answer .go");
  assert.equal(await page.evaluate(() => document.activeElement?.id), "power.mostVoltageDrop");
  assert.ok(await page.$eval(at("power.mostVoltageDrop"), (element) => element.checkVisibility()));
});

test("rows are added and taken away by keyboard alone", async (t) => {
  const { page } = await sheet(t);
  await page.click("#example");
  const rows = () => page.$$eval("[id^='outlets['][id$='.flow']", (inputs) => inputs.length);
  assert.equal(await rows(), 4);
  await page.focus('[aria-describedby="outlets-note"]');
  await page.keyboard.press("Enter");
  assert.equal(await rows(), 5);
  assert.equal(await page.evaluate(() => document.activeElement?.id), "outlets[4].name");
  await page.keyboard.type("garden tap");
  await page.keyboard.press("Tab");
  await page.keyboard.type("wellhead");
  await page.keyboard.press("Tab");
  await page.keyboard.type("3 gpm");
  await page.keyboard.press("Tab");
  assert.match(await textOf(page, "#verdict"), /1 answer missing/);
  await page.keyboard.type("1 bar");
  assert.match(await textOf(page, "#verdict"), /It will run/);
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  assert.equal(await rows(), 4);
  assert.equal(await page.evaluate(() => document.activeElement?.className), "remove");
  assert.match(await textOf(page, "#verdict"), /It will run/);
});

test("a name that changes changes where it is mentioned", async (t) => {
  const { page } = await sheet(t);
  await page.click("#example");
  await type(page, "places[2].name", "branch");
  assert.match(await textOf(page, "#verdict"), /It will run/);
  assert.match(await textOf(page, "#numbers"), /branch – ridge/);
  await type(page, "outlets[1].name", "barn tap");
  assert.match(await textOf(page, "#verdict"), /It will run/);
  await catchSaves(page);
  await page.click("#save");
  const { document } = await lastSave(page);
  assert.deepEqual(document.uses[1].outlets, ["barn tap", "ridge hydrant"]);
  assert.equal(document.runs[4].from, "branch");
});

test("saved and opened again it is the same document, to the letter", async (t) => {
  const { page } = await sheet(t);
  for (const job of ["ranch", "ranch-looped"]) {
    const content = JSON.parse(readFileSync(`docs/jobs/${job}.json`, "utf8"));
    await openFile(page, `${job}.json`, content);
    await catchSaves(page);
    await page.click("#save");
    const { name, document } = await lastSave(page);
    assert.deepEqual(document, content);
    assert.match(name, /^three-larks-ranch.*\.job\.json$/);
    assert.match(await textOf(page, "#verdict"), /run|change/);
  }
});

test("what the sheet has no question for is kept, and told", async (t) => {
  const { page } = await sheet(t);
  const strange = structuredClone(RANCH);
  strange.remarks = { gate: "code 4711" };
  strange.well.driller = "the neighbour";
  strange.outlets[1].frostProof = true;
  await openFile(page, "strange.json", strange);
  assert.match(await textOf(page, "#verdict"), /It will run/);
  assert.match(await textOf(page, "#kept"), /well\.driller.*outlets\[1\]\.frostProof.*remarks/);
  await type(page, "well.depth", "310 ft");
  await catchSaves(page);
  await page.click("#save");
  strange.well.depth = "310 ft";
  assert.deepEqual((await lastSave(page)).document, strange);
});

test("a file that is no job changes nothing and says why", async (t) => {
  const { page } = await sheet(t);
  await page.click("#example");
  for (const [content, said] of /** @type {[unknown, RegExp][]} */ ([
    ["{ no json", /JSON/],
    [[], /no job document/],
    [{ version: 2 }, /form 1/],
    [{ ...RANCH, well: "deep" }, /well is not what it should be/],
    [{ ...RANCH, outlets: [1] }, /outlets\[0\]/],
    [{ version: 1, readings: [] }, /name/],
  ])) {
    await page.$eval("#told", (element) => element.replaceChildren());
    await openFile(page, "wrong.json", content);
    assert.match(await textOf(page, "#told"), said);
    assert.match(await textOf(page, "#told"), /nothing was changed/);
    assert.match(await textOf(page, "#verdict"), /It will run/);
  }
  // Of the right form, with a wrong answer in it: opened, and told at the field.
  await openFile(page, "unfinished.json", { ...RANCH, well: { ...RANCH.well, depth: 312 } });
  assert.match(await textOf(page, `${at("well.depth-note")}`), /as text such as/);
  assert.equal(await textOf(page, "#numbers"), "");
  await page.click("#told button");
  assert.match(await textOf(page, "#verdict"), /It will run/);
});

test("readings are judged, saved as a record, and opened again", async (t) => {
  const { page } = await sheet(t);
  await page.click("#example");
  const rows = () => page.$$eval(".verdict", (cells) => cells.map((cell) => cell.textContent));
  await type(page, "reading-0", "28.5 m");
  await type(page, "reading-1", "44 psi");
  assert.deepEqual((await rows()).slice(0, 3), ["pass", "fail", ""]);
  await type(page, "reading-2", "19");
  assert.match((await rows())[2] ?? "", /unit is missing/);
  await page.click("#save-record");
  assert.match(await textOf(page, "#told"), /No record to save/);
  await type(page, "reading-2", "19 gpm");
  await type(page, "record-by", "the installer");
  await catchSaves(page);
  await page.click("#save-record");
  const { name, document } = await lastSave(page);
  assert.equal(name, "three-larks-ranch.record.json");
  assert.equal(document.by, "the installer");
  // 28.5 m is 28.5 m; 44 psi by the exact pound and inch (NIST SP 811, B.8), 19 gpm by the gallon of 231 in³.
  assert.ok(Math.abs(document.readings[0].measured - 28.5) < 1e-12);
  assert.ok(Math.abs(document.readings[1].measured - 44 * 6894.757293168361) < 1e-6);
  assert.ok(Math.abs(document.readings[2].measured - (19 * 231 * 0.0254 ** 3) / 60) < 1e-12);
  assert.deepEqual(
    document.readings.slice(0, 4).map((/** @type {any} */ { verdict }) => verdict),
    ["pass", "fail", "pass", "not tested"],
  );
  await page.click("#clear");
  await page.click("#example");
  assert.equal(await page.$eval(at("reading-0"), (element) => /** @type {HTMLInputElement} */ (element).value), "");
  await openFile(page, "record.json", document);
  assert.deepEqual((await rows()).slice(0, 4), ["pass", "fail", "pass", ""]);
  await page.click("#save-record");
  // A reading comes back as text with the fewest digits that give the number, to a billionth.
  const again = (await lastSave(page)).document;
  for (const [i, reading] of again.readings.entries()) {
    const { measured } = document.readings[i];
    if (measured === null) continue;
    assert.ok(Math.abs(reading.measured - measured) <= 1e-9 * measured);
    reading.measured = measured;
  }
  assert.deepEqual(again, document);
});

test("the answers survive a reload and stay on the device", async (t) => {
  const { page, asked } = await sheet(t);
  await page.click("#example");
  await type(page, "name", "Cold Creek");
  await type(page, "reading-0", "95 ft");
  await page.reload();
  assert.match(await textOf(page, "#answer"), /Cold Creek: water system plan/);
  assert.equal(
    await page.$eval(at("reading-0"), (element) => /** @type {HTMLInputElement} */ (element).value),
    "95 ft",
  );
  assert.ok(asked.every((url) => !url.includes("Cold")));
  assert.equal((await page.cookies()).length, 0);
});

test("opened once, it opens without a network", async (t) => {
  const { page, errors } = await sheet(t);
  await page.waitForFunction(() =>
    /opens without a network/.test(document.querySelector("#offline")?.textContent ?? ""),
  );
  await page.click("#example");
  await page.setOfflineMode(true);
  // The server is out of reach for the worker too.
  const [worker] = page
    .browserContext()
    .browser()
    .targets()
    .filter((target) => target.type() === "service_worker");
  assert.ok(worker);
  await page.reload();
  assert.match(await textOf(page, "#verdict"), /It will run/);
  assert.equal(await charts(page), 6);
  await type(page, "name", "Offline Creek");
  assert.match(await textOf(page, "#answer"), /Offline Creek/);
  assert.deepEqual(errors, [], "asked for without a network");
  // And the rest of the site is out of reach: the network was off indeed.
  assert.equal(
    await page.evaluate(() =>
      fetch("index.html").then(
        () => "reached",
        () => "out of reach",
      ),
    ),
    "out of reach",
  );
  await page.setOfflineMode(false);
  errors.splice(0, errors.length, ...errors.filter((error) => !/ERR_INTERNET_DISCONNECTED/.test(error)));
});

test("one file holds all of it and works from the disk", async (t) => {
  const { page, asked } = await sheet(t, { address: ONE_FILE });
  await page.click("#example");
  assert.match(await textOf(page, "#verdict"), /It will run/);
  assert.equal(await charts(page), 6);
  await type(page, "well.depth", "312");
  assert.equal(await textOf(page, "#numbers"), "");
  await type(page, "well.depth", "95 m");
  await page.reload();
  assert.equal(
    await page.$eval(at("well.depth"), (element) => /** @type {HTMLInputElement} */ (element).value),
    "95 m",
  );
  assert.match(await textOf(page, "#verdict"), /It will run/);
  assert.deepEqual([...new Set(asked.filter((url) => !/^(data|blob):/.test(url)))], [ONE_FILE]);
});

test("the commissioning sheet prints on one page, the whole plan on several", async (t) => {
  const { page } = await sheet(t);
  const pages = async (/** @type {"Letter" | "A4"} */ format) => {
    const pdf = Buffer.from(await page.pdf({ format })).toString("latin1");
    return (pdf.match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;
  };
  await page.click("#example");
  for (const format of /** @type {const} */ (["Letter", "A4"])) assert.equal(await pages(format), 1, format);
  // A large job: ten uses of three outlets each.
  const large = structuredClone(RANCH);
  large.uses = Array.from({ length: 8 }, (_, i) => ({
    name: `a long name for use number ${i + 1}`,
    outlets: ["house", "barn hydrant"].slice(i % 2),
  }));
  await openFile(page, "large.json", large);
  assert.match(await textOf(page, "#verdict"), /run|change/);
  assert.ok((await page.$$(".readings tbody tr")).length > 30);
  for (const format of /** @type {const} */ (["Letter", "A4"])) assert.equal(await pages(format), 1, format);
  await page.emulateMediaType("print");
  assert.match(await textOf(page, "body"), /Local code and the licensed trades have the last word/);
  assert.doesNotMatch(await textOf(page, "body"), /Yard lines|Fill in the example/);
  await page.evaluate(() => {
    document.body.dataset["print"] = "plan";
  });
  assert.match(await textOf(page, "body"), /Yard lines/);
  assert.ok((await pages("A4")) > 1);
});

for (const scheme of /** @type {const} */ (["light", "dark"])) {
  test(`no rule of accessibility is broken, ${scheme}`, async (t) => {
    const { page } = await sheet(t, { scheme });
    const violations = async () => {
      await page.evaluate(axe.source);
      const { violations } = await page.evaluate(() => /** @type {any} */ (window).axe.run());
      return violations.map((/** @type {any} */ { id, nodes }) => `${id}: ${nodes[0].html}`);
    };
    const background = await page.$eval("html", (element) => getComputedStyle(element).backgroundColor);
    assert.equal(background, scheme === "light" ? "rgb(253, 252, 248)" : "rgb(23, 24, 26)");
    assert.deepEqual(await violations(), [], "empty");
    await page.click("#example");
    await page.$$eval("details", (folds) => {
      for (const fold of folds) fold.open = true;
    });
    assert.equal(await charts(page), 6);
    assert.deepEqual(await violations(), [], "filled in");
    await type(page, "well.depth", "deep");
    assert.deepEqual(await violations(), [], "with a wrong answer");
    await page.setViewport({ width: 360, height: 740 });
    assert.deepEqual(await violations(), [], "on a phone");
  });
}

test("the findings are read out once the typing pauses", async (t) => {
  const { page } = await sheet(t);
  await page.click("#example");
  await page.waitForFunction(() =>
    /Water passes the motor too slowly/.test(document.querySelector("#live")?.textContent ?? ""),
  );
  assert.equal(await page.$eval("#live", (element) => element.getAttribute("aria-live")), "polite");
});

test("it is read on a phone without moving sideways", async (t) => {
  const { page } = await sheet(t, { width: 360, height: 740 });
  await page.click("#example");
  await page.$$eval("details", (folds) => {
    for (const fold of folds) fold.open = true;
  });
  const { wide, small } = await page.evaluate(() => ({
    wide: document.documentElement.scrollWidth,
    small: [...document.querySelectorAll("input[type=text], input[type=date], select, textarea")].filter(
      (field) => Number.parseFloat(getComputedStyle(field).fontSize) < 16,
    ).length,
  }));
  assert.ok(wide <= 360, `${wide} px wide`);
  assert.equal(small, 0, "fields in type a phone would blow up");
});

test("the whole plan is printed in dark ink, whatever the screen", async (t) => {
  const { page } = await sheet(t, { scheme: "dark" });
  await page.click("#example");
  await charts(page);
  const ink = () => page.$eval("#charts svg text", (text) => text.getAttribute("fill"));
  assert.equal(await ink(), "#E8E8E8");
  const printed = await page.evaluate(
    () =>
      /** @type {Promise<{ ink: string | null, print: string | undefined }>} */ (
        new Promise((resolve) => {
          window.print = () => {
            const text = document.querySelector("#charts svg text");
            resolve({ ink: text?.getAttribute("fill") ?? null, print: document.body.dataset["print"] });
          };
          document.getElementById("print-plan")?.click();
        })
      ),
  );
  assert.deepEqual(printed, { ink: "#1A1A1A", print: "plan" });
  assert.equal(await charts(page), 6);
  assert.equal(await ink(), "#E8E8E8");
});

test("Firefox does the same", async (t) => {
  const { page } = await sheet(t, { name: "firefox" });
  for (const [path, text] of Object.entries(CABIN)) await type(page, path, text);
  assert.match(await textOf(page, "#verdict"), /Buy a pump for the duty below/);
  await type(page, "well.depth", "180");
  assert.match(await textOf(page, `${at("well.depth-note")}`), /unit is missing/);
  assert.equal(await textOf(page, "#numbers"), "");
  await page.click("#example");
  assert.equal(await charts(page), 6);
  await type(page, "reading-0", "95 ft");
  await page.reload();
  assert.match(await textOf(page, "#verdict"), /It will run/);
  assert.equal(
    await page.$eval(at("reading-0"), (element) => /** @type {HTMLInputElement} */ (element).value),
    "95 ft",
  );
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate(() => /** @type {any} */ (window).axe.run());
  assert.deepEqual(
    violations.map((/** @type {any} */ { id }) => id),
    [],
  );
});

test("the first load stays under 300 kB compressed", () => {
  const files = ["worksheet.html", "worksheet.css", "worksheet.js"];
  const bytes = files.map((file) => gzipSync(readFileSync(join(SITE, file)), { level: 6 }).length);
  assert.ok(bytes.reduce((sum, size) => sum + size, 0) < 300_000, `${bytes}`);
});

test("the same sources build the same bytes", () => {
  const built = () =>
    readdirSync(SITE)
      .filter((file) => file.startsWith("worksheet"))
      .map((file) => [
        file,
        createHash("sha256")
          .update(readFileSync(join(SITE, file)))
          .digest("hex"),
      ]);
  const first = built();
  execFileSync("node", ["docs/worksheet/build.mjs"]);
  assert.deepEqual(built(), first);
});
