/** What the types of the motor module refuse: one wrong field in otherwise good input. */
import { fullLoadCurrent, lockedRotorCurrent, motorBranchCircuit, voltageUnbalance } from "risingmain/motor";
import { amperes, horsepower, voltAmperes, volts } from "risingmain/units";

const good = { power: horsepower(1.5), voltage: volts(230), system: "single-phase" } as const;
fullLoadCurrent(good);
// @ts-expect-error apparent power is not shaft power
fullLoadCurrent({ ...good, power: voltAmperes(1100) });
// @ts-expect-error motors have one phase or three
fullLoadCurrent({ ...good, system: "two-phase" });
lockedRotorCurrent({ ...good, codeLetter: "K" });
// @ts-expect-error I, O and Q are no code letters
lockedRotorCurrent({ ...good, codeLetter: "Q" });
// @ts-expect-error volts are not amperes
motorBranchCircuit({ fullLoadCurrent: volts(10) });
motorBranchCircuit({ fullLoadCurrent: amperes(10) });
// @ts-expect-error three voltages, not two
voltageUnbalance([volts(230), volts(231)]);
