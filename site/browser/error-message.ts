/** Returns the message of a thrown value. */
export const errorMessage = (error: unknown): string => (error instanceof Error ? error.message : String(error));
