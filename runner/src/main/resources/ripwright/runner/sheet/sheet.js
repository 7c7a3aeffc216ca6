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
    return { ticks: found.ticks || [], changes: found.changes || [], note: found.note || '', openings: found.openings || {} };
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

  // The steps of a row, "7" or "7\u20139".
  function stretch(text) {
    const [first, last = first] = text.split('\u2013').map(Number);
    return Array.from({ length: last - first + 1 }, (_, i) => first + i);
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
    byId('half-done').textContent = half.length === 0 ? '' : `Ticked in part, and told piece by piece: ${numbers(half)}.`;
    byId('no-changes').hidden = state.changes.length > 0;
    byId('changes').replaceChildren(...state.changes.map(line));
    byId('note').value = state.note;
    for (const button of document.querySelectorAll('button.differs'))
      button.classList.toggle('noted', state.changes.some((one) => stretch(button.dataset.step).includes(one.step)));
    for (const input of openings) answer(input);
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
  // As a person writes a length, and as every reader takes it: 12-3/8" is 12 3/8 in.
  const plain = (text) => text.trim().replace(/\s*("|\u2033|\u201d|'')$/, ' in').replace(/(\d)-(?=\d+\/)/, '$1 ').replace(/\s+/g, ' ');
  const typed = (id) => (byId(id).classList.contains('length') ? plain(byId(id).value) : byId(id).value.trim().replace(/\s+/g, ' '));

  function ask(step) {
    form.reset();
    byId('difference-step').textContent = step;
    thing.replaceChildren(...stretch(step).map((n) => byId(`outcomes-${n}`).content.cloneNode(true)));
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
    return { step: stretch(byId('difference-step').textContent)[0], text: `${chosen.textContent}: ${says}`, change };
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

  // Openings: what to cut to, and whether the strip has it. Whole nanometers, as the plan has them.

  const openings = [...document.querySelectorAll('input.opening')];
  const INCH = 25400000;
  const MILLIMETER = 1000000;

  // A length in nanometers; NaN when it is none.
  function length(text) {
    const found = /^(?:(\d+(?:\.\d*)?|\.\d+)|(?:(\d+) )?(\d+)\/(\d+))(?: ?(in|mm))?$/.exec(plain(text));
    if (!found) return NaN;
    const [, number, whole = '0', over, under, unit] = found;
    const value = number === undefined ? Number(whole) + Number(over) / Number(under) : Number(number);
    const inches = unit === undefined ? root.dataset.unit === 'inches' : unit === 'in';
    return Number.isFinite(value) ? Math.round(value * (inches ? INCH : MILLIMETER)) : NaN;
  }

  // As the sheet writes it: to the nearest 1/64 in or 0.1 mm, or as `round` has it.
  function written(nanometers, round = Math.round) {
    if (root.dataset.unit !== 'inches') return `${round(nanometers / (MILLIMETER / 10)) / 10} mm`;
    let parts = round((nanometers * 64) / INCH);
    let under = 64;
    const whole = Math.floor(parts / 64);
    parts %= 64;
    while (parts > 0 && parts % 2 === 0) {
      parts /= 2;
      under /= 2;
    }
    if (parts === 0) return `${whole} in`;
    return `${whole === 0 ? '' : `${whole} `}${parts}/${under} in`;
  }

  const cutTo = (input) => length(input.value) + Number(input.dataset.beyond);

  // What the earlier parts of the strip took of its spare; what they gave back is not counted on.
  function taken(input) {
    return openings
      .slice(0, openings.indexOf(input))
      .filter((one) => one.dataset.strip === input.dataset.strip)
      .map((one) => cutTo(one) - Number(one.dataset.planned))
      .reduce((sum, more) => sum + (more > 0 ? more : 0), 0);
  }

  function answer(input) {
    const says = input.parentElement.querySelector('output');
    const cut = cutTo(input);
    const given = input.value.trim() !== '';
    const left = Number(input.dataset.planned) + Number(input.dataset.spare) - taken(input) - cut;
    input.toggleAttribute('aria-invalid', given && Number.isNaN(cut));
    says.classList.toggle('short', left < 0);
    if (!given) says.textContent = '';
    else if (Number.isNaN(cut)) says.textContent = 'No length: write 12 3/8 or 314 mm.';
    else if (left < 0) says.textContent = `Cut to ${written(cut)}: too short by ${written(-left, Math.ceil)}.`;
    else says.textContent = `Cut to ${written(cut)}: fits, ${written(left, Math.floor)} spare left.`;
  }

  for (const input of openings)
    input.addEventListener('input', () => {
      state.openings[input.dataset.blank] = input.value;
      keep();
    });

  // The report.

  // Pieces that are there though their step is not done.
  function made() {
    const half = new Set(tally().filter((step) => !done(step)).map((step) => String(step.n)));
    return boxes.filter((box) => box.checked && box.dataset.made && half.has(box.dataset.step)).map((box) => box.dataset.made);
  }

  function report() {
    const file = {
      format: 1,
      job: document.querySelector('h1 bdi').textContent,
      done: tally().filter(done).map((step) => step.n),
      changes: state.changes.map((one) => one.change),
    };
    if (made().length > 0) file.made = made();
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
    state.openings = {};
    for (const input of openings) input.value = '';
    keep();
  });

  function take() {
    const found = kept();
    for (const box of boxes) box.checked = found.ticks.includes(name(box));
    for (const input of openings) input.value = found.openings[input.dataset.blank] || '';
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
