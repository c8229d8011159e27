// SPDX-License-Identifier: MIT
'use strict';
// Keys, clipboard and wheel: what is the browser's stays the browser's, the rest goes to the table.

page.keys = (() => {
  const canvas = document.getElementById('canvas');
  const typing = document.getElementById('typing');
  const around = document.getElementById('keys');
  let writes = false;      // a text field of the table has the keys
  let afterEscape = false; // Escape, then Tab leaves the table

  const onTable = () => document.activeElement === canvas || document.activeElement === typing;

  // With Ctrl the table takes these alone (gui/session/command_table.cpp); A is for its text fields.
  const withCtrl = new Set(['a', 'e', 'i', 'o', 's', 'y', 'z']);
  const withCtrlAndShift = new Set(['s', 'z']);
  const clipboard = new Set(['c', 'v', 'x']);
  const modifiers = new Set(['Control', 'Shift', 'Alt', 'AltGraph', 'Meta']);
  const isOurs = event => {
    const key = event.key.toLowerCase();
    if (event.altKey && !event.getModifierState('AltGraph')) return false;
    if (event.ctrlKey && !event.getModifierState('AltGraph') || event.metaKey)
      return (event.shiftKey ? withCtrlAndShift : withCtrl).has(key);
    return !/^F([2-9]|1[0-2])$/.test(event.key);
  };
  // Before SDL, which listens further in.
  const first = {capture: true};
  const onKey = event => {
    if (!onTable()) return;
    if (modifiers.has(event.key)) return;
    const leaves = event.key === 'Tab' && afterEscape;
    if (event.type === 'keydown') afterEscape = event.key === 'Escape';
    const ctrl = event.ctrlKey || event.metaKey;
    if (leaves || event.isComposing || ctrl && clipboard.has(event.key.toLowerCase()) || !isOurs(event)) {
      event.stopImmediatePropagation();
      if (leaves && event.type === 'keydown') typing.blur();
      return;
    }
    // What the table takes is not searched, scrolled or saved by the browser; letters still come as text.
    if (event.type === 'keydown' && (ctrl || !writes || event.key === 'F1')) event.preventDefault();
  };
  addEventListener('keydown', onKey, first);
  addEventListener('keyup', onKey, first);
  // Letters come through the text field, where accents and keyboards on the screen work.
  addEventListener('keypress', event => { if (onTable()) event.stopImmediatePropagation(); }, first);
  addEventListener('wheel', event => { if (event.ctrlKey) event.stopImmediatePropagation(); }, first);

  const type = words => { if (words) page.program.type(words); };
  typing.addEventListener('input', event => {
    if (event.isComposing) return;
    if (event.inputType !== 'insertCompositionText') type(typing.value);
    typing.value = '';
  });
  typing.addEventListener('compositionend', event => {
    type(event.data);
    typing.value = '';
  });
  typing.addEventListener('beforeinput', event => {
    // A keyboard on the screen has no key for this; another has, and SDL has taken it.
    if (event.inputType !== 'deleteContentBackward') return;
    event.preventDefault();
    page.program.press('Backspace');
  });

  document.addEventListener('paste', event => {
    if (!onTable()) return;
    event.preventDefault();
    page.program.paste(event.clipboardData.getData('text/plain'));
  });
  for (const kind of ['copy', 'cut'])
    document.addEventListener(kind, event => {
      if (!onTable()) return;
      const words = page.program.copied(kind === 'cut');
      if (!words) return;
      event.preventDefault();
      event.clipboardData.setData('text/plain', words);
    });

  // What a button of the table copies. Where the browser does not let it, Ctrl+C does.
  const copy = words => { navigator.clipboard?.writeText(words).catch(() => {}); };

  // A keyboard on the screen comes only in answer to a finger, and for a field of the page.
  const wantKeyboard = wanted => {
    writes = wanted;
    if (onTable()) (wanted ? typing : canvas).focus({preventScroll: true});
  };
  canvas.addEventListener('touchend', () => {
    page.program.drawNow();
    if (writes) typing.focus({preventScroll: true});
  });
  canvas.addEventListener('mousedown', () => {
    if (document.activeElement !== typing) canvas.focus({preventScroll: true});
  });
  canvas.addEventListener('contextmenu', event => event.preventDefault());
  around.addEventListener('focusin', () => { afterEscape = false; });

  return {wantKeyboard, copy};
})();
