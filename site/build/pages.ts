import { aircraft } from '../pages/aircraft.ts';
import { api } from '../pages/api.ts';
import { authorities } from '../pages/authorities.ts';
import { bench } from '../pages/bench.ts';
import { cautions } from '../pages/cautions.ts';
import { changelog } from '../pages/changelog.ts';
import { checks } from '../pages/checks.ts';
import { classes } from '../pages/classes.ts';
import { deploy } from '../pages/deploy.ts';
import { formulas } from '../pages/formulas.ts';
import { gallery } from '../pages/gallery.ts';
import { guide } from '../pages/guide.ts';
import { inspection } from '../pages/inspection.ts';
import { limitsAndCost } from '../pages/limits-and-cost.ts';
import { movingHouse } from '../pages/moving-house.ts';
import { obligations } from '../pages/obligations.ts';
import { problems } from '../pages/problems.ts';
import { python } from '../pages/python.ts';
import { record } from '../pages/record.ts';
import { rules } from '../pages/rules.ts';
import { search } from '../pages/search.ts';
import { sources } from '../pages/sources.ts';
import { start } from '../pages/start.ts';
import { threats } from '../pages/threats.ts';
import { tools } from '../pages/tools.ts';
import { typescript } from '../pages/typescript.ts';
import { verify } from '../pages/verify.ts';
import { weighingForm } from '../pages/weighing-form.ts';
import { wording } from '../pages/wording.ts';
import { workshop } from '../pages/workshop.ts';
import type { Page } from './page.ts';

/** Every page of the site. */
export const PAGES: readonly Page[] = [
  start,
  guide,
  typescript,
  python,
  tools,
  record,
  rules,
  obligations,
  authorities,
  sources,
  classes,
  api,
  checks,
  gallery,
  formulas,
  bench,
  weighingForm,
  workshop,
  aircraft,
  inspection,
  verify,
  search,
  deploy,
  cautions,
  changelog,
  movingHouse,
  limitsAndCost,
  threats,
  wording,
  ...problems,
];
