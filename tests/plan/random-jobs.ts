/**
 * Random valid job documents that cover every option of a job, each written twice: in metric and in US units.
 */
import fc from "fast-check";

/** A quantity as a document holds it, in either unit system. */
interface Text {
  readonly metric: string;
  readonly us: string;
}

const IN = 0.0254;
const FT = 0.3048;
const GAL = 3.785411784e-3;
const PSI = 6894.757293168362;

const text = (
  value: number,
  metric: readonly [unit: string, scale: number],
  us: readonly [unit: string, scale: number],
): Text => ({
  metric: `${value / metric[1]} ${metric[0]}`,
  us: `${value / us[1]} ${us[0]}`,
});
const length = (m: number): Text => text(m, ["m", 1], ["ft", FT]);
const diameter = (m: number): Text => text(m, ["mm", 1e-3], ["in", IN]);
const flow = (m3s: number): Text => text(m3s, ["L/s", 1e-3], ["gpm", GAL / 60]);
const pressure = (pa: number): Text => text(pa, ["kPa", 1e3], ["psi", PSI]);
const volume = (m3: number): Text => text(m3, ["L", 1e-3], ["gal", GAL]);
const power = (w: number): Text => text(w, ["W", 1], ["hp", 745.6998715822702]);
const velocity = (ms: number): Text => text(ms, ["m/s", 1], ["ft/s", FT]);
const same = (plain: string): Text => ({ metric: plain, us: plain });

/** The document in one unit system: every {@link Text} replaced by its text. */
function inUnits(value: unknown, system: "metric" | "us"): unknown {
  if (Array.isArray(value)) return value.map((item) => inUnits(item, system));
  if (typeof value !== "object" || value === null) return value;
  if ("metric" in value && "us" in value) return (value as Text)[system];
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, item]) => (item === undefined ? [] : [[key, inUnits(item, system)] as const])),
  );
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const maybe = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(arbitrary, { nil: undefined });

/** What the rest of a job hangs on. */
const seeds = fc.record({
  depth: between(40, 200),
  staticShare: between(0.05, 0.4),
  drawShare: between(0.05, 0.35),
  testFlow: between(3e-4, 2e-3),
  casing: between(0.12, 0.25),
  casingShare: maybe(between(0.6, 0.95)),
  screenShare: maybe(between(0.8, 0.99)),
  elevation: between(0, 2500),
  temperature: between(4, 20),
  cutIn: between(1.5e5, 3.5e5),
  differential: between(0.7e5, 2e5),
  shutoff: between(60, 260),
  runout: between(1e-3, 3e-3),
  pumps: fc.integer({ min: 0, max: 3 }),
  setting: maybe(between(0.7, 0.95)),
  dropPipe: maybe(fc.constantFrom("1-1/4 in PVC SCH 80", "2 in PVC SCH 80", "1 in PE SIDR 7", "1-1/4 in steel SCH 40")),
  family: maybe(fc.constantFrom("PE SIDR 15", "PVC SCH 40", "PE100 SDR 11")),
  checkValves: maybe(fc.integer({ min: 0, max: 3 })),
  valve: maybe(between(0.2, 0.8)),
  relief: maybe(between(1.1, 1.8)),
  reliefCapacity: maybe(between(5e-4, 3e-3)),
  dryRun: maybe(fc.boolean()),
  tank: maybe(between(0.05, 0.5)),
  precharge: maybe(between(0.7, 0.99)),
  tankElevation: maybe(between(-1, 5)),
  places: fc.array(
    fc.record({
      rise: between(-15, 25),
      run: between(20, 400),
      flow: between(1e-4, 6e-4),
      pipe: maybe(fc.constantFrom("1 in PVC SCH 40", "1-1/2 in PE SIDR 15")),
    }),
    { minLength: 1, maxLength: 4 },
  ),
  chain: fc.boolean(),
  loop: fc.boolean(),
  uses: fc.boolean(),
  people: maybe(fc.integer({ min: 0, max: 12 })),
  cows: maybe(fc.integer({ min: 0, max: 80 })),
  motor: between(370, 2200),
  generator: maybe(between(4000, 15000)),
  cable: maybe(fc.constantFrom("10 AWG", "12 AWG", "8 AWG")),
  aluminium: maybe(fc.boolean()),
  phase: fc.constantFrom("single-phase" as const, "three-phase" as const),
  fittings: fc.boolean(),
  bleach: maybe(between(4, 10)),
  target: maybe(between(50, 200)),
  reportUnits: maybe(fc.constantFrom("us", "metric")),
  openHole: maybe(between(0.1, 0.2)),
  secondStep: maybe(between(1.2, 1.5)),
  dropFittings: maybe(fc.integer({ min: 1, max: 4 })),
  belowIntake: maybe(between(0.2, 0.8)),
  plateCurrent: maybe(between(3, 14)),
  codeLetter: maybe(fc.constantFrom("F", "H", "K")),
  lockedRotor: maybe(between(20, 80)),
  motorEfficiency: maybe(between(0.5, 0.85)),
  powerFactor: maybe(between(0.7, 0.98)),
  coolingVelocity: maybe(between(0.05, 0.3)),
  valveLoss: maybe(fc.tuple(between(1e4, 6e4), between(5e-4, 1.5e-3))),
  inletLimit: maybe(between(6e5, 2e6)),
  leastRun: maybe(between(30, 180)),
  mostStarts: maybe(fc.integer({ min: 5, max: 400 })),
  otherUse: maybe(between(0.05, 3)),
  velocity: maybe(between(0.8, 3)),
  receptacle: maybe(fc.constantFrom("L14-30", "L6-30", "14-50")),
  otherLoad: maybe(between(100, 2500)),
  breaker: maybe(fc.constantFrom(15, 20, 30, 45)),
  grounding: maybe(fc.constantFrom("10 AWG", "12 AWG", "14 AWG")),
  mostDrop: maybe(between(0.01, 0.08)),
});

