/** How each published demand record is computed with the library. */
import {
  type AllowanceFixture,
  allowanceDemand,
  bedroomDemand,
  type CattleClass,
  cattleDemand,
  dailyDemand,
  type FixtureMethod,
  type FlushKind,
  fireReserve,
  fixtureCountDemand,
  fixtureDemand,
  fixtureUnits,
  householdRange,
  irrigationDemand,
  type LivestockKind,
  livestockDemand,
  peakFlow,
  publishedDailyUses,
  publishedFlows,
  type Washing,
  washingDemand,
  weightRuleDemand,
} from "risingmain/demand";
import type { Area, Duration, Length, Mass, Temperature, Volume, VolumeFlow } from "risingmain/units";
import type { Computation, Given } from "./register.ts";

const GALLON = 231 * 0.0254 ** 3;
const DAY = 86_400;

function curve(g: Given, method: FixtureMethod, flush: FlushKind): { demand: readonly number[] } {
  return {
    demand: g.list("fixtureUnits").map((units) => fixtureDemand({ fixtureUnits: units, curve: method, flush }).peak),
  };
}

function allowance(g: Given, fixture: AllowanceFixture) {
  const { peak, largestFixture } = allowanceDemand([{ fixture, count: g.si("fixtures") }]);
  return { allowance: peak, fixtureFlow: largestFixture };
}

function use(name: string, source: string): { low: number; high: number } {
  const row = publishedDailyUses.find((entry) => entry.use === name && entry.source === source);
  if (row === undefined) throw new Error(`no published use of ${name}`);
  return { low: (row.low * GALLON) / DAY, high: (row.high * GALLON) / DAY };
}

function flowOf(name: string): { low: number; high: number } {
  const row = publishedFlows.find((entry) => entry.use === name);
  if (row === undefined) throw new Error(`no published flow of ${name}`);
  return { low: (row.low * GALLON) / 60, high: (row.high * GALLON) / 60 };
}

function names(g: Given, name: string): readonly string[] {
  return g.record.inputs[name]?.value as readonly string[];
}

const HINDAWI = "renewable-energy-2017";

