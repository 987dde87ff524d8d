/** What a sheet of Letter leaves between its margins, in millimeters; A4 leaves more. */
const high = 256;
const millimeter = 96 / 25.4;

/** All that would be asked after the first questions. */
export const alsoAsked = 'What else to find out';

/** What a verdict rests on though nobody told it: a bare “fits” on paper would hide it. */
export const granted = 'Taken for granted';

/** What is left out where a case is longer than a sheet, the first first; the code leads to all of it. */
const whole = ['Sources', 'Numbers used', 'The working'];
const leftOutFirst = [...whole, alsoAsked];

/** Sections that may be left out whole, what is taken for granted last of all. */
export const sectionsLeft = [...whole, granted];

/** A picture lower than this shows nothing; in millimeters, and what stands below it beside that. */
const least = 26;
const caption = 14;

const millimeters = (sheet: HTMLElement): number =>
  sheet.getBoundingClientRect().height / millimeter;

/** The first picture alone, and as high as there is room for it; says what of the pictures is gone. */
function picturesOf(sheet: HTMLElement): readonly string[] {
  const some = sheet.querySelectorAll('.drawing').length;
  if (some === 0) return [];
  sheet.dataset.pictures = 'none';
  const room = Math.floor(high - millimeters(sheet) - caption);
  if (room < least) return [some === 1 ? 'the picture' : 'the pictures'];
  sheet.dataset.pictures = 'one';
  sheet.style.setProperty('--picture-high', `${room}mm`);
  return some === 1 ? [] : ['further pictures'];
}

/** As long as it comes to. */
export function onAllSheets(sheet: HTMLElement): void {
  delete sheet.dataset.pictures;
  delete sheet.dataset.tight;
  sheet.style.removeProperty('--picture-high');
}

/**
 * Leaves out of what is to be printed what is needed least until it fits one sheet: what stands with
 * the case anyway, then large type, then all pictures but the first, then that; last what is taken for
 * granted.
 *
 * @param without draws the sheet without some of its sections, at once
 */
export function onOneSheet(
  sheet: HTMLElement,
  without: (sections: readonly string[]) => void,
): void {
  const isLonger = (): boolean => millimeters(sheet) > high;
  sheet.dataset.measured = '';
  for (let count = 1; count <= leftOutFirst.length && isLonger(); count += 1) {
    without(leftOutFirst.slice(0, count));
  }
  if (isLonger()) sheet.dataset.tight = '';
  if (isLonger()) without([...leftOutFirst, ...picturesOf(sheet)]);
  if (isLonger()) without([...leftOutFirst, granted, ...picturesOf(sheet)]);
  delete sheet.dataset.measured;
}
