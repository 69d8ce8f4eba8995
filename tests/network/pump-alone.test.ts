/** A layout of one junction and a pump, whose link is then the first of all. */
import type { Network } from "risingmain/network";
import { expect, test } from "vitest";
import { prepareNetwork } from "../../src/network/balance.ts";
import { solvePrepared } from "../../src/network/solve-network.ts";
import { spanningFlow } from "../../src/network/spanning-flow.ts";
import { flow, m, solved, water } from "./layouts.ts";

test("balances, and gives what is drawn at the head of its curve to the last bit", () => {
  const network: Network = {
    water,
    junctions: [{ id: "a", elevation: m(0) }],
    runs: [],
    outlets: [{ id: "tap", junction: "a", kind: "fixed demand", flow: flow(0.001) }],
    sources: [
      { id: "pump", junction: "a", kind: "curve", headAtFlow: (q) => m(50 - 1e4 * q), largestFlow: flow(0.002) },
    ],
  };
  const prepared = prepareNetwork(network);
  const open = Uint8Array.of(1);
  const { residuals, sources } = solved(solvePrepared(prepared, open));
  expect(residuals).toEqual({ mass: 0, energy: 0 });
  expect([sources[0]?.flow, sources[0]?.head]).toEqual([0.001, 40]);

  const spoilt = prepared.balance(open);
  spoilt.flow[0] = 0.0015;
  spoilt.head[0] = 7;
  spanningFlow(prepared, spoilt);
  expect([spoilt.flow[0], spoilt.head[0]]).toEqual([0.001, 40]);
});
