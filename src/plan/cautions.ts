/**
 * The cautions that go with a plan.
 *
 * @module
 */
import { chlorineCautions } from "../disinfection/index.ts";
import { generatorCautions } from "../generator/index.ts";
import type { Caution } from "../sources/index.ts";
import type { Job } from "./job.ts";

/** What every plan says first. */
const ALWAYS: readonly Caution[] = [
  {
    code: "local-code",
    text: "Local code and the licensed trades have the last word. Where this plan and the inspector differ, the inspector is right.",
    basis: "common practice",
  },
  {
    code: "drinking-water",
    text: "Drink nothing from the well before a sample has come back clean.",
    basis: "common practice",
  },
  {
    code: "mains",
    text: "Wiring is licensed work. Turn off and lock out the power before touching the wellhead, the switch or the tank.",
    basis: "common practice",
  },
  {
    code: "pressure",
    text: "Water under pressure and compressed air injure. Let the pressure off before opening anything, and never test a tank or a line with air.",
    basis: "common practice",
  },
  {
    code: "lifting",
    text: "A pump full of water on its pipe weighs more than people can hold. Use a hoist and a clamp, keep from under it, and never lift by the cable.",
    basis: "common practice",
  },
];

/** The cautions of a job: chlorine always, generators where there is one. */
export function planCautions({ power }: Job): readonly Caution[] {
  const generator = power.sources.some(({ kind }) => kind === "generator");
  return [
    ...ALWAYS,
    ...(generator
      ? generatorCautions.map(({ id, text }) => ({ code: `generator-${id}`, text, basis: "common practice" }))
      : []),
    ...chlorineCautions,
  ];
}
