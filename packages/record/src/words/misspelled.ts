/** Words of the trade as people often misspell them; none of these is another word. */
const misspelled: Readonly<Record<string, readonly string[]>> = {
  tongue: ['tounge', 'toungue', 'tonge', 'toung', 'tonque'],
  capacity: ['capcity', 'capacty', 'capasity', 'capicity', 'capactiy'],
  receiver: ['reciever', 'recever', 'reciver', 'recevier'],
  payload: ['paylod', 'paylaod'],
  weight: ['wieght', 'weigth', 'weght', 'wheight'],
  trailer: ['trailor', 'tralier', 'trialer', 'trailler'],
  coupler: ['couplar', 'cupler', 'coupller'],
  pressure: ['presure', 'preasure', 'pressue'],
  sticker: ['stiker', 'stikker'],
};

/** The form of a word for a pattern, with all its spellings. */
export const spelledForm = (word: string): string => {
  const others = Object.hasOwn(misspelled, word) ? misspelled[word] : undefined;
  return others === undefined ? word : `(?:${[word, ...others].join('|')})`;
};

/** Whether a word has other spellings, so that a text need not hold it as it is. */
export const isMisspelled = (word: string): boolean => Object.hasOwn(misspelled, word);

const all = new Map(
  Object.entries(misspelled).flatMap(([word, others]) => others.map((other) => [other, word])),
);
const any = new RegExp(`(?<!\\p{L})(?:${[...all.keys()].join('|')})(?=s?(?!\\p{L}))`, 'giu');

/** A text with the words of the trade spelled right; where a word stands in it moves. */
export const spelledRight = (text: string): string =>
  text.replace(any, (word) => all.get(word.toLowerCase()) ?? word);
