/** What the types of pipe sizes refuse: one wrong field in an otherwise good input. */
import {
  findPipe,
  listPipes,
  pipeMass,
  pressureRatingOfRatio,
  pressureRatingOfWall,
  ratingAtTemperature,
} from "risingmain/pipe";
import { fahrenheit, inches, kilogramsPerCubicMetre, psi, psiModulus } from "risingmain/units";

const pipe = findPipe("2 in PVC SCH 40");

// @ts-expect-error a pressure is not a design stress
pressureRatingOfRatio({ designStress: psi(2000), dimensionRatio: 21 });
// @ts-expect-error a bare number is not a length
pressureRatingOfWall({ designStress: psiModulus(2000), outsideDiameter: 2.375, wall: inches(0.154) });
// @ts-expect-error a bare number is not a temperature
ratingAtTemperature({ pipe, temperature: 90 });
// @ts-expect-error clay pipe is not a material of the tables
listPipes({ material: "clay" });
// @ts-expect-error a length is not a density
pipeMass({ ...pipe, density: inches(1) });
// @ts-expect-error a rating may be missing: copper and steel have none
psi(pipe.pressureRating + 1);

pipeMass({ ...pipe, density: kilogramsPerCubicMetre(1400) });
ratingAtTemperature({ pipe, temperature: fahrenheit(90) });
