/** All German texts, by their English. One file a folder of the source. */
import type { Catalogue } from '../say.ts';
import { ASKED } from './asked.ts';
import { BILL_SUMS } from './bill-sums.ts';
import { BILL_SUMS_SCREEN } from './bill-sums-screen.ts';
import { CHARTS } from './charts.ts';
import { CHECK } from './check.ts';
import { CHECK_SCREEN } from './check-screen.ts';
import { COST } from './cost.ts';
import { COST_SCREEN } from './cost-screen.ts';
import { DESK } from './desk.ts';
import { DRIVERS } from './drivers.ts';
import { EARLIER } from './earlier.ts';
import { EVIDENCE_SCREEN } from './evidence-screen.ts';
import { EXPLAINED } from './explained.ts';
import { FRAME } from './frame.ts';
import { GUIDED_SEARCH } from './guided-search.ts';
import { HEAT } from './heat.ts';
import { HEAT_SCREEN } from './heat-screen.ts';
import { HOST } from './host.ts';
import { LEAVE_BEHIND } from './leave-behind.ts';
import { LETTER } from './letter.ts';
import { LIFETIME } from './lifetime.ts';
import { MACHINE } from './machine.ts';
import { MACHINE_SCREEN } from './machine-screen.ts';
import { MODEL } from './model.ts';
import { NUMBERS } from './numbers.ts';
import { PRICES_SCREEN } from './prices-screen.ts';
import { QUESTIONS } from './questions.ts';
import { REFUSALS } from './refusals.ts';
import { REMARKS } from './remarks.ts';
import { ROUND } from './round.ts';
import { SAFETY } from './safety.ts';
import { SITE_READINGS } from './site-readings.ts';
import { SOURCES } from './sources.ts';
import { SYSTEMS } from './systems.ts';
import { THREAD } from './thread.ts';
import { WALK } from './walk.ts';

export const german: Catalogue = {
  ...ASKED,
  ...EARLIER,
  ...MODEL,
  ...EXPLAINED,
  ...NUMBERS,
  ...LEAVE_BEHIND,
  ...CHECK,
  ...CHECK_SCREEN,
  ...COST,
  ...COST_SCREEN,
  ...DRIVERS,
  ...FRAME,
  ...GUIDED_SEARCH,
  ...HEAT_SCREEN,
  ...THREAD,
  ...WALK,
  ...CHARTS,
  ...QUESTIONS,
  ...REFUSALS,
  ...BILL_SUMS_SCREEN,
  ...PRICES_SCREEN,
  ...EVIDENCE_SCREEN,
  ...MACHINE_SCREEN,
  ...ROUND,
  ...SITE_READINGS,
  ...SOURCES,
  ...BILL_SUMS,
  ...REMARKS,
  ...HEAT,
  ...LETTER,
  ...MACHINE,
  ...LIFETIME,
  ...DESK,
  ...HOST,
  ...SAFETY,
  ...SYSTEMS,
};
