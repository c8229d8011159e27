// SPDX-License-Identifier: MIT
// How large the page is, how long it takes until it asks whose plan it is and until the table is drawn, and for one
// frame while a piece is dragged, at 20, 100 and 300 hung pieces:  tests/web/run.sh bench
// In a headless Chromium that draws by the processor. A frame ends when its pixels can be read. Times compare within
// one run on one machine only.
import {execFileSync} from 'node:child_process';
import {readFileSync, writeFileSync} from 'node:fs';
import {gzipSync} from 'node:zlib';
import {join} from 'node:path';
import {Tab, fileAddress, launch, pagePath, pictures, setting} from './the_page.mjs';

const frames = 60;
const ms = value => value.toFixed(1).padStart(9);

const page = readFileSync(pagePath);
console.log(`size: ${Math.round(page.length / 1000)} kB, ${Math.round(gzipSync(page, {level: 9}).length / 1000)} kB compressed`);

const browser = await launch();
console.log('                                  one dragged frame, ms:');
console.log('pieces  asks, ms  table, ms    median  9 of 10');
for (const pieces of [20, 100, 300]) {
  const plan = join(pictures, `${pieces}.bough.json`);
  writeFileSync(plan, execFileSync(setting('BOUGHWORK_MADE_PLAN'), [String(pieces)], {maxBuffer: 1 << 26}));
  const context = await browser.newContext({viewport: {width: 1366, height: 768}, locale: 'en-US'});
  const tab = await Tab.open(context, fileAddress);
  await tab.page.waitForSelector('#groupName:visible');
  const asks = await tab.page.evaluate(() => performance.now());
  await tab.page.fill('#groupName', 'Owls');
  const table = await tab.page.evaluate(() => {
    const start = performance.now();
    document.getElementById('beginButton').click();
    page.program.drawNow();
    return performance.now() - start;
  });
  await tab.settled();
  if (await tab.shows('skip')) await tab.pressKey('Escape');
  await tab.page.setInputFiles('#file', plan);
  await tab.settled();
  const opened = await tab.plan();
  const hung = opened.plans[0].hung[Math.floor(opened.plans[0].hung.length / 2)];
  const start = await tab.call('placeOfMm', hung.at_mm[0] + 12, hung.at_mm[1] - 5);
  const times = await tab.page.evaluate(([count, [x, y]]) => {
    const canvas = document.getElementById('canvas');
    const box = canvas.getBoundingClientRect();
    const pen = canvas.getContext('webgl');
    const pixel = new Uint8Array(4);
    const mouse = (type, dx, dy) => {
      canvas.dispatchEvent(new MouseEvent(type, {clientX: box.x + x + dx, clientY: box.y + y + dy, bubbles: true}));
      const begin = performance.now();
      page.program.drawNow();
      if (pen) pen.readPixels(0, 0, 1, 1, pen.RGBA, pen.UNSIGNED_BYTE, pixel);
      return performance.now() - begin;
    };
    mouse('mousemove', 0, 0);
    mouse('mousedown', 0, 0);
    mouse('mousemove', 60, 0);
    const all = [];
    for (let i = 0; i < count; ++i) all.push(mouse('mousemove', 60 * Math.cos(0.07 * i), 60 * Math.sin(0.07 * i)));
    mouse('mouseup', 60, 0);
    return all.sort((a, b) => a - b);
  }, [frames, start]);
  await tab.settled();
  const after = await tab.plan();
  if (JSON.stringify(after) === JSON.stringify(opened)) throw new Error('No piece was dragged: the times mean nothing');
  console.log(`${String(pieces).padStart(6)} ${ms(asks)} ${ms(table)}  ${ms(times[frames / 2])} ${ms(times[Math.floor(frames * 0.9)])}`);
  await tab.picture(`bench_${pieces}`);
  await context.close();
}
await browser.close();
