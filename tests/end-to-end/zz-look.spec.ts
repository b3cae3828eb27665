import { comeToRest, expect, openStage, test, typeInto } from './host.ts';
import { writeFileSync, appendFileSync } from 'node:fs';
test.use({ sampleName: 'mill-lane' });
const P='/tmp/wt/letters-x/win/';
let seed=Number(process.env.SEED??'7'); const rnd=()=>{seed=(seed*1103515245+12345)%2147483648;return seed/2147483648};
test('look', async ({ desk, host }) => {
  test.setTimeout(600000);
  const id=(await host.call('household.list', {}))[0]!.id;
  const now=await host.call('household.open',{id});
  await host.call('household.save',{household:{...now.household,siteReadings:[...(now.household.siteReadings??[]),{id:'v9',date:'2026-02-10',readings:{brineInC:1,brineOutC:-2,glycol:{kind:'propylene',percent:12,basis:'mass'},flowC:44,returnC:39}}]},revision:now.revision} as never);
  await desk.reload(); await comeToRest(desk);
  await desk.getByRole('link', { name: 'Mill Lane' }).click();
  await openStage(desk, 'Bill check');
  await desk.getByRole('button', { name: /^Remove/ }).click();
  await typeInto(desk, 'First day', '2025-12-01'); await typeInto(desk, 'Last day', '2026-02-28');
  await typeInto(desk, 'kWh of the heat pump', '4200'); await typeInto(desk, 'Price per kWh', '27.69');
  await desk.getByRole('button', { name: 'Check the bill' }).click();
  await comeToRest(desk);
  const shot=async(n:string)=>{ for (const [w,h] of [[1280,800],[1024,768]] as const) for (const c of ['light','dark'] as const) { await desk.setViewportSize({width:w,height:h}); await desk.emulateMedia({colorScheme:c}); await comeToRest(desk); await desk.screenshot({path:`${P}${n}-${w}-${c}.png`,fullPage:true}); } await desk.setViewportSize({width:1280,height:800}); await desk.emulateMedia({colorScheme:'light'}); };
  await shot('start');
  const panel=desk.getByRole('region',{name:'Guided search'});
  const bills:[string,string,string,string,string?][]=[['2025-12-01','2026-02-28','4200','27.69'],['2025-12-01','2026-02-28','1100','27.69'],['2026-06-01','2026-08-31','900','27.69'],['2025-12-01','2026-02-28','3600','27.69','estimated'],['2025-12-01','2026-02-28','5200','27.69','whole']];
  let path=0;
  for (const [from,to,kWh,price,kind] of bills) {
    if (path>0) {
      await typeInto(desk, 'First day', from); await typeInto(desk, 'Last day', to);
      if (kind==='whole') { await desk.getByRole('main').getByText('whole home',{exact:true}).first().click(); await typeInto(desk,'kWh of the whole bill',kWh); await typeInto(desk,'Of these for other things','900'); }
      else await typeInto(desk, 'kWh of the heat pump', kWh);
      await typeInto(desk, 'Price per kWh', price);
      if (kind==='estimated') await desk.getByRole('main').getByText('estimated',{exact:true}).first().click();
      else if (path>9) await desk.getByRole('main').getByText('read',{exact:true}).first().click();
      await desk.getByRole('button', { name: 'Check the bill' }).click(); await comeToRest(desk);
    }
    for (let k=0;k<3;k++,path++) {
      const log:string[]=[`\n### path ${path} ${from} ${kWh} ${kind??''}: ${await desk.getByRole('main').getByRole('heading',{level:2}).first().innerText()}`];
      for (let step=0;step<14;step++) {
        const qs=panel.locator('.search-question'); const n=await qs.count(); log.push('  '+await panel.getByRole('status').innerText()); if(n===0) break;
        const q=qs.nth(rnd()<0.7?0:n-1); const outs=q.locator('.search-outcomes button'); const m=await outs.count(); const o=outs.nth(Math.floor(rnd()*m));
        log.push('   Q '+await q.locator('h4 + p').first().innerText()+' ['+await q.locator('.small').first().innerText()+'] => '+await o.innerText());
        const before=await panel.locator('.checks li').count(); await o.click(); await expect(panel.locator('.checks li')).toHaveCount(before+1); await comeToRest(desk);
        if (path===0&&step===1) await shot('mid');
      }
      log.push('  CAUSES '+(await panel.locator('.search-causes tr').allInnerTexts()).map(t=>t.replace(/\s+/g,' ')).join('; '));
      appendFileSync(P+'paths.txt',log.join('\n')+'\n');
      await panel.screenshot({path:`${P}end-${path}.png`});
      if (path===0) await shot('end');
      // begin anew
      for(;;){ const b=panel.getByRole('button',{name:/^Remove this answer/}); const c=await b.count(); if(c===0)break; await b.last().click(); await expect(panel.locator('.checks li')).toHaveCount(c-1); await comeToRest(desk); }
    }
  }
});
