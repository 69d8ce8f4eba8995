/** Job documents spoiled by chance: valid ones, each changed in a few places as a slip, a tool or an attacker would. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { sampleJob } from "risingmain/plan";
import { randomJobs } from "../plan/random-jobs.ts";
import { garbage, nested } from "./garbage.ts";

const file = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../docs/jobs/${name}.json`, import.meta.url), "utf8"));

const documents: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 1, arbitrary: fc.constantFrom(sampleJob, file("ranch"), file("ranch-looped")) },
  { weight: 2, arbitrary: randomJobs.map(({ metric }) => metric) },
  { weight: 2, arbitrary: randomJobs.map(({ us }) => us) },
);

type Parent = Record<string, unknown>;

/** No job is deeper; a document swapped into itself is. */
const DEEPEST = 8;

/** Every place of a document: its parent and key. */
function places(value: unknown, depth = DEEPEST): readonly (readonly [parent: Parent, key: string])[] {
  if (typeof value !== "object" || value === null || depth === 0) return [];
  // The first items of a list stand for the rest.
  const keys = Object.keys(value).slice(0, 40);
  return keys.flatMap((key) => [[value as Parent, key] as const, ...places((value as Parent)[key], depth - 1)]);
}

/** One change, told by numbers so that a failing case shrinks: where, what, and with what. */
const changes = fc.record({
  place: fc.nat(),
  other: fc.nat(),
  kind: fc.constantFrom(
    "garbage",
    "delete",
    "swap",
    "repeat",
    "grow",
    "unknown field",
    "prototype field",
    "deep",
    "scale",
    "sign",
    "unit",
    "letter",
  ),
  amount: fc.double({ min: -12, max: 12, noNaN: true }),
  letter: fc.string({ unit: "binary", maxLength: 3 }),
});

type Change = typeof changes extends fc.Arbitrary<infer T> ? T : never;

const UNITS = ["ft", "m", "in", "gpm", "L/s", "psi", "kPa", "V", "A", "%", "°F", "gal", "", "hp", "lb"];
const NUMBER = /-?\d[\d,.]*/;

/** More copies than a list may hold: a bound that must refuse, not wait. */
const MANY = 2_000;

function change(document: unknown, { place, other, kind, amount, letter }: Change): void {
  const all = places(document);
  const at = all[place % all.length];
  const with_ = all[other % all.length];
  if (at === undefined || with_ === undefined) return;
  const [parent, key] = at;
  const value = parent[key];
  const bad = garbage();
  switch (kind) {
    case "garbage":
      parent[key] = bad[other % bad.length];
      return;
    case "delete":
      delete parent[key];
      return;
    case "swap":
      // The same object in two places, or one within itself: no JSON, but a caller can build it.
      parent[key] = with_[0][with_[1]];
      return;
    case "repeat":
      if (Array.isArray(value)) value.push(...value.slice(0, MANY));
      return;
    case "grow":
      if (Array.isArray(value) && value.length > 0) parent[key] = new Array(MANY).fill(value[other % value.length]);
      return;
    case "unknown field":
      parent[letter] = 1;
      return;
    case "prototype field":
      Object.defineProperty(parent, "__proto__", {
        value: { version: 1 },
        enumerable: true,
        configurable: true,
        writable: true,
      });
      return;
    case "deep":
      parent[key] = nested(2_000);
      return;
    case "scale":
      if (typeof value === "string")
        parent[key] = value.replace(NUMBER, (n) => String(Number(n.replaceAll(",", "")) * 10 ** amount));
      if (typeof value === "number") parent[key] = value * 10 ** amount;
      return;
    case "sign":
      if (typeof value === "string") parent[key] = value.replace(NUMBER, (n) => `-${n}`);
      return;
    case "unit":
      if (typeof value === "string") parent[key] = `${NUMBER.exec(value)?.[0] ?? ""} ${UNITS[other % UNITS.length]}`;
      return;
    case "letter":
      if (typeof value === "string")
        parent[key] = value.slice(0, other % (value.length + 1)) + letter + value.slice(place % (value.length + 1));
      return;
  }
}

/** Valid documents with one change to four. */
export const mutatedJobs: fc.Arbitrary<unknown> = fc
  .tuple(documents, fc.array(changes, { minLength: 1, maxLength: 4 }))
  .map(([document, list]) => {
    const copy: unknown = structuredClone(document);
    for (const one of list) change(copy, one);
    return copy;
  });

/** The text of a valid job file with bytes lost, doubled, swapped or made up. */
export const mutatedTexts: fc.Arbitrary<string> = fc
  .tuple(
    documents,
    fc.array(fc.tuple(fc.nat(), fc.nat({ max: 40 }), fc.string({ unit: "binary", maxLength: 4 })), {
      minLength: 1,
      maxLength: 4,
    }),
  )
  .map(([document, cuts]) =>
    cuts.reduce((text, [at, length, put]) => {
      const from = at % (text.length + 1);
      return text.slice(0, from) + put + text.slice(from + length);
    }, JSON.stringify(document)),
  );
