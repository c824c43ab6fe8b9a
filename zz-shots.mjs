// node zz-shots.mjs ids sizes stages [scheme] [units]
import { chromium } from '@playwright/test';
const [,, idsArg='all', sizesArg='390x664,844x390,1366x768,1920x1080', stagesArg='predict,run,compare,tasks,own', scheme='light', units='us'] = process.argv;
const base = process.env.BASE ?? 'http://127.0.0.1:4399';
const where = {'holding-torque':'what-pressure-does','fluid':'hot-fluid-thin-fluid','gap-or-hole':'thin-gap-open-hole','clutch-pressure':'thin-gap-open-hole','who-goes-hungry':'pump-and-regulator','which-ranges':'regulator-to-clutch','two-ways':'two-range-selections','engagement':'turbine-must-stop','warm-up':'turbine-must-stop','controller-sees':'what-slip-is'};
const ids = idsArg==='all'?Object.keys(where):idsArg.split(',');
const b = await chromium.launch({executablePath:'/usr/bin/chromium',args:['--no-sandbox']});
for (const size of sizesArg.split(',')) {
  const [width,height]=size.split('x').map(Number);
  const c = await b.newContext({viewport:{width,height},colorScheme:scheme,reducedMotion:'reduce',locale:'en-US',hasTouch:width<900});
  for (const id of ids) {
    const page = await c.newPage();
    page.on('pageerror',e=>console.log(id,size,e.message));
    await page.goto(`${base}/lessons/${where[id]}/`);
    if (units==='si') await page.evaluate(()=>document.documentElement.dataset.units='si');
    const sim=page.locator(`#${id}`);
    await sim.evaluate(e=>e.scrollIntoView({block:'start'}));
    await page.waitForFunction(i=>document.getElementById(i)?.dataset.ready==='true',id);
    await sim.evaluate(e=>e.scrollIntoView({block:'start'}));
    const box=async(stage)=>{const r=await page.evaluate(([i])=>{const s=document.getElementById(i);const f=(q)=>{const e=s.querySelector(q);if(!e)return null;const b=e.getBoundingClientRect();return [b.top|0,b.bottom|0,b.left|0,b.right|0]};return {sim:[s.getBoundingClientRect().top|0,s.getBoundingClientRect().bottom|0],pic:f('.sim-picture'),says:f('.sim-picture > .live-text'),ctl:f('.sim-controls'),act:f('.act'),below:f('.sim-below')}},[id]);console.log(size,id,stage,JSON.stringify(r));};
    const shot=async(stage)=>{await page.waitForTimeout(150);await page.screenshot({path:`/tmp/shots/${id}-${size}-${stage}${scheme==='dark'?'-dark':''}${units==='si'?'-si':''}.png`});await box(stage);};
    const want=s=>stagesArg.split(',').includes(s);
    if(want('predict'))await shot('predict');
    await sim.locator('.choice-stack input').first().check({force:true});
    await sim.locator('.choice-row input').first().check({force:true});
    if(want('run'))await shot('run');
    await sim.locator('button[type=submit]').click();
    await sim.locator('.compare').waitFor();
    if(want('compare'))await shot('compare');
    await sim.locator('.sim-stage .act').first().click();
    await sim.locator('.task-words').waitFor();
    if(want('tasks'))await shot('tasks');
    await sim.locator('.sim-nav button').last().click();
    await page.waitForTimeout(200);
    if(want('own'))await shot('own');
    await page.close();
  }
  await c.close();
}
await b.close();
