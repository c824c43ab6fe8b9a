// Sent with the page, so its reasons stand in Waits.astro.
(function () {
  try {
    var kept = function (name) {
      var key = 'hot-clutch:' + name + ':';
      return JSON.parse(
        localStorage.getItem(key + localStorage.getItem(key + 'slot')) || '{"data":0}',
      ).data;
    };
    var show = function (name) {
      document.querySelector('[data-wait=' + name + ']').hidden = false;
    };
    if (kept('plan') || kept('lesson-rounds')) show('today');
    if (kept('rehearsal').rehearsal) show('rehearsal');
    var cases = kept('visits').byCase;
    for (var id in cases) if (!cases[id].ended && cases[id].steps.length) show('case');
  } catch {}
})();
