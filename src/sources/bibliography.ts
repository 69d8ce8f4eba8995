/**
 * All records of the bibliography, and the way to one of them.
 *
 * @module
 */
import { InputError } from "../units/input-error.ts";
import { conductorSources } from "./records/conductor.ts";
import { controlSources } from "./records/control.ts";
import { demandSources } from "./records/demand.ts";
import { disinfectionSources } from "./records/disinfection.ts";
import { fieldSources } from "./records/field.ts";
import { fittingsSources } from "./records/fittings.ts";
import { freezeSources } from "./records/freeze.ts";
import { generatorSources } from "./records/generator.ts";
import { headSources } from "./records/head.ts";
import { motorSources } from "./records/motor.ts";
import { networkSources } from "./records/network.ts";
import { pipeSources } from "./records/pipe.ts";
import { pipeStandardsSources } from "./records/pipe-standards.ts";
import { plotSources } from "./records/plot.ts";
import { pumpSources } from "./records/pump.ts";
import { selectionSources } from "./records/selection.ts";
import { surgeSources } from "./records/surge.ts";
import { systemSources } from "./records/system.ts";
import { tankSources } from "./records/tank.ts";
import { unitsSources } from "./records/units.ts";
import { waterSources } from "./records/water.ts";
import { wellSources } from "./records/well.ts";
import type { Source } from "./source.ts";

/**
 * Every source the library names, ordered by id.
 *
 * @returns the records, as CSL-JSON items
 * @source derived: the records of the modules, put together
 *
 * @example
 * ```ts
 * import { bibliography } from "risingmain/sources";
 *
 * bibliography().some(({ id }) => id === "nist-sp811"); // => true
 * ```
 */
export function bibliography(): readonly Source[] {
  return [
    ...conductorSources,
    ...controlSources,
    ...demandSources,
    ...disinfectionSources,
    ...fieldSources,
    ...fittingsSources,
    ...freezeSources,
    ...generatorSources,
    ...headSources,
    ...motorSources,
    ...networkSources,
    ...pipeStandardsSources,
    ...pipeSources,
    ...plotSources,
    ...pumpSources,
    ...selectionSources,
    ...surgeSources,
    ...systemSources,
    ...tankSources,
    ...unitsSources,
    ...waterSources,
    ...wellSources,
  ].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/**
 * The source with an id, as a docstring, table, result or finding names it.
 *
 * @param id - the id, such as "nist-sp811"
 * @returns the record
 * @throws InputError where no source has the id
 * @source derived: a look-up
 *
 * @example
 * ```ts
 * import { findSource } from "risingmain/sources";
 *
 * findSource("nist-sp811").number; // => "NIST Special Publication 811"
 * ```
 */
export function findSource(id: string): Source {
  const found = bibliography().find((source) => source.id === id);
  if (found === undefined) throw new InputError("id", id, 'the id of a source, such as "nist-sp811"');
  return found;
}
