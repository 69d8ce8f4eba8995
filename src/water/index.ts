/**
 * Water and the air above it: density, viscosity, vapour pressure, stiffness; air pressure at an elevation.
 *
 * @module
 */
export { atmosphereAt } from "./atmosphere.ts";
export { waterDensity } from "./density.ts";
export { waterDynamicViscosity } from "./dynamic-viscosity.ts";
export { waterKinematicViscosity } from "./kinematic-viscosity.ts";
export { waterBulkModulus, waterIsothermalBulkModulus, waterSpeedOfSound } from "./speed-of-sound.ts";
export { waterVapourPressure, waterVapourPressureHead } from "./vapour-pressure.ts";
export { type Water, type WaterInput, waterAt } from "./water-at.ts";
