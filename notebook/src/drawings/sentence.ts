/** Words as they stand at the beginning of a sentence. */
export const sentence = (words: string): string =>
  `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;
