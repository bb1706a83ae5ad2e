export { fixturesIn, readFixture } from '../site/published/read-fixture.ts';
