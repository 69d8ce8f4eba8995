/**
 * Where the numbers of a sparse factor lie, and where those that a panel hands on go. Private to the network solver.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: indices into typed arrays, bounded by construction.
import { bucket, type Panels } from "./column-panels.ts";

/** Places in one list that holds every panel: its columns one after the other, each as long as columns and rows together. */
export interface PanelPlaces {
  /** Where each panel begins, and the length of the list at the end. */
  readonly panelAt: Int32Array;
  /** The place of each edge. */
  readonly edgeAt: Int32Array;
  /** Each row of a panel is a column of a later one: where that column begins. */
  readonly columnAt: Int32Array;
  /** In the column of row i, row j after it lies at `places[placesAt[i] + j]`. Rows that are columns of one panel share. */
  readonly placesAt: Int32Array;
  readonly places: Int32Array;
}

/** Lays out the panels, for edges by the columns of their ends. */
export function panelPlaces(n: number, low: Int32Array, high: Int32Array, panels: Panels): PanelPlaces {
  const { panelOf, first, rowStart, rows } = panels;
  const count = first.length - 1;
  const widthOf = (s: number): number => first[s + 1]! - first[s]! + rowStart[s + 1]! - rowStart[s]!;
  const panelAt = new Int32Array(count + 1);
  for (let s = 0; s < count; s++) panelAt[s + 1] = panelAt[s]! + (first[s + 1]! - first[s]!) * widthOf(s);

  const columnAt = new Int32Array(rows.length);
  const placesAt = new Int32Array(rows.length);
  const goesTo = new Int32Array(rows.length).fill(-1); // the later panel, at the first of the rows that share
  const endOf = new Int32Array(rows.length); // there, the end of its panel's rows
  let length = 0;
  for (let s = 0; s < count; s++) {
    const begin = rowStart[s]!;
    const end = rowStart[s + 1]!;
    let before = -1;
    for (let i = begin; i < end; i++) {
      const column = rows[i]!;
      const t = panelOf[column]!;
      columnAt[i] = panelAt[t]! + (column - first[t]!) * widthOf(t);
      if (t === before) placesAt[i] = placesAt[i - 1]!;
      else {
        goesTo[i] = t;
        endOf[i] = end;
        placesAt[i] = length - i;
        length += end - i;
      }
      before = t;
    }
  }

  // Panel by panel, with the place of each of its rows at hand.
  const edgeStart = new Int32Array(count + 1);
  const edgeList = bucket(low, panelOf, edgeStart);
  const comingStart = new Int32Array(count + 1);
  const coming = bucket(goesTo, undefined, comingStart);
  const edgeAt = new Int32Array(low.length);
  const places = new Int32Array(length);
  const place = new Int32Array(n);
  for (let s = 0; s < count; s++) {
    const f = first[s]!;
    const width = widthOf(s);
    let next = 0;
    for (let j = f; j < first[s + 1]!; j++) place[j] = next++;
    for (let i = rowStart[s]!; i < rowStart[s + 1]!; i++) place[rows[i]!] = next++;
    for (let x = edgeStart[s]!; x < edgeStart[s + 1]!; x++) {
      const e = edgeList[x]!;
      edgeAt[e] = panelAt[s]! + (low[e]! - f) * width + place[high[e]!]!;
    }
    for (let x = comingStart[s]!; x < comingStart[s + 1]!; x++) {
      const i = coming[x]!;
      const at = placesAt[i]!;
      for (let j = i; j < endOf[i]!; j++) places[at + j] = place[rows[j]!]!;
    }
  }
  return { panelAt, edgeAt, columnAt, placesAt, places };
}
