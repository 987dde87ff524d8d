import type { CaseDocument } from '@tarebook/casebook';
import { besideAddress } from '../state/address';
import { asTheCase, type Column, packBeside } from '../state/beside';
import { factsAlone } from '../state/facts-alone';
import { driverAlone, swapped } from './swap';

export const aloneName = 'the driver alone';

/** Where a case stands beside itself: as it is, and with the driver alone. */
export async function besideFor(doc: CaseDocument, name: string): Promise<string> {
  const readable = doc.troubles.length === 0 && doc.topic !== undefined;
  const text = readable ? factsAlone(doc, true) : doc.text;
  const first: Column = { ...asTheCase, text };
  const second: Column = readable
    ? { ...asTheCase, load: aloneName, text: swapped(doc, 'load', driverAlone(doc)) }
    : first;
  const packed = await packBeside({ from: text, columns: [first, second] });
  return besideAddress(doc.front.topic, name, packed);
}
