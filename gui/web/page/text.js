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

  // Only what differs is touched: a drag changes a cell or two, and what changes may be read aloud.
  const put = (made, words) => { if (made.textContent !== words) made.textContent = words; };
  const fill = (parent, count, make) => {
    while (parent.childElementCount > count) parent.lastElementChild.remove();
    while (parent.childElementCount < count) parent.append(make(parent.childElementCount));
    return [...parent.children];
  };
  const cell = scope => {
    const made = document.createElement(scope ? 'th' : 'td');
    if (scope) made.scope = scope;
    return made;
  };
  const rows = (body, lines, scopeOf) =>
    fill(body, lines.length, () => document.createElement('tr')).forEach((row, i) =>
      fill(row, lines[i].length, column => cell(scopeOf(column))).forEach((made, k) => put(made, lines[i][k])));
  const ofBody = column => column === 0 ? 'row' : '';
  const ofHead = () => 'col';

  text.showVerdict = verdict => {
    text.verdict = verdict;
    put(at('score'), verdict.score);
    put(at('counts'), verdict.plan + ': ' + verdict.counts);
    put(at('referee'), verdict.referee);
    at('findings').className = verdict.findings.length > 0 ? '' : 'none';
    const found = verdict.findings.length > 0 ? verdict.findings : [text.words.none];
    fill(at('findings'), found.length, () => document.createElement('li')).forEach((item, i) => put(item, found[i]));
    rows(at('challenge').tBodies[0], verdict.challenge, ofBody);
    rows(at('pieces').tHead, [verdict.table.head], ofHead);
    rows(at('pieces').tBodies[0], verdict.table.rows, ofBody);
    put(at('totals'), verdict.table.counts + ' · ' + verdict.table.score);
  };

  return text;
})();
