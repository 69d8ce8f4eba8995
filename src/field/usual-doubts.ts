/**
 * What gauges, watches, tapes and meters are usually good to, where a caller does not say: standard uncertainties in SI.
 *
 * Common practice, no source, but for the tape: 0.01 ft of a graduated electric or steel tape (`usgs-gwpd-4`).
 *
 * @module
 */

/** A mark on a pail, as a share of its volume: a tenth of a gallon in five. */
export const PAIL_SHARE = 0.02;
/** Starting and stopping a watch by eye and thumb, s. */
export const THUMB = 0.5;
/** A switch point or a needle seen against a watch, s. */
export const WATCH = 1;
/** A gauge, its own error and the reading of it: 1 psi, Pa. */
export const GAUGE = 6894.757;
/** A needle read twice on one gauge, whose own error drops out: half a psi, Pa. */
export const NEEDLE = 3447.378_5;
/** The volume on a tank's label, as a share. */
export const TANK_SHARE = 0.02;
/** The volume of a line by its length and bore, as a share. */
export const LINE_SHARE = 0.05;
/** A thermometer in water, K. */
export const THERMOMETER = 0.5;
/** The air in a well, whose temperature is guessed from that of its mouth, K. */
export const WELL_AIR = 3;
/** An echo on a watch that hears it, s. */
export const ECHO = 1e-3;
/** A winding that has stood in the well, taken as warm as its water, K. */
export const WINDING_TEMPERATURE = 2;
/** A rule held to a jet: a quarter inch, m. */
export const RULE = 0.006;
/** A graduated tape down a well: 0.01 ft, m. */
export const TAPE = 0.003_048;
/** A flow by bucket or meter, as a share. */
export const FLOW_SHARE = 0.03;
/** A clamp meter, as a share of the reading. */
export const CLAMP_SHARE = 0.02;
/** A voltmeter, as a share of the reading. */
export const VOLTMETER_SHARE = 0.01;
/** An ohmmeter, as a share of the reading. */
export const OHMMETER_SHARE = 0.01;
/** An insulation tester, as a share of the reading. */
export const MEGOHMMETER_SHARE = 0.05;
