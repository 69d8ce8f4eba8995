/** Laws of the readings: bucket, levels, gauge, tank, jet, log, lifting. */
import fc from "fast-check";
import {
  airLineLevel,
  bucketFlow,
  bucketRuns,
  bucketTime,
  currentTest,
  drawdownLog,
  gaugeHead,
  judgeReading,
  liftingLoad,
  measuredCurve,
  settingHardware,
  tankTest,
  testAllowance,
  trajectoryFlow,
  voltageTest,
} from "risingmain/field";
import { headOfPressure } from "risingmain/head";
import { fitPumpCurve } from "risingmain/pump";
import { tankDrawdown } from "risingmain/tank";
import {
  amperes,
  feet,
  gpm,
  hours,
  inches,
  inFeet,
  inGpm,
  inPounds,
  inSeconds,
  kilogramsPerCubicMetre,
  minutes,
  pounds,
  poundsPerFoot,
  psi,
  ratio,
  seconds,
  standardAtmospheres,
  usGallons,
  volts,
} from "risingmain/units";
import { expect, test } from "vitest";

const water = kilogramsPerCubicMetre(999.7);

test("five US gallons in about 18 s read 16 to 17.5 gpm, two thirds of the doubt being the thumb (common practice, no source)", () => {
  for (const time of [17.2, 18, 18.7]) {
    const flow = inGpm(bucketFlow({ volume: usGallons(5), times: [seconds(time)] }).flow);
    expect(flow).toBeGreaterThanOrEqual(16);
    expect(flow).toBeLessThanOrEqual(17.5);
  }
  const hose = bucketFlow({ volume: usGallons(5), times: [seconds(18)] });
  expect(inGpm(hose.flow)).toBeCloseTo(16.7, 1);
  expect(hose.timingShare).toBeCloseTo(0.66, 2);
  // A quicker thumb: a fifth of a second leaves the mark on the pail as most of the doubt.
  const quick = bucketFlow({ volume: usGallons(5), times: [seconds(18)], timeUncertainty: seconds(0.2) });
  expect(quick.timingShare).toBeLessThan(0.3);
});

test("gallons over minutes, not minutes over gallons as one printed page has it", () => {
  expect(inGpm(bucketFlow({ volume: usGallons(5), times: [seconds(30)] }).flow)).toBeCloseTo(10, 12);
});

const buckets = fc.tuple(
  fc.double({ min: 1, max: 60, noNaN: true }).map(usGallons),
  fc.double({ min: 5, max: 600, noNaN: true }).map(seconds),
);

test("the time of a flow is the time it came from", () => {
  fc.assert(
    fc.property(buckets, ([volume, time]) => {
      const { flow } = bucketFlow({ volume, times: [time] });
      expect(inSeconds(bucketTime({ volume, flow }))).toBeCloseTo(time, 9);
    }),
  );
});

test("repeating shrinks the thumb by the root of the runs and the mark not at all; scatter is never hidden", () => {
  fc.assert(
    fc.property(buckets, fc.integer({ min: 2, max: 50 }), ([volume, time], n) => {
      const once = bucketFlow({ volume, times: [time] });
      const often = bucketFlow({ volume, times: Array.from({ length: n }, () => time) });
      // The slope of 1/t by steps of a thousandth of the doubt is off by its square, 1e-8 or so; that of V by rounding alone.
      expect((often.fromTiming * Math.sqrt(n)) / once.fromTiming).toBeCloseTo(1, 6);
      expect(often.fromVolume / once.fromVolume).toBeCloseTo(1, 9);
    }),
  );
  const scattered = bucketFlow({ volume: usGallons(5), times: [12, 18, 26].map(seconds) });
  const calm = bucketFlow({ volume: usGallons(5), times: [18, 18, 18].map(seconds) });
  expect(scattered.fromTiming).toBeGreaterThan(2 * calm.fromTiming);
});

test("the runs asked for give the accuracy wanted, and one fewer does not", () => {
  fc.assert(
    fc.property(buckets, fc.double({ min: 0.0205, max: 0.2, noNaN: true }), ([volume, time], wanted) => {
      const { flow } = bucketFlow({ volume, times: [time] });
      const need = bucketRuns({ volume, flow, wanted: ratio(wanted) });
      if (need.state !== "enough") throw new Error("the mark alone is inside the wanted accuracy");
      const at = (n: number) =>
        bucketFlow({ volume, times: Array.from({ length: n }, () => time) }).relativeUncertainty;
      if (need.runs <= 1000) expect(at(need.runs)).toBeLessThanOrEqual(wanted * (1 + 1e-9));
      if (need.runs > 1 && need.runs <= 1000) expect(at(need.runs - 1)).toBeGreaterThan(wanted * (1 - 1e-9));
    }),
  );
});

test("an air line reads the level that made its pressure", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 500, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (length, share) => {
        const submerged = length * share;
        const pressure = (999.7 * 9.80665 * feet(submerged)) as never;
        const read = airLineLevel({ lineLength: feet(length), pressure, density: water });
        if (read.state === "read") expect(inFeet(read.level)).toBeCloseTo(length - submerged, 6);
        else expect(share).toBeGreaterThan(1 - 1e-12);
      },
    ),
  );
});

