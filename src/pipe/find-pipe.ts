/**
 * Pipe by the words a supplier uses: "1-1/4 in PE SIDR 15", "2in sch40 pvc", "63 mm PE100 SDR 11".
 *
 * @module
 */
import { InputError, inBar, inPsi } from "../units/index.ts";
import { listPipes } from "./list-pipes.ts";
import type { PipeSize } from "./pipe-size.ts";

/** What a trade text asks for; each part may be missing. */
interface Wanted {
  nominal?: string;
  material?: string;
  grade?: string;
  series?: string;
  standard?: string;
  /** Rating named in the text, in psi or bar. */
  rating?: { readonly value: number; readonly unit: "psi" | "bar" };
  /** Whether the text says copper tube size. */
  tubeSize?: boolean;
}

/** The longest text worth reading; no name of a pipe comes near. */
const LONGEST_TEXT = 120;
/** How many neighbours an error lists. */
const MOST_LISTED = 12;

/** Decimal parts of an inch that name a nominal size. */
const FRACTION_OF_DECIMAL: Readonly<Record<string, string>> = {
  "25": "1/4",
  "375": "3/8",
  "5": "1/2",
  "50": "1/2",
  "625": "5/8",
  "75": "3/4",
};

const VULGAR_FRACTIONS: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅜": "3/8",
  "⅝": "5/8",
};

/** Rules in order: each takes its words out of the text and says what they mean. */
const RULES: readonly (readonly [pattern: RegExp, read: (wanted: Wanted, words: RegExpExecArray) => void])[] = [
  [/\b(?:ASTM|ASME|ANSI|ISO|EN) ?([A-Z]?\d{2,5}(?:\.\d+)?)M?(?:-\d+)?\b|\b([DFB]\d{2,4}(?:\.\d+)?)M?\b/, readStandard],
  [/\bSIDR ?-?(\d+(?:\.\d+)?)/, (w, m) => assign(w, "series", `SIDR ${m[1]}`)],
  [/\bS?DR ?-?(\d+(?:\.\d+)?)/, (w, m) => assign(w, "series", `SDR ${m[1]}`)],
  [/\bSCH(?:EDULE|ED)?\.? ?-?(\d+)/, (w, m) => assign(w, "series", `SCH ${m[1]}`)],
  [/\bTYPE ?([KLM])\b/, (w, m) => assign(w, "series", `TYPE ${m[1]}`)],
  [/\b(?:CLASS|CL) ?(\d+)|\b(\d+) ?PSI\b/, (w, m) => assign(w, "rating", { value: Number(m[1] ?? m[2]), unit: "psi" })],
  [
    /\bPN ?-?(\d+(?:\.\d+)?)|\b(\d+(?:\.\d+)?) ?BAR\b/,
    (w, m) => assign(w, "rating", { value: Number(m[1] ?? m[2]), unit: "bar" }),
  ],
  [/\bPE ?-?(3408|3608|4710|80|100)\b/, (w, m) => readGrade(w, "PE", `PE${m[1] === "3608" ? "3408" : m[1]}`)],
  [/\bPVC ?1120\b/, (w) => readGrade(w, "PVC", "PVC 1120")],
  [/\b(?:PVC-?U|UPVC)\b/, (w) => readGrade(w, "PVC", "PVC-U")],
  [/\bPEX(?:-?[ABC])?\b/, (w) => assign(w, "material", "PEX")],
  [/\b(?:HDPE|MDPE|POLYETHYLENE|POLY|PE)\b/, (w) => assign(w, "material", "PE")],
  [/\bPVC\b/, (w) => assign(w, "material", "PVC")],
  [/\b(?:COPPER|CU)\b/, (w) => assign(w, "material", "copper")],
  [
    /\b(?:GALVANI[SZ]ED|GALV|BLACK)?\.? ?(?:CARBON )?STEEL\b|\b(?:GALVANI[SZ]ED|GALV|BLACK) IRON\b|\bGALVANI[SZ]ED\b/,
    (w) => assign(w, "material", "steel"),
  ],
  [/\bCTS\b/, (w) => assign(w, "tubeSize", true)],
  [/\bIPS\b/, (w) => assign(w, "tubeSize", false)],
  [/\b(?:DN ?|D ?|OD ?)?(\d+) ?MM\b/, (w, m) => assign(w, "nominal", `${m[1]} mm`)],
  [
    /(?:^| )(?:(\d+)[- ])?(\d+\/\d+) ?(?:INCH(?:ES)?|IN\b\.?|"|''|”|″)|(?:^| )(\d+)(?:\.(\d+))? ?(?:INCH(?:ES)?|IN\b\.?|"|''|”|″)/,
    readInches,
  ],
  [/\b([KLM])\b/, (w, m) => assign(w, "series", `TYPE ${m[1]}`)],
];

