import { deflateRawSync } from 'node:zlib';
import { checksum } from '../../notebook/src/state/checksum';

/** As a link carries it. */
export function packed(text: string): string {
  const bytes = new TextEncoder().encode(text);
  const head = Buffer.alloc(5);
  head.writeUInt8(1, 0);
  head.writeUInt32BE(checksum(bytes), 1);
  return Buffer.concat([head, deflateRawSync(bytes)]).toString('base64url');
}
