// @ts-check
/** @import { Answer, ChatMessage, Overview } from '../phone-api/views.ts' */
/** @import { LoggedCall } from '../call-log.ts' */
/** @import { Fault } from '../faults.ts' */

/** @typedef {{ command: string, description: string }} Command */
/** @typedef {{ id: string, label: string, at: string, endsWeek?: boolean }} Stop */
/** @typedef {'photo' | 'video' | 'voice' | 'document'} FileKind */

/**
 * @param {string} path
 * @param {RequestInit} [init]
 * @returns {Promise<any>}
 */
async function call(path, init) {
  const response = await fetch(`rehearsal${path}`, init);
  const answer = await response.json();
  if (!response.ok) throw new Error(answer.error ?? `The rehearsal answered ${response.status}.`);
  return answer;
}

/**
 * @param {string} path
 * @param {unknown} [body]
 */
function post(path, body = {}) {
  return call(path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });
}

/** Calls of the rehearsal's own interface; each throws an Error with the reason in words. */
export const api = {
  /** @returns {Promise<Overview>} */
  overview: () => call('/overview'),
  /** @returns {Promise<Stop[]>} */
  stops: () => call('/stops'),
  /** @returns {Promise<LoggedCall[]>} */
  log: () => call('/log'),
  /** @param {number} id @returns {Promise<ChatMessage[]>} */
  chat: (id) => call(`/accounts/${id}/chat`),
  /** @param {number} id @returns {Promise<Answer[]>} */
  answers: (id) => call(`/accounts/${id}/answers`),
  /** @param {number} id @returns {Promise<Command[]>} */
  commands: (id) => call(`/accounts/${id}/commands`),
  /** @param {Date} to */
  moveTo: (to) => post('/clock', { to: to.toISOString() }),
  /** @param {number} id @param {string} name */
  addAccount: (id, name) => post('/accounts', { id, name }),
  /** @param {number} id @param {string} link */
  open: (id, link) => post(`/accounts/${id}/open`, { link }),
  /** @param {number} id @param {string} text */
  say: (id, text) => post(`/accounts/${id}/say`, { text }),
  /** @param {number} id @param {number} messageId @param {string} data @returns {Promise<{ queryId: string }>} */
  tap: (id, messageId, data) => post(`/accounts/${id}/tap`, { messageId, data }),
  /** @param {number} id @param {boolean} blocked */
  setBlocked: (id, blocked) => post(`/accounts/${id}/${blocked ? 'block' : 'unblock'}`),
  /** @param {number} id @param {File} file @param {FileKind} kind @param {string} caption */
  sendFile: (id, file, kind, caption) => {
    const about = new URLSearchParams({ kind, name: file.name, ...(caption ? { caption } : {}) });
    return call(`/accounts/${id}/files?${about}`, { method: 'POST', body: file });
  },
  /** @param {Fault} fault */
  setFault: (fault) => post('/faults', fault),
  clearFaults: () => call('/faults', { method: 'DELETE' }),
  /** @param {boolean} on */
  setLimits: (on) => post('/limits', { on }),
  /** @param {string} fileId */
  fileAddress: (fileId) => `rehearsal/files/${encodeURIComponent(fileId)}`,
};
