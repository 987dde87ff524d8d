import type { GroupCase } from '../state/group';

/**
 * What stands above a case. Of one whose facts are to be asked for the title may tell some of them: it is
 * only numbered until it is open.
 *
 * @param number from 1
 */
export const titleAbove = (
  { title, exercise }: Pick<GroupCase, 'title' | 'exercise'>,
  number: number,
  isOpen: boolean,
): string => (exercise === 'ask' && !isOpen ? `Case ${number}` : title);
