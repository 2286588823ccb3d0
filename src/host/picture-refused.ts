/** A picture's file that is not taken, in a sentence that says why and what to do. */
export class PictureRefused extends Error {
  constructor(message: string) {
    super(message);
    this.name = "PictureRefused";
  }
}
