/** Everything by which an answer leaves, loaded as one. */
import '../leave.css';
import './print-sheet';
import './reply-card';
import './share-case';
