import type { Amount } from './amounts';

/** Where a number and its word stand in a text. */
type Span = { readonly from: number; readonly to: number };

/** A fact, what stands around its number where it is not meant, and on which side. */
type Guard = {
  readonly fact: RegExp;
  readonly ahead?: RegExp;
  readonly after?: RegExp;
  readonly anywhere?: RegExp;
};

/** Words take a number for a fact that is of something else; a wrong weight is worse than none. */
const guards: readonly Guard[] = [
  // “A ball rated 6,000”
  {
    fact: /^vehicle\.maxTrailerWeight$/,
    ahead:
      /(?<!\p{L})(?:ball|hitch|receiver|bars?|dolly|mount|coupler|jack|chains?|axles?|tires?)(?: \w+){0,4} $/iu,
  },
  // A camper in the bed is no trailer.
  {
    fact: /^trailer\.(?:dry|gvwr|cargo)/,
    anywhere:
      /(?<!\p{L})(?:truck camper|slide[- ]in|in the bed of|bed camper|camper in the bed|center of gravity)(?!\p{L})/iu,
  },
  // “Fills in 2 days”
  { fact: /^stay\.days$/, ahead: /(?<!\p{L})(?:fills?|full|empty|gone|dead|dry) in $/iu },
  // “0.45 kWh per mile without a trailer”
  { fact: /^trial\./, after: /^ ?(?:\/ ?mi(?:le)?s? )?(?:without|solo|alone|unhitched|empty)/iu },
  // “A 1400 lb bar set”
  { fact: /ongue/, after: /^ ?(?:lbs?|pounds?|#)? ?(?:spring )?bars?(?!\p{L})/iu },
  // “Need psi 4 st tires”: for these tires.
  { fact: /^tire\.pressure$/, after: /^ (?:st|lt|trailer|my|our)(?!\p{L})/iu },
  // “A little 1 lb bottle”
  {
    fact: /^cylinder\.fill$/,
    after:
      /^ ?(?:(?:lbs?|pounds?) )?(?:little )?(?:bottle that came|bottle run|throwaway|disposable)/iu,
  },
];

/** What a ball or a coupler measures across, and how high it stands, in inches: never the one for the other. */
const sizes: readonly { readonly fact: RegExp; readonly least: number; readonly most: number }[] = [
  { fact: /^(?:hitch\.ballHeight|trailer\.couplerHeight)$/, least: 8, most: 60 },
  { fact: /^(?:hitch\.ballSize|trailer\.couplerSize)$/, least: 1.5, most: 3 },
];

/** Whether a number of a text may be that fact, by what stands around it. */
export function isMeant(fact: string, text: string, amount: Amount, word: Span): boolean {
  const { value, unit = 'in' } = amount;
  const size = sizes.find((each) => each.fact.test(fact));
  if (size && unit === 'in' && (value < size.least || value > size.most)) return false;
  const ahead = text.slice(0, Math.min(amount.from, word.from)).slice(-40);
  const after = text.slice(amount.to, amount.to + 40);
  return !guards.some(
    (guard) =>
      guard.fact.test(fact) &&
      (guard.ahead?.test(ahead) === true ||
        guard.after?.test(after) === true ||
        guard.anywhere?.test(text) === true),
  );
}
