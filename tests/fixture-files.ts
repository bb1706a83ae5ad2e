import { filesIn } from '../worker/local/service/files-in.ts';

/** The files that the fixture visits name, looked into once. */
export const FIXTURE_FILES = await filesIn(`${import.meta.dirname}/../fixtures/attachments`);
