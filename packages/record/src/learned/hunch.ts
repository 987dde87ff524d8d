import { isCertain } from '../danger/certain';
import { isEveryday } from '../danger/everyday';
import { lookedAt } from '../danger/find';
import { meantOf } from '../danger/meant';
import { isOver } from '../danger/over';
import { isSoon } from '../danger/soon';
import { type Urgency, urgencies } from '../questions/shapes';
import { kindLearned } from './kind-weights';
import { type Terms, unpacked, type Weighed, type Weigher, weighed, weigherOf } from './linear';
import { saysKind, urgentTerms } from './urgent-terms';
import { urgentLearned } from './urgent-weights';

/**
 * How far what was learned must speak for danger, as a natural logarithm of the odds: where somebody tells
 * of now, or of going on with it, a little is enough; elsewhere it must be half as likely as not. Of each
 * writer’s dangers, told by what all others wrote, three in two hundred are missed there; higher and more
 * were.
 */
const least = { soon: -1.75, else: -0.75 };

/** In so few words nobody says whether it is now; a danger that they name is meant. */
const few = 12;

const isNamedShort = (text: string): boolean =>
  text.trim().split(/\s+/).length <= few &&
  lookedAt(text).dangers.some(({ sign }) => !sign.told && sign.kind !== 'doubt');

export const isEnough = (score: number, text: string): boolean =>
  score >= (isSoon(text) || isNamedShort(text) ? least.soon : least.else);

let learned: { readonly weights: ReadonlyMap<string, number>; readonly kinds: Weigher } | undefined;

const onlyKinds = (terms: Terms): Terms => new Map([...terms].filter(([term]) => saysKind(term)));

/** Whether somebody may be hurt, how far what was learned speaks for it, and of what kind it is. */
export type Heard = Weighed & { readonly kind: Urgency | null };

let last: { readonly whole: string; readonly heard: Heard } | undefined;

/** Listens to a text for danger: by its signs and by what was learned of how people tell of it. */
export function heardIn(whole: string): Heard {
  if (last?.whole === whole) return last.heard;
  const text = meantOf(whole);
  learned ??= { weights: unpacked(urgentLearned.weights), kinds: weigherOf(kindLearned) };
  const { weights, kinds } = learned;
  const terms = urgentTerms(text);
  const hunch = weighed(terms, weights, (term) => weights.has(term), urgentLearned.step);
  const score = hunch.score + urgentLearned.bias;
  let kind: Urgency | null = null;
  const isHeard = isCertain(text) || (isEnough(score, text) && !isEveryday(text));
  if (isHeard && !isOver(text)) {
    const seen = new Set(lookedAt(text).dangers.map(({ sign }) => sign.kind));
    seen.delete('doubt');
    const scored = kinds(onlyKinds(terms));
    const of = (each: Urgency): number => scored.get(each)?.score ?? 0;
    kind =
      urgencies.find((each) => seen.has(each)) ??
      urgencies.toSorted((a, b) => of(b) - of(a))[0] ??
      'doubt';
  }
  const heard = { because: hunch.because, score, kind };
  last = { whole, heard };
  return heard;
}
