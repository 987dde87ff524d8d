import { isRig } from '@tarebook/casebook';
import { answerNow } from '@tarebook/rules/engine';
import type { House } from '../state/house-numbers';
import type { Opened } from '../state/opened';
import { openReader, openReadersFor, openYaml, type Read, readDocument } from '../state/reading';
import type { RigTold } from '../state/rig';
import { openAllTopics, openTopic } from '../state/topics';

/** A text, and the topic whose rules it is read under. */
export type Tried = { readonly topic: string; readonly text: string };

/** What comes from elsewhere and is read beside the page first, so that it cannot hold it. */
export type TrialAsked =
  | { readonly of: 'cases'; readonly cases: readonly Tried[] }
  | { readonly of: 'file'; readonly file: string; readonly bytes: Uint8Array<ArrayBuffer> }
  | {
      readonly of: 'rig';
      readonly name: string;
      readonly text: string;
      readonly houses: readonly House[];
    };

/** What each was read as; undefined where it names a topic that it was not tried under. */
export type CasesTried = readonly (Read | undefined)[];

/** What the page then need not do itself. */
export type TrialOf<Of extends TrialAsked['of']> = Of extends 'cases'
  ? CasesTried
  : Of extends 'file'
    ? Opened
    : RigTold | { readonly says: string };

/** Sent once everything is here and the time that is given begins. */
export const trialBegins = 'trial-begins';

function tryCase(text: string): Read | undefined {
  const { text: _, topic, ...read } = readDocument(text);
  if (!topic) return undefined;
  // Parts of an answer are made when they are read: the page will read them all.
  if (read.troubles.length === 0) Object.values(answerNow(topic, { facts: read.facts }));
  return read;
}

/** Reads and judges, after telling that it begins. */
export async function trialOf(asked: TrialAsked, begins: () => void): Promise<unknown> {
  if (asked.of === 'cases') {
    await Promise.all(asked.cases.map(({ topic }) => openTopic(topic)));
    await openReadersFor(asked.cases.map(({ text }) => text));
    begins();
    return asked.cases.map(({ text }) => tryCase(text)) satisfies CasesTried;
  }
  if (asked.of === 'file') {
    const [{ openCase }] = await Promise.all([
      import('../state/opened'),
      ...[openAllTopics(), openReader(), openYaml()],
    ]);
    begins();
    const opened = openCase(asked.file, asked.bytes);
    if ('says' in opened || isRig(opened.text)) return opened;
    tryCase(opened.text);
    return opened;
  }
  const { rigTold } = await import('../state/rig');
  return rigTold(asked.name, asked.text, asked.houses, begins);
}
