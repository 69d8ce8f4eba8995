/**
 * Conductor sizes as the trade names them: AWG, kcmil and square millimetres.
 *
 * @module
 */
import { InputError } from "../units/index.ts";

/**
 * A conductor size with its system in the text: `"12 AWG"`, `"2/0 AWG"`, `"250 kcmil"`, `"2.5 mm²"`.
 *
 * 18 to 1 AWG, 1/0 to 4/0 AWG and gauges down to 40; 250 to 2000 kcmil; 0.5 to 1000 mm².
 */
export type ConductorSize = `${number} AWG` | `${number}/0 AWG` | `${number} kcmil` | `${number} mm²`;

/** A size taken apart; the gauge numbers of 1/0 to 4/0 are 0 to −3, so that the diameter law holds without exception. */
export type SizeParts =
  | { readonly system: "AWG"; readonly gauge: number }
  | { readonly system: "kcmil"; readonly thousandCircularMils: number }
  | { readonly system: "mm²"; readonly squareMillimetres: number };

const EXPECTED = 'a conductor size such as "12 AWG", "2/0 AWG", "250 kcmil" or "2.5 mm²"';
/** Wire of 40 AWG is 0.08 mm thick; nothing thinner carries power. */
const THINNEST_GAUGE = 40;

/** Takes a canonical size apart, or refuses it under the caller's parameter name. Private to the library. */
export function readSize(parameter: string, size: unknown): SizeParts {
  if (typeof size === "string") {
    const aught = /^([1-4])\/0 AWG$/.exec(size);
    if (aught) return { system: "AWG", gauge: 1 - Number(aught[1]) };
    const [, digits, system] = /^(\d{1,4}(?:\.\d{1,3})?) (AWG|kcmil|mm²)$/.exec(size) ?? [];
    const value = Number(digits);
    if (system === "AWG" && Number.isInteger(value) && value >= 1 && value <= THINNEST_GAUGE) {
      return { system, gauge: value };
    }
    if (system === "kcmil" && value >= 250 && value <= 2000) return { system, thousandCircularMils: value };
    if (system === "mm²" && value >= 0.5 && value <= 1000) return { system, squareMillimetres: value };
  }
  throw new InputError(parameter, size, EXPECTED);
}

/**
 * Reads a conductor size as people write it, and gives it its one name in this library.
 *
 * @remarks
 * Understood: `12`, `#12`, `12 AWG`, `AWG 12`, `12 ga`; `2/0`, `00`, `2/0 AWG`; `250`, `250 kcmil`, `250 MCM`; `2.5 mm2`,
 * `2.5 mm²`, `2.5 sq mm`. A bare number up to 40 is a gauge, from 250 up it is kcmil; a bare number between is refused,
 * since it could be either, or square millimetres.
 *
 * @param text - the size, at most 20 characters
 * @returns the size by its one name
 * @throws InputError where the text is not a size this library knows
 *
 * @example
 * ```ts
 * import { parseConductorSize } from "risingmain/conductor";
 *
 * parseConductorSize("#12"); // => "12 AWG"
 * parseConductorSize("000"); // => "3/0 AWG"
 * parseConductorSize("350 MCM"); // => "350 kcmil"
 * parseConductorSize("2.5 mm2"); // => "2.5 mm²"
 * parseConductorSize("100"); // throws InputError
 * ```
 *
 * @source common practice
 */
export function parseConductorSize(text: string): ConductorSize {
  if (typeof text !== "string" || text.length > 20) throw new InputError("text", text, EXPECTED);
  const bare = text.trim().toLowerCase().replace(/,/g, ".");
  const size = named(bare);
  if (size === undefined) throw new InputError("text", text, EXPECTED);
  readSize("text", size);
  return size;
}

function named(text: string): ConductorSize | undefined {
  const metric = /^(\d+(?:\.\d+)?)\s*(?:mm2|mm²|sq\.?\s*mm)$/.exec(text);
  if (metric) return `${Number(metric[1])} mm²`;
  const area = /^(\d+)\s*(?:kcmil|mcm)$/.exec(text);
  if (area) return `${Number(area[1])} kcmil`;
  const gauge = text.replace(/^(?:#|no\.?|awg)|(?:awg|ga\.?|gauge)$/g, "").trim();
  const aught = /^([1-4])\/0$/.exec(gauge);
  if (aught) return `${Number(aught[1])}/0 AWG`;
  if (/^0{1,4}$/.test(gauge)) return `${gauge.length}/0 AWG`;
  if (!/^\d{1,4}$/.test(gauge)) return undefined;
  return Number(gauge) >= 250 && gauge === text ? `${Number(gauge)} kcmil` : `${Number(gauge)} AWG`;
}
