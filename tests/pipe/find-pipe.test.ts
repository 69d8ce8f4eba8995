/** Pipe by trade text: the ways people write it, and what is refused. */
import fc from "fast-check";
import { findPipe, listPipes } from "risingmain/pipe";
import { InputError } from "risingmain/units";
import { expect, test } from "vitest";

test.each([
  ["1-1/4 in PE SIDR 15", "1-1/4 in PE3408 SIDR 15"],
  ['1 1/4" poly sidr-15', "1-1/4 in PE3408 SIDR 15"],
  ["1¼ in PE4710 SIDR 15", "1-1/4 in PE4710 SIDR 15"],
  ["1.25in pe sidr 15", "1-1/4 in PE3408 SIDR 15"],
  ["SIDR 15 PE pipe, 1-1/4 inch", "1-1/4 in PE3408 SIDR 15"],
  ["2 in PVC SCH 40", "2 in PVC 1120 SCH 40"],
  ["2IN SCHEDULE 40 PVC", "2 in PVC 1120 SCH 40"],
  ["1 - 1/4 in PE SIDR 15", "1-1/4 in PE3408 SIDR 15"],
  ["1 -1/4 in PE SIDR 15", "1-1/4 in PE3408 SIDR 15"],
  ["1-  1/4 in PE SIDR 15", "1-1/4 in PE3408 SIDR 15"],
  ["1 in PE3608 SIDR 15", "1 in PE3408 SIDR 15"],
  ["2  in  PVC  SCH  40", "2 in PVC 1120 SCH 40"],
  ["0.5 in pvc sch 80", "1/2 in PVC 1120 SCH 80"],
  ["0.50 in pvc sch 80", "1/2 in PVC 1120 SCH 80"],
  ["2.00 in pvc sch80", "2 in PVC 1120 SCH 80"],
  ["2 in class 200 PVC", "2 in PVC 1120 SDR 21"],
  ["3 in PVC cl 160", "3 in PVC 1120 SDR 26"],
  ["1 in copper type L", "1 in copper type L"],
  ["1/2 in CU M", "1/2 in copper type M"],
  ["1 in type L", "1 in copper type L"],
  ["2 in galvanized steel sch 40", "2 in carbon steel SCH 40"],
  ["2 in galvanised SCH. 40", "2 in carbon steel SCH 40"],
  ["2 in black sch 40 steel", "2 in carbon steel SCH 40"],
  ["2 in ASME B36.10M SCH 40", "2 in carbon steel SCH 40"],
  ["3/4 in PEX", "3/4 in PEX SDR 9"],
  ["3/4 in CTS PEX", "3/4 in PEX SDR 9"],
  ["1 in PE SDR 9 CTS", "1 in PE3408 SDR 9 CTS"],
  ["1 in PE D2737 SDR 11", "1 in PE3408 SDR 11 CTS"],
  ["1 in PE IPS SDR 11", "1 in PE3408 DR 11"],
  ["4 in HDPE PE4710 DR 11", "4 in PE4710 DR 11"],
  ["63 mm PE100 SDR 11", "63 mm PE100 SDR 11"],
  ["63mm pe sdr11", "63 mm PE80 SDR 11"],
  ["DN 63 mm PE100 PN 16", "63 mm PE100 SDR 11"],
  ["110 mm PVC-U PN 16", "110 mm PVC-U SDR 17"],
  ["90 mm EN 12201 PE100 SDR 17", "90 mm PE100 SDR 17"],
])("%s is %s", (text, name) => {
  expect(findPipe(text).name).toBe(name);
});

test.each([
  ["2 in PVC", /one pipe; it could be .*SCH 40.*SDR 21/],
  ["2 in SCH 40", /one pipe; it could be "2 in PVC 1120 SCH 40", "2 in carbon steel SCH 40", got/],
  ["2 in PVC D2241", /one pipe; it could be .*SDR 13\.5.*SDR 21/],
  ["2 in PVC D1785 SDR 21", /a known pipe; near it are .*SCH 40.*SDR 21/],
  ["1 in PE 200 psi", /one pipe; it could be/],
  ["2.05 in PVC SCH 40", /a known pipe; near it are "1\/2 in PVC 1120 SCH 40"/],
  ["1 - 11/16 in PVC SCH 40", /a known pipe; near it are "1\/2 in PVC 1120 SCH 40"/],
  ["7 in PVC SCH 40", /near it are .*"6 in PVC 1120 SCH 40"/],
  ["1-1/4 in PE SIDR 16", /near it are .*"1-1\/4 in PE3408 SIDR 15"/],
  ["1 in PVC PE SIDR 15", /one material, got PE and PVC/],
  ["63 mm PE100 PN 16 200 psi", /one pressure rating, got 200 psi and 16 bar/],
  ["2 in bamboo", /"bamboo" is not/],
  ["PVC SCH 40", /a nominal size with its unit/],
  ["2 PVC SCH 40", /"2" is not/],
  ["", /a pipe such as/],
  [" \t ", /a pipe such as/],
  ["x".repeat(500), /a pipe such as/],
])("%s is refused", (text, message) => {
  expect(() => findPipe(text)).toThrow(InputError);
  expect(() => findPipe(text)).toThrow(message);
});

test("case, spacing and the order of size and series do not matter", () => {
  const pipes = listPipes();
  fc.assert(
    fc.property(
      fc.nat(pipes.length - 1),
      fc.boolean(),
      fc.constantFrom("  ", " ", "\t"),
      fc.boolean(),
      (i, upper, space, turned) => {
        const pipe = pipes[i];
        if (pipe === undefined) throw new Error("no pipe");
        const parts = [pipe.nominal, pipe.grade, pipe.series];
        const text = (turned ? parts.reverse() : parts).join(space);
        expect(findPipe(upper ? text.toUpperCase() : text.toLowerCase()).name).toBe(pipe.name);
      },
    ),
  );
});

test("any text at all finds a pipe or is an InputError", () => {
  const words = fc.constantFrom(
    "1",
    "1/4",
    "-",
    "in",
    "mm",
    '"',
    "PVC",
    "PE",
    "SDR",
    "15",
    "SCH",
    "psi",
    "CTS",
    "½",
    ".",
    "63",
  );
  const text = fc.oneof(
    fc.string({ maxLength: 130 }),
    fc.array(words, { maxLength: 12 }).map((all) => all.join(" ")),
  );
  fc.assert(
    fc.property(text, (given) => {
      try {
        expect(findPipe(given).name.length).toBeGreaterThan(5);
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
      }
    }),
    { numRuns: 1000 },
  );
});
