import { forms } from './en/forms';
import { note } from './en/note';
import { remedy } from './en/remedy';
import { why } from './en/why';
import { answerEnglish, answerWords } from './en-answer';
import type { Language } from './language';

export const words = { ...answerWords, ...remedy, ...why, ...forms, ...note };

/** American English. */
export const english: Language = { ...answerEnglish, words };
