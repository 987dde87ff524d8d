import { towFit } from '@tarebook/rules';
import type { CellGiven, FactsGiven, RowGiven, Topic } from '@tarebook/rules/engine';
import type { PlainCase, PlainFact } from './plain-case';

const topic: Topic = towFit;

function cell(value: PlainFact, unit: string): CellGiven {
  if (typeof value === 'string') return value;
  const { lo, hi } = typeof value === 'number' ? { lo: value, hi: value } : value;
  // Fractions are kept as fractions; everything else in the fact's own unit.
  return { lo, hi, unit: unit === '%' || unit === '' ? '1' : unit };
}

/** A plain case as the library takes it. */
export function givenOf(plain: PlainCase): FactsGiven {
  const facts: Record<string, CellGiven | readonly RowGiven[]> = {};
  for (const [id, value] of Object.entries(plain)) {
    const declared = topic.facts[id];
    if (declared?.kind === 'rows' && Array.isArray(value)) {
      facts[id] = value.map((row): RowGiven => {
        const ahead =
          row.ahead === undefined
            ? {}
            : { ahead: cell(row.ahead, declared.columns.ahead?.unit ?? 'ft') };
        return { weight: cell(row.weight, 'lb'), ...ahead };
      });
    } else if (declared && !Array.isArray(value)) {
      facts[id] = cell(value, declared.kind === 'quantity' ? declared.unit : '1');
    }
  }
  return facts;
}
