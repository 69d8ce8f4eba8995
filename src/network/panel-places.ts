/**
 * Where the numbers of a sparse factor lie, and where those that a panel hands on go. Private to the network solver.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: indices into typed arrays, bounded by construction.
import type { Elimination } from "./elimination-order.ts";

/** Places in one list that holds every panel: its columns one after the other, each as long as columns and rows together. */
export interface PanelPlaces {
  /** Where each panel begins, and the length of the list at the end. */
  readonly panelAt: Int32Array;
  /** The rows of each panel, as columns, ascending. */
  readonly rows: Int32Array;
  /** Each row of a panel is a column of a later one: where that column begins. */
  readonly columnAt: Int32Array;
  /** In the column of row i, row j after it lies at `places[placesAt[i] + j]`. Rows that are columns of one panel share. */
  readonly placesAt: Int32Array;
  readonly places: Int32Array;
  /** The place of each edge. */
  readonly edgeAt: Int32Array;
}

/** Lays out the panels, for edges by both ends, one after the other. */
export function panelPlaces(ends: Int32Array, { order, first, rowStart, rows: beside }: Elimination): PanelPlaces {
  const n = order.length;
  const count = first.length - 1;
  const columnOf = new Int32Array(n);
  for (let j = 0; j < n; j++) columnOf[order[j]!] = j;
  const panelOf = new Int32Array(n);
  const panelAt = new Int32Array(count + 1);
  for (let s = 0; s < count; s++) {
    const columns = first[s + 1]! - first[s]!;
    panelAt[s + 1] = panelAt[s]! + columns * (columns + rowStart[s + 1]! - rowStart[s]!);
    for (let j = first[s]!; j < first[s + 1]!; j++) panelOf[j] = s;
  }

  // The panels that have each column as a row; going through the columns puts the rows of every panel in order.
  const havingStart = new Int32Array(n + 1);
  for (let x = 0; x < beside.length; x++) havingStart[columnOf[beside[x]!]! + 1]!++;
  for (let j = 0; j < n; j++) havingStart[j + 1]! += havingStart[j]!;
  const having = new Int32Array(beside.length);
  const next = havingStart.slice();
  for (let s = 0; s < count; s++) {
    for (let x = rowStart[s]!; x < rowStart[s + 1]!; x++) having[next[columnOf[beside[x]!]!]!++] = s;
  }
  const rows = new Int32Array(beside.length);
  const reached = rowStart.slice();
  const latest = new Int32Array(count).fill(-1); // the later panel that each was last seen to have a row in
  let length = 0;
  for (let j = 0; j < n; j++) {
    for (let x = havingStart[j]!; x < havingStart[j + 1]!; x++) {
      const s = having[x]!;
      if (latest[s] !== panelOf[j]) length += rowStart[s + 1]! - reached[s]!;
      latest[s] = panelOf[j]!;
      rows[reached[s]!++] = j;
    }
  }

  const columnAt = new Int32Array(rows.length);
  const placesAt = new Int32Array(rows.length);
  const places = new Int32Array(length);
  const place = new Int32Array(n);
  reached.set(rowStart);
  latest.fill(-1);
  length = 0;
  for (let t = 0; t < count; t++) {
    const width = first[t + 1]! - first[t]! + rowStart[t + 1]! - rowStart[t]!;
    let at = 0;
    for (let j = first[t]!; j < first[t + 1]!; j++) place[j] = at++;
    for (let i = rowStart[t]!; i < rowStart[t + 1]!; i++) place[rows[i]!] = at++;
    for (let j = first[t]!; j < first[t + 1]!; j++) {
      for (let x = havingStart[j]!; x < havingStart[j + 1]!; x++) {
        const s = having[x]!;
        const i = reached[s]!++;
        columnAt[i] = panelAt[t]! + place[j]! * width;
        if (latest[s] === t) placesAt[i] = placesAt[i - 1]!;
        else {
          latest[s] = t;
          placesAt[i] = length - i;
          for (let h = i; h < rowStart[s + 1]!; h++) places[length++] = place[rows[h]!]!;
        }
      }
    }
  }

  const edgeAt = new Int32Array(ends.length / 2);
  for (let e = 0; e < edgeAt.length; e++) {
    const a = columnOf[ends[2 * e]!]!;
    const b = columnOf[ends[2 * e + 1]!]!;
    const low = Math.min(a, b);
    const high = Math.max(a, b);
    const s = panelOf[low]!;
    const columns = first[s + 1]! - first[s]!;
    const from = rowStart[s]!;
    const to = rowStart[s + 1]!;
    const row = panelOf[high] === s ? high - first[s]! : columns + indexOf(rows, high, from, to) - from;
    edgeAt[e] = panelAt[s]! + (low - first[s]!) * (columns + to - from) + row;
  }
  return { panelAt, rows, columnAt, placesAt, places, edgeAt };
}

/** Index of a value that is in an ascending stretch of a list. */
function indexOf(list: Int32Array, value: number, from: number, to: number): number {
  let low = from;
  let high = to - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (list[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
