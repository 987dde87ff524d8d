/** Whether a case came with a link; such names are given by `sharedName`. */
export const isShared = (name: string): boolean => name.startsWith('shared: ');
