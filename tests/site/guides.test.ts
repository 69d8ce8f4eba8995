/**
 * Every guide has the form a reader learns once, and every page made from the code says what the code says.
 */
import { readdirSync, readFileSync } from "node:fs";
import { chlorineCautions } from "risingmain/disinfection";
import { planSystem, readJob, sampleJob } from "risingmain/plan";
import { bibliography } from "risingmain/sources";
import { describe, expect, it } from "vitest";
import { cautionsOfTheLibrary, cautionsPage } from "../../docs/pages/cautions.ts";
import { letters } from "../../docs/pages/letters.ts";
import { feedsOfTheLibrary } from "../../docs/pages/models.ts";
import { fieldsOfTheLibrary, modulesOfLetter, nomenclaturePage } from "../../docs/pages/nomenclature.ts";
import { sourcesPage } from "../../docs/pages/sources.ts";

const GUIDES = "docs/guides";
/** What a guide to a step of the job has, in this order; others may stand between. */
const FORM = ["What it means", "Why", "How far to trust it", "Check it on site", "Where it comes from"];
/** Guides to the library, not to a step of the job: nothing of them can be checked with a gauge. */
const ABOUT_THE_LIBRARY = ["charts.md", "citing.md", "embedding.md", "notebooks.md", "start.md", "sweeps.md"];
/** Lines a first screen holds, code included. */
const FIRST_SCREEN = 50;

describe.each(readdirSync(GUIDES).filter((name) => name.endsWith(".md")))("guide %s", (name) => {
  const text = readFileSync(`${GUIDES}/${name}`, "utf8");
  const lines = text.replace(/^---[\s\S]*?---\n/, "").split("\n");

  it("has a question as its title, once", () => {
    const titles = text.replace(/```[\s\S]*?```/g, "").match(/^# .*$/gm) ?? [];
    expect(titles).toHaveLength(1);
    expect(titles[0]).toMatch(/\?$/);
  });

  it("answers in the first screen: in words first, or within its lines", () => {
    const second = lines.findIndex((line) => line.startsWith("## "));
    const answer = lines
      .slice(2, second < 0 ? undefined : second)
      .join("\n")
      .trim();
    expect(answer).not.toBe("");
    if (answer.startsWith("```")) expect(second).toBeLessThan(FIRST_SCREEN);
  });

  if (!ABOUT_THE_LIBRARY.includes(name))
    it("goes on as every guide to a step of the job", () => {
      const headings = lines.filter((line) => line.startsWith("## ")).map((line) => line.slice(3));
      expect(headings.filter((heading) => FORM.includes(heading))).toEqual(FORM);
    });
});

describe("pages made from the code", () => {
  it("name every source", () => {
    const page = sourcesPage();
    for (const { id } of bibliography()) expect(page).toContain(`<dt id="${id}">`);
  });

  it("give every caution that a plan and a dose give", () => {
    const texts = cautionsOfTheLibrary().map(({ text }) => text);
    const given = [...planSystem(readJob(sampleJob)).cautions, ...chlorineCautions];
    expect(given.length).toBeGreaterThan(5);
    for (const { text } of given) expect(texts).toContain(text);
    expect(cautionsPage()).toContain("Local code and the licensed trades have the last word");
  });

  it("give every caution in the code, however it is declared", () => {
    const declared = readdirSync("src", { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".ts") && !file.startsWith("units"))
      .map((file) => readFileSync(`src/${file}`, "utf8"))
      .join("\n")
      // A code, then its text: no other data of the library has these two side by side.
      .match(/\b(?:code|id): "[a-z0-9-]+",\s+text:/g);
    expect(cautionsOfTheLibrary()).toHaveLength(declared?.length ?? 0);
  });

  it("name every field that holds a quantity, known from elsewhere", () => {
    const page = nomenclaturePage();
    for (const field of ["flow", "headLoss", "insideDiameter", "roughness", "staticLevel", "precharge", "cutIn"])
      expect(page).toContain(`| \`${field}\` |`);
    expect(fieldsOfTheLibrary()).toContainEqual({ module: "pipe", field: "headLoss", quantity: "Length" });
  });

  it.each(letters)("use the letter $letter for $quantity in a formula of a module that has it", (letter) => {
    expect(modulesOfLetter(letter)).not.toEqual([]);
    if (letter.modules !== undefined) expect(modulesOfLetter(letter)).toEqual(letter.modules);
  });

  it("show what feeds what", () => {
    const feeds = feedsOfTheLibrary();
    expect(feeds.get("head")).toEqual(["pipe"]);
    expect(feeds.get("water")).toEqual([]);
  });
});
