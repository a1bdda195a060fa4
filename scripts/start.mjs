// `npm start`: from a bare clone to the workbench, served on this machine until Ctrl-C.
import { spawn } from 'node:child_process';
import { ensure } from './ensure.mjs';
import { buildCli, buildWeb, run } from './run.mjs';

// Always the same one: a browser keeps notes apart for every port, and yours should be there tomorrow.
const PORT = '4321';

function main() {
  if (!ensure()) {
    process.exitCode = 1;
    return;
  }
  for (const [name, build] of /** @type {const} */ ([
    ['command line', buildCli],
    ['workbench', buildWeb],
  ])) {
    console.log(`Building the ${name} ...`);
    const built = run(build.command, { cwd: build.cwd });
    if (built.code !== 0) {
      console.error(`The ${name} could not be built:\n\n${built.output}`);
      process.exitCode = 1;
      return;
    }
  }
  const [vite = ''] = buildWeb.command;
  const parameters = [vite, 'preview', '--strictPort', '--port', PORT, '--logLevel', 'error'];
  const server = spawn(process.execPath, parameters, { cwd: buildWeb.cwd, stdio: 'inherit' });
  server.once('spawn', () => {
    console.log(
      `\nThe workbench is at http://localhost:${PORT}/ until Ctrl-C. Your notes stay in your browser.`,
    );
    console.log(
      'In the terminal: npx foregone --help, or npm run notes for the verdict of every note in notes/.',
    );
  });
  server.once('exit', (code) => {
    process.exitCode = code ?? 0;
  });
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM'])) {
    process.once(signal, () => server.kill(signal));
  }
}

main();