export const computations: readonly Computation[] = [
  { ids: /wsfu-demand-flush-tank/, compute: (g) => curve(g, "ipc-2021", "tank") },
  { ids: /wsfu-demand-flush-valve/, compute: (g) => curve(g, "ipc-2021", "valve") },
  { ids: /nspc-demand-flush-tank/, compute: (g) => curve(g, "nspc", "tank") },
  { ids: /nspc-demand-flush-valve/, compute: (g) => curve(g, "nspc", "valve") },
  { ids: /hunter-bms65-points/, compute: (g) => curve(g, "hunter-1940", "tank") },
  {
    ids: /wsfu-columns-merge/,
    compute: (g) => ({ demand: fixtureDemand({ fixtureUnits: g.si("fixtureUnits"), flush: "valve" }).peak }),
  },
  {
    ids: /wsfu-two-bath-house/,
    compute: (g) => {
      const units = fixtureUnits([
        { fixture: "bathroom group, flush tank", count: g.si("bathroomGroups") },
        { fixture: "kitchen sink", count: 1 },
        { fixture: "dishwasher", count: 1 },
        { fixture: "washing machine, 8 lb", count: 1 },
        { fixture: "hose bibb", count: 1 },
      ]);
      return { fixtureUnits: units, demand: fixtureDemand({ fixtureUnits: units }).peak };
    },
  },
  {
    ids: /epa-pda-example-house/,
    compute: () => ({
      pumpCapacity: allowanceDemand([
        { fixture: "tub or tub with shower", count: 1 },
        { fixture: "lavatory", count: 2 },
        { fixture: "toilet, flush tank", count: 1 },
        { fixture: "kitchen sink", count: 1 },
        { fixture: "dishwasher", count: 1 },
        { fixture: "clothes washer", count: 1 },
      ]).peak,
    }),
  },
  { ids: /epa-pda-shower/, compute: (g) => allowance(g, "shower") },
  { ids: /epa-pda-lavatory/, compute: (g) => allowance(g, "lavatory") },
  { ids: /epa-pda-flush-tank-toilet/, compute: (g) => allowance(g, "toilet, flush tank") },
  { ids: /epa-pda-kitchen-sink/, compute: (g) => allowance(g, "kitchen sink") },
  { ids: /epa-pda-dishwasher/, compute: (g) => allowance(g, "dishwasher") },
  { ids: /epa-pda-laundry-sink/, compute: (g) => allowance(g, "laundry sink") },
  { ids: /epa-pda-clothes-washer/, compute: (g) => allowance(g, "clothes washer") },
  {
    ids: /psu-2-hour-peak/,
    compute: (g) => ({ flow: peakFlow({ volume: g.si<Volume>("dailyUse"), period: g.si<Duration>("period") }) }),
  },
  { ids: /psu-per-person/, compute: (g) => ({ ...householdRange(g.si("people")) }) },
  { ids: /vehicle-washing/, compute: () => ({ volume: washingDemand({ washing: "vehicle", times: 1 }).volume }) },
  { ids: /ny-per-bedroom/, compute: (g) => ({ use: bedroomDemand(g.si("bedrooms")) }) },
  { ids: /ny-peak-5gpm/, compute: () => ({ peak: flowOf("two fixtures at once in a house").high }) },
  {
    ids: /fixture-count-rule/,
    compute: (g) => ({
      peak: fixtureCountDemand(g.si("bathrooms") * g.si("fixturesPerBath") + g.si("kitchen") + g.si("hoseBibbs")),
    }),
  },
  { ids: /wac-mdd-floor/, compute: () => ({ maxDay: use("dwelling, maximum day, least", "wac-246-290-221").low }) },
  {
    ids: /tac-service-pump/,
    compute: () => ({ capacity: flowOf("public system, service pump, each connection").low }),
  },
  { ids: /military-per-capita/, compute: () => ({ average: use("person, small station, average", "tm-5-813-7").low }) },
  {
    ids: /military-fire-wood-frame/,
    compute: () => {
      const { high: flow } = flowOf("small wooden building, fire, for 2 h");
      // The stated time is the one that storage for that flow works out at.
      const { volume } = fireReserve({ flow: flow as VolumeFlow });
      return { flow, duration: volume / flow };
    },
  },
  { ids: /mo-fire-flow/, compute: () => ({ flow: flowOf("farm fire control at 60 psi").high }) },
  { ids: /hose-faucet-flow/, compute: () => ({ flow: flowOf("outside hose faucet").high }) },
  { ids: /yard-hydrant-flow/, compute: () => flowOf("yard hydrant, 3/4 in hose outlet") },
  {
    ids: /hose-flow-h2ouse/,
    compute: () => {
      const { low, high } = flowOf("garden hose");
      return { typicalLow: low, typicalHigh: high };
    },
  },
  { ids: /usage-hindawi-person/, compute: () => use("person", HINDAWI) },
  { ids: /usage-hindawi-milking-cow/, compute: () => use("milking cow", HINDAWI) },
  { ids: /usage-hindawi-horse-or-cattle/, compute: () => use("horse or cattle", HINDAWI) },
  { ids: /usage-hindawi-sheep-or-goat/, compute: () => use("sheep or goat", HINDAWI) },
  { ids: /usage-hindawi-chickens-100/, compute: () => use("100 chickens", HINDAWI) },
  {
    ids: /kstate-horse-weight-rule/,
    compute: (g) => ({ use: weightRuleDemand({ animal: "horse", mass: g.si<Mass>("weight") }) }),
  },
  {
    ids: /kstate-cow-weight-rule/,
    compute: (g) => ({
      summer: weightRuleDemand({ animal: "cow, summer", mass: g.si<Mass>("weight") }),
      winter: weightRuleDemand({ animal: "cow, winter", mass: g.si<Mass>("weight") }),
    }),
  },
  {
    ids: /kstate-(nursing|wintering)-cow-temperature|nrc-.*/,
    compute: (g) => {
      const cattle = (
        g.has("class") ? g.text("class") : g.record.id.includes("nursing") ? "lactating cow" : "wintering pregnant cow"
      ) as CattleClass;
      return {
        use: g
          .list<Temperature>("temperature")
          .map((temperature) => cattleDemand({ cattle, head: 1, temperature }).daily),
      };
    },
  },
  {
    ids: /unh-livestock-ranges/,
    compute: (g) => {
      const herds = names(g, "kinds").map((kind) => livestockDemand({ kind: kind as LivestockKind, head: 1 }));
      return { low: herds.map(({ low }) => low), high: herds.map(({ high }) => high) };
    },
  },
  {
    ids: /unh-poultry-larger-edition/,
    compute: (g) => ({
      high: names(g, "kinds").map((kind) => livestockDemand({ kind: kind as LivestockKind, head: 100 }).daily),
    }),
  },
  {
    ids: /unh-dairy-washing|broz-household-washing/,
    compute: (g) => {
      const washes = names(g, "items").map((item) => washingDemand({ washing: item as Washing, times: 1 }));
      return { low: washes.map(({ low }) => low), high: washes.map(({ volume }) => volume) };
    },
  },
  {
    ids: /broz-fire-reserve/,
    compute: (g) => ({
      reserve: fireReserve({ flow: g.si<VolumeFlow>("flow"), time: g.si<Duration>("time") }).volume,
    }),
  },
  {
    ids: /irrigation-gpm-per-acre/,
    compute: (g) => ({
      flow: irrigationDemand({ area: g.si<Area>("area"), depth: (g.si("depth") * DAY) as Length }).flow,
    }),
  },
  {
    ids: /lawn-inch-per-1000ft2/,
    compute: (g) => ({
      volume: irrigationDemand({ area: g.si<Area>("area"), depth: g.si<Length>("depth") }).volume,
    }),
  },
  {
    ids: /herd-peak-flow/,
    compute: (g) => ({
      flow: peakFlow({
        volume: (g.si("cows") * g.si("perCow") * DAY) as Volume,
        period: g.si<Duration>("period"),
      }),
    }),
  },
  {
    ids: /alberta-pasture-80-cows/,
    compute: (g) => {
      const day = dailyDemand({ livestock: [{ kind: "cow and calf, on pasture", head: g.si("head") }] });
      return {
        dailyUse: day.mean,
        flow: peakFlow({ volume: day.volume, period: g.si<Duration>("pumpingTime") }),
      };
    },
  },
  {
    ids: /alberta-pasture-peak-use/,
    compute: (g) => {
      const daily = (kind: LivestockKind) => livestockDemand({ kind, head: g.si("animals") }).daily;
      return { cowCalfPair: daily("cow and calf, on pasture"), yearling: daily("yearling, on pasture") };
    },
  },
];
