import { loadPyodide } from 'pyodide';

// CPython as WebAssembly (pyodide) with Node’s sockets, so that no machine needs a Python.

/**
 * Runs a script in CPython, which comes as WebAssembly with the packages of the project: no machine has to have one. Its sockets
 * are those of Node, its files those of the folder.
 *
 * @returns what it printed
 */
export async function runPython(script: string, folder: string, env: NodeJS.ProcessEnv): Promise<string> {
  const python = await loadPyodide({ env: { SLIPMARK_KEY: env.SLIPMARK_KEY ?? '' } });
  await python.useNodeSockFS();
  const printed: string[] = [];
  python.setStdout({ batched: (line) => printed.push(line) });
  python.FS.mkdir('/reader');
  python.FS.mount(python.FS.filesystems.NODEFS, { root: folder }, '/reader');
  python.FS.chdir('/reader');
  await python.runPythonAsync(script);
  return printed.join('\n');
}
