/**
 * The words of a trade text for pipe, read into what it asks for.
 *
 * @module
 */
import { InputError } from "../units/index.ts";

/** What a trade text asks for; each part may be missing. */
export interface Wanted {
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

/** Reads a trade text; refuses one with words that are not understood, or without a nominal size. */
export function readPipeText(text: string): Wanted & { readonly nominal: string } {
  let rest = ` ${text.replace(/[¼½¾⅜⅝]/g, (mark) => ` ${VULGAR_FRACTIONS[mark]}`)} `
    .toUpperCase()
    .replace(/[–—]/g, "-")
    .replace(/\s+/g, " ")
    .replace(/(\d) ?- ?(\d+\/)/g, "$1-$2");
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
  return { ...wanted, nominal: wanted.nominal };
}

/** Two words for one thing may agree ("HDPE PE4710"), not contradict each other ("PVC poly"). */
function assign<Key extends keyof Wanted>(wanted: Wanted, key: Key, value: NonNullable<Wanted[Key]>): void {
  const before = wanted[key];
  if (before !== undefined && before !== value) {
    const both = [before, value].map((each) =>
      typeof each === "object" ? `${each.value} ${each.unit}` : String(each),
    );
    throw new InputError("pipe", both.join(" and "), `one ${WORDS[key]}`);
  }
  wanted[key] = value;
}

/** What each part of a text is called in an error. */
const WORDS: Readonly<Record<keyof Wanted, string>> = {
  nominal: "nominal size",
  material: "material",
  grade: "grade",
  series: "series of walls",
  standard: "standard",
  rating: "pressure rating",
  tubeSize: "system of sizes",
};

function readGrade(wanted: Wanted, material: string, grade: string): void {
  assign(wanted, "material", material);
  assign(wanted, "grade", grade);
}

function readStandard(wanted: Wanted, words: RegExpExecArray): void {
  const number = (words[1] ?? words[2] ?? "").replace("F877", "F876").replace("12201", "4427");
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
