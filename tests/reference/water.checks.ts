/** How each published record on water and the atmosphere is computed with the library. */
import type { Length, Temperature } from "risingmain/units";
import { atmosphereAt, waterAt, waterDensity, waterIsothermalBulkModulus, waterVapourPressure } from "risingmain/water";
import type { Computation } from "./register.ts";

export const computations: readonly Computation[] = [
  {
    ids: /water-iapws95-.*/,
    compute: (g) => {
      const temperature = g.si<Temperature>("temperature");
      const water = waterAt({ temperature });
      return {
        ...water,
        insideRange: String(water.insideRange),
        bulkModulusIsentropic: water.bulkModulus,
        bulkModulusIsothermal: waterIsothermalBulkModulus(temperature),
      };
    },
  },
  {
    // This table's modulus is the isothermal one, as its notes say.
    ids: /water-table-.*/,
    compute: (g) => {
      const temperature = g.si<Temperature>("temperature");
      const { density, vapourPressure, dynamicViscosity } = waterAt({ temperature });
      return { density, vapourPressure, dynamicViscosity, bulkModulus: waterIsothermalBulkModulus(temperature) };
    },
  },
  {
    ids: /if97-psat-.*|iapws-sr1-86-.*/,
    compute: (g) => ({ pressure: waterVapourPressure(g.si<Temperature>("temperature")) }),
  },
  { ids: /iapws-sr6-08-260k/, compute: (g) => ({ density: waterDensity(g.si<Temperature>("temperature")) }) },
  { ids: /standard-atmosphere-.*/, compute: (g) => ({ pressure: atmosphereAt(g.si<Length>("elevation")) }) },
];
