/** What is asked next of the one who asked, with where to look. */
const askedNext = / ?Find out next: ([^?]*\?)(?: \([^)]*\)\.?| Where to look: [^.]*(?:\.|$))?/gu;

/** What of several things a figure is: only whoever told it knows. */
const askedWhich = / ?Which is it\?/gu;

/** An answer as all hear it: what only the one who asked could find out is left out. */
export const withoutNext = (text: string): string =>
  text.replaceAll(askedNext, '').replaceAll(askedWhich, '').trim();

/** What has to be known first, as it is said to all where nothing else can be said. */
export const nextAsRule = (text: string): string => {
  const [, ask = ''] = [...text.matchAll(askedNext)][0] ?? [];
  return ask === '' ? '' : `That cannot be said before this is known: ${ask}`;
};
