import type { Urgency } from '../questions/shapes';

/**
 * What people call a thing and what people call its state: where one of each list stands within so
 * many words, that is urgent, or seems so. A list is words and phrases between commas, in any of
 * their forms; `*` stands for any one word.
 */
export type Sign = {
  readonly kind: Urgency;
  readonly lists: readonly string[];
  readonly within: number;
  /** Whether it may be a mere mention, which does not count where the sentence is about buying. */
  readonly mention?: boolean;
  /** Whether it counts only where a sentence tells of something, and does not ask in general. */
  readonly told?: boolean;
  /** Words of a harmless sense; a list of the sign does not count right beside one of them. */
  readonly unless?: string;
};

/** Lists in one. */
export const listed = (...lists: readonly string[]): string => lists.join(', ');
