import {
  type AcceptanceGrade,
  acceptanceTolerance,
  curveAtSpeed,
  curvesInParallel,
  curvesInSeries,
  dutyAtSpeed,
  hydraulicPower,
  operatingPoint,
  type PumpCurve,
  pumpCurve,
  pumpFlowAt,
  pumpHeadAt,
  pumpingEnergy,
  pumpPower,
  pumpTemperatureRise,
  runningCost,
  specificSpeed,
  speedFor,
} from "risingmain/pump";
import type { Density, Duration, Frequency, Length, Power, Ratio, Volume, VolumeFlow } from "risingmain/units";
import type { Computation, Given } from "./register.ts";

const GRAVITY = 9.80665;
const POUND_PER_CUBIC_FOOT = 0.45359237 / 0.3048 ** 3;
/** Water at about 60 °F, where a source gives no density. */
const WATER = 999 as Density;

/** A curve H = a − b Q² given by its coefficients, through points of it. */
function parabola(a: number, b: number, end: number): PumpCurve {
  const points = [0, 0.25, 0.5, 0.75, 1].map((share) => {
    const flow = share * end;
    return { flow: flow as VolumeFlow, head: (a - b * flow * flow) as Length };
  });
  return pumpCurve({ points });
}

function tabled(given: Given, flow: string, head: string): PumpCurve {
  const heads = given.list<Length>(head);
  return pumpCurve({ points: given.list<VolumeFlow>(flow).map((q, i) => ({ flow: q, head: heads[i] as Length })) });
}

function running(curve: PumpCurve, systemHead: (flow: VolumeFlow) => number) {
  const point = operatingPoint({ curve, systemHead: systemHead as (flow: VolumeFlow) => Length });
  if (point.state !== "running") throw new Error(point.state);
  return { flow: point.flow, head: point.head };
}

/** Friction of two pipes by Darcy's equation with the factors the problem gives. */
function twoPipes(given: Given): (flow: VolumeFlow) => number {
  const constant = (side: string): number => {
    const area = (Math.PI / 4) * given.si(`${side}Diameter`) ** 2;
    return (given.si(`${side}F`) * given.si(`${side}Length`)) / given.si(`${side}Diameter`) / (2 * GRAVITY * area ** 2);
  };
  const k = constant("suction") + constant("discharge");
  return (flow) => given.si("staticHead") + k * flow * flow;
}

function similar(given: Given) {
  const at = dutyAtSpeed({
    flow: given.si<VolumeFlow>("flow1"),
    head: given.si<Length>("head1"),
    power: given.si<Power>("power1"),
    speedRatio: (given.si("speed2") / given.si("speed1")) as Ratio,
  });
  return { flow2: at.flow, head2: at.head, power2: at.power };
}

function motorPump(given: Given, density: Density) {
  return pumpPower({
    flow: given.si<VolumeFlow>("flow"),
    head: given.si<Length>("head"),
    density,
    pumpEfficiency: given.si<Ratio>("pumpEfficiency"),
    motorEfficiency: given.has("motorEfficiency") ? given.si<Ratio>("motorEfficiency") : (1 as Ratio),
    driveEfficiency: given.has("driveEfficiency") ? given.si<Ratio>("driveEfficiency") : (1 as Ratio),
  });
}

/** A price printed per kilowatt-hour, whatever its currency. */
const price = (given: Given): number => Number(given.record.inputs["price"]?.value);

/** Speed, flow and head of one stage, as a record gives them. */
const speeds = (given: Given, head = "head") =>
  specificSpeed({
    speed: given.si<Frequency>("speed"),
    flow: given.si<VolumeFlow>("flow"),
    head: given.si<Length>(head),
  });

