import type { Answer, ChoiceAnswer, Remedy, SelectionAnswer, Topic } from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';

/** A heading with its lines. */
export type ToldPart = { readonly title: string; readonly lines: readonly string[] };

/** What each decision came to that is not told among the findings; while it is open, all it may be. */
export function decidedIn(answer: Answer, topic: Topic): readonly ChoiceAnswer[] {
  const told = new Set(
    answer.findings
      .filter(({ level }) => level !== 'ok')
      .map(({ id }) => topic.findings[id]?.decision),
  );
  return Object.entries(answer.choices).flatMap(([name, choice]) =>
    choice.among.length > 0 && !told.has(name) ? [choice] : [],
  );
}

/** The decisions in words, with what goes with the one it came to. */
export function decidedLines(answer: Answer, topic: Topic): readonly string[] {
  return decidedIn(answer, topic).map(({ label, labels, says }) => {
    const [only, more] = says;
    const why = only === undefined || more !== undefined ? '' : `. ${only}`;
    return `${label}: ${labels.join(' or ')}${why}`;
  });
}

const ended = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** What is taken along, offered or kept, each with what it adds and why, and what it comes to. */
export function selectionParts(answer: Answer, system: UnitSystem): readonly ToldPart[] {
  const amounts = (of: SelectionAnswer['totals']) =>
    Object.entries(of).map(([amount, ends]) =>
      ends.unit === '' ? `${show(ends, '')} ${amount}` : show(ends, ends.unit, system),
    );
  return answer.selections.flatMap(({ label, items, totals }) => {
    const chosen = items.filter(({ chosen: is }) => is !== 'no');
    if (chosen.length === 0) return [];
    const lines = chosen.map((item) => {
      const perhaps = item.chosen === 'unknown' ? ' (perhaps)' : '';
      const sizes = amounts(item.amounts);
      const size = sizes.length === 0 ? '' : ` (${sizes.join(', ')})`;
      return `${item.label}${perhaps}${size}: ${ended(item.because)}`;
    });
    const sums = amounts(totals);
    const all = sums.length === 0 || chosen.length < 2 ? [] : [`In all: ${sums.join(', ')}.`];
    return [{ title: label, lines: [...lines, ...all] }];
  });
}

/** Results in their order; where they all come to nothing there is none. */
export function rankingParts(answer: Answer, system: UnitSystem): readonly ToldPart[] {
  return answer.rankings.flatMap(({ label, entries, rest }) => {
    const inOrder = entries.filter(({ out }) => !out);
    if (inOrder.length === 0) return [];
    const lines = inOrder.map(({ says, value, apart }) => {
      const tied = apart ? '' : ' – not sure to come before the next';
      return `${says}: ${show(value, value.unit, system)}${tied}`;
    });
    const numbered = lines.map((line, i) => `${i + 1}. ${line}`);
    return [{ title: label, lines: rest === '' ? numbered : [...numbered, rest] }];
  });
}

const mostChanges = 8;

/** What would change the verdict, those that ask least first. */
export function changeLines(remedies: readonly Pick<Remedy, 'says'>[]): readonly string[] {
  const more = remedies.length - mostChanges;
  const rest = more === 1 ? 'And one more that asks more.' : `And ${more} more that ask more.`;
  return [...remedies.slice(0, mostChanges).map(({ says }) => says), ...(more > 0 ? [rest] : [])];
}
