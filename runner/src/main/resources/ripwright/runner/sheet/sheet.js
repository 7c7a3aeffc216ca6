'use strict';
// The sheet on a screen: keeps the ticks under the plan's digest, takes down what came out different, saves the report.
(() => {
  const root = document.documentElement;
  const byId = (id) => document.getElementById(id);
  const key = `ripwright ${root.dataset.plan}`;
  const boxes = [...document.querySelectorAll('main input[type=checkbox]')];
  const name = (box) => box.getAttribute('aria-label');
  let keeps = true; // whether this browser keeps anything

  function kept() {
    let found = {};
    try {
      found = JSON.parse(localStorage.getItem(key)) || {};
    } catch {
      keeps = false;
    }
    return { ticks: found.ticks || [], changes: found.changes || [], note: found.note || '' };
  }

  function keep() {
    state.ticks = boxes.filter((box) => box.checked).map(name);
    try {
      localStorage.setItem(key, JSON.stringify(state));
      keeps = true;
    } catch {
      keeps = false;
    }
    show();
  }

  // Steps by number: how many boxes each has, and how many are ticked.
  function tally() {
    const steps = new Map();
    for (const box of boxes.filter((one) => one.dataset.step)) {
      const step = steps.get(box.dataset.step) || { n: Number(box.dataset.step), boxes: 0, ticked: 0 };
      step.boxes += 1;
      step.ticked += box.checked ? 1 : 0;
      steps.set(box.dataset.step, step);
    }
    return [...steps.values()].sort((a, b) => a.n - b.n);
  }

  const done = (step) => step.ticked === step.boxes;
  const numbers = (steps) => steps.map((step) => step.n).join(', ');

  function show() {
    const steps = tally();
    const ready = steps.filter(done);
    const half = steps.filter((step) => step.ticked > 0 && !done(step));
    byId('progress').textContent = `${ready.length} of ${steps.length} steps done`;
    byId('warning').textContent = keeps ? '' : 'This browser keeps no ticks: they are gone when the page is closed.';
    byId('open-report').textContent = state.changes.length === 0 ? 'Report' : `Report (${state.changes.length} different)`;
    byId('done').textContent = `${ready.length} of ${steps.length} steps are done.`;
    byId('half-done').textContent = half.length === 0 ? '' : `Ticked in part, and told as not done: ${numbers(half)}.`;
    byId('no-changes').hidden = state.changes.length > 0;
    byId('changes').replaceChildren(...state.changes.map(line));
    byId('note').value = state.note;
    for (const button of document.querySelectorAll('button.differs'))
      button.classList.toggle('noted', state.changes.some((one) => String(one.step) === button.dataset.step));
  }

  function line(noted) {
    const item = document.createElement('li');
    const remove = document.createElement('button');
    remove.type = 'button';
    remove.textContent = 'remove';
    remove.setAttribute('aria-label', `Remove: ${noted.text}`);
    remove.addEventListener('click', () => {
      state.changes = state.changes.filter((one) => one !== noted);
      keep();
    });
    item.append(noted.text, ' ', remove);
    return item;
  }

  // What came out different.

  const difference = byId('difference');
  const form = difference.querySelector('form');
  const thing = byId('thing');
  const how = () => form.elements.how.value;
  const typed = (id) => byId(id).value.trim().replace(/\s+/g, ' ');

  function ask(step) {
    form.reset();
    byId('difference-step').textContent = step;
    thing.replaceChildren(byId(`outcomes-${step}`).content.cloneNode(true));
    narrow();
    difference.showModal();
  }

  // Only the questions that belong to what is chosen.
  function narrow() {
    const chosen = thing.selectedOptions[0];
    const part = chosen.dataset.part === 'true';
    for (const choice of form.querySelectorAll('.of-piece')) choice.hidden = part;
    if (part && form.querySelector('.of-piece :checked')) form.elements.how.value = 'length';
    for (const block of form.querySelectorAll('[data-how]')) {
      block.hidden = block.dataset.how !== how();
      for (const input of block.querySelectorAll('input')) input.disabled = block.hidden;
    }
    for (const size of ['width', 'length'])
      byId(`planned-${size}`).textContent = chosen.dataset[size] === '' ? 'not known' : chosen.dataset[size];
  }

  // As the report file has it, and as a person reads it.
  function noted() {
    const chosen = thing.selectedOptions[0];
    const change = chosen.dataset.part === 'true' ? { part: chosen.value } : { piece: chosen.value };
    let says = 'spoiled';
    if (how() === 'spoiled') {
      change.spoiled = true;
    } else if (how() === 'defect') {
      const [from, to, left, right, kind] = ['from', 'to', 'left', 'right', 'kind'].map(typed);
      change.defect = { from, to, left, right, kind, blocks: byId('sound').checked ? 'show' : 'all' };
      says = `${kind} from ${from} to ${to}, left ${left}, right ${right}`;
    } else {
      change[how()] = typed(how());
      says = `${how()} ${change[how()]}`;
    }
    return { step: Number(byId('difference-step').textContent), text: `${chosen.textContent}: ${says}`, change };
  }

  for (const button of document.querySelectorAll('button.differs'))
    button.addEventListener('click', () => ask(button.dataset.step));
  form.addEventListener('change', narrow);
  difference.addEventListener('close', () => {
    if (difference.returnValue === 'note') {
      state.changes.push(noted());
      keep();
    }
    difference.returnValue = '';
  });

  // The report.

  function report() {
    const file = {
      format: 1,
      job: document.querySelector('h1 bdi').textContent,
      done: tally().filter(done).map((step) => step.n),
      changes: state.changes.map((one) => one.change),
    };
    if (state.note.trim() !== '') file.note = state.note.trim();
    return file;
  }

  function save() {
    const file = report();
    const plain = file.job.toLowerCase().replace(/[^a-z0-9]+/g, '-').slice(0, 60).replace(/^-+|-+$/g, '') || 'job';
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([`${JSON.stringify(file, null, 2)}\n`], { type: 'application/json' }));
    link.download = `${plain}.report.json`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000); // not before the browser has it
    byId('saved').textContent = `Saved as ${link.download}, where this browser puts what it saves.`;
  }

  byId('open-report').addEventListener('click', () => {
    byId('saved').textContent = '';
    byId('report').showModal();
  });
  byId('note').addEventListener('input', () => {
    state.note = byId('note').value;
    keep();
  });
  byId('save').addEventListener('click', save);
  byId('start-over').addEventListener('click', () => {
    if (!window.confirm('Untick every box and forget what came out different?')) return;
    for (const box of boxes) box.checked = false;
    state.changes = [];
    state.note = '';
    keep();
  });

  function take() {
    const found = kept();
    for (const box of boxes) box.checked = found.ticks.includes(name(box));
    return found;
  }

  let state = take();
  for (const box of boxes) box.addEventListener('change', keep);
  window.addEventListener('storage', (event) => {
    if (event.key !== key) return;
    state = take(); // ticked in another window
    show();
  });
  root.classList.add('running');
  show();
})();
