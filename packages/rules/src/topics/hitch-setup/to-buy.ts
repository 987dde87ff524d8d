import { part } from '../../engine/define/topic';
import { geometry, noseBand } from '../../trade/bibliography/hitch-setup';

/** The mount as it is asked for over a counter: by its drop or by its rise, whichever it is. */
export const toBuy = part({
  formulas: {
    'mount.dropOnly': {
      label: 'Drop that carries the trailer level, where it is a drop',
      unit: 'in',
      is: 'choose(mount.drops, mount.dropNeeded, between(-unlimited, unlimited))',
      source: geometry,
    },
    'mount.dropToBuy': {
      label: 'Drop of the mount that is made, where it is a drop',
      noun: 'the drop of the ball mount',
      unit: 'in',
      is: 'choose(mount.drops, -mount.made, between(-unlimited, unlimited))',
      source: noseBand,
    },
    'mount.riseToBuy': {
      label: 'Rise of the mount that is made, where it is a rise',
      noun: 'the rise of the ball mount',
      unit: 'in',
      is: 'choose(mount.rises, mount.made, between(-unlimited, unlimited))',
      source: noseBand,
    },
    'nose.isLevelOnMade': {
      label: 'The trailer stands level on the mount that is made',
      unit: 'yes-no',
      is: 'nose.onMade >= 0 && nose.onMade <= 0',
      source: geometry,
    },
    'mount.dropsLevel': {
      label: 'The mount that is made drops and leaves the trailer level',
      unit: 'yes-no',
      is: 'mount.drops && nose.isLevelOnMade',
      source: geometry,
    },
    'mount.risesLevel': {
      label: 'The mount that is made rises and leaves the trailer level',
      unit: 'yes-no',
      is: 'mount.rises && nose.isLevelOnMade',
      source: geometry,
    },
  },
});
