import { type CaseDocument, setCell, setFact } from '@tarebook/casebook';
import type { Answer, Fact } from '@tarebook/rules/engine';

/** What of a case can be moved: a fact, or one cell of a row. */
export type Movable = {
  readonly key: string;
  readonly label: string;
  /** As a question has it: “What if Caller were 250 lb?” */
  readonly said: string;
  readonly value: string;
  /** '' where it has none. */
  readonly unit: string;
  /** What may be chosen; none where it is typed. */
  readonly options: readonly string[];
  write(doc: CaseDocument, value: string): string;
};

const lowered = (label: string): string =>
  /^\p{Lu}\p{Lu}/u.test(label) ? label : `${label.charAt(0).toLowerCase()}${label.slice(1)}`;

const optionsOf = (fact: Fact): readonly string[] =>
  fact.kind === 'choice' ? fact.options : fact.kind === 'yes-no' ? ['yes', 'no'] : [];

const ofFact = (id: string, declared: Fact, value: string): Movable => ({
  ...{ key: id, label: declared.label, said: lowered(declared.label), value },
  unit: declared.kind === 'quantity' ? declared.unit : '',
  options: optionsOf(declared),
  write: (now, to) => setFact(now, id, to),
});

/** The facts that nobody told, and that the verdict waits for. */
export function awaitedIn(
  doc: CaseDocument,
  { missing }: Pick<Answer, 'missing'>,
): readonly Movable[] {
  const facts = doc.topic?.facts ?? {};
  const told = new Set(movableIn(doc).map(({ key }) => key));
  return missing.flatMap(({ fact }) => {
    const declared = facts[fact];
    if (!declared || declared.kind === 'rows' || told.has(fact)) return [];
    return [ofFact(fact, declared, '')];
  });
}

/** The facts told, and of each list every row. */
export function movableIn(doc: CaseDocument): readonly Movable[] {
  const facts = doc.topic?.facts ?? {};
  return doc.blocks.flatMap((block): readonly Movable[] => {
    if (block.kind === 'facts') {
      return block.rows.flatMap(({ id, value }) => {
        const declared = facts[id];
        return declared ? [ofFact(id, declared, value)] : [];
      });
    }
    if (block.kind !== 'list') return [];
    const { fact, rows } = block;
    const declared = facts[fact];
    if (declared?.kind !== 'rows') return [];
    return rows.flatMap(({ label, cells }, row) =>
      Object.entries(cells).flatMap(([column, { text }]) => {
        const of = declared.columns[column];
        if (!of) return [];
        const name = of.label.toLowerCase();
        return [
          {
            ...{ key: `${fact} ${row} ${column}`, label: `${label}: ${name}`, value: text },
            said: column === 'weight' ? label : `${label}, ${name},`,
            unit: of.unit,
            options: [],
            write: (now: CaseDocument, to: string) => setCell(now, fact, row, column, to),
          },
        ];
      }),
    );
  });
}
