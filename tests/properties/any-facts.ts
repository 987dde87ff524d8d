import type { CellGiven, FactGiven, FactsGiven, Topic } from '@tarebook/rules/engine';
import fc from 'fast-check';

type Range = { readonly unit: string; readonly least: number; readonly most: number };

/** An exact number, a range or unknown, within what the fact can be; small numbers as often as large. */
function cell({ unit, least, most }: Range): fc.Arbitrary<CellGiven> {
  const counts = unit === '' && Number.isInteger(least) && Number.isInteger(most);
  const at = (share: number): number => {
    const value = least + (most - least) * share ** 3;
    return counts ? Math.round(value) : value;
  };
  const share = fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000);
  const shown = unit === '' ? '1' : unit;
  return fc.oneof(
    { weight: 5, arbitrary: share.map((s) => ({ lo: at(s), hi: at(s), unit: shown })) },
    {
      weight: 2,
      arbitrary: fc.tuple(share, share).map(([a, b]) => ({
        lo: at(Math.min(a, b)),
        hi: at(Math.max(a, b)),
        unit: shown,
      })),
    },
    { weight: 1, arbitrary: fc.constant('unknown') },
  );
}

function given(topic: Topic, id: string): fc.Arbitrary<FactGiven> {
  const fact = topic.facts[id];
  switch (fact?.kind) {
    case 'quantity':
      return cell(fact);
    case 'choice':
      return fc.constantFrom(...fact.options, 'unknown');
    case 'rows': {
      const columns = Object.entries(fact.columns).map(([name, column]) => [name, cell(column)]);
      return fc.array(fc.record(Object.fromEntries(columns)), { maxLength: 3 });
    }
    default:
      return fc.constantFrom('yes', 'no', 'unknown');
  }
}

/** Facts of a topic at random; each is told in three cases of five. */
export const anyFacts = (topic: Topic): fc.Arbitrary<FactsGiven> =>
  fc
    .record(
      Object.fromEntries(
        Object.keys(topic.facts).map((id) => [
          id,
          fc.option(given(topic, id), { freq: 2, nil: undefined }),
        ]),
      ),
    )
    .map((facts) =>
      Object.fromEntries(
        Object.entries(facts).flatMap(([id, fact]) => (fact === undefined ? [] : [[id, fact]])),
      ),
    );
