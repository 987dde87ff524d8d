import { readAddress } from './state/address';
import { filedCase } from './state/filed';
import { openTopic } from './state/topics';

/*
 * What the address asks for travels beside the page that will show it, not after it:
 *
 *     index.html ─► styles, the page's scripts
 *                └► this ─► rule set, case
 *
 * Whatever fails here is asked for again by the page, which then says so.
 */
const address = readAddress(location.hash);
if (address.page === 'case') {
  openTopic(address.topic).catch(() => undefined);
  if (address.packed === undefined) {
    filedCase(address.topic, address.name).catch(() => undefined);
  }
}

// A browser learns to write numbers with the first one, which takes as long as a verdict does: it does
// so while the scripts travel.
setTimeout(() => new Intl.NumberFormat('en-US').format(1234.5));

import('./tare-page').catch(() => {
  const says = document.querySelector('tare-page main p');
  if (says)
    says.textContent =
      'The page could not be read: the network is away. Reload it once it is back.';
});
