import { WorkingView } from '../../charts/working-view.tsx';
import { sayTold } from '../../words/say-told.ts';
import type { ShownWorking } from '../../words/working.ts';
import { Dialog } from './dialog.tsx';

/** "Where does this come from?": the sum behind a figure, beside the page. */
export function WorkingPanel(props: { readonly working: ShownWorking; readonly onClose: () => void }) {
  return (
    <Dialog title={sayTold(props.working.title)} onClose={props.onClose} side>
      <WorkingView working={props.working} />
    </Dialog>
  );
}
