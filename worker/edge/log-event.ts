/** Event for the log. Codes never change; no event ever contains a token, a key or a record. */
export type LogEvent =
  | { code: 'RELEASE_SEALED'; pack: string; issue: number; key: string }
  | { code: 'PACK_WITHDRAWN'; pack: string; key: string }
  | { code: 'LINK_MADE' | 'LINK_REVOKED'; link: string; pack: string; key: string }
  | { code: 'KEY_MADE' | 'KEY_REVOKED'; key: string }
  | { code: 'SEAL_KEY_TAKEN'; kid: string }
  | { code: 'SEAL_KEYS_TAKEN_OVER'; workshop: string; added: number }
  | { code: 'LEDGER_RESTORED'; registration: string; entries: number }
  | { code: 'WORKSHOP_CREATED'; workshop: string }
  | { code: 'PERSON_ENTERED'; person: string; key: string }
  | { code: 'ARCHIVE_UNAVAILABLE'; cause: string }
  | { code: 'FILE_DAMAGED'; file: string }
  | { code: 'NOT_NOTED'; what: 'opening' | 'use of a key'; cause: string }
  | { code: 'UNEXPECTED_FAILURE'; route: string; name: string; message: string };
