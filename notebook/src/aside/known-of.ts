import { askedOf } from '@tarebook/casebook';
import { knownOf } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import type { House } from '../state/house';
import { allowedHouse } from '../state/house-numbers';
import { openReadersFor, readDocument } from '../state/reading';
import { openTopic } from '../state/topics';

/** A case whose verdict cannot be said, and the units its sentence is wanted in. */
export type KnownAsked = {
  readonly topic: string;
  readonly text: string;
  readonly system: UnitSystem;
  readonly house: House | undefined;
};

/** What can be said of a case though its verdict cannot; '' where there is nothing. */
export async function knownIn({ topic: id, text, system, house }: KnownAsked): Promise<string> {
  await Promise.all([openTopic(id), openReadersFor([text])]);
  const doc = readDocument(text);
  if (doc.troubles.length > 0 || !doc.topic) return '';
  const layer = house && allowedHouse(doc.topic, house).house;
  const { topic, asked } = askedOf(doc, layer ? { house: [layer] } : {});
  return knownOf(topic, { ...asked, units: system }, { asking: doc.front.asking });
}
