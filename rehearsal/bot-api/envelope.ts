/** An error the service answers with; `code` is also the HTTP status. */
export class ApiError extends Error {
  readonly code: number;
  readonly retryAfter: number | undefined;

  constructor(code: number, description: string, retryAfter?: number) {
    super(description);
    this.code = code;
    this.retryAfter = retryAfter;
  }
}

/** A 400 whose description begins, as all of them do, with "Bad Request: ". */
export function badRequest(description: string): ApiError {
  return new ApiError(400, `Bad Request: ${description}`);
}

/** A 403 whose description begins, as all of them do, with "Forbidden: ". */
export function forbidden(description: string): ApiError {
  return new ApiError(403, `Forbidden: ${description}`);
}

/** A 429 that says when to come back, in seconds. */
export function tooManyRequests(seconds: number): ApiError {
  return new ApiError(429, `Too Many Requests: retry after ${seconds}`, seconds);
}

/** A result with a word about it, as the methods for webhooks give. */
export class Told {
  readonly result: unknown;
  readonly description: string;

  constructor(result: unknown, description: string) {
    this.result = result;
    this.description = description;
  }
}

export function okEnvelope(result: unknown): Response {
  const told = result instanceof Told ? result : { result };
  return Response.json({ ok: true, ...told });
}

/** The error body; a 429 also says when to come back, in the body and in a header. */
export function errorEnvelope(error: ApiError): Response {
  const { retryAfter } = error;
  const body = {
    ok: false,
    error_code: error.code,
    description: error.message,
    ...(retryAfter === undefined ? {} : { parameters: { retry_after: retryAfter } }),
  };
  const headers: Record<string, string> =
    retryAfter === undefined ? {} : { 'retry-after': String(retryAfter) };
  return Response.json(body, { status: error.code, headers });
}
