/** What stands in rows, and what in columns, by how its facts begin; all others are of the case. */
export type Sides = { readonly rows: string; readonly columns: string };

/** Vehicles in rows, trailers in columns. */
export const towSides: Sides = { rows: 'vehicle.', columns: 'trailer.' };

/** Bits of the sides that a value hangs on. */
export const sideBits = { case: 0, rows: 1, columns: 2, both: 3 } as const;

/** Of a fact that is no list: those are of the case. */
export function sideOf({ rows, columns }: Sides, fact: string): number {
  if (fact.startsWith(rows)) return sideBits.rows;
  return fact.startsWith(columns) ? sideBits.columns : sideBits.case;
}
