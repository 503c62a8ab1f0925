import { checkPage } from '../check-page';
import { type CheckParameters, checkRequest, type StateParameters, stateRequest } from '../protocol';
import { stateAt } from '../state-at';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** What the client asks beyond the protocol of language servers: the state of the parts, the page of a check. */
export const requests: Feature = {
  name: 'requests of the client',
  capabilities: {},
  register(connection, session, log) {
    connection.onRequest(
      stateRequest,
      guarded(log, 'state', null, ({ uri, line }: StateParameters) => stateAt(session, uri, line)),
    );
    connection.onRequest(
      checkRequest,
      guarded(log, 'check', null, ({ name }: CheckParameters) => checkPage(name) ?? null),
    );
  },
};
