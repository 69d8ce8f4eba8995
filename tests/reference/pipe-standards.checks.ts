/** How each published record of pipe standards is computed with the library. */
import {
  boreArea,
  findPipe,
  metalPipeWorkingPressure,
  type PipeSize,
  pipeGradeProperties,
  pipeMass,
  pressureRatingOfInsideRatio,
  pressureRatingOfRatio,
  pressureRatingOfWall,
  ratingAtTemperature,
  workingPressureWithoutSurge,
} from "risingmain/pipe";
import type { GaugePressure, Length, Modulus } from "risingmain/units";
import type { Computation } from "./register.ts";

/** The rating by the design equation that goes with the pipe's series, from the design stress of its grade. */
function ratingByEquation(pipe: PipeSize): GaugePressure {
  const { designStress } = pipeGradeProperties(pipe.grade);
  if (designStress === null) throw new Error(`${pipe.grade} has no design stress`);
  const ratio = Number(/(?:DR|SDR|SIDR) ([\d.]+)/.exec(pipe.series)?.[1]);
  if (pipe.series.startsWith("SIDR")) return pressureRatingOfInsideRatio({ designStress, insideDimensionRatio: ratio });
  if (Number.isFinite(ratio)) return pressureRatingOfRatio({ designStress, dimensionRatio: ratio });
  return pressureRatingOfWall({ designStress, outsideDiameter: pipe.outsideDiameter, wall: pipe.wall });
}

export const computations: readonly Computation[] = [
  {
    ids: /(?:pvc|pe)-d\d.*|copper-b88.*|steel-b36.*/,
    compute: (g) => {
      const pipe = findPipe(g.text("pipe"));
      const { outsideDiameter, wall, insideDiameter } = pipe;
      const rated = "pressureRating" in g.record.expected;
      return { outsideDiameter, wall, insideDiameter, ...(rated && { pressureRating: ratingByEquation(pipe) }) };
    },
  },
  {
    ids: /pressure-rating-.*/,
    compute: (g) => {
      const designStress = g.si<Modulus>("designStress");
      return {
        pressureRating: g.has("dimensionRatio")
          ? pressureRatingOfRatio({ designStress, dimensionRatio: g.si("dimensionRatio") })
          : pressureRatingOfInsideRatio({ designStress, insideDimensionRatio: g.si("insideDimensionRatio") }),
      };
    },
  },
  {
    ids: /(?:pvc|pe)-derating-.*/,
    compute: (g) => {
      const pipe = { grade: g.text("grade"), pressureRating: 1e6 as GaugePressure };
      const rated = ratingAtTemperature({ pipe, temperature: g.si("temperature") });
      if (rated.state !== "rated") throw new Error(rated.state);
      return { factor: rated.factor };
    },
  },
  {
    ids: /plastic-72-percent-rule/,
    compute: (g) => ({ workingPressure: workingPressureWithoutSurge(g.si("pressureRating")) }),
  },
  {
    ids: /(?:steel|copper)-weight-.*/,
    compute: (g) => {
      const pipe = findPipe(g.text("pipe"));
      return { mass: pipeMass({ ...pipe, density: pipeGradeProperties(pipe.grade).density }) };
    },
  },
  {
    ids: /copper-rated-.*/,
    compute: (g) => ({
      pressure: metalPipeWorkingPressure({
        allowableStress: g.si("allowableStress"),
        outsideDiameter: g.si("largestDiameter"),
        wall: g.si("smallestWall"),
      }),
    }),
  },
  { ids: /bore-volume-.*/, compute: (g) => ({ volumePerLength: boreArea(g.si<Length>("insideDiameter")) }) },
];
