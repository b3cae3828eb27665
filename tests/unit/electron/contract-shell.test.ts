import { callOverBridge } from '../../../src/screens/desk-bridge.ts';
import { contractSuite } from '../desk/contract-suite.ts';
import { openShell } from './open-shell.ts';

contractSuite("the contract, over the shell's handlers (a stand-in for Electron; its binary was not run)", async () => {
  const { bridge, link } = await openShell();
  return { call: callOverBridge(bridge), close: () => link.close() };
});
