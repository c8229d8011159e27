// SPDX-License-Identifier: MIT
'use strict';
// What the page keeps: the browser's storage, shared by all its pages, and without it the memory of this one. Saving
// is one step of the browser's: an entry holds all of the new text or all of the old.
const page = {};

page.storage = (() => {
  const prefix = 'boughwork/';
  const memory = new Map();
  const inMemory = {
    get length() { return memory.size; },
    key: index => [...memory.keys()][index] ?? null,
    getItem: key => memory.get(key) ?? null,
    setItem: (key, text) => { memory.set(key, text); },
    removeItem: key => { memory.delete(key); },
  };
  const works = () => {
    try {
      localStorage.setItem(prefix + 'test', '');
      localStorage.removeItem(prefix + 'test');
      return true;
    } catch (refused) {
      return refused.name === 'QuotaExceededError' && localStorage.length > 0;
    }
  };
  const lasting = works();
  const store = lasting ? localStorage : inMemory;

  const read = key => store.getItem(prefix + key);
  const remove = key => store.removeItem(prefix + key);
  const save = (key, text) => {
    try {
      store.setItem(prefix + key, text);
      return true;
    } catch (full) {
      return false;
    }
  };
  const keys = start => {
    const found = [];
    for (let i = 0; i < store.length; ++i) {
      const key = store.key(i);
      if (key.startsWith(prefix + start)) found.push(key.slice(prefix.length));
    }
    return found;
  };

  // A claim is an entry that holds the name of a page; it is good as long as that page is open. Every page holds a
  // lock of its own name, which the browser takes away when the page ends, however it ends.
  const me = 'page ' + crypto.getRandomValues(new Uint32Array(4)).join('-');
  let open = new Set([me]);
  const look = async () => {
    try {
      const {held} = await navigator.locks.query();
      open = new Set([me, ...held.map(lock => lock.name)]);
    } catch (none) { /* a browser without locks: the other pages count as closed */ }
  };
  const meet = async () => {
    try {
      await new Promise((held, refused) =>
        navigator.locks.request(me, () => { held(); return new Promise(() => {}); }).catch(refused));
      await look();
      setInterval(look, 2000);
    } catch (none) { /* likewise */ }
  };
  const claimed = key => 'claim/' + key;
  const claim = key => {
    const holder = read(claimed(key));
    if (holder && open.has(holder)) return false;
    save(claimed(key), me);
    return true;
  };
  const giveUp = key => { if (read(claimed(key)) === me) remove(claimed(key)); };

  return {lasting, read, save, remove, keys, claim, giveUp, meet};
})();
