// SPDX-License-Identifier: MIT
// The page in a headless Chromium, driven as a person drives it.
import assert from 'node:assert/strict';
import {createServer} from 'node:http';
import {mkdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {pathToFileURL} from 'node:url';
import {chromium} from 'playwright-core';

export const setting = name => {
  if (!process.env[name]) throw new Error(`${name} is not set; tests/run.sh sets it`);
  return process.env[name];
};
export const pagePath = setting('BOUGHWORK_PAGE_FILE');
export const consolePath = setting('BOUGHWORK_PROGRAM');
export const pictures = setting('BOUGHWORK_PICTURES');
mkdirSync(pictures, {recursive: true});

const webGL = ['--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'];
const noWebGL = ['--disable-gpu', '--disable-3d-apis'];

export const launch = (drawing = webGL) => chromium.launch({
  executablePath: process.env.BOUGHWORK_CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-quic', '--no-first-run', '--disable-background-networking',
    '--disable-component-update', '--disable-sync', ...drawing],
});
export const launchWithoutWebGL = () => launch(noWebGL);

/// A web server for the one file, and its address.
export const serve = async () => {
  const server = createServer((request, answer) => {
    answer.writeHead(request.url === '/boughwork.html' ? 200 : 404, {'Content-Type': 'text/html; charset=utf-8'});
    answer.end(request.url === '/boughwork.html' ? readFileSync(pagePath) : '');
  });
  await new Promise(ready => server.listen(0, '127.0.0.1', ready));
  return {address: `http://127.0.0.1:${server.address().port}/boughwork.html`, close: () => server.close()};
};
export const fileAddress = pathToFileURL(pagePath).href;

/// One tab, and whatever it complained of or asked of the network.
export class Tab {
  constructor(page) {
    this.page = page;
    this.complaints = [];
    this.requests = [];
    page.on('pageerror', error => this.complaints.push(error.stack ?? String(error)));
    page.on('console', message => { if (message.type() === 'error') this.complaints.push(message.text()); });
    page.on('request', request => this.requests.push(request.url()));
  }

  static async open(context, address) {
    const tab = new Tab(await context.newPage());
    await tab.page.goto(address);
    return tab;
  }

  async begin(group) {
    await this.page.fill('#groupName', group);
    await this.page.click('#beginButton');
    await this.settled();
    // The first steps are shown once to every group.
    if (await this.shows('skip')) await this.pressKey('Escape');
  }

  /// What was drawn and said has caught up with what was done.
  async settled() {
    await this.until(async () => await this.text('score') !== '');
    await this.page.waitForTimeout(400);
  }

  /// Playwright's own waitForFunction looks a second time by eval, which the page's policy forbids.
  async until(holds) {
    const giveUpAt = Date.now() + 30000;
    while (!await holds()) {
      assert.ok(Date.now() < giveUpAt, 'it never came about');
      await this.page.waitForTimeout(50);
    }
  }

  async call(name, ...given) {
    return this.page.evaluate(([of, args]) => page.program[of](...args), [name, given]);
  }
  async onPage(place) {
    const box = await this.page.locator('#canvas').boundingBox();
    return {x: box.x + place[0], y: box.y + place[1]};
  }
  async placeOf(label) {
    const place = await this.call('placeOf', label);
    if (place.length !== 2) throw new Error(`Nothing called "${label}" is to be seen`);
    return this.onPage(place);
  }
  async placeOfMm(x, y) { return this.onPage(await this.call('placeOfMm', x, y)); }
  async shows(label) { return (await this.call('placeOf', label)).length === 2; }

  async click(label) {
    const {x, y} = await this.placeOf(label);
    await this.page.mouse.click(x, y, {delay: 60});
    await this.settled();
  }
  async pressKey(key) {
    await this.page.keyboard.press(key, {delay: 40});
    await this.settled();
  }
  async drag(from, to) {
    await this.page.mouse.move(from.x, from.y);
    await this.page.mouse.down();
    await this.page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, {steps: 5});
    await this.page.mouse.move(to.x, to.y, {steps: 5});
    await this.page.waitForTimeout(100);
    await this.page.mouse.up();
    await this.settled();
  }
  async dragByFinger(from, to) {
    const fingers = await this.page.context().newCDPSession(this.page);
    const touch = (type, points) => fingers.send('Input.dispatchTouchEvent', {type, touchPoints: points});
    await touch('touchStart', [from]);
    for (let i = 1; i <= 8; ++i) {
      await touch('touchMove', [{x: from.x + (to.x - from.x) * i / 8, y: from.y + (to.y - from.y) * i / 8}]);
      await this.page.waitForTimeout(30);
    }
    await touch('touchEnd', []);
    await this.settled();
  }

  async text(id) { return this.page.locator('#' + id).textContent(); }
  async points() { return Number((await this.text('score')).match(/[\d.]+/)[0]); }
  async cells(id) {
    return this.page.locator(`#${id} tbody tr`).evaluateAll(
      rows => rows.map(row => [...row.cells].map(cell => cell.textContent)));
  }
  async plan() { return JSON.parse(await this.call('plan')); }
  async picture(name) { await this.page.screenshot({path: join(pictures, name + '.png')}); }

  /// What is downloaded when `action` is done, as a file on the disk.
  async download(action) {
    const [download] = await Promise.all([this.page.waitForEvent('download'), action()]);
    return {name: download.suggestedFilename(), path: await download.path()};
  }
}
