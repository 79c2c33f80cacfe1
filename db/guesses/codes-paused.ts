import { AppError } from '../errors.ts';

/** Refusal of an account that has tried too many codes that open nothing. */
export class CodesPaused extends AppError {
  /** Whole minutes until it may try again, at least 1. */
  readonly minutes: number;

  constructor(minutes: number) {
    super('too_many', 'codes');
    this.name = 'CodesPaused';
    this.minutes = minutes;
  }
}
