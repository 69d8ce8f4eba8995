/**
 * The pictures of the guides and of the README, drawn from the code that stands beside them.
 */
import { readFileSync } from "node:fs";
import { build } from "esbuild";
import { planSystem, readJob } from "risingmain/plan";
import { type ChartSpec, chartsOf } from "risingmain/plot";
import { globSync } from "tinyglobby";
import { type Drawn, draw } from "./render.ts";

/** A block whose `chart` is to be drawn: ```ts chart=pump */
const BLOCK = /^```ts chart=([\w-]+)\n([\s\S]*?)^```$/gm;

/** A picture of a guide. */
export interface GuidePicture extends Drawn {
  /** The guide's file. */
  readonly guide: string;
  /** Name of the picture, without its ending. */
  readonly name: string;
}

/** Every picture the guides ask for, on no paper: the page behind shows through. */
export async function guidePictures(): Promise<readonly GuidePicture[]> {
  const pictures: GuidePicture[] = [];
  for (const guide of globSync("docs/guides/*.md").sort()) {
    for (const [, name = "", code = ""] of readFileSync(guide, "utf8").matchAll(BLOCK)) {
      pictures.push({ guide, name, ...(await draw({ ...(await chartOf(code)), background: null })) });
    }
  }
  return pictures;
}

/** What a block's `chart` is, the block run as a reader pastes it. */
async function chartOf(code: string): Promise<ChartSpec> {
  const { outputFiles } = await build({
    stdin: { contents: `${code}\nexport { chart };`, loader: "ts", resolveDir: process.cwd() },
    bundle: true,
    format: "esm",
    platform: "node",
    write: false,
    plugins: [
      {
        name: "sources",
        setup: ({ onResolve }) => {
          onResolve({ filter: /^risingmain\// }, ({ path }) => ({
            path: `${process.cwd()}/src/${path.slice("risingmain/".length)}/index.ts`,
          }));
        },
      },
    ],
  });
  const module = `data:text/javascript;base64,${Buffer.from(outputFiles[0]?.contents ?? []).toString("base64")}`;
  return ((await import(module)) as { chart: ChartSpec }).chart;
}

/** The pictures of the README by their file: the demo property's pump and its way to the far outlet. */
export async function readmePictures(): Promise<ReadonlyMap<string, Drawn>> {
  const job = JSON.parse(readFileSync("docs/jobs/ranch.json", "utf8"));
  const { pump, gradeLine } = chartsOf(planSystem(readJob(job)), { width: 640 });
  if (pump === null || gradeLine === null) throw new Error("the demo has lost its pump or its lines");
  return new Map([
    ["docs/assets/demo-pump.svg", await draw(pump)],
    ["docs/assets/demo-grade-line.svg", await draw(gradeLine)],
  ]);
}
