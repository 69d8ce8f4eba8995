// @ts-check
/** How each engine runs the conformance set on the installed package, and says which version it is. */
import { execFile, spawn } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { build } from "esbuild";
import puppeteer from "puppeteer-core";

const modules = fileURLToPath(new URL("./node_modules/", import.meta.url));
const CHROMIUM = process.env.CHROMIUM ?? "/usr/bin/chromium";
const FIREFOX = process.env.FIREFOX ?? "/usr/bin/firefox-esr";

/**
 * @typedef {import("../conformance/set.ts").Results} Results
 * @typedef {{ name: string, version: string, format: string, results: Results }} Outcome
 */

/** @param {string} binary @param {readonly string[]} args @param {string} cwd */
export async function output(binary, args, cwd) {
  const { stdout } = await promisify(execFile)(binary, args, { cwd, maxBuffer: 1e8 });
  return stdout;
}

/**
 * An engine with a command line: the set as ESM and as CommonJS.
 *
 * @param {string} name @param {string} binary @param {readonly string[]} args
 */
const commandLine = (name, binary, args = []) => ({
  name,
  /** @param {string} consumer @returns {Promise<Outcome[]>} */
  async run(consumer) {
    const version =
      (await output(binary, ["--version"], consumer)).split("\n")[0]?.replace(/^(deno|v)\s*| \(.*/g, "") ?? "";
    const outcomes = [];
    for (const [format, file] of [
      ["ESM", "main.mjs"],
      ["CommonJS", "main.cjs"],
    ]) {
      const results = JSON.parse(await output(binary, [...args, /** @type {string} */ (file)], consumer));
      outcomes.push({ name, version, format: /** @type {string} */ (format), results });
    }
    return outcomes;
  },
});

/** The V8-isolate worker runtime takes its modules listed, so it gets them in one file. */
const worker = {
  name: "workerd",
  /** @param {string} consumer @returns {Promise<Outcome[]>} */
  async run(consumer) {
    const binary = join(modules, "@cloudflare/workerd-linux-64/bin/workerd");
    await build({
      stdin: {
        contents: `import { results } from "./set.mjs";
          export default { fetch: () => new Response(JSON.stringify(results())) };`,
        resolveDir: consumer,
      },
      bundle: true,
      format: "esm",
      outfile: join(consumer, "worker.js"),
      logLevel: "warning",
    });
    writeFileSync(
      join(consumer, "worker.capnp"),
      `using Workerd = import "/workerd/workerd.capnp";
const config :Workerd.Config = (
  services = [(name = "main", worker = (modules = [(name = "worker", esModule = embed "worker.js")], compatibilityDate = "2026-01-01"))],
  sockets = [(name = "http", address = "127.0.0.1:0", http = (), service = "main")]
);`,
    );
    const version = (await output(binary, ["--version"], consumer)).trim().replace(/^workerd /, "");
    const child = spawn(binary, ["serve", "worker.capnp", "--control-fd=3"], {
      cwd: consumer,
      stdio: ["ignore", "inherit", "inherit", "pipe"],
    });
    try {
      const port = await new Promise((resolve, reject) => {
        child.once("exit", (code) => reject(new Error(`workerd ended with ${code}`)));
        child.stdio[3]?.on("data", (line) => {
          const { event, port } = JSON.parse(String(line).split("\n")[0] ?? "{}");
          if (event === "listen") resolve(port);
        });
      });
      const response = await fetch(`http://127.0.0.1:${port}/`);
      if (!response.ok) throw new Error(await response.text());
      return [
        { name: "workerd", version, format: "ESM, one file", results: /** @type {Results} */ (await response.json()) },
      ];
    } finally {
      child.kill();
    }
  },
};

const TYPES = /** @type {Record<string, string>} */ ({
  ".mjs": "text/javascript",
  ".js": "text/javascript",
  ".html": "text/html",
});

/**
 * A browser: a page with an import map, and the files of the package as they are.
 *
 * @param {"chrome" | "firefox"} browser @param {string} name @param {string} executablePath
 */
const page = (browser, name, executablePath) => ({
  name,
  /** @param {string} consumer @returns {Promise<Outcome[]>} */
  async run(consumer) {
    const { exports } = JSON.parse(readFileSync(join(consumer, "node_modules/risingmain/package.json"), "utf8"));
    const imports = Object.fromEntries(
      Object.entries(exports).flatMap(([key, target]) =>
        target.import
          ? [[key.replace(/^\./, "risingmain"), target.import.default.replace(/^\./, "/node_modules/risingmain")]]
          : [],
      ),
    );
    const schemas = JSON.parse(readFileSync(join(consumer, "node_modules/valibot/package.json"), "utf8")).exports["."]
      .import;
    imports.valibot = join("/node_modules/valibot", schemas.default ?? schemas);
    const html = `<!doctype html><meta charset="utf-8"><title>conformance</title>
      <script type="importmap">${JSON.stringify({ imports })}</script>
      <script type="module">import { results } from "/set.mjs"; globalThis.results = JSON.stringify(results());</script>`;
    const server = createServer(({ url = "/" }, response) => {
      try {
        const body = url === "/" ? html : readFileSync(join(consumer, new URL(url, "http://local").pathname));
        response.writeHead(200, { "content-type": TYPES[extname(url)] ?? "text/html" }).end(body);
      } catch {
        response.writeHead(404).end();
      }
    });
    await new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(undefined)));
    const { port } = /** @type {import("node:net").AddressInfo} */ (server.address());
    const opened = await puppeteer.launch({
      browser,
      executablePath,
      headless: true,
      args: browser === "chrome" ? ["--no-sandbox"] : [],
    });
    try {
      const tab = await opened.newPage();
      /** @type {string[]} */
      const faults = [];
      tab.on("pageerror", (error) => faults.push(String(error)));
      await tab.goto(`http://127.0.0.1:${port}/`);
      await tab.waitForFunction("globalThis.results !== undefined", { timeout: 120_000 }).catch((error) => {
        throw new Error(`${name}: ${faults.join("; ") || error}`);
      });
      const results = JSON.parse(/** @type {string} */ (await tab.evaluate("globalThis.results")));
      const version = (await opened.version()).replace(/^[^/]*\//, "");
      return [{ name, version, format: "ESM, import map", results }];
    } finally {
      await opened.close();
      server.close();
    }
  },
});

export const engines = [
  ...["20", "22", "24"].map((major) => commandLine(`Node ${major}`, join(modules, `node${major}/bin/node`))),
  commandLine("Deno", join(modules, "@deno/linux-x64-glibc/deno"), [
    "run",
    "--allow-read",
    "--node-modules-dir=manual",
  ]),
  commandLine("Bun", join(modules, "@oven/bun-linux-x64/bin/bun")),
  worker,
  page("chrome", "Chromium", CHROMIUM),
  page("firefox", "Firefox", FIREFOX),
];
