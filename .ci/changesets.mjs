// @ts-check
/**
 * A change to the public interface (tests/api) or to a recorded number (tests/conformance/results.json) comes with a changeset;
 * one that moves numbers says old and new.
 *
 * Compared with where the branch left main, or on main itself with the last release; BASE names another commit.
 */
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";

/** @param {readonly string[]} args @returns {string | undefined} */
function git(...args) {
  try {
    return execFileSync("git", args, { encoding: "utf8", maxBuffer: 1e8, stdio: ["ignore", "pipe", "ignore"] }).trim();
  } catch {
    return undefined;
  }
}

function findBase() {
  if (process.env.BASE) return process.env.BASE;
  const head = git("rev-parse", "HEAD");
  const fork = ["origin/main", "main"].map((main) => git("merge-base", "HEAD", main)).find((commit) => commit);
  if (fork && fork !== head) return fork;
  return git("log", "-1", "--format=%H", "-G", '^  "version":', "--", "package.json") || undefined;
}

const RESULTS = "tests/conformance/results.json";
const base = findBase();
if (base === undefined) {
  console.log("no history to compare with: changesets not checked");
} else {
  const lines = (/** @type {string | undefined} */ text) => (text ?? "").split("\n").filter((line) => line !== "");
  const since = (/** @type {string} */ path, filter = "ACMRD") => [
    ...lines(git("diff", "--name-only", `--diff-filter=${filter}`, base, "--", path)),
    ...lines(git("ls-files", "--others", "--exclude-standard", "--", path)),
  ];
  const written = [...since(".changeset", "AMR"), ...since("CHANGELOG.md", "M")].filter(
    (file) => /^(\.changeset\/(?!README).*|CHANGELOG)\.md$/.test(file) && existsSync(file),
  );
  const faults = [];

  const reports = since("tests/api").filter((file) => file.endsWith(".api.md"));
  if (reports.length > 0 && written.length === 0)
    faults.push(`${reports.length} API reports changed and no changeset says so`);

  const before = JSON.parse(git("show", `${base}:${RESULTS}`) || '{"values":{}}').values;
  const after = existsSync(RESULTS) ? JSON.parse(readFileSync(RESULTS, "utf8")).values : {};
  const moved = Object.keys(before).filter((key) => Object.hasOwn(after, key) && before[key] !== after[key]);
  const says = written.some((file) => /\|\s*old\s*\|\s*new\s*\|/.test(readFileSync(file, "utf8")));
  if (moved.length > 0 && !says)
    faults.push(`${moved.length} recorded numbers moved (${moved[0]} …) and no changeset says old and new`);

  for (const fault of faults) console.error(fault);
  console.log(
    `since ${base.slice(0, 7)}: ${reports.length} API reports changed, ${moved.length} numbers moved, ${written.length} changesets`,
  );
  if (faults.length > 0) process.exitCode = 1;
}
