import { AppError, type ErrorCode } from '../../db/index.ts';

/** The code of the refusal that `work` meets, or `accepted`. Any other error is the test's own failure. */
export async function codeOf(work: Promise<unknown>): Promise<ErrorCode | 'accepted'> {
  try {
    await work;
    return 'accepted';
  } catch (error) {
    if (error instanceof AppError) return error.code;
    throw error;
  }
}

/** The refusal's `code: what`, or `accepted`. */
export async function refusalOf(work: Promise<unknown>): Promise<string> {
  try {
    await work;
    return 'accepted';
  } catch (error) {
    if (error instanceof AppError) return error.message;
    throw error;
  }
}
