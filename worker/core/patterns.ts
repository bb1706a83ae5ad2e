/** Forms of the names that the record, the archive, the interface and exported folders have in common. */

/** SHA-256 in lower-case hexadecimal. */
export const SHA256 = /^[0-9a-f]{64}$/;

/** Marks of an aircraft: a hyphen at most, and that not at an end. */
export const REGISTRATION = /^[A-Z0-9]{1,4}-?[A-Z0-9]{1,8}$/;

/** A pack, `Q-SLM-P3-1`: marks of its aircraft, number and issue. */
export const PACK_NAME = /^([A-Z0-9]{1,4}-?[A-Z0-9]{1,8})-P[1-9][0-9]{0,5}-[1-9][0-9]{0,5}$/;

/** Identifier of a part of a record, a person or a visit. */
export const IDENTIFIER = /^[A-Za-z0-9][A-Za-z0-9._-]{0,39}$/;

/** Identifier of a workshop. */
export const WORKSHOP = /^[a-z0-9][a-z0-9-]{0,38}$/;
