import { Command, CommanderError } from 'commander';
import { version } from '../../package.json';
import { commands } from './commands';
import { type CommandDescription, wordsOf } from './description';
import type { Host } from './host';
import { found, notDone, Trouble } from './trouble';

/**
 * Reads the words behind `jobplan` and does what they say; gives the exit status. Only the command that is named is
 * loaded. Never throws for anything that a person can type or a file can hold.
 */
export async function run(typed: readonly string[], host: Host): Promise<number> {
  let status = 0;
  const program = skeleton(host);
  const named = commands.find(({ name }) => name === (typed[0] === 'help' ? typed[1] : typed[0]));
  try {
    for (const listed of commands) {
      const command = program.command(listed.name).summary(listed.summary);
      if (listed !== named) continue;
      const description = await listed.load();
      describe(command, listed.summary, description);
      command.action(async () => {
        status = await description.run(host, wordsOf(command));
      });
    }
    await program.parseAsync(typed, { from: 'user' });
    return status;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : notDone;
    if (!(error instanceof Trouble)) throw error;
    host.say(`jobplan: ${error.message}\n`);
    return notDone;
  }
}

function skeleton(host: Host): Command {
  return new Command('jobplan')
    .description('Checks, takes off and prints plans of refrigeration jobs.')
    .version(version, '-V, --version', 'the version of this program')
    .helpOption('-h, --help', 'this help')
    .helpCommand('help [command]', 'the help of a command')
    .exitOverride()
    .configureOutput({
      writeOut: host.out,
      writeErr: host.say,
      outputError: (message, write) => write(message.replace(/^error: /, 'jobplan: ')),
      getOutHelpWidth: () => Math.min(host.columns, 120),
      getErrHelpWidth: () => Math.min(host.columns, 120),
    })
    .showHelpAfterError('(jobplan --help says how it is used)')
    .addHelpText(
      'after',
      `
Exit status: 0 fine; ${found} findings as grave as --fail-on, or a difference; ${notDone} wrong usage, or a file that cannot be read.
Nothing outside the folder that is given is read, and nothing is written but what is named.`,
    );
}

function describe(command: Command, summary: string, { about, takes, options, examples }: CommandDescription): void {
  command.description(`${summary[0]!.toUpperCase()}${summary.slice(1)}.\n${about}`);
  for (const [name, meaning] of takes) command.argument(name, meaning);
  for (const option of options) command.addOption(option);
  command.showHelpAfterError(`(jobplan ${command.name()} --help says how it is used)`);
  command.addHelpText('after', `\nExamples:\n${examples.map((line) => `  ${line}`).join('\n')}`);
}
