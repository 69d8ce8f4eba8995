/**
 * The error function and its complement, for frost depth.
 *
 * @module
 */

/** Beyond this the continued fraction is the better one; both are good to a few ulp around it. */
const SERIES_END = 2;
/** Terms of the fraction: at x = 2 the last of 60 changes nothing in a double. */
const FRACTION_TERMS = 60;
/** The series at x = 2 needs 40 terms. */
const SERIES_TERMS = 60;

/** erf x = (2/√π) e^(−x²) Σ 2ⁿ x^(2n+1) / (2n+1)!!: all terms of one sign, so nothing cancels. */
function series(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; n < SERIES_TERMS; n++) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}

/** √π e^(x²) erfc x by its continued fraction x + (1/2)/(x + (2/2)/(x + …)), inverted; for x ≥ 2. */
function scaledComplement(x: number): number {
  let tail = x;
  for (let n = FRACTION_TERMS; n >= 1; n--) tail = x + n / 2 / tail;
  return 1 / tail;
}

/** The error function (2/√π) ∫₀ˣ e^(−t²) dt for x ≥ 0; relative error under 1e-14. */
export function erf(x: number): number {
  return x < SERIES_END ? series(x) : 1 - erfc(x);
}

/** Its complement 1 − erf x for x ≥ 0; relative error under 1e-12. */
export function erfc(x: number): number {
  return x < SERIES_END ? 1 - series(x) : (Math.exp(-x * x) / Math.sqrt(Math.PI)) * scaledComplement(x);
}

/** e^(x²) erfc x for x ≥ 0, which does not vanish as erfc does. */
export function scaledErfc(x: number): number {
  return x < SERIES_END ? Math.exp(x * x) * erfc(x) : scaledComplement(x) / Math.sqrt(Math.PI);
}
