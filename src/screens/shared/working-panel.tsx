import { WorkingView } from '../../charts/working-view.tsx';
import type { Working } from '../../model/working.ts';
import { Dialog } from './dialog.tsx';

/** "Where does this come from?": the sum behind a figure, beside the page. */
export function WorkingPanel(props: { readonly working: Working; readonly onClose: () => void }) {
  return (
    <Dialog title={props.working.title} onClose={props.onClose} side>
      <WorkingView working={props.working} />
    </Dialog>
  );
}
