import type { Fact } from '../define/shapes';
import { type Sayable, text } from '../words/value';

/** Where a fact is read, as said to whoever asks: what the asker alone knows, or sees there and then, is read nowhere. */
export function whereToLook({ where }: Fact): Sayable | null {
  const rest = where.replace(
    /^(?:told by (?:the \w+|whoever \w+(?: it)?)|there and now)\b[;:,]?\s*/,
    '',
  );
  return rest === '' ? null : text(rest);
}
