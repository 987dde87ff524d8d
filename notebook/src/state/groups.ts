import type { CaseDocument, FactRow } from '@tarebook/casebook';
import type { Topic } from '@tarebook/rules/engine';

/** Facts that belong to one thing, in the topic's order. */
export type FactGroup = { readonly title: string; readonly rows: readonly FactRow[] };

const prefixOf = (id: string): string => id.split('.')[0] ?? id;

/** “airConditioner” ► “Air conditioner” */
function titleOf(prefix: string): string {
  const words = prefix.replace(/(?<=[a-z])(?=[A-Z])/g, ' ').toLowerCase();
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

/** A thing of which less is told stands among the others. */
const least = 2;
const others = 'And this';

/** The facts that a case tells, by what they are facts of; what the topic does not know comes last. */
export function groupsOf({ blocks }: CaseDocument, topic: Topic): readonly FactGroup[] {
  const order = Object.keys(topic.facts);
  const rank = ({ id }: FactRow): number => (order.includes(id) ? order.indexOf(id) : order.length);
  const rows = blocks
    .flatMap((block) => (block.kind === 'facts' ? block.rows : []))
    .toSorted((a, b) => rank(a) - rank(b));
  const groups = new Map<string, readonly FactRow[]>();
  for (const row of rows) {
    const prefix = prefixOf(row.id);
    groups.set(prefix, [...(groups.get(prefix) ?? []), row]);
  }
  const small = [...groups.values()].filter((each) => each.length < least).flat();
  const large = [...groups].flatMap(([prefix, each]) =>
    each.length < least ? [] : [{ title: titleOf(prefix), rows: each }],
  );
  if (small.length === 0) return large;
  return [...large, { title: large.length === 0 ? 'What is known' : others, rows: small }];
}
