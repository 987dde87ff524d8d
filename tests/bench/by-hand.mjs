// The decision as somebody writes it by hand for speed: columns of doubles, all that is of one vehicle read
// before the trailers are gone through, no object and no branch on the way.
import { near, ofTrailer, ofVehicle } from './decision.mjs';

const columns = (rows) =>
  Object.fromEntries(
    Object.keys(rows[0]).map((name) => [name, Float64Array.from(rows, (row) => row[name])]),
  );

/** Makes typed arrays of a yard, and gives what judges all of its pairs. */
export function byHand(vehicles, trailers) {
  const v = columns(vehicles.map(ofVehicle));
  const t = columns(trailers.map(ofTrailer));
  const { loaded, tongue, dry, heavy, rated, front: wall, alone } = t;
  const width = trailers.length;
  return (from, to, into) => {
    for (let i = from; i < to; i += 1) {
      const aboard = v.aboard[i];
      const curb = v.curb[i] + aboard;
      const lever = v.lever[i];
      const [frontAlone, rearAlone] = [v.frontAlone[i], v.rearAlone[i]];
      const [pull, pullCare] = [v.pull[i] + near, v.pullCare[i] + near];
      const [rest, restCare] = [v.rest[i] + near, v.restCare[i] + near];
      const [label, labelCare] = [v.label[i] + near, v.labelCare[i] + near];
      const [gross, grossCare] = [v.gross[i] + near, v.grossCare[i] + near];
      const [onFront, onFrontCare] = [v.onFront[i] + near, v.onFrontCare[i] + near];
      const [onRear, onRearCare] = [v.onRear[i] + near, v.onRearCare[i] + near];
      const [tireFront, tireFrontCare] = [v.tireFront[i] + near, v.tireFrontCare[i] + near];
      const [tireRear, tireRearCare] = [v.tireRear[i] + near, v.tireRearCare[i] + near];
      const [both, bothShare, bothCare] = [
        v.both[i] + near,
        v.bothShare[i] + near,
        v.bothCare[i] + near,
      ];
      const [empty, area, light] = [v.curb[i], v.area[i] + near, v.light[i] + near];
      const start = (i - from) * width;
      for (let j = 0; j < width; j += 1) {
        const [weight, press] = [loaded[j], tongue[j]];
        const payload = aboard + press;
        const all = curb + press;
        const combined = curb + weight;
        const front = frontAlone - press * lever;
        const rear = rearAlone + press * (1 + lever);
        const stop =
          (weight > pull) |
          (press > rest) |
          (payload > label) |
          (all > gross) |
          (front > onFront) |
          (rear > onRear) |
          (combined > both) |
          (front / 2 > tireFront) |
          (rear / 2 > tireRear) |
          (wall[j] > area);
        const care =
          (weight > pullCare) |
          (press > restCare) |
          (press > light) |
          (payload > labelCare) |
          (all > grossCare) |
          (front > onFrontCare) |
          (rear > onRearCare) |
          (combined > bothShare + dry[j] * 0.05) |
          (combined > bothCare) |
          (empty + dry[j] > both) |
          (front / 2 > tireFrontCare) |
          (rear / 2 > tireRearCare) |
          (heavy[j] > rest) |
          (aboard + heavy[j] > label) |
          (rated[j] > pull);
        into[start + j] = Math.max(alone[j], (stop << 1) | (care & ~stop));
      }
    }
  };
}
