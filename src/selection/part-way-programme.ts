/**
 * The linear programme of sizes that may change part-way along a run, as plain data for any solver.
 *
 * @module
 */
// biome-ignore-all lint/style/noNonNullAssertion: lists of one length, walked together.
import { requireWithin } from "../numeric/index.ts";
import { InputError, type Length } from "../units/index.ts";
import type { LeastCostSizesInput, NoSizeForRun, NoSizesMeet, RuledOutSize, SizeChoice } from "./least-cost-sizes.ts";
import { readSizing, type Sizing, shortAtLeast } from "./sizing.ts";

/** One size that a run, or part of it, may have. */
export interface PartWaySize extends SizeChoice {
  /**
   * Length of a stick or coil. A part of this size that ends within its run is then laid in whole pieces; any length if
   * left out. 0.1 to 10 000 m.
   */
  readonly pieceLength?: Length;
}

/** The sizes that one run may be laid in. */
export interface PartWayChoices {
  /** Name of the run. */
  readonly run: string;
  /** 1 to 50 sizes. */
  readonly sizes: readonly PartWaySize[];
}

/** A branched layout whose runs may change size part-way, and what must hold. */
export interface PartWayInput extends Omit<LeastCostSizesInput, "choices"> {
  /** Sizes for 1 to 1000 of the runs. */
  readonly choices: readonly PartWayChoices[];
  /**
   * Resistance coefficient of the fitting at a change of size, on the velocity in the narrower bore; 0 if left out.
   * 0 to 10. Sudden changes have up to 0.5.
   */
  readonly changeCoefficient?: number;
}

/** A variable, 0 or more. */
export interface ProgrammeVariable {
  /** Its name: a letter and a number. */
  readonly name: string;
  /** Its coefficient in the sum that is to be made least. */
  readonly cost: number;
}

/** The share of a run's length that is laid in one size. Its cost is that of the whole run in this size. */
export interface ShareVariable extends ProgrammeVariable {
  /** Name of the run. */
  readonly run: string;
  /** Name of the size. */
  readonly size: string;
}

/** A row: the sum of coefficient times variable is held to a bound. */
export interface ProgrammeRow {
  /** Its name: a word and a number. */
  readonly name: string;
  /** The variables in it, as places in the list of variables, rising. */
  readonly variables: readonly number[];
  /** The coefficient of each. */
  readonly coefficients: readonly number[];
  /** Whether the sum equals the bound, or is at most it. */
  readonly relation: "=" | "<=";
  /** The bound. */
  readonly bound: number;
}

/** A linear programme: make the sum of cost times variable least, with every row held and no variable below 0. */
export interface LinearProgramme {
  /** The variables. */
  readonly variables: readonly ProgrammeVariable[];
  /** The rows. */
  readonly rows: readonly ProgrammeRow[];
}

/** The sizes that a run cannot have. */
export interface RuledOutSizes {
  /** Name of the run. */
  readonly run: string;
  /** The sizes, each with what rules it out. */
  readonly sizes: readonly RuledOutSize[];
}

/** The programme of a layout, to be handed to a solver. */
export interface PartWayProgramme extends LinearProgramme {
  /** There is a programme. */
  readonly state: "to be solved";
  /** The variables. */
  readonly variables: readonly ShareVariable[];
  /** Sizes left out of it. */
  readonly ruledOut: readonly RuledOutSizes[];
}

/** Most terms of a programme, all rows together: what solvers take in seconds to minutes, and its text in 50 MB. */
const MOST_TERMS = 2_000_000;
/** Head that may be missing by rounding alone, m. */
const ROUNDING = 1e-9;

/**
 * The linear programme whose answer is the cheapest way to lay a branched layout in runs that may change size part-way.
 *
 * @remarks
 * Variables: $t_{ik}$, the share of run $i$ laid in size $k$. Make $\sum_{ik} C_{ik} t_{ik}$ least, $C_{ik}$ the cost of
 * the whole run in that size, so that $\sum_k t_{ik} = 1$ in each run and, for each use $s$ and junction $j$ whose
 * pressure is not already sure through a junction beyond it, $\sum_{i \to j} \sum_k h_{iks} t_{ik} \le H_s - H_{js}$: the
 * losses on the way there leave the head that is asked. With fixed demands in a tree the flow of each run is known, so
 * $h_{iks}$, the loss of the whole run in size $k$, is a number and the rows are exact. Shares, not lengths, because
 * solvers keep their tolerances best with numbers near one.
 *
 * A run's fittings count as spread along it: a part has its share of the coefficient, on its own velocity. Fittings that
 * stand at one end belong in a short run of their own. The loss of the fitting at a change of size is no term of a linear
 * programme; {@link partWaySizes} adds it when it lays the answer. Sizes are ruled out as in {@link leastCostSizes}, for
 * the whole run by the pressure at its lower end. A layout is known to be short before it is solved where one size of each
 * run loses least in every use; where roughness makes that differ from use to use, the solver may find that nothing serves.
 *
 * @param input - the layout, the sizes of each run, the uses and the limits
 * @returns the programme; or which run or junction stands in the way
 * @throws {@link units.InputError} naming the first part that cannot be used: loops, several sources, pressure-dependent
 *   outlets and reducing valves, since their flows depend on the sizes and the programme would not be exact; and layouts
 *   with so many uses that the rows have more than 2 000 000 terms
 *
 * @example
 * ```ts
 * import { partWayProgramme } from "risingmain/selection";
 * import { celsius, feet, gpm, inches, psi } from "risingmain/units";
 * import { waterAt } from "risingmain/water";
 *
 * const programme = partWayProgramme({
 *   network: {
 *     water: waterAt({ temperature: celsius(10) }),
 *     junctions: [{ id: "tank", elevation: feet(0) }, { id: "field", elevation: feet(20) }],
 *     runs: [{
 *       id: "field line", from: "tank", to: "field", length: feet(1000),
 *       law: "darcy-weisbach", insideDiameter: inches(1), roughness: feet(0.000005),
 *     }],
 *     outlets: [{ id: "trough", junction: "field", kind: "fixed demand", flow: gpm(5), leastPressure: psi(10) }],
 *     sources: [{ id: "tank", junction: "tank", kind: "fixed head", head: feet(80) }],
 *   },
 *   choices: [{
 *     run: "field line",
 *     sizes: [
 *       { name: "3/4 in", insideDiameter: inches(0.824), costPerMetre: 1.2 },
 *       { name: "1 in", insideDiameter: inches(1.049), costPerMetre: 1.9 },
 *     ],
 *   }],
 *   scenarios: [{ name: "trough", open: ["trough"] }],
 * });
 * if (programme.state !== "to be solved") throw new Error(programme.state);
 * programme.variables.map(({ name, size }) => `${name}: ${size}`); // => ["x1: 3/4 in", "x2: 1 in"]
 * programme.rows.map(({ name, relation }) => `${name} ${relation}`); // => ["run1 =", "head1 <="]
 * ```
 *
 * @source karmeli-1968: the programme of a branched layout
 * @source derived: the rows left out
 */
