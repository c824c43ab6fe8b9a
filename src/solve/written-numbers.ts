/** Stands before the text of a number that no double can hold. No key or value of a request begins with it. */
const MARK = '\u0000number ';

const STRING_OR_NUMBER = /"(?:[^"\\]|\\.)*"|-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?/g;
/** Cheap test for the rare text that could hold such a number: three digits of exponent, or three hundred of number. */
const MAY_OVERFLOW = /[eE]\+?\d{3}|\d{300}/;

/**
 * JSON text with every number beyond a double, as 1e999, turned into marked text. JSON.parse would make it Infinity,
 * and what was written would be lost. A reviver could keep the source, but it recurses, and deep nesting would end it.
 */
export function keepAsWritten(json: string): string {
  if (!MAY_OVERFLOW.test(json)) return json;
  return json.replace(STRING_OR_NUMBER, (token) =>
    token.startsWith('"') || Number.isFinite(Number(token))
      ? token
      : JSON.stringify(`${MARK}${token}`),
  );
}

/** The number as it was written, or undefined for anything else. */
export function asWritten(value: string): string | undefined {
  return value.startsWith(MARK) ? value.slice(MARK.length) : undefined;
}
