// @ts-check
/**
 * The recipe of the guide to sweeps, `docs/sweeps/`, on the built package: the figures of one thread, bit for bit, from
 * several, and from threads that die. Run by `npm run test:dist` after a build, with Node alone.
 */
import { strict as assert } from "node:assert";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, test } from "node:test";
import { sweep } from "risingmain/selection";
import { feet, inches, psi } from "risingmain/units";
import { startThreads } from "../../docs/sweeps/threads.mjs";
import { evaluate } from "../../docs/sweeps/yard-line.mjs";

const folder = mkdtempSync(join(tmpdir(), "threads-"));
after(() => rmSync(folder, { recursive: true }));

/** A sweep on threads of its own. */
async function swept(/** @type {any} */ { axes, model, threads, partSize }) {
  const crew = startThreads(model, threads);
  try {
    return await crew.sweep(axes, partSize);
  } finally {
    await crew.stop();
  }
}
const bits = (/** @type {Float64Array} */ figures) => Buffer.from(figures.buffer).toString("hex");

const yardLine = {
  pump: ["A", "B", "C", "D"],
  bore: [0.824, 1.049, 1.38].map(inches),
  pressure: [20, 75].map(psi),
  length: Array.from({ length: 41 }, (_, i) => feet(1 + 61 * i)),
};
const model = new URL("../../docs/sweeps/yard-line.mjs", import.meta.url);
const oneThread = Float64Array.from(sweep(yardLine), ({ variant }) => evaluate(variant));

for (const [threads, partSize] of [
  [1, 1000],
  [2, 97],
  [3, 1],
  [5, 400],
]) {
  test(`${threads} threads with parts of ${partSize} give the bits of one thread`, async () => {
    const figures = await swept({ axes: yardLine, model, threads, partSize });
    assert.equal(figures.length, 4 * 3 * 2 * 41);
    assert.equal(bits(figures), bits(oneThread));
  });
}

test("the model swept reaches, stops short and runs out: the bits compared are not all alike", () => {
  assert.ok(new Set(oneThread).size > 500);
  assert.ok(oneThread.includes(0));
});

test("threads that are kept do one sweep after another, also where two are asked for at once", async () => {
  const threads = startThreads(model, 2);
  const short = { ...yardLine, pump: ["C", "A"] };
  const [first, second] = await Promise.all([threads.sweep(yardLine, 50), threads.sweep(short, 10)]);
  const third = await threads.sweep(yardLine, 300);
  await threads.stop();
  assert.equal(bits(first), bits(oneThread));
  assert.equal(bits(second), bits(Float64Array.from(sweep(short), ({ variant }) => evaluate(variant))));
  assert.equal(bits(third), bits(oneThread));
});

/** A model of three numbers that does `harm` at one of its 60 variants, or at those `when` says. */
const axes = { a: [1, 2, 3], b: Array.from({ length: 20 }, (_, i) => i) };
const harmful = (/** @type {string} */ harm, when = "a === 2 && b === 7") =>
  `data:text/javascript,${encodeURIComponent(`
    import { existsSync, writeFileSync } from "node:fs";
    function once(mark, harm) {
      if (existsSync(mark)) return;
      writeFileSync(mark, "");
      harm();
    }
    export function evaluate({ a, b }) {
      if (${when}) { ${harm} }
      return a / 3 + b;
    }
  `)}`;
const wanted = Float64Array.from(sweep(axes), ({ variant: { a, b } }) => a / 3 + b);

for (const [name, harm] of [
  ["ends", "process.exit(1)"],
  ["throws", 'throw new Error("once")'],
  ["ends just after it has answered", "setImmediate(() => process.exit(1))"],
]) {
  test(`a thread that ${name} loses nothing`, async () => {
    const mark = join(folder, String(name));
    const once = harmful(`once(${JSON.stringify(mark)}, () => { ${harm} })`);
    const figures = await swept({ axes, model: once, threads: 2, partSize: 6 });
    assert.ok(existsSync(mark), "the thread died");
    assert.equal(bits(figures), bits(wanted));
  });
}

test("a part that kills every thread is named, with the reason", async () => {
  const always = harmful('throw new RangeError("no such pump")');
  await assert.rejects(swept({ axes, model: always, threads: 2, partSize: 6 }), (error) => {
    assert.match(String(error), /variants 24 to 29: the thread died 3 times/);
    assert.match(String(/** @type {Error} */ (error).cause), /no such pump/);
    return true;
  });
});

test("threads are as good as new after a sweep that failed, and after ending between two", async () => {
  const threads = startThreads(
    harmful('if (a === 2 && b === 7) throw new Error("always"); setImmediate(() => process.exit())', "true"),
    2,
  );
  await assert.rejects(threads.sweep(axes, 6));
  const tame = { ...axes, a: [1, 3] };
  for (let i = 0; i < 3; i++) {
    await new Promise((later) => setTimeout(later, 50));
    const figures = await threads.sweep(tame, 20);
    assert.equal(bits(figures), bits(Float64Array.from(sweep(tame), ({ variant: { a, b } }) => a / 3 + b)));
  }
  await threads.stop();
});

test("a model that is not there is said", async () => {
  await assert.rejects(swept({ axes, model: "file:///nowhere.mjs", threads: 2 }), {
    message: /^variants 0 to \d+: the thread died 3 times$/,
  });
});
