/** Why a package cannot be read, as a sentence for whoever brought it. */
export class Refusal extends Error {}
