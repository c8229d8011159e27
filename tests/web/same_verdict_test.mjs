// SPDX-License-Identifier: MIT
// The page says of every scene and of a thousand drawn plans what the native program says, byte for byte.
import assert from 'node:assert/strict';
import {execFileSync, spawnSync} from 'node:child_process';
import {readFileSync, readdirSync} from 'node:fs';
import {join} from 'node:path';
import {after, before, test} from 'node:test';
import {Tab, consolePath, fileAddress, launch, setting} from './the_page.mjs';

const drawn = 1000;
const builds = 300;

let browser;
before(async () => { browser = await launch(); });
after(async () => { await browser?.close(); });

const allScenes = () => {
  const folder = setting('BOUGHWORK_SCENES');
  return ['.', 'rules'].flatMap(inner => readdirSync(join(folder, inner))
    .filter(name => name.endsWith('.bough.json')).map(name => join(folder, inner, name)));
};

const openPage = async () => {
  const tab = await Tab.open(await browser.newContext(), fileAddress);
  await tab.page.waitForSelector('#groupName:visible');
  return tab;
};

test('shaky hands err alike: the same chances as the native program, byte for byte', async () => {
  const tab = await openPage();
  for (const scene of allScenes()) {
    const done = spawnSync(consolePath, ['hands', scene, '--builds', String(builds), '--json'], {encoding: 'utf8'});
    assert.ok(done.status === 0 || done.status === 1, done.stderr);
    const said = await tab.page.evaluate(([plan, times]) => page.program.handsJson(plan, times),
      [readFileSync(scene, 'utf8'), builds]);
    assert.equal(said, done.stdout, scene);
  }
});

test('the same verdict, score and table as the native program, byte for byte', async () => {
  const scenes = allScenes();
  assert.ok(scenes.length >= 30);
  const lines = execFileSync(setting('BOUGHWORK_JUDGED_PLANS'), [String(drawn), ...scenes],
    {encoding: 'utf8', maxBuffer: 1 << 30}).trim().split('\n').map(line => JSON.parse(line));
  assert.equal(lines.length, drawn + scenes.length);

  const tab = await openPage();
  const findings = new Set();
  let refused = 0;
  for (let i = 0; i < lines.length; i += 50) {
    const part = lines.slice(i, i + 50);
    const said = await tab.page.evaluate(
      plans => plans.map(plan => ({json: page.program.judgedJson(plan), csv: page.program.judgedCsv(plan)})),
      part.map(line => line.plan));
    part.forEach((line, k) => {
      assert.equal(said[k].json, line.json, `plan ${i + k}:\n${line.plan}`);
      assert.equal(said[k].csv, line.csv, `plan ${i + k}:\n${line.plan}`);
      if (!line.json.startsWith('{')) return refused += 1;
      for (const finding of JSON.parse(line.json).findings) findings.add(finding.rule);
    });
  }
  assert.ok(refused < drawn / 10, `${refused} of the drawn plans are no plan files`);
  assert.equal(findings.size, 13, 'every rule was broken somewhere');
});
