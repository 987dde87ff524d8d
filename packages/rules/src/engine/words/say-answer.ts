import { aloudEnglish } from './en-aloud';
import { speakerOf, type Voice } from './speaker';
import type { Sayable } from './value';

/**
 * One value of an answer or of its working in words, as `say` puts it; without the words of what is
 * made of answers, which whoever only shows a verdict need not have.
 */
export const sayAnswer = (value: Sayable, voice: Voice = {}): string =>
  speakerOf(voice, aloudEnglish)(value);
