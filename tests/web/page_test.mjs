// SPDX-License-Identifier: MIT
// What a pupil, a teacher and a shared machine ask of the page. The first story is acted over http and from a file.
import assert from 'node:assert/strict';
import {spawnSync} from 'node:child_process';
import {readFileSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {after, before, test} from 'node:test';
import {Tab, consolePath, fileAddress, launch, pagePath, pictures, serve} from './the_page.mjs';

let browser;
let server;
before(async () => {
  browser = await launch();
  server = await serve();
});
after(async () => {
  await browser?.close();
  server?.close();
});

/// Runs `story` in a browser of its own, and looks that nothing was complained of and nothing left the page.
const acted = async (address, settings, story) => {
  const context = await browser.newContext({viewport: {width: 1366, height: 768}, locale: 'en-US', ...settings});
  try {
    const tab = await Tab.open(context, address);
    await story(tab, context);
    assert.deepEqual(tab.complaints, []);
    const asked = tab.requests.filter(url => !/^(blob|data):/.test(url) && url !== address);
    assert.deepEqual(asked, [], 'nothing is asked of any machine');
  } finally {
    await context.close();
  }
};

const hung = async tab => {
  const plan = await tab.plan();
  return plan.plans.find(one => one.name === plan.current).hung.map(one => one.piece);
};

const checked = path => {
  const done = spawnSync(consolePath, ['check', path, '--json'], {encoding: 'utf8'});
  assert.ok(done.status === 0 || done.status === 1, done.stderr);
  return done.stdout;
};

// Of the fair's example (scenes/fair_example.bough.json): room on the left branch between pieces 9 and 11, and where
// piece 4 hangs from the lowest one.
const room = [-170, 376];
const pieceFour = [85, 200];

const first = {http: () => server.address, file: () => fileAddress};
for (const way of ['http', 'file'])
  test(`over ${way}: hang by mouse and by finger, make, undo, reload, take home, and open it natively`, async () => {
    await acted(first[way](), {hasTouch: true}, async tab => {
      await tab.begin('Owls');
      const points = [await tab.points()];
      await tab.picture(`${way}_example`);

      assert.ok(!(await hung(tab)).includes(12));
      await tab.drag(await tab.placeOf('envelope piece 12'), await tab.placeOfMm(...room));
      assert.ok((await hung(tab)).includes(12));
      points.push(await tab.points());
      assert.ok(points[1] > points[0], `${points}`);

      await tab.drag(await tab.placeOfMm(...pieceFour), await tab.placeOf('make a piece'));
      assert.ok(!(await hung(tab)).includes(4));
      await tab.dragByFinger(await tab.placeOf('envelope piece 8'), await tab.placeOfMm(...pieceFour));
      assert.ok((await hung(tab)).includes(8));
      await tab.picture(`${way}_hung`);

      // The text beside the canvas says what the referee says.
      const plan = await tab.call('plan');
      const report = JSON.parse(await tab.call('judgedJson', plan));
      assert.equal(await tab.points(), report.score);
      const counting = report.pieces.filter(piece => piece.state === 'counts').length;
      assert.match(await tab.text('counts'), new RegExp(`${counting} pieces count`));
      const cells = await tab.cells('pieces');
      assert.deepEqual(cells.map(row => Number(row[0])), report.pieces.map(piece => piece.number));

      const made = (await tab.plan()).pieces.length;
      await tab.click('make a piece');
      await tab.click('three sides');
      for (const [side, cm] of [['side 1', '7'], ['side 2', '6'], ['side 3', '4.5']]) {
        await tab.click(side);
        await tab.page.keyboard.type(cm, {delay: 40});
      }
      await tab.picture(`${way}_making`);
      await tab.click('make it');
      assert.deepEqual((await tab.plan()).pieces.at(-1).sides_mm, [70, 60, 45]);
      await tab.pressKey('Control+z');
      assert.equal((await tab.plan()).pieces.length, made);

      const before = await tab.plan();
      const score = await tab.points();
      await tab.page.reload();
      await tab.settled();
      assert.deepEqual(await tab.plan(), before);
      assert.equal(await tab.points(), score);

      const home = await tab.download(() => tab.page.click('#homeButton'));
      assert.match(home.name, /\.bough\.json$/);
      assert.equal(JSON.parse(checked(home.path)).score, score);
    });
  });
