/**
 * A number at the start of a text, as people write them: 4,200 · 1.5e-3 · 1-1/4 · 1 1/4 · 3/8 · 2½.
 *
 * @module
 */

/** The number read and where it ends. */
export interface NumberRead {
  /** The number. */
  readonly value: number;
  /** The index after its last character. */
  readonly end: number;
}

/** The single-character fractions in use on rules and in catalogues. */
const FRACTIONS: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
};

/**
 * Reads the number at `start`, or nothing where there is none. Thousands are set off by commas in threes; one that is
 * set wrongly (a decimal comma) is no number, since guessing would move the value a thousandfold.
 *
 * @internal
 */
export function readNumber(text: string, start: number): NumberRead | undefined {
  let at = skipSpaces(text, start);
  const sign = text[at] === "-" || text[at] === "−" ? -1 : 1;
  if (sign === -1 || text[at] === "+") at = skipSpaces(text, at + 1);
  const whole = readDecimal(text, at);
  at = whole?.end ?? at;
  const glyph = FRACTIONS[text.charAt(at)];
  if (glyph !== undefined) return { value: sign * ((whole?.value ?? 0) + glyph), end: at + 1 };
  if (whole === undefined) return undefined;
  if (text[at] === "/") {
    const bottom = readDigits(text, at + 1);
    if (bottom !== undefined) return quotient(sign, 0, whole.value, bottom);
  }
  // A whole number, then "-" or a space, then a fraction.
  if (text[at] === "-" || text[at] === " ") {
    const top = readDigits(text, skipSpaces(text, at + 1));
    if (top !== undefined && text[top.end] === "/") {
      const bottom = readDigits(text, top.end + 1);
      if (bottom !== undefined) return quotient(sign, whole.value, top.value, bottom);
    }
  }
  return { value: sign * whole.value, end: at };
}

function quotient(sign: number, whole: number, top: number, bottom: NumberRead): NumberRead | undefined {
  return bottom.value === 0 ? undefined : { value: sign * (whole + top / bottom.value), end: bottom.end };
}

/** Digits with commas in threes, a decimal point and an exponent. */
function readDecimal(text: string, start: number): NumberRead | undefined {
  const head = readDigits(text, start);
  let at = head?.end ?? start;
  let digits = text.slice(start, at);
  if (digits !== "" && digits.length <= 3) {
    while (text[at] === ",") {
      const group = readDigits(text, at + 1);
      if (group?.end !== at + 4) return undefined;
      digits += text.slice(at + 1, group.end);
      at = group.end;
    }
  }
  const tail = readDigits(text, at + 1);
  if (text[at] === "." && (tail ?? head) !== undefined) {
    const end = tail?.end ?? at + 1;
    digits += text.slice(at, end);
    at = end;
  }
  if (digits === "" || text[at] === ",") return undefined;
  if (text[at] === "e" || text[at] === "E") {
    const signAt = text[at + 1] === "-" || text[at + 1] === "+" ? at + 2 : at + 1;
    const exponent = readDigits(text, signAt);
    if (exponent !== undefined) {
      digits += `e${text.slice(at + 1, exponent.end)}`;
      at = exponent.end;
    }
  }
  return { value: Number(digits), end: at };
}

function readDigits(text: string, start: number): NumberRead | undefined {
  let end = start;
  while (isDigit(text, end)) end++;
  return end === start ? undefined : { value: Number(text.slice(start, end)), end };
}

/** Whether a decimal digit stands there. @internal */
export function isDigit(text: string, at: number): boolean {
  const c = text.charCodeAt(at);
  return c >= 48 && c <= 57;
}

function skipSpaces(text: string, start: number): number {
  let at = start;
  while (text[at] === " " || text[at] === "\u00a0" || text[at] === "\t") at++;
  return at;
}
