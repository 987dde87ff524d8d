import { type Answer, answer } from '@tarebook/rules/engine';
import { refuseNoDocument } from './doors';
import { askedOf, type Under } from './judge';
import type { CaseDocument } from './shapes';

/** The answer of a case, decided by json-rules-engine. Throws for a document with troubles. */
export async function judgeCase(doc: CaseDocument, under: Under = {}): Promise<Answer> {
  refuseNoDocument(doc);
  const { topic, asked } = askedOf(doc, under);
  return answer(topic, asked);
}
