import { stemmer } from 'stemmer';
import { wordsOf } from '../terms';

/** Words whose stem is another word: whoever is tired has no tire, and what is plugged in is no plug. */
const whole = new Set([
  'tips',
  'fri',
  'burning',
  'bursting',
  'nights',
  'tired',
  'plugged',
  'plugging',
  'plugin',
  'bears',
  'bear',
  'rained',
  'lighter',
  'lightly',
]);

/** Words that join, and stand between those that tell. */
const joining = new Set(
  'a an the my our his her their your its so very really just kinda kind sorta lil pretty super'.split(
    ' ',
  ),
);

const known = new Map<string, string>();
/** So many words are remembered; whoever writes more has them worked out again. */
const most = 20_000;

export function stemOf(word: string): string {
  const before = known.get(word);
  if (before !== undefined) return before;
  const stem = whole.has(word) ? `=${word}` : stemmer(word);
  if (known.size < most) known.set(word, stem);
  return stem;
}

/** The words of a text in small letters, a number apart from its letters, without what only joins. */
export function tellingOf(text: string): readonly string[] {
  const apart = text.toLowerCase().replace(/(\d)(?=[a-z])/g, '$1 ');
  return wordsOf(apart).filter((word) => !joining.has(word));
}
