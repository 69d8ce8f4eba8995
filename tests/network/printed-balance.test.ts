/** How far the answers that books print leave their own networks out of balance: the record says it, and it is so. */
import { describe, expect, test } from "vitest";
import { fixedFactor, type NetworkRecord, networkOf } from "../reference/network.checks.ts";
import { loadRecords } from "../reference/register.ts";

interface Unbalanced {
  readonly mass?: { readonly value: number; readonly unit: string };
  readonly energy: { readonly value: number; readonly unit: string };
}
const records = loadRecords("network") as readonly (NetworkRecord & { readonly unbalanced?: Unbalanced })[];

const printed = (id: string, name: string): number => Number(records.find((r) => r.id === id)?.expected[name]?.value);
const resistances = (id: string, g: number): number[] =>
  networkOf(id).pipes.map(({ darcyFrictionFactor, length, diameter }) =>
    fixedFactor(darcyFrictionFactor as number, length, diameter, g),
  );

/** Flow missing at the junction and head missing along the worst path, from the printed figures alone. */
const imbalances: Readonly<Record<string, (id: string) => readonly [number, number]>> = {
  "net-munson-ex-8-14": (id) => {
    const [a = 0, b = 0, c = 0] = resistances(id, 32.2);
    const [q1, q2, q3] = [printed(id, "Q_1"), printed(id, "Q_2"), printed(id, "Q_3")];
    return [
      q1 - q2 - q3,
      Math.max(Math.abs(80 - a * q1 ** 2 - b * q2 ** 2), Math.abs(100 - a * q1 ** 2 - c * q3 ** 2)),
    ];
  },
  "net-daugherty-ex-8-9": (id) => {
    const [a = 0, b = 0, c = 0] = resistances(id, 32.2);
    const [qa, qb, qc] = [printed(id, "Q_A"), printed(id, "Q_B"), printed(id, "Q_C")];
    return [
      qa + qb - qc,
      Math.max(Math.abs(150 - a * qa ** 2 - c * qc ** 2), Math.abs(150 - b * qb ** 2 - c * qc ** 2)),
    ];
  },
  "net-natarajan-ex-7-20": (id) => {
    const [a = 0, b = 0, c = 0] = resistances(id, 9.81);
    const [head, q2, q3] = [printed(id, "H_B"), printed(id, "Q_2"), printed(id, "Q_3")];
    const q1 = 1000 * Math.sqrt((10 - head) / a);
    return [
      q1 - q2 - q3,
      Math.max(Math.abs(head + 5 - b * (q2 / 1000) ** 2), Math.abs(head + 7.5 - c * (q3 / 1000) ** 2)),
    ];
  },
  "net-lal-ex-5-17": (id) => {
    const v = [1, 2, 3].map((i) => printed(id, `velocity${i}`));
    const area = [2, 1.5, 1].map((d) => (Math.PI / 4) * d ** 2);
    const lost = [29, 55, 41].map((heads, i) => (heads * (v[i] as number) ** 2) / 64.4);
    const [q1 = 0, q2 = 0, q3 = 0] = v.map((speed, i) => speed * (area[i] as number));
    const [h1 = 0, h2 = 0, h3 = 0] = lost;
    return [q1 - q2 - q3, Math.max(Math.abs(30 - h1 - h2), Math.abs(50 - h1 - h3))];
  },
  "net-douglas-ex-14-3": (id) => {
    const lost = [0.05, 0.1].map((d, i) => fixedFactor(0.032, 100, d, 9.81, 1.5) * printed(id, `flow${i + 1}`) ** 2);
    return [
      printed(id, "flow1") + printed(id, "flow2") - printed(id, "total"),
      Math.max(...lost.map((h) => Math.abs(10 - h))),
    ];
  },
  "net-choudhary-ex-7-17": (id) => {
    const lost = [0.05, 0.1].map((d, i) => ((0.008 * 100) / (3.0257 * d ** 5)) * printed(id, `flow${i + 1}`) ** 2);
    return [0, Math.max(...lost.map((h) => Math.abs(10 - h)))];
  },
};

describe("printed answers out of balance", () => {
  test.each(Object.entries(imbalances))("%s", (id, imbalance) => {
    const stated = records.find((r) => r.id === id)?.unbalanced as Unbalanced;
    const [mass, energy] = imbalance(id);
    expect(Math.abs(mass)).toBeCloseTo(stated.mass?.value ?? 0, 4);
    expect(Math.abs(energy / stated.energy.value - 1)).toBeLessThan(0.005);
  });

  test("every record that says so is among them", () => {
    expect(
      records
        .filter(({ unbalanced }) => unbalanced)
        .map(({ id }) => id)
        .sort(),
    ).toEqual(Object.keys(imbalances).sort());
  });
});
