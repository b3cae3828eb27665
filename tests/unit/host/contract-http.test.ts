import { watchPresence } from '../../../src/host/presence.ts';
import { startLoopback } from '../../../src/host/server.ts';
import { callOverHttp } from '../../../src/screens/desk-http.ts';
import { contractSuite } from '../desk/contract-suite.ts';
import { openDesk } from '../desk/open-desk.ts';
import { linkHere } from './link-here.ts';

contractSuite('the contract, over the loopback host', async () => {
  const { desk, store } = openDesk();
  const link = linkHere({ desk, close: () => store.close() });
  const host = await startLoopback({
    desk: link,
    webFolder: '/nowhere',
    port: 0,
    presence: watchPresence(null, () => undefined),
  });
  return {
    call: callOverHttp({ base: `http://127.0.0.1:${host.port}`, token: host.token }),
    async close() {
      await host.close();
      await link.close();
    },
  };
});
