/**
 * The colours of the lines stay apart for readers without red or green cones, and all of them from the paper.
 */
import { describe, expect, test } from "vitest";
import { DASHES, LINE_COLOURS, PALETTE } from "../../src/plot/palette.ts";

type Triple = readonly [number, number, number];

/** sRGB to linear light (IEC 61966-2-1). */
function linear(hex: string): Triple {
  return [1, 3, 5].map((i) => {
    const c = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as unknown as Triple;
}

const times = (matrix: readonly Triple[], [r, g, b]: Triple): Triple =>
  matrix.map(([x, y, z]) => Math.min(1, Math.max(0, x * r + y * g + z * b))) as unknown as Triple;

/** Machado, Oliveira and Fernandes 2009, severity 1, for linear light; from memory. */
const SEEN: Readonly<Record<string, readonly Triple[]>> = {
  "all cones": [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
};

/** CIELAB under D65, from linear sRGB (IEC 61966-2-1, ISO/CIE 11664-4). */
function lab([r, g, b]: Triple): Triple {
  const f = (t: number): number => (t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

const distance = (a: Triple, b: Triple): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** Relative luminance and contrast (WCAG 2.1). */
const luminance = (hex: string): number => {
  const [r, g, b] = linear(hex);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: string, b: string): number => {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (high + 0.05) / (low + 0.05);
};

test("the palette is that of Okabe and Ito (2008; their sRGB values, from memory)", () => {
  const published = {
    black: [0, 0, 0],
    orange: [230, 159, 0],
    "sky blue": [86, 180, 233],
    "bluish green": [0, 158, 115],
    yellow: [240, 228, 66],
    blue: [0, 114, 178],
    vermillion: [213, 94, 0],
    "reddish purple": [204, 121, 167],
  };
  const read = Object.entries(PALETTE).map(([name, hex]) => [
    name,
    [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16)),
  ]);
  expect(Object.fromEntries(read)).toEqual(published);
});

/** A CIELAB distance of about 2.3 is just seen by a trained eye; ten times that for a thin line in the sun. */
const FAR = 23;

describe.each(["light", "dark"] as const)("on %s paper", (paper) => {
  test.each(Object.keys(SEEN))("lines stay apart: %s", (vision) => {
    const seen = LINE_COLOURS[paper].map((hex) => lab(times(SEEN[vision] as readonly Triple[], linear(hex))));
    const distances = seen.flatMap((a, i) => seen.slice(i + 1).map((b) => distance(a, b)));
    expect(Math.min(...distances)).toBeGreaterThan(FAR);
  });

  test("lines stand out from the paper: 3 to 1, success criterion 1.4.11 of WCAG 2.1", () => {
    const ground = paper === "light" ? "#FFFFFF" : "#1E1E1E";
    for (const colour of LINE_COLOURS[paper]) expect([colour, contrast(colour, ground) >= 3]).toEqual([colour, true]);
  });
});

test("dashes differ, as many as the most lines of a chart", () => {
  expect(new Set(DASHES.map(String)).size).toBe(DASHES.length);
  expect(DASHES.length).toBeGreaterThanOrEqual(10);
});
