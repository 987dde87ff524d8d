import { checksum } from './checksum';

/** A name of its own for a shared case, so that it never lies over one that is here already. */
export const sharedName = (name: string, text: string): string =>
  `shared: ${name} ${checksum(new TextEncoder().encode(text)).toString(16).padStart(8, '0')}`;

/** The name a shared case had where it came from. */
export const ownName = (name: string): string =>
  /^shared: (.*) [\da-f]{8}$/.exec(name)?.[1] ?? name;
