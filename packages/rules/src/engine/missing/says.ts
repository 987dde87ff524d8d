import type { Fact, Topic } from '../define/shapes';
import { message } from '../words/message';
import { nounOr, type Said, type Sayable, text } from '../words/value';
import type { Edges } from './trial';

/** What one fact does to one open decision. */
export type Deciding = {
  /** `limit.payload` */
  readonly of: string;
  readonly edges: Edges;
  /** Options that would stop it. */
  readonly stopping: readonly string[];
  /** Options that would not, or not for sure. */
  readonly others: readonly string[];
  /** Facts with which alone it decides; empty where it settles it by itself. */
  readonly together: readonly string[];
};

function nameOf(topic: Topic, of: string): Sayable {
  const [kind = '', id = ''] = of.split(/\.(.*)/);
  return nounOr(kind === 'limit' ? topic.limits[id] : topic.findings[id], id);
}

/** Of many options, those that would not stop it are sooner told. */
function withOptions({ stopping, others }: Deciding, answer: Sayable): Said | null {
  if (stopping.length === 0) return null;
  const isFew = others.length > 0 && others.length < stopping.length;
  const of = (isFew ? others : stopping).map((option) => ({ option }));
  return message('tips-with', { of, others: isFew, answer });
}

/** How many there are of something is counted, and nothing lies between two counts. */
const isCounted = (fact: Fact | undefined): boolean => fact?.kind === 'quantity' && !!fact.counted;

/** Where it tips: “above 484 lb the answer is “does not fit””. */
function tipping(deciding: Deciding, answer: Sayable, counted: boolean): Said | null {
  const { tip, sure } = deciding.edges;
  const end = tip ? { at: tip.side === 'above' ? tip.hi : tip.lo, side: tip.side } : sure;
  const isAlone = tip !== undefined && tip.lo === tip.hi;
  if (counted && end) {
    const above = end.side === 'above';
    const count = above ? Math.floor(end.at) + 1 : Math.ceil(end.at) - 1;
    return message('tips-count', { count, above, answer, always: !isAlone });
  }
  const at = (value: number, unit: string) => ({ lo: value, hi: value, unit });
  if (tip && !isAlone) {
    const above = tip.side === 'above';
    const [holds, stops] = above ? [tip.lo, tip.hi] : [tip.hi, tip.lo];
    return message('tips-between', {
      holds: { ...at(holds, tip.unit), style: 'exact' },
      stops: { ...at(stops, tip.unit), style: 'exact' },
      above,
      answer,
    });
  }
  const edge = tip ? { ...at(tip.lo, tip.unit), side: tip.side } : undefined;
  const one = edge ?? (sure && { ...at(sure.at, sure.unit), side: sure.side });
  if (!one) return withOptions(deciding, answer);
  const { side, lo, hi, unit } = one;
  const place = { lo, hi, unit, style: 'exact' } as const;
  return message('tips-at', { at: place, above: side === 'above', answer, always: !isAlone });
}

type Group = {
  readonly tip: Said | null;
  readonly together: readonly string[];
  readonly of: Sayable[];
};

/** Which decisions a fact settles, where each tips, and with what it decides only together. */
export function missingSays(topic: Topic, fact: string, deciding: readonly Deciding[]): Said {
  const answer = text(topic.outcomes.stop.words);
  const groups = new Map<string, Group>();
  for (const each of deciding) {
    const tip = tipping(each, answer, isCounted(topic.facts[fact]));
    const { together } = each;
    const key = JSON.stringify([tip, together]);
    const group = groups.get(key) ?? { tip, together, of: [] };
    group.of.push(nameOf(topic, each.of));
    groups.set(key, group);
  }
  const of = [...groups.values()].map(({ tip, together, of: decided }) =>
    message('decides', {
      of: decided,
      tip,
      together: together.map((each) => nounOr(topic.facts[each], each)),
    }),
  );
  return message('sentences', { of });
}