/** A job document in both unit systems, equal but for rounding. */
export const randomJobs: fc.Arbitrary<{ readonly metric: unknown; readonly us: unknown }> = seeds.map((s) => {
  const staticLevel = s.depth * s.staticShare;
  const cutOut = s.cutIn + s.differential;
  const names = s.places.map((_, i) => `place ${i + 1}`);
  const hasLoop = s.loop && names.length > 1 && !s.chain;
  const document = {
    version: 1,
    name: "random job",
    reportUnits: s.reportUnits,
    site: {
      elevation: length(s.elevation),
      waterTemperature: { metric: `${s.temperature} °C`, us: `${s.temperature * 1.8 + 32} °F` },
    },
    well: {
      casingInsideDiameter: diameter(s.casing),
      depth: length(s.depth),
      casingDepth: s.casingShare === undefined ? undefined : length(s.depth * s.casingShare),
      openHoleDiameter: s.openHole === undefined ? undefined : diameter(s.openHole),
      screenTop: s.screenShare === undefined ? undefined : length(s.depth * s.screenShare),
      staticLevel: length(staticLevel),
      highestStaticLevel: length(staticLevel * 0.9),
      yield: flow(s.testFlow * 1.2),
      // A second step falls in proportion, or a little more: as wells do.
      test: [1, ...(s.secondStep === undefined ? [] : [s.secondStep])].map((step) => ({
        flow: flow(s.testFlow * step),
        pumpingLevel: length(staticLevel + s.depth * s.drawShare * step ** 1.2),
      })),
    },
    dropPipe: {
      pipe: s.dropPipe,
      fittings: s.dropFittings === undefined ? undefined : [{ kind: "elbow 90", count: s.dropFittings }],
      checkValves: s.checkValves,
    },
    pump: {
      setting: s.setting === undefined ? undefined : length(s.depth * s.setting),
      candidates:
        s.pumps === 0
          ? undefined
          : Array.from({ length: s.pumps }, (_, i) => ({
              name: `pump ${i + 1}`,
              curve: [0, 0.25, 0.5, 0.75, 1].map((share) => ({
                flow: flow(s.runout * share * (1 + i / 4)),
                head: length(s.shutoff * (1 + i / 5) * (1 - 0.75 * share ** 2)),
                efficiency: same(`${share * (1.35 - share) * 120} %`),
              })),
              diameter: diameter(0.098),
              length: length(0.9),
              lengthBelowIntake: s.belowIntake === undefined ? undefined : length(s.belowIntake),
              mass: { metric: "20 kg", us: `${20 / 0.45359237} lb` },
              motor: {
                power: power(s.motor),
                voltage: same("230 V"),
                phase: s.phase,
                serviceFactor: same("1.15"),
                fullLoadCurrent: s.plateCurrent === undefined ? undefined : same(`${s.plateCurrent} A`),
                codeLetter: s.codeLetter,
                lockedRotorCurrent: s.lockedRotor === undefined ? undefined : same(`${s.lockedRotor} A`),
                efficiency: s.motorEfficiency === undefined ? undefined : same(`${s.motorEfficiency * 100} %`),
                powerFactor: s.powerFactor === undefined ? undefined : same(`${s.powerFactor}`),
                coolingVelocity: s.coolingVelocity === undefined ? undefined : velocity(s.coolingVelocity),
              },
            })),
    },
    controls: {
      cutIn: pressure(s.cutIn),
      cutOut: pressure(cutOut),
      regulatingValve:
        s.valve === undefined
          ? undefined
          : {
              setPressure: pressure(s.cutIn + s.differential * s.valve),
              minimumFlow: flow(6e-5),
              loss: s.valveLoss === undefined ? undefined : pressure(s.valveLoss[0]),
              ratedFlow: s.valveLoss === undefined ? undefined : flow(s.valveLoss[1]),
              maximumInletPressure: s.inletLimit === undefined ? undefined : pressure(s.inletLimit),
            },
      reliefPressure: s.relief === undefined ? undefined : pressure(cutOut * s.relief),
      reliefCapacity: s.relief === undefined || s.reliefCapacity === undefined ? undefined : flow(s.reliefCapacity),
      dryRunCutOff: s.dryRun,
    },
    tank: {
      volume: s.tank === undefined ? undefined : volume(s.tank),
      precharge: s.precharge === undefined ? undefined : pressure(s.cutIn * s.precharge),
      maximumPressure: pressure(8.6e5),
      elevation: s.tankElevation === undefined ? undefined : length(s.tankElevation),
      leastRunTime: s.leastRun === undefined ? undefined : same(`${s.leastRun} s`),
      mostStartsPerDay: s.mostStarts,
    },
    places: s.places.map(({ rise }, i) => ({ name: names[i], elevation: length(rise) })),
    runs: [
      ...s.places.map(({ run, pipe }, i) => ({
        from: s.chain && i > 0 ? names[i - 1] : "wellhead",
        to: names[i],
        length: length(run),
        pipe,
        fittings: s.fittings ? [{ kind: "elbow 90", count: 2 }] : undefined,
      })),
      ...(hasLoop ? [{ from: names[0], to: names[1], length: length(80) }] : []),
    ],
    outlets: s.places.map(({ flow: wanted }, i) => ({
      name: `outlet ${i + 1}`,
      at: names[i],
      flow: flow(wanted),
      pressure: pressure(1e5),
    })),
    uses: s.uses
      ? [
          { name: "first alone", outlets: ["outlet 1"] },
          { name: "all", outlets: names.map((_, i) => `outlet ${i + 1}`) },
        ]
      : undefined,
    demand:
      s.people === undefined && s.cows === undefined && s.otherUse === undefined
        ? undefined
        : {
            people: s.people,
            livestock: s.cows === undefined ? undefined : [{ kind: "beef cow", head: s.cows }],
            other: s.otherUse === undefined ? undefined : [{ name: "washing down", volume: volume(s.otherUse) }],
          },
    pipeChoice:
      s.family === undefined && s.velocity === undefined
        ? undefined
        : { family: s.family, highestVelocity: s.velocity === undefined ? undefined : velocity(s.velocity) },
    power: {
      sources: [
        ...(s.generator === undefined
          ? []
          : [
              {
                name: "generator",
                kind: "generator",
                voltage: same("240 V"),
                phase: s.phase,
                runningPower: same(`${s.generator} W`),
                surgePower: same(`${s.generator * 1.25} W`),
                receptacle: s.receptacle,
                otherLoad: s.otherLoad === undefined ? undefined : same(`${s.otherLoad} W`),
              },
            ]),
        { name: "utility", kind: "utility", voltage: same("240 V"), phase: s.phase },
      ],
      circuit: [
        {
          name: "supply",
          length: length(25),
          size: s.cable,
          material: s.aluminium === true && s.cable === undefined ? "aluminium" : undefined,
        },
        { name: "drop cable" },
      ],
      breaker: s.breaker === undefined ? undefined : same(`${s.breaker} A`),
      groundingSize: s.grounding,
      mostVoltageDrop: s.mostDrop === undefined ? undefined : same(`${s.mostDrop * 100} %`),
    },
    disinfection:
      s.bleach === undefined && s.target === undefined
        ? undefined
        : {
            bleachStrength: s.bleach === undefined ? undefined : same(`${s.bleach} %`),
            target: s.target === undefined ? undefined : same(`${s.target} mg/L`),
          },
  };
  return { metric: inUnits(document, "metric"), us: inUnits(document, "us") };
});
