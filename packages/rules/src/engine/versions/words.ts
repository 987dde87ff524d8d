import { show } from '../../quantity';
import { rulingLevels, rulingsAt } from '../condition/rules';
import { conditionFrom } from '../condition/text';
import type { Condition, Finding, Source, Topic } from '../define/shapes';
import { citation, type FieldChange, type TopicChange } from './compare';
import { isRecord } from './data';

/** A condition as a sentence has it: `tongue.loaded greater than tongue.limit`. */
export const conditionInWords = (when: string | Condition): string => inWords(conditionFrom(when));

/** Every ruling of a finding, with when it holds and what it says. */
export const rulingsInWords = (finding: Finding) =>
  rulingLevels.flatMap((level) =>
    rulingsAt(finding, level).map(({ when, wrong, because = '', do: todo = '' }) => ({
      level,
      when: conditionInWords(when),
      says: [wrong, because, todo].filter((each) => each !== '').join(' '),
    })),
  );

function inWords(condition: Condition): string {
  if ('all' in condition) return condition.all.map(inWords).join(' and ');
  if ('any' in condition) return `(${condition.any.map(inWords).join(' or ')})`;
  const { fact, operator, value } = condition;
  const right = typeof value === 'object' && 'fact' in value ? value.fact : String(value);
  const words = operator.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return `${fact} ${words} ${right}`;
}

/** What a reader calls the parts of a rule set. */
const partWords: Readonly<Record<string, string>> = {
  topic: 'The topic itself',
  facts: 'What is asked',
  parameters: 'Numbers of the trade',
  tables: 'Tables',
  wordTables: 'Tables by word',
  decisions: 'Decisions',
  selections: 'Things chosen',
  rankings: 'Orders of size',
  simulations: 'What is reckoned step by step',
  catalogues: 'Catalogues',
  changes: 'What may be changed',
  formulas: 'How it reckons',
  limits: 'Limits',
  findings: 'What it says beside the limits',
  outcomes: 'Answers',
  apart: 'Results shown by themselves',
  headline: 'Results shown first',
  tells: 'Results said with the verdict',
  assumptions: 'What is taken for granted',
  cautions: 'Cautions',
  sources: 'Sources',
};

export const partInWords = (part: string): string => partWords[part] ?? `Its “${part}”`;

const fieldWords: Readonly<Record<string, string>> = {
  '': 'it',
  label: 'its name',
  short: 'its short name',
  unit: 'its unit',
  is: 'the formula',
  values: 'the value',
  range: 'what a dealer may choose',
  source: 'its source',
  least: 'the least it may be',
  most: 'the most it may be',
  ask: 'the question',
  where: 'where it is read',
  means: 'what it means',
  options: 'the options',
  used: 'what is used',
  limit: 'what that is held against',
  empty: 'what stands on it empty',
  margin: 'the margin kept free',
  askedBy: 'which facts ask it',
  askedByKnown: 'which facts must be known to ask it',
  askedWhen: 'when it is asked at all',
  'stop.when': 'what stops it',
  'stop.wrong': 'the sentence said then',
  stopOpen: 'what a stop counts as that may be',
  'unknown.when': 'what cannot be told',
  'if.when': 'what must be made sure of',
  'care.when': 'what calls for care',
  'care.wrong': 'the sentence said with care',
  saidOpen: 'whether it is said where no verdict can be told',
  otherwise: 'the sentence said when neither holds',
  open: 'the sentence said when it cannot be told',
  marginLeast: 'what is kept free at the least',
  'cautious.when': 'when what is used is an estimate',
  'cautious.used': 'what is used by a cautious estimate',
  do: 'what to do',
  near: 'what to do where it is kept only just',
  'silent.value': 'what silence is taken for',
  'silent.says': 'the sentence about silence',
  'silent.source': 'the source for what silence is taken for',
  noun: 'its name within a sentence',
  plural: 'whether its short name is more than one thing',
  exceeded: 'whether it is exceeded or goes over',
  supply: 'whether it falls short or goes over',
  exact: 'whether it is taken as written',
  instead: 'how to know it better',
  asks: 'how much it asks',
  rows: 'the rows',
  says: 'the sentence',
  order: 'the order',
};

