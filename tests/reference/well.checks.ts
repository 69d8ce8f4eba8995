import type {
  Area,
  Density,
  Duration,
  Length,
  Mass,
  MassPerLength,
  Transmissivity,
  Velocity,
  Volume,
  VolumeFlow,
} from "risingmain/units";
import {
  aquiferFromPlottedLine,
  aquiferLaw,
  casingVolume,
  cooperJacobDrawdown,
  drawdownAt,
  drawdownOfSchedule,
  dropPipeFixings,
  fitRecovery,
  fitStepTest,
  fitStraightLine,
  fitTheis,
  hangingLoad,
  intermittentSchedule,
  motorCooling,
  motorTorque,
  peakSupply,
  recuperation,
  residualDrawdown,
  sichardtRadius,
  singleTestLaw,
  specificCapacity,
  steadyFlowConfined,
  steadyFlowUnconfined,
  sustainableFlow,
  theisDrawdown,
  transmissivityFromTest,
  waterColumn,
  wellEfficiency,
  wellFunction,
} from "risingmain/well";
import type { Computation, Given } from "./register.ts";

const area = (diameter: number): Area => ((Math.PI / 4) * diameter * diameter) as Area;

function readings(given: Given) {
  const drawdown = given.list<Length>("drawdown");
  return {
    flow: given.si<VolumeFlow>("flow"),
    radius: given.si<Length>("radius"),
    readings: given.list<Duration>("time").map((time, i) => ({ time, drawdown: drawdown[i] as Length })),
    ...(given.has("from") && { from: given.si<Duration>("from") }),
  };
}

function aquifer(given: Given) {
  return {
    transmissivity: given.si<Transmissivity>("transmissivity"),
    storativity: given.si("storativity"),
    radius: given.si<Length>("radius"),
  };
}

function steps(given: Given) {
  const drawdown = given.list<Length>("endDrawdown");
  return { steps: given.list<VolumeFlow>("flow").map((flow, i) => ({ flow, drawdown: drawdown[i] as Length })) };
}

function plottedLine(given: Given) {
  return aquiferFromPlottedLine({
    flow: given.si<VolumeFlow>("flow"),
    drawdownPerLogCycle: given.si<Length>("drawdownPerLogCycle"),
    timeAtZero: given.si<Duration>("t0"),
    radius: given.si<Length>("radius"),
  });
}

