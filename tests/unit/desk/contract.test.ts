import type { Call } from '../../../src/desk/contract.ts';
import { contractSuite } from './contract-suite.ts';
import { openDesk } from './open-desk.ts';

contractSuite('the contract, by the desk itself', async () => {
  const { desk, store } = openDesk();
  const call = ((name: string, input: unknown, options = {}) => desk.handle(name, input, options)) as Call;
  return {
    call,
    async close() {
      store.close();
    },
  };
});
