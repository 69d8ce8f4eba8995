/**
 * The floors of the house: a module imports only from lower floors, and from the siblings named here.
 */
const FLOORS = [
  { modules: ["units", "sources", "numeric"] },
  { modules: ["water"] },
  {
    modules: [
      "head",
      "pipe",
      "fittings",
      "well",
      "conductor",
      "motor",
      "generator",
      "demand",
      "disinfection",
      "freeze",
    ],
  },
  { modules: ["pump", "tank", "control", "surge"] },
  { modules: ["system", "network", "selection", "field"] },
  { modules: ["plan", "plot"] },
];
/** Modules that may use a sibling on their own floor. */
const SIBLINGS = {
  // The guards throw the error that units defines; units formats with the guards.
  numeric: ["units"],
  units: ["numeric"],
  sources: ["units", "numeric"],
  head: ["pipe"],
  fittings: ["pipe"],
  motor: ["conductor"],
  generator: ["conductor"],
  control: ["pump", "tank"],
  network: ["system"],
  selection: ["system", "network"],
  field: ["system"],
  plot: ["plan"],
};

const inside = (modules) => `^src/(${modules.join("|")})/`;

const floorRules = FLOORS.flatMap(({ modules }, floor) => {
  const below = FLOORS.slice(0, floor).flatMap((f) => f.modules);
  return modules.map((name) => ({
    name: `floor-of-${name}`,
    comment: `${name} is on floor ${floor}`,
    severity: "error",
    from: { path: `^src/${name}/` },
    to: { path: "^src/", pathNot: inside([name, ...below, ...(SIBLINGS[name] ?? [])]) },
  }));
});

module.exports = {
  forbidden: [
    ...floorRules,
    {
      name: "every-module-has-a-floor",
      severity: "error",
      from: { path: "^src/[^/]+/", pathNot: inside([...FLOORS.flatMap(({ modules }) => modules), "bin"]) },
      to: {},
    },
    {
      name: "no-cycle",
      severity: "error",
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ["type-only"] } },
    },
    {
      name: "core-needs-nothing",
      comment:
        "No runtime dependency and no Node in the core; plan may validate with one schema library, bin is a command.",
      severity: "error",
      from: { path: "^src/", pathNot: "^src/(plan|bin)/" },
      to: {
        dependencyTypes: [
          "npm",
          "npm-dev",
          "npm-optional",
          "npm-peer",
          "core",
          "unknown",
          "undetermined",
          "npm-no-pkg",
          "npm-unknown",
        ],
      },
    },
    {
      name: "plan-needs-only-its-schema-library",
      severity: "error",
      from: { path: "^src/plan/" },
      to: { dependencyTypes: ["npm", "npm-dev", "core"], pathNot: "node_modules/valibot" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "default"] },
  },
};
