import type { Topic } from '@tarebook/rules/engine';
import type { Amount } from './amounts';
import type { Said } from './choices';
import { dateCodesIn, loadIndexesIn } from './date-codes';
import { receiverPairsIn, receiverRatingsIn } from './receiver-ratings';
import { passesOver } from './scale-passes';
import { tongueSharesIn } from './tongue-share';

/** What a text tells as a code, a pass or a pair of figures, and the amounts that nothing else may take. */
export function codedIn(
  topic: Topic,
  text: string,
  amounts: readonly Amount[],
): { readonly coded: readonly Said[]; readonly left: readonly Amount[] } {
  const whole = [
    ...dateCodesIn(topic, text),
    ...loadIndexesIn(topic, text),
    ...receiverRatingsIn(topic, text),
    ...tongueSharesIn(topic, text),
  ];
  const places = [...whole, ...receiverPairsIn(topic, text)];
  const left = amounts.filter(
    (each) => !places.some(({ from, to }) => from <= each.from && each.to <= to),
  );
  return { coded: [...passesOver(topic, text), ...whole], left };
}