export function partWayProgramme(input: PartWayInput): PartWayProgramme | NoSizeForRun | NoSizesMeet {
  const sizing = readPartWay(input);
  if ("state" in sizing) return sizing;
  const { network, runOf, parent, options, available, least, ruledOut } = sizing;
  const variables: ShareVariable[] = [];
  const rows: ProgrammeRow[] = [];
  const firstOf = firstVariables(sizing);
  firstOf.forEach((first, i) => {
    if (first < 0) return;
    const run = network.runs[runOf[i]!]!.id;
    options[i]!.forEach(({ cost }, k) => {
      variables.push({ name: `x${first + k + 1}`, run, size: sizing.allowed[i]![k]!.name, cost });
    });
    rows.push({
      name: `run${rows.length + 1}`,
      variables: options[i]!.map((_, k) => first + k),
      coefficients: options[i]!.map(() => 1),
      relation: "=",
      bound: 1,
    });
  });
  let terms = variables.length;
  headRows(sizing).forEach(({ place, use }, r) => {
    const row: [variable: number, coefficient: number][] = [];
    let bound = available[use]! - least[place]![use]!;
    for (let i = place; i > 0; i = parent[i]!) {
      options[i]!.forEach(({ losses }, k) => {
        if (firstOf[i]! < 0) bound -= losses[use]!;
        else if (losses[use] !== 0) row.push([firstOf[i]! + k, losses[use]!]);
      });
    }
    terms += row.length;
    if (terms > MOST_TERMS) {
      throw new InputError("scenarios", input.scenarios, `uses and sizes that make at most ${MOST_TERMS} terms`);
    }
    row.sort(([a], [b]) => a - b);
    rows.push({
      name: `head${r + 1}`,
      variables: row.map(([variable]) => variable),
      coefficients: row.map(([, coefficient]) => coefficient),
      relation: "<=",
      bound,
    });
  });
  return { state: "to be solved", variables, rows, ruledOut };
}

/** Reads the layout with what part-way changes add; or says what stands in the way. */
export function readPartWay(input: PartWayInput): Sizing | NoSizeForRun | NoSizesMeet {
  const sizing = readSizing(input);
  if (input.changeCoefficient !== undefined) requireWithin("changeCoefficient", input.changeCoefficient, 0, 10, "");
  input.choices.forEach(({ sizes }, c) => {
    sizes.forEach(({ pieceLength }, k) => {
      if (pieceLength !== undefined) {
        requireWithin(`choices[${c}].sizes[${k}].pieceLength`, pieceLength, 0.1, 1e4, "m");
      }
    });
  });
  if ("state" in sizing) return sizing;
  const short = shortAtLeast(sizing);
  return short.short > ROUNDING ? short : sizing;
}

/** The first variable of each place's run; −1 where the run keeps its own bore. */
export function firstVariables({ allowed }: Sizing): readonly number[] {
  let next = 0;
  return allowed.map((sizes) => {
    if (sizes[0] === undefined) return -1;
    next += sizes.length;
    return next - sizes.length;
  });
}

/**
 * The places and uses that need a row: not those that cannot be short while a place beyond is not, nor those whose losses
 * do not depend on the sizes.
 */
export function headRows({ parent, options, allowed, least }: Sizing): { place: number; use: number }[] {
  const n = parent.length;
  const uses = least[0]!.map((_, s) => s);
  // Head that the places beyond ask of each place, all runs between at their least loss.
  const beyond = least.map((heads) => heads.map(() => -Infinity));
  for (let i = n - 1; i > 0; i--) {
    const above = beyond[parent[i]!]!;
    for (const s of uses) {
      const loss = Math.min(...options[i]!.map(({ losses }) => losses[s]!));
      above[s] = Math.max(above[s]!, Math.max(least[i]![s]!, beyond[i]![s]!) + loss);
    }
  }
  const varies: boolean[][] = [uses.map(() => false)];
  const rows: { place: number; use: number }[] = [];
  for (let i = 1; i < n; i++) {
    varies[i] = uses.map(
      (s) =>
        varies[parent[i]!]![s]! || (allowed[i]![0] !== undefined && options[i]!.some(({ losses }) => losses[s] !== 0)),
    );
    for (const s of uses) if (varies[i]![s] && least[i]![s]! > beyond[i]![s]!) rows.push({ place: i, use: s });
  }
  return rows;
}
