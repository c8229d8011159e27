// SPDX-License-Identifier: MIT
'use strict';
// Whose plan it is. A group's place in the storage is named "groups/<name>"; beside it stands which plan it had open.

page.groups = (() => {
  const at = id => document.getElementById(id);
  const places = 'groups/';
  const opened = 'open/';
  let here = '';  // the group at the table

  const placeOf = name => places + encodeURIComponent(name);
  const names = () => {
    const found = new Set();
    for (const key of page.storage.keys(opened)) found.add(decodeURIComponent(key.slice(opened.length)));
    for (const key of page.storage.keys(places)) found.add(decodeURIComponent(key.split('/')[1]));
    return [...found].sort((a, b) => a.localeCompare(b));
  };
  /// As it was written first: "owls" is Owls.
  const known = name => names().find(other => other.toLocaleLowerCase() === name.toLocaleLowerCase()) ?? name;

  const wipe = name => {
    for (const key of page.storage.keys(placeOf(name) + '/')) page.storage.remove(key);
    for (const key of page.storage.keys('claim/' + placeOf(name) + '/')) page.storage.remove(key);
    page.storage.remove(opened + encodeURIComponent(name));
  };

  const button = (words, press, kind = '') => {
    const made = document.createElement('button');
    made.type = 'button';
    made.textContent = words;
    made.className = kind;
    made.addEventListener('click', press);
    return made;
  };
  const line = name => {
    const words = page.text.words;
    const item = document.createElement('li');
    const who = document.createElement('strong');
    who.textContent = name;
    const ask = () => {
      const keep = button(words.keepIt, show);
      item.replaceChildren(who, keep,
        button(words.wipeSure.replace('{0}', name), () => { wipe(name); show(); }));
      keep.focus();
    };
    item.append(who, button(words.goOn, () => begin(name), 'strong'), button(words.wipe, ask));
    return item;
  };
  const show = () => at('groupList').replaceChildren(...names().map(line));

  const begin = name => {
    here = name;
    // A page that is loaded again goes on where it was; another one asks.
    sessionStorage.setItem('boughwork group', name);
    const open = opened + encodeURIComponent(name);
    const path = page.storage.read(open) ?? '';
    page.storage.save(open, path);
    at('groups').hidden = true;
    at('desk').hidden = false;
    at('who').textContent = name;
    const trouble = page.program.begin(placeOf(name), path);
    if (trouble) return complain(trouble);
    at('canvas').focus();
  };
  const complain = trouble => {
    at('desk').hidden = true;
    at('groups').hidden = false;
    at('trouble').hidden = false;
    at('trouble').textContent = trouble;
  };

  const keepOpenPath = path => page.storage.save(opened + encodeURIComponent(here), path);
  const leave = () => {
    page.program.putAside();
    sessionStorage.removeItem('boughwork group');
    location.reload();
  };

  at('newGroup').addEventListener('submit', event => {
    event.preventDefault();
    const name = at('groupName').value.trim();
    if (name) begin(known(name));
  });

  const start = () => {
    if (!page.storage.lasting) complain(page.text.words.noStorage);
    const again = sessionStorage.getItem('boughwork group');
    if (again && names().includes(again)) return begin(again);
    at('groups').hidden = false;
    show();
    at('groupName').focus();
  };

  return {start, leave, keepOpenPath, complain};
})();
