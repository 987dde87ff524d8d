/** Words that say nothing of what is asked. */
const silent = new Set(
  `a an the and or but if so then than of to in on at by for from with without into onto off as is am
  are was were be been being do does did doing done have has had having i me my mine we us our you your
  yours it its he she they them their his her this that these those there here what which who whom whose
  when where why how can could may might must shall should will would not no nor just only very too much
  more most some any all both each every other another about up down out over again really also please
  thanks thank hi hello hey guys folks ok okay well like get got go going want need know think see say
  said tell told one two im ive id dont doesnt isnt wont cant whats thats theres lets let u ur n pls em
  supposed keep keeps still yet`.split(/\s+/),
);

/** The words of a text as they are looked up: small, without what says nothing, one form of each. */
export const termOf = (word: string): string | undefined => {
  const small = word.toLowerCase().replace(/[’']/g, '');
  if (silent.has(small) || small === '') return undefined;
  return stem(small);
};

/** Endings of English inflection; what is cut too short would mean anything. */
function stem(word: string): string {
  if (word.length < 4 || /\d/.test(word)) return word;
  const cut = word
    .replace(/ies$/, 'y')
    .replace(/(ss|x|ch|sh)es$/, '$1')
    .replace(/([^s])s$/, '$1');
  const bare = cut.replace(/(?<=[a-z]{3})(?:ing|ed)$/, '');
  const single = bare === cut ? cut : bare.replace(/([bdgmnprt])\1$/, '$1');
  return single.replace(/(?<=[a-z]{3})e$/, '');
}

/** A figure as one word: “5,000” is 5000. */
export const figuresWhole = (text: string): string => text.replace(/(\d),(?=\d{3})/g, '$1');

export const wordsOf = (text: string): readonly string[] =>
  text.replace(/[’']/g, '').match(/[\p{L}\p{N}]+/gu) ?? [];

/** The words of a text as they are looked up. */
export const termsOf = (text: string): ReadonlySet<string> =>
  new Set(wordsOf(text).flatMap((word) => termOf(word) ?? []));

/** The words of a text that say what it is about, each once, as they stand there. */
export const tellingWords = (text: string): readonly string[] => [
  ...new Set(wordsOf(text).filter((word) => termOf(word) !== undefined)),
];
