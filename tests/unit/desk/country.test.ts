import { describe, expect, test } from 'vitest';
import type { Call } from '../../../src/desk/contract.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { makeHousehold, typed } from '../appraisal/make-household.ts';
import { NOW, openDesk } from './open-desk.ts';

function opened() {
  const { desk, store } = openDesk();
  const call = ((name, input) => desk.handle(name, input, {})) as Call;
  return { call, store };
}

describe('the country of a household', () => {
  test('is that of the settings for a new one, with its clock', async () => {
    const { call } = opened();
    expect((await call('household.create', { name: 'Ash' })).household).toMatchObject({
      country: 'GB',
      zone: 'Europe/London',
    });
    await call('settings.write', { ...(await call('settings.read', {})), country: 'DE' });
    expect((await call('household.create', { name: 'Esche' })).household).toMatchObject({
      country: 'DE',
      zone: 'Europe/Berlin',
    });
  });

  test.each([
    ['EUR', 'DE'],
    ['GBP', 'GB'],
    ['USD', 'GB'],
    [undefined, 'GB'],
  ] as const)(
    'kept before it was asked, with money in %s, stands in %s, whatever new ones do',
    async (currency, country) => {
      const { call, store } = opened();
      const { country: _, ...old } = emptyHousehold('old', 'Old House');
      store.createHousehold(old, NOW);
      store.writeSettings({ installerName: 'R. Ash', ...(currency ? { currency } : {}) });
      expect((await call('household.open', { id: 'old' })).household.country).toBe(country);
      const settings = await call('settings.read', {});
      expect(settings.country).toBe(country);
      await call('settings.write', { ...settings, country: country === 'DE' ? 'GB' : 'DE' });
      expect((await call('household.open', { id: 'old' })).household.country).toBe(country);
    },
  );

  test('an estimate is in its money, and none is written over a price that is open', async () => {
    const { call, store } = opened();
    const german = makeHousehold({
      country: 'DE',
      present: { system: 'oil' },
      prices: { oilPencePerLitre: typed(95) },
    });
    store.createHousehold(german, NOW);
    const kept = await call('estimate.keep', { householdId: german.id, note: '' });
    expect(kept.currency).toBe('EUR');
    const british = makeHousehold({ id: 'british', present: { system: 'oil' } });
    store.createHousehold(british, NOW);
    await expect(call('estimate.keep', { householdId: 'british', note: '' })).rejects.toMatchObject({
      code: 'price-open',
      where: 'prices.stand',
    });
  });
});
