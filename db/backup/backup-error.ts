/** A backup cannot be made, read or restored. The message is for the operator: one line that says what, why, and what to do. */
export class BackupError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'BackupError';
  }
}
