/**
 * Linear least squares with standard errors, for a handful of unknowns: QR by Householder reflections.
 *
 * @module
 */

/** A fit, or the news that the data cannot tell the unknowns apart. */
export interface LeastSquares {
  readonly coefficients: readonly number[];
  /** Standard error of each coefficient; null where there are no more data than unknowns. */
  readonly standardErrors: readonly number[] | null;
  /** Observed less fitted. */
  readonly residuals: readonly number[];
  /** Standard deviation of the residuals, √(Σr²/(m − n)); null where there are no more data than unknowns. */
  readonly deviation: number | null;
}

/** Columns whose direction is lost to rounding are counted as dependent below this share of their length. */
const DEPENDENT = 1e-12;

/**
 * Minimises |y − A c|². `rows` are those of A, at least as many as columns (`golub-van-loan`, QR by reflections).
 * Returns null where columns are dependent. Private: trusts its caller for one row at least, and finite numbers.
 */
export function leastSquares(rows: readonly (readonly number[])[], y: readonly number[]): LeastSquares | null {
  const m = rows.length;
  const n = (rows[0] as readonly number[]).length;
  const scale = Array.from({ length: n }, (_, j) => Math.hypot(...rows.map((row) => at(row, j))));
  const a = rows.map((row) => row.map((value, j) => value / at(scale, j)));
  const b = [...y];
  for (let k = 0; k < n; k++) {
    let length = 0;
    for (let i = k; i < m; i++) length = Math.hypot(length, get(a, i, k));
    // An empty column, one whose length overflows, and one more than there are rows end here too.
    if (!(length > DEPENDENT)) return null;
    const alpha = get(a, k, k) > 0 ? -length : length;
    const v = a.map((row, i) => (i < k ? 0 : i === k ? at(row, k) - alpha : at(row, k)));
    const vv = v.reduce((sum, value) => sum + value * value, 0);
    const reflect = (read: (i: number) => number, write: (i: number, value: number) => void): void => {
      let dot = 0;
      for (let i = k; i < m; i++) dot += at(v, i) * read(i);
      for (let i = k; i < m; i++) write(i, read(i) - ((2 * dot) / vv) * at(v, i));
    };
    for (let j = k; j < n; j++) {
      reflect(
        (i) => get(a, i, j),
        (i, value) => {
          (a[i] as number[])[j] = value;
        },
      );
    }
    reflect(
      (i) => at(b, i),
      (i, value) => {
        b[i] = value;
      },
    );
  }
  const solved = backSubstitute(a, b, n);
  const coefficients = solved.map((value, j) => value / at(scale, j));
  const residuals = rows.map(
    (row, i) => at(y, i) - row.reduce((sum, value, j) => sum + value * at(coefficients, j), 0),
  );
  if (m === n) return { coefficients, standardErrors: null, residuals, deviation: null };
  const deviation = Math.hypot(...residuals) / Math.sqrt(m - n);
  // The covariance is σ² R⁻¹R⁻ᵀ; row j of R⁻¹ has the length of the j-th standard error over σ.
  const inverse = Array.from({ length: n }, (_, k) => backSubstitute(a, unit(n, k), n));
  const standardErrors = coefficients.map(
    (_, j) => (deviation * Math.hypot(...inverse.map((column) => at(column, j)))) / at(scale, j),
  );
  return { coefficients, standardErrors, residuals, deviation };
}

function backSubstitute(r: readonly (readonly number[])[], b: readonly number[], n: number): number[] {
  const x: number[] = [];
  for (let i = n - 1; i >= 0; i--) {
    let sum = at(b, i);
    for (let j = i + 1; j < n; j++) sum -= get(r, i, j) * at(x, j);
    x[i] = sum / get(r, i, i);
  }
  return x;
}

function unit(n: number, k: number): number[] {
  return Array.from({ length: n }, (_, i) => (i === k ? 1 : 0));
}

function at(list: readonly number[], i: number): number {
  return list[i] as number;
}

function get(matrix: readonly (readonly number[])[], i: number, j: number): number {
  return at(matrix[i] as readonly number[], j);
}