/** Words that add nothing to a name. */
const IDLE_WORDS = /\b(?:PIPE|TUBING|TUBE|WATER|LINE|COIL|PLASTIC|NOMINAL)\b|[,;()]/g;

/**
 * Pipe by trade text, whatever the case, spacing and order of the words.
 *
 * @remarks
 * Understood: the nominal size ("1-1/4 in", "1.25\"", "63 mm"), the material ("PVC", "PE", "poly", "HDPE", "PEX", "copper",
 * "galvanised steel"), the grade ("PE4710", "PE100"), the series ("SCH 40", "SDR 21", "DR 11", "SIDR 15", "type L"), a class or
 * rating ("class 200", "160 psi", "PN 10"), the standard ("D2239") and the system of sizes ("CTS", "IPS"). A text must leave
 * one pipe; where only the grade is open, the grade of the lowest rating is taken. Polyethylene SDR without "CTS" is of
 * iron pipe size. A word that is not understood is refused rather than passed over.
 *
 * @param text - the size, material and series in trade words; at most 120 characters
 * @returns the size
 * @throws InputError where no pipe, or more than one, fits; the message lists what is known near it
 *
 * @example
 * ```ts
 * import { findPipe } from "risingmain/pipe";
 * import { inInches, inPsi } from "risingmain/units";
 *
 * const pipe = findPipe("1-1/4 in PE SIDR 15");
 * pipe.name; // => "1-1/4 in PE3408 SIDR 15"
 * inInches(pipe.insideDiameter); // ≈ 1.380
 * findPipe("2IN SCH40 PVC").standard; // => "ASTM D1785"
 * findPipe("63 mm PE100 SDR 11").series; // => "SDR 11"
 * findPipe("2 in PVC"); // throws InputError
 * ```
 *
 * @source common practice
 */
export function findPipe(text: string): PipeSize {
  if (typeof text !== "string" || text.trim() === "" || text.length > LONGEST_TEXT) {
    throw new InputError("pipe", text, 'a pipe such as "1-1/4 in PE SIDR 15" or "63 mm PE100 SDR 11"');
  }
  const wanted = read(text);
  const all = listPipes();
  const found = all.filter((pipe) => fits(pipe, wanted));
  const [first] = found;
  if (first === undefined) throw new InputError("pipe", text, `a known pipe; near it are ${near(all, wanted)}`);
  const sameBody = found.every(
    (pipe) => pipe.standard === first.standard && pipe.series === first.series && pipe.nominal === first.nominal,
  );
  if (!sameBody) throw new InputError("pipe", text, `one pipe; it could be ${names(found)}`);
  return found.reduce((least, pipe) =>
    (pipe.pressureRating ?? Infinity) < (least.pressureRating ?? Infinity) ? pipe : least,
  );
}

function read(text: string): Wanted {
  let rest = ` ${text.replace(/[¼½¾⅜⅝]/g, (mark) => ` ${VULGAR_FRACTIONS[mark]}`)} `
    .toUpperCase()
    .replace(/[–—]/g, "-")
    .replace(/(\d) *- *(\d+\/)/g, "$1-$2")
    .replace(/\s+/g, " ");
  const wanted: Wanted = {};
  for (const [pattern, take] of RULES) {
    const words = pattern.exec(rest);
    if (words === null) continue;
    take(wanted, words);
    rest = `${rest.slice(0, words.index)} ${rest.slice(words.index + words[0].length)}`.replace(/\s+/g, " ");
  }
  const strange = rest.replace(IDLE_WORDS, " ").trim();
  if (strange !== "")
    throw new InputError("pipe", text, `a pipe in words that are understood; "${strange.toLowerCase()}" is not`);
  if (wanted.nominal === undefined)
    throw new InputError("pipe", text, 'a nominal size with its unit, such as "1-1/4 in" or "63 mm"');
  return wanted;
}

