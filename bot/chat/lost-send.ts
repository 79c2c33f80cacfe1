import { HttpError, type Transformer } from 'grammy';
import { apiProblem } from './api-error.ts';

/** A new message left and no proper answer came: it may have arrived, so it must not be sent again. */
export class LostSend extends HttpError {}

/** Tells such a call apart from an edit or an answer, which may be repeated safely. */
export const nameLostSends: Transformer = async (previous, method, payload, signal) => {
  try {
    return await previous(method, payload, signal);
  } catch (error) {
    const isLost = error instanceof HttpError && apiProblem(error).kind === 'unknown';
    if (isLost && method.startsWith('send')) throw new LostSend(error.message, error.error);
    throw error;
  }
};
