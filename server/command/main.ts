import { nodeHost } from './host';
import { run } from './run';
import { notDone } from './trouble';

// Whoever reads the output may stop reading: `jobplan check | head` ends quietly.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

run(process.argv.slice(2), nodeHost()).then(
  (status) => {
    process.exitCode = status;
  },
  (error: unknown) => {
    process.stderr.write(
      `jobplan: a fault of the program itself. ${error instanceof Error ? error.stack : String(error)}\n`,
    );
    process.exitCode = notDone;
  },
);
