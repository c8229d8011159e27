// SPDX-License-Identifier: MIT
'use strict';
// The program behind the page (gui/web/page.cpp), by the names that the page uses, and how both start.

page.program = (() => {
  // A text goes in and comes out as UTF-8; what is given back is read at once.
  const call = (name, kinds, ...given) => Module.ccall(name, 'string', kinds, given);
  const keyCodes = {Backspace: 8};
  return {
    speakAs: locale => JSON.parse(call('speak_as', ['string'], locale)),
    begin: (group, path) => call('begin_table', ['string', 'string'], group, path),
    drawNow: () => Module._draw_now(),
    putAside: () => Module._put_aside?.(),  // nothing, as long as the program is not there
    takeIn: (name, bytes) => {
      const place = Module._malloc(bytes.length + 1);
      Module.HEAPU8.set(bytes, place);
      Module.ccall('take_in_file', null, ['string', 'number', 'number'], [name, place, bytes.length]);
      Module._free(place);
    },
    plan: () => call('plan_as_text', []),
    drawing: () => JSON.parse(call('plan_as_drawing', [])),
    paste: words => Module.ccall('paste', null, ['string'], [words]),
    copied: cut => call('copied', ['number'], cut ? 1 : 0),
    type: words => Module.ccall('type_text', null, ['string'], [words]),
    press: key => Module._press_key(keyCodes[key]),
    placeOf: label => call('place_of', ['string'], label).split(' ').map(Number),
    placeOfMm: (x, y) => call('place_of_mm', ['number', 'number'], x, y).split(' ').map(Number),
    judgedJson: plan => call('judged_json', ['string'], plan),
    handsJson: (plan, builds) => call('hands_of', ['string', 'number'], plan, builds),
    judgedCsv: plan => call('judged_csv', ['string'], plan),
  };
})();

var Module = {
  canvas: document.getElementById('canvas'),
  print: words => console.log(words),
  printErr: words => console.warn(words),
  // Before the program is there, nothing but the page itself can say why it does not come.
  onAbort: () => page.groups.complain(page.text.words.fell ?? document.getElementById('tooOld').textContent),
  onRuntimeInitialized: async () => {
    const face = Module.FS.readFile('/usr/share/fonts/truetype/andika/Andika-Regular.ttf');
    document.fonts.add(await new FontFace('Andika', face).load());
    page.text.showWords(page.program.speakAs(page.storage.read('language') ?? navigator.language));
    await page.storage.meet();
    page.groups.start();
  },
};

addEventListener('pagehide', () => page.program.putAside());
document.addEventListener('visibilitychange', () => { if (document.hidden) page.program.putAside(); });

(() => {
  const at = id => document.getElementById(id);
  const press = (id, action) => at(id).addEventListener('click', action);
  press('homeButton', page.files.takeHome);
  press('pictureButton', page.files.savePicture);
  press('printButton', () => print());
  press('otherButton', page.groups.leave);
  press('readButton', () => {
    at('verdict').classList.toggle('unseen');
    page.text.showWhetherRead();
    dispatchEvent(new Event('resize'));
  });
  press('closeLicences', () => at('licences').close());
  for (const button of document.getElementsByClassName('licencesButton'))
    button.addEventListener('click', () => at('licences').showModal());
})();