/** The abscissa at which a rising function reaches a value, by halving. */
function inverse(f: (x: number) => number, value: number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 100; i++) {
    const middle = (a + b) / 2;
    if (f(middle) < value) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** How the published values of the well module are computed. */
export const computations: readonly Computation[] = [
  {
    ids: /wu-(fgo|exact|usgs|3|huisman).*|e1-handbook-\d_\d/,
    compute: (given) => {
      const u = given.record.inputs["u"]?.value;
      return { W: Array.isArray(u) ? given.list("u").map(wellFunction) : wellFunction(given.si("u")) };
    },
  },
  {
    ids: /e1-handbook-xex-10/,
    compute: (given) => ({ scaled: given.si("u") * Math.exp(given.si("u")) * wellFunction(given.si("u")) }),
  },
  {
    // Any aquifer will do: the share of the two drawdowns depends on u alone.
    ids: /wu-cooper-jacob-error/,
    compute: (given) => ({
      relativeError: given.list("u").map((u) => {
        const input = {
          flow: 0.001 as VolumeFlow,
          transmissivity: 0.001 as Transmissivity,
          storativity: 4e-4,
          radius: 1 as Length,
          time: (0.1 / u) as Duration,
        };
        return cooperJacobDrawdown(input).drawdown / theisDrawdown(input).drawdown - 1;
      }),
    }),
  },
  {
    ids: /theis-fgo-.*/,
    compute: (given) => ({
      ...theisDrawdown({
        flow: given.si<VolumeFlow>("flow"),
        transmissivity: given.si<Transmissivity>("transmissivity"),
        storativity: given.si("storativity"),
        radius: given.si<Length>("radius"),
        time: given.si<Duration>("time"),
      }),
    }),
  },
  {
    ids: /igw-19-drawdown/,
    compute: (given) => ({
      ...theisDrawdown({
        flow: given.si<VolumeFlow>("flow"),
        transmissivity: given.si<Transmissivity>("transmissivity"),
        storativity: given.si("storativity"),
        radius: given.si<Length>("wellRadius"),
        time: given.si<Duration>("time"),
      }),
    }),
  },
  {
    ids: /igw-19-sichardt/,
    compute: (given) => ({
      radius: sichardtRadius({
        drawdown: given.si<Length>("drawdown"),
        conductivity: given.si<Velocity>("conductivity"),
      }),
    }),
  },
  {
    ids: /cooper-jacob-fgo(-si)?|punmia-5-14-cooper-jacob|todd-cooper-jacob-by-hand/,
    compute: (given) => ({ ...plottedLine(given) }),
  },
  {
    // The flow and the slope are those that give the printed transmissivity.
    ids: /cooper-jacob-fgo-si-storativity/,
    compute: (given) => {
      const transmissivity = given.si("transmissivity");
      return {
        storativity: aquiferFromPlottedLine({
          flow: transmissivity as VolumeFlow,
          drawdownPerLogCycle: (Math.LN10 / (4 * Math.PI)) as Length,
          timeAtZero: given.si<Duration>("t0"),
          radius: given.si<Length>("radius"),
        }).storativity,
      };
    },
  },
  {
    // Transmissivity in gal/(d ft) for one gpm and one foot a cycle.
    ids: /jacob-us-constant-264/,
    compute: () => {
      const foot = 0.3048;
      const gallon = 231 * 0.0254 ** 3;
      const { transmissivity } = aquiferFromPlottedLine({
        flow: (gallon / 60) as VolumeFlow,
        drawdownPerLogCycle: foot as Length,
        timeAtZero: 60 as Duration,
        radius: 1 as Length,
      });
      const perDayAndFoot = (transmissivity * foot * 86_400) / gallon;
      return { constant: (perDayAndFoot * (gallon / 86_400)) / (gallon / 60) };
    },
  },
  {
    ids: /(fetter|todd)-cooper-jacob-fit/,
    compute: (given) => {
      const fit = fitStraightLine(readings(given));
      if (fit.state !== "line") throw new Error("no line");
      return { transmissivity: fit.transmissivity, storativity: fit.storativity };
    },
  },
  {
    ids: /(todd|fetter)-theis-fit/,
    compute: (given) => {
      const fit = fitTheis(readings(given));
      if (fit.state !== "fitted") throw new Error("no fit");
      return { transmissivity: fit.transmissivity, storativity: fit.storativity };
    },
  },
  {
    ids: /todd-recovery-fit/,
    compute: (given) => {
      const residual = given.list<Length>("residual");
      const fit = fitRecovery({
        flow: given.si<VolumeFlow>("flow"),
        pumpingTime: given.si<Duration>("pumpingTime"),
        readings: given
          .list<Duration>("sinceStop")
          .map((sinceStop, i) => ({ sinceStop, residual: residual[i] as Length })),
      });
      if (fit.state !== "line") throw new Error("no line");
      return { transmissivity: fit.transmissivity, residualPerLogCycle: fit.residualPerLogCycle };
    },
  },
  {
    ids: /intermittent-30-days/,
    compute: (given) => {
      const cycles = given.si("cycles");
      const cycleTime = given.si<Duration>("cycleTime");
      const runTime = given.si<Duration>("runTime");
      const changes = intermittentSchedule({ flow: given.si<VolumeFlow>("flow"), runTime, cycleTime, cycles });
      const at = (time: number): number =>
        drawdownOfSchedule({ aquifer: aquifer(given), changes, at: time as Duration });
      const lastStart = (cycles - 1) * cycleTime;
      return { afterDraw: at(lastStart + runTime), beforeDraw: at(lastStart) };
    },
  },
  {
    ids: /residual-after-a-day/,
    compute: (given) => ({
      residual: residualDrawdown({
        aquifer: aquifer(given),
        flow: given.si<VolumeFlow>("flow"),
        pumpingTime: given.si<Duration>("pumpingTime"),
        sinceStop: given.si<Duration>("sinceStop"),
      }),
    }),
  },
  {
    ids: /transmissivity-from-a-driller-test/,
    compute: (given) => {
      const test = transmissivityFromTest({
        flow: given.si<VolumeFlow>("flow"),
        drawdown: given.si<Length>("drawdown"),
        time: given.si<Duration>("time"),
        radius: given.si<Length>("radius"),
        storativity: given.si("storativity"),
      });
      if (test.state !== "known") throw new Error("none");
      return { transmissivity: test.transmissivity };
    },
  },
  {
    ids: /sustainable-flow-100-days/,
    compute: (given) => ({
      flow: sustainableFlow({
        aquifer: aquifer(given),
        wellLoss: given.si("wellLoss"),
        drawdown: given.si<Length>("drawdown"),
        time: given.si<Duration>("time"),
      }).flow,
    }),
  },
  {
    ids: /punmia-5-18-jacob/,
    compute: (given) => ({
      drawdown: cooperJacobDrawdown({
        flow: given.si<VolumeFlow>("flow"),
        transmissivity: (given.si("conductivity") * given.si("thickness")) as Transmissivity,
        storativity: given.si("storativity"),
        radius: given.si<Length>("radius"),
        time: given.si<Duration>("time"),
      }).drawdown,
    }),
  },
  {
    ids: /punmia-5-2-recuperation/,
    compute: (given) => {
      const well = recuperation({
        area: area(given.si("diameter")),
        firstDrawdown: given.si<Length>("initialDepression"),
        laterDrawdown: (given.si("initialDepression") - given.si("recovered")) as Length,
        time: given.si<Duration>("time"),
      });
      return {
        specificCapacityPerArea: well.specificCapacity / area(given.si("diameter")),
        yield: well.specificCapacity * given.si("workingDepression"),
      };
    },
  },
  {
    // Yield is in proportion to the area: the diameter follows from that of a well of one square metre.
    ids: /punmia-5-22-diameter/,
    compute: (given) => {
      const { specificCapacity: ofSquareMetre } = recuperation({
        area: 1 as Area,
        firstDrawdown: given.si<Length>("initialDepression"),
        laterDrawdown: (given.si("initialDepression") - given.si("recovered")) as Length,
        time: given.si<Duration>("time"),
      });
      const squareMetres = given.si("yield") / (ofSquareMetre * given.si("workingDepression"));
      return { diameter: Math.sqrt((4 * squareMetres) / Math.PI) };
    },
  },
  {
    ids: /punmia-5-7-diameter-effect/,
    compute: (given) => {
      const flow = (radius: string): number =>
        steadyFlowConfined({
          transmissivity: (given.si("conductivity") * given.si("thickness")) as Transmissivity,
          drawdown: given.si<Length>("drawdown"),
          wellRadius: given.si<Length>(radius),
          influenceRadius: given.si<Length>("influence"),
        });
      return { increase: flow("radius2") / flow("radius1") - 1 };
    },
  },
  {
    ids: /punmia-5-6-tubewell/,
    compute: (given) => ({
      yield: steadyFlowConfined({
        transmissivity: (given.si("conductivity") * given.si("thickness")) as Transmissivity,
        drawdown: given.si<Length>("drawdown"),
        wellRadius: given.si<Length>("radius"),
        influenceRadius: sichardtRadius({
          drawdown: given.si<Length>("drawdown"),
          conductivity: given.si<Velocity>("conductivity"),
        }),
      }),
    }),
  },
  {
    // Two equal wells: drawdowns add, ln(R/r) + ln(R/L), as of one well with the circle R²/L.
    ids: /punmia-5-11-interference/,
    compute: (given) => {
      const influence = given.si("influence");
      const flow = (influenceRadius: number): number =>
        steadyFlowConfined({
          transmissivity: (given.si("conductivity") * given.si("thickness")) as Transmissivity,
          drawdown: given.si<Length>("drawdown"),
          wellRadius: given.si<Length>("radius"),
          influenceRadius: influenceRadius as Length,
        });
      return { aloneYield: flow(influence), togetherYield: flow((influence * influence) / given.si("spacing")) };
    },
  },
  {
    ids: /punmia-5-16-unconfined-scaling/,
    compute: (given) => {
      const flow = (drawdown: string): number =>
        steadyFlowUnconfined({
          conductivity: 1e-4 as Velocity,
          saturatedThickness: given.si<Length>("saturated"),
          drawdown: given.si<Length>(drawdown),
          wellRadius: 0.1 as Length,
          influenceRadius: 300 as Length,
        });
      return { flow2: (given.si("flow") * flow("drawdown2")) / flow("drawdown1") };
    },
  },
  {
    // Between the observation wells the outer one is the circle of influence; then the inner one is.
    ids: /punmia-5-20-unconfined-k/,
    compute: (given) => {
      const H = given.si("saturated");
      const [s1, s2] = [given.si("s1"), given.si("s2")];
      const flow = (
        conductivity: number,
        saturated: number,
        drawdown: number,
        radius: string,
        circle: string,
      ): number =>
        steadyFlowUnconfined({
          conductivity: conductivity as Velocity,
          saturatedThickness: saturated as Length,
          drawdown: drawdown as Length,
          wellRadius: given.si<Length>(radius),
          influenceRadius: given.si<Length>(circle),
        });
      const conductivity = given.si("flow") / flow(1, H - s2, s1 - s2, "r1", "r2");
      const beyond = inverse((s) => flow(conductivity, H - s1, s, "wellRadius", "r1"), given.si("flow"), 0, H - s1);
      return { transmissivity: conductivity * H, wellDrawdown: s1 + beyond };
    },
  },
  {
    ids: /jacob-well-loss-square/,
    compute: (given) => {
      const law = { aquiferLoss: 0, wellLoss: 1e6 };
      return {
        lossRatio:
          drawdownAt(law, (0.001 * given.si("flowRatio")) as VolumeFlow) / drawdownAt(law, 0.001 as VolumeFlow),
      };
    },
  },
  {
    ids: /clark-step-test-end-of-step/,
    compute: (given) => {
      const { aquiferLoss, wellLoss } = fitStepTest(steps(given));
      return { B: aquiferLoss, C: wellLoss };
    },
  },
  {
    ids: /well-efficiency-clark/,
    compute: (given) => ({
      efficiency: wellEfficiency({ aquiferLoss: given.si("B"), wellLoss: given.si("C") }, given.si<VolumeFlow>("flow")),
    }),
  },
  {
    // Transmissivity over specific capacity, which is T times B.
    ids: /specific-capacity-driscoll-confined/,
    compute: (given) => {
      const transmissivity = given.si<Transmissivity>("transmissivity");
      const law = aquiferLaw({
        transmissivity,
        storativity: given.si("storativity"),
        radius: given.si<Length>("radius"),
        time: given.si<Duration>("time"),
      });
      return { factor: transmissivity * law.aquiferLoss };
    },
  },
  {
    ids: /specific-capacity-200-40/,
    compute: (given) => ({
      specificCapacity: specificCapacity({
        flow: given.si<VolumeFlow>("flow"),
        drawdown: given.si<Length>("drawdown"),
      }),
    }),
  },
  {
    ids: /specific-capacity-20-40-scaled/,
    compute: (given) => {
      const test = { flow: given.si<VolumeFlow>("flow"), drawdown: given.si<Length>("drawdown") };
      return {
        specificCapacity: specificCapacity(test),
        newDrawdown: drawdownAt(singleTestLaw(test), given.si<VolumeFlow>("newFlow")),
      };
    },
  },
  {
    ids: /casing-storage-.*/,
    compute: (given) => ({
      storage: casingVolume({ insideDiameter: given.si<Length>("diameter"), length: 1 as Length }),
    }),
  },
  {
    ids: /gw-project-storage-box/,
    compute: (given) => {
      const column = waterColumn({ wellDepth: given.si<Length>("depth"), waterLevel: given.si<Length>("staticLevel") });
      const storage = casingVolume({
        insideDiameter: given.si<Length>("diameter"),
        length: (column - given.si("pumpAllowance")) as Length,
      });
      const day = 86_400 as Duration;
      return {
        demand: peakSupply({
          storage: 0 as Volume,
          inflow: (given.si("people") * given.si("perPerson")) as VolumeFlow,
          period: day,
        }),
        storage,
        supply: peakSupply({
          storage,
          inflow: given.si<VolumeFlow>("yield"),
          period: given.si<Duration>("peakPeriod"),
        }),
      };
    },
  },
  {
    ids: /recovery-rate-6in/,
    compute: (given) => ({
      inflow: recuperation({
        area: area(given.si("diameter")),
        firstDrawdown: (given.si("rise") + 1) as Length,
        laterDrawdown: 1 as Length,
        time: given.si<Duration>("time"),
      }).meanInflow,
    }),
  },
  {
    // The volume of a day, as a flow.
    ids: /low-yield-1gpm-day/,
    compute: (given) => {
      const day = 86_400 as Duration;
      const volume = peakSupply({ storage: 0 as Volume, inflow: given.si<VolumeFlow>("yield"), period: day });
      return { volume: volume / day };
    },
  },
  {
    ids: /cooling-flow-.*/,
    compute: (given) => ({
      flow: motorCooling({
        flow: 0 as VolumeFlow,
        casingInsideDiameter: given.si<Length>("casingId"),
        motorDiameter: given.si<Length>("motorOd"),
        leastVelocity: given.si<Velocity>("velocity"),
      }).leastFlow,
    }),
  },
  {
    ids: /cooling-velocity-4in-6in/,
    compute: () => {
      const wanted = (inches: number): number =>
        motorCooling({
          flow: 0 as VolumeFlow,
          casingInsideDiameter: 0.4 as Length,
          motorDiameter: (inches * 0.0254) as Length,
        }).leastVelocity;
      return { velocity4in: wanted(3.75), velocity6to8in: wanted(5.5) };
    },
  },
  {
    ids: /check-valve-layout-750ft/,
    compute: (given) => {
      const { checkValves } = dropPipeFixings({
        pumpSetting: given.si<Length>("wellDepth"),
        pumpingLevel: given.si<Length>("waterLevel"),
        valveAboveLevel: given.si<Length>("firstAbovePumpingLevel"),
        valveSpacing: given.si<Length>("spacing"),
      });
      const [, second, third, fourth, fifth, ...more] = checkValves as readonly number[];
      if (more.length > 0) throw new Error("more valves than the layout has");
      return { second: second ?? 0, third: third ?? 0, fourth: fourth ?? 0, fifth: fifth ?? 0 };
    },
  },
  {
    ids: /drop-pipe-load/,
    compute: (given) => ({
      load:
        hangingLoad({
          pumpMass: given.si<Mass>("pumpAndMotor"),
          insideDiameter: given.si<Length>("pipeInsideDiameter"),
          outsideDiameter: (given.si("pipeInsideDiameter") * 1.25) as Length,
          pipeMass: given.si<MassPerLength>("pipeWeightPerFoot"),
          cableMass: given.si<MassPerLength>("cablePerFoot"),
          pumpSetting: given.si<Length>("setting"),
          density: 1000 as Density,
        }).lifting / 9.80665,
    }),
  },
  {
    ids: /torque-reaction/,
    compute: (given) => {
      const torque = motorTorque({
        power: given.si("power"),
        speed: given.si("speed"),
        startingMultiple: given.si("startingMultiple"),
      });
      return { runningTorque: torque.running, startingTorque: torque.starting };
    },
  },
];
