import type { Answer } from '@tarebook/rules/engine';
import { show } from '@tarebook/rules/quantity';
import { columns, wrapped } from './columns';

/** What a list of things comes to: each chosen, with what it adds and why, and the sum. */
export function selectionRows(answer: Answer): readonly [title: string, body: string][] {
  return answer.selections.flatMap(({ label, items, totals }): [string, string][] => {
    const chosen = items.filter(({ chosen: is }) => is !== 'no');
    if (chosen.length === 0) return [];
    const amounts = Object.keys(totals);
    const rows = chosen.map((item) => [
      item.chosen === 'unknown' ? `${item.label} (perhaps)` : item.label,
      ...amounts.map((amount) => {
        const ends = item.amounts[amount];
        return ends ? show(ends, ends.unit) : '';
      }),
      item.because,
    ]);
    const sums = Object.values(totals).map((ends) => show(ends, ends.unit));
    const right = amounts.map((_, i) => i + 1);
    const last = sums.length === 0 ? [] : [['In all', ...sums, '']];
    return [[label, columns([...rows, ...last], right)]];
  });
}

/** Results in their order; where two cannot be told apart that is said. */
export function rankingRows(answer: Answer): readonly [title: string, body: string][] {
  return answer.rankings.map(({ label, entries, rest }) => {
    const inOrder = entries.filter(({ out }) => !out);
    const rows = inOrder.map(({ says, value, apart }, i) => {
      const tied = apart ? '' : ' – not sure to come before the next';
      return `  ${i + 1}. ${wrapped(`${says}: ${show(value, value.unit)}${tied}`, '     ')}`;
    });
    const last = rest === '' || inOrder.length === 0 ? [] : [`  ${wrapped(rest, '  ')}`];
    return [label, [...rows, ...last].join('\n')];
  });
}
