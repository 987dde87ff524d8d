/**
 * A case is to be printed: on one sheet, or with all of its working on as many as it takes. Its sheet
 * answers by taking the event for its own.
 */
export class PrintAsked extends CustomEvent<{ readonly whole: boolean }> {
  constructor(whole: boolean) {
    super('print-asked', { detail: { whole }, cancelable: true });
  }
}

/**
 * Prints the case, as far as its sheet has come.
 *
 * @param tell is told what is waited for until it is printed
 */
export function printCase(whole: boolean, tell: (says: string) => void): void {
  const isTaken = !document.dispatchEvent(new PrintAsked(whole));
  if (!isTaken) {
    print();
    return;
  }
  tell('Looking for what would change it, for the sheet …');
  addEventListener('afterprint', () => tell(''), { once: true });
}