const isSource = (value: unknown): value is Source => isRecord(value) && 'cite' in value;
const isCondition = (value: unknown): value is Condition =>
  isRecord(value) && ('all' in value || 'any' in value || 'operator' in value);
const isDated = (value: unknown): value is { from: string; value: number; until?: string } =>
  isRecord(value) && typeof value.from === 'string' && typeof value.value === 'number';

const quantity = (value: number, unit: string): string =>
  unit === '' ? String(value) : show({ lo: value, hi: value }, unit);

const most = 300;
const cut = (text: string): string => (text.length > most ? `${text.slice(0, most)} …` : text);

/** A value of a rule set as a person would write it down. */
function valueInWords(field: string, value: unknown, unit: string, brief = false): string {
  if (value === undefined) return 'not there';
  if (typeof value === 'string') return field === 'unit' ? value || 'none' : `“${cut(value)}”`;
  if (typeof value === 'number') return quantity(value, unit);
  if (isSource(value)) return citation(value, brief);
  if (isCondition(value)) return conditionInWords(value);
  if (Array.isArray(value)) {
    if (field === 'range') return value.map((each) => valueInWords('', each, unit)).join(' to ');
    return value.length === 0 ? 'none' : value.map((each) => listed(each, unit)).join(', ');
  }
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : cut(JSON.stringify(value));
}

function listed(each: unknown, unit: string): string {
  if (isDated(each)) {
    const until = each.until ? ` until ${each.until}` : '';
    return `${quantity(each.value, unit)} since ${each.from}${until}`;
  }
  return typeof each === 'string' ? each : cut(JSON.stringify(each));
}

export const fieldInWords = (field: string): string => fieldWords[field] ?? `“${field}”`;

/** The fields that say most about an entry that is new or gone, as far as it has them. */
const telling = ['', 'is', 'values', 'used', 'limit', 'stop.when', 'care.when', 'unit', 'source'];

const unitIn = (fields: readonly FieldChange[], side: 'was' | 'now', otherwise: string): string => {
  const unit = fields.find(({ field }) => field === 'unit')?.[side];
  return typeof unit === 'string' ? unit : otherwise;
};

/** “Payload used (payload.used)”, or a sentence in quotes where there is no more to a thing. */
export function nameOf({ part, id, label }: Pick<TopicChange, 'part' | 'id' | 'label'>): string {
  if (part === 'sources' || id === 'order') return label;
  if (id !== label)
    return id.startsWith('#') || id.includes(' ') ? `“${label}”` : `${label} (${id})`;
  return id.includes(' ') ? `“${id}”` : id;
}

function unitOfEntry(topic: Topic, { part, id }: TopicChange): string {
  const fact = topic.facts[id];
  if (part === 'facts') return fact?.kind === 'quantity' ? fact.unit : '';
  return part === 'parameters' ? (topic.parameters[id]?.unit ?? '') : '';
}

/**
 * A change in one sentence: what it was, what it is.
 *
 * @param topic one of the two versions, for the unit of an entry whose unit did not change
 */
export function sayChange(change: TopicChange, topic: Topic): string {
  const { kind, fields } = change;
  const name = nameOf(change);
  const unit = unitOfEntry(topic, change);
  if (kind === 'changed') {
    const told = fields.map(({ field, was, now }) => {
      const [before, after] = [unitIn(fields, 'was', unit), unitIn(fields, 'now', unit)];
      return `${fieldInWords(field)} was ${valueInWords(field, was, before)}, is ${valueInWords(field, now, after)}`;
    });
    return `${name}: ${told.join('; ')}.`;
  }
  const side = kind === 'added' ? 'now' : 'was';
  const own = unitIn(fields, side, unit);
  const told = telling.flatMap((wanted) => {
    const found = fields.find(({ field }) => field === wanted);
    const value = found?.[side];
    if (value === undefined || (wanted === '' && value === change.id)) return [];
    return [`${fieldInWords(wanted)} ${valueInWords(wanted, value, own, true)}`];
  });
  const more = told.length === 0 || change.part === 'sources' ? '' : `: ${told.join('; ')}`;
  return `${name} ${kind === 'added' ? 'is new' : 'is gone'}${more}.`;
}