/** The first of two words for one thing stands; a later, looser rule does not overrule it. */
function assign<Key extends keyof Wanted>(wanted: Wanted, key: Key, value: NonNullable<Wanted[Key]>): void {
  if (wanted[key] === undefined) wanted[key] = value;
}

function readGrade(wanted: Wanted, material: string, grade: string): void {
  assign(wanted, "material", material);
  assign(wanted, "grade", grade);
}

function readStandard(wanted: Wanted, words: RegExpExecArray): void {
  const number = (words[1] ?? words[2] ?? "").replace("F877", "F876").replace(/^(?:EN)?12201$/, "4427");
  assign(wanted, "standard", number);
}

function readInches(wanted: Wanted, words: RegExpExecArray): void {
  const [, whole, fraction, number = "", decimals] = words;
  if (fraction !== undefined) {
    assign(wanted, "nominal", `${whole === undefined ? "" : `${whole}-`}${fraction} in`);
    return;
  }
  if (decimals === undefined || /^0+$/.test(decimals)) {
    assign(wanted, "nominal", `${number} in`);
    return;
  }
  const part = FRACTION_OF_DECIMAL[decimals] ?? `.${decimals}`;
  assign(wanted, "nominal", number === "0" ? `${part} in` : `${number}-${part} in`);
}

function fits(pipe: PipeSize, wanted: Wanted): boolean {
  const series = pipe.series.toUpperCase();
  const tube = series.endsWith(" CTS");
  return (
    (wanted.nominal === undefined || pipe.nominal === wanted.nominal) &&
    (wanted.material === undefined || pipe.material === wanted.material) &&
    (wanted.grade === undefined || pipe.grade === wanted.grade) &&
    (wanted.series === undefined || wanted.series === series.replace(/ CTS$/, "").replace(/^DR /, "SDR ")) &&
    (wanted.standard === undefined ||
      pipe.standard.endsWith(` ${wanted.standard}`) ||
      pipe.standard.endsWith(` ${wanted.standard}M`)) &&
    (wanted.rating === undefined || ratedAs(pipe, wanted.rating)) &&
    // Only polyethylene comes in both systems of size under one word; there the tube must be asked for.
    (pipe.material !== "PE" || tube === (wanted.tubeSize ?? wanted.standard === "D2737"))
  );
}

/** Whether the pipe has the rating named; the text and the table print the same short numbers. */
function ratedAs(pipe: PipeSize, { value, unit }: NonNullable<Wanted["rating"]>): boolean {
  if (pipe.pressureRating === null) return false;
  const rating = unit === "psi" ? inPsi(pipe.pressureRating) : inBar(pipe.pressureRating);
  return Math.abs(rating - value) < 0.05;
}

/** What lies near a pipe that was not found: the first of these loosenings that leaves anything. */
function near(all: readonly PipeSize[], wanted: Wanted): string {
  const kept: readonly (readonly (keyof Wanted)[])[] = [
    ["nominal", "material", "grade", "series", "standard", "tubeSize"],
    ["nominal", "material", "grade"],
    ["nominal", "material"],
    ["material", "series"],
    ["material"],
    ["nominal"],
  ];
  for (const keys of kept) {
    const looser: Wanted = Object.fromEntries(keys.filter((key) => key in wanted).map((key) => [key, wanted[key]]));
    const found = all.filter((pipe) => fits(pipe, looser));
    if (found.length > 0) return names(found);
  }
  return names(all);
}

function names(pipes: readonly PipeSize[]): string {
  const each = pipes.map((pipe) => `"${pipe.name}"`);
  const more = each.length - MOST_LISTED;
  return each.slice(0, MOST_LISTED).join(", ") + (more > 0 ? ` and ${more} more` : "");
}
