// SPDX-License-Identifier: MIT
// What a pupil, a teacher and a shared machine ask of the page. The first story is acted over http and from a file.
import assert from 'node:assert/strict';
import {spawnSync} from 'node:child_process';
import {readFileSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {after, before, test} from 'node:test';
import {Tab, consolePath, fileAddress, launch, launchWithoutWebGL, pictures, serve} from './the_page.mjs';

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

const laptop = {width: 1366, height: 768};

/// Runs `story` in a browser of its own, and looks that nothing was complained of and nothing left the page.
const acted = async (address, settings, story) => {
  const context = await browser.newContext({viewport: laptop, locale: 'en-US', ...settings});
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

test('groups at one machine: each has its own plan, a wipe takes two presses', async () => {
  await acted(server.address, {}, async tab => {
    await tab.begin('Owls');
    await tab.drag(await tab.placeOf('envelope piece 12'), await tab.placeOfMm(...room));
    await tab.page.click('#otherButton');
    await tab.begin('Wrens');
    assert.ok(!(await hung(tab)).includes(12), 'another group sees no plan of theirs');
    await tab.page.click('#otherButton');
    await tab.page.fill('#groupName', 'owls');  // as it was written first
    await tab.page.click('#beginButton');
    await tab.settled();
    assert.equal(await tab.text('who'), 'Owls');
    assert.ok((await hung(tab)).includes(12));
    await tab.page.click('#otherButton');
    await tab.page.waitForSelector('#groupList li');
    await tab.picture('groups');

    const line = name => tab.page.locator('#groupList li', {hasText: name});
    await line('Owls').getByRole('button', {name: 'wipe'}).click();
    assert.equal(await line('Owls').count(), 1);
    await tab.picture('groups_wipe');
    await line('Owls').getByRole('button', {name: 'keep it'}).click();
    await line('Owls').getByRole('button', {name: 'wipe'}).click();
    await line('Owls').getByRole('button', {name: 'wipe all that Owls has here'}).click();
    assert.deepEqual(await tab.page.locator('#groupList strong').allTextContents(), ['Wrens']);
    assert.ok(await tab.page.evaluate(() => !Object.keys(localStorage).some(key => /owls/i.test(key))));
  });
});

test('a page that falls down loses nothing, and another group\'s page at the same time does no harm', async () => {
  await acted(server.address, {}, async (tab, context) => {
    const other = await Tab.open(context, server.address);
    await other.begin('Wrens');
    const fallen = await Tab.open(context, server.address);
    await fallen.begin('Owls');
    await fallen.drag(await fallen.placeOf('envelope piece 12'), await fallen.placeOfMm(...room));
    const before = await fallen.plan();
    const devtools = await context.newCDPSession(fallen.page);
    devtools.send('Page.crash').catch(() => {});
    await fallen.page.waitForEvent('crash');

    await tab.page.reload();
    await tab.page.locator('#groupList li', {hasText: 'Owls'}).getByRole('button', {name: 'go on'}).click();
    await tab.settled();
    assert.deepEqual(await tab.plan(), before);
    assert.ok(!(await hung(other)).includes(12));
  });
});

test('two pages of one group keep a copy each', async () => {
  await acted(server.address, {}, async (tab, context) => {
    await tab.begin('Owls');
    await tab.drag(await tab.placeOf('envelope piece 12'), await tab.placeOfMm(...room));
    const second = await Tab.open(context, server.address);
    await second.begin('Owls');
    assert.ok(!(await hung(second)).includes(12));
    await second.drag(await second.placeOfMm(...pieceFour), await second.placeOf('make a piece'));
    await tab.page.reload();
    await tab.settled();
    assert.ok((await hung(tab)).includes(12));
    assert.ok((await hung(tab)).includes(4));
  });
});

test('the browser keeps its keys, the table has its own, and Escape, then Tab leaves it', async () => {
  await acted(server.address, {}, async tab => {
    await tab.page.addInitScript(() => {
      window.pressed = [];
      window.addEventListener('keydown', event => window.pressed.push(event), {capture: true});
    });
    await tab.page.reload();
    await tab.begin('Owls');
    const taken = async key => {
      await tab.page.keyboard.press(key);
      return tab.page.evaluate(() => window.pressed.at(-1).defaultPrevented);
    };
    for (const key of ['F5', 'F12', 'F11', 'Control+r', 'Control+l', 'Control+t', 'Control+0', 'Control+-', 'Control+f',
      'Control+p', 'Alt+ArrowLeft', 'Control+Shift+I'])
      assert.equal(await taken(key), false, key);
    for (const key of ['F1', 'Escape', 'Control+z', 'Control+y', 'ArrowLeft', 'Tab'])
      assert.equal(await taken(key), true, key);
    await tab.page.keyboard.press('Escape');
    await tab.page.keyboard.press('Tab');
    assert.ok(!await tab.page.evaluate(() => document.getElementById('keys').contains(document.activeElement)));
  });
});

test('text: pasted, copied, with accents, and by a keyboard on the screen', async () => {
  await acted(server.address, {permissions: ['clipboard-read', 'clipboard-write']}, async tab => {
    await tab.begin('Owls');
    await tab.click('make a piece');
    await tab.click('three sides');
    await tab.click('side 1');
    await tab.page.evaluate(() => navigator.clipboard.writeText('7.25'));
    await tab.pressKey('Control+v');
    await tab.page.evaluate(() => navigator.clipboard.writeText(''));
    await tab.pressKey('Control+a');
    await tab.pressKey('Control+c');
    assert.equal(await tab.page.evaluate(() => navigator.clipboard.readText()), '7.25');
    await tab.pressKey('Escape');
    await tab.pressKey('Escape');

    await tab.click('title');
    await tab.picture('title');
    await tab.pressKey('Control+a');
    const title = 'Búhos y ñandúes, mesa 2: el árbol de la feria';  // more than one event of SDL's holds
    await tab.page.keyboard.insertText(title);
    await tab.settled();
    await tab.pressKey('Enter');
    assert.equal((await tab.plan()).title, title);

    await tab.pressKey('2');
    await tab.click('copy as CSV');
    assert.equal(await tab.page.evaluate(() => navigator.clipboard.readText()),
      await tab.call('judgedCsv', await tab.call('plan')));
  });
});

test('files: opened, refused with a reason, saved, a table and a picture taken home, a page printed', async () => {
  await acted(server.address, {}, async tab => {
    await tab.begin('Owls');
    const little = join(process.env.BOUGHWORK_SCENES, 'little_fair.bough.json');
    await tab.page.setInputFiles('#file', little);
    await tab.settled();
    assert.deepEqual((await tab.plan()).pieces, JSON.parse(readFileSync(little, 'utf8')).pieces);
    assert.ok(await tab.shows('envelope piece 1'), 'what was opened is drawn, though nothing was pressed');

    const before = await tab.plan();
    const broken = join(pictures, 'broken.bough.json');
    writeFileSync(broken, readFileSync(little).subarray(0, 300));
    await tab.page.setInputFiles('#file', broken);
    await tab.settled();
    assert.match(await tab.text('referee'), /broken\.bough\.json.*stays as it was/);
    await tab.picture('refused');
    assert.deepEqual(await tab.plan(), before);

    const saved = await tab.download(() => tab.pressKey('Control+s'));
    assert.equal(saved.name, 'little_fair.bough.json');
    assert.equal(checked(saved.path), await tab.call('judgedJson', await tab.call('plan')));

    // What the group has saved is theirs: taking a challenge from the same file leaves it where it is.
    await tab.page.setInputFiles('#file', join(process.env.BOUGHWORK_SCENES, 'big_fair.bough.json'));
    await tab.settled();
    await tab.pressKey('4');
    await tab.pressKey('Shift+I');  // take from a file
    await tab.page.setInputFiles('#file', little);
    await tab.settled();
    assert.equal((await tab.plan()).challenge.name, 'Little fair');
    assert.ok(await tab.page.evaluate(() => localStorage.getItem('boughwork/groups/Owls/little_fair.bough.json')));

    await tab.pressKey('2');
    await tab.click('save as CSV');
    const table = await tab.download(() => tab.click('save'));
    assert.match(table.name, /\.csv$/);
    assert.equal(readFileSync(table.path, 'utf8'), await tab.call('judgedCsv', await tab.call('plan')));

    const picture = await tab.download(() => tab.page.click('#pictureButton'));
    assert.match(picture.name, /\.png$/);
    assert.deepEqual([...readFileSync(picture.path).subarray(1, 4)], [...Buffer.from('PNG')]);
    writeFileSync(join(pictures, 'taken_home.png'), readFileSync(picture.path));

    const paper = join(pictures, 'printed.pdf');
    writeFileSync(paper, await tab.page.pdf({format: 'A4'}));
    const words = spawnSync('pdftotext', ['-layout', paper, '-'], {encoding: 'utf8'}).stdout;
    for (const said of [await tab.text('score'), 'Data table']) assert.ok(words.includes(said), words);
  });
});

test('what is read instead of seen: named, in step, in Spanish too; nothing may leave the page', async () => {
  await acted(server.address, {locale: 'es-MX'}, async tab => {
    await tab.page.waitForSelector('#groupName:visible');
    assert.equal(await tab.text('whose'), '¿De quién es el plan?');
    await tab.picture('spanish_start');
    await tab.begin('Búhos');
    assert.equal(await tab.page.getAttribute('html', 'lang'), 'es');
    await tab.page.click('#readButton');
    await tab.settled();
    await tab.picture('spanish_verdict');
    const table = tab.page.getByRole('application', {name: /La mesa de planificación/});
    assert.equal(await table.count(), 1);
    for (const heading of ['Puntuación', 'Lo que ha visto el árbitro', 'El reto pide'])
      assert.equal(await tab.page.getByRole('heading', {name: heading}).count(), 1);
    assert.equal((await tab.cells('pieces')).length, 15);

    await tab.page.getByRole('button', {name: 'licencias'}).click();
    const licences = await tab.page.locator('#licences pre').textContent();
    for (const part of ['Boughwork', 'SDL2', 'Dear ImGui', 'nlohmann', 'Andika', 'DejaVu', 'musl', 'LLVM'])
      assert.ok(licences.includes(part), part);
    await tab.page.click('#closeLicences');

    const refused = await tab.page.evaluate(async address => {
      const asked = await fetch(address).then(() => 'answered', () => 'refused');
      const script = document.createElement('script');
      script.textContent = 'window.ran = true';
      document.body.append(script);
      return [asked, window.ran];
    }, server.address);
    assert.deepEqual(refused, ['refused', undefined]);
    tab.complaints = tab.complaints.filter(words => !/Content Security Policy|Failed to fetch/.test(words));
    tab.requests = tab.requests.slice(0, 1);
  });
});

test('where the browser has no WebGL the processor draws', async () => {
  const plain = await launchWithoutWebGL();
  try {
    const tab = await Tab.open(await plain.newContext({viewport: laptop, locale: 'en-US'}), fileAddress);
    assert.ok(await tab.page.evaluate(() => document.createElement('canvas').getContext('webgl') === null));
    await tab.begin('Owls');
    await tab.drag(await tab.placeOf('envelope piece 12'), await tab.placeOfMm(...room));
    assert.ok((await hung(tab)).includes(12));
    await tab.picture('without_webgl');
    assert.deepEqual(tab.complaints, []);
  } finally {
    await plain.close();
  }
});

for (const [name, settings] of Object.entries({
  laptop: {viewport: {width: 1366, height: 650}},
  tablet: {viewport: {width: 1180, height: 820}, deviceScaleFactor: 2, hasTouch: true},
  tablet_upright: {viewport: {width: 820, height: 1106}, deviceScaleFactor: 2, hasTouch: true},
  dense: {viewport: {width: 1366, height: 768}, deviceScaleFactor: 2},
  zoomed: {viewport: {width: 1093, height: 614}, deviceScaleFactor: 1.25},
}))
  test(`on a ${name.replace('_', ' ')} screen a hand finds what it sees`, async () => {
    await acted(server.address, settings, async tab => {
      await tab.begin('Owls');
      await tab.drag(await tab.placeOf('envelope piece 8'), await tab.placeOfMm(...room));
      await tab.picture(`screen_${name}`);
      assert.ok((await hung(tab)).includes(8));
      await tab.page.setViewportSize({width: settings.viewport.width - 120, height: settings.viewport.height - 40});
      await tab.settled();
      await tab.drag(await tab.placeOfMm(...pieceFour), await tab.placeOf('make a piece'));
      assert.ok(!(await hung(tab)).includes(4));
    });
  });
