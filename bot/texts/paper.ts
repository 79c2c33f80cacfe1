import type { Language, SchoolDay } from '../../drills/index.ts';

/** The words on printed paper, in one language. */
export interface PaperWords {
  /** A child whose nickname the font cannot draw. */
  readonly child: (number: number) => string;
  readonly page: (page: number, of: number) => string;
  readonly answers: string;
  readonly name: string;
  /** A counting run as one task; `step` is negative when counting back. */
  readonly run: (start: number, step: number) => string;
  /** After the empty box for a score. */
  readonly outOf: (cards: number) => string;
  readonly pagesDone: string;
  /** Where a child goes on in its workbook. */
  readonly fromPage: (page: number) => string;
  readonly adult: string;
  /** At the foot of a practice sheet, for the adult. */
  readonly howToMark: string;
  /** On a join slip: what it is for, how to open it, what to send instead, what stands before the last day, and whom to give it to. */
  readonly whatItIs: string;
  readonly scan: string;
  readonly orSend: (place: string) => string;
  readonly until: string;
  readonly onlyThisFamily: string;
}

/**
 * What stands on paper in each language of the cards. Only the English was written for adults who read it at home; the other
 * four follow it, were written from common use and were not checked by a native teacher.
 *
 * @example
 * PAPER_WORDS.de.run(35, 5); // 'Fang bei 35 an. Zähle in 5er-Schritten weiter.'
 */
