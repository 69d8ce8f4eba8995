/** A model to sweep: the flow a pump gives through its drop pipe and a yard line against a pressure held at the end. */
import { headOfPressure } from "risingmain/head";
import { darcyWeisbachLoss } from "risingmain/pipe";
import { operatingPoint, pumpCurve } from "risingmain/pump";
import { celsius, feet, gpm, inches, millimetres } from "risingmain/units";
import { waterAt } from "risingmain/water";

// What is dear is made once, when the thread loads the model; the variants name it. Pumps of our own invention.
const pumpOf = (shutoff, runout) =>
  pumpCurve({
    points: [0, 0.25, 0.5, 0.75, 1].map((t) => ({ flow: gpm(runout * t), head: feet(shutoff * (1 - 0.7 * t * t)) })),
  });
const curves = { A: pumpOf(310, 16), B: pumpOf(420, 20), C: pumpOf(430, 26), D: pumpOf(560, 24) };
const { density, kinematicViscosity: viscosity } = waterAt({ temperature: celsius(10) });
const roughness = millimetres(0.0015);
const lift = feet(150);
const dropPipe = { bore: inches(1.278), length: feet(200) };

/** Flow in m³/s: 0 where the pump does not reach, the last flow of its curve where it runs out past that. */
export function evaluate({ pump, bore, length, pressure }) {
  const still = lift + headOfPressure({ pressure, density });
  const loss = (insideDiameter, length, flow) =>
    darcyWeisbachLoss({ flow, insideDiameter, length, roughness, viscosity }).headLoss;
  const point = operatingPoint({
    curve: curves[pump],
    systemHead: (flow) => still + loss(dropPipe.bore, dropPipe.length, flow) + loss(bore, length, flow),
  });
  if (point.state === "running") return point.flow;
  return point.state === "runs out" ? point.moreThan : 0;
}
