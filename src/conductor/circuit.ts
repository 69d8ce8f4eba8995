/**
 * What every drop calculation is told: the system of supply and the conductors in series.
 *
 * @module
 */
import { requireList, requireObject, requireOneOf, requireWhole, requireWithin } from "../numeric/index.ts";
import type { Length, Resistance, ResistancePerLength } from "../units/index.ts";

/** How the circuit is fed: two wires of direct current, two wires of one phase, or three wires of three phases. */
export type SupplySystem = "direct current" | "single-phase" | "three-phase";

/** The names, for checks of input. */
export const SUPPLY_SYSTEMS: readonly SupplySystem[] = ["direct current", "single-phase", "three-phase"];

/** One stretch of the circuit, the same conductor throughout. */
export interface CircuitSegment {
  /** One-way length of the run, not the length of wire in it. 0 to 100 000 m. */
  readonly length: Length;
  /** Resistance per length of one conductor. 0 to 10 Ω/m. */
  readonly resistance: ResistancePerLength;
  /** Reactance per length of one conductor at the supply's frequency; 0 where left out. 0 to 10 Ω/m. */
  readonly reactance?: ResistancePerLength;
  /** Sets of conductors in parallel; 1 where left out. 1 to 20. */
  readonly sets?: number;
  /** Contact resistance of the splices, terminals and contacts in each conductor; 0 where left out. 0 to 100 Ω. */
  readonly joints?: Resistance;
}

/** What a source adds to the circuit: a transformer, a service, a generator winding. */
export interface SourceImpedance {
  /** Resistance between the two wires, or of each phase of three, Ω. 0 to 1000 Ω. */
  readonly resistance: Resistance;
  /** Reactance between the two wires, or of each phase of three, Ω. 0 to 1000 Ω. */
  readonly reactance: Resistance;
}

/** Resistance and reactance of one conductor over a whole segment, Ω. Private to the library. */
export interface ConductorOhms {
  readonly r: number;
  readonly x: number;
}

/** The most segments a circuit may have; far beyond any yard, short of a denial of service. */
const MOST_SEGMENTS = 1000;

/** Conductor lengths that count towards the drop: two of two wires, √3 of three, line to line. Private to the library. */
export function lineFactor(system: SupplySystem): number {
  return system === "three-phase" ? Math.sqrt(3) : 2;
}

/** Current-carrying conductors, for the loss. Private to the library. */
export function conductorCount(system: SupplySystem): number {
  return system === "three-phase" ? 3 : 2;
}

/** Refuses what is not a system of supply. Private to the library. */
export function requireSystem(system: unknown): void {
  requireOneOf("system", system, SUPPLY_SYSTEMS);
}

/** Checks a source's impedance and gives it on the scale of line voltage over line current; none is zero. Private. */
export function readSource(
  parameter: string,
  source: SourceImpedance | undefined,
  system: SupplySystem,
): ConductorOhms {
  if (source === undefined) return { r: 0, x: 0 };
  requireObject(parameter, source);
  requireWithin(`${parameter}.resistance`, source.resistance, 0, 1000, "Ω");
  requireWithin(`${parameter}.reactance`, source.reactance, 0, 1000, "Ω");
  const k = system === "three-phase" ? Math.sqrt(3) : 1;
  return { r: k * source.resistance, x: system === "direct current" ? 0 : k * source.reactance };
}

/** Checks the segments and gives the ohms of one conductor in each; direct current sees no reactance. Private. */
export function readSegments(
  parameter: string,
  segments: readonly CircuitSegment[],
  system: SupplySystem,
  least = 1,
): readonly ConductorOhms[] {
  requireList(parameter, segments, least, MOST_SEGMENTS);
  // Array.from visits holes, which map would skip.
  return Array.from(segments, (segment, i) => readSegment(`${parameter}[${i}]`, segment, system));
}

function readSegment(at: string, segment: CircuitSegment, system: SupplySystem): ConductorOhms {
  requireObject(at, segment);
  const { length, resistance, reactance = 0, sets = 1, joints = 0 } = segment;
  requireWithin(`${at}.length`, length, 0, 1e5, "m");
  requireWithin(`${at}.resistance`, resistance, 0, 10, "Ω/m");
  requireWithin(`${at}.reactance`, reactance, 0, 10, "Ω/m");
  requireWhole(`${at}.sets`, sets, 1, 20);
  requireWithin(`${at}.joints`, joints, 0, 100, "Ω");
  return {
    r: (length * resistance) / sets + joints,
    x: system === "direct current" ? 0 : (length * reactance) / sets,
  };
}
