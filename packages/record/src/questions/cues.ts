import { isMisspelled, spelledForm } from '../words/misspelled';

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const forms = new Map<string, RegExp>();

/** How a word stands in a text of small letters: with a hyphen or a space, in the singular or the plural. */
function formOf(cue: string): RegExp {
  const before = forms.get(cue);
  if (before) return before;
  const words = escaped(cue.toLowerCase())
    .replace(/[a-z]+/g, spelledForm)
    .replace(/[ -]/g, '[ -]')
    .replace(/'/g, "[’']");
  const form = new RegExp(`(?<![\\w\\u00C0-\\u024F])${words}s?(?![\\w\\u00C0-\\u024F])`, 'g');
  forms.set(cue, form);
  return form;
}

/** The text that was last looked through, in small letters: most words do not stand in it at all. */
let small = { of: '', letters: '' };

function smallOf(text: string): string {
  if (small.of === text) return small.letters;
  const letters = text.toLowerCase();
  // A letter that is longer in small would move all that stands behind it.
  small = { of: text, letters: letters.length === text.length ? letters : text };
  return small.letters;
}

const begins = new Map<string, string>();

/** Every place where a word, or a few, stand in a text. */
export function* placesOf(cue: string, text: string): Generator<{ from: number; to: number }> {
  const letters = smallOf(text);
  let begin = begins.get(cue);
  if (begin === undefined) {
    // A word that is often misspelled need not stand there as it is.
    const words = cue
      .toLowerCase()
      .split(/[ '-]/)
      .map((word) => (isMisspelled(word) ? '' : word));
    begin = words.reduce((longest, word) => (word.length > longest.length ? word : longest), '');
    begins.set(cue, begin);
  }
  if (!letters.includes(begin)) return;
  for (const found of letters.matchAll(formOf(cue))) {
    yield { from: found.index, to: found.index + found[0].length };
  }
}
