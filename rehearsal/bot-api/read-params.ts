import { type ApiError, badRequest } from './envelope.ts';
import { type MethodName, type Params, schemas } from './schemas.ts';

/** The service's words for a parameter that is missing or of the wrong kind, where they are known. */
const REFUSALS: Readonly<Record<string, string>> = {
  chat_id: 'chat_id is empty',
  message_id: 'message identifier is not specified',
  text: 'message text is empty',
  photo: 'there is no photo in the request',
  document: 'there is no document in the request',
  video: 'there is no video in the request',
  voice: 'there is no voice in the request',
  reply_markup: 'object expected as reply markup',
  file_id: 'file_id not specified',
};

function refusal(name: string, value: unknown, message: string): ApiError {
  const known = REFUSALS[name];
  if (value === undefined && known !== undefined) return badRequest(known);
  if (name === 'reply_markup' && known !== undefined) return badRequest(known);
  if (/^[A-Z_]+$/.test(message)) return badRequest(message);
  return badRequest(`can't parse parameter "${name}": ${message}`);
}

/** Checks a call's parameters against its method. Throws a 400 naming the first wrong one. */
export function readParams<M extends MethodName>(
  method: M,
  params: Record<string, unknown>,
): Params<M> {
  const result = schemas[method].safeParse(params);
  // The schema found under `method` yields that method's parameters; the compiler cannot follow the lookup.
  if (result.success) return result.data as Params<M>;
  const issue = result.error.issues[0];
  const name = String(issue?.path[0] ?? '');
  throw refusal(name, params[name], issue?.message ?? 'wrong value');
}
