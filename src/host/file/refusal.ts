/** A file that is not taken, in one line that says why; nothing has been written. */
export class FileRefused extends Error {
  constructor(message: string) {
    super(message);
    this.name = "FileRefused";
  }
}
