import type { Answer, Step } from '@tarebook/rules/engine';
import { shownLimit } from './shown-limit';
import type { Walked } from './walked';

/** A line of the working on a wall: what, from which figures, and what they come to. */
export type Sum = {
  readonly id: string;
  readonly label: string;
  /** '' where it would be too long for a wall. */
  readonly working: string;
  readonly says: string;
};

/** More lines than that, or longer ones, nobody reads from ten meters. */
const mostLines = 6;
const longest = 120;

/** A year alone is set without a comma: it is read off, and nobody reckons it. */
const year = /^\d{4}(–\d{4})?$/;

/** Whether a step says more than a figure that was told, and comes to something. */
function isReckoned({ kind, working = '', value, ends }: Step): boolean {
  if (kind !== 'formula' || !ends || year.test(value)) return false;
  const isFigure = ends.hi > 0 && (Number.isFinite(ends.hi) || ends.lo > 0);
  return isFigure && working !== value && /\d.*[+−×÷]/.test(working);
}

/** What the working is to lead to: the result that was asked for, then both sides of the limit shown. */
function endsOf({ doc, answer, question }: Walked): readonly string[] {
  const { topic } = doc;
  const shown = shownLimit(topic, answer);
  const { used = '', limit = '' } = (shown && topic?.limits[shown.id]) ?? {};
  const asked = question.kind === 'number' ? question.result : '';
  const ends = [asked, used, limit].filter((name) => answer.trace.steps[name]);
  return ends.length > 0 ? [...new Set(ends)] : (topic?.headline ?? []);
}

/** The steps below some, the nearest first, each once. */
function nearest({ trace }: Answer, ends: readonly string[]): readonly string[] {
  const found = new Set(ends);
  for (const name of found) for (const each of trace.steps[name]?.from ?? []) found.add(each);
  return [...found];
}

/** Those of some names that a step rests on before itself, so that it is read as it is reckoned. */
function inOrder({ trace }: Answer, ends: readonly string[], wanted: ReadonlySet<string>) {
  const seen = new Set<string>();
  const order: string[] = [];
  const visit = (name: string): void => {
    if (seen.has(name)) return;
    seen.add(name);
    for (const each of trace.steps[name]?.from ?? []) visit(each);
    if (wanted.has(name)) order.push(name);
  };
  for (const name of ends) visit(name);
  return order;
}

/** The few lines that lead to what was asked and to the limit that a verdict is about; none where nothing is reckoned. */
export function sumsOf(walked: Walked): readonly Sum[] {
  const { answer } = walked;
  const { steps } = answer.trace;
  const ends = endsOf(walked);
  const said = new Set<string>();
  const wanted = nearest(answer, ends).filter((name) => {
    const step = steps[name];
    // A step that came down to one other is told by that other's working.
    const { working = '' } = step ?? {};
    const isOpen = working.includes('unknown') && !ends.includes(name);
    if (!step || !isReckoned(step) || isOpen || said.has(working)) return false;
    said.add(working);
    return true;
  });
  return inOrder(answer, ends, new Set(wanted.slice(0, mostLines))).flatMap((id): Sum[] => {
    const step = steps[id];
    if (!step) return [];
    const { label, value, working = '', from } = step;
    // A day is no figure that anybody reckons with: an age is said as it is.
    const isShown = working.length <= longest && !from.some((each) => steps[each]?.kind === 'day');
    return [{ id, label, working: isShown ? working : '', says: value }];
  });
}
