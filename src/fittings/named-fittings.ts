/**
 * Fittings by their everyday name, each with the published method that this library takes for it.
 *
 * Threaded or solvent-welded small fittings are meant, of the size of the pipe. The union (and the coupling, taken like it) is a
 * textbook figure, recalled. Push-connect fittings are brass ones of 3/4 in tube, as measured from Re 10 000 (elbow 40 000) up.
 *
 * @module
 */
import type { LengthOverDiameterFitting } from "./lengths-over-diameter.ts";
import type { ThreeKFitting } from "./three-k-fittings.ts";

/** Everyday names of fittings. */
export type FittingName =
  | "elbow 90"
  | "elbow 90 long radius"
  | "elbow 45"
  | "return bend"
  | "tee run"
  | "tee branch"
  | "coupling"
  | "union"
  | "push-connect elbow"
  | "push-connect coupling"
  | "gate valve"
  | "ball valve"
  | "globe valve"
  | "angle valve"
  | "swing check valve"
  | "lift check valve"
  | "foot valve"
  | "foot valve hinged"
  | "entrance projecting"
  | "entrance"
  | "entrance rounded"
  | "exit";

/** How a named fitting is reckoned: three-K constants, a length in diameters, or one coefficient at every flow. */
export type NamedFitting =
  | {
      /** Name of the fitting in `threeKFittings`. */
      readonly threeK: ThreeKFitting;
    }
  | {
      /** Name of the fitting in `lengthsOverDiameter`. */
      readonly lengthOverDiameter: LengthOverDiameterFitting;
    }
  | {
      /** Resistance coefficient in turbulent flow, whatever the size. */
      readonly coefficient: number;
      /** Id of the source, or "derived". */
      readonly method: string;
    };

/**
 * How each named fitting is reckoned.
 *
 * @source darby-1999: elbows, tees, valves
 * @source crane-410: foot valves and entrances, recalled
 * @source munson-2006: the union, recalled
 * @source nist-push-connect: the push-connect fittings
 */
export const namedFittings: Readonly<Record<FittingName, NamedFitting>> = {
  "elbow 90": { threeK: "elbow 90 threaded standard" },
  "elbow 90 long radius": { threeK: "elbow 90 threaded long radius" },
  "elbow 45": { threeK: "elbow 45 threaded standard" },
  "return bend": { threeK: "return bend threaded close" },
  "tee run": { threeK: "tee run threaded" },
  "tee branch": { threeK: "tee branch threaded" },
  coupling: { coefficient: 0.08, method: "munson-2006" },
  union: { coefficient: 0.08, method: "munson-2006" },
  "push-connect elbow": { coefficient: 1, method: "nist-push-connect" },
  "push-connect coupling": { coefficient: 0.007, method: "nist-push-connect" },
  "gate valve": { threeK: "gate valve" },
  "ball valve": { threeK: "ball valve" },
  "globe valve": { threeK: "globe valve" },
  "angle valve": { threeK: "angle valve 90" },
  "swing check valve": { threeK: "swing check valve" },
  "lift check valve": { threeK: "lift check valve" },
  "foot valve": { lengthOverDiameter: "foot valve poppet" },
  "foot valve hinged": { lengthOverDiameter: "foot valve hinged" },
  "entrance projecting": { coefficient: 0.78, method: "crane-410" },
  entrance: { coefficient: 0.5, method: "crane-410" },
  "entrance rounded": { coefficient: 0.04, method: "crane-410" },
  exit: { coefficient: 1, method: "derived" },
};
