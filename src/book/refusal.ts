/** What somebody asked for cannot be had; the message is for them, as it stands. */
export class Refusal extends Error {}
