import type { AnsweredView } from '../sections/case-view';
import { toldOf } from '../sections/told-of';
import { keptWordings } from '../state/wording';

/** Copies the answer as a short post, its caution with it, and says what came of it. */
export async function copyPost(view: AnsweredView): Promise<string> {
  const { leavingReply } = await import('../state/worded');
  const text = leavingReply('post', toldOf(view), keptWordings(view.topic.id, view.name));
  try {
    await navigator.clipboard.writeText(text);
    return 'Copied, with its caution.';
  } catch {
    return 'This browser does not let the page copy; open Send, mark the text and copy it yourself.';
  }
}
