/** What stands in the folds of a case, read as one when the first of them is opened. */
import '../drawings/case-figures';
import '../drawings/pounds-way';
import '../elements/working-steps';
import './case-acts';
import './comes-to';
import './finding-list';
import './source-list';
import './why-told';
