import { endsOf } from '../answer/named';
import type { Answer, RankingAnswer } from '../answer/shapes';
import { optionOf, textOf } from '../answer/shown';
import type { Asking } from '../define/shapes';
import { restsOnKnown } from '../formula/reckon';
import { restsOnAny } from '../formula/rests-on';
import { holesIn } from '../words/fill';
import { message } from '../words/message';
import { nounOr, own, type Sayable, text } from '../words/value';
import { limitSaid } from './limit';
import { isRest, listSaid, restSaid } from './lists';
import { isAnythingTold, isMadeOfNothing, isTold, type Matter } from './matter';
import { isNoneInOrder, levelOf, verdictSaid } from './verdict';
import { isAnyShare } from './wide';

/** Which of a topic's askings is answered first: the one named, the first that is implied, the usual one. */
export function askingOf(matter: Matter, named?: string): string | undefined {
  const askings = matter.topic.askings ?? {};
  if (named !== undefined && Object.hasOwn(askings, named)) return named;
  const all = Object.entries(askings);
  const implied = all.find(([, { impliedBy = [] }]) =>
    impliedBy.some((fact) => isTold(matter, fact)),
  );
  return (implied ?? all.find(([, { usual }]) => usual) ?? all[0])?.[0];
}

/** Where all that counts was told, a figure may well be what it is without. */
const isOpenYet = (matter: Matter): boolean => levelOf(matter) === 'unknown';

/** Whether a value is known well enough to be said as what was asked, and not from assumptions alone. */
function isKnown(matter: Matter, name: string): boolean {
  const { run, compiled, asked } = matter;
  const told = Object.keys(asked.facts).filter((fact) => isTold(matter, fact));
  if (!restsOnAny(compiled, name, told)) return false;
  const isFixed = restsOnAny(compiled, name, []);
  const value = run.value(name);
  // None of a thing is no answer either where the verdict stands.
  const isNone = value.kind === 'number' && value.lo === 0 && value.hi === 0;
  if (!isFixed && (isNone || isOpenYet(matter)) && isMadeOfNothing(matter, name)) return false;
  if (value.kind === 'among') return value.options.length === 1;
  if (value.kind === 'truth') return value.yes !== value.no;
  return restsOnKnown(value, run.isOpen) && !isAnyShare(matter.topic, name, value);
}

const isYes = ({ run }: Matter, name: string): boolean => {
  const value = run.value(name);
  return value.kind === 'truth' && value.yes && !value.no;
};

/** What is usual, or is taken for granted in this case and named as that, whatever was told. */
const isUsual = ({ topic, run }: Matter, name: string): boolean =>
  Object.hasOwn(topic.parameters, name) ||
  topic.assumptions.some(({ when, says }) => {
    const value = run.value(when);
    return holesIn(says).includes(name) && value.kind === 'truth' && value.yes && !value.no;
  });

/** The sentence that a topic has for an asking, if all that it names is known. */
function ownSentence(matter: Matter, { says }: Asking): Sayable | undefined {
  const { compiled, run } = matter;
  const all = says === undefined ? [] : typeof says === 'string' ? [{ says }] : says;
  const found = all.find(
    (each) =>
      (!('when' in each) || each.when === undefined || isYes(matter, each.when)) &&
      holesIn(each.says).every((name) => isUsual(matter, name) || isKnown(matter, name)),
  );
  return found && textOf(compiled, run, found.says);
}

/** Whether its sentence is always the same. */
export const isFixed = ({ says }: Asking): boolean =>
  typeof says === 'string' && holesIn(says).length === 0;

/** What certainly comes first of an order, and when; none where that is not known. */
function firstOf({ entries }: RankingAnswer): RankingAnswer['entries'][number] | undefined {
  const [first, second] = entries.filter(({ out }) => !out);
  const isSure = first && Number.isFinite(first.value.lo) && Number.isFinite(first.value.hi);
  return isSure && (first.apart || !second) ? first : undefined;
}

