/** Something a person cannot do; `status` is the HTTP status the page and the client get. */
export class PhoneError extends Error {
  readonly status: 400 | 404 | 409;

  constructor(status: 400 | 404 | 409, message: string) {
    super(message);
    this.status = status;
  }
}
