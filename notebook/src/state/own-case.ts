import { caseAddress } from './address';
import { keep } from './kept';

/** Begins a case of one's own; the address at which it opens. */
export async function beginOwn(topic: string, text: string): Promise<string> {
  const name = `mine-${Date.now().toString(36)}`;
  try {
    await keep({ topic, name, text, at: Date.now() });
    return caseAddress(topic, name);
  } catch {
    // A device that keeps nothing still opens it: the whole case goes into the address.
    const { pack } = await import('./link');
    return `${caseAddress(topic, name)}/${await pack(text)}`;
  }
}
