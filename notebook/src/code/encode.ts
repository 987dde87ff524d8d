import { encode } from 'uqr';

/** White around the code, in modules; ISO/IEC 18004 asks for four. */
const quiet = 4;

/** A version of the standard's that is left out. */
const misread = 23;

/** Rows of a code's modules, dark or not. */
export type Rows = readonly (readonly boolean[])[];

/** A text as a QR code, the smallest that holds it. */
export function rowsOf(text: string): Rows {
  const code = (minVersion: number) =>
    encode(text, { ecc: 'L', boostEcc: true, border: quiet, minVersion });
  const smallest = code(1);
  // A scanner in wide use has a wrong table for this one size.
  return (smallest.version === misread ? code(misread + 1) : smallest).data;
}
