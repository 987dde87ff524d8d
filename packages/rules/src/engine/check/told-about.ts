import type { Topic } from '../define/shapes';
import { holesIn } from '../words/fill';
import { meant } from './near';
import type { Note } from './noted';
import { presentId } from './renamed';

/** Everything a topic can answer with: its verdict, a value, a list, a ranking, a limit, a finding. */
function isResult(topic: Topic, all: ReadonlySet<string>, name: string): boolean {
  if (name === 'verdict') return true;
  const [kind = '', id = ''] = name.split(/\.(.*)/);
  if (kind === 'limit') return Object.hasOwn(topic.limits, id);
  if (kind === 'finding') return Object.hasOwn(topic.findings, id);
  const told = Object.values(topic.catalogues ?? {}).map(({ tells }) => tells ?? {});
  const lists = Object.assign({}, topic.selections, topic.rankings, topic.simulations, ...told);
  return all.has(name) || Object.hasOwn(lists, name);
}

/** What may be told of a choice. */
function optionsOf({ facts }: Topic, name: string): readonly string[] {
  const fact = facts[name];
  return fact?.kind === 'choice' ? fact.options : fact?.kind === 'yes-no' ? ['yes', 'no'] : [];
}

/** The values that stand in the words of a topic: a number that is only said is used all the same. */
export function namesSaid(topic: Topic): ReadonlySet<string> {
  const { askings = {}, how = {}, selections = {}, cautions, assumptions } = topic;
  const texts = [
    ...Object.values(askings).flatMap(({ says = [] }) =>
      typeof says === 'string' ? [says] : says.map((each) => each.says),
    ),
    ...Object.values(how).flatMap(({ steps, caution }) => [...steps, caution]),
    ...Object.values(selections).flatMap(({ items }) =>
      Object.values(items).map(({ because }) => because),
    ),
    ...[...cautions, ...assumptions].map(({ says }) => says),
  ];
  return new Set(texts.flatMap(holesIn));
}

/** The texts and words of a topic that stand beside its rules: askings, how-tos, what people call things. */
export function checkToldAbout(topic: Topic, known: ReadonlySet<string>, note: Note): void {
  const holes = (at: string, text: string | undefined): void => {
    for (const name of text === undefined ? [] : holesIn(text)) {
      if (!known.has(name)) note('not-a-hole', at, name, meant(name, known));
    }
  };
  const isFact = (name: string): boolean => Object.hasOwn(topic.facts, name);
  const noFact = (at: string, name: string): void =>
    note('not-a-fact', at, name, meant(name, Object.keys(topic.facts)));
  for (const [id, { results, impliedBy = [], says }] of Object.entries(topic.askings ?? {})) {
    const at = `askings ${id}`;
    for (const name of results) {
      if (!isResult(topic, known, name)) note('not-a-result', at, name, meant(name, known));
    }
    for (const name of impliedBy) {
      if (!isFact(name)) noFact(`${at} impliedBy`, name);
    }
    const all = says === undefined || typeof says === 'string' ? [{ says }] : says;
    for (const { says: words, ...only } of all) {
      holes(at, words);
      if ('when' in only && only.when !== undefined && !known.has(only.when))
        note('not-yes-no', `${at} says`, only.when, meant(only.when, known));
    }
  }
  for (const [id, each] of Object.entries(topic.everybody ?? {})) {
    const at = `everybody ${id}`;
    const askings = Object.keys(topic.askings ?? {});
    if (id !== 'any' && !askings.includes(id))
      note('not-an-asking', at, id, { options: [...askings, 'any'], ...meant(id, askings) });
    for (const words of [
      each.rule,
      each.because,
      each.otherwise,
      each.givenSays,
      each.worked?.says,
      ...(each.fromTold ?? []).map(({ says }) => says),
    ])
      holes(at, words);
    for (const name of each.look) {
      if (!isFact(name)) noFact(`${at} look`, name);
    }
  }
  for (const { says, fits = [] } of topic.cautions) {
    for (const name of fits) {
      const [fact = '', option] = name.split('!=');
      const isOption = option !== undefined && optionsOf(topic, fact).includes(option);
      if (!isFact(name) && !isOption && !isResult(topic, known, name))
        note('fits-nothing', 'cautions', name, { of: says });
    }
  }
  for (const [id, { steps, caution, when }] of Object.entries(topic.how ?? {})) {
    const at = `how ${id}`;
    for (const text of [...steps, caution]) holes(at, text);
    if (when !== undefined && !known.has(when))
      note('not-yes-no', `${at} when`, when, meant(when, known));
  }
  const { facts = {}, options = {} } = topic.called ?? {};
  for (const name of [...Object.keys(facts), ...Object.keys(options)]) {
    if (!isFact(name)) noFact('called', name);
  }
  for (const [name, words] of Object.entries(options)) {
    const known = optionsOf(topic, name);
    for (const option of Object.keys(words)) {
      if (!known.includes(option))
        note('not-an-option', 'called', option, {
          ...{ of: name, options: known },
          ...meant(option, known),
        });
    }
  }
  for (const [old, renamed] of Object.entries(topic.renamed ?? {})) {
    const now = presentId(topic, old);
    if ((isFact(old) && old !== now) || !isFact(now))
      note('renamed-wrongly', 'renamed', now, { of: old });
    const fact = topic.facts[now];
    const known = fact?.kind === 'choice' ? fact.options : ['yes', 'no'];
    const values = typeof renamed === 'string' ? {} : (renamed.values ?? {});
    for (const [word, options] of Object.entries(values)) {
      const strange = options.find((each) => !known.includes(each));
      if (strange !== undefined)
        note('not-an-option', `renamed ${old} ${word}`, strange, { of: now, options: known });
      else if (options.length === 0)
        note('renamed-to-nothing', `renamed ${old}`, '', { of: word, options: known });
    }
  }
}
