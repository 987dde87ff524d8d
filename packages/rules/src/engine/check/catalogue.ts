import type { Catalogue } from '../define/catalogue';
import type { Topic } from '../define/shapes';
import { meant } from './near';
import type { Note } from './noted';

/** Years in which two offers of one option overlap are years in which nobody knows which holds. */
function checkOffers(at: string, catalogue: Catalogue, note: Note): void {
  const last = catalogue.years.at(-1) ?? '';
  const options = Object.keys(catalogue.options);
  for (const [list, offers] of Object.entries(catalogue.offers)) {
    for (const [i, { option, from, to = last }] of offers.entries()) {
      const place = `${at}, offers ${list}, row ${i + 1}`;
      if (!Object.hasOwn(catalogue.options, option)) {
        note('not-of-catalogue', place, option, {
          ...{ of: 'option', options },
          ...meant(option, options),
        });
      }
      for (const year of [from, to]) {
        if (!catalogue.years.includes(year)) {
          note('not-of-catalogue', place, year, { of: 'year', options: catalogue.years });
        }
      }
      if (from > to) note('ends-before-it-begins', place, to, { of: from });
      const twice = offers
        .slice(0, i)
        .some((other) => other.option === option && other.from <= to && from <= (other.to ?? last));
      if (twice) note('offered-twice', place, option);
    }
  }
}

function checkRules(at: string, catalogue: Catalogue, note: Note): void {
  const options = Object.keys(catalogue.options);
  for (const [i, rule] of catalogue.rules.entries()) {
    const place = `${at}, rule ${i + 1}`;
    const named = rule.kind === 'one-of' ? rule.others : [rule.option, ...rule.others];
    for (const [at, option = ''] of named.entries()) {
      if (!options.includes(option)) {
        note('not-of-catalogue', place, option, {
          ...{ of: 'option', options },
          ...meant(option, options),
        });
      }
      if (named.indexOf(option) < at) note('named-twice', place, option);
    }
    if (rule.others.length === 0) note('alone-in-rule', place, rule.kind);
  }
}

function checkModels(at: string, catalogue: Catalogue, options: readonly string[], note: Note) {
  const { models, years } = catalogue;
  const figures = Object.keys(Object.values(models)[0]?.figures ?? {});
  const lists = Object.keys(catalogue.offers);
  const used = new Set(Object.values(catalogue.options).map(({ place }) => place));
  for (const [id, model] of Object.entries(models)) {
    const place = `${at}, model ${id}`;
    if (!options.includes(id)) {
      note('not-an-option', place, id, { of: catalogue.model, options });
    }
    if (!lists.includes(model.offers)) {
      note('not-of-catalogue', place, model.offers, { of: 'list of offers', options: lists });
    }
    const [first, last] = model.sold;
    for (const year of [first, last]) {
      if (!years.includes(year))
        note('not-of-catalogue', `${place} sold`, year, { of: 'year', options: years });
    }
    if (first > last) note('ends-before-it-begins', `${place} sold`, last, { of: first });
    for (const figure of figures) {
      if (!Number.isFinite(model.figures[figure])) {
        note('no-figure-of-model', place, figure);
      }
    }
    for (const each of used) {
      if (!Number.isFinite(model.places[each])) note('no-place-of-model', place, each);
    }
  }
  for (const option of options) {
    if (!Object.hasOwn(models, option)) note('no-model', at, option);
  }
}

/** Everything that a catalogue names is there, in its years, once. */
export function checkCatalogue(topic: Topic, at: string, catalogue: Catalogue, note: Note): void {
  const choice = (name: string): readonly string[] => {
    const fact = topic.facts[name];
    if (fact?.kind === 'choice') return fact.options;
    note('not-a-choice', at, name);
    return [];
  };
  checkModels(at, catalogue, choice(catalogue.model), note);
  const years = choice(catalogue.year);
  if (years.join() !== catalogue.years.join()) {
    const found = catalogue.years.join(', ');
    note('other-years', at, found, { of: catalogue.year, options: years });
  }
  if (catalogue.years.join() !== catalogue.years.toSorted().join()) {
    note('not-rising', at, catalogue.years.join(', '), { of: 'years' });
  }
  for (const [option, fact] of Object.entries(catalogue.wishes)) {
    if (!Object.hasOwn(catalogue.options, option)) {
      const options = Object.keys(catalogue.options);
      note('not-of-catalogue', `${at} wishes`, option, { of: 'option', options });
    }
    const found = topic.facts[fact];
    if (found?.kind !== 'yes-no' || found.silent) {
      note('not-a-wish', at, fact, { of: option });
    }
  }
  checkOffers(at, catalogue, note);
  checkRules(at, catalogue, note);
  checkRows(topic, at, catalogue, note);
}

function checkRows(
  topic: Topic,
  at: string,
  { rows, figures, tells }: Catalogue,
  note: Note,
): void {
  if (!rows) return;
  const list = topic.facts[rows.list];
  if (list?.kind !== 'rows') {
    note('not-a-list', at, rows.list);
    return;
  }
  for (const column of [...Object.keys(rows.figures), rows.place]) {
    if (!Object.hasOwn(list.columns, column)) {
      const options = Object.keys(list.columns);
      note('not-a-column', at, column, { of: rows.list, options, ...meant(column, options) });
    }
  }
  const amounts = tells ? [tells.build.amount, tells.standard.amount] : [];
  for (const figure of [...Object.values(rows.figures), ...amounts]) {
    if (!Object.hasOwn(figures, figure))
      note('not-of-catalogue', at, figure, { of: 'figure', options: Object.keys(figures) });
  }
}
