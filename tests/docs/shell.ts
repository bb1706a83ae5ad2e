import { join } from 'node:path';
import { ROOT } from '../../worker/local/service/places.ts';

const NODE = `'${process.execPath}'`;
const SLIPMARK = `${NODE} '${join(ROOT, 'worker/local/slipmark.js')}'`;
const ASK_WRANGLER = `${NODE} '${join(ROOT, 'tests/docs/ask-wrangler.ts')}'`;

/**
 * What a reader’s shell understands by the commands of the pages: a refused call ends it; scripts and programs are those of the
 * project, wherever the reader stands; what is built is built; `wrangler` says whether it knows what it was told.
 */
export const SHELL = `
curl() { command curl -f "$@"; }
npm() {
  [ "$1" = run ] || return 1
  [ "$2" = build ] && return 0
  local name="$2"; shift 3; ${SLIPMARK} "$name" "$@"
}
npx() {
  local name="$1"; shift
  case "$name" in
    node) ${NODE} "$@" ;;
    wrangler) ${ASK_WRANGLER} "$@" ;;
    slipmark) ${SLIPMARK} "$@" ;;
    *) return 1 ;;
  esac
}`;
