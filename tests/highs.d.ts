/** The solver's types, said to be those of its module: its package lets them pass for CommonJS. */
declare module "highs" {
  import type { Highs, InitOptions } from "highs/legacy-types";

  export default function loadHighs(options?: InitOptions): Promise<Highs>;
}
