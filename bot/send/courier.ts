import { setImmediate as networkTurn } from 'node:timers/promises';
import { type Api, GrammyError, HttpError } from 'grammy';
import {
  AppError,
  type ChildTurn,
  type Courier,
  type Delivery,
  findHelperByChat,
  getDisplay,
  getRunningClass,
  type HelperScope,
  isQuiet,
  listTurns,
  localTimeAt,
  type Outcome,
  type Parcel,
  problemOf,
  readEvening,
  type SchoolClass,
} from '../../db/index.ts';
import { apiProblem } from '../chat/api-error.ts';
import { quietly } from '../chat/quiet.ts';
import { postScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import { pictureFile, tableFile } from '../digest/digest-files.ts';
import { readDigest } from '../digest/read-digest.ts';
import { languageFor } from '../features/language-for.ts';
import { readIn } from '../language/index.ts';
import { digestScreen } from '../screens/digest-screens.ts';
import { eveningScreen, type Occasion } from '../screens/evening-screen.ts';
import { eveningStep } from '../screens/evening-step.ts';
import { isAnotherBusy, turnBefore } from '../screens/turns.ts';
import { prepareClassNews } from './prepare-class-news.ts';
import { prepareErasing } from './prepare-erasing.ts';
import { prepareFewer } from './prepare-fewer.ts';
import { prepareGreeting } from './prepare-greeting.ts';
import { prepareMoved } from './prepare-moved.ts';

/**
 * Makes messages of what is owed: evenings, nudges and reminders to helpers, digests to teachers. What can fail without the
 * network (reading, composing) happens before a parcel is handed out; a clip or picture that fails then gives way to words.
 */
export function createCourier(deps: BotDeps): Courier {
  return {
    // In the recipient's language, and so is what is only drawn once it has to be uploaded.
    prepare: async (delivery) => {
      const language = await languageFor(deps, { id: delivery.chatId });
      const made = await readIn(language, () => prepare(deps, delivery));
      if (!made) return null;
      const send = () => readIn(language, () => made.send());
      const wantsQuiet = await isQuiet(deps.store, delivery.chatId);
      return { send: wantsQuiet ? () => quietly(send) : send };
    },
  };
}

async function prepare(deps: BotDeps, delivery: Delivery): Promise<Parcel | null> {
  switch (delivery.kind) {
    case 'greeting': {
      const send = await prepareGreeting(deps, delivery);
      return send && parcel(send);
    }
    case 'evening':
    case 'nudge':
    case 'reminder':
      return prepareEvening(deps, delivery, delivery.kind);
    case 'digest':
    case 'digest_picture':
    case 'digest_table':
      return prepareDigest(deps, delivery);
    case 'class_stopped':
    case 'class_resumed':
    case 'handed_over': {
      const send = await prepareClassNews(deps, delivery, delivery.kind);
      return send && parcel(send);
    }
    case 'erasing':
    case 'kept_after_all': {
      const send = await prepareErasing(deps, delivery, delivery.kind);
      return send && parcel(send);
    }
    case 'fewer_evenings': {
      const send = await prepareFewer(deps, delivery);
      return send && parcel(send);
    }
    case 'moved': {
      const send = await prepareMoved(deps, delivery);
      return send && parcel(send);
    }
  }
}

async function prepareEvening(
  deps: BotDeps,
  delivery: Delivery,
  occasion: Occasion,
): Promise<Parcel | null> {
  if (!delivery.eveningId) return null;
  const view = await readEvening(deps.store, delivery.eveningId);
  const { day } = localTimeAt(deps.clock.now(), view.zone);
  const { step } = eveningStep(view, day);
  // A nudge or reminder planned before a mark came in is not wanted any more.
  const marked = view.results.some((result) => result !== null);
  if (step === 'closed' || step === 'declined' || step === 'stopped') return null;
  if (occasion !== 'evening' && marked) return null;
  // The second message always offers Start: it may be the first one that arrives.
  const shown = occasion === 'evening' ? view : { ...view, started: false, marking: null };
  const helper = await findHelperByChat(deps.store, delivery.chatId);
  const turns = helper && (await turnsOf(deps, { helperId: helper.id, eveningId: view.id }));
  // Who has left meanwhile gets nothing about the child any more.
  if (!helper || !turns) return null;
  const means = {
    ...deps,
    ...(await getDisplay(deps.store, helper.id)),
    before: turnBefore(turns, view.id),
  };
  const screen = eveningScreen(shown, day, means, occasion);
  const post = () => postScreen(deps, delivery.chatId, screen);
  // It comes in the middle of a brother's or sister's cards: without a sound.
  return parcel(isAnotherBusy(turns, view.id) ? () => quietly(post) : post);
}

async function turnsOf({ store }: BotDeps, scope: HelperScope): Promise<ChildTurn[] | null> {
  try {
    return await listTurns(store, scope);
  } catch (error) {
    if (error instanceof AppError && error.code === 'not_found') return null;
    throw error;
  }
}

async function prepareDigest(deps: BotDeps, delivery: Delivery): Promise<Parcel | null> {
  const schoolClass = await getRunningClass(deps.store, delivery.classId);
  const summary = await readDigest(deps.store, schoolClass, delivery.day, deps.clock.now());
  const { chatId, day } = delivery;
  if (delivery.kind === 'digest') {
    const screen = digestScreen({ classId: schoolClass.id, day }, schoolClass.title, summary);
    return parcel(() => postScreen(deps, chatId, screen));
  }
  if (summary.children.length === 0) return null;
  const file =
    delivery.kind === 'digest_table'
      ? tableFile(schoolClass, day, summary)
      : drawOrNull(deps, schoolClass, () => pictureFile(deps.painter, schoolClass, day, summary));
  if (!file) return null;
  return parcel(() => sendFile(deps.api, chatId, file));
}

/** A picture that cannot be drawn is left out; the text and the table say the same. */
function drawOrNull<T>(deps: BotDeps, schoolClass: SchoolClass, draw: () => T): T | null {
  try {
    return draw();
  } catch {
    deps.log.warn({ classId: schoolClass.id }, 'digest_picture_failed');
    return null;
  }
}

async function sendFile(
  api: Api,
  chatId: number,
  file: Parameters<Api['sendDocument']>[1],
): Promise<number> {
  const sent = await api.sendDocument(chatId, file);
  return sent.message_id;
}

function parcel(call: () => Promise<number>): Parcel {
  return {
    send: async () => {
      // Drawing keeps the process busy; meanwhile the service may have closed an idle connection. One turn lets the network
      // layer notice, so that the call does not leave on a dead connection and end as `unknown`.
      await networkTurn();
      try {
        return { kind: 'sent', messageId: await call() };
      } catch (error) {
        return outcomeOf(error);
      }
    },
  };
}

/**
 * What a failed call means for the ledger. Only what surely did not arrive may be tried again: that includes an error of our
 * own, since it kept the call from leaving.
 */
export function outcomeOf(error: unknown): Outcome {
  if (!(error instanceof GrammyError || error instanceof HttpError)) {
    return { kind: 'refused', problem: problemOf(error) };
  }
  const problem = apiProblem(error);
  switch (problem.kind) {
    case 'too_many':
      return {
        kind: 'refused',
        problem: 'too_many',
        retryAfterSeconds: problem.retryAfterSeconds,
      };
    case 'service_error':
    case 'not_connected':
      return { kind: 'refused', problem: problem.code };
    case 'gone':
    case 'rejected':
    case 'unknown':
      return { kind: problem.kind, problem: problem.code };
    default:
      return { kind: 'rejected', problem: problem.kind };
  }
}
