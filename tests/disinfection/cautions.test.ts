/** The cautions that must travel with chlorine. */
import {
  bleachDose,
  chlorineCautions,
  dechlorination,
  flush,
  hypochloriteDose,
  samplingPractice,
  stockSolution,
} from "risingmain/disinfection";
import { gpm, mgPerLitre, percent, usGallons } from "risingmain/units";
import { expect, test } from "vitest";

const water = { volume: usGallons(100), target: mgPerLitre(100) };
const granules = () => hypochloriteDose({ ...water, availableChlorine: percent(65) });

test.each([
  ["acid", /acid/],
  ["ammonia", /ammonia/],
  ["ventilation and pits", /open air.*well pit/s],
  ["power", /power/],
  ["drinking before a clean sample", /Do not drink.*sample is clean/],
  ["the health department", /health department/],
  ["septic systems and streams", /septic system, stream/],
])("every dose warns of %s", (_, words) => {
  const stock = stockSolution({ ...water, strength: percent(6) });
  if (stock.state !== "made") throw new Error("too small");
  for (const { cautions } of [bleachDose({ ...water, strength: percent(6) }), granules(), stock]) {
    expect(cautions.map(({ text }) => text).join(" ")).toMatch(words);
  }
});

test("each caution has a code of its own, a text and a basis", () => {
  expect(new Set(chlorineCautions.map(({ code }) => code)).size).toBe(chlorineCautions.length);
  for (const { text, basis } of chlorineCautions) {
    expect(text.length).toBeGreaterThan(20);
    expect(basis).not.toBe("");
  }
});

test("granules warn of fire and of other pool chemicals", () => {
  expect(
    granules()
      .cautions.map(({ text }) => text)
      .join(" "),
  ).toMatch(/fire.*liquid bleach/s);
});

test("flushing warns of drinking, over-pumping and where the water goes; dechlorinating of mixing and of the rule", () => {
  const out = flush({ volume: usGallons(100), flow: gpm(5), from: mgPerLitre(100), to: mgPerLitre(1) });
  const texts = out.cautions.map(({ text }) => text).join(" ");
  expect(texts).toMatch(/Do not drink/);
  expect(texts).toMatch(/weak well/);
  expect(texts).toMatch(/septic/);
  const { cautions } = dechlorination({
    volume: usGallons(100),
    residual: mgPerLitre(50),
    dechlorinator: "ascorbic acid",
  });
  expect(cautions.map(({ text }) => text).join(" ")).toMatch(/authority.*bleach/s);
});

test("the first sample waits for chlorine to be gone, and drinking for the sample", () => {
  const codes = samplingPractice.map(({ code }) => code);
  expect(codes.indexOf("chlorine-gone")).toBeLessThan(codes.indexOf("first-bacteria"));
  expect(samplingPractice.find(({ code }) => code === "first-bacteria")?.why).toMatch(/Do not drink/);
});
