import { refuseUnless, refuseUnlessParts } from '@tarebook/rules/engine';

/** @throws InputError for what is no text */
export const refuseNoText = (given: unknown): void =>
  refuseUnless(typeof given === 'string', 'text', given, 'the text of a message');

/** @throws InputError for what is no message */
export const refuseNoMessage = (given: unknown, place = 'message'): void =>
  refuseUnlessParts(
    place,
    given,
    { id: 'text', text: 'text' },
    'a message, { id, channel, askedOn, asker, text }',
  );

/** @throws InputError for what is no list of messages, or has something else in it */
export function refuseNoMessages(given: unknown): void {
  refuseUnless(Array.isArray(given), 'messages', given, 'a list of messages');
  if (!Array.isArray(given)) return;
  given.forEach((each, at) => {
    refuseNoMessage(each, `messages.${at}`);
  });
}

/** @throws InputError where no rule sets are given to read by */
export const refuseNoReading = (given: unknown): void =>
  refuseUnlessParts('options', given, { topics: 'parts' }, '{ topics }, the rule sets by id', [
    'search',
    'before',
  ]);