function orderSaid(order: RankingAnswer): Sayable | undefined {
  const { label, entries } = order;
  const first = firstOf(order);
  const [, second] = entries.filter(({ out }) => !out);
  if (!first) return undefined;
  const isTime = first.value.unit === 'd' || first.value.unit === 'h';
  return message('order-told', {
    label: own(label),
    first: first.message,
    value: first.value,
    next: second?.message ?? null,
    after: isTime,
  });
}

/** Of more possible results than these only the ends are named, and that answers nothing. */
const mostPossible = 3;

export const isAnything = ({ level, alternatives }: Answer['findings'][number]): boolean =>
  level === 'unknown' && alternatives.length > mostPossible;

function findingSaid(matter: Matter, id: string): readonly Sayable[] {
  const finding = matter.answer.findings.find((each) => each.id === id);
  if (!finding || finding.level === 'not-asked' || isAnything(finding)) return [];
  // That it is open is no answer, unless it may turn out to be what stops it.
  const declared = matter.topic.findings[id];
  if (finding.code === 'open' && !declared?.first && !declared?.stop) return [];
  if (finding.level === 'ok' && isNoneInOrder(matter)) return [];
  const { wrong, do: todo } = finding.messages;
  return finding.level === 'ok' || !todo ? [wrong] : [wrong, todo];
}

function valueSaid(matter: Matter, name: string): readonly Sayable[] {
  const { topic, compiled, run } = matter;
  const decision = topic.decisions?.[name];
  if (!isKnown(matter, name)) return [];
  if (decision) {
    const value = run.value(name);
    const [only] = value.kind === 'among' ? value.options : [];
    const result = only === undefined ? undefined : decision.results[only];
    if (result?.level === 'ok' && isNoneInOrder(matter)) return [];
    return result ? [textOf(compiled, run, result.says)] : [];
  }
  const value = run.value(name);
  const entry = topic.formulas[name] ?? topic.facts[name] ?? topic.parameters[name];
  const noun = nounOr(entry, name);
  if (value.kind === 'among') {
    return value.options.map((option) =>
      message('figure-is', { noun, value: optionOf(compiled, name, option) }),
    );
  }
  if (value.kind === 'truth') return [];
  return [
    message('figure-is', { noun, value: { ...endsOf(compiled, run, name), style: 'round' } }),
  ];
}

/** What one result of an asking says, if it is known. */
function resultSaid(matter: Matter, name: string, whole: boolean): readonly Sayable[] {
  const { answer } = matter;
  if (name === 'verdict') return levelOf(matter) === 'unknown' ? [] : verdictSaid(matter);
  const [kind = '', id = ''] = name.split(/\.(.*)/);
  if (kind === 'limit') return limitSaid(matter, id);
  if (kind === 'finding') return findingSaid(matter, id);
  const list = answer.selections.find((each) => each.id === name);
  if (list) return [listSaid(list, whole) ?? [], whole ? [] : restSaid(list)].flat();
  const order = answer.rankings.find((each) => each.id === name);
  if (order) return [orderSaid(order) ?? []].flat();
  return Object.hasOwn(answer.series, name) ? [] : valueSaid(matter, name);
}

const isList = ({ answer }: Matter, name: string): boolean =>
  answer.selections.some(({ id }) => id === name);

/** Of what was looked for, what is not in order comes first. */
function wrongFirst({ answer }: Matter, names: readonly string[]): readonly string[] {
  const isWrong = (name: string): boolean =>
    answer.findings.some(
      ({ id, level }) => name === `finding.${id}` && (level === 'stop' || level === 'care'),
    );
  return [...names.filter(isWrong), ...names.filter((each) => !isWrong(each))];
}

/** So many results are said where an asking has no sentence of its own. */
const mostResults = 2;

/**
 * What was asked, answered; where nothing at all was told, by the topic's lists alone. Else the asking's own sentence, and the lists among its results; without a
 * sentence that can be said, the first of its results that are known.
 */
