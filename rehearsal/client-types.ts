/** A person to add. `note` is shown in the list of phones, for example "Wren's helper". */
export interface AccountToAdd {
  readonly id: number;
  readonly name: string;
  readonly note?: string;
  /** Sent to the bot as the language of the person's phone, default `en`. */
  readonly languageCode?: string;
}

/** A file a person sends to the bot. */
export interface FileToSend {
  readonly kind: 'photo' | 'video' | 'document' | 'voice';
  readonly bytes: Uint8Array;
  /** File name; phones give none to a photo or a voice note. */
  readonly name?: string;
  /** Told by the name when absent. */
  readonly mimeType?: string;
  readonly caption?: string;
  /** Length of a voice note or a video; read from the file when absent, where it can be. */
  readonly seconds?: number;
}
