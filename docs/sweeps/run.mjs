/** How many layouts of a yard line give 10 gpm at its end? Run after the build: node docs/sweeps/run.mjs */
import { feet, gpm, inches, psi } from "risingmain/units";
import { startThreads } from "./threads.mjs";

const axes = {
  pump: ["A", "B", "C", "D"],
  bore: [0.824, 1.049, 1.38, 1.61].map(inches),
  pressure: [20, 30, 40, 50, 60].map(psi),
  length: Array.from({ length: 2500 }, (_, i) => feet(i + 1)),
};
const threads = startThreads(new URL("yard-line.mjs", import.meta.url));
const flows = await threads.sweep(axes);
await threads.stop();
console.log(`${flows.filter((flow) => flow >= gpm(10)).length} of ${flows.length} give 10 gpm`);
