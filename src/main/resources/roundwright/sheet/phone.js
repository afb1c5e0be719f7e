(function () {
  'use strict';
  var words = WORDS_OF_THE_PAGE;
  var root = document.documentElement;
  var inputs = Array.prototype.slice.call(document.querySelectorAll('input[data-round]'));
  var line = document.getElementById('line');
  var said = document.getElementById('said');
  var name = document.getElementById('name');
  var place = 'roundwright: ' + root.getAttribute('data-course') + ': ' + root.getAttribute('data-name');

  root.className = 'typing';

  function kept(use) {
    try {
      return use(window.localStorage);
    } catch (closed) {
      return null;
    }
  }

  function plain(text) {
    return text.replace(/[\s:;,]+/g, ' ').trim();
  }

  function count(input) {
    return /^\d{1,4}$/.test(input.value.trim()) ? parseInt(input.value, 10) : null;
  }

  function verdict(input) {
    var shown = input.closest('.round').querySelector('.verdict');
    var reach = input.getAttribute('data-reach');
    var typed = count(input);
    if (typed === null || reach === null) {
      shown.textContent = '';
      shown.className = 'verdict';
      return;
    }
    var off = typed - parseInt(reach, 10);
    shown.textContent = off === 0 ? words.right : (off > 0 ? words.over : words.under).replace('#', Math.abs(off));
    shown.className = 'verdict ' + (off === 0 ? 'right' : off > 0 ? 'over' : 'under');
  }

  function write() {
    var part = null;
    var said = [];
    inputs.forEach(function (input) {
      var typed = count(input);
      if (typed !== null) {
        var own = input.getAttribute('data-part');
        said.push((own === part ? '' : plain(own) + ' ') + 'round ' + input.getAttribute('data-round') + ' ' + typed);
        part = own;
      }
    });
    var who = plain(name ? name.value : root.getAttribute('data-name'));
    line.value = said.length === 0 ? '' : (who ? who + ': ' : '') + said.join(', ');
  }

  function keep() {
    var typed = {};
    inputs.forEach(function (input, index) {
      if (input.value !== '') {
        typed[index] = input.value;
      }
    });
    kept(function (store) {
      store.setItem(place, JSON.stringify({ name: name ? name.value : '', typed: typed }));
    });
  }

  function recall() {
    var before = kept(function (store) {
      return JSON.parse(store.getItem(place));
    });
    if (before && before.typed) {
      inputs.forEach(function (input, index) {
        input.value = before.typed[index] || '';
      });
      if (name) {
        name.value = before.name || '';
      }
    }
  }

  function changed() {
    write();
    keep();
    said.textContent = '';
  }

  inputs.forEach(function (input) {
    input.addEventListener('input', function () {
      verdict(input);
      changed();
    });
  });
  if (name) {
    name.addEventListener('input', changed);
  }

  document.getElementById('copy').addEventListener('click', function () {
    line.focus();
    line.select();
    var copied = false;
    try {
      copied = document.execCommand('copy');
    } catch (refused) {
      copied = false;
    }
    said.textContent = copied ? words.copied : words.select;
  });

  document.getElementById('forget').addEventListener('click', function () {
    inputs.forEach(function (input) {
      input.value = '';
      verdict(input);
    });
    kept(function (store) {
      store.removeItem(place);
    });
    write();
    said.textContent = words.forgotten;
  });

  recall();
  inputs.forEach(verdict);
  write();
})();
