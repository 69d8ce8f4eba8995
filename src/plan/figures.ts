/**
 * The numbers of each stage as a reader wants them: a label and a measure.
 *
 * @module
 */
import { perDay } from "../units/index.ts";
import { type Measure, type MeasureKind, measure } from "./measure.ts";
import type { PlanStages } from "./stages.ts";

/** A number with its label; or a text, where a stage holds a name. */
export interface Figure {
  /** What it is. */
  readonly label: string;
  /** The number, or the text. */
  readonly value: Measure | string;
}

/** A stage as a heading and figures. */
export interface StageFigures {
  /** Heading. */
  readonly title: string;
  /** The figures. */
  readonly figures: readonly Figure[];
}

const num = (label: string, kind: MeasureKind, value: number): Figure => ({ label, value: measure(kind, value) });
const text = (label: string, value: string): Figure => ({ label, value });
const by = (who: "job" | "plan"): string => (who === "job" ? "as given" : "sized by the plan");

/** The stages of a plan as figures, in the order of the work. Pipe runs, uses and cables have tables of their own. */
export function stageFigures(stages: PlanStages): readonly StageFigures[] {
  const { site, demand, well, layout, pump, dropPipe, controls, tank, day, power, disinfection } = stages;
  return [
    {
      title: "Demand",
      figures: [
        ...(demand.daily === null
          ? []
          : [
              num("Water in a day", "volume", demand.daily.volume),
              ...demand.daily.parts.map(({ name, volume }) => num(`of it: ${name}`, "volume", volume)),
            ]),
        num("The well gives in a day", "volume", demand.yieldPerDay),
        num(`Most at once ("${demand.governingUse}")`, "flow", demand.designFlow),
      ],
    },
    {
      title: "Well",
      figures: [
        num("Air pressure at the site, absolute", "pressure", site.atmosphere),
        num("Water temperature", "temperature", site.water.temperature),
        num("Depth to water at rest", "length", well.staticLevel),
        num("Drawdown at the duty flow", "length", well.drawdown),
        num("Depth to water at the duty flow", "length", well.pumpingLevel),
        num("Specific capacity", "specificCapacity", well.specificCapacity),
        num("Water standing in the hole", "volume", well.standingWater),
      ],
    },
    {
      title: "Pump",
      figures: [
        num("Duty flow", "flow", pump.dutyFlow),
        num("Total dynamic head at it", "length", pump.duty.totalDynamicHead),
        num("of it: water at rest to ground", "length", pump.duty.parts.staticLevel),
        num("of it: drawdown", "length", pump.duty.parts.drawdown),
        num("of it: ground to tank", "length", pump.duty.parts.elevation),
        num("of it: pressure at the tank", "length", pump.duty.parts.dischargePressure),
        num("of it: pipe, fittings and valves", "length", pump.duty.parts.losses),
        num(`Depth of the intake (${by(pump.settingBy)})`, "length", pump.setting),
        num("Shallowest good intake", "length", pump.settingChecks.shallowest),
        num("Deepest good intake", "length", pump.settingChecks.deepest),
        num("Lowest water, at the most flow", "length", pump.lowestLevel),
        num("Water over the intake then", "length", pump.settingChecks.submergence),
        ...(pump.chosen === null
          ? []
          : [
              text("Pump", pump.chosen.name),
              ...(pump.chosen.atCutIn === null ? [] : [num("Flow at cut-in", "flow", pump.chosen.atCutIn.flow)]),
              ...(pump.chosen.atCutOut === null
                ? []
                : [
                    num(
                      controls.setPressure === null ? "Flow at cut-out" : "Flow at cut-out, valve open",
                      "flow",
                      pump.chosen.atCutOut.flow,
                    ),
                  ]),
              num(
                "Pressure at the tank against a closed valve, water at its highest",
                "pressure",
                pump.chosen.shutoffPressure,
              ),
              num("Velocity past the motor at the least long flow", "velocity", pump.chosen.cooling.velocity),
              ...(pump.chosen.cooling.sleeve === "not needed"
                ? []
                : [num("Flow sleeve: widest inside diameter", "diameter", pump.chosen.cooling.greatestSleeve)]),
            ]),
      ],
    },
    {
      title: "Drop pipe",
      figures: [
        text("Pipe", `${dropPipe.pipe.name} (${by(dropPipe.pipeBy)})`),
        num("Inside diameter", "diameter", dropPipe.pipe.insideDiameter),
        num("Length", "length", dropPipe.length),
        num("Velocity at the duty flow", "velocity", dropPipe.velocity),
        num("Head lost at the duty flow", "length", dropPipe.headLoss),
        num("Highest pressure, at its lower end", "pressure", dropPipe.highestPressure),
        ...(dropPipe.pressureRating === null
          ? []
          : [num("Rated for, at the water's temperature", "pressure", dropPipe.pressureRating)]),
        ...(dropPipe.hangingLoad === null ? [] : [num("Pull on the hoist, pipe full", "force", dropPipe.hangingLoad)]),
        ...dropPipe.fixings.checkValves.map((depth, i) =>
          num(i === 0 ? "Check valve, the pump's own" : "Check valve above it", "length", depth),
        ),
        num("Guides on the pipe", "count", dropPipe.fixings.guides),
        num("Ties of the cable", "count", dropPipe.fixings.ties),
      ],
    },
    {
      title: "Controls",
      figures: [
        num("Cut-in", "pressure", controls.cutIn),
        num("Cut-out", "pressure", controls.cutOut),
        ...(controls.setPressure === null ? [] : [num("Regulating valve holds", "pressure", controls.setPressure)]),
        ...controls.held.map(({ use, held }) =>
          held.state === "holds"
            ? num(`held during "${use}"`, "pressure", held.pressure)
            : text(`during "${use}"`, held.state),
        ),
        ...(controls.reliefPressure === null
          ? []
          : [num("Relief valve opens at", "pressure", controls.reliefPressure)]),
        ...(controls.reliefCapacity === null ? [] : [num("Flow it must pass there", "flow", controls.reliefCapacity)]),
        num("Least pressure at the tank that serves every use", "pressure", layout.tankPressureNeeded),
      ],
    },
    {
      title: "Tank",
      figures: [
        num(`Volume (${by(tank.volumeBy)})`, "volume", tank.volume),
        num("Precharge", "pressure", tank.precharge),
        num("Water from cut-out to cut-in", "volume", tank.drawdown.usable),
        ...(tank.fillTime === null ? [] : [num("Time to fill from cut-in to cut-out", "shortTime", tank.fillTime)]),
        ...(tank.worst === null
          ? []
          : [
              num("Most starts, at the worst use", "startsPerHour", tank.worst.starts),
              num("that worst use", "flow", tank.worst.demand),
            ]),
      ],
    },
    ...(day === null
      ? []
      : [
          {
            title: "A day of use",
            figures: [
              text("How the water is drawn", `the day's water in ${day.draws} equal draws, the uses in turn`),
              num("Starts of the pump", "startsPerDay", perDay(day.starts)),
              num("Time it runs", "time", day.runTime),
              ...(day.shortestRun === null ? [] : [num("Its shortest run", "shortTime", day.shortestRun)]),
              num("Water delivered", "volume", day.delivered),
              ...(day.energy === null ? [] : [num("Energy from the supply", "energy", day.energy)]),
            ],
          },
        ]),
    ...(power === null
      ? []
      : [
          {
            title: "Power",
            figures: [
              num("Full-load current", "current", power.fullLoadCurrent),
              num("Current as it starts", "current", power.lockedRotorCurrent),
              num("Conductors must carry", "current", power.conductorAmpacity),
              num("Breaker, at most (motor circuit, with overload protection)", "current", power.highestBreaker),
              text("Equipment grounding conductor, at least", power.groundingSize),
              num("Power drawn at the full-load current", "power", power.inputPower),
              num("Voltage lost while running", "voltage", power.drop),
              num("as a share of the source", "ratio", power.dropShare),
              ...power.sources.map(({ name, runningVoltage }) =>
                num(`At the motor while running, on the ${name}`, "voltage", runningVoltage),
              ),
            ],
          },
        ]),
    {
      title: "Disinfection",
      figures: [
        num("Water to treat", "volume", disinfection.treated.total),
        num("of it: in the hole", "volume", disinfection.treated.well),
        num("of it: in the pipes", "volume", disinfection.treated.pipes + disinfection.treated.dropPipe),
        num("of it: in the tank", "volume", disinfection.treated.tank),
        num("Bleach", "smallVolume", disinfection.dose.bleach),
        text("Stand before flushing", "12 to 24 hours, or what the health department says (common practice)"),
        num("Time to pump that water out once, at the duty flow", "time", disinfection.flushTime),
      ],
    },
  ];
}
