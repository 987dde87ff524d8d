import { seedRows } from '../run/catalogue.mjs';

/** The order sheet read straight from the seeds, by another way than the catalogue's. */
export type Sheet = { readonly standard: readonly string[]; readonly optional: readonly string[] };

const plans = seedRows('floor-plans');
const offers = seedRows('offers');
export const rules = seedRows('option-rules').map(({ kind = '', option = '', others = '' }) => ({
  kind,
  option,
  others: others.split(' '),
}));
export const planIds = plans.map(({ id = '' }) => id);
export const years = ['2023', '2024', '2025', '2026', '2027'];

export function sheetOf(plan: string, year: string): Sheet | undefined {
  const { line, first = '', last = '' } = plans.find(({ id }) => id === plan) ?? {};
  if (year < first || year > last) return undefined;
  const now = offers.filter(
    ({ line: of, from = '', to }) => of === line && from <= year && (!to || year <= to),
  );
  const named = (as: string) => now.flatMap((row) => (row.as === as ? [row.option ?? ''] : []));
  return { standard: named('standard'), optional: named('optional') };
}

/** Whether a build, standard things included, breaks no line of the sheet. */
export function keepsRules(build: ReadonlySet<string>, { standard, optional }: Sheet): boolean {
  const offered = new Set([...standard, ...optional]);
  return rules.every(({ kind, option, others }) => {
    const count = others.filter((other) => build.has(other)).length;
    if (kind === 'one-of') return count === 1 || !others.some((other) => offered.has(other));
    if (!build.has(option)) return true;
    return kind === 'requires' ? count > 0 : count === 0;
  });
}
