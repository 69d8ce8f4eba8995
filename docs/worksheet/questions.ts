/**
 * What the worksheet asks, in the order the installer learns the answers. Each key is the place of the answer in the
 * job document; what a wrong answer is, the library says.
 *
 * @module
 */
import { necChapter9Table8 } from "../../src/conductor/index.ts";
import { LIVESTOCK } from "../../src/demand/livestock-table.ts";
import { namedFittings } from "../../src/fittings/index.ts";
import { receptacleRatings } from "../../src/generator/index.ts";
import { codeLetterRanges } from "../../src/motor/index.ts";
import { listPipes } from "../../src/pipe/index.ts";
import type { MeasureKind } from "../../src/plan/index.ts";

interface Asked {
  /** Place of the answer: from the top of the document, or from its row where it stands in a list. */
  readonly key: string;
  /** The question. */
  readonly label: string;
  /** What is taken where nothing is answered; a question without it must be answered. */
  readonly left?: string;
  /** Asked only where the row says so, or where the answer is there already. */
  readonly when?: (row: Readonly<Record<string, unknown>>) => boolean;
}

/** A quantity as text with its unit. */
export interface QuantityQuestion extends Asked {
  readonly ask: "quantity";
  readonly kind: MeasureKind;
  readonly sample: string;
}

/** Names that a text may be chosen from. */
export interface TextQuestion extends Asked {
  readonly ask: "text";
  readonly sample: string;
  /** Names offered while typing; any other may be typed. */
  readonly offers?: () => readonly string[];
  /** The list of names this one belongs to: changing it changes every mention. */
  readonly names?: NameList;
}

/** A whole number. */
export interface CountQuestion extends Asked {
  readonly ask: "count";
  readonly sample: string;
}

/** One of some words. */
export interface ChoiceQuestion extends Asked {
  readonly ask: "choice";
  readonly options: readonly Option[];
}

/** A word of the document and how it is shown. */
export interface Option {
  readonly value: string;
  readonly label: string;
}

/** One of the names in another list of the job. */
export interface NameQuestion extends Asked {
  readonly ask: "name";
  readonly of: NameList;
}

/** Some of the names in another list of the job. */
export interface NamesQuestion extends Asked {
  readonly ask: "names";
  readonly of: NameList;
}

/** Yes, or not said. */
export interface YesQuestion extends Asked {
  readonly ask: "yes";
}

/** Any number of rows with the same questions. */
export interface ListQuestion {
  readonly ask: "list";
  readonly key: string;
  readonly label: string;
  /** What one row is called. */
  readonly row: string;
  readonly note?: string;
  /** What is taken where there is no row; a list without it needs one. */
  readonly left?: string;
  /** What a new row starts with. */
  readonly fresh: Readonly<Record<string, unknown>>;
  /** Fewest rows shown of a list that has any. */
  readonly rows?: number;
  /** Whether a row stands on one line, as a line of a table. */
  readonly line?: boolean;
  readonly items: readonly Item[];
}

/** Questions under a heading of their own; folded where most jobs leave them out. */
export interface Group {
  readonly ask: "group";
  readonly label: string;
  readonly folded: boolean;
  readonly note?: string;
  readonly items: readonly Item[];
}

/** A question with one answer. */
export type Question =
  | QuantityQuestion
  | TextQuestion
  | CountQuestion
  | ChoiceQuestion
  | NameQuestion
  | NamesQuestion
  | YesQuestion;
export type Item = Question | ListQuestion | Group;

/** The lists whose names other parts of the job mention. */
export type NameList = "places" | "outlets";

/** The well with its tank, which every layout starts from. */
export const WELLHEAD = "wellhead";

type Rest<Q extends Asked> = Partial<Pick<Q, "left" | "when">>;

const quantity = (key: string, label: string, kind: MeasureKind, sample: string, rest: Rest<QuantityQuestion> = {}) =>
  ({ ask: "quantity", key, label, kind, sample, ...rest }) satisfies QuantityQuestion;
