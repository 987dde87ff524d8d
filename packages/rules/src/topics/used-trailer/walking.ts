import { part } from '../../engine/define/topic';
import { walkRule } from '../../trade/bibliography/used-trailer';

/** Whether one of the four ends it, for certain or for certain not; the findings say which. */
export const verdictOnWalking = part({
  formulas: {
    'walk.isOn': {
      label: 'Something ends it',
      unit: 'yes-no',
      is: "(frame.isKnown && (frame.state == 'cracked' || frame.state == 'rust-through')) || (hanger.isCracked && rail.isKnown && frame.railWhole == 'no') || (soft.isKnown && soft.zones > soft.most) || (moves.isKnown && structure.moves == 'yes') || (title.isKnown && (title.state == 'none' || title.state == 'other-name' || title.state == 'number-differs' || title.state == 'branded')) || (gas.isKnown && gas.tested == 'leaks' && mends.isKnown && gas.sellerMends == 'no')",
      source: walkRule,
    },
    'walk.isOff': {
      label: 'Frame, floor, walls and title were seen, and nothing ends it',
      unit: 'yes-no',
      is: "frame.isKnown && !rail.isOpen && soft.isKnown && !(given(structure.moves) && !moves.isKnown) && title.isKnown && !walk.isOn && !(gas.isKnown && gas.tested == 'leaks' && !mends.isKnown)",
      source: walkRule,
    },
  },
});
