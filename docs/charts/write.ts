/**
 * Writes the pictures of the guides, for the site, and those of the README, which are kept with it.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { guidePictures, readmePictures } from "./pictures.ts";

const FOLDER = "docs/assets/charts";

mkdirSync(FOLDER, { recursive: true });
const guides = await guidePictures();
for (const { name, svg } of guides) writeFileSync(`${FOLDER}/${name}.svg`, svg);
const readme = await readmePictures();
for (const [file, { svg }] of readme) writeFileSync(file, svg);
console.log(`${guides.length} pictures of the guides, ${readme.size} of the README`);