test("a pressure of more water than there is line is said, not computed", () => {
  const read = airLineLevel({ lineLength: feet(100), pressure: psi(60), density: water });
  expect(read.state).toBe("over the top");
});

test("a gauge reads its own elevation and the head that the head module makes of its pressure", () => {
  const { head } = gaugeHead({ pressure: psi(40), gaugeElevation: feet(-3), density: water });
  expect(head).toBeCloseTo(headOfPressure({ pressure: psi(40), density: water }) - feet(3), 9);
});

test("a measured curve gives back the pump that made the readings", () => {
  const shutoff = 320;
  const fall = 0.6;
  const friction = (flow: number) => feet(0.02 * (flow / gpm(1)) ** 2);
  const flows = [0, 4, 8, 12, 16];
  const readings = flows.map((q) => {
    const level = 100 + q;
    const head = shutoff - fall * q * q;
    const gauge = feet(head - level - 2) - friction(gpm(q));
    return { flow: gpm(q), pressure: (gauge * 999.7 * 9.80665) as never, pumpingLevel: feet(level) };
  });
  const { points, cautions } = measuredCurve({ readings, gaugeElevation: feet(2), density: water, friction });
  points.forEach(({ flow, head }) => {
    expect(inFeet(head)).toBeCloseTo(shutoff - fall * inGpm(flow) ** 2, 6);
  });
  expect(cautions.length).toBeGreaterThan(0);
  const fitted = fitPumpCurve({ points });
  expect(inFeet(fitted.constant as never)).toBeCloseTo(shutoff, 6);
});

test("the tank's water over the time, with the precharge's doubt in it", () => {
  const tank = { volume: usGallons(85), precharge: psi(38), atmosphere: standardAtmospheres(1) };
  const filled = tankTest({ ...tank, lowPressure: psi(40), highPressure: psi(60), time: seconds(95) });
  const { usable } = tankDrawdown({ ...tank, cutIn: psi(40), cutOut: psi(60) });
  expect(filled.volume).toBeCloseTo(usable, 12);
  expect(filled.flow).toBeCloseTo(usable / 95, 12);
  const share = (name: string) => filled.parts.find((part) => part.name === name)?.share ?? 0;
  expect(share("lowPressure")).toBeGreaterThan(share("time"));
  const better = tankTest({
    ...tank,
    lowPressure: psi(40),
    highPressure: psi(60),
    time: seconds(95),
    pressureUncertainty: psi(0.1),
  });
  expect(better.standardUncertainty).toBeLessThan(filled.standardUncertainty / 2);
});

test("a jet's flow is as its throw, and falls with the root of its drop", () => {
  const jet = { insideDiameter: inches(3), throw: inches(18), drop: inches(13) };
  const { flow } = trajectoryFlow(jet);
  expect(trajectoryFlow({ ...jet, throw: inches(36) }).flow / flow).toBeCloseTo(2, 12);
  expect(trajectoryFlow({ ...jet, drop: inches(52) }).flow / flow).toBeCloseTo(0.5, 12);
  expect(trajectoryFlow(jet).insideRange).toBe(true);
  expect(trajectoryFlow({ ...jet, throw: inches(30) }).insideRange).toBe(false);
});

test("the older allowance is a ninth looser, and none is allowed at no pressure", () => {
  const main = { length: feet(500), diameter: inches(2), pressure: psi(90) };
  const older = testAllowance({ ...main, edition: "older" }).allowed;
  expect(older / testAllowance(main).allowed).toBeCloseTo(148 / 133.2, 12);
  expect(testAllowance({ ...main, pressure: psi(0) }).allowed).toBe(0);
});

test("a log of exponential recovery is recovered when it should be", () => {
  const readings = [{ time: hours(2), level: feet(100) }];
  for (let m = 1; m <= 120; m++) readings.push({ time: minutes(120 + m), level: feet(60 + 40 * Math.exp(-m / 20)) });
  const log = drawdownLog({ staticLevel: feet(60), flow: gpm(10), stopped: hours(2), readings });
  // 90 % is ln 10 time constants; the straight line between readings a minute apart adds next to nothing.
  expect(log.timeToRecover === null ? 0 : log.timeToRecover / 60).toBeCloseTo(20 * Math.LN10, 1);
  expect(log.recovery).toBeCloseTo(1 - Math.exp(-6), 9);
  expect(log.steadiness).toBe("too short");
});

test("a log tells falling from steady, and a level over the static one has no specific capacity", () => {
  const log = (last: number) =>
    drawdownLog({
      staticLevel: feet(60),
      flow: gpm(10),
      readings: [
        { time: hours(1), level: feet(90) },
        { time: hours(2), level: feet(last) },
      ],
    });
  expect([log(90.05).steadiness, log(92).steadiness, log(88).steadiness]).toEqual(["steady", "falling", "rising"]);
  expect(log(59).specificCapacity).toBeNull();
  expect(log(92).recovery).toBeNull();
});

