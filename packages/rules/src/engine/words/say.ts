import { english } from './en';
import { speakerOf, type Voice } from './speaker';
import type { Say, Sayable } from './value';

/** A speaker of one voice. */
export const sayer = (voice: Voice = {}): Say => speakerOf(voice, english);

/** One value in words: a message, a quantity, a text of a rule set. */
export const say = (value: Sayable, voice: Voice = {}): string => sayer(voice)(value);
