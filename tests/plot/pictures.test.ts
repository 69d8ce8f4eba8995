/**
 * The pictures beside the text: drawn from the code above them, told in words, and those of the README not stale.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { guidePictures, readmePictures } from "../../docs/charts/pictures.ts";

const pictures = await guidePictures();

describe("the guides", () => {
  test("hold a chart each where one helps", () => {
    expect(pictures.map(({ guide, name }) => `${guide.replace(/.*\/|\.md/g, "")}: ${name}`).sort()).toEqual([
      "choosing: sensitivity",
      "conductor: voltage",
      "friction: friction",
      "friction: friction-factor",
      "head: grade-line",
      "pump: pump",
      "running-system: day",
      "start: plan-pump",
      "tank: starts",
    ]);
    expect(new Set(pictures.map(({ name }) => name)).size).toBe(pictures.length);
  });

  test.each(pictures.map((picture) => [picture.name, picture] as const))("%s", (name, { guide, svg, warnings }) => {
    expect(warnings).toEqual([]);
    // No paper behind it, and the ink the site's style looks for.
    expect(svg).not.toMatch(/<rect [^>]*fill="#FFFFFF"/);
    expect(svg).toContain('fill="#1A1A1A"');
    // Shown once, after its code, and told in words for those who do not see it.
    const text = readFileSync(guide, "utf8");
    const [shown, ...more] = [
      ...text.matchAll(new RegExp(`!\\[([^\\]]+)\\]\\(\\.\\./assets/charts/${name}\\.svg\\)`, "g")),
    ];
    expect(more).toEqual([]);
    expect(shown?.[1]?.length).toBeGreaterThan(60);
    expect(shown?.index).toBeGreaterThan(text.indexOf(`chart=${name}\n`));
  });
});

test("the README's pictures are what the library draws now: npm run charts", async () => {
  const readme = readFileSync("README.md", "utf8");
  for (const [file, { svg, warnings }] of await readmePictures()) {
    expect(warnings).toEqual([]);
    expect(readFileSync(file, "utf8") === svg ? "as drawn" : `${file} is stale`).toBe("as drawn");
    expect(readme).toMatch(new RegExp(`!\\[[^\\]]{40,}\\]\\(${file}\\)`));
  }
});
