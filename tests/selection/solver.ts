/** A solver for linear programmes, and layouts handed to it. */
import loadHighs from "highs";
import {
  type NoSizeForRun,
  type NoSizesMeet,
  type PartWayFound,
  type PartWayInput,
  type PartWaySizes,
  type ProgrammeAnswer,
  partWayProgramme,
  partWaySizes,
  programmeText,
} from "risingmain/selection";

const highs = await loadHighs();

/** The solver's answer to a layout's programme. */
export function solverAnswer(input: PartWayInput): ProgrammeAnswer | NoSizeForRun | NoSizesMeet {
  const programme = partWayProgramme(input);
  if (programme.state !== "to be solved") return programme;
  const { Status, Columns, Rows } = highs.solve(programmeText(programme), { output_flag: false });
  if (Status !== "Optimal") throw new Error(`the solver says ${Status}`);
  return {
    values: programme.variables.map(({ name }) => Columns[name]?.Primal ?? Number.NaN),
    duals: Rows.map((row) => ("Dual" in row ? row.Dual : Number.NaN)),
  };
}

/** Programme, solver, proof. */
export function choose(input: PartWayInput): PartWaySizes {
  const answer = solverAnswer(input);
  return "state" in answer ? answer : partWaySizes({ ...input, answer });
}

/** A proven layout, or a failed test. */
export function found(result: PartWaySizes): PartWayFound {
  if (result.state !== "found") throw new Error(`not found: ${JSON.stringify(result)}`);
  return result;
}
