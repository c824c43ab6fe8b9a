// Sent with the page, so its reasons stand in jobs.astro.
(function () {
  try {
    if (localStorage.getItem('hot-clutch:jobs'))
      document.documentElement.dataset.jobs = location.hash ? 'job' : 'list';
  } catch {}
})();
