/**
 * Pipe by the words a supplier uses: "1-1/4 in PE SIDR 15", "2in sch40 pvc", "63 mm PE100 SDR 11".
 *
 * @module
 */
import { InputError, inBar, inPsi } from "../units/index.ts";
import { listPipes, TABLES } from "./list-pipes.ts";
import { type PipeSize, pipesOf } from "./pipe-size.ts";
import { readPipeText, type Wanted } from "./pipe-text.ts";

/** The longest text worth reading; no name of a pipe comes near. */
const LONGEST_TEXT = 120;
/** How many neighbours an error lists. */
const MOST_LISTED = 12;

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
 * @throws {@link units.InputError} where no pipe, or more than one, fits; the message lists what is known near it
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
  const wanted = readPipeText(text);
  const found = ofNominal(wanted.nominal).filter((pipe) => fits(pipe, wanted));
  const [first] = found;
  if (first === undefined) throw new InputError("pipe", text, `a known pipe; near it are ${near(listPipes(), wanted)}`);
  const sameBody = found.every((pipe) => pipe.standard === first.standard && pipe.series === first.series);
  if (!sameBody) throw new InputError("pipe", text, `one pipe; it could be ${names(found)}`);
  // Every table lists its grades in rising order of rating.
  return first;
}

/** The pipes of a nominal size: some forty to work out instead of all. */
function ofNominal(nominal: string): readonly PipeSize[] {
  return TABLES.flatMap((table) => pipesOf({ ...table, rows: table.rows.filter((row) => row[1] === nominal) }));
}

function fits(pipe: PipeSize, wanted: Wanted): boolean {
  const series = pipe.series.toUpperCase();
  const tube = series.endsWith(" CTS");
  return (
    (wanted.nominal === undefined || pipe.nominal === wanted.nominal) &&
    (wanted.material === undefined || pipe.material === wanted.material) &&
    (wanted.grade === undefined || pipe.grade === wanted.grade) &&
    (wanted.series === undefined || wanted.series === series.replace(" CTS", "").replace(/^DR /, "SDR ")) &&
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
  ];
  const found = kept.map((keys) => {
    const looser: Wanted = Object.fromEntries(keys.map((key) => [key, wanted[key]]));
    return all.filter((pipe) => fits(pipe, looser));
  });
  return names(found.find(({ length }) => length > 0) ?? all);
}

function names(pipes: readonly PipeSize[]): string {
  const each = pipes.map((pipe) => `"${pipe.name}"`);
  const more = each.length - MOST_LISTED;
  return each.slice(0, MOST_LISTED).join(", ") + (more > 0 ? ` and ${more} more` : "");
}
