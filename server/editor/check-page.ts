import { checks } from '../engine/checks/all';

const grounds = { law: 'Law', published: 'Published', practice: 'Common practice', memory: 'From memory' } as const;

/** The manual page of a check in Markdown; undefined for a finding of the text itself, which its message explains. */
export function checkPage(name: string): string | undefined {
  const check = checks.find((each) => each.name === name);
  if (check === undefined) return undefined;
  const accept = check.acceptable
    ? `Where the job knows better: \`accept ${name} because "…"\`.`
    : 'It cannot be accepted.';
  return [
    `# ${check.name}`,
    `**${check.title}** (${check.severity})`,
    check.meaning,
    check.why,
    accept,
    `*${grounds[check.ground]}: ${check.source}*`,
  ].join('\n\n');
}
