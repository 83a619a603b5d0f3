// Moves a setting without sending the whole page anew. Every number comes from the server; without this file the form does the same.
(function () {
  'use strict';
  const form = document.getElementById('setting');
  const point = document.getElementById('point');
  const map = document.getElementById('map');
  if (!form) {
    return;
  }
  const power = form.elements.namedItem('powerW');
  const pullback = form.elements.namedItem('pullbackSPerCm');
  const moves = {
    'less-power': () => step(power, -1),
    'more-power': () => step(power, 1),
    'faster': () => step(pullback, -1),
    'slower': () => step(pullback, 1)
  };
  const keys = { ArrowLeft: 'less-power', ArrowRight: 'more-power', ArrowDown: 'faster', ArrowUp: 'slower' };
  let asked = 0;

  function step(field, steps) {
    const size = Number(field.step);
    const wanted = Math.round((Number(field.value) + steps * size) / size) * size;
    set(field, wanted);
  }

  function set(field, value) {
    const within = Math.max(Number(field.min), Math.min(Number(field.max), value));
    field.value = String(Math.round(within * 1000) / 1000);
  }

  function query() {
    return '?powerW=' + encodeURIComponent(power.value) + '&pullbackSPerCm=' + encodeURIComponent(pullback.value);
  }

  function part(name) {
    return fetch(form.dataset.at + '/' + name + query(), { credentials: 'same-origin' }).then((answer) => {
      if (!answer.ok || answer.redirected) {
        throw new Error(String(answer.status));
      }
      return answer.text();
    });
  }

  // What is shown always belongs to the last setting asked for; while it is awaited, the old words are marked as old.
  function compute() {
    const mine = ++asked;
    point.setAttribute('aria-busy', 'true');
    cross();
    part('point').then((html) => {
      if (mine === asked) {
        point.innerHTML = html;
        point.removeAttribute('aria-busy');
      }
    }).catch(() => {
      if (mine === asked) {
        point.textContent = 'The server did not answer; nothing is told of this setting. Load the page again.';
        point.removeAttribute('aria-busy');
      }
    });
  }

  function picture() {
    const found = document.getElementById('picture');
    if (!found) {
      return null;
    }
    const data = {};
    Object.keys(found.dataset).forEach((name) => { data[name] = Number(found.dataset[name]); });
    return { svg: found.querySelector('svg'), marker: document.getElementById('marker'), at: data };
  }

  function cross() {
    const drawn = picture();
    if (!drawn || !drawn.marker) {
      return;
    }
    const at = drawn.at;
    const right = (Number(power.value) - at.leastPower) / (at.mostPower - at.leastPower);
    const up = (Number(pullback.value) - at.leastPullback) / (at.mostPullback - at.leastPullback);
    const seen = power.value !== '' && pullback.value !== '' && right >= 0 && right <= 1 && up >= 0 && up <= 1;
    drawn.marker.setAttribute('visibility', seen ? 'visible' : 'hidden');
    drawn.marker.setAttribute('transform',
      'translate(' + (at.left + right * at.width) + ' ' + (at.top + (1 - up) * at.height) + ')');
  }

  function press(event) {
    const drawn = picture();
    const svg = drawn && event.target.closest ? event.target.closest('#picture svg') : null;
    if (!svg) {
      return;
    }
    const here = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    const right = (here.x - drawn.at.left) / drawn.at.width;
    const up = 1 - (here.y - drawn.at.top) / drawn.at.height;
    if (right < 0 || right > 1 || up < 0 || up > 1) {
      return;
    }
    set(power, near(drawn.at.leastPower + right * (drawn.at.mostPower - drawn.at.leastPower), power));
    set(pullback, near(drawn.at.leastPullback + up * (drawn.at.mostPullback - drawn.at.leastPullback), pullback));
    compute();
  }

  function near(value, field) {
    return Math.round(value / Number(field.step)) * Number(field.step);
  }

  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const move = event.submitter ? moves[event.submitter.value] : null;
    if (move) {
      move();
    }
    compute();
  });
  form.addEventListener('keydown', (event) => {
    const move = event.target.name === 'move' ? moves[keys[event.key]] : null;
    if (move) {
      event.preventDefault();
      move();
      compute();
    }
  });
  power.addEventListener('input', compute);
  pullback.addEventListener('input', compute);
  map.addEventListener('click', press);

  const waits = document.getElementById('map-waits');
  if (waits) {
    waits.textContent = 'The map of all settings is being computed for this wall; that may take ten seconds or more.';
    part('map').then((html) => { map.innerHTML = html; cross(); })
      .catch(() => { waits.textContent = 'The map could not be computed. The setting told in words holds without it.'; });
  }
}());
