/** Circuits solved beforehand with complex numbers at 50 digits: `tests/fixtures/circuits.py`. */
import { readFileSync } from "node:fs";
import {
  type LockedRotorDropInput,
  lockedRotorDrop,
  type RunVoltagesInput,
  runVoltages,
  type SendingVoltageInput,
  sendingVoltage,
  type VoltageDropInput,
  voltageDrop,
} from "risingmain/conductor";
import type { Voltage } from "risingmain/units";
import { describe, expect, test } from "vitest";

interface Fixture {
  readonly drops: readonly (VoltageDropInput & {
    readonly expected: {
      readonly drop: number;
      readonly loadVoltage: number;
      readonly sourceDrop: number;
      readonly segmentDrops: readonly number[];
      readonly loss: number;
    };
  })[];
  readonly runs: readonly (SendingVoltageInput & {
    readonly expected: {
      readonly sourceVoltage: number;
      readonly terminalVoltage: number;
      readonly voltages: readonly number[];
      readonly currents: readonly number[];
      readonly difference: number;
      readonly angle: number;
    };
  })[];
  readonly starts: readonly (LockedRotorDropInput & { readonly expected: Readonly<Record<string, number>> })[];
}

const fixture = JSON.parse(readFileSync(new URL("../fixtures/circuits.json", import.meta.url), "utf8")) as Fixture;

/** JSON has null where an optional field is left out. */
const given = <T extends { source?: unknown }>(circuit: T): T => {
  const { source, ...rest } = circuit;
  return (source === null ? rest : circuit) as T;
};
/** Agreement to 1e-12 of a value, or of the volts it is a difference of. */
const agree = (got: number, wanted: number, scale = Math.abs(wanted)): void =>
  expect(Math.abs(got - wanted)).toBeLessThanOrEqual(1e-12 * scale);

describe("voltage drop", () => {
  test.each(fixture.drops.map((circuit, i) => [i, circuit] as const))("circuit %i", (_, circuit) => {
    const { expected } = circuit;
    const got = voltageDrop(given(circuit));
    if (got.state !== "carried") throw new Error(got.state);
    agree(got.drop, expected.drop);
    agree(got.loadVoltage, expected.loadVoltage);
    agree(got.loss, expected.loss);
    agree(got.sourceDrop, expected.sourceDrop);
    expect(got.segments).toHaveLength(expected.segmentDrops.length);
    for (const [i, { drop }] of got.segments.entries()) agree(drop, expected.segmentDrops[i] as number);
  });
});

describe("several loads on one run", () => {
  test.each(fixture.runs.map((circuit, i) => [i, circuit] as const))("run %i", (_, circuit) => {
    const { expected } = circuit;
    const back = sendingVoltage(given(circuit));
    const forth = runVoltages({
      ...given(circuit),
      sourceVoltage: expected.sourceVoltage as Voltage,
    } as RunVoltagesInput);
    if (forth.state !== "carried") throw new Error(forth.state);
    for (const got of [back, forth]) {
      agree(got.sourceVoltage, expected.sourceVoltage);
      agree(got.terminalVoltage, expected.terminalVoltage);
      agree(got.difference, expected.difference, expected.sourceVoltage);
      agree(got.angle, expected.angle, 1);
      for (const [i, voltage] of got.voltages.entries()) agree(voltage, expected.voltages[i] as number);
      for (const [i, current] of got.currents.entries()) agree(current, expected.currents[i] as number);
    }
  });
});

describe("a motor standing still", () => {
  test.each(fixture.starts.map((circuit, i) => [i, circuit] as const))("start %i", (_, circuit) => {
    const { expected } = circuit;
    const got = lockedRotorDrop(given(circuit)) as unknown as Readonly<Record<string, number>>;
    for (const [name, wanted] of Object.entries(expected)) agree(got[name] as number, wanted);
  });
});
