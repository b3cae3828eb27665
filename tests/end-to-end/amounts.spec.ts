/** Nothing is said without its sum: every amount on every screen leads to a working that lists it. */
import { findUnexplained } from './amounts.ts';
import { comeToRest, expect, openStage, STAGES, test, walkThrough } from './host.ts';

for (const [folder, name] of [
  ['larch-rise', 'Larch Rise'],
  ['mill-lane', 'Mill Lane'],
  ['holm-farm', 'Holm Farm'],
  ['beacon-view', 'Beacon View'],
  ['quay-flat', 'Quay Flat'],
] as const) {
  test.describe(name, () => {
    test.use({ sampleName: folder });
    test(`${name}: every amount on every screen leads to a working that lists it`, async ({ desk, host }) => {
      const { id } = (await host.call('household.list', {}))[0]!;
      if ((await host.call('household.open', { id })).estimates.length === 0) {
        await host.call('estimate.keep', { householdId: id, note: '' });
      }
      await desk.getByRole('link', { name }).click();
      for (const stage of STAGES) {
        await openStage(desk, stage);
        await desk.locator('main details').evaluateAll((all) => {
          for (const one of all) one.setAttribute('open', '');
        });
        await comeToRest(desk);
        expect.soft(await findUnexplained(desk), stage).toEqual([]);
      }
      await openStage(desk, 'Running cost');
      await walkThrough(desk, async (number) => {
        expect.soft(await findUnexplained(desk), `page ${number}`).toEqual([]);
      });
    });
  });
}
