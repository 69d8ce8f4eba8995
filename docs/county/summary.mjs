/** The county's answer, from one row for each well. */

/** Sums are taken in the order of the wells: rounding then falls the same way, whoever planned which well, and when. */
export function summaryOf(rows) {
  const summary = { wells: rows.length, power: 0, energyPerDay: 0, waterPerDay: 0, pumps: {}, findings: {} };
  for (const row of rows) {
    summary.power += row.power;
    summary.energyPerDay += row.energyPerDay;
    summary.waterPerDay += row.waterPerDay;
    count(summary.pumps, row.pump ?? "none of the stock serves");
    for (const finding of row.findings) count(summary.findings, finding);
  }
  return summary;
}

const GRAVEST_FIRST = ["stop", "fix", "look", "good"];

/** The summary in words. */
export function printed({ wells, power, energyPerDay, waterPerDay, pumps, findings }) {
  const line = (name, number) => `  ${name.padEnd(44)}${number.padStart(10)}`;
  const most = ([a, m], [b, n]) => n - m || (a < b ? -1 : 1);
  const gravity = ([finding]) => GRAVEST_FIRST.indexOf(finding.split(":")[0]);
  const counts = (list, order) =>
    Object.entries(list)
      .sort(order)
      .map(([name, number]) => line(name, String(number)));
  return [
    line("wells planned", String(wells)),
    line("power with every pump at full load", `${(power / 1e3).toFixed(1)} kW`),
    line("energy on a day", `${(energyPerDay / 3.6e6).toFixed(1)} kWh`),
    line("water on a day", `${waterPerDay.toFixed(1)} m³`),
    "wells by pump",
    ...counts(pumps, most),
    "wells by finding",
    ...counts(findings, (a, b) => gravity(a) - gravity(b) || most(a, b)),
  ].join("\n");
}

function count(list, name) {
  list[name] = (list[name] ?? 0) + 1;
}
