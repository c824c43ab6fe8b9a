/** The letter of a place: A for 0. */
export const letterOf = (place: number): string => String.fromCharCode(65 + place);
