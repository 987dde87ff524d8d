const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const forms = new Map<string, RegExp>();

/** How a word stands in a text: with a hyphen or a space, in the singular or the plural. */
function formOf(cue: string): RegExp {
  const before = forms.get(cue);
  if (before) return before;
  const words = escaped(cue).replace(/[ -]/g, '[ -]').replace(/'/g, "[’']");
  const form = new RegExp(`(?<![\\p{L}\\d])${words}s?(?![\\p{L}\\d])`, 'giu');
  forms.set(cue, form);
  return form;
}

/** The text that was last looked through, in small letters: most words do not stand in it at all. */
let small = { of: '', letters: '' };

/** Every place where a word, or a few, stand in a text. */
export function* placesOf(cue: string, text: string): Generator<{ from: number; to: number }> {
  if (small.of !== text) small = { of: text, letters: text.toLowerCase() };
  const [begin = ''] = cue.toLowerCase().split(/[ '-]/);
  if (!small.letters.includes(begin)) return;
  for (const found of text.matchAll(formOf(cue))) {
    yield { from: found.index, to: found.index + found[0].length };
  }
}
