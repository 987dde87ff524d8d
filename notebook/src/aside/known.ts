import { houseOf } from '../state/house';
import type { KnownAsked } from './known-of';
import { oneByOne } from './one-by-one';

/** In milliseconds; nobody waits for it, as the question that is asked stands there already. */
const most = 10_000;

const ask = oneByOne<{ readonly kind: 'known' } & KnownAsked, string>({
  most,
  tooLong: '',
  away: '',
});

/** What can be said of a case though its verdict cannot, found beside the page. */
export const knownFor = (of: Omit<KnownAsked, 'house'>, wanted: () => boolean): Promise<string> =>
  ask({ kind: 'known', ...of, house: houseOf(of.topic) }, wanted);
