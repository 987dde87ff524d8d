/** A hole in the words of a rule set: `{tongue.share}`. */
const hole = /\{([^{}]*)\}/g;

/** The names that stand in holes, in order. */
export const holesIn = (text: string): readonly string[] =>
  [...text.matchAll(hole)].map(([, name = '']) => name);

/** The words with every hole filled. */
export const filled = (text: string, shown: (name: string) => string): string =>
  text.replace(hole, (_, name: string) => shown(name));
