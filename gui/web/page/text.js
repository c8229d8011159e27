// SPDX-License-Identifier: MIT
'use strict';
// All that can be read on the page: its words in the language that is spoken, and the verdict.

page.text = (() => {
  const at = id => document.getElementById(id);
  const text = {words: {}, verdict: {title: ''}};

  text.showWords = words => {
    text.words = words;
    document.documentElement.lang = words.language;
    page.storage.save('language', words.language);
    const ids = {
      whose: 'whose', whoseHint: 'whoseHint', groupLabel: 'group', beginButton: 'begin', homeButton: 'takeHome',
      otherButton: 'other', pictureButton: 'picture', printButton: 'print', scoreHead: 'score',
      findingsHead: 'findings', challengeHead: 'challenge', tableHead: 'table', dropHint: 'drop', closeLicences: 'close',
    };
    for (const [id, word] of Object.entries(ids)) at(id).textContent = words[word];
    for (const button of document.getElementsByClassName('licencesButton')) button.textContent = words.licences;
    at('canvas').setAttribute('aria-label', words.canvas);
    text.showWhetherRead();
  };

  text.showWhetherRead = () => {
    const seen = !at('verdict').classList.contains('unseen');
    at('readButton').textContent = seen ? text.words.hide : text.words.read;
    at('readButton').setAttribute('aria-expanded', seen);
  };

  const rows = (body, lines, cellOf) => body.replaceChildren(...lines.map(cells => {
    const row = document.createElement('tr');
    cells.forEach((words, column) => row.append(cellOf(words, column)));
    return row;
  }));
  const cell = (kind, words, scope) => {
    const made = document.createElement(kind);
    made.textContent = words;
    if (scope) made.scope = scope;
    return made;
  };
  const bodyCell = (words, column) => column === 0 ? cell('th', words, 'row') : cell('td', words);
  // What is read aloud when it changes is touched only then.
  const put = (id, words) => { if (at(id).textContent !== words) at(id).textContent = words; };

  text.showVerdict = verdict => {
    text.verdict = verdict;
    put('score', verdict.score);
    put('counts', verdict.plan + ': ' + verdict.counts);
    put('referee', verdict.referee);
    const found = verdict.findings.length > 0 ? verdict.findings : [text.words.none];
    at('findings').replaceChildren(...found.map(words => cell('li', words)));
    rows(at('challenge').tBodies[0], verdict.challenge, bodyCell);
    rows(at('pieces').tHead, [verdict.table.head], words => cell('th', words, 'col'));
    rows(at('pieces').tBodies[0], verdict.table.rows, bodyCell);
    put('totals', verdict.table.counts + ' · ' + verdict.table.score);
  };

  return text;
})();
