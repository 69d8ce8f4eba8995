import {
  type DarcyWeisbachInput,
  diameterForHeadLoss,
  type HazenWilliamsInput,
  hazenWilliamsCoefficient,
  wallRoughness,
} from "risingmain/pipe";
import type { DynamicViscosity, GaugePressure, Length, VolumeFlow } from "risingmain/units";

declare const good: DarcyWeisbachInput;
declare const rule: HazenWilliamsInput;
declare const length: Length;
declare const flow: VolumeFlow;
declare const pressure: GaugePressure;
declare const dynamic: DynamicViscosity;

// @ts-expect-error a length is not a flow
const lengthAsFlow: DarcyWeisbachInput = { ...good, flow: length };
// @ts-expect-error a flow is not a length
const flowAsLength: HazenWilliamsInput = { ...rule, insideDiameter: flow };
// @ts-expect-error dynamic viscosity is not kinematic
const wrongViscosity: DarcyWeisbachInput = { ...good, viscosity: dynamic };
// @ts-expect-error a head is asked for, not a pressure
diameterForHeadLoss({ ...good, headLoss: pressure });
// @ts-expect-error the bore may not be there: look at the state first
diameterForHeadLoss({ ...good, headLoss: length }).insideDiameter;
// @ts-expect-error no such wall
wallRoughness("straw");
// @ts-expect-error no such material
hazenWilliamsCoefficient({ material: "straw" });
void [lengthAsFlow, flowAsLength, wrongViscosity];
