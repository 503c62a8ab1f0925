import type { CodeLens, Location } from 'vscode-languageserver';
import { boundView } from '../asking';
import { locationOf } from '../locations';
import { declarationPlace } from '../names';
import { forEachPlaced } from '../placed';
import { jobsOf } from '../plan-around';
import { showPlacesCommand, showProcedureCommand } from '../protocol';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** Above a plan: show its procedure. Above a standard: the jobs that follow it. */
export const codeLens: Feature = {
  name: 'code lens',
  capabilities: { codeLensProvider: {} },
  register(connection, session, log) {
    connection.onCodeLens(
      guarded(log, 'code lens', null, ({ textDocument: { uri } }) => {
        const view = boundView(session, uri);
        if (view === undefined) return null;
        const { folder, snapshot, path, bound: file, document } = view;
        const found: CodeLens[] = [];
        forEachPlaced<true>(
          file,
          (bound, at) => {
            const token = bound.item.word;
            if (!token) return undefined;
            const range = document.lines.range(at + token.at, at + token.at + token.text.length);
            if (bound.word?.word === 'plan')
              found.push({
                range,
                command: { title: 'Show procedure', command: showProcedureCommand, arguments: [uri] },
              });
            if (bound.word?.word === 'standard') {
              const jobs = jobsOf(snapshot, path, bound);
              const places = jobs
                .map(({ plan }) => locationOf(folder, snapshot, declarationPlace(plan.declaration)))
                .filter((each): each is Location => each !== undefined);
              const title =
                jobs.length === 1
                  ? '1 job follows this standard'
                  : `${jobs.length === 0 ? 'No' : jobs.length} jobs follow this standard`;
              found.push({
                range,
                command: {
                  title,
                  command: jobs.length > 0 ? showPlacesCommand : '',
                  arguments: [uri, range.start, places],
                },
              });
            }
            return undefined;
          },
          true,
        );
        return found;
      }),
    );
  },
};