test("a reading is judged by more than its doubt", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -80, max: 240 }).map((n) => n / 8),
      fc.integer({ min: 0, max: 24 }).map((n) => n / 8),
      (reading, u) => {
        const { verdict, margin, side } = judgeReading({ reading, low: 0, high: 20, standardUncertainty: u });
        if (verdict === "pass") expect(margin).toBeGreaterThanOrEqual(2 * u);
        if (verdict === "fail") expect(-margin).toBeGreaterThanOrEqual(2 * u);
        expect(side === "inside").toBe(reading >= 0 && reading <= 20);
        expect(judgeReading({ reading: 20 - reading, low: 0, high: 20, standardUncertainty: u }).verdict).toBe(verdict);
      },
    ),
  );
});

test("a reading far outside fails on its own side, one far inside passes", () => {
  const verdict = (reading: number) => judgeReading({ reading, low: 10, high: 20, standardUncertainty: 0.5 });
  expect(verdict(5)).toMatchObject({ verdict: "fail", side: "low", margin: -5 });
  expect(verdict(25)).toMatchObject({ verdict: "fail", side: "high", margin: -5 });
  expect(verdict(15)).toMatchObject({ verdict: "pass", side: "inside", margin: 5 });
  expect(verdict(10.5).verdict).toBe("too close to call");
});

test("currents and voltages: state, drop, dip", () => {
  const amps = (reading: number) =>
    currentTest({ reading: amperes(reading), expected: amperes(10), most: amperes(12) });
  expect([8, 9.5, 11.5, 12.5].map((a) => amps(a).state)).toEqual([
    "low",
    "as expected",
    "high",
    "over the motor's limit",
  ]);
  const supply = voltageTest({ rated: volts(230), underLoad: volts(203), atRest: volts(232), starting: volts(150) });
  expect(supply.state).toBe("low");
  expect(supply.drop?.share).toBeCloseTo(29 / 232, 12);
  expect(supply.dip?.share).toBeCloseTo(82 / 232, 12);
  expect(supply.dipInside).toBe(false);
  expect(amps(10.8).state).toBe("as expected");
  expect(amps(9.2).state).toBe("as expected");
  expect(voltageTest({ rated: volts(230), underLoad: volts(228) })).toMatchObject({ drop: null, dip: null });
});

test("a load is what hangs in the well, over standard gravity, and the water is often most of it", () => {
  const hoist = {
    pumpMass: pounds(60),
    pumpSetting: feet(300),
    pipeMass: poundsPerFoot(1),
    cableMass: poundsPerFoot(0.2),
    insideDiameter: inches(1.6),
    outsideDiameter: inches(1.9),
    density: kilogramsPerCubicMetre(1000),
  };
  const full = liftingLoad({ ...hoist, capacity: pounds(1500) });
  // 62.428 lb/ft³ of water in 300 ft of bore.
  const water = 62.428 * (Math.PI / 4) * (1.6 / 12) ** 2 * 300;
  expect(inPounds(full.load)).toBeCloseTo(60 + 300 + 60 + water, 1);
  expect(full.hanging.water).toBeGreaterThan(full.hanging.cable + full.hanging.pump);
  expect(full.margin).toBeCloseTo(pounds(1500) / full.load, 12);
  expect(liftingLoad({ ...hoist, full: false, capacity: pounds(1500) }).load).toBeCloseTo(pounds(420), 9);
  const at = (capacity: number) => liftingLoad({ ...hoist, full: false, capacity: pounds(capacity) }).state;
  expect([at(300), at(500), at(841)]).toEqual(["over capacity", "margin too small", "enough"]);
});

test("hardware: a deeper pump never needs less, and a coil takes a torque arrestor and four clamps", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 1000, noNaN: true }),
      fc.double({ min: 0, max: 200, noNaN: true }),
      (depth, more) => {
        const at = (d: number) =>
          settingHardware({
            pumpSetting: feet(d),
            pumpingLevel: feet(0.8 * d),
            jointLength: feet(20),
            reelLength: feet(500),
            cableBeyond: feet(30),
          });
        const [a, b] = [at(depth), at(depth + more)];
        for (const count of ["joints", "splices", "cable"] as const) expect(b[count]).toBeGreaterThanOrEqual(a[count]);
        for (const count of ["ties", "guides"] as const)
          expect(b.fixings[count]).toBeGreaterThanOrEqual(a.fixings[count]);
        expect(b.fixings.checkValves.length).toBeGreaterThanOrEqual(a.fixings.checkValves.length);
        expect(inFeet(a.lastJoint)).toBeGreaterThan(-1e-6);
        expect(inFeet(a.lastJoint)).toBeLessThanOrEqual(20 + 1e-6);
      },
    ),
  );
  const well = { pumpSetting: feet(200), pumpingLevel: feet(150) };
  const coil = settingHardware(well);
  expect([coil.joints, coil.torqueArrestors, coil.clamps, coil.splices]).toEqual([1, 1, 4, 1]);
  const jointed = settingHardware({ ...well, jointLength: feet(20), reelLength: feet(100) });
  expect([jointed.joints, jointed.couplings, jointed.torqueArrestors, jointed.clamps]).toEqual([10, 9, 0, 0]);
  expect(jointed.splices).toBe(3);
});
