import { tongueFindings } from '../../trade/rig/tongue-findings';

const { 'tongue-share': share, 'tongue-negative': negative } = tongueFindings.findings;
const see = { topic: 'sway', says: 'What to do about sway' } as const;

/** What is found of the tongue; where it is wrong, what to do about sway stands in a topic of its own. */
export const tongueLeads = {
  ...tongueFindings,
  findings: {
    ...tongueFindings.findings,
    'tongue-share': { ...share, see },
    'tongue-negative': { ...negative, see },
  },
} as const;
