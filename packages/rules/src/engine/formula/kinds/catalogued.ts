import { asks, isAsk } from '../../catalogue/ask-names';
import { askedWrongly } from '../../catalogue/asked-wrongly';
import { drawByDraw } from '../../value/lanes';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { clash, plainNumber, sortOfUnit, truth } from '../grammar/sorts';

/** What may follow the name of an ask, the catalogue's own name first. */
const asked = {
  figure: { form: 'catalogue, figure', least: 2, most: 2 },
  model: { form: "catalogue) or (catalogue, 'model'", least: 1, most: 2 },
  nothing: { form: 'catalogue', least: 1, most: 1 },
  year: { form: "catalogue, 'year'", least: 2, most: 2 },
  option: { form: "catalogue, 'option'", least: 2, most: 2 },
  change: { form: "catalogue, 'option', 'year'", least: 3, most: 3 },
} as const;

/** builds(catalogue), figure(catalogue, name) …: what a catalogue says; see catalogue/asks.ts. */
export const catalogued: Kind<'catalogued'> = {
  form: {
    by: 'call',
    names: Object.keys(asks),
    read: (call) => {
      const ask = isAsk(call.name) ? call.name : clash(`there is no function ${call.name}`);
      const { form, least, most } = asked[asks[ask].about];
      call.wants(call.count >= least && call.count <= most, `${ask}(${form})`);
      const [catalogue = '', ...args] = call.words();
      return { kind: 'catalogued', catalogue, ask, args };
    },
  },
  reckon: (node, scope) => scope.catalogued(node),
  parts: none,
  mentions: none,
  asks: ({ catalogue }) => [catalogue],
  uses: ({ catalogue }, at) => at.from(catalogue),
};

/** The rule of its units. */
export const sortCatalogued: SortOf<'catalogued'> = (node, { topic }) => {
  const catalogue = topic.catalogues?.[node.catalogue];
  const wrong = askedWrongly(catalogue, node);
  if (wrong !== undefined) return clash(wrong, 'not-in-catalogue');
  if (asks[node.ask].yields === 'truth') return truth;
  const unit = catalogue?.figures[node.args[0] ?? ''];
  return node.ask === 'figure' ? sortOfUnit(unit ?? '') : plainNumber;
};

export const drawCatalogued: Draw<'catalogued'> = drawByDraw;
