/** Without those that are heard or read as another. */
const letters = 'ABCDEFGHJKLMPQRSTUVWXYZ';
const length = 4;

/**
 * What tells a phone without a line that the class is over: four letters that the trainer's window and
 * the phone both make of the class, shown on the wall once it has ended.
 */
export function endCode(id: string): string {
  let sum = 0;
  for (const each of id) sum = (sum * 37 + each.charCodeAt(0)) % letters.length ** length;
  return Array.from({ length }, (_, place) =>
    letters.charAt(Math.floor(sum / letters.length ** place) % letters.length),
  ).join('');
}

/** Whether somebody typed it, in whatever case and with whatever between. */
export const isEndCode = (typed: string, id: string): boolean =>
  typed.toUpperCase().replace(/[^A-Z]/g, '') === endCode(id);
