const day = 86_400_000;

/**
 * A day (ISO 8601, `2026-11-01`) as formulas see it: `asOf.day`, its number in the year from 1, and
 * `asOf.year`, the year with the part of it that has gone by.
 */
export function calendarOf(asOf: string): ReadonlyMap<string, number> {
  const year = Number(asOf.slice(0, 4));
  const start = Date.UTC(year, 0, 1);
  const passed = Math.round((Date.parse(`${asOf}T00:00:00Z`) - start) / day);
  const length = Math.round((Date.UTC(year + 1, 0, 1) - start) / day);
  return new Map([
    ['asOf.day', passed + 1],
    ['asOf.year', year + passed / length],
  ]);
}
