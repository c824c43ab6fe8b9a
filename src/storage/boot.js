// Sent with every page, so its reasons stand in settings.ts.
(function () {
  var root = document.documentElement;
  root.dataset.js = '';
  try {
    var key = 'hot-clutch:settings:';
    var kept = JSON.parse(localStorage.getItem(key + localStorage.getItem(key + 'slot'))).data;
    if (kept.units === 'si') root.dataset.units = 'si';
    if (kept.theme === 'dark' || kept.theme === 'light') root.dataset.theme = kept.theme;
  } catch {}
})();
