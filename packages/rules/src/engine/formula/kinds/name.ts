import { everywhere } from '../../value/lanes';
import { cellKey } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { sortOfUnit } from '../grammar/sorts';

/** A fact, a column of a list inside `sum`, a parameter or another formula. */
export const name: Kind<'name'> = {
  form: { by: 'name', read: (id) => ({ kind: 'name', id }) },
  reckon: ({ id }, scope) => scope.value(id),
  parts: none,
  mentions: ({ id }) => [id],
  asks: none,
  uses: ({ id }, at) => at.from(id),
};

/** The rule of its units. */
export const sortName: SortOf<'name'> = ({ id }, { topic, unitOf }) => {
  const sort = sortOfUnit(unitOf(id));
  if (sort.kind !== 'word') return sort;
  const fact = topic.facts[id];
  const options =
    fact?.kind === 'choice' ? fact.options : Object.keys(topic.decisions?.[id]?.results ?? {});
  return { kind: 'word', options, of: id };
};

/** Many draws at once. */
export const drawName: Draw<'name'> = ({ id }, { place, named, drawn, program, whole }) => {
  if (!place || !id.startsWith(`${place.list}.`)) return named(id);
  return drawn.get(cellKey(id, place.row)) ?? everywhere(program, whole);
};
