/** Ways by which a script turns text into a page or a program. */
const WAYS =
  /(?:\.|\[['"`])(?:innerHTML|outerHTML|srcdoc)\b|\b(?:insertAdjacentHTML|createContextualFragment|setHTMLUnsafe|parseFromString)\b|\bdocument\.write(?:ln)?\b|(?<![\w$.])eval\(|(?<![\w$.])Function\(|\bset(?:Timeout|Interval)\(\s*['"`]|\bdangerouslySetInnerHTML\s*[:=]/g;

/**
 * Of the libraries, minified. Preact can set markup that a component hands it as `dangerouslySetInnerHTML`, looks whether it
 * stands there already, and empties what it is about to fill; Astro hands it what stands between the tags of an island. No
 * component of ours hands it any, as the scan of our source shows, and the policy of each page would refuse it.
 */
const LIBRARIES = [
  /\.__html==\w+\.innerHTML/g,
  /\w+\.innerHTML=\w+\.__html/g,
  /\w+\.innerHTML=(?:``|""|'')/g,
  /`astro-static-slot`,\{name:\w+,dangerouslySetInnerHTML:\{__html:\w+\}/g,
];

/** Each way that stands in the text of a script, comments in it too. */
export const writesMarkup = (script: string): readonly string[] =>
  Array.from(
    LIBRARIES.reduce((text, its) => text.replaceAll(its, ''), script).matchAll(WAYS),
    ([way]) => way.replace(/^\./, ''),
  );
