import type { CaseDocument } from '@tarebook/casebook';
import { numbersSaid, termsOf } from '@tarebook/record';
import type { Answer, LimitAnswer } from '@tarebook/rules/engine';
import { convert, findUnit, show, type UnitSystem, unitOf } from '@tarebook/rules/quantity';
import { levelOf } from '../state/level';
import { stanceOf } from './verdict-said';

/** One thing that a sentence for a customer has to hold. */
export type Part = {
  readonly id: 'verdict' | 'limit' | 'left' | 'ask' | 'caution';
  readonly label: string;
  readonly said: boolean;
  /** What was listened for, for whom it was missed. */
  readonly says: string;
};

/** A figure rounded as people round is right: within a fiftieth of the limit, or ten of its unit. */
const rounding = { share: 0.02, least: 10 } as const;

/** Figures of a sentence, typed or said in words. */
function figuresIn(sentence: string): readonly { value: number; unit: string }[] {
  const typed = [...sentence.matchAll(/(\d[\d,]*(?:\.\d+)?)\s?([a-z°%]+)?/gi)].map(
    ([, figure = '', unit = '']) => ({ value: Number(figure.replaceAll(',', '')), unit }),
  );
  const words = numbersSaid(sentence).map(({ value, to }) => {
    const [, unit = ''] = /^\s?([a-z]+)/i.exec(sentence.slice(to)) ?? [];
    return { value, unit };
  });
  return [...typed, ...words];
}

const spoken: Readonly<Record<string, string>> = {
  ...{ pound: 'lb', pounds: 'lb', lbs: 'lb', kilo: 'kg', kilos: 'kg', kilograms: 'kg' },
  ...{ amp: 'A', amps: 'A', mile: 'mi', miles: 'mi', gallons: 'gal', hours: 'h', watts: 'W' },
};

/** Whether one of the figures is this one, as a person would round it; a bare one is in its unit. */
function isSaid(sentence: string, amount: number, unit: string, slack: number): boolean {
  const wanted = unitOf(unit || '1');
  return figuresIn(sentence).some(({ value, unit: word }) => {
    const own = findUnit(spoken[word.toLowerCase()] ?? word);
    const same = own && own.dimension.join() === wanted.dimension.join();
    const found = same ? convert(value, own, wanted) : value;
    return Math.abs(found - amount) <= slack;
  });
}

/** How a limit may be called: its label, and the rating that it stands for. */
function namesOf({ trace }: Answer, { id, label }: LimitAnswer): readonly string[] {
  const step = trace.steps[`limit.${id}`];
  const rating = step?.from.flatMap((name) => trace.steps[name]?.label ?? [])[1];
  return [label, ...(step ? [step.noun] : []), ...(rating ? [rating] : [])];
}

/** Said by all words of one of its names, or by one that only this limit has. */
function isNamed(sentence: ReadonlySet<string>, answer: Answer, limit: LimitAnswer): boolean {
  const others = new Set(
    answer.limits.filter(({ id }) => id !== limit.id).flatMap(({ label }) => [...termsOf(label)]),
  );
  if ([...termsOf(limit.label)].some((term) => !others.has(term) && sentence.has(term)))
    return true;
  return namesOf(answer, limit).some((name) => {
    const terms = [...termsOf(name)];
    return terms.length > 0 && terms.every((term) => sentence.has(term));
  });
}

