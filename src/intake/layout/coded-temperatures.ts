/**
 * Temperatures as the open exchange form of surface weather observations writes them: "+0105,1" is 10.5 °C with a mark of
 * quality, +9999 none, times in UTC. From public descriptions of the form, from memory.
 */
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellText, rowTexts, type Table } from '../text/table.ts';

const CODED = /^([+-]\d{4}),\d$/;
const MISSING = 9999;
const SEARCHED_ROWS = 5;
const HEADINGS: Readonly<Record<string, string>> = { TMP: 'TMP (°C)', DATE: 'DATE (UTC)' };

/** The table with degrees in plain numbers; undefined where it has no such column. */
export function plainTemperatures(table: Table): Table | undefined {
  for (let heading = 0; heading < Math.min(SEARCHED_ROWS, table.rowCount - 1); heading++) {
    const coded = rowTexts(table, heading).indexOf('TMP');
    if (coded < 0 || !CODED.test(cellText(table, heading + 1, coded))) continue;
    return rewriteCells(table, (row, column) => {
      if (row === heading) {
        const said = HEADINGS[cellText(table, row, column)];
        return said === undefined ? undefined : [said];
      }
      const tenths = column === coded ? CODED.exec(cellText(table, row, column))?.[1] : undefined;
      if (tenths === undefined) return undefined;
      return [Number(tenths) === MISSING ? '' : (Number(tenths) / 10).toFixed(1)];
    });
  }
  return undefined;
}
