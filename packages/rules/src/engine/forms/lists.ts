import type { SelectionAnswer } from '../answer/shapes';
import { message } from '../words/message';
import { own, type Sayable } from '../words/value';
import { wordsIn } from './length';

/** At most so many things are named in a breath, and no more words than these. */
const mostNamed = 5;
const mostNamedWords = 29;

/** As many of the first things as can be named in a breath with the list’s name, one at the least. */
function inABreath<Item extends { readonly label: string }>(
  name: string,
  items: readonly Item[],
): readonly Item[] {
  let words = wordsIn(name);
  return items.slice(0, mostNamed).filter(({ label }, place) => {
    words += wordsIn(label);
    return place === 0 || words <= mostNamedWords;
  });
}

const isOpenOnly = (items: readonly { readonly chosen: string }[]): boolean =>
  items.every(({ chosen }) => chosen === 'unknown');

/** What is certain comes before what is only perhaps. */
function certainFirst<Item extends { readonly label: string; readonly chosen: string }>(
  items: readonly Item[],
): readonly Item[] {
  const isCertain = ({ chosen }: Item): boolean => chosen === 'yes';
  return [...items.filter(isCertain), ...items.filter((each) => !isCertain(each))];
}

/** A list by its groups, its first things and their number; whole, where there is room for it. */
export function listSaid(list: SelectionAnswer, whole: boolean): Sayable | undefined {
  const chosen = list.items.filter(({ chosen: is }) => is !== 'no');
  if (chosen.length === 0) return undefined;
  const groups = [...new Set(chosen.flatMap(({ group }) => group ?? []))];
  const named = whole ? chosen : inABreath(list.label, certainFirst(chosen));
  return message(whole ? 'list-whole' : 'list-short', {
    label: own(list.label),
    of: named.map(({ label, chosen: is }, place) => {
      const goesOn = !whole && isOpenOnly(named.slice(place)) && named[place - 1]?.chosen === is;
      return is === 'unknown' && !goesOn ? message('perhaps-one', { of: own(label) }) : own(label);
    }),
    groups: groups.slice(0, mostNamed).map(own),
    count: chosen.length,
  });
}

/** That a list goes on, for whoever only hears it; of several lists that is said once. */
export function restSaid({ label, items }: SelectionAnswer): readonly Sayable[] {
  const chosen = items.filter(({ chosen: is }) => is !== 'no');
  return inABreath(label, chosen).length < chosen.length ? [message('list-rest', {})] : [];
}

/** That a list goes on. */
export const isRest = (each: Sayable): boolean => 'code' in each && each.code === 'list-rest';
