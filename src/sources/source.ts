/**
 * One record of the bibliography, in the fields of CSL-JSON (the open citation format).
 *
 * @module
 */

/** A person, or a body that signs as one. */
export interface SourceName {
  /** Family name of a person. */
  readonly family?: string;
  /** Given name or initials of a person. */
  readonly given?: string;
  /** Name of a body. */
  readonly literal?: string;
}

/** A date, as CSL-JSON. */
export interface SourceDate {
  /** Year, or year, month and day; one list for a date, two for a span. */
  readonly "date-parts": readonly (readonly number[])[];
}

/** One published source, as CSL-JSON. */
export interface Source {
  /** The id that docstrings, tables and findings name: `colebrook-1939`. */
  readonly id: string;
  /** CSL item type. */
  readonly type:
    | "article-journal"
    | "book"
    | "chapter"
    | "report"
    | "standard"
    | "thesis"
    | "webpage"
    | "legislation"
    | "software";
  /** Title of the work. */
  readonly title: string;
  /** Who wrote or issued it. */
  readonly author?: readonly SourceName[];
  /** Year of issue, as CSL date parts: `{ "date-parts": [[1939]] }`. */
  readonly issued?: SourceDate;
  /** Journal or series. */
  readonly "container-title"?: string;
  /** Volume of the journal. */
  readonly volume?: string;
  /** Number within the volume. */
  readonly issue?: string;
  /** Pages. */
  readonly page?: string;
  /** Edition. */
  readonly edition?: string;
  /** Designation of a standard or report: `ASTM B258`. */
  readonly number?: string;
  /** Publisher or issuing body. */
  readonly publisher?: string;
  /** Digital object identifier. */
  readonly DOI?: string;
  /** Address, only of an openly published work. */
  readonly URL?: string;
  /** What was seen, and what was not: editions recalled, copies read. */
  readonly note?: string;
}
