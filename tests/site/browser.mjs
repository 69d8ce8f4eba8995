// @ts-check
/**
 * What every test of the site needs: the built site on a local server, and a real browser that tells where it went.
 */
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";
import puppeteer from "puppeteer-core";

/** @type {Readonly<Record<string, string>>} */
const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css",
  ".js": "text/javascript",
  ".json": "application/json",
  ".svg": "image/svg+xml",
};

/** @typedef {{ readonly origin: string, readonly close: () => Promise<void> }} Served */

/**
 * Serves a folder on a free port of this machine.
 *
 * @param {string} [folder]
 * @returns {Promise<Served>}
 */
export async function serveSite(folder = "docs/site") {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://localhost");
    const path = normalize(decodeURIComponent(pathname.endsWith("/") ? `${pathname}index.html` : pathname));
    try {
      const content = await readFile(join(folder, path));
      response.writeHead(200, { "content-type": TYPES[extname(path)] ?? "application/octet-stream" }).end(content);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(undefined)));
  const { port } = /** @type {import("node:net").AddressInfo} */ (server.address());
  return {
    origin: `http://localhost:${port}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve(undefined));
        server.closeAllConnections();
      }),
  };
}

/** The browsers of Debian; `CHROMIUM` and `FIREFOX` name others. */
const BROWSERS = {
  chrome: process.env["CHROMIUM"] ?? "/usr/bin/chromium",
  firefox: process.env["FIREFOX"] ?? "/usr/bin/firefox-esr",
};

/**
 * Starts a browser without a window.
 *
 * @param {"chrome" | "firefox"} [browser]
 * @returns {Promise<import("puppeteer-core").Browser>}
 */
export function openBrowser(browser = "chrome") {
  return puppeteer.launch({
    browser,
    executablePath: BROWSERS[browser],
    headless: true,
    args: browser === "chrome" ? ["--no-sandbox", "--disable-dev-shm-usage"] : [],
  });
}

/**
 * A page that keeps what went wrong on it and every address it asked for.
 *
 * @param {import("puppeteer-core").Browser | import("puppeteer-core").BrowserContext} browser
 * @returns {Promise<{ page: import("puppeteer-core").Page, errors: string[], asked: string[] }>}
 */
export async function watchedPage(browser) {
  const page = await browser.newPage();
  /** @type {string[]} */
  const errors = [];
  /** @type {string[]} */
  const asked = [];
  page.on("pageerror", (error) => errors.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  page.on("request", (request) => asked.push(request.url()));
  return { page, errors, asked };
}
