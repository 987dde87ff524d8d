import type { ReadMessage } from '@tarebook/record';
import type { Asked } from '../state/questions';

/** What is urgent of a message once it was read: nothing where a person lifted that very kind. */
const urgencyOf = ({ lifted }: Asked, { urgent }: ReadMessage): string =>
  urgent === null || urgent === lifted ? '' : urgent;

/** Messages of which something else is urgent than was before they were read. */
export function readUrgency(
  messages: readonly Asked[],
  read: readonly ReadMessage[],
): readonly Asked[] {
  const byId = new Map(read.map((each) => [each.id, each]));
  return messages.flatMap((asked) => {
    const now = byId.get(asked.id);
    const urgent = now ? urgencyOf(asked, now) : asked.urgent;
    return urgent === asked.urgent ? [] : [{ ...asked, urgent }];
  });
}

/** A message that is not urgent to whoever has looked at it. */
export const withLifted = (asked: Asked, { urgent }: ReadMessage): Asked =>
  urgent === null ? asked : { ...asked, lifted: urgent, urgent: '' };

/** The same, urgent after all. */
export function withPutBack(asked: Asked, { urgent }: ReadMessage): Asked {
  const { lifted: _, ...others } = asked;
  return { ...others, urgent: urgent ?? '' };
}