function answered(matter: Matter, asking: string | undefined, whole = false): readonly Sayable[] {
  const declared = asking === undefined ? undefined : matter.topic.askings?.[asking];
  if (!declared) return [];
  if (!isAnythingTold(matter)) {
    const own = declared.results.filter((name) =>
      Object.hasOwn(matter.topic.selections ?? {}, name),
    );
    const listed = own
      .slice(0, whole ? undefined : mostResults)
      .flatMap((n) => resultSaid(matter, n, whole));
    const { says } = declared;
    return listed.length > 0 && isFixed(declared) && typeof says === 'string'
      ? [...listed, text(says)]
      : listed;
  }
  const sentence = ownSentence(matter, declared);
  const lists = declared.results.filter((name) => isList(matter, name));
  const said = (names: readonly string[]) => names.flatMap((n) => resultSaid(matter, n, whole));
  if (sentence) {
    const listed = said(whole ? lists : lists.slice(0, 1));
    // What is the same for all who ask comes after what is of this rig.
    return isFixed(declared) ? [...listed, sentence] : [sentence, ...listed];
  }
  // To whoever told nothing of it the question’s own rule says more than that it is open.
  const isRuled =
    asking !== undefined &&
    matter.topic.everybody?.[asking] !== undefined &&
    !declared.impliedBy?.some((fact) => isTold(matter, fact));
  const isOpen = (name: string): boolean =>
    matter.answer.findings.some(({ id, code }) => name === `finding.${id}` && code === 'open');
  const found = wrongFirst(matter, declared.results)
    .filter((name) => !(isRuled && isOpen(name)))
    .map((n) => resultSaid(matter, n, whole));
  return found
    .filter((each) => each.length > 0)
    .slice(0, whole ? undefined : mostResults)
    .flat();
}

/** The same, and last, once, that a list goes on. */
export function askedFirst(
  matter: Matter,
  asking: string | undefined,
  whole = false,
): readonly Sayable[] {
  const said = answered(matter, asking, whole);
  const [rest] = said.filter(isRest);
  return [...said.filter((each) => !isRest(each)), ...(rest ? [rest] : [])];
}

/** Whether what is asked is answered with yes or no, by the verdict. */
export function isYesOrNo({ topic }: Matter, asking: string | undefined): boolean {
  const declared = asking === undefined ? undefined : topic.askings?.[asking];
  return declared?.yesOrNo === true || declared?.results.includes('verdict') === true;
}

/** Whether an asking is answered by a sentence of its own, with all its figures known. */
export function isAnsweredOwn(matter: Matter, asking: string | undefined): boolean {
  const declared = asking === undefined ? undefined : matter.topic.askings?.[asking];
  return (
    declared !== undefined && isAnythingTold(matter) && ownSentence(matter, declared) !== undefined
  );
}

/** The first figure among what was asked: a number, or the one result of a decision. */
export function askedFigure(matter: Matter, asking: string | undefined): Sayable | undefined {
  const { topic, compiled, run, answer } = matter;
  const results = asking === undefined ? [] : (topic.askings?.[asking]?.results ?? []);
  for (const name of results) {
    const list = answer.selections.find(({ id }) => id === name);
    const count = list?.items.filter(({ chosen }) => chosen !== 'no').length ?? 0;
    if (list && count > 0) return message('count-of', { label: own(list.label), count });
    const order = answer.rankings.find(({ id }) => id === name);
    const first = order && firstOf(order);
    if (first) return message('figure', { noun: first.message, value: first.value });
    if (order) continue;
    if (name === 'verdict' || name.startsWith('limit.') || name.startsWith('finding.')) continue;
    if (Object.hasOwn(answer.series, name) || list || !isKnown(matter, name)) continue;
    const value = run.value(name);
    const entry = topic.formulas[name] ?? topic.facts[name] ?? topic.parameters[name];
    const noun = nounOr(entry ?? topic.decisions?.[name], name);
    if (value.kind === 'number') {
      return message('figure', { noun, value: { ...endsOf(compiled, run, name), style: 'round' } });
    }
    const [only] = value.kind === 'among' ? value.options : [];
    if (only !== undefined) {
      return message('figure', { noun, value: optionOf(compiled, name, only) });
    }
  }
  return undefined;
}

/** The label of an asking. */
export const askingLabel = ({ topic }: Matter, asking: string | undefined): Sayable =>
  text((asking !== undefined && topic.askings?.[asking]?.label) || topic.question);
