(function () {
  'use strict';
  var plan = JSON.parse(document.getElementById('plan').textContent);
  var live = document.getElementById('live');
  var TICK_MS = 1000;
  var MINUTE_MS = 60000;
  var ON_TIME_MIN = 1;
  var KEY = 'gloam ' + plan.identity;
  var sheets = [];
  plan.nights.forEach(function (night) {
    night.windows.forEach(function (planned) { sheets.push({night: night, planned: planned}); });
  });

  /* what is kept: by the planned's identity, which stays when a trip is planned anew */
  var kept = {sheets: {}, inputs: {}, red: false, level: 'middle'};
  var keeps = true;
  try {
    kept = Object.assign(kept, JSON.parse(localStorage.getItem(KEY) || '{}'));
  } catch (unreadable) {
    keeps = false;
  }
  function keep() {
    try {
      localStorage.setItem(KEY, JSON.stringify(kept));
    } catch (full) {
      keeps = false;
    }
  }
  function done(sheet) {
    return kept.sheets[sheet.planned.identity] || {};
  }
  function note(sheet, changes) {
    kept.sheets[sheet.planned.identity] = Object.assign({}, done(sheet), changes);
    fill(sheet, 'opened at', done(sheet).openedAt);
    fill(sheet, 'closed at', done(sheet).closedAt);
    keep();
    show();
  }

  function fill(sheet, blank, at) {
    var key = 'sheet-' + sheet.planned.sheet + ' ' + blank;
    kept.inputs[key] = at ? clock(at, sheet.planned.openAt) : '';
    document.querySelectorAll('#sheet-' + sheet.planned.sheet + ' input').forEach(function (field) {
      if (field.name === blank) { field.value = kept.inputs[key]; }
    });
  }

  /* times: shown by the site's clocks, whose offset stands in the plan's times */
  function ms(time) { return Date.parse(time); }
  function two(number) { return (number < 10 ? '0' : '') + number; }
  function offset(time) { return time.slice(-1) === 'Z' ? 'Z' : time.slice(-6); }
  function offsetMin(time) {
    var zone = offset(time);
    return zone === 'Z' ? 0 : (zone[0] === '-' ? -1 : 1) * (60 * zone.slice(1, 3) + 1 * zone.slice(4));
  }
  function local(at, like) {
    return new Date(at + offsetMin(like) * MINUTE_MS).toISOString().slice(0, 19) + offset(like);
  }
  function clock(at, like) {
    var time = local(at, like);
    var day = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'][new Date(time.slice(0, 10) + 'T00:00Z').getUTCDay()];
    var soon = Math.abs(at - Date.now()) < 6 * 86400000;
    return day + ' ' + (soon ? '' : time.slice(0, 10) + ' ') + time.slice(11, 16);
  }
  function countdown(to) {
    var s = Math.round(Math.abs(to) / 1000);
    var days = Math.floor(s / 86400);
    var rest = Math.floor(s / 3600) % 24 + ':' + two(Math.floor(s / 60) % 60) + ':' + two(s % 60);
    return (days > 0 ? days + ' d ' : '') + rest;
  }

  /* when to close: as planned, or as the plan's table has it for an opening that is late */
  function closing(planned, openedAt) {
    var lateMin = (openedAt - ms(planned.openAt)) / MINUTE_MS;
    if (lateMin <= ON_TIME_MIN) {
      return ms(planned.closeAt);
    }
    var before = {lateMin: 0, closeAt: planned.closeAt};
    var rows = planned.slack.openedLate;
    for (var i = 0; i < rows.length; i++) {
      if (lateMin <= rows[i].lateMin + ON_TIME_MIN) {
        if (rows[i].closeAt === null) {
          return null;
        }
        var share = Math.min(1, (lateMin - before.lateMin) / (rows[i].lateMin - before.lateMin));
        return ms(before.closeAt) + share * (ms(rows[i].closeAt) - ms(before.closeAt));
      }
      if (rows[i].closeAt === null) {
        return null;
      }
      before = rows[i];
    }
    return null;
  }

  /* what comes next for a sheet: set up, open or close; nothing where it is over */
  function act(sheet, now) {
    var planned = sheet.planned;
    var state = done(sheet);
    if (state.left || state.closedAt) {
      return null;
    }
    if (state.openedAt) {
      var close = closing(planned, state.openedAt);
      return {sheet: sheet, what: 'close', at: close === null ? ms(planned.closeAt) : close, lost: close === null};
    }
    if (now > Math.max(ms(planned.closeAt), ms(planned.openAt) + 41 * MINUTE_MS)) {
      return null;
    }
    if (now < ms(planned.prepareAt)) {
      return {sheet: sheet, what: 'set up', at: ms(planned.prepareAt)};
    }
    return {sheet: sheet, what: 'open', at: ms(planned.openAt),
      lost: now > ms(planned.openAt) + ON_TIME_MIN * MINUTE_MS && closing(planned, now) === null};
  }
  function acts(now) {
    return sheets.map(function (sheet) { return act(sheet, now); }).filter(Boolean)
      .sort(function (one, other) {
        return (other.what === 'close') - (one.what === 'close') || one.at - other.at;
      });
  }

  function element(name, words, attributes) {
    var made = document.createElement(name);
    if (words) { made.textContent = words; }
    Object.keys(attributes || {}).forEach(function (key) { made.setAttribute(key, attributes[key]); });
    return made;
  }
  function named(sheet) { return 'sheet ' + sheet.planned.sheet; }

  var now = element('p', '', {'class': 'act', id: 'act', role: 'status'});
  var count = element('p', '', {'class': 'countdown', id: 'countdown', role: 'timer'});
  var about = element('p', '', {id: 'about'});
  var buttons = element('div', '', {'class': 'buttons'});
  var then = element('p', '', {id: 'then'});
  var told = element('p', '', {'class': 'small', id: 'told'});
  function button(words, id, action) {
    var made = element('button', words, {type: 'button', id: id});
    made.addEventListener('click', function () {
      sound();
      var next = acts(Date.now())[0];
      action(next ? next.sheet : null);
    });
    buttons.appendChild(made);
    return made;
  }
  var last = null;
  var openNow = button('opened now', 'opened', function (sheet) {
    last = sheet;
    note(sheet, {openedAt: Date.now()});
  });
  var closeNow = button('closed now', 'closed', function (sheet) {
    last = sheet;
    note(sheet, {closedAt: Date.now()});
  });
  var skip = button('skip', 'skip', function (sheet) {
    last = sheet;
    note(sheet, {left: 'skipped', leftAt: Date.now()});
  });
  var clouded = button('clouded out', 'clouded', function (sheet) {
    last = sheet;
    note(sheet, {left: 'clouded out', leftAt: Date.now()});
  });
  var undo = button('undo', 'undo', function () {
    var state = done(last);
    if (state.left) {
      note(last, {left: undefined, leftAt: undefined});
    } else if (state.closedAt) {
      note(last, {closedAt: undefined});
    } else {
      note(last, {openedAt: undefined});
    }
  });
  [now, count, about, buttons, then, told].forEach(function (part) {
    live.insertBefore(part, live.querySelector('.evenings'));
  });

  function put(place, words) {
    if (place.textContent !== words) { place.textContent = words; }
  }
  var rung = '';
  function show() {
    var at = Date.now();
    var next = acts(at);
    var first = next[0];
    var open = first && first.what === 'close';
    openNow.hidden = !first || open;
    closeNow.hidden = !open;
    skip.hidden = clouded.hidden = !first;
    undo.hidden = !last || !(done(last).openedAt || done(last).left);
    if (!first) {
      put(now, sheets.length ? 'All sheets are done' : 'No sheet is planned');
      put(count, '');
      put(about, '');
      put(then, '');
    } else {
      var planned = first.sheet.planned;
      put(now, clock(first.at, planned.openAt) + ' ' + first.what + ' ' + named(first.sheet));
      put(count, (first.at < at ? 'late by ' : 'in ') + countdown(first.at - at));
      put(about, planned.wish + ', f/' + planned.fNumber + ', ' + first.sheet.night.site
        + (first.lost ? open ? '. No closing keeps the limits any more: this is the planned one'
          : '. Too late: no closing keeps the limits any more' : lateBy(first)));
      put(then, next[1] ? 'then ' + clock(Math.max(next[1].at, open ? first.at : 0), next[1].sheet.planned.openAt) + ' ' + next[1].what + ' '
        + named(next[1].sheet) + ', ' + next[1].sheet.planned.wish : '');
      ring(first, at);
    }
    put(told, [zoneTold(first), awake(), keeps ? '' : 'This browser keeps nothing: hand over before you close the page.']
      .filter(Boolean).join(' '));
    handed();
  }
  function lateBy(first) {
    var state = done(first.sheet);
    var from = state.openedAt || Date.now();
    var late = Math.round((from - ms(first.sheet.planned.openAt)) / MINUTE_MS);
    if (late <= ON_TIME_MIN || first.what === 'set up') {
      return '';
    }
    return '. Opened ' + late + ' min late: close '
      + clock(closing(first.sheet.planned, from), first.sheet.planned.openAt);
  }
  function zoneTold(first) {
    var like = first ? first.sheet.planned.openAt : plan.generatedAt;
    var own = -new Date(ms(like)).getTimezoneOffset();
    return own === offsetMin(like) ? '' : 'This device keeps another time than the site: times here are the site\'s, UTC'
      + (offset(like) === 'Z' ? '' : offset(like)) + '.';
  }

  /* a tone and a shake at set-up, opening and closing, while the page is awake */
  var audio = null;
  function sound() {
    var Audio = window.AudioContext || window.webkitAudioContext;
    if (!audio && Audio) { audio = new Audio(); }
    stayAwake();
  }
  function ring(first, at) {
    var key = first.sheet.planned.identity + first.what + first.at;
    if (at < first.at || at > first.at + MINUTE_MS || rung === key) {
      return;
    }
    rung = key;
    if (navigator.vibrate) { navigator.vibrate([400, 200, 400]); }
    if (audio) {
      var tone = audio.createOscillator();
      tone.connect(audio.destination);
      tone.start();
      tone.stop(audio.currentTime + 1);
    }
  }
  var lock = null;
  function stayAwake() {
    if (navigator.wakeLock && !lock) {
      navigator.wakeLock.request('screen').then(function (got) {
        lock = got;
        lock.addEventListener('release', function () { lock = null; });
      }, function () { lock = null; });
    }
  }
  function awake() {
    return navigator.wakeLock ? '' : 'This page cannot keep the screen awake and rings only while it is: set the phone so.';
  }
  document.addEventListener('visibilitychange', function () { if (!document.hidden) { show(); stayAwake(); } });

  /* hand over: what was really done, as a file and as text for gloam journal add --from-page */
  var file = element('a', 'hand over as a file', {'class': 'button', id: 'file'});
  file.setAttribute('download', 'gloam-page.json');
  var text = element('textarea', '', {id: 'handed', readonly: '', rows: '6', 'aria-label': 'what the page hands over'});
  var over = element('details', '', {id: 'over'});
  over.appendChild(element('summary', 'hand over to the journal'));
  over.appendChild(element('p', 'Save the file, or copy the text into one, and run: '
    + 'gloam journal add --journal journal.jsonl --trip TRIP --from-page FILE'));
  over.appendChild(file);
  over.appendChild(text);
  live.appendChild(over);
  live.querySelector('.evenings').removeAttribute('open');
  function notes(planned) {
    return (kept.inputs['sheet-' + planned.sheet + ' notes'] || '').trim().slice(0, 400) || undefined;
  }
  function handedOver() {
    var left = [];
    var nights = plan.nights.map(function (night) {
      return {night: night.night, site: night.site, windows: night.windows.filter(function (planned) {
        var state = kept.sheets[planned.identity] || {};
        if (state.left) {
          left.push({sheet: planned.sheet, wish: planned.wish, why: state.left, note: notes(planned)});
        }
        return state.openedAt ? state.closedAt > state.openedAt : false;
      }).map(function (planned) {
        var state = kept.sheets[planned.identity];
        return {sheet: planned.sheet, wish: planned.wish, film: planned.film, openAt: local(state.openedAt, planned.openAt),
          closeAt: local(state.closedAt, planned.openAt), azimuthDeg: planned.azimuthDeg, altitudeDeg: planned.altitudeDeg,
          fNumber: planned.fNumber, note: notes(planned)};
      })};
    }).filter(function (night) { return night.windows.length > 0; });
    return JSON.stringify({schema: 'gloam-page/1', identity: plan.identity, title: plan.title, nights: nights,
      skipped: left}, null, 1);
  }
  function handed() {
    var content = handedOver();
    if (text.value !== content) {
      text.value = content;
      file.setAttribute('href', 'data:application/json;charset=utf-8,' + encodeURIComponent(content));
    }
  }

  /* ticks, fields and the view are kept too */
  function fieldKey(field) {
    var card = field.closest('.card');
    return card ? card.id + ' ' + field.name : '';
  }
  document.querySelectorAll('.card input').forEach(function (field) {
    var key = fieldKey(field);
    if (field.type === 'checkbox') {
      field.checked = kept.inputs[key] === true;
    } else {
      field.value = kept.inputs[key] || '';
    }
    field.addEventListener('input', function () {
      kept.inputs[key] = field.type === 'checkbox' ? field.checked : field.value;
      keep();
      handed();
    });
  });
  var red = document.getElementById('red');
  red.checked = kept.red;
  red.addEventListener('change', function () { kept.red = red.checked; keep(); });
  document.querySelectorAll('input[name=level]').forEach(function (level) {
    level.checked = level.id === kept.level;
    level.addEventListener('change', function () { kept.level = level.id; keep(); });
  });
  show();
  setInterval(show, TICK_MS);
}());
