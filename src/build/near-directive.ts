import type { ClientDirective } from 'astro';

/**
 * `client:near`: an island comes alive a little before it comes into sight. Its script runs in one task and it is
 * hydrated in the next, so that a finger that scrolls is not kept waiting for both.
 */
const near: ClientDirective = (load, _options, island) => {
  const watch = new IntersectionObserver(
    (seen) => {
      if (!seen.some(({ isIntersecting }) => isIntersecting)) return;
      watch.disconnect();
      void load().then((hydrate) => setTimeout(() => void hydrate()));
    },
    { rootMargin: '400px' },
  );
  for (const child of island.children) watch.observe(child);
};

export default near;
