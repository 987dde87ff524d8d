import type { Quantity, Say, Sayable } from '../value';
import { listed, spaced } from './grammar';

type Named = { readonly name: Sayable };
type Against = Named & { readonly now: Quantity; readonly most: Quantity };
type Moved = Against & { readonly from: Quantity };

const goes = ({ name, from, now, most }: Moved, say: Say): string =>
  `${say(name)} goes from ${say(from)} to ${say(now)} of ${say(most)}`;

export const remedy = {
  'not-said': () => 'not said',
  row: ({ row }: { readonly row: number }) => `row ${row}`,
  'on-side': ({ far, side }: { readonly far: Quantity; readonly side: Sayable }, say: Say) =>
    `${say(far)} ${say(side)}`,

  /** The changes, what comes out then, and what that makes stale. */
  remedy: (
    values: {
      readonly changes: readonly Sayable[];
      readonly outcome: Sayable;
      readonly reminders: readonly Sayable[];
    },
    say: Say,
  ) =>
    spaced([
      ...values.changes.map(say),
      `Then: ${say(values.outcome)}.`,
      ...values.reminders.map(say),
    ]),

  'worse-elsewhere': (
    { remedy, of }: { readonly remedy: Sayable; readonly of: readonly Sayable[] },
    say: Say,
  ) => `${say(remedy)} But that makes something else worse: ${listed(of.map(say))}.`,

  'in-topic': ({ label, topic }: { readonly label: Sayable; readonly topic: Sayable }, say: Say) =>
    `${say(label)} (${say(topic)})`,

  'no-help': (
    values: { readonly change: Sayable; readonly turns: boolean; readonly why: Sayable },
    say: Say,
  ) => {
    const lead = values.turns ? 'That will not do' : 'That does not turn it';
    return `${say(values.change)} ${lead}: ${say(values.why)}`;
  },

  'why-not': (
    { of, fails }: { readonly of: readonly Sayable[]; readonly fails: readonly Sayable[] },
    say: Say,
  ) => {
    const but = fails.length === 0 ? '' : `; but then it fails on ${listed(fails.map(say))}`;
    return `${of.map(say).join('; ')}${but}.`;
  },

  'changes-nothing': ({ name }: Named, say: Say) => `it changes nothing about ${say(name)}`,
  settles: ({ name }: Named, say: Say) => `it settles ${say(name)}`,
  'comes-right': ({ name }: Named, say: Say) => `${say(name)} comes right`,
  'does-nothing': ({ name, now, most }: Against, say: Say) =>
    `it does nothing for ${say(name)}, ${say(now)} of ${say(most)} as before`,
  'makes-worse': (values: Moved, say: Say) => `${goes(values, say)}, and that is worse`,
  'not-enough': (values: Moved, say: Say) => `${goes(values, say)}, and that is not enough`,
};
