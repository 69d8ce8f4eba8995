/**
 * What may stand on a run of pipe, as plain data.
 *
 * @module
 */
import type { Length, PressureDifference, VolumeFlow } from "../units/index.ts";
import type { InsertForm } from "./insert-fitting.ts";
import type { FittingName } from "./named-fittings.ts";

/** What every entry of a list of fittings has. */
export interface RunFittingBase {
  /** How many, all alike; 1 when left out. A whole number, 0 to 100 000. */
  readonly count?: number;
  /** What to call it in the parts of the result; a name is made when left out. */
  readonly label?: string;
}

/** A fitting by its everyday name, threaded or solvent-welded, of the size of the pipe. */
export interface NamedRunFitting extends RunFittingBase {
  /** Tells the kinds of entry apart. */
  readonly kind: "named";
  /** The name. */
  readonly fitting: FittingName;
}

/** A fitting by its resistance coefficient. */
export interface CoefficientRunFitting extends RunFittingBase {
  /** Tells the kinds of entry apart. */
  readonly kind: "coefficient";
  /** Resistance coefficient of one, on the velocity head in the run. 0 to 1e9. */
  readonly coefficient: number;
}

/** A fitting by the length of the run's own pipe that loses as much. */
export interface LengthRunFitting extends RunFittingBase {
  /** Tells the kinds of entry apart. */
  readonly kind: "equivalent length";
  /** Equivalent length of one. 0 to 100 000 m. */
  readonly length: Length;
}

/** An insert (barb) fitting in polyethylene pipe. */
export interface InsertRunFitting extends RunFittingBase {
  /** Tells the kinds of entry apart. */
  readonly kind: "insert";
  /** Shape. */
  readonly form: InsertForm;
  /** Bore as measured; the usual one for the pipe when left out. A tenth of the inside diameter up to it, m. */
  readonly bore?: Length;
}

/** A change from the run's bore to another one, sudden or tapered; flow that runs backwards comes out of the other bore. */
export interface BoreChangeRunFitting extends RunFittingBase {
  /** Tells the kinds of entry apart. */
  readonly kind: "bore change";
  /** Inside diameter after the change. 1/20 to 20 times that of the run, m. */
  readonly to: Length;
  /** Whole angle of the taper, radians; π, a sudden change, when left out. 0 to π. */
  readonly angle?: number;
}

/** A valve by its flow coefficient. */
export interface FlowCoefficientRunFitting extends RunFittingBase {
  /** Tells the kinds of entry apart. */
  readonly kind: "flow coefficient";
  /** Kv of one, m³/h/bar^0.5; from a Cv by `kvOfCv`. 1e-9 to 1e9. */
  readonly Kv: number;
}

/** A filter, strainer or meter by its rated point. */
export interface RatedRunFitting extends RunFittingBase {
  /** Tells the kinds of entry apart. */
  readonly kind: "rated loss";
  /** Flow of the rated point. 1e-9 to 1000 m³/s. */
  readonly ratedFlow: VolumeFlow;
  /** Pressure lost at that flow with cold water. 0 to 1e8 Pa. */
  readonly ratedLoss: PressureDifference;
  /** How the loss goes with flow; 2 when left out. 1 to 2. */
  readonly exponent?: number;
}

/** A check valve with a spring or a weighted disc. Flow must not run backwards through it. */
export interface CheckRunFitting extends RunFittingBase {
  /** Tells the kinds of entry apart. */
  readonly kind: "check valve";
  /** Resistance coefficient held fully open. 0.01 to 1e6. */
  readonly coefficient: number;
  /** Pressure that cracks it, with cold water. 0 to 1e6 Pa. */
  readonly crackingPressure: PressureDifference;
  /** Flow that holds it fully open; what the cracking pressure asks for when left out. 0 to 1000 m³/s. */
  readonly minimumFlow?: VolumeFlow;
}

/** One entry of a list of fittings. */
export type RunFitting =
  | NamedRunFitting
  | CoefficientRunFitting
  | LengthRunFitting
  | InsertRunFitting
  | BoreChangeRunFitting
  | FlowCoefficientRunFitting
  | RatedRunFitting
  | CheckRunFitting;
