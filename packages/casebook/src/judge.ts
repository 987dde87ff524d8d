import {
  type Answer,
  type Asked,
  answerNow,
  type HouseLayer,
  type Topic,
  withHouse,
} from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';
import type { CaseDocument } from './shapes';

/** What a case is judged under beside what it says itself. */
export type Under = {
  /** The day whose parameters count, in place of the case's own. */
  readonly asOf?: string | undefined;
  /** A dealer's own parameters, by topic; those of another topic are left aside. */
  readonly house?: readonly HouseLayer[] | undefined;
};

/** The topic of a case, a house layer over it, and what is asked. */
export function askedOf(doc: CaseDocument, under: Under = {}): { topic: Topic; asked: Asked } {
  const [first] = doc.troubles;
  if (first) throw new Error(`${first.line}:${first.column}: ${first.says}`);
  if (!doc.topic) throw new Error('The document names no topic.');
  const { facts, readFrom, front } = doc;
  const { id } = doc.topic;
  const layer = under.house?.find((each) => each.topic === id);
  const topic = layer ? withHouse(doc.topic, layer) : doc.topic;
  const asOf = under.asOf ?? front.asOf;
  return { topic, asked: { facts, readFrom, ...(asOf !== undefined && { asOf }) } };
}

/** The same answer at once, for a page that repaints as one types. */
export function judgeCaseNow(doc: CaseDocument, under: Under = {}): Answer {
  const { topic, asked } = askedOf(doc, under);
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
