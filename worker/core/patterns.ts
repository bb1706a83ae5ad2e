/** Forms of the names shared by the record, the archive, the interface and exported folders. */

/** SHA-256 in lower-case hexadecimal. */
export const SHA256 = /^[0-9a-f]{64}$/;

/** Registration marks of an aircraft: up to one hyphen, not at either end. */
export const REGISTRATION = /^[A-Z0-9]{1,4}-?[A-Z0-9]{1,8}$/;

/** Name of a pack, such as `Q-SLM-P3-1`: registration, number and issue. */
export const PACK_NAME = /^([A-Z0-9]{1,4}-?[A-Z0-9]{1,8})-P[1-9][0-9]{0,5}-[1-9][0-9]{0,5}$/;

/** Identifier of a part of a record, of a person or of a visit. */
export const IDENTIFIER = /^[A-Za-z0-9][A-Za-z0-9._-]{0,39}$/;

/** Identifier of a workshop. */
export const WORKSHOP = /^[a-z0-9][a-z0-9-]{0,38}$/;
