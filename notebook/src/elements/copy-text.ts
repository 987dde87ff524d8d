/** How copying went: done, or the text stands marked for the reader to copy. */
export type Copied = 'copied' | 'marked';

/**
 * Copies the text of a field. Where the browser does not let a page write to the clipboard, the
 * text is marked in the field, and copied the old way if that still works.
 */
export async function copyFrom(field: HTMLTextAreaElement): Promise<Copied> {
  try {
    await navigator.clipboard.writeText(field.value);
    return 'copied';
  } catch {
    field.focus();
    field.select();
    // Deprecated, and all there is on a page that came without encryption.
    return document.execCommand('copy') ? 'copied' : 'marked';
  }
}
