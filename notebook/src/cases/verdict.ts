import type { State } from '@tarebook/rules/engine';
import { oneByOne, type Teller } from '../aside/one-by-one';
import { type House, houseOf } from '../state/house';

/** How a case came out, as a list shows it. */
export type Verdict = {
  readonly stands: State;
  readonly words: string;
  /** What is asked next, where it cannot be said yet. */
  readonly asks?: string;
};

/** A case whose verdict a list wants to show, and the dealer's numbers it is judged under. */
export type VerdictAsked = {
  readonly topic: string;
  readonly text: string;
  readonly house: House | undefined;
};

/** One case is given so long, in milliseconds; the next ones shall not wait for it. */
const most = 5000;
const tooLong: Verdict = { stands: 'unknown', words: 'takes too long to judge here' };
const away: Verdict = { stands: 'unknown', words: 'not judged: the network is away' };

/**
 * Verdicts of cases, found one after another beside the page and kept for as long as the window is
 * open: the same text under the same numbers is judged once.
 */
export function verdicts(make?: () => Teller) {
  const found = new Map<
    string,
    { readonly told: Promise<Verdict>; readonly by: (() => boolean)[] }
  >();
  const ask = oneByOne<{ readonly kind: 'verdict' } & VerdictAsked, Verdict>(
    { most, tooLong, away },
    make,
  );

  return (topic: string, text: string, wanted: () => boolean = () => true): Promise<Verdict> => {
    const asked: VerdictAsked = { topic, text, house: houseOf(topic) };
    const key = JSON.stringify([topic, text, asked.house]);
    const before = found.get(key);
    if (before) {
      before.by.push(wanted);
      return before.told;
    }
    const by = [wanted];
    const told = ask({ kind: 'verdict', ...asked }, () => {
      // Out of every asker's sight before its turn came: it is asked for again once it is seen.
      const still = by.some((each) => each());
      if (!still) found.delete(key);
      return still;
    });
    found.set(key, { told, by });
    told.then((verdict) => {
      if (verdict === away && found.get(key)?.told === told) found.delete(key);
    });
    return told;
  };
}

export const verdictFor = verdicts();
