import { findUnit } from '../../quantity';
import type { Catalogue } from '../define/catalogue';
import type { Topic } from '../define/shapes';
import { nearest } from './near';

type Note = (at: string, found: string, wanted: string) => void;

/** Years in which two offers of one option overlap are years in which nobody knows which holds. */
function checkOffers(at: string, catalogue: Catalogue, note: Note): void {
  const last = catalogue.years.at(-1) ?? '';
  for (const [list, offers] of Object.entries(catalogue.offers)) {
    for (const [i, { option, from, to = last }] of offers.entries()) {
      const place = `${at}, offers ${list}, row ${i + 1}`;
      if (!Object.hasOwn(catalogue.options, option)) {
        const near = nearest(option, Object.keys(catalogue.options));
        note(place, `there is no option “${option}”`, near ? `${near}?` : 'name an option');
      }
      for (const year of [from, to]) {
        if (!catalogue.years.includes(year)) {
          note(place, `there is no year “${year}”`, catalogue.years.join(', '));
        }
      }
      if (from > to) note(place, `it ends in ${to}, before it begins`, 'swap the years');
      const twice = offers
        .slice(0, i)
        .some((other) => other.option === option && other.from <= to && from <= (other.to ?? last));
      if (twice) note(place, `“${option}” is offered twice in one year`, 'one row a year');
    }
  }
}

function checkRules(at: string, catalogue: Catalogue, note: Note): void {
  for (const [i, rule] of catalogue.rules.entries()) {
    const place = `${at}, rule ${i + 1}`;
    const named = rule.kind === 'one-of' ? rule.others : [rule.option, ...rule.others];
    for (const option of named) {
      if (!Object.hasOwn(catalogue.options, option)) {
        note(place, `there is no option “${option}”`, 'name an option of the catalogue');
      }
    }
    if (new Set(named).size < named.length) {
      note(place, 'it names an option twice', 'name each once');
    }
    if (rule.others.length === 0) note(place, 'it names no other option', 'name one');
  }
}

function checkModels(at: string, catalogue: Catalogue, options: readonly string[], note: Note) {
  const { models, years } = catalogue;
  const figures = Object.keys(Object.values(models)[0]?.figures ?? {});
  const used = new Set(Object.values(catalogue.options).map(({ place }) => place));
  for (const [id, model] of Object.entries(models)) {
    const place = `${at}, model ${id}`;
    if (!options.includes(id)) {
      note(place, `it is no option of ${catalogue.model}`, 'add it to the choice');
    }
    if (!Object.hasOwn(catalogue.offers, model.offers)) {
      note(place, `there is no list of offers “${model.offers}”`, 'name one');
    }
    const [first, last] = model.sold;
    if (!years.includes(first) || !years.includes(last) || first > last) {
      note(place, `it is sold from ${first} to ${last}`, `years out of ${years.join(', ')}`);
    }
    for (const figure of figures) {
      if (!Number.isFinite(model.figures[figure])) {
        note(place, `it has no ${figure}`, 'every model has every figure');
      }
    }
    for (const each of used) {
      if (!Number.isFinite(model.places[each]))
        note(place, `it has no place “${each}”`, 'give one');
    }
  }
  for (const option of options) {
    if (!Object.hasOwn(models, option)) note(at, `there is no model “${option}”`, 'add it');
  }
}

/** Everything that a catalogue names is there, in its years, once. */
export function checkCatalogue(topic: Topic, at: string, catalogue: Catalogue, note: Note): void {
  const choice = (name: string): readonly string[] => {
    const fact = topic.facts[name];
    if (fact?.kind === 'choice') return fact.options;
    note(at, `it reads “${name}”`, 'name a choice');
    return [];
  };
  checkModels(at, catalogue, choice(catalogue.model), note);
  if (choice(catalogue.year).join() !== catalogue.years.join()) {
    note(at, `its years are not those of ${catalogue.year}`, catalogue.years.join(', '));
  }
  if (catalogue.years.join() !== catalogue.years.toSorted().join()) {
    note(at, 'its years do not rise', 'sort them');
  }
  for (const [option, fact] of Object.entries(catalogue.wishes)) {
    if (!Object.hasOwn(catalogue.options, option)) {
      note(at, `it has a wish for “${option}”`, 'name an option of the catalogue');
    }
    const found = topic.facts[fact];
    if (found?.kind !== 'yes-no' || found.silent) {
      note(at, `the wish “${fact}”`, 'a yes/no fact without a default');
    }
  }
  for (const unit of [...Object.values(catalogue.figures), catalogue.placeUnit]) {
    if (unit !== '' && !findUnit(unit)) note(at, `there is no unit “${unit}”`, 'name a unit');
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
    note(at, `it adds to “${rows.list}”`, 'name a list');
    return;
  }
  for (const column of [...Object.keys(rows.figures), rows.place]) {
    if (!Object.hasOwn(list.columns, column)) {
      note(at, `${rows.list} has no column “${column}”`, Object.keys(list.columns).join(', '));
    }
  }
  const amounts = tells ? [tells.build.amount, tells.standard.amount] : [];
  for (const figure of [...Object.values(rows.figures), ...amounts]) {
    if (!Object.hasOwn(figures, figure)) note(at, `there is no figure “${figure}”`, 'name one');
  }
}
