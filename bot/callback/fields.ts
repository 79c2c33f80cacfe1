/** How one value travels inside a button. `read` returns null for what could not have been written by `write`. */
export interface Field<T> {
  write(value: T): string;
  read(text: string): T | null;
}

/** A uuid in lower case, as 22 characters instead of 36. */
export const id: Field<string> = {
  write: (value) => Buffer.from(value.replaceAll('-', ''), 'hex').toString('base64url'),
  read: (text) => {
    const bytes = Buffer.from(text, 'base64url');
    // 22 characters hold four bits more than a uuid: only one of the sixteen spellings is ours.
    if (bytes.length !== 16 || bytes.toString('base64url') !== text) return null;
    const hex = bytes.toString('hex');
    return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
  },
};

/** A whole number from 0 to 9999, without leading noughts. */
export const int: Field<number> = {
  write: (value) => String(value),
  read: (text) => (/^(?:0|[1-9]\d{0,3})$/.test(text) ? Number(text) : null),
};

/** A join code or a rung id: a short word that needs no escaping. */
export const word: Field<string> = {
  write: (value) => value,
  read: (text) => (/^[A-Za-z0-9_.-]{1,32}$/.test(text) ? text : null),
};
