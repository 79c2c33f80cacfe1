import { TAP_LIFETIME_MS } from '../updates.ts';
import { toFile } from '../wire.ts';
import { badRequest } from './envelope.ts';
import { fileById } from './media.ts';
import { method } from './method.ts';

/** Characters (SPEC answerCallbackQuery). */
const ANSWER_LIMIT = 200;
/** Bytes (SPEC getFile). */
const DOWNLOAD_LIMIT = 20_971_520;

const getMe = method('getMe', (service) => ({
  ...service.bot,
  can_join_groups: false,
  can_read_all_group_messages: false,
  can_manage_bots: false,
  supports_inline_queries: false,
  supports_guest_queries: false,
  can_connect_to_business: false,
  has_main_web_app: false,
  has_topics_enabled: false,
  allows_users_to_create_topics: false,
}));

const getUpdates = method('getUpdates', (service, params, { signal }) =>
  service.updates.poll({
    offset: params.offset,
    limit: params.limit,
    timeout: params.timeout,
    allowedUpdates: params.allowed_updates,
    signal,
  }),
);

const setMyCommands = method('setMyCommands', (service, params) => {
  const { type, chat_id } = params.scope ?? { type: 'default' };
  const key = [type, chat_id ?? '', params.language_code ?? ''].join('|');
  service.state.commands[key] = params.commands;
  service.changed();
  return true;
});

const answerCallbackQuery = method('answerCallbackQuery', (service, params) => {
  const query = service.state.queries.find(({ id }) => id === params.callback_query_id);
  const now = service.now().getTime();
  if (query === undefined || query.answer !== undefined || now - query.at > TAP_LIFETIME_MS) {
    throw badRequest('query is too old and response timeout expired or query ID is invalid');
  }
  const text = params.text ?? '';
  if ([...text].length > ANSWER_LIMIT) throw badRequest('MESSAGE_TOO_LONG');
  query.answer = { text, showAlert: params.show_alert ?? false, at: now };
  service.changed();
  return true;
});

const getFile = method('getFile', (service, params) => {
  const { record, variant } = fileById(service, params.file_id);
  if (record.size > DOWNLOAD_LIMIT) throw badRequest('file is too big');
  return toFile(service, record, variant);
});

/** Methods about the bot itself, its updates and its files. */
export const botMethods = {
  getMe,
  getUpdates,
  setMyCommands,
  answerCallbackQuery,
  getFile,
};