const text = (
  key: string,
  label: string,
  sample: string,
  rest: Rest<TextQuestion> & Pick<TextQuestion, "offers" | "names"> = {},
) => ({ ask: "text", key, label, sample, ...rest }) satisfies TextQuestion;
const count = (key: string, label: string, sample: string, rest: Rest<CountQuestion> = {}) =>
  ({ ask: "count", key, label, sample, ...rest }) satisfies CountQuestion;
const choice = (key: string, label: string, options: readonly (Option | string)[], rest: Rest<ChoiceQuestion> = {}) =>
  ({
    ask: "choice",
    key,
    label,
    options: options.map((option) => (typeof option === "string" ? { value: option, label: option } : option)),
    ...rest,
  }) satisfies ChoiceQuestion;
const group = (label: string, items: readonly Item[], note?: string) =>
  ({ ask: "group", label, folded: false, items, ...(note === undefined ? {} : { note }) }) satisfies Group;
const folded = (label: string, items: readonly Item[], note?: string) =>
  ({ ...group(label, items, note), folded: true }) satisfies Group;

const BY_PLAN = "sized by the plan";

const pipeNames = (): readonly string[] => listPipes().map(({ name }) => name);
const pipeFamilies = (): readonly string[] => [
  ...new Set(listPipes().map(({ name, nominal }) => name.slice(nominal.length + 1))),
];
const conductorSizes = (): readonly string[] => [...new Set(necChapter9Table8.map(({ size }) => size))];

const phase = (key: string) => choice(key, "Phase", ["single-phase", "three-phase"]);

const fittings = (key: string, label: string): ListQuestion => ({
  ask: "list",
  key,
  label,
  row: "Fitting",
  left: "none",
  fresh: {},
  line: true,
  items: [choice("kind", "Kind", Object.keys(namedFittings)), count("count", "How many", "3")],
});