/** How the published values of the pump module are computed. */
export const computations: readonly Computation[] = [
  {
    // gpm times feet over horsepower, for water of the weight the source takes.
    ids: /whp-divisor-39(60|56)/,
    compute: (given) => {
      const gallon = 231 * 0.0254 ** 3;
      const density = given.has("poundsPerGallon") ? given.si("poundsPerGallon") : given.si("specificWeight");
      const flow = (gallon / 60) as VolumeFlow;
      const head = 0.3048 as Length;
      return { divisor: (flow * head) / hydraulicPower({ flow, head, density: density as Density }) };
    },
  },
  {
    ids: /kw-divisor-102/,
    compute: (given) => ({
      power: hydraulicPower({
        flow: given.si<VolumeFlow>("flow"),
        head: given.si<Length>("head"),
        density: 1000 as Density,
      }),
    }),
  },
  {
    ids: /water-horsepower-.*/,
    compute: (given) => ({
      waterPower: hydraulicPower({
        flow: given.si<VolumeFlow>("flow"),
        head: given.si<Length>("head"),
        density: given.si<Density>("density"),
      }),
    }),
  },
  {
    // The system's table, joined by straight lines; motors of the source's answer.
    ids: /bhp-sludge-operating-point/,
    compute: (given) => {
      const flows = given.list("pumpFlow");
      const heads = given.list("systemHead");
      const system = (flow: number): number => {
        const next = Math.max(
          1,
          flows.findIndex((q) => q >= flow),
        );
        const [q0, q1, h0, h1] = [flows[next - 1], flows[next], heads[next - 1], heads[next]] as [
          number,
          number,
          number,
          number,
        ];
        return h0 + ((h1 - h0) * (flow - q0)) / (q1 - q0);
      };
      const point = running(tabled(given, "pumpFlow", "pumpHead"), system);
      const { shaftPower } = pumpPower({
        ...point,
        density: 1000 as Density,
        pumpEfficiency: given.si<Ratio>("pumpEfficiency"),
        motorEfficiency: 1 as Ratio,
      });
      const horsepower = 745.6998715822702;
      const motor = [5, 7.5, 10].find((size) => size * horsepower * given.si("serviceFactor") >= shaftPower) ?? 0;
      return { ...point, brakeHorsepower: shaftPower, smallestMotor: motor * horsepower };
    },
  },
  { ids: /affinity-solved-7-33|crane-7-33/, compute: similar },
  {
    ids: /affinity-fox-shutoff-bep/,
    compute: (given) => {
      const curve = pumpCurve({
        points: [
          { flow: 0 as VolumeFlow, head: given.si<Length>("shutoffHead1") },
          { flow: given.si<VolumeFlow>("bepFlow1"), head: given.si<Length>("bepHead1") },
        ],
      });
      const fast = curveAtSpeed(curve, (given.si("speed2") / given.si("speed1")) as Ratio);
      return { shutoffHead2: fast.shutoffHead, bepFlow2: fast.runoutFlow, bepHead2: fast.runoutHead };
    },
  },
  { ids: /specific-speed-fox/, compute: (given) => ({ specificSpeedUS: speeds(given).us }) },
  { ids: /daugherty-17-2-specific-speed/, compute: (given) => ({ specificSpeed: speeds(given).us }) },
  {
    ids: /specific-speed-us-to-si/,
    compute: () => {
      const any = specificSpeed({ speed: 29 as Frequency, flow: 0.01 as VolumeFlow, head: 20 as Length });
      return { ratio: any.us / any.dimensionless };
    },
  },
  {
    // Specific speed is in proportion to the speed.
    ids: /daugherty-17-1-min-speed/,
    compute: (given) => {
      const { us } = specificSpeed({
        speed: 1 as Frequency,
        flow: given.si<VolumeFlow>("flow"),
        head: given.si<Length>("head"),
      });
      return { speed: given.si("specificSpeedMin") / us };
    },
  },
  {
    ids: /schaschke-9-12-suction-specific-speed/,
    compute: (given) => {
      // The book counts revolutions, not radians: n √Q / (g H)^¾.
      return { suctionSpecificSpeed: speeds(given, "npsh").dimensionless / (2 * Math.PI) };
    },
  },
  {
    ids: /op-point-cengel-style/,
    compute: (given) => {
      const [H0, a] = [given.si("shutoffHead"), given.si("a")];
      const curve = parabola(H0, a, Math.sqrt(H0 / a) * (1 - 1e-12));
      return running(curve, (q) => given.si("staticLift") + given.si("b") * q * q);
    },
  },
  {
    ids: /op-point-290ft-(single|two-series|two-parallel)/,
    compute: (given) => {
      const [H0, c] = [given.si("curveConstant"), given.si("curveCoefficient")];
      const one = parabola(H0, c, Math.sqrt(H0 / c) * (1 - 1e-12));
      const set = given.record.id.endsWith("series")
        ? curvesInSeries([one, one])
        : given.record.id.endsWith("parallel")
          ? curvesInParallel([one, one])
          : one;
      const point = running(set, twoPipes(given));
      return { ...point, flowGpm: point.flow };
    },
  },
  {
    ids: /maurer-pump-ex-7-operating-point/,
    compute: (given) => {
      const [H0, c] = [given.si("shutoffHead"), given.si("curveCoefficient")];
      const curve = parabola(H0, c, Math.sqrt(H0 / c) * (1 - 1e-12));
      return running(curve, (q) => given.si("staticHead") + given.si("systemK") * q * q);
    },
  },
  {
    ids: /series-curve-reviewpe/,
    compute: (given) => {
      const one = tabled(given, "flow", "singleHead");
      const set = curvesInSeries([one, one]);
      return { seriesHead: given.list<VolumeFlow>("flow").map((flow) => pumpHeadAt(set, flow)) };
    },
  },
  {
    ids: /parallel-curve-reviewpe/,
    compute: (given) => {
      const one = tabled(given, "singleFlow", "head");
      const set = curvesInParallel([one, one]);
      return {
        parallelFlow: given.list<Length>("head").map((head) => {
          const at = pumpFlowAt(set, head);
          return at.state === "delivers" ? at.flow : 0;
        }),
      };
    },
  },
  {
    ids: /schaschke-9-10-duty/,
    compute: (given) =>
      running(tabled(given, "pumpFlow", "pumpHead"), (q) => given.si("static") + given.si("k") * q * q),
  },
  {
    ids: /schaschke-9-10-speed-consistent/,
    compute: (given) => {
      const at = speedFor({
        curve: tabled(given, "pumpFlow", "pumpHead"),
        flow: given.si<VolumeFlow>("flowWanted"),
        head: given.si<Length>("headWanted"),
      });
      if (at.state !== "runs") throw new Error(at.state);
      return { speed2: at.speed * given.si("speed"), similarFlow: at.similarFlow };
    },
  },
  {
    ids: /bhp-solved-7-34/,
    compute: (given) => ({ brakeHorsepower: motorPump(given, given.si<Density>("specificWeight")).shaftPower }),
  },
  {
    ids: /wire-hp-solved-7-34/,
    compute: (given) => {
      const { electricalPower } = motorPump(given, (62.364 * POUND_PER_CUBIC_FOOT) as Density);
      const { cost } = runningCost({
        electricalPower,
        runTime: given.si<Duration>("hoursPerYear"),
        pricePerKilowattHour: price(given),
      });
      return { wireHorsepower: electricalPower, annualCost: cost };
    },
  },
  {
    ids: /crane-7-34/,
    compute: (given) => {
      const { shaftPower, electricalPower } = motorPump(given, given.si<Density>("density"));
      const { cost } = runningCost({
        electricalPower,
        runTime: given.si<Duration>("hours"),
        pricePerKilowattHour: price(given),
      });
      return { brakePower: shaftPower, electricPower: electricalPower, yearlyCost: cost };
    },
  },
  {
    ids: /ti814-bhp-combined-efficiency/,
    compute: (given) => ({
      power: pumpPower({
        flow: given.si<VolumeFlow>("flow"),
        head: given.si<Length>("head"),
        density: WATER,
        pumpEfficiency: given.si<Ratio>("combinedEfficiency"),
        motorEfficiency: 1 as Ratio,
      }).electricalPower,
    }),
  },
  {
    ids: /iso9906-grade-\d[ueb]/,
    compute: (given) => {
      const grade = given.record.id.slice(-2).toUpperCase() as AcceptanceGrade;
      const allowed = acceptanceTolerance({ grade });
      return {
        flowLow: allowed.flowLow,
        flowHigh: allowed.flowHigh,
        headLow: allowed.headLow,
        headHigh: allowed.headHigh,
        efficiencyLow: allowed.efficiencyLow ?? Number.MAX_VALUE,
        powerHigh: allowed.powerHigh ?? Number.MAX_VALUE,
      };
    },
  },
  {
    ids: /iso9906-small-pumps/,
    compute: (given) => {
      const allowed = acceptanceTolerance({ grade: "small pump", shaftPower: given.si<Power>("power") });
      return { flowTolerance: allowed.flowHigh, headTolerance: allowed.headHigh };
    },
  },
  {
    ids: /iso9906-small-pump-efficiency/,
    compute: (given) => ({
      efficiencyTolerance:
        acceptanceTolerance({ grade: "small pump", shaftPower: given.si<Power>("power") }).efficiencyLow ??
        Number.MAX_VALUE,
    }),
  },
  {
    ids: /min-flow-thermal-rise/,
    compute: (given) => ({
      temperatureRise: pumpTemperatureRise({
        head: given.si<Length>("head"),
        efficiency: given.si<Ratio>("efficiency"),
      }),
    }),
  },
  {
    // The pump's share of 15 kW at the motor; the printed rise is a difference, the unit table's degC a temperature.
    ids: /cengel-ex-5-12/,
    compute: (given) => {
      const density = 1000 as Density;
      const head = ((given.si("p2") - given.si("p1")) / (density * GRAVITY)) as Length;
      const water = hydraulicPower({ flow: given.si<VolumeFlow>("flow"), head, density });
      const pumpEfficiency = (water / (given.si("motorPower") * given.si("motorEfficiency"))) as Ratio;
      return {
        pumpEfficiency,
        temperatureRise: 273.15 + pumpTemperatureRise({ head, efficiency: pumpEfficiency }),
      };
    },
  },
  {
    // Water power is in proportion to the flow.
    ids: /cengel-ex-5-15/,
    compute: (given) => {
      const density = given.si<Density>("density");
      const head = (given.si("lift") + given.si("headLoss")) as Length;
      const ofOne = hydraulicPower({ flow: 1 as VolumeFlow, head, density });
      const flow = (given.si("shaftPower") * given.si("efficiency")) / ofOne;
      return { flow, pressureRise: ofOne };
    },
  },
  {
    // The water leaves the pipe at its speed: that head is lifted too.
    ids: /natarajan-ex-5-9/,
    compute: (given) => {
      const flow = given.si<VolumeFlow>("flow");
      const velocity = flow / ((Math.PI / 4) * given.si("diameter") ** 2);
      const head = (given.si("lift") + velocity ** 2 / (2 * GRAVITY)) as Length;
      return { power: hydraulicPower({ flow, head, density: given.si<Density>("density") }) };
    },
  },
  {
    // Head between the gauges: pressures, their heights, and the gain of velocity head.
    ids: /pao-ex-4-11/,
    compute: (given) => {
      const flow = given.si<VolumeFlow>("flow");
      const weight = given.si("specificWeight");
      const velocityHead = (diameter: number): number => (flow / ((Math.PI / 4) * diameter ** 2)) ** 2 / (2 * GRAVITY);
      const head =
        (given.si("dischargePressure") - given.si("suctionPressure")) / weight +
        given.si("gaugeDifference") +
        velocityHead(given.si("dischargeDiameter")) -
        velocityHead(given.si("suctionDiameter"));
      return { power: hydraulicPower({ flow, head: head as Length, density: (weight / GRAVITY) as Density }) };
    },
  },
  {
    ids: /kwh-per-1000gal/,
    compute: (given) => ({
      energy: pumpingEnergy({
        volume: 1 as Volume,
        head: given.si<Length>("head"),
        density: WATER,
        wireToWater: given.si<Ratio>("wireToWater"),
      }),
    }),
  },
  {
    ids: /kwh-per-acre-foot/,
    compute: (given) => ({
      energy: pumpingEnergy({
        volume: 1 as Volume,
        head: given.si<Length>("head"),
        density: WATER,
        wireToWater: given.si<Ratio>("overallEfficiency"),
      }),
    }),
  },
  {
    // A volume a day gives an energy a day.
    ids: /solar-hydraulic-energy/,
    compute: (given) => ({
      hydraulicEnergy:
        pumpingEnergy({
          volume: (given.si("volume") * 86_400) as Volume,
          head: given.si<Length>("head"),
          density: 1000 as Density,
          wireToWater: 1 as Ratio,
        }) / 86_400,
    }),
  },
  {
    // An acre-inch lifted, over the criterion of 12.5 water horsepower-hours a gallon; 2.31 ft of head a psi.
    ids: /nebraska-diesel-acre-inch/,
    compute: (given) => {
      const [foot, psi, horsepowerHour] = [0.3048, 6894.757293168361, 745.6998715822702 * 3600];
      const gallon = 231 * 0.0254 ** 3;
      const pressures = given.list("pressure");
      return {
        diesel: given.list("lift").map((lift, i) => {
          const head = (lift + ((pressures[i] as number) / psi) * 2.31 * foot) as Length;
          const energy = pumpingEnergy({ volume: 1 as Volume, head, density: WATER, wireToWater: 1 as Ratio });
          // Per volume of an acre-inch over an area of an acre: energy of a cubic metre is per 1 m over 1 m².
          return (energy / horsepowerHour / 12.5) * gallon;
        }),
      };
    },
  },
  {
    ids: /uga-performance/,
    compute: (given) => {
      const waterHorsepower = hydraulicPower({
        flow: given.si<VolumeFlow>("flow"),
        head: given.si<Length>("head"),
        density: WATER,
      });
      const performance = waterHorsepower / given.si("fuel");
      return { waterHorsepower, performance, rating: performance / given.si("criterion") };
    },
  },
];
