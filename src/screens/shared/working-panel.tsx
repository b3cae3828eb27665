import { WorkingView } from '../../charts/working-view.tsx';
import type { Working } from '../../model/shapes/working.ts';
import { reword } from '../../words/say.ts';
import { Dialog } from './dialog.tsx';

/** "Where does this come from?": the sum behind a figure, beside the page. */
export function WorkingPanel(props: { readonly working: Working; readonly onClose: () => void }) {
  return (
    <Dialog title={reword(props.working.title)} onClose={props.onClose} side>
      <WorkingView working={props.working} />
    </Dialog>
  );
}
