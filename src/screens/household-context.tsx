/** What every screen of an open household reads and may do. The provider beside this file fills it. */
import { createContext, useContext } from 'react';
import type { EstimateSummary, OpenHousehold, Settings } from '../desk/contract.ts';
import type { Appraisal } from '../model/shapes/appraisal.ts';
import type { BillCheck } from '../model/shapes/bill-check.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import type { Evidence, Series } from '../model/shapes/evidence.ts';
import type { Household } from '../model/shapes/household.ts';
import type { ShownWorking } from '../words/working.ts';
import type { Stage } from './routes.ts';

export interface OpenDesk {
  readonly household: Household;
  readonly evidence: readonly Evidence[];
  /** All series of the evidence, joined over the imports so that no day counts twice, as `appraise()` takes them. */
  readonly series: readonly Series[];
  /** Imports that were taken back and can be brought again. */
  readonly undone: OpenHousehold['undone'];
  /** Pieces of it that are no longer what was kept. */
  readonly damage: OpenHousehold['damage'];
  readonly estimates: readonly EstimateSummary[];
  readonly checks: readonly BillCheck[];
  /** Reckoned anew whenever the household or its evidence changes. */
  readonly appraisal: Appraisal;
  readonly today: CivilDate;
  readonly settings: Settings;
  /** Changes the household at once on screen; it is kept a moment later. */
  readonly change: (patch: (household: Household) => Household) => void;
  /** Keeps what is waiting, then reads household, evidence, written estimates and checks from the desk again. */
  readonly reload: () => Promise<void>;
  /** Shows the sum behind a figure beside the page. */
  readonly openWorking: (working: ShownWorking) => void;
  /** One line in the status bar, read out by screen readers. */
  readonly tell: (message: string) => void;
  /** Opens a stage of this household, or the walk-through. */
  readonly goTo: (stage: Stage) => void;
}

export const HouseholdContext = createContext<OpenDesk | null>(null);

export function useHousehold(): OpenDesk {
  const desk = useContext(HouseholdContext);
  if (!desk) throw new Error('useHousehold is used outside an open household');
  return desk;
}
