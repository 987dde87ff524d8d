import { type Answer, type Asked, answerNow, type Topic } from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';
import type { CaseDocument } from './shapes';

export function askedOf(doc: CaseDocument): { topic: Topic; asked: Asked } {
  const [first] = doc.troubles;
  if (first) throw new Error(`${first.line}:${first.column}: ${first.says}`);
  if (!doc.topic) throw new Error('The document names no topic.');
  const { facts, readFrom, front } = doc;
  return { topic: doc.topic, asked: { facts, readFrom, ...(front.asOf && { asOf: front.asOf }) } };
}

/** The same answer at once, for a page that repaints as one types. */
export function judgeCaseNow(doc: CaseDocument): Answer {
  const { topic, asked } = askedOf(doc);
  return answerNow(topic, asked);
}

/** What a live value in prose shows: a result, a fact as given, or the verdict. */
export function liveValue(
  doc: CaseDocument,
  found: Answer,
  name: string,
  system: UnitSystem,
): string {
  if (name === 'verdict') return found.words;
  if (name === 'limit.binding') return found.binding ?? 'none';
  const value = found.values[name];
  if (value) return show(value, value.unit, system);
  const choice = found.choices[name];
  if (choice) return choice.labels.join(' or ');
  const given = doc.facts[name];
  return typeof given === 'string' ? given : (found.trace.steps[name]?.value ?? 'unknown');
}
