/** The pages by the names they have in the head of every page. */
export const pages = {
  today: 'Today',
  cases: 'Cases',
  class: 'Class',
  questions: 'Questions',
  yard: 'Yard',
  rules: 'Rules',
} as const;

/** Those that are written, in the order of the menu. */
export const menu = [
  'today',
  'cases',
  'class',
  'questions',
  'yard',
  'rules',
] as const satisfies readonly (keyof typeof pages)[];
