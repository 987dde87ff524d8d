import type { Say, Sayable } from '../value';
import { capital, spaced } from './grammar';

const days = new Intl.DateTimeFormat('en-US', { dateStyle: 'long', timeZone: 'UTC' });

/** “March 31, 2027” */
const dayOf = (day: string): string => days.format(new Date(`${day}T00:00:00Z`));

/** Whoever keeps a note; where nobody is named, whoever answers. */
const keeper = (owner: Sayable | null, say: Say): string =>
  owner ? `the ${say(owner)}` : 'whoever knows';

type Kept = { readonly owner: Sayable | null };
type Dated = { readonly until: string };
type Leaning = { readonly title: Sayable; readonly sentence: Sayable };

/** The words of notes: answers that are no calculation. */
export const note = {
  'note-standing': ({ expired }: { readonly expired: boolean }) => (expired ? 'expired' : 'holds'),
  'note-until': ({ until }: Dated) => `This is good until ${dayOf(until)}.`,
  'note-was-until': ({ until, owner }: Dated & Kept, say: Say) =>
    `This was good until ${dayOf(until)}: check with ${keeper(owner, say)} before you say it.`,
  'note-check-first': ({ until, owner }: Dated & Kept, say: Say) =>
    `What we have on this was good until ${dayOf(until)}, so please have ${keeper(owner, say)} check it before you count on it.`,
  'note-as-it-was': () => 'Until then it stood like this.',
  'note-ask-first': ({ owner }: Kept, say: Say) => `Ask ${keeper(owner, say)} before you say it.`,
  'note-ask-us': ({ owner }: Kept, say: Say) =>
    `Please ask us before you count on it: ${keeper(owner, say)} tells you what is true for you.`,
  'note-kept-by': ({ owner }: Kept, say: Say) =>
    `${capital(keeper(owner, say))} keeps this up to date.`,
  'note-case-says': ({ title, sentence }: Leaning, say: Say) =>
    `Our worked case, ${say(title)}, comes out like this: ${say(sentence)}`,
  'note-link': (
    { label, address }: { readonly label: Sayable; readonly address: Sayable },
    say: Say,
  ) => `${say(label)}: ${say(address)}`,
  'note-more': ({ label }: { readonly label: Sayable }, say: Say) =>
    `More about it is here: ${say(label)}.`,
  'note-sentence': (
    {
      expired,
      first,
      until,
      owner,
    }: Dated & Kept & { readonly expired: boolean; readonly first: Sayable },
    say: Say,
  ) =>
    expired
      ? `Good until ${dayOf(until)}; check with ${keeper(owner, say)} before you say it.`
      : spaced([say(first)]),
  'note-as-of': ({ day }: { readonly day: string }) => `Looked at on ${dayOf(day)}.`,
};
