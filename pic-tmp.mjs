import { spawn } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { chromium as pw } from '@playwright/test';
import sp from '@sparticuz/chromium';
const unwanted = /single-process|web-security|gpu|angle|swiftshader/;
const browser = await pw.launch({ executablePath: await sp.executablePath(), args: [...sp.args.filter((f) => !unwanted.test(f)), '--disable-gpu'] });
const [out, lang, ...homes] = process.argv.slice(2);
for (const home of homes) {
  const child = spawn(process.execPath, ['build/out/node/main.js', '--no-open', '--data', mkdtempSync('/tmp/pw-'), '--sample', home.includes('/') ? home : `/tmp/wt/bridge-homes/${home}`], { env: { ...process.env, TZ: 'Europe/London' } });
  const url = await new Promise((found) => { let said = ''; const l = (c) => { said += c; const a = /http:\/\/127\.0\.0\.1:\d+\/\S*/.exec(said); if (a) found(a[0]); }; child.stdout.on('data', l); child.stderr.on('data', l); });
  for (const [w, h, scheme] of [[1280, 800, 'light'], [1024, 768, 'dark']]) {
    const page = await browser.newPage({ viewport: { width: w, height: h }, colorScheme: scheme, locale: lang === 'de' ? 'de-DE' : 'en-GB' });
    await page.goto(url);
    await page.waitForSelector('h1');
    if (lang === 'de') {
      const sel = page.locator('select').filter({ hasText: 'Deutsch' }).first();
      if (await sel.count()) await sel.selectOption({ label: 'Deutsch' });
    }
    const link = page.getByRole('link').filter({ hasText: new RegExp(home.split('/').at(-1).replace('-', '.'), 'i') }).first();
    await link.click();
    await page.locator('a,button').filter({ hasText: /^(Bill check|Rechnung prüfen|Rechnungsprüfung|Rechnungsvergleich)/ }).first().click();
    await page.waitForTimeout(2500);
    await page.screenshot({ path: `${out}/${home.split('/').at(-1)}-${lang}-${w}-${scheme}.png`, fullPage: true });
    await page.close();
  }
  child.kill('SIGTERM');
}
await browser.close();
