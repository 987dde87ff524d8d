import type { Address } from '../state/address';

/** What a page is, for those who have only its description before them. */
const descriptions: Readonly<Record<Address['page'], string>> = {
  today: 'What somebody just said, read and answered at once, and the calls that are open.',
  cases: 'Worked cases of a travel-trailer dealership, by topic and level, with their verdicts.',
  case: 'One worked case: what is known, the verdict, the limits, and the working behind it.',
  beside: 'One case with two or three rigs beside each other, and what differs between them.',
  rig: 'A whole rig: its one verdict, what came up in each topic, and how it stands at each moment.',
  note: 'An answer that is no calculation, who keeps it, and until when it is good.',
  class: 'Cases walked with learners, who each predict before the working is opened.',
  questions: 'What people asked, how often, and which case answers it.',
  yard: 'Which trailers of the yard a vehicle may pull, and what may pull a trailer.',
  rules: 'The rule sets: what each asks, how it reckons, what it says, and by which source.',
  topic: 'One rule set: its facts, formulas, limits, findings, numbers and sources.',
};

export const describePage = (page: Address['page']): void =>
  document.querySelector('meta[name="description"]')?.setAttribute('content', descriptions[page]);
