import { env } from 'cloudflare:workers';
import type { Bindings } from '../../../worker/edge/env.ts';

/** Which step of storage fails: before it does anything, or after it has, so that only the answer is lost. */
export interface Fault {
  /** Index of the step, counted from the first after arming; undefined while nothing fails. */
  at: number | undefined;
  when: 'before' | 'after';
  /** Steps that fail whenever they are taken. */
  named?: RegExp;
  /** Names of the steps taken since arming. */
  steps: string[];
}

type Method = (...values: unknown[]) => unknown;

/** The bindings of the test, over real storage, every step of which can be made to fail. */
export function faultyBindings(): { bindings: Bindings; fault: Fault } {
  const fault: Fault = { at: undefined, when: 'before', steps: [] };
  const taken = async (name: string, act: () => unknown): Promise<unknown> => {
    const isFailing = fault.steps.push(name) - 1 === fault.at || fault.named?.test(name) === true;
    if (isFailing && fault.when === 'before') throw new Error('storage unreachable');
    const answer = await act();
    if (isFailing) throw new Error('storage unreachable');
    return answer;
  };
  const withSteps = <T extends object>(target: T, name: string): T =>
    new Proxy(target, {
      get: (_, method) => {
        const own = Reflect.get(target, method) as unknown;
        if (typeof own !== 'function' || typeof method === 'symbol') return own;
        return (...values: unknown[]) => taken(`${name} ${method}`, () => Reflect.apply(own as Method, target, values));
      },
    });
  const withStubs = <T extends object>(namespace: T, name: string): T =>
    new Proxy(namespace, {
      get: (_, method) => {
        const own = Reflect.get(namespace, method) as Method;
        if (method !== 'get') return own.bind(namespace);
        return (...values: unknown[]) => withSteps(Reflect.apply(own, namespace, values) as object, name);
      },
    });
  const bindings: Bindings = {
    ...env,
    LEDGER: withStubs(env.LEDGER, 'ledger'),
    WORKSHOP: withStubs(env.WORKSHOP, 'workshop'),
    BLOBS: withSteps(env.BLOBS, 'bucket'),
  };
  return { bindings, fault };
}

/** An index that fails while told to. */
export function faultyIndex(isFailing: () => boolean): D1Database {
  return new Proxy(env.INDEX, {
    get: (target, method) => {
      const own = Reflect.get(target, method) as Method;
      return (...values: unknown[]) => {
        if (isFailing()) throw new Error('index unreachable');
        return Reflect.apply(own, target, values);
      };
    },
  });
}
