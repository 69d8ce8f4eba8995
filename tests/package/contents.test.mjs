// @ts-check
/**
 * What is in the tarball: the built modules, their types and maps, the sources the maps name, and nothing else.
 * Run by `npm run test:dist` after a build.
 */
import { strict as assert } from "node:assert";
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { test } from "node:test";
import { build } from "esbuild";

const MOST_FILES = 3500;
const MOST_BYTES_PACKED = 3_000_000;
const MOST_BYTES_UNPACKED = 12_000_000;

/** What may be in the package; a file that matches none of these is a stray. */
const EXPECTED = [
  /^(package\.json|README\.md|LICENSE|CHANGELOG\.md)$/,
  /^dist\/[\w/-]+\.(js|cjs|d\.ts|d\.cts)$/,
  /^dist\/[\w/-]+\.(js|cjs)\.map$/,
  /^src\/[\w/-]+\.ts$/,
  /^src\/plan\/(job|record)\.schema\.json$/,
];
/** A folder of the machine that built it, a user's home, a drive, a local server. */
const MACHINE = [
  /(?:^|["'`(\s=:])\/(?:home|root|tmp|var|work|mnt|opt|Users)\//m,
  /\b[A-Z]:\\\\/,
  /file:\/\//,
  /localhost/,
];

const [packed] = JSON.parse(
  execFileSync("npm", ["pack", "--dry-run", "--json", "--ignore-scripts"], { encoding: "utf8", maxBuffer: 1e8 }),
);
/** @type {string[]} */
const files = packed.files.map((/** @type {{ path: string }} */ { path }) => path);
const inPackage = new Set(files);
const texts = new Map(files.map((path) => [path, readFileSync(path, "utf8")]));

/** @param {(path: string, text: string) => readonly string[]} faultsOf */
const faults = (faultsOf) => [...texts].flatMap(([path, text]) => faultsOf(path, text));

test("no stray file", () => {
  assert.deepEqual(
    files.filter((path) => !EXPECTED.some((pattern) => pattern.test(path))),
    [],
  );
});

test("every entry of the manifest is there", () => {
  const manifest = JSON.parse(texts.get("package.json") ?? "");
  const targets = JSON.stringify([
    Object.values(manifest.exports),
    manifest.bin,
    manifest.main,
    manifest.module,
    manifest.types,
    manifest.typesVersions,
  ]);
  const paths = [...targets.matchAll(/"\.\/([^"]+)"/g)]
    .map(([, path = ""]) => path)
    .filter((path) => /\.\w+$/.test(path));
  assert.ok(paths.length > 90);
  assert.deepEqual(
    paths.filter((path) => !inPackage.has(path)),
    [],
  );
});

test("every import of a built file leads to a file of the package", () => {
  assert.deepEqual(
    faults((path, text) =>
      /^dist\/.*\.(js|cjs|ts|cts)$/.test(path)
        ? [...text.matchAll(/(?:from |import |require\(|import\()["'](\.[^"']+)["']/g)]
            .map(([, target = ""]) => join(dirname(path), target))
            .filter(
              (target) =>
                ![target, target.replace(/\.js$/, ".d.ts"), target.replace(/\.cjs$/, ".d.cts")].some((f) =>
                  inPackage.has(f),
                ),
            )
            .map((target) => `${path}: ${target}`)
        : [],
    ),
    [],
  );
});

test("every built file has its map, and every source of a map is in the package", () => {
  let maps = 0;
  const missing = faults((path, text) => {
    if (!/^dist\/.*\.(js|cjs)$/.test(path)) return [];
    const [, name] = /\/\/# sourceMappingURL=(\S+)\s*$/.exec(text) ?? [];
    if (name === undefined) return [`${path}: no map`];
    maps++;
    const { sources } = JSON.parse(texts.get(join(dirname(path), name)) ?? '{"sources":["no map in the package"]}');
    return sources
      .map((/** @type {string} */ source) => normalize(join(dirname(path), source)))
      .filter((/** @type {string} */ source) => !inPackage.has(source))
      .map((/** @type {string} */ source) => `${path}: ${source}`);
  });
  assert.deepEqual(missing, []);
  assert.equal(maps, files.filter((path) => path.endsWith(".map")).length);
});

test("no file names a place on a machine", () => {
  assert.deepEqual(
    faults((path, text) =>
      [
        ...MACHINE.filter((pattern) => pattern.test(text)).map(String),
        ...(text.includes(process.cwd()) ? ["here"] : []),
      ].map((found) => `${path}: ${found}`),
    ),
    [],
  );
});

test(`at most ${MOST_FILES} files, ${MOST_BYTES_PACKED / 1e6} MB packed, ${MOST_BYTES_UNPACKED / 1e6} MB unpacked`, () => {
  console.log(`${files.length} files, ${packed.size} bytes packed, ${packed.unpackedSize} unpacked`);
  assert.ok(files.length <= MOST_FILES);
  assert.ok(packed.size <= MOST_BYTES_PACKED);
  assert.ok(packed.unpackedSize <= MOST_BYTES_UNPACKED);
});

test("nothing runs when a module loads but arithmetic on constants", async () => {
  const entryPoints = files.filter((path) => /^dist\/(?!bin\/).*\.js$/.test(path));
  // Without the manifest's promise of no side effects, the bundler keeps whatever it cannot prove to have none.
  const { outputFiles } = await build({
    stdin: { contents: entryPoints.map((path) => `import "./${path}";`).join("\n"), resolveDir: process.cwd() },
    bundle: true,
    format: "esm",
    write: false,
    external: ["valibot"],
    plugins: [
      {
        name: "no promise",
        setup: ({ onResolve }) =>
          onResolve({ filter: /^\./ }, ({ path, resolveDir }) => ({ path: join(resolveDir, path), sideEffects: true })),
      },
    ],
  });
  const kept = (outputFiles[0]?.text ?? "")
    .split("\n")
    .map((line) => line.replace(/\bMath\.sqrt\(\d+\)/, "0"))
    .filter((line) => /\w\(|\bnew\b|=>|\bawait\b/.test(line) && !/^\s*\/\//.test(line));
  assert.ok(entryPoints.length > 400);
  assert.deepEqual(kept, []);
});
