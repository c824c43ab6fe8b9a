import { useLayoutEffect, useRef } from 'preact/hooks';

/** A drawing that stands in the page already is lent to the stage, and goes back where it stood. */
export function Figure({ scene }: { readonly scene: number }) {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const home = document.querySelector(`[data-figure="${scene}"]`);
    const figure = home?.firstElementChild;
    if (!home || !figure || !box.current) return undefined;
    box.current.append(figure);
    const { width, height } = figure.querySelector('svg')?.viewBox.baseVal ?? {};
    if (width && height) box.current.style.setProperty('--tall', String(height / width));
    return () => home.append(figure);
  }, [scene]);
  return <div class="stage-figure" ref={box} />;
}
