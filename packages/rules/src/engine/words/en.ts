import { forms } from './en/forms';
import { note } from './en/note';
import { paper } from './en/paper';
import { remedy } from './en/remedy';
import { terms } from './en/terms';
import { why } from './en/why';
import { aloudEnglish, aloudWords } from './en-aloud';
import type { Language } from './language';

export const words = { ...aloudWords, ...remedy, ...why, ...forms, ...paper, ...note };

/** American English. */
export const english: Language = { ...aloudEnglish, words, terms };
