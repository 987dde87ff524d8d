/** What reckons beside the page. */
import '../elements/chance-list';
import '../elements/change-list';
