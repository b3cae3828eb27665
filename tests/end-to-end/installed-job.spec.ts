import { doTheJob } from '../../build/package/try-steps.ts';
import { test } from './host.ts';

test.use({ sampleName: null });

test('the job that an installed program is put through can be done in the words on the screen', async ({ desk }) => {
  await doTheJob(desk, true);
});
