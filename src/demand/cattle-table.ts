/**
 * Water drunk by beef cattle against temperature, US gallons a head a day, at 40, 50, 60, 70, 80 and 90 °F.
 *
 * National Research Council, *Nutrient Requirements of Beef Cattle* (7th revised ed., 1996), table of approximate daily water
 * intake (`nrc-beef-1996`); recalled. Five of its figures (lactating at 40, 60, 80 °F; wintering at 40 and 60 °F) were seen
 * again in Kansas State's handbook (`kstate-livestock-water`). The wintering row ends at 70 °F.
 *
 * @module
 */

/** Classes of beef cattle in the table. */
export type CattleClass =
  | "growing, 400 lb"
  | "growing, 600 lb"
  | "growing, 800 lb"
  | "finishing, 600 lb"
  | "finishing, 800 lb"
  | "finishing, 1000 lb"
  | "wintering pregnant cow"
  | "lactating cow"
  | "bull, 1400 lb";

/** Temperatures of the columns, °F. */
export const CATTLE_TEMPERATURES: readonly number[] = [40, 50, 60, 70, 80, 90];

/** Use at each of those temperatures, US gal a head a day. */
export const CATTLE: Readonly<Record<CattleClass, readonly number[]>> = {
  "growing, 400 lb": [4, 4.3, 5, 5.8, 6.7, 9.5],
  "growing, 600 lb": [5.3, 5.8, 6.6, 7.8, 8.9, 12.7],
  "growing, 800 lb": [6.3, 6.8, 7.9, 9.2, 10.6, 15],
  "finishing, 600 lb": [6, 6.5, 7.4, 8.7, 10, 14.3],
  "finishing, 800 lb": [7.3, 7.9, 9.1, 10.7, 12.3, 17.4],
  "finishing, 1000 lb": [8.7, 9.4, 10.8, 12.6, 14.5, 20.6],
  "wintering pregnant cow": [6, 6.5, 7.4, 8.7],
  "lactating cow": [11.4, 12.6, 14.5, 16.9, 17.9, 16.2],
  "bull, 1400 lb": [8, 8.6, 9.9, 11.7, 13.4, 19],
};
