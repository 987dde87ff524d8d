import type { UnitSystem } from '@tarebook/rules/quantity';
import type { Address } from '../state/address';
import { filedCase } from '../state/filed';
import { readHouses } from '../state/house';
import { type Judged, judgeInSteps, pause } from '../state/judged';
import { type Kept, keptCase } from '../state/kept';
import { openReadersFor } from '../state/reading';
import { ticketOf } from '../state/ticket';
import { openTopic } from '../state/topics';

/** A case as it came and as it was left here; the first of these, judged. */
export type Found = {
  readonly name: string;
  readonly filed: string | undefined;
  readonly kept: string | undefined;
  readonly judged: Judged | undefined;
  /** Whether it came with a link just now; whoever opens one is shown the reader’s face. */
  readonly byLink: boolean;
};

/** Why a case is not opened; with its text, where that is on this device and can be saved. */
export type NotOpened = { readonly says: string; readonly text?: string };

export type CaseAddress = Extract<Address, { page: 'case' }>;

type Texts = Pick<Found, 'filed' | 'kept'>;

/** Nobody types so many letters; what is longer is tried beside the page once more. */
const muchText = 8_000;

async function judgedFirst(texts: Texts, system: UnitSystem): Promise<Judged | undefined> {
  const text = texts.filed ?? texts.kept;
  if (text === undefined) return undefined;
  const judged = await judgeInSteps(text, system);
  // An answer finds its parts when they are first looked at: those of the ticket before it is drawn.
  ticketOf(judged, system);
  await pause();
  return judged;
}

/** Whatever came from elsewhere is read and judged beside the page before it is here. */
async function tooMuchIn(what: string, topic: string, text: string): Promise<string | undefined> {
  const { whyTooMuch } = await import('../aside/first');
  return whyTooMuch(what, [{ topic, text }]);
}

async function foundInLink(
  { topic, name }: CaseAddress,
  packed: string,
  system: UnitSystem,
): Promise<Found | NotOpened> {
  const { openShared } = await import('../state/shared');
  const opened = await openShared(topic, name, packed);
  if ('says' in opened) return opened;
  const says = await tooMuchIn('This link', topic, opened.filed);
  if (says !== undefined) return { says };
  await openReadersFor([opened.filed, opened.kept]);
  return { ...opened, byLink: true, judged: await judgedFirst(opened, system) };
}

async function keptHere({ topic, name }: CaseAddress): Promise<Kept | NotOpened | undefined> {
  // A device that refuses storage still shows what came with the page.
  const kept = await keptCase(topic, name).catch(() => undefined);
  if (!kept || (!kept.untried && kept.text.length <= muchText)) return kept;
  const says = await tooMuchIn('This case', topic, kept.text);
  return says === undefined ? kept : { says, text: kept.text };
}

/** The case that an address names, its rules and readers with it. */
export async function foundCase(
  address: CaseAddress,
  system: UnitSystem,
): Promise<Found | NotOpened> {
  const { topic, name, packed } = address;
  // The text travels beside the rule set, not after it.
  const text = packed === undefined ? filedCase(topic, name) : undefined;
  await Promise.all([readHouses(), openTopic(topic), text]);
  if (packed !== undefined) return foundInLink(address, packed, system);
  const filed = await text;
  const kept = await keptHere(address);
  if (kept && 'says' in kept) return kept;
  const texts = { filed, kept: kept?.text };
  await openReadersFor([texts.filed, texts.kept]);
  return { name, ...texts, byLink: false, judged: await judgedFirst(texts, system) };
}
