/**
 * Grades of pipe material: the stress they are designed for, and the stiffness and density that surge and weight need.
 *
 * @module
 */
import { requireOneOf } from "../numeric/index.ts";
import type { Density, Modulus } from "../units/index.ts";

/** Grades of pipe material. */
export type PipeGradeName =
  | "PVC 1120"
  | "PVC-U"
  | "PE3408"
  | "PE4710"
  | "PE80"
  | "PE100"
  | "PEX"
  | "copper"
  | "carbon steel";

/** What a grade of pipe material withstands, how stiff it is and what it weighs. */
export interface PipeGradeProperties {
  /** Hydrostatic design stress at the rating temperature (73 °F or 20 °C), Pa; null where the standard sets none. */
  readonly designStress: Modulus | null;
  /** Young's modulus under a quick load such as surge, Pa. */
  readonly elasticModulus: Modulus;
  /** Poisson's ratio. */
  readonly poissonRatio: number;
  /** Density, kg/m³. */
  readonly density: Density;
  /** Ids of the sources, or "common practice". */
  readonly source: string;
}

/** Figures in the units they are published in: psi and MPa for stress and stiffness. All recalled but the design stresses read. */
interface PrintedProperties {
  readonly unit: "psi" | "MPa";
  readonly designStress: number | null;
  readonly elasticModulus: number;
  readonly poissonRatio: number;
  readonly density: number;
  readonly source: string;
}

/**
 * PVC: 400 000 psi and specific gravity 1.40 of cell class 12454. PE: stiffness under a quick load at 73 °F. PEX: usual values.
 * Copper: 17 000 000 psi and 0.323 lb/in³. Steel: 30 000 000 psi; 7850 kg/m³ is the density behind the weights of B36.10M.
 */
const PRINTED: Readonly<Record<PipeGradeName, PrintedProperties>> = {
  "PVC 1120": {
    unit: "psi",
    designStress: 2000,
    elasticModulus: 4e5,
    poissonRatio: 0.38,
    density: 1400,
    source: "astm-d1784",
  },
  // 10 MPa up to 90 mm and 12.5 MPa above: no one design stress.
  "PVC-U": {
    unit: "MPa",
    designStress: null,
    elasticModulus: 3000,
    poissonRatio: 0.38,
    density: 1400,
    source: "iso-1452-2",
  },
  PE3408: {
    unit: "psi",
    designStress: 800,
    elasticModulus: 1.5e5,
    poissonRatio: 0.45,
    density: 950,
    source: "awwa-m55",
  },
  PE4710: {
    unit: "psi",
    designStress: 1000,
    elasticModulus: 1.5e5,
    poissonRatio: 0.45,
    density: 955,
    source: "ppi-pe-handbook",
  },
  PE80: { unit: "MPa", designStress: 6.4, elasticModulus: 800, poissonRatio: 0.45, density: 945, source: "iso-4427-2" },
  PE100: { unit: "MPa", designStress: 8, elasticModulus: 1000, poissonRatio: 0.45, density: 959, source: "iso-4427-2" },
  PEX: {
    unit: "psi",
    designStress: 630,
    elasticModulus: 1e5,
    poissonRatio: 0.45,
    density: 940,
    source: "common practice",
  },
  copper: {
    unit: "psi",
    designStress: null,
    elasticModulus: 1.7e7,
    poissonRatio: 0.34,
    density: 8940,
    source: "cda-copper-tube",
  },
  "carbon steel": {
    unit: "psi",
    designStress: null,
    elasticModulus: 3e7,
    poissonRatio: 0.3,
    density: 7850,
    source: "asme-b36-10",
  },
};

const PASCALS: Readonly<Record<"psi" | "MPa", number>> = { psi: (0.45359237 * 9.80665) / 0.0254 ** 2, MPa: 1e6 };

/**
 * Design stress, stiffness, Poisson's ratio and density of a grade of pipe material.
 *
 * @remarks
 * At 73 °F (23 °C), or 20 °C for the metric grades. The stiffness of plastics falls with temperature and with the time the load
 * lasts: these are for a quick load, as in surge, and within some 20 % of what is measured. Recalled, but for the design
 * stresses, which fit the pressure ratings read in the standards' reprints.
 *
 * @param grade - name of the grade, as in `PipeSize.grade`
 * @returns the properties, SI
 * @throws {@link units.InputError} where the grade is not known
 *
 * @example
 * ```ts
 * import { pipeGradeProperties } from "risingmain/pipe";
 * import { inPsiModulus } from "risingmain/units";
 *
 * const { designStress, elasticModulus } = pipeGradeProperties("PE4710");
 * designStress === null ? 0 : inPsiModulus(designStress); // ≈ 1000
 * inPsiModulus(elasticModulus); // ≈ 150000
 * ```
 *
 * @source astm-d1784: PVC, recalled
 * @source ppi-pe-handbook: PE, recalled
 * @source cda-copper-tube: copper, recalled
 * @source common practice: PEX, Poisson's ratios
 */
export function pipeGradeProperties(grade: string): PipeGradeProperties {
  requireOneOf("grade", grade, Object.keys(PRINTED));
  const { unit, designStress, elasticModulus, poissonRatio, density, source } = PRINTED[grade as PipeGradeName];
  const pascals = PASCALS[unit];
  return {
    designStress: designStress === null ? null : ((designStress * pascals) as Modulus),
    elasticModulus: (elasticModulus * pascals) as Modulus,
    poissonRatio,
    density: density as Density,
    source,
  };
}
