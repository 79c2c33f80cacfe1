/** How one value travels inside a button. `read` returns null for what could not have been written by `write`. */
export interface Field<T> {
  write(value: T): string;
  read(text: string): T | null;
}

/** A uuid as 22 characters instead of 36. */
export const id: Field<string> = {
  write: (value) => Buffer.from(value.replaceAll('-', ''), 'hex').toString('base64url'),
  read: (text) => {
    if (!/^[A-Za-z0-9_-]{22}$/.test(text)) return null;
    const hex = Buffer.from(text, 'base64url').toString('hex');
    return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
  },
};

/** A whole number from 0 to 9999. */
export const int: Field<number> = {
  write: (value) => String(value),
  read: (text) => (/^\d{1,4}$/.test(text) ? Number(text) : null),
};

/** A join code or a rung id: a short word that needs no escaping. */
export const word: Field<string> = {
  write: (value) => value,
  read: (text) => (/^[A-Za-z0-9_.-]{1,32}$/.test(text) ? text : null),
};
