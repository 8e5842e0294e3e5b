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
    night.windows.forEach(function (planned) {
      sheets.push({night: night, planned: planned, key: planned.identity + ' ' + night.night});
    });
  });

  /* what is kept: by the window's identity, which stays when a trip is planned anew, and by the night */
  var kept = {sheets: {}, inputs: {}, steps: [], red: false, level: 'middle'};
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
    return kept.sheets[sheet.key] || {};
  }
  function note(sheet, changes) {
    var planned = sheet.planned;
    kept.sheets[sheet.key] = Object.assign({}, done(sheet), {of: {night: sheet.night.night, site: sheet.night.site,
      zone: sheet.night.zone, sheet: planned.sheet, wish: planned.wish, film: planned.film, camera: planned.camera,
      openAt: planned.openAt, azimuthDeg: planned.azimuthDeg, altitudeDeg: planned.altitudeDeg,
      fNumber: planned.fNumber, skyToneStops: planned.skyToneStops, openings: planned.openings}}, changes);
    fill(sheet);
    keep();
    show();
  }
  function step(sheet, what, changes) {
    kept.steps.push({key: sheet.key, what: what, sheet: sheet.planned.sheet});
    note(sheet, changes);
  }

  /* times: shown by the site's clocks; where a browser does not know a zone, by their offset at the opening */
  var zones = {};
  function ms(time) { return Date.parse(time); }
  function two(number) { return (number < 10 ? '0' : '') + number; }
  function plannedOffsetMin(time) {
    var zone = time.slice(-6);
    return time.slice(-1) === 'Z' ? 0 : (zone[0] === '-' ? -1 : 1) * (60 * zone.slice(1, 3) + 1 * zone.slice(4));
  }
  function offsetMin(at, sheet) {
    var zone = sheet.night.zone;
    try {
      zones[zone] = zones[zone] || new Intl.DateTimeFormat('en-US', {timeZone: zone, hourCycle: 'h23', year: 'numeric',
        month: '2-digit', day: '2-digit', hour: '2-digit', minute: '2-digit'});
      var part = {};
      zones[zone].formatToParts(at).forEach(function (each) { part[each.type] = +each.value; });
      return Math.round((Date.UTC(part.year, part.month - 1, part.day, part.hour, part.minute)
        - Math.floor(at / MINUTE_MS) * MINUTE_MS) / MINUTE_MS);
    } catch (unknown) {
      return plannedOffsetMin(sheet.planned.openAt);
    }
  }
  function offset(minutes) {
    var size = Math.abs(minutes);
    return (minutes < 0 ? '-' : '+') + two(Math.floor(size / 60)) + ':' + two(size % 60);
  }
  function local(at, sheet) {
    var minutes = offsetMin(at, sheet);
    return new Date(at + minutes * MINUTE_MS).toISOString().slice(0, 19) + offset(minutes);
  }
  function clock(at, sheet) {
    var time = local(at, sheet);
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
  /* what comes next, each from when its camera is free on */
  function acts(now) {
    var all = sheets.map(function (sheet) { return act(sheet, now); }).filter(Boolean);
    all.forEach(function (one) {
      one.from = all.filter(function (other) {
        return other.what === 'close' && other.sheet.planned.camera === one.sheet.planned.camera;
      }).reduce(function (at, other) { return Math.max(at, other.at); }, one.at);
    });
    return all.sort(function (one, other) {
      return one.from - other.from || (other.what === 'close') - (one.what === 'close') || one.at - other.at;
    });
  }

  function element(name, words, attributes) {
    var made = document.createElement(name);
    if (words) { made.textContent = words; }
    Object.keys(attributes || {}).forEach(function (key) { made.setAttribute(key, attributes[key]); });
    return made;
  }
  function named(sheet) { return 'sheet\u00a0' + sheet.planned.sheet; }

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
      show();
    });
    buttons.appendChild(made);
    return made;
  }
  var openNow = button('opened now', 'opened', function (sheet) { step(sheet, 'openedAt', {openedAt: Date.now()}); });
  var closeNow = button('closed now', 'closed', function (sheet) { step(sheet, 'closedAt', {closedAt: Date.now()}); });
  var skip = button('skip', 'skip', function (sheet) { step(sheet, 'left', {left: 'skipped'}); });
  var clouded = button('clouded out', 'clouded', function (sheet) { step(sheet, 'left', {left: 'clouded out'}); });
  var undo = button('undo', 'undo', function () {
    var taken = kept.steps.pop();
    var changes = {};
    changes[taken.what] = undefined;
    note(undoable(taken), changes);
  });
  var ringer = button('turn sound on', 'ring', function () { sounds(); });
  [now, count, about, buttons, then, told].forEach(function (part) {
    live.insertBefore(part, live.querySelector('.evenings'));
  });

  /* a step of this page's sheets; those of sheets that are planned no more stay as they are */
  function undoable(taken) {
    return taken && sheets.filter(function (sheet) { return sheet.key === taken.key; })[0];
  }
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
    var last = kept.steps[kept.steps.length - 1];
    undo.hidden = !undoable(last);
    if (!undo.hidden) {
      put(undo, 'undo: sheet\u00a0' + last.sheet + ' ' + (done(undoable(last)).left || last.what.slice(0, 6)));
    }
    ringer.hidden = !first || Boolean(audio) || !(AudioKind || navigator.vibrate);
    if (!first) {
      put(now, sheets.length ? 'No more sheets on this trip' : 'No sheet is planned');
      put(count, '');
      put(about, '');
      put(then, '');
    } else {
      var planned = first.sheet.planned;
      put(now, clock(first.at, first.sheet) + ' ' + first.what + ' ' + named(first.sheet));
      put(count, (first.at < at ? 'late by ' : 'in ') + countdown(first.at - at));
      put(about, planned.wish + ', f/' + planned.fNumber + ', '
        + (plan.cameras.length > 1 ? planned.camera + ', ' : '') + first.sheet.night.site
        + (first.lost ? open ? '. No closing keeps the limits any more: this is the planned one'
          : '. Too late: no closing keeps the limits any more' : lateBy(first)));
      put(then, next[1] ? 'then ' + clock(next[1].from, next[1].sheet) + ' '
        + next[1].what + ' ' + named(next[1].sheet) + ', ' + next[1].sheet.planned.wish : '');
      ring(first, at);
    }
    put(told, [zoneTold(first), first ? rings() : '', first ? awake() : '',
      keeps ? '' : 'This browser keeps nothing: hand over before you close the page.'].filter(Boolean).join(' '));
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
      + clock(closing(first.sheet.planned, from), first.sheet);
  }
  function zoneTold(first) {
    var minutes = first ? offsetMin(first.at, first.sheet) : 0;
    return !first || -new Date(first.at).getTimezoneOffset() === minutes ? ''
      : 'This device is set to another time zone: times here are the site\'s, UTC' + offset(minutes) + '.';
  }

  /* a tone and a shake at set-up, opening and closing, while the page is awake; browsers want a press first */
  var AudioKind = window.AudioContext || window.webkitAudioContext;
  var audio = null;
  function sound() {
    if (!audio && AudioKind) { audio = new AudioKind(); }
    if (audio && audio.resume) { audio.resume().then(show, show); }
    stayAwake();
  }
  function sounds() {
    if (wanted && navigator.vibrate) { navigator.vibrate([400, 200, 400]); }
    if (audio) {
      var tone = audio.createOscillator();
      tone.connect(audio.destination);
      tone.start();
      tone.stop(audio.currentTime + 1);
    }
  }
  function ring(first, at) {
    var key = first.sheet.key + first.what + first.at;
    if (at < first.at || at > first.at + MINUTE_MS || rung === key) {
      return;
    }
    rung = key;
    sounds();
  }
  function rings() {
    if (!AudioKind) {
      return navigator.vibrate ? 'This browser makes no sound: the phone only shakes.'
        : 'This browser makes no sound: watch the countdown.';
    }
    return audio && audio.state === 'running' ? '' : 'Silent until a button is pressed.';
  }
  var lock = null;
  var refused = false;
  var wanted = false;
  function stayAwake() {
    wanted = true;
    if (navigator.wakeLock && !lock) {
      navigator.wakeLock.request('screen').then(function (got) {
        lock = got;
        refused = false;
        lock.addEventListener('release', function () { lock = null; });
        show();
      }, function () { refused = true; show(); });
    }
  }
  function awake() {
    return navigator.wakeLock && !refused ? ''
      : 'This browser does not keep the screen awake, and the page rings only while it is: set the phone so.';
  }
  document.addEventListener('visibilitychange', function () {
    if (!document.hidden) {
      show();
      if (wanted) { stayAwake(); }
    }
  });

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
  var unfinished = element('p', '', {id: 'unfinished'});
  over.insertBefore(unfinished, file);
  function notes(key) {
    return (kept.inputs[key + ' notes'] || '').trim().slice(0, 400) || undefined;
  }
  /* several openings as planned, but for the first opening and the last closing */
  function opened(of, state, sheet) {
    return of.openings.map(function (planned, number) {
      return Object.assign({}, planned, number > 0 ? {} : {openAt: local(state.openedAt, sheet)},
        number + 1 < of.openings.length ? {} : {closeAt: local(state.closedAt, sheet)});
    });
  }
  function handedOver() {
    var nights = {};
    var left = [];
    var open = [];
    Object.keys(kept.sheets).sort(function (one, other) {
      return ms(kept.sheets[one].of.openAt) - ms(kept.sheets[other].of.openAt);
    }).forEach(function (key) {
      var state = kept.sheets[key];
      var of = state.of;
      var sheet = {night: of, planned: of};
      if (state.left) {
        left.push({sheet: of.sheet, wish: of.wish, why: state.left, note: notes(key)});
      } else if (state.closedAt > state.openedAt) {
        var night = of.night + ' ' + of.site;
        nights[night] = nights[night] || {night: of.night, site: of.site, windows: []};
        nights[night].windows.push({sheet: of.sheet, wish: of.wish, film: of.film, camera: of.camera,
          openAt: local(state.openedAt, sheet), closeAt: local(state.closedAt, sheet), azimuthDeg: of.azimuthDeg,
          altitudeDeg: of.altitudeDeg, fNumber: of.fNumber, skyToneStops: of.skyToneStops, note: notes(key),
          openings: (of.openings || []).length > 1 ? opened(of, state, sheet) : undefined});
      } else if (state.openedAt || state.closedAt) {
        open.push(of.sheet);
      }
    });
    put(unfinished, open.length === 0 ? '' : 'Left out, not opened and then closed: sheet\u00a0' + open.join(', ') + '.');
    return JSON.stringify({schema: 'gloam-page/1', identity: plan.identity, title: plan.title,
      nights: Object.keys(nights).map(function (night) { return nights[night]; }), skipped: left}, null, 1);
  }
  function handed() {
    var content = handedOver();
    if (text.value !== content) {
      text.value = content;
      file.setAttribute('href', 'data:application/json;charset=utf-8,' + encodeURIComponent(content));
    }
  }

  /* ticks, fields and the view are kept too; times typed into a card are what is handed over */
  var TIMES = {'opened at': 'openedAt', 'closed at': 'closedAt'};
  function fields(sheet) {
    return document.querySelectorAll('#sheet-' + sheet.planned.sheet + ' input');
  }
  function fill(sheet) {
    fields(sheet).forEach(function (field) {
      if (TIMES[field.name]) {
        var at = done(sheet)[TIMES[field.name]];
        field.value = at ? clock(at, sheet) : '';
        field.removeAttribute('aria-invalid');
        wrong(field, '');
      }
    });
  }
  function wrong(field, words) {
    var told = field.parentNode.querySelector('small')
      || field.parentNode.appendChild(element('small', '', {role: 'alert'}));
    put(told, words);
  }
  /* the moment nearest to the planned one at which the site's clocks show that time */
  function typed(words, sheet, near) {
    var time = /(\d{1,2}):(\d\d)(?::(\d\d))?\s*$/.exec(words);
    if (!time || time[1] > 23 || time[2] > 59 || time[3] > 59) {
      return null;
    }
    var midnight = Math.floor((near + offsetMin(near, sheet) * MINUTE_MS) / 86400000) * 86400000;
    return [-1, 0, 1].map(function (days) {
      var shown = midnight + days * 86400000 + (time[1] * 60 + +time[2]) * MINUTE_MS + (time[3] || 0) * 1000;
      var at = shown - offsetMin(near, sheet) * MINUTE_MS;
      return shown - offsetMin(at, sheet) * MINUTE_MS;
    }).sort(function (one, other) { return Math.abs(one - near) - Math.abs(other - near); })[0];
  }
  function change(field, sheet) {
    var at = typed(field.value, sheet, ms(field.name === 'opened at' ? sheet.planned.openAt : sheet.planned.closeAt));
    if (field.value.trim() && at === null) {
      field.setAttribute('aria-invalid', 'true');
      wrong(field, 'no time of day, such as 21:07; the one before counts');
      return;
    }
    var changes = {};
    changes[TIMES[field.name]] = at === null ? undefined : at;
    note(sheet, changes);
  }
  sheets.forEach(function (sheet) {
    fields(sheet).forEach(function (field) {
      var key = sheet.key + ' ' + field.name;
      if (TIMES[field.name]) {
        field.setAttribute('placeholder', 'hh:mm');
        field.addEventListener('change', function () { change(field, sheet); });
        return;
      }
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
    fill(sheet);
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
