import type { HowTo } from '../../engine/define/shapes';
import { custom, manual } from '../../trade/bibliography/common';
import { layers } from '../../trade/bibliography/theft-deterrence';

/** How the measures are carried out. */
export const how = {
  'list-it': {
    label: 'How the list is made that police and insurer ask for',
    steps: [
      'Photograph the identification number, the license plate, all four sides, and two marks that only you know.',
      'Write down the numbers of battery, awning, air conditioner and electronics, room by room.',
      'Put a card with your name where a thief does not look: inside a cupboard’s back, below a mattress.',
      'Keep the list and the receipts at home and in a mailbox of your own, never in the trailer.',
    ],
    caution: 'Title and registration never stay in it.',
    source: layers,
  },
  'lock-the-coupler': {
    label: 'How a coupler lock is fitted',
    steps: [
      'Unhitched and chocked, try that the lock fills the socket, so that no ball goes in beside it.',
      'Close the latch over it and lock latch or pin as well.',
      'Hang the chains up where they do not invite.',
      'Before it is hitched again everything comes off, and chains, latch pin and breakaway cable go back where they belong.',
    ],
    caution: 'A lock is no safety chain and no latch pin. Walk around it before it moves.',
    source: manual,
  },
  'try-the-ways-out': {
    label: 'How the ways out are tried',
    steps: [
      'Lock everything as for a night, with one person inside and one outside.',
      'From inside open every door and every escape window without a key and without light.',
      'What does not open within a breath is changed before anyone sleeps in it.',
    ],
    caution: 'Nothing across a door, ever: in a fire there are seconds.',
    source: manual,
  },
  'when-it-is-gone': {
    label: 'What is done when it is gone',
    steps: [
      'Call the police with the list; ask for the report’s number.',
      'Call insurer and lender the same day, with that number.',
      'Tell the police where a tracker shows it, and no one else.',
      'Write down who was told, when.',
    ],
    caution: 'Do not follow a thief and fetch nothing back: a trailer is money.',
    source: custom,
  },
} satisfies Record<string, HowTo>;