export const PAPER_WORDS: Readonly<Record<Language, PaperWords>> = {
  en: {
    child: (number) => `child ${number}`,
    page: (page, of) => `page ${page} of ${of}`,
    answers: 'Answers',
    name: 'Name',
    run: (start, step) =>
      `Start at ${start}. Count ${step < 0 ? 'back' : 'on'} in ${inSteps(step)}.`,
    outOf: (cards) => `of ${cards}`,
    pagesDone: 'Workbook pages done',
    fromPage: (page) => `from page ${page}`,
    adult: 'Adult',
    howToMark:
      'The child says each answer aloud. Write how many were right. A score is a snapshot of one evening.',
    whatItIs:
      'A few minutes of mental maths each school day. The cards come to your phone; you tap what was missed.',
    scan: 'Scan the square with your phone’s camera and tap Start.',
    orSend: (place) => `Or open ${place}, tap Start and send this code:`,
    until: 'Good until',
    onlyThisFamily: 'Give this slip only to this child’s family.',
  },
  af: {
    child: (number) => `kind ${number}`,
    page: (page, of) => `bladsy ${page} van ${of}`,
    answers: 'Antwoorde',
    name: 'Naam',
    run: (start, step) =>
      `Begin by ${start}. Tel ${step < 0 ? 'terug' : 'aan'} in ${sizeOf(step) === 1 ? 'ene' : `stappe van ${sizeOf(step)}`}.`,
    outOf: (cards) => `van ${cards}`,
    pagesDone: 'Werkboekbladsye klaar',
    fromPage: (page) => `vanaf bladsy ${page}`,
    adult: 'Grootmens',
    howToMark:
      'Die kind sê elke antwoord hardop. Skryf hoeveel reg was. ’n Punt wys net hoe een aand gegaan het.',
    whatItIs:
      '’n Paar minute hoofrekene elke skooldag. Die kaarte kom na jou foon; jy tik wat gemis is.',
    scan: 'Skandeer die vierkant met jou foon se kamera en tik op Start.',
    orSend: (place) => `Of maak ${place} oop, tik op Start en stuur hierdie kode:`,
    until: 'Geldig tot',
    onlyThisFamily: 'Gee hierdie strokie net aan hierdie kind se gesin.',
  },
  es: {
    child: (number) => `alumno ${number}`,
    page: (page, of) => `página ${page} de ${of}`,
    answers: 'Respuestas',
    name: 'Nombre',
    run: (start, step) =>
      `Empieza en ${start}. Cuenta ${step < 0 ? 'hacia atrás ' : ''}de ${sizeOf(step)} en ${sizeOf(step)}.`,
    outOf: (cards) => `de ${cards}`,
    pagesDone: 'Páginas hechas',
    fromPage: (page) => `desde la página ${page}`,
    adult: 'Adulto',
    howToMark:
      'El niño dice cada respuesta en voz alta. Anote cuántas acertó. Es solo el resultado de una tarde.',
    whatItIs:
      'Unos minutos de cálculo mental cada día de clase. Las tarjetas llegan a su teléfono; usted marca lo que falló.',
    scan: 'Escanee el cuadrado con la cámara del teléfono y toque Start.',
    orSend: (place) => `O abra ${place}, toque Start y envíe este código:`,
    until: 'Válido hasta el',
    onlyThisFamily: 'Entregue esta hoja solo a la familia de este niño.',
  },
  de: {
    child: (number) => `Kind ${number}`,
    page: (page, of) => `Seite ${page} von ${of}`,
    answers: 'Lösungen',
    name: 'Name',
    run: (start, step) =>
      `Fang bei ${start} an. Zähle in ${sizeOf(step)}er-Schritten ${step < 0 ? 'zurück' : 'weiter'}.`,
    outOf: (cards) => `von ${cards}`,
    pagesDone: 'Seiten im Arbeitsheft',
    fromPage: (page) => `ab Seite ${page}`,
    adult: 'Erwachsene',
    howToMark:
      'Das Kind sagt jede Antwort laut. Schreiben Sie auf, wie viele richtig waren. Das zeigt nur einen Abend.',
    whatItIs:
      'Ein paar Minuten Kopfrechnen an jedem Schultag. Die Karten kommen auf Ihr Handy; Sie tippen an, was fehlte.',
    scan: 'Scannen Sie das Quadrat mit der Handykamera und tippen Sie auf Start.',
    orSend: (place) => `Oder öffnen Sie ${place}, tippen Sie auf Start und senden Sie diesen Code:`,
    until: 'Gültig bis',
    onlyThisFamily: 'Nur für die Familie dieses Kindes.',
  },
  fr: {
    child: (number) => `élève ${number}`,
    page: (page, of) => `page ${page} sur ${of}`,
    answers: 'Réponses',
    name: 'Nom',
    run: (start, step) =>
      `Commence à ${start}. Compte ${step < 0 ? 'à rebours ' : ''}de ${sizeOf(step)} en ${sizeOf(step)}.`,
    outOf: (cards) => `sur ${cards}`,
    pagesDone: 'Pages du cahier faites',
    fromPage: (page) => `à partir de la page ${page}`,
    adult: 'Adulte',
    howToMark:
      'L’enfant dit chaque réponse à voix haute. Notez combien sont justes. Ce n’est que le résultat d’un soir.',
    whatItIs:
      'Quelques minutes de calcul mental chaque jour d’école. Les cartes arrivent sur votre téléphone ; vous touchez ce qui a manqué.',
    scan: 'Scannez le carré avec l’appareil photo du téléphone et touchez Start.',
    orSend: (place) => `Ou ouvrez ${place}, touchez Start et envoyez ce code :`,
    until: 'Valable jusqu’au',
    onlyThisFamily: 'À remettre seulement à la famille de cet enfant.',
  },
};

/** A day as it is written out in a language: `12 November 2026`. English is as in Britain. */
export function longDate(day: SchoolDay, language: Language): string {
  const locale = language === 'en' ? 'en-GB' : language;
  return new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' }).format(
    new Date(`${day}T00:00:00Z`),
  );
}

const ENGLISH_STEPS: ReadonlyMap<number, string> = new Map([
  [1, 'ones'],
  [2, 'twos'],
  [5, 'fives'],
  [10, 'tens'],
]);

function sizeOf(step: number): number {
  return Math.abs(step);
}

function inSteps(step: number): string {
  return ENGLISH_STEPS.get(sizeOf(step)) ?? `${sizeOf(step)}s`;
}