const no =
  /\b(?:not|no|never|cannot|over|exceeds?|too (?:heavy|much|many|little|long))\b|n[’']t\b/i;
const open =
  /\b(?:unknown|unless|until|find out|look|ask|check|depends|need|not sure|first)\b|cannot (?:say|tell)|(?:can|do|does)n[’']t (?:know|say|tell)|not know/i;

function verdictPart({ topic }: CaseDocument, answer: Answer, sentence: string): Part {
  const level = topic ? levelOf(topic.outcomes, answer.outcome) : 'unknown';
  const { affirms, refuses, settles, agrees, objects } = stanceOf(sentence);
  // Whoever says the opposite as well has not said it, whatever other words stand there.
  const said =
    level === 'stop'
      ? objects && !affirms
      : level === 'unknown' || level === 'if'
        ? open.test(sentence) && !settles
        : agrees && !refuses;
  return { id: 'verdict', label: 'The verdict', said, says: answer.words };
}

function limitParts(
  answer: Answer,
  limit: LimitAnswer,
  sentence: string,
  system: UnitSystem,
): Part[] {
  const { headroom, label } = limit;
  const named = isNamed(termsOf(sentence), answer, limit);
  const parts: Part[] = [
    { id: 'limit', label: 'The limit that runs out first', said: named, says: label.toLowerCase() },
  ];
  const { lo, hi, unit } = headroom;
  if (!Number.isFinite(lo + hi)) return parts;
  const nearest = Math.abs(lo) <= Math.abs(hi) ? lo : hi;
  const size = Math.abs(Number.isFinite(limit.limit.hi) ? limit.limit.hi : nearest);
  const slack = Math.max(rounding.share * size, Math.min(rounding.least, size * 0.1));
  const said = [lo, hi].some((each) => isSaid(sentence, Math.abs(each), unit, slack));
  const over = hi < 0;
  const shown = show(
    {
      ...headroom,
      lo: Math.min(Math.abs(lo), Math.abs(hi)),
      hi: Math.max(Math.abs(lo), Math.abs(hi)),
    },
    unit,
    system,
  );
  return [
    ...parts,
    {
      id: 'left',
      label: over ? 'How far it is over' : 'What is left',
      said: said && (!over || no.test(sentence)),
      says: `${shown} ${over ? 'over' : 'left'}`,
    },
  ];
}

/** A sentence of the rules is said where two of its telling words are. */
function isTold(text: string, terms: ReadonlySet<string>): boolean {
  const own = [...termsOf(text)];
  return own.filter((term) => terms.has(term)).length >= Math.min(2, own.length);
}

/** What stops where no limit does, such as a coupler of another size. */
function stopParts({ findings }: Answer, terms: ReadonlySet<string>): Part[] {
  const stops = findings.filter(({ level }) => level === 'stop');
  const [first] = stops;
  if (!first) return [];
  const said = stops.some(({ label, says }) => isTold(`${label} ${says}`, terms));
  return [{ id: 'limit', label: 'What stops it', said, says: first.says }];
}

function cautionPart({ cautions }: Answer, terms: ReadonlySet<string>): Part[] {
  if (cautions.length === 0) return [];
  const said = cautions.some((each) => isTold(each, terms));
  return [
    {
      id: 'caution',
      label: 'A caution',
      said,
      says: `for instance: ${cautions.slice(0, 2).join(' ')}`,
    },
  ];
}

/**
 * What a sentence for a customer says of what it should: the verdict, the limit, what is left, the
 * caution; where the verdict is open, what has to be asked first. The same words always count alike.
 */
export function heardIn(
  sentence: string,
  doc: CaseDocument,
  answer: Answer,
  system: UnitSystem,
): readonly Part[] {
  const terms = termsOf(sentence);
  const limit = answer.limits.find(({ id }) => id === answer.binding);
  const [first] = answer.missing;
  const level = doc.topic ? levelOf(doc.topic.outcomes, answer.outcome) : 'unknown';
  const parts: Part[] = [verdictPart(doc, answer, sentence)];
  if (level === 'unknown' && first) {
    const own = [...termsOf(first.label)];
    const said = own.some((term) => terms.has(term));
    parts.push({
      id: 'ask',
      label: 'What has to be asked first',
      said,
      says: first.label.toLowerCase(),
    });
  } else if (level === 'stop' && limit?.state !== 'stop') parts.push(...stopParts(answer, terms));
  else if (limit) parts.push(...limitParts(answer, limit, sentence, system));
  return [...parts, ...cautionPart(answer, terms)];
}
