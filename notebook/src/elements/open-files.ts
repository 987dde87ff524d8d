import { DropCases } from './drop-cases';

/** Opens files that were dropped on a page or chosen: a spreadsheet on the yard, cases anywhere. */
export async function openFiles(page: Element, files: readonly File[]): Promise<void> {
  const yard = page.querySelector('yard-page');
  if (yard && files.some(({ name }) => /\.(csv|tsv|txt|xlsx?)$/i.test(name))) {
    const { YardPage } = await import('../views/yard-page');
    if (yard instanceof YardPage) await yard.take(files);
    return;
  }
  const at = page.querySelector('drop-cases');
  if (at instanceof DropCases) await at.open(files);
}
