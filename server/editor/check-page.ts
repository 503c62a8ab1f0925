import { pageNamed } from '../engine/checks/pages';

const grounds = { law: 'Law', published: 'Published', practice: 'Common practice', memory: 'From memory' } as const;

/** The manual page of a check in Markdown; undefined where nothing bears the name. */
export function checkPage(name: string): string | undefined {
  const check = pageNamed(name);
  if (check === undefined) return undefined;
  const accept = check.acceptable
    ? `Where the job knows better: \`accept ${name} because "…"\`.`
    : 'It cannot be accepted.';
  return [
    `# ${check.name}`,
    `**${check.title}** (${check.severity})`,
    check.meaning,
    check.why,
    ...(check.noFix ? [`The way out is by hand. ${check.noFix}`] : []),
    accept,
    `*${grounds[check.ground]}: ${check.source}*`,
  ].join('\n\n');
}
