import { refuseUnless, refuseUnlessParts } from '@tarebook/rules/engine';

/** @throws InputError for what is no text, such as a file that was read without its encoding */
export const refuseNoText = (given: unknown, place = 'text'): void =>
  refuseUnless(typeof given === 'string', place, given, 'a text, such as a file read as UTF-8');

/** @throws InputError for what no reader of this package gave */
export const refuseNoDocument = (given: unknown): void =>
  refuseUnlessParts(
    'document',
    given,
    { text: 'text', troubles: 'list', blocks: 'list', front: 'parts' },
    'what `readCase`, `readRig` or `readNote` gives',
  );
