/** Laws of the pressure-hold test. */
import fc from "fast-check";
import { pressureHold } from "risingmain/field";
import {
  celsius,
  gigapascals,
  hours,
  inches,
  inPsi,
  inUsGallons,
  psi,
  standardAtmospheres,
  usGallons,
} from "risingmain/units";
import { waterDensity } from "risingmain/water";
import { expect, test } from "vitest";

const line = { pipeVolume: usGallons(40), startPressure: psi(60), time: hours(1) };
const tank = { volume: usGallons(85), precharge: psi(38), atmosphere: standardAtmospheres(1) };
const plastic = { insideDiameter: inches(1.06), wall: inches(0.12), modulus: gigapascals(2.8), expansion: 7e-5 };

test("no change of pressure or temperature, no loss", () => {
  const tight = pressureHold({ ...line, endPressure: psi(60), tank, wall: plastic });
  expect(tight.lost).toBe(0);
  expect(tight.tightPressure === null ? 0 : inPsi(tight.tightPressure)).toBeCloseTo(60, 6);
});

test("the loss grows as the pressure falls, and its parts add up", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 100, noNaN: true }),
      fc.double({ min: 0.01, max: 0.9, noNaN: true }),
      fc.double({ min: 1, max: 30, noNaN: true }),
      fc.boolean(),
      (end, less, t, withTank) => {
        const at = (pressure: number) =>
          pressureHold({
            ...line,
            endPressure: psi(pressure),
            wall: plastic,
            startTemperature: celsius(12),
            endTemperature: celsius(t),
            ...(withTank ? { tank } : {}),
          });
        const hold = at(end);
        expect(at(end - less).lost).toBeGreaterThan(hold.lost);
        expect(hold.lost).toBeCloseTo(hold.fromPipe + hold.fromTank + hold.fromTemperature, 12);
        expect(hold.leak * 3600).toBeCloseTo(hold.lost, 12);
      },
    ),
  );
});

test("a tank hides a leak: the same psi is thousands of times the water", () => {
  const bare = pressureHold({ ...line, endPressure: psi(59) });
  const fed = pressureHold({ ...line, endPressure: psi(59), tank });
  expect(inUsGallons(fed.lost)).toBeCloseTo(0.81, 2);
  expect(fed.lost / bare.lost).toBeGreaterThan(5000);
});

test("at the tight pressure a change of temperature has lost nothing", () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 30, noNaN: true }), fc.boolean(), (t, withTank) => {
      const hold = {
        ...line,
        wall: plastic,
        startTemperature: celsius(12),
        endTemperature: celsius(t),
        ...(withTank ? { tank } : {}),
      };
      const { tightPressure } = pressureHold({ ...hold, endPressure: psi(60) });
      if (tightPressure !== null) {
        expect(pressureHold({ ...hold, endPressure: tightPressure }).lost).toBeCloseTo(0, 12);
      }
    }),
  );
});

test("a rigid line full of warming water climbs by water's expansion over its compressibility", () => {
  const { tightPressure } = pressureHold({
    ...line,
    endPressure: psi(60),
    startTemperature: celsius(10),
    endTemperature: celsius(12),
  });
  const expansion = waterDensity(celsius(10)) / waterDensity(celsius(12)) - 1;
  expect(tightPressure === null ? 0 : inPsi(tightPressure)).toBeCloseTo(60 + expansion * 316_000, 3);
});

test("one temperature without the other is refused, and water is the only thing to test with", () => {
  expect(() => pressureHold({ ...line, endPressure: psi(59), startTemperature: celsius(10) })).toThrow(
    /both temperatures/,
  );
  const { cautions } = pressureHold({ ...line, endPressure: psi(59) });
  expect(cautions.map(({ text }) => text).join(" ")).toMatch(/never with compressed air/);
});

test("a pipe that swells as the water does shows no change; one that does not climbs", () => {
  const [cold, warm] = [celsius(10), celsius(12)];
  const likeWater = (waterDensity(cold) / waterDensity(warm) - 1) / (3 * (warm - cold));
  const hold = { ...line, endPressure: psi(60), startTemperature: cold, endTemperature: warm };
  const swells = pressureHold({ ...hold, wall: { ...plastic, expansion: likeWater } });
  expect(swells.tightPressure === null ? 0 : inPsi(swells.tightPressure)).toBeCloseTo(60, 6);
  const rigid = pressureHold({ ...hold, wall: { ...plastic, expansion: 0 } });
  expect(rigid.tightPressure === null ? 0 : inPsi(rigid.tightPressure)).toBeGreaterThan(61);
});

test("a warmed tank climbs as its air does, in absolute pressure and temperature", () => {
  const { tightPressure } = pressureHold({
    ...line,
    pipeVolume: usGallons(0),
    endPressure: psi(60),
    tank,
    startTemperature: celsius(10),
    endTemperature: celsius(25),
  });
  const absolute = (psi(60) + tank.atmosphere) * (298.15 / 283.15);
  expect(tightPressure).toBeCloseTo(absolute - tank.atmosphere, -1);
});
