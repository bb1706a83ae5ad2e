import { releaseClock } from '../../worker/core/calc/clock/release-clock.ts';
import { scheduleJobs } from '../../worker/core/calc/clock/schedule-jobs.ts';
import { planWork } from '../../worker/core/calc/clock/schedule-work.ts';
import type { Job } from '../../worker/core/record/visit.ts';
import { instantOf } from '../../worker/core/units/calendar.ts';
import { CLOCK_TOPICS } from '../published/clock-cases.ts';
import { SETTINGS } from '../published/read-visit.ts';
import { inputOf } from './case-of.ts';
import { DEMO } from './demo.ts';
import type { Formula, Topic } from './formula.ts';
import { sum } from './steps.ts';
import { outside } from './sunset.ts';

const work: Formula = {
  id: 'work-left',
  title: 'Work that is left',
  tex: ['s_j = \\max(e_i)', 'e_j = s_j + t_j', 'T = \\max(e_j)'],
  symbols: [
    ['s_j', 'start of a job, from now', 'min'],
    ['e_i', 'end of each job that must end first, and of the same person’s job before', 'min'],
    ['e_j', 'end of the job', 'min'],
    ['t_j', 'time that it still takes', 'min'],
    ['T', 'when everything is done', 'min'],
  ],
  by: [planWork, scheduleJobs],
  holds:
    'A person does one job at a time. For up to twelve jobs better orders are searched for; with more, the first good order stands.',
  example() {
    const input = inputOf<Parameters<(typeof CLOCK_TOPICS)['plan']>[0]>('PL-02');
    const found = CLOCK_TOPICS.plan(input);
    const names = Object.keys(input.jobs);
    const durations = names.map((name) => [`t_${name}`, [input.jobs[name]?.[0] ?? Number.NaN, 'min']] as const);
    const ends = endsOf(input.jobs);
    const steps = names.map((name) => {
      const before = (input.jobs[name]?.[1] ?? []).map((id) => `e_${id}`);
      const start = before.length > 1 ? `\\max(${before.join(', ')})` : before[0];
      return sum(`e_${name} = ${start === undefined ? '' : `${start} + `}t_${name}`, ends.get(name) ?? Number.NaN);
    });
    return {
      case: 'PL-02',
      given: Object.fromEntries(durations),
      steps: [...steps, sum(`T = \\max(${names.map((name) => `e_${name}`).join(', ')})`, found.total, '', 'total')],
    };
  },
};

/** Returns the end of each job of a case, computed by the code. */
function endsOf(jobs: Parameters<(typeof CLOCK_TOPICS)['plan']>[0]['jobs']): Map<string, number> {
  const worksheet = Object.entries(jobs).map(
    ([id, [minutesLeft, after]]): Job => ({ id, text: id, state: 'waiting', minutesLeft, after }),
  );
  return new Map(planWork(worksheet).jobs.map(({ id, endMin }) => [id, endMin]));
}

const SLACK = 's = d - T';
const ARRIVAL = 'a = \\max(p, T) + f';
const DAYLIGHT = 'b = n - a';

const slack: Formula = {
  id: 'slack',
  title: 'Slack before the departure, and daylight left',
  tex: [SLACK, ARRIVAL, DAYLIGHT],
  symbols: [
    ['s', 'slack, negative when too late', 'min'],
    ['d', 'latest take-off, from the moment of the assessment', 'min'],
    ['T', 'work that is left', 'min'],
    ['a', 'arrival', 'min'],
    ['p', 'planned take-off', 'min'],
    ['f', 'time of the flight', 'min'],
    ['b', 'daylight left at the arrival, negative after sunset', 'min'],
    ['n', 'sunset at the destination', 'min'],
  ],
  by: [releaseClock],
  holds: 'The release is ready when the work is; nobody’s time for documents is added.',
  example() {
    const { departure } = DEMO;
    if (!departure) throw new Error('the demo visit has a departure');
    const job: Job = { id: 'J', text: 'Close the cowling', state: 'in-hand', minutesLeft: 30 };
    const clock = releaseClock({ ...DEMO, worksheet: [job] }, SETTINGS.at);
    const minutesTo = (moment = ''): number => (instantOf(moment) - instantOf(SETTINGS.at)) / 60_000;
    return {
      given: {
        d: [minutesTo(departure.latestAt), 'min'],
        T: [clock.plan.totalMin, 'min'],
        p: [minutesTo(departure.plannedAt), 'min'],
        f: [departure.tripMinutes ?? Number.NaN, 'min'],
        n: [minutesTo(clock.arrivalAt) + (clock.daylightMin ?? Number.NaN), 'min'],
      },
      steps: [
        sum(SLACK, clock.slackMin ?? Number.NaN, 'min'),
        sum(ARRIVAL, minutesTo(clock.arrivalAt), 'min'),
        sum(DAYLIGHT, clock.daylightMin ?? Number.NaN, 'min'),
      ],
    };
  },
};

export const clock: Topic = {
  id: 'release-clock',
  title: 'Release clock and engine runs',
  formulas: [work, slack, ...outside],
};