/** The questions, section by section. */
export const SECTIONS: readonly Group[] = [
  group("Driller’s log", [
    text("name", "What the property is called", "the name on the gate"),
    quantity("well.depth", "Depth of the hole", "length", "240 ft"),
    quantity("well.casingInsideDiameter", "Inside diameter of the casing", "diameter", "6.065 in"),
    quantity("well.staticLevel", "Depth to the water at rest", "length", "60 ft"),
    quantity("well.yield", "Yield, as long as it is asked for", "flow", "12 gpm"),
    {
      ask: "list",
      key: "well.test",
      label: "Pumping test",
      row: "Step",
      note: "One steady flow and the level it drew the water down to; more steps where the driller made a step test.",
      fresh: {},
      items: [
        quantity("flow", "Flow pumped", "flow", "12 gpm"),
        quantity("pumpingLevel", "Depth to the water at the end", "length", "110 ft"),
      ],
    },
    folded("More about the hole", [
      quantity("well.casingDepth", "Depth of the bottom of the casing", "length", "180 ft", { left: "the whole hole" }),
      quantity("well.openHoleDiameter", "Diameter of the open hole below it", "diameter", "6 in", {
        left: "the casing’s",
      }),
      quantity("well.screenTop", "Depth of the top of the screen", "length", "200 ft", { left: "no screen" }),
      quantity("well.highestStaticLevel", "Least depth to the water at rest, in a wet spring", "length", "50 ft", {
        left: "as at rest",
      }),
    ]),
  ]),

  group("Site", [
    quantity("site.elevation", "Height of the ground at the well above the sea; a map will do", "length", "1,150 ft"),
    {
      ask: "list",
      key: "places",
      label: "Places",
      row: "Place",
      note: "House, barn, trough, a fork in the line. The wellhead, with its tank, is always there.",
      left: "the wellhead alone",
      fresh: {},
      items: [
        text("name", "Name", "barn", { names: "places" }),
        quantity(
          "elevation",
          "Ground there above the ground at the well, minus where it lies below",
          "length",
          "-6 ft",
        ),
      ],
    },
    {
      ask: "list",
      key: "runs",
      label: "Runs of pipe",
      row: "Run",
      note: "From place to place, along the trench.",
      left: "every outlet is at the wellhead",
      fresh: { from: WELLHEAD },
      items: [
        { ask: "name", key: "from", label: "From", of: "places" },
        { ask: "name", key: "to", label: "To", of: "places" },
        quantity("length", "Length", "length", "300 ft"),
        folded("Pipe and fittings of this run", [
          text("pipe", "Pipe, by standard and size", "1 in PE4710 SIDR 15", { left: BY_PLAN, offers: pipeNames }),
          fittings("fittings", "Fittings on it"),
        ]),
      ],
    },
    folded("How pipe is chosen where you leave it open", [
      text("pipeChoice.family", "Family of pipe", "PE4710 SIDR 15", {
        left: "what serves at the least size",
        offers: pipeFamilies,
      }),
      quantity("pipeChoice.highestVelocity", "Highest velocity", "velocity", "5 ft/s", { left: "5 ft/s" }),
    ]),
  ]),

  group("Uses", [
    {
      ask: "list",
      key: "outlets",
      label: "Outlets",
      row: "Outlet",
      note: "Where water leaves the system: a house, a hydrant, a trough.",
      fresh: {},
      items: [
        text("name", "Name", "barn hydrant", { names: "outlets" }),
        { ask: "name", key: "at", label: "Where it stands", of: "places" },
        quantity("flow", "Flow wanted", "flow", "7 gpm"),
        quantity("pressure", "Pressure wanted while it flows", "pressure", "30 psi"),
      ],
    },
    count("demand.people", "People", "4", { left: "no day is run through" }),
    folded("Animals and other water", [
      {
        ask: "list",
        key: "demand.livestock",
        label: "Animals",
        row: "Kind",
        left: "none",
        fresh: {},
        line: true,
        items: [choice("kind", "Kind", Object.keys(LIVESTOCK)), count("head", "How many", "20")],
      },
      {
        ask: "list",
        key: "demand.other",
        label: "Other water in a day",
        row: "Use",
        left: "none",
        fresh: {},
        line: true,
        items: [text("name", "What it is", "garden"), quantity("volume", "Water in a day", "volume", "250 gal")],
      },
    ]),
    folded("What runs together", [
      {
        ask: "list",
        key: "uses",
        label: "Uses",
        row: "Use",
        left: "each outlet alone, and all at once",
        fresh: {},
        items: [
          text("name", "Name of the use", "house and trough"),
          { ask: "names", key: "outlets", label: "Outlets open", of: "outlets" },
        ],
      },
    ]),
  ]),

  group("Pump, pipe, tank and controls", [
    quantity("controls.cutIn", "Cut-in: the switch starts the pump", "pressure", "40 psi"),
    quantity("controls.cutOut", "Cut-out: the switch stops it", "pressure", "60 psi"),
    {
      ask: "list",
      key: "pump.candidates",
      label: "Pumps to choose from",
      row: "Pump",
      note: "Copy each curve from the pump’s own sheet. With one pump, it is checked; with several, the best is taken.",
      left: "the plan says what the pump must give; power and relief then stay unchecked",
      fresh: { curve: [{}, {}, {}], motor: {} },
      items: [
        text("name", "Name", "B, 14 stages"),
        quantity("diameter", "Outside diameter, pump or motor, the larger", "diameter", "3.88 in"),
        {
          ask: "list",
          key: "curve",
          label: "Curve, from no flow on",
          row: "Point",
          fresh: {},
          rows: 3,
          line: true,
          items: [
            quantity("flow", "Flow", "flow", "10 gpm"),
            quantity("head", "Head", "length", "377 ft"),
            quantity("efficiency", "Efficiency", "ratio", "55 %", { left: "not known" }),
          ],
        },
        group("Its motor, by the plate", [
          quantity("motor.power", "Power", "motorPower", "1 hp"),
          quantity("motor.voltage", "Voltage", "voltage", "230 V"),
          phase("motor.phase"),
          folded("More from the plate", [
            quantity("motor.fullLoadCurrent", "Full-load current", "current", "9.8 A", { left: "the code’s table" }),
            quantity("motor.serviceFactor", "Service factor", "ratio", "1.15", { left: "1" }),
            choice("motor.codeLetter", "Locked-rotor code letter", Object.keys(codeLetterRanges), {
              left: "not known",
            }),
            quantity("motor.lockedRotorCurrent", "Locked-rotor current", "current", "54 A", { left: "not known" }),
            quantity("motor.efficiency", "Efficiency", "ratio", "72 %", { left: "a typical one" }),
            quantity("motor.powerFactor", "Power factor", "ratio", "0.9", { left: "a typical one" }),
            quantity("motor.coolingVelocity", "Least velocity of water past it", "velocity", "0.25 ft/s", {
              left: "common practice",
            }),
          ]),
        ]),
        folded("Length and mass of this pump", [
          quantity("length", "Length, pump and motor", "diameter", "46 in", { left: "1 m" }),
          quantity("lengthBelowIntake", "Length below the intake", "diameter", "19 in", { left: "half the length" }),
          quantity("mass", "Mass, pump and motor", "mass", "56 lb", { left: "the pull on the hoist stays unknown" }),
        ]),
      ],
    },
    quantity("controls.reliefPressure", "Relief valve opens at", "pressure", "75 psi", { left: "none fitted" }),
    { ask: "yes", key: "controls.dryRunCutOff", label: "A low-level or dry-run cut-off is fitted" },
    folded("Setting and drop pipe", [
      quantity("pump.setting", "Depth of the intake", "length", "160 ft", { left: "worked out" }),
      text("dropPipe.pipe", "Drop pipe, by standard and size", "1-1/4 in PVC 1120 SCH 80", {
        left: BY_PLAN,
        offers: pipeNames,
      }),
      count("dropPipe.checkValves", "Check valves above the pump’s own", "1", { left: "none" }),
      fittings("dropPipe.fittings", "Fittings from the pump to the tank"),
    ]),
    folded("Tank", [
      quantity("tank.volume", "Volume of the whole tank", "volume", "44 gal", { left: BY_PLAN }),
      quantity("tank.precharge", "Precharge", "pressure", "38 psi", { left: "set below the cut-in" }),
      quantity("tank.maximumPressure", "Highest working pressure, by its plate", "pressure", "125 psi", {
        left: "not known",
      }),
      quantity("tank.elevation", "Its connection above the ground at the well", "length", "2 ft", {
        left: "at the ground",
      }),
      quantity("tank.leastRunTime", "Least run of the pump", "time", "2 min", { left: "1 minute" }),
      count("tank.mostStartsPerDay", "Most starts in a day, by the motor’s sheet", "100", {
        left: "the published limit for its power",
      }),
    ]),
    folded(
      "Regulating valve, relief valve",
      [
        quantity("controls.regulatingValve.setPressure", "Regulating valve: pressure it holds", "pressure", "50 psi", {
          left: "no such valve",
        }),
        quantity("controls.regulatingValve.minimumFlow", "Flow it always lets pass", "flow", "1 gpm", {
          left: "no such valve",
        }),
        quantity("controls.regulatingValve.loss", "Its loss when open", "pressureDifference", "4 psi", {
          left: "none",
        }),
        quantity("controls.regulatingValve.ratedFlow", "Flow of that loss", "flow", "16 gpm", { left: "none" }),
        quantity(
          "controls.regulatingValve.maximumInletPressure",
          "Highest pressure at its inlet",
          "pressure",
          "300 psi",
          {
            left: "not known",
          },
        ),
        quantity("controls.reliefCapacity", "Relief valve: flow it passes, by its certificate", "flow", "14 gpm", {
          left: "not known",
        }),
      ],
      "A valve between pump and tank that holds a steady pressure while water is used.",
    ),
  ]),

  group("Power", [
    {
      ask: "list",
      key: "power.sources",
      label: "Sources",
      row: "Source",
      note: "What feeds the pump, now or later. Each is checked.",
      fresh: {},
      items: [
        text("name", "Name", "generator"),
        choice("kind", "Kind", ["utility", "generator"]),
        quantity("voltage", "Voltage at its terminals", "voltage", "240 V"),
        phase("phase"),
        quantity("runningPower", "Power it runs, by its plate", "power", "6,500 W", { when: isGenerator }),
        quantity("surgePower", "Power it gives for a start", "power", "8,000 W", {
          left: "not known",
          when: isGenerator,
        }),
        choice("receptacle", "Receptacle the pump is fed from", Object.keys(receptacleRatings), {
          left: "none named",
          when: isGenerator,
        }),
        quantity("otherLoad", "Other loads running with the pump", "power", "600 W", {
          left: "none",
          when: isGenerator,
        }),
      ],
    },
    {
      ask: "list",
      key: "power.circuit",
      label: "Cables, from the source to the motor",
      row: "Cable",
      fresh: {},
      items: [
        text("name", "Where it runs", "supply to wellhead"),
        quantity("length", "Length, one way", "length", "75 ft", {
          left: "the depth of the pump, as for the drop cable",
        }),
        folded("Conductor of this cable", [
          text("size", "Size", "10 AWG", { left: BY_PLAN, offers: conductorSizes }),
          choice("material", "Material", ["copper", "aluminium"], { left: "copper" }),
        ]),
      ],
    },
    folded("Breaker, grounding, voltage drop", [
      quantity("power.breaker", "Breaker or fuse that feeds the pump", "current", "20 A", {
        left: "the plan says the highest",
      }),
      text("power.groundingSize", "Equipment grounding conductor", "10 AWG", { left: BY_PLAN, offers: conductorSizes }),
      quantity("power.mostVoltageDrop", "Most voltage drop while running", "ratio", "5 %", { left: "5 %" }),
    ]),
  ]),

  group("Weather and water", [
    quantity(
      "site.waterTemperature",
      "Temperature of the water; that of the ground, where nobody measured it",
      "temperature",
      "50 F",
    ),
    folded("Disinfection after the work", [
      quantity("disinfection.target", "Chlorine wanted in the standing water", "concentration", "100 mg/L", {
        left: "100 mg/L",
      }),
      quantity("disinfection.bleachStrength", "Strength of the bleach", "ratio", "6 %", { left: "6 %" }),
    ]),
    choice(
      "reportUnits",
      "Units of the answer",
      [
        { value: "us", label: "US: ft, gpm, psi" },
        { value: "metric", label: "metric: m, L/s, kPa" },
      ],
      { left: "US" },
    ),
  ]),
];

function isGenerator({ kind }: Readonly<Record<string, unknown>>): boolean {
  return kind === "generator";
}

/** A new sheet: one house at the end of one run, fed by the utility. */
export const FRESH: Readonly<Record<string, unknown>> = {
  version: 1,
  places: [{ name: "house" }],
  runs: [{ from: WELLHEAD, to: "house" }],
  outlets: [{ name: "house", at: "house" }],
  well: { test: [{}] },
  power: {
    sources: [{ name: "utility", kind: "utility", phase: "single-phase" }],
    // Empty, not left out: a supply cable as long as the pump is deep would be a slip.
    circuit: [{ name: "supply to wellhead", length: "" }, { name: "drop cable" }],
  },
};
