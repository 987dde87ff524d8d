import { askedOf } from '@tarebook/casebook';
import { answerNow } from '@tarebook/rules/engine';
import type { Verdict, VerdictAsked } from '../cases/verdict';
import { allowedHouse } from '../state/house-numbers';
import { levelOf } from '../state/level';
import { openReadersFor, readDocument } from '../state/reading';
import { openTopic } from '../state/topics';

/** The verdict of a case; of one that cannot be read as it stands, that. */
export async function verdictOf({ topic: id, text, house }: VerdictAsked): Promise<Verdict> {
  await Promise.all([openTopic(id), openReadersFor([text])]);
  const doc = readDocument(text);
  if (doc.troubles.length > 0 || !doc.topic)
    return { stands: 'unknown', words: 'not readable yet' };
  const layer = house && allowedHouse(doc.topic, house).house;
  const { topic, asked } = askedOf(doc, layer ? { house: [layer] } : {});
  const { outcome, words, missing } = answerNow(topic, asked);
  const stands = levelOf(topic.outcomes, outcome);
  const [next] = missing;
  return { stands, words, ...(stands === 'unknown' && next && { asks: next.ask }) };
}
